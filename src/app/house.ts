/** Furnishes the house: opens the store, finds out who and where one is, and ties the parts together. */
import { computed, signal } from "@preact/signals";
import { randomHex } from "../device/chance.ts";
import { newShortId } from "../record/ids.ts";
import type { Problem, Result } from "../record/result.ts";
import { ok } from "../record/result.ts";
import { filledHabits } from "../record/units.ts";
import { CATALOGUES } from "../screens/catalogue.ts";
import type { House } from "../screens/parts/house.ts";
import { newPen } from "../screens/parts/pen.ts";
import { newReader } from "../screens/parts/reader.ts";
import { href, type Route, routeAt } from "../screens/parts/route.ts";
import { FIRST_SETTINGS, SETTINGS, type Settings } from "../screens/parts/settings.ts";
import { TRADE_WORDS } from "../screens/parts/trade.ts";
import { getMeta, setMeta, settleMeta } from "../store/meta.ts";
import type { Notice } from "../store/notice.ts";
import { openStore } from "../store/store.ts";
import { filesDesk } from "./files-client.ts";
import { DEVICE, WHERE } from "./meta-keys.ts";
import { resultsDesk } from "./results-client.ts";

/** The screen at the address bar. */
export const route = signal<Route>(routeAt(location.hash));
/** Problems shown above the screen until they are closed; the newest last. */
export const problems = signal<readonly Problem[]>([]);

/** Goes to a screen. What was said or wrong on the screen before has no meaning there. */
const show = (next: Route): void => {
  route.value = next;
  spoken.value = "";
  problems.value = problems.value.filter(({ code }) => !code.startsWith("record/"));
};
addEventListener("hashchange", () => show(routeAt(location.hash)));

/** What the store said last, by type. */
export const notices = signal<ReadonlyMap<Notice["type"], Notice>>(new Map());
/** What a screen reader is told. */
export const spoken = signal("");

const hear = (notice: Notice): void => {
  const next = new Map(notices.value);
  if (notice.type === "busy" && !notice.waiting) next.delete("busy");
  else next.set(notice.type, notice);
  notices.value = next;
};

const tell = (problem: Problem): void => {
  // The same sentence twice says nothing new.
  problems.value = [...problems.value.filter(({ code }) => code !== problem.code), problem].slice(-2);
};

/**
 * Opens the house.
 *
 * @returns the house; or why the records cannot be reached, for a screen that needs nothing but words
 */
export const openHouse = async (): Promise<Result<House>> => {
  const opened = await openStore({ tell: hear, reload: () => location.reload() });
  if (!opened.ok) return opened;
  const store = opened.value;
  const [known, stored] = await Promise.all([getMeta(store, DEVICE), getMeta(store, SETTINGS)]);
  if (!known.ok) return known;
  if (!stored.ok) return stored;
  // Only the very first start writes: a strict write at every start would hold up the first key.
  const device =
    known.value === undefined ? await settleMeta(store, DEVICE, newShortId(randomHex)) : ok(known.value);
  if (!device.ok) return device;
  const settings = signal<Settings>({
    ...FIRST_SETTINGS,
    ...stored.value,
    habits: filledHabits(stored.value?.habits ?? FIRST_SETTINGS.habits),
  });
  const words = computed(() => CATALOGUES[settings.value.language](TRADE_WORDS[settings.value.trade]));
  const go = (to: Route): void => {
    location.hash = href(to);
  };
  return ok({
    records: newReader(store),
    write: (...commands) => store.run(commands),
    pen: newPen(device.value, () => settings.value.person),
    device: device.value,
    settings,
    changeSettings: (patch) => {
      settings.value = { ...settings.value, ...patch };
      void setMeta(store, SETTINGS, settings.value as never).then((kept) => {
        if (!kept.ok) tell(kept.problem);
      });
    },
    words,
    go,
    goInstead: (to) => {
      history.replaceState(null, "", href(to));
      show(to);
    },
    tell,
    say: (sentence) => {
      // A screen reader is told of changes only: the same sentence again has to differ by a space.
      spoken.value = sentence === spoken.value ? `${sentence}\u00a0` : sentence;
    },
    files: filesDesk(store),
    results: resultsDesk(store),
  });
};

/** Where somebody was, so that a phone that threw the page out comes back to the same screen. */
export const rememberWhere = (house: House): void => {
  // The first one too: somebody who came by an address must not find an older screen after the phone died.
  route.subscribe((now) => void setMeta(house.records.connection, WHERE, href(now)));
};

/** The screen to come back to after a start without an address. */
export const whereItWas = async (house: House): Promise<Route | undefined> => {
  const where = await getMeta(house.records.connection, WHERE);
  return where.ok && where.value !== undefined ? routeAt(where.value) : undefined;
};
