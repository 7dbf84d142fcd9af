/** A phone on its first day: nothing on it, a position that follows the walker, a clock that can be turned on. */
import type { ChromiumDriver } from "../drivers/chromium.ts";
import { startChromium } from "../drivers/chromium.ts";
import { until, untilControlled } from "../drivers/driver.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "../drivers/serve-built.ts";
import { type Hands, handsOn, passMinutes } from "../screens/on-phone.ts";

/** The day of the test: 12 May 2026 in most time zones, whatever the calendar of the machine says. */
const BEGINS_MS = Date.UTC(2026, 4, 12, 7, 30);
const MINUTE_MS = 60_000;
/** Longer than the time in which a touch on another key is held for a drop of water. */
const WET_GLASS_MS = 270;

export interface Day extends Hands {
  readonly chromium: ChromiumDriver;
  /** A key by its whole name. */
  readonly press: (name: string) => Promise<void>;
  /** The key at the top that leads back. */
  readonly back: () => Promise<void>;
  /** An answer of several by its first words. */
  readonly choose: (name: string) => Promise<void>;
  /** Types on the number pad, and ends with its key. */
  readonly answer: (digits: string) => Promise<void>;
  /** Touches answer keys one after the other, slower between different ones than wet glass needs. */
  readonly answers: (...keys: readonly string[]) => Promise<void>;
  /** Goes so many metres east and north of the gate and stands there. */
  readonly stand: (eastM: number, northM: number) => Promise<void>;
  /** Time goes by, and nobody touches the screen meanwhile. */
  readonly later: (minutes: number) => Promise<void>;
  /** What the large figure says. */
  readonly figure: (text: string) => Promise<void>;
  /** From here on there is neither signal nor host. */
  readonly loseSignal: () => Promise<void>;
  readonly close: () => Promise<void>;
}

/** The same key several times. */
export const times = (count: number, key: string): string[] => Array.from({ length: count }, () => key);

/** Metres of one degree at 52.1° north (WGS 84; NGA, "Length of a degree", from memory). */
const NORTH_M = 111_262;
const EAST_M = 68_490;
const GATE = { latitude: 52.1, longitude: -1.3 };

/**
 * Opens the app for the first time on a new phone.
 *
 * @param hours since the day began
 */
export const beginDay = async (hours = 0): Promise<Day> => {
  const host: BuiltServer = await serveBuilt({ directory: builtFolder, under: "/tools/" });
  const chromium = await startChromium();
  const { context, page } = chromium;
  await page.clock.install({ time: BEGINS_MS + hours * 60 * MINUTE_MS });
  await context.grantPermissions(["geolocation"], { origin: host.origin });
  // The browser stamps positions by the machine's clock, and the page takes none that is old by its own.
  await context.addInitScript(() => {
    const { watchPosition } = navigator.geolocation;
    navigator.geolocation.watchPosition = (found, failed, options) =>
      watchPosition.call(
        navigator.geolocation,
        ({ coords }) => found({ coords, timestamp: Date.now(), toJSON: () => null }),
        failed,
        options,
      );
  });
  await chromium.open(host.url);
  const hands = handsOn(chromium);
  // A second touch on another key right after the first is held for a wet glass; no hand is that fast.
  let touchedAtMs = 0;
  const unhurried = async () => {
    await page.waitForTimeout(Math.max(0, touchedAtMs + WET_GLASS_MS - performance.now()));
  };
  const press = async (name: string) => {
    await unhurried();
    await page.getByRole("button", { name, exact: true }).first().tap();
    touchedAtMs = performance.now();
  };
  return {
    ...hands,
    chromium,
    press,
    back: () => page.getByRole("link", { name: "Back", exact: true }).tap(),
    choose: (name) =>
      page
        .locator("label")
        .filter({ hasText: new RegExp(`^${name}`) })
        .first()
        .tap(),
    answer: async (digits) => {
      for (const digit of digits)
        await page.locator(".pad-keys button").getByText(digit, { exact: true }).tap();
      await press("Done");
    },
    answers: async (...keys) => {
      let before = keys[0];
      for (const key of keys) {
        if (key !== before) await unhurried();
        before = key;
        await page.tap(`[data-answer="${key}"]`);
        touchedAtMs = performance.now();
      }
    },
    stand: (eastM, northM) =>
      context.setGeolocation({
        latitude: GATE.latitude + northM / NORTH_M,
        longitude: GATE.longitude + eastM / EAST_M,
        accuracy: 4,
      }),
    later: (minutes) => passMinutes(page, minutes),
    figure: (text) =>
      until(
        `the figure says ${text}`,
        async () => (await page.locator(".big").first().textContent())?.trim() === text,
      ),
    loseSignal: async () => {
      await untilControlled(chromium);
      await context.setOffline(true);
      await host.close();
      await chromium.reload();
    },
    close: async () => {
      await host.close();
      await chromium.close();
    },
  };
};
