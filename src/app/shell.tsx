/** The shell: which screen stands at which address, and the bars above all of them. */
import { signal } from "@preact/signals";
import type { ComponentType } from "preact";
import { useEffect } from "preact/hooks";
import { LineScreen } from "../screens/measure/line/view.tsx";
import { type House, HouseContext } from "../screens/parts/house.ts";
import { keepFocus } from "../screens/parts/keep-focus.ts";
import { ListPane } from "../screens/parts/page.tsx";
import { href, type Route } from "../screens/parts/route.ts";
import { Bars } from "./bars.tsx";
import { route, spoken } from "./house.ts";
import { lazyScreen } from "./lazy-screen.tsx";
import { NextReadingPlace } from "./next-reading-place.tsx";

const HomeScreen = lazyScreen(async () => (await import("../screens/measure/home/view.tsx")).HomeScreen);
const SetOutScreen = lazyScreen(
  async () => (await import("../screens/measure/set-out/view.tsx")).SetOutScreen,
);
const LineSheetScreen = lazyScreen(
  async () => (await import("../screens/measure/sheet/view.tsx")).LineSheetScreen,
);
const VisitScreen = lazyScreen(async () => (await import("../screens/measure/visit/view.tsx")).VisitScreen);
const RingsScreen = lazyScreen(async () => (await import("../screens/measure/rings/view.tsx")).RingsScreen);
const NewRingScreen = lazyScreen(
  async () => (await import("../screens/measure/rings/new.tsx")).NewRingScreen,
);
const RingScreen = lazyScreen(async () => (await import("../screens/measure/rings/ring.tsx")).RingScreen);
const RingSheetScreen = lazyScreen(
  async () => (await import("../screens/measure/rings/sheet.tsx")).RingSheetScreen,
);
const BigFiguresScreen = lazyScreen(
  async () => (await import("../screens/measure/rings/big-figures.tsx")).BigFiguresScreen,
);
const NewHoleScreen = lazyScreen(async () => (await import("../screens/measure/hole/new.tsx")).NewHoleScreen);
const HoleScreen = lazyScreen(async () => (await import("../screens/measure/hole/view.tsx")).HoleScreen);
const HoleSheetScreen = lazyScreen(
  async () => (await import("../screens/measure/hole/sheet.tsx")).HoleSheetScreen,
);
const NoteScreen = lazyScreen(async () => (await import("../screens/measure/notes/view.tsx")).NoteScreen);
const WelcomeScreen = lazyScreen(async () => (await import("../screens/welcome/view.tsx")).WelcomeScreen);
const FieldsScreen = lazyScreen(async () => (await import("../screens/fields/list.tsx")).FieldsScreen);
const NewFieldScreen = lazyScreen(async () => (await import("../screens/fields/new.tsx")).NewFieldScreen);
const FieldScreen = lazyScreen(async () => (await import("../screens/fields/field.tsx")).FieldScreen);
const MapScreen = lazyScreen(async () => (await import("../screens/parts/map/map-screen.tsx")).MapScreen);
const BoundaryScreen = lazyScreen(
  async () => (await import("../screens/fields/boundary.tsx")).BoundaryScreen,
);
const SpotScreen = lazyScreen(async () => (await import("../screens/fields/spot.tsx")).SpotScreen);
const FindingsScreen = lazyScreen(async () => (await import("../screens/findings/view.tsx")).FindingsScreen);
const WorkedOutScreen = lazyScreen(
  async () => (await import("../screens/findings/worked-out.tsx")).WorkedOutScreen,
);
const SideBySideScreen = lazyScreen(
  async () => (await import("../screens/findings/side-by-side/view.tsx")).SideBySideScreen,
);
const PictureScreen = lazyScreen(
  async () => (await import("../screens/send/picture/view.tsx")).PictureScreen,
);
const SendScreen = lazyScreen(async () => (await import("../screens/send/view.tsx")).SendScreen);
const HelpScreen = lazyScreen(async () => (await import("../screens/help/view.tsx")).HelpScreen);
const HelpTopicScreen = lazyScreen(async () => (await import("../screens/help/topic.tsx")).HelpTopicScreen);
const MethodsScreen = lazyScreen(async () => (await import("../screens/help/methods.tsx")).MethodsScreen);
const SettingsScreen = lazyScreen(async () => (await import("../screens/settings/view.tsx")).SettingsScreen);
const KitScreen = lazyScreen(async () => (await import("../screens/kit/view.tsx")).KitScreen);
const DeletedScreen = lazyScreen(async () => (await import("../screens/send/deleted.tsx")).DeletedScreen);
const TwoVersionsScreen = lazyScreen(
  async () => (await import("../screens/send/two-versions.tsx")).TwoVersionsScreen,
);

