/** What the tests of all screens share: a browser on the sample farm, and what it sees of a screen. */
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { putRows } from "../../bench/seed.ts";
import { type ChromiumDriver, startChromium } from "../drivers/chromium.ts";
import { untilControlled } from "../drivers/driver.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "../drivers/serve-built.ts";
import { handsOn, standsStill } from "../screens/on-phone.ts";
import { type SampleFarm, sampleFarm } from "./sample.ts";

/** A phone on the sample farm. */
export interface OnFarm {
  readonly chromium: ChromiumDriver;
  readonly addresses: SampleFarm["addresses"];
  /** Opens a screen by its name and waits until it stands still. */
  readonly show: (screen: string) => Promise<void>;
  readonly close: () => Promise<void>;
}

/** Starts the app on the sample farm in one of the themes. */
export const onFarm = async (theme: "daylight" | "dusk"): Promise<OnFarm> => {
  const host: BuiltServer = await serveBuilt({ directory: builtFolder, under: "/" });
  const chromium = await startChromium();
  const { rows, addresses } = sampleFarm();
  await chromium.open(host.url);
  // Left before it is installed, the page would take an error of the half-done installation along.
  await untilControlled(chromium);
  await putRows(chromium, rows, { theme });
  await chromium.reload();
  return {
    chromium,
    addresses,
    show: async (screen) => {
      await handsOn(chromium).goTo(addresses[screen] ?? "");
      await standsStill(chromium, screen);
    },
    close: async () => {
      await host.close();
      await chromium.close();
    },
  };
};

/** A target on the screen that is smaller than it should be. */
export interface Target {
  readonly what: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Every target that can be seen. A tick or a half of a switch is touched at its label. */
export const targets = (chromium: ChromiumDriver): Promise<Target[]> =>
  chromium.run(() => {
    const found = new Set<Element>();
    for (const one of document.querySelectorAll(
      "a[href], button, input, textarea, select, summary, [role=button], [role=link], [tabindex='0']",
    ))
      found.add(one.matches("input[type=radio], input[type=checkbox]") ? (one.closest("label") ?? one) : one);
    return [...found]
      .filter((one) => one.checkVisibility({ visibilityProperty: true }) && !one.closest(".out-of-sight"))
      .map((one) => {
        const { width, height } = one.getBoundingClientRect();
        const what = `${one.tagName} ${one.className} "${(one.textContent ?? "").trim().slice(0, 40)}"`;
        return { what, widthPx: Math.round(width * 10) / 10, heightPx: Math.round(height * 10) / 10 };
      });
  });

/** What reaches beyond the right edge of the screen; empty when nothing can be scrolled sideways. */
export const overflowing = (chromium: ChromiumDriver): Promise<string[]> =>
  chromium.run(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    const beyond = [...document.querySelectorAll("#app *")].filter(
      (one) =>
        one.checkVisibility() &&
        !one.closest(".out-of-sight") &&
        // A map is drawn beyond its own edge and cut off there.
        !one.matches(".leaflet-container *") &&
        one.getBoundingClientRect().right > clientWidth + 0.5,
    );
    return scrollWidth > clientWidth || beyond.length > 0
      ? [
          `${scrollWidth} px of ${clientWidth} px`,
          ...beyond.slice(0, 3).map((one) => one.outerHTML.slice(0, 120)),
        ]
      : [];
  });

const axeSource = readFileSync(
  resolve(import.meta.dirname, "../../../node_modules/axe-core/axe.min.js"),
  "utf8",
);

/** What the checker of accessibility says of a screen. */
export interface Audit {
  /** What is wrong in earnest, one line for each rule and element. */
  readonly faults: readonly string[];
  /** What it cannot judge by itself: the rule, why not, and the element. */
  readonly open: readonly { readonly rule: string; readonly why: string; readonly html: string }[];
}

/** Asks the checker of accessibility about the screen. */
export const audit = async (chromium: ChromiumDriver): Promise<Audit> => {
  // Put in by the browser's own debugger, which the policy does not bind; nothing is loaded by the page.
  await chromium.page.evaluate(axeSource);
  return chromium.run(async () => {
    const axe: unknown = Reflect.get(globalThis, "axe");
    const { violations, incomplete } = await (
      axe as { run: (where: Document, options: object) => Promise<AxeAnswer> }
    ).run(document, {
      rules: { "color-contrast-enhanced": { enabled: true } },
      resultTypes: ["violations", "incomplete"],
    });
    const shortly = (html: string): string => html.slice(0, 160);
    return {
      faults: violations
        .filter(({ impact }) => impact === "serious" || impact === "critical")
        .flatMap(({ id, help, nodes }) => nodes.map(({ html }) => `${id}: ${help}: ${shortly(html)}`)),
      open: incomplete.flatMap(({ id, nodes }) =>
        nodes.map(({ html, any }) => ({
          rule: id,
          why: any.map(({ data }) => data?.messageKey ?? "").find((one) => one !== "") ?? "",
          html: shortly(html),
        })),
      ),
    };
  });
};

interface AxeFinding {
  readonly id: string;
  readonly impact: string | null;
  readonly help: string;
  readonly nodes: readonly {
    readonly html: string;
    readonly any: readonly { readonly data: { readonly messageKey?: string } | null }[];
  }[];
}

interface AxeAnswer {
  readonly violations: readonly AxeFinding[];
  readonly incomplete: readonly AxeFinding[];
}
