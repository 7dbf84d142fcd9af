import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { until } from "../drivers/driver.ts";
import { lineSample } from "./line-sample.ts";
import { type OnPhone, onPhone, standsStill } from "./on-phone.ts";

/**
 * The counting screen where there is little room: a small phone, the same on its side, and a page of 195 CSS
 * pixels, which is a phone of 390 with everything at twice its size (W3C WCAG 2.2, SC 1.4.4 Resize Text).
 */
const { rows, addresses } = lineSample();
let phone: OnPhone;

beforeAll(async () => {
  phone = await onPhone(rows);
});
afterAll(() => phone.close());

const question = () =>
  phone.chromium.run(() => document.querySelector(".running-question")?.textContent ?? "");
const asks = (words: string) => until(`it asks: ${words}`, async () => (await question()) === words);

/** What is wrong with the targets of the screen: out of reach, covered by something, or cut off. */
const faults = (): Promise<string[]> =>
  phone.chromium.run(() => {
    const wrong: string[] = [];
    const targets = [
      ...document.querySelectorAll<HTMLElement>("#app a[href], #app button, #app label"),
    ].filter(
      (one) => one.checkVisibility({ visibilityProperty: true }) && one.closest(".out-of-sight") === null,
    );
    const named = (one: Element) => `${one.className} "${(one.textContent ?? "").trim().slice(0, 40)}"`;
    for (const one of targets) {
      one.scrollIntoView({ block: "nearest" });
      const { left, right, top, bottom } = one.getBoundingClientRect();
      if (left < -0.5 || right > innerWidth + 0.5) wrong.push(`beside the screen: ${named(one)}`);
      if (bottom - top <= innerHeight && (top < -0.5 || bottom > innerHeight + 0.5))
        wrong.push(`out of reach: ${named(one)}`);
      for (const [x, y] of [
        [(left + right) / 2, (top + bottom) / 2],
        [left + 6, top + 6],
        [right - 6, bottom - 6],
      ] as const) {
        const hit = document.elementFromPoint(x, y);
        if (hit === null || !(one.contains(hit) || hit.contains(one))) wrong.push(`covered: ${named(one)}`);
      }
      // A long name of an own key ends in dots on purpose; a line cut through its letters does not.
      if (one.scrollHeight > one.clientHeight + 1) wrong.push(`cut off: ${named(one)}`);
    }
    scrollTo(0, 0);
    if (document.documentElement.scrollWidth > innerWidth) wrong.push("the page scrolls sideways");
    return [...new Set(wrong)];
  });

/** Place and size of the counting keys and tools on the page. */
const places = (): Promise<string> =>
  phone.chromium.run(() =>
    [...document.querySelectorAll("[data-answer], .halves label, .tools button, .pad-keys button")]
      .map((key) => {
        const { x, y, width, height } = key.getBoundingClientRect();
        return [x, y + scrollY, width, height].map(Math.round).join(" ");
      })
      .join("\n"),
  );

/** Whether every line of words above the keys is to be read in full without scrolling. */
const wordsCut = (): Promise<string[]> =>
  phone.chromium.run(() => {
    const frame = document.querySelector(".running")?.getBoundingClientRect();
    return [...document.querySelectorAll(".running > *")].flatMap((one) => {
      const box = one.getBoundingClientRect();
      const words = one.textContent ?? "";
      return words !== "" && box.height > 0 && frame !== undefined && box.bottom > frame.bottom + 0.5
        ? [words]
        : [];
    });
  });

describe.each([
  [360, 640],
  [640, 360],
  [195, 422],
])("at %i by %i", (width, height) => {
  beforeAll(() => phone.chromium.page.setViewportSize({ width, height }));

  it.each(["counted", "fifth"] as const)(
    "%s: no key moves, and the last answer is read in full",
    async (line) => {
      await phone.goTo(addresses[line]);
      await asks("What does the raindrop meet at mark 5?");
      await standsStill(phone.chromium, line);
      const before = await places();
      await expect.poll(faults).toEqual([]);
      await phone.chromium.page.tap("[data-answer=residue]");
      await phone.reads("Taken: mark 5: residue, flat");
      await asks("What does the raindrop meet at mark 6?");
      await expect.poll(wordsCut).toEqual([]);
      if (width > 300) expect(await places()).toBe(before);
      await phone.touch("Undo");
      await phone.reads("Undone: mark 5: residue, flat");
      await expect.poll(faults).toEqual([]);
    },
  );

  it.each(["misses", "missesFifth"] as const)(
    "%s: a miss can turn out to be residue after all",
    async (line) => {
      await phone.goTo(addresses[line]);
      await asks("Which mark has no residue?");
      await standsStill(phone.chromium, line);
      const before = await places();
      await expect.poll(faults).toEqual([]);
      const afterAll = phone.chromium.page.getByRole("button", { name: "Residue after all" });
      const press = (name: string) => phone.chromium.page.getByRole("button", { name, exact: true }).tap();
      await press("7");
      await expect.poll(() => afterAll.isDisabled()).toBe(true);
      await phone.chromium.page.tap("[data-answer=bare]");
      await phone.reads("1 miss called");
      await press("7");
      await afterAll.tap();
      await phone.reads("no misses called");
      await expect.poll(wordsCut).toEqual([]);
      if (width > 300) expect(await places()).toBe(before);
      await press("Undo");
      await phone.reads("1 miss called");
      await press("Undo");
      await phone.reads("no misses called");
    },
  );

  it.each([
    ["counted", "Set mark number", "Which number does the rope say?"],
    ["fifth", "Correct a mark", "Touch a mark to correct it"],
    ["missesFifth", "Correct a mark", "Touch a mark to correct it"],
    ["misses", "Line ends here", "At which mark does the line end?"],
    ["twoEnds", /1 question has two answers/, "Two people, two answers"],
  ] as const)("%s, %s: everything in it can be reached", async (line, key, inside) => {
    await phone.goTo(addresses[line]);
    await phone.chromium.page.locator(".tools").waitFor();
    await phone.chromium.page.locator("button:visible").filter({ hasText: key }).first().tap();
    await asks(inside);
    await expect.poll(faults).toEqual([]);
    if (line === "fifth") {
      await phone.touch(/^4 bare/);
      await asks("What lies at mark 4?");
      await expect.poll(faults).toEqual([]);
      await phone.chromium.page.keyboard.press("Escape");
      await asks(inside);
    }
    await phone.chromium.page.keyboard.press("Escape");
    await until("the panel is closed", async () => (await question()) !== inside);
  });

  it.each(["unread", "twoEnds", "totals"] as const)("%s: everything can be reached", async (line) => {
    await phone.goTo(addresses[line]);
    await phone.chromium.page.locator(".count-keys").waitFor();
    await expect.poll(faults).toEqual([]);
  });
});
