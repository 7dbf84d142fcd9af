/** The shell: which screen stands at which address, and the bars above all of them. */
import { useEffect } from "preact/hooks";
import { LineScreen } from "../screens/measure/line/view.tsx";
import { type House, HouseContext } from "../screens/parts/house.ts";
import type { Route } from "../screens/parts/route.ts";
import { Bars } from "./bars.tsx";
import { route, spoken } from "./house.ts";
import { lazyScreen } from "./lazy-screen.tsx";

const HomeScreen = lazyScreen(async () => (await import("../screens/measure/home/view.tsx")).HomeScreen);
const SetOutScreen = lazyScreen(
  async () => (await import("../screens/measure/set-out/view.tsx")).SetOutScreen,
);
const LineSheetScreen = lazyScreen(
  async () => (await import("../screens/measure/sheet/view.tsx")).LineSheetScreen,
);
const VisitScreen = lazyScreen(async () => (await import("../screens/measure/visit/view.tsx")).VisitScreen);
const WelcomeScreen = lazyScreen(async () => (await import("../screens/welcome/view.tsx")).WelcomeScreen);
const FieldsScreen = lazyScreen(async () => (await import("../screens/fields/list.tsx")).FieldsScreen);
const NewFieldScreen = lazyScreen(async () => (await import("../screens/fields/new.tsx")).NewFieldScreen);
const FieldScreen = lazyScreen(async () => (await import("../screens/fields/field.tsx")).FieldScreen);
const FindingsScreen = lazyScreen(async () => (await import("../screens/findings/view.tsx")).FindingsScreen);
const WorkedOutScreen = lazyScreen(
  async () => (await import("../screens/findings/worked-out.tsx")).WorkedOutScreen,
);
const SendScreen = lazyScreen(async () => (await import("../screens/send/view.tsx")).SendScreen);
const SettingsScreen = lazyScreen(async () => (await import("../screens/settings/view.tsx")).SettingsScreen);
const KitScreen = lazyScreen(async () => (await import("../screens/kit/view.tsx")).KitScreen);
const DeletedScreen = lazyScreen(async () => (await import("../screens/send/deleted.tsx")).DeletedScreen);
const TwoVersionsScreen = lazyScreen(
  async () => (await import("../screens/send/two-versions.tsx")).TwoVersionsScreen,
);

const Screen = ({ at }: { readonly at: Route }) => {
  switch (at.at) {
    case "welcome":
      return <WelcomeScreen />;
    case "measure":
      return <HomeScreen />;
    case "visit":
      return <VisitScreen key={at.visit} visit={at.visit} />;
    case "line-new":
      return <SetOutScreen key={at.visit} visit={at.visit} />;
    case "line":
      return <LineScreen key={at.line} line={at.line} />;
    case "line-sheet":
      return <LineSheetScreen key={at.line} line={at.line} />;
    case "fields":
      return <FieldsScreen />;
    case "field-new":
      return <NewFieldScreen />;
    case "field":
      return <FieldScreen key={at.field} field={at.field} />;
    case "findings":
      return <FindingsScreen />;
    case "worked-out":
      return <WorkedOutScreen key={at.strip + at.visit} strip={at.strip} visit={at.visit} />;
    case "send":
      return <SendScreen />;
    case "settings":
      return <SettingsScreen />;
    case "kit":
      return <KitScreen />;
    case "deleted":
      return <DeletedScreen />;
    case "two-versions":
      return <TwoVersionsScreen />;
  }
};

/** Follows the chosen theme, or the device's when none was chosen. */
const useTheme = (house: House) => {
  const { theme } = house.settings.value;
  useEffect(() => {
    const dark = matchMedia("(prefers-color-scheme: dark)");
    const dress = () => {
      const dusk = theme === "dusk" || (theme === "auto" && dark.matches);
      document.documentElement.dataset["theme"] = dusk ? "dusk" : "daylight";
    };
    dress();
    dark.addEventListener("change", dress);
    return () => dark.removeEventListener("change", dress);
  }, [theme]);
};

/** The whole app, once the house is open. */
export const Shell = ({ house }: { readonly house: House }) => {
  useTheme(house);
  const at = route.value;
  useEffect(() => {
    scrollTo(0, 0);
  }, [at]);
  return (
    <HouseContext.Provider value={house}>
      <Bars house={house} running={at.at === "line"} />
      <Screen at={at} />
      <p class="out-of-sight" role="status" aria-live="polite">
        {spoken}
      </p>
    </HouseContext.Provider>
  );
};
