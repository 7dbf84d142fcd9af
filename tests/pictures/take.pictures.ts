/** Takes the pictures of the README from the example farm, as a phone shows it: `npm run pictures`. */
import { resolve } from "node:path";
import { afterAll, beforeAll, describe, it } from "vitest";
import { type OnPhone, onPhone, standsStill } from "../browser/screens/on-phone.ts";

const FIELD = "Rushmere Piece";

/** What lies under the raindrop at the marks of a line that is being counted. */
const COUNTED = "rrrrrrrbrrrrgrrrrrrsrrrbrrrrrr";
const ANSWERS = { r: "residue", b: "bare", g: "green", s: "stone" } as const;

describe.each(["daylight", "dusk"] as const)("%s", (theme) => {
  let phone: OnPhone;
  /** Addresses on the page of today's visit, by the last word of each. */
  let links: readonly string[];

  const take = async (name: string): Promise<void> => {
    await standsStill(phone.chromium, name);
    const path = resolve(import.meta.dirname, `${name}-${theme}.png`);
    await phone.chromium.page.screenshot({ path });
  };
  const linkTo = (pattern: RegExp): string => {
    const found = links.find((address) => pattern.test(address));
    if (found === undefined) throw new Error(`Nothing leads to ${pattern}`);
    return found;
  };

  beforeAll(async () => {
    phone = await onPhone(undefined, { theme, toldLocked: true });
    await phone.goTo("#/settings");
    await phone.touch("Bring in the example farm");
    await phone.reads("The example farm is here.");
    await phone.goTo("#/measure");
    await phone.chromium.page.locator("a.row[href^='#/visit/']", { hasText: FIELD }).last().tap();
    await phone.reads(`Today in ${FIELD}`);
    await standsStill(phone.chromium, "visit");
    links = await phone.chromium.page
      .locator("a[href^='#/']")
      .evaluateAll((all) => all.map((one) => one.getAttribute("href") ?? ""));
  });
  afterAll(() => phone.close());

  it.runIf(theme === "daylight")(
    "a day with all three tests, a sheet, what was found and the map",
    async () => {
      await phone.goTo(linkTo(/^#\/fields\/[^/]+\/map\/visit-/u));
      await take("map");
      await phone.goTo("#/findings");
      await take("findings");
      await phone.goTo("#/fields");
      await phone.touch(FIELD);
      const { page } = phone.chromium;
      await page.locator("a[href^='#/line/'][href$='/sheet']").nth(2).tap();
      await phone.reads("Ground cover on this line");
      await take("sheet");
      await page.goBack();
      await page.locator(".timeline a[href^='#/visit/']").nth(1).tap();
      await phone.reads("Ground cover");
      await take("visit");
    },
  );

  it("rings and a hole", async () => {
    await phone.goTo(linkTo(/\/rings$/u));
    await take("rings");
    await phone.goTo(linkTo(/^#\/hole\/[^/]+$/u));
    await take("hole");
  });

  it("a line", async () => {
    await phone.goTo(linkTo(/\/new-line$/u));
    await phone.touch("straw left");
    await phone.touch("Start counting");
    for (const mark of COUNTED) {
      const answer = ANSWERS[mark as keyof typeof ANSWERS];
      await phone.chromium.page.locator(`[data-answer=${answer}]`).tap();
      // Another key so soon behind the first would be taken for a slip of the thumb.
      await phone.chromium.page.waitForTimeout(300);
    }
    await take("line");
  });
});