const wide = matchMedia("(min-width: 900px)");
const isWide = signal(wide.matches);
wide.addEventListener("change", () => {
  isWide.value = wide.matches;
});

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
    case "rings":
      return <RingsScreen key={at.visit} visit={at.visit} />;
    case "ring-new":
      return <NewRingScreen key={at.visit} visit={at.visit} follows={at.follows} />;
    case "ring":
      return <RingScreen key={at.ring} ring={at.ring} />;
    case "ring-sheet":
      return <RingSheetScreen key={at.ring} ring={at.ring} />;
    case "big-figures":
      return <BigFiguresScreen key={at.visit} visit={at.visit} />;
    case "hole-new":
      return <NewHoleScreen key={at.visit} visit={at.visit} />;
    case "hole":
      return <HoleScreen key={at.hole} hole={at.hole} />;
    case "hole-sheet":
      return <HoleSheetScreen key={at.hole} hole={at.hole} />;
    case "note-new":
      return <NoteScreen at={{ visit: at.visit, spot: at.spot }} />;
    case "note":
      return <NoteScreen at={{ note: at.note }} />;
    case "fields":
      return <FieldsScreen />;
    case "field-new":
      return <NewFieldScreen />;
    case "field":
      return <FieldScreen key={at.field} field={at.field} />;
    case "map":
      return <MapScreen key={at.field + at.visit} field={at.field} visit={at.visit} />;
    case "boundary":
      return <BoundaryScreen key={at.field} field={at.field} />;
    case "spot":
      return <SpotScreen key={at.field + at.spot} field={at.field} spot={at.spot} />;
    case "findings":
      return <FindingsScreen />;
    case "worked-out":
      return <WorkedOutScreen key={at.strip + at.visit} strip={at.strip} visit={at.visit} />;
    case "side-by-side":
      return <SideBySideScreen key={at.visit + at.strip} {...at} />;
    case "picture":
      return <PictureScreen key={at.visit} visit={at.visit} />;
    case "send":
      return <SendScreen />;
    case "help":
      return <HelpScreen />;
    case "help-topic":
      return at.topic === "methods" ? <MethodsScreen /> : <HelpTopicScreen key={at.topic} topic={at.topic} />;
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

/** The list that a screen belongs to, shown left of it where there is room. */
const listOf = (at: Route): ComponentType | null => {
  switch (at.at) {
    case "visit":
    case "line-sheet":
    case "ring-sheet":
    case "hole-sheet":
      return HomeScreen;
    case "field":
    case "field-new":
    case "spot":
      return FieldsScreen;
    case "worked-out":
      return FindingsScreen;
    case "help-topic":
      return HelpScreen;
    case "help":
    case "settings":
    case "kit":
    case "deleted":
    case "two-versions":
      return SendScreen;
    default:
      return null;
  }
};

/** One screen on a phone; list left and detail right from 900 px. */
const Panes = ({ at }: { readonly at: Route }) => {
  const List = isWide.value ? listOf(at) : null;
  if (List === null) return <Screen at={at} />;
  return (
    <div class="panes">
      <div class="pane">
        <ListPane.Provider value={true}>
          <List />
        </ListPane.Provider>
      </div>
      <div class="pane">
        <Screen at={at} />
      </div>
    </div>
  );
};

/** Screens of a running test: they hide the navigation and use the whole height. */
const RUNNING: ReadonlySet<Route["at"]> = new Set([
  "line",
  "ring",
  "hole",
  "rings",
  "big-figures",
  "boundary",
]);

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
  useEffect(() => {
    const stop = new AbortController();
    keepFocus(stop.signal);
    return () => stop.abort();
  }, []);
  const at = route.value;
  useEffect(() => {
    scrollTo(0, 0);
  }, [at]);
  return (
    <HouseContext.Provider value={house}>
      <NextReadingPlace
        house={house}
        onBoard={at.at === "rings"}
        bright={at.at === "big-figures"}
        hole={at.at === "hole" ? at.hole : undefined}
        boardOf={(visit) => href({ at: "rings", visit })}
      />
      <Bars house={house} running={RUNNING.has(at.at)} />
      <Panes at={at} />
      <p class="out-of-sight" role="status" aria-live="polite">
        {spoken}
      </p>
    </HouseContext.Provider>
  );
};
