/** Starts the app: opens the records, comes back to where somebody was, and draws. */
import { render } from "preact";
import { watchInstallOffer } from "../device/install.ts";
import { href } from "../screens/parts/route.ts";
import { finishInterrupted } from "../screens/send/finish.ts";
import { installOffer } from "../screens/settings/install-offer.ts";
import "../screens/parts/look.css";
import { Closed } from "./closed.tsx";
import { openHouse, rememberWhere, route, whereItWas } from "./house.ts";
import { keepRecords } from "./keep-records.ts";
import { Shell } from "./shell.tsx";
import { watchForUpdates } from "./update.ts";
import { workOutAnew } from "./work-out-anew.ts";

const place = document.getElementById("app");
if (place === null) throw new Error("the page has no place for the app");

const start = async (): Promise<void> => {
  const opened = await openHouse();
  if (!opened.ok) {
    render(<Closed problem={opened.problem} />, place);
    return;
  }
  const house = opened.value;
  if (!house.settings.value.welcomed) house.goInstead({ at: "welcome" });
  else if (location.hash === "" || location.hash === "#") {
    const where = await whereItWas(house);
    if (where !== undefined) {
      history.replaceState(null, "", href(where));
      route.value = where;
    }
  }
  rememberWhere(house);
  keepRecords(house);
  // Once the first screen is there: a bringing-in that a dead phone interrupted is brought to its end.
  setTimeout(() => void finishInterrupted(house).then(() => workOutAnew(house)), 1000);
  render(<Shell house={house} />, place);
};

watchForUpdates();
// The browser makes its offer once, early; Settings shows it later.
watchInstallOffer((offer) => {
  installOffer.value = offer;
}, new AbortController().signal);
void start();
