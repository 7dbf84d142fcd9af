import { afterAll, beforeAll, expect, it } from "vitest";
import { DEMO_MARK } from "../../../src/record/demo-mark.ts";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { longestTask } from "./long-tasks.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";
import { storedRecords } from "./on-record.ts";

/** What lies in the database: ids that live, ids that were erased, and the rows of one's own as text. */
interface Inside {
  readonly demo: readonly string[];
  readonly erased: number;
  readonly own: string;
}

let phone: OnPhone;
let before: Inside;

const inside = (): Promise<Inside> =>
  phone.chromium.run(async (mark) => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open("mulchmark");
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const rows = await new Promise<{ id: string; erased: boolean }[]>((resolve, reject) => {
      const request = db.transaction("records").objectStore("records").getAll();
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    db.close();
    const isDemo = ({ id }: { id: string }) => id.includes(`-${mark}`);
    return {
      demo: rows.filter((row) => isDemo(row) && !row.erased).map(({ id }) => id),
      erased: rows.filter((row) => isDemo(row) && row.erased).length,
      own: JSON.stringify(rows.filter((row) => !isDemo(row))),
    };
  }, DEMO_MARK);

const shot = async (name: string): Promise<void> => {
  const folder = process.env["DEMO_PICTURES"];
  if (folder === undefined) return;
  await new Promise((resolve) => setTimeout(resolve, 700));
  await phone.chromium.page.screenshot({ path: `${folder}/${name}.png`, fullPage: true });
};

beforeAll(async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Low Ridge"));
  add("strip", { field, name: "", done: [], wholeField: true, rep: null });
  phone = await onPhone(rows(), { theme: process.env["DEMO_THEME"] ?? "daylight" });
  await phone.chromium.page.setViewportSize({ width: 390, height: 844 });
  before = await inside();
});
afterAll(() => phone.close());

/** To today's visit, from the start of Measure: what is not over stands above it by the same name. */
const toToday = async (): Promise<void> => {
  const { page } = phone.chromium;
  await page.locator("a.row[href^='#/visit/']", { hasText: "Rushmere Piece" }).last().tap();
};

it("comes in one touch, within seconds, and changes nothing else", async () => {
  await phone.goTo("#/settings");
  await phone.reads("Bring in the example farm");
  const beganMs = Date.now();
  await phone.touch("Bring in the example farm");
  await phone.reads("The example farm is here.");
  const tookMs = Date.now() - beganMs;
  // Three seconds are aimed at, and held by the bench; a machine that is busy with other tests takes longer.
  expect(tookMs).toBeLessThan(20_000);
  const now = await inside();
  expect(now.demo.length).toBeGreaterThan(250);
  expect(now.own).toBe(before.own);
  await shot("settings");
});

it("goes in one touch, and comes back by the same key at the same place, and changes nothing else", async () => {
  const { page } = phone.chromium;
  // Under its heading: the bar of the rings that run on the farm comes and goes with it, above everything.
  const placeOf = (words: string) =>
    page.getByRole("button", { name: words, exact: true }).evaluate((key) => {
      const headings = [...document.querySelectorAll("h2")];
      const heading = headings.find(({ textContent }) => textContent === "Example farm");
      if (heading === undefined) throw new Error("The example farm has no heading");
      // Both at one moment: the bar may come between two.
      const { x, y, height } = key.getBoundingClientRect();
      return [x, y - heading.getBoundingClientRect().y, height].map(Math.round);
    });
  await phone.reads("It goes in one touch, with everything that was counted on its own lines");
  const stood = await placeOf("Take the example farm away");
  await phone.touch("Take the example farm away");
  await phone.reads("The example farm is gone. Nothing else was changed.");
  await page.getByRole("button", { name: "Bring it back", exact: true }).waitFor();
  expect(await placeOf("Bring it back")).toEqual(stood);
  const gone = await inside();
  expect(gone.demo).toEqual([]);
  expect(gone.own).toBe(before.own);
  await shot("gone");
  await phone.touch("Bring it back");
  await phone.reads("The example farm is here.");
  expect(await page.getByText("The example farm is gone").count()).toBe(0);
  const back = await inside();
  expect(back.demo.length).toBeGreaterThan(250);
  expect(back.own).toBe(before.own);
});

it("shows its fields, and says on each that it is the example farm", async () => {
  await phone.touch("Show its fields");
  await phone.reads("Hollow Lane (example farm)");
  await phone.reads("This is the example farm.");
  await phone.reads("Low Ridge");
  await shot("fields");
  await phone.touch("Rushmere Piece");
  await phone.reads("This is the example farm.");
  await phone.reads("straw carried off");
  // Old grass is measured every year, and is the yardstick beside the strips and none of them.
  await phone.chromium.page.getByRole("heading", { name: "Old-grass spot, Old grass by the well" }).waitFor();
  const names = () => phone.chromium.page.locator(".field-years h4").allInnerTexts();
  await expect
    .poll(async () => (await names()).filter((name) => /old.grass/i.test(name)))
    .toEqual(["Old-grass spot, Old grass by the well"]);
  await shot("field");
  await phone.goTo("#/fields");
  await phone.touch("Low Ridge");
  await phone.reads("Measure here today");
  expect(await phone.chromium.page.getByText("This is the example farm.").count()).toBe(0);
});

it("today's visit has rings that run and a hole that waits", async () => {
  await phone.goTo("#/measure");
  await toToday();
  await phone.reads("Today in Rushmere Piece");
  await phone.reads("Old-grass spot: Old grass by the well");
  await shot("visit");
  const visit = /#\/visit\/(visit-[0-9a-f]+)/.exec(phone.chromium.page.url())?.[1] ?? "";
  expect(visit).toContain(DEMO_MARK);
  await phone.goTo(`#/visit/${visit}/rings`);
  for (const letter of ["U", "V", "W"]) await phone.reads(letter);
  await shot("rings");
});

it("says on every screen that it is the example farm, and on none of one's own", async () => {
  const { page } = phone.chromium;
  const note = page.locator("main").getByText("This is the example farm. All of it is invented.").first();
  await phone.goTo("#/measure");
  await page
    .locator(".row, .key")
    .filter({ hasText: "Rushmere Piece" })
    .filter({ hasText: "example farm, invented" })
    .first()
    .waitFor();
  expect(await page.locator(".row").filter({ hasText: "Low Ridge" }).getByText("invented").count()).toBe(0);
  await toToday();
  await phone.reads("Today in Rushmere Piece");
  await note.waitFor();
  const visit = new URL(page.url()).hash.split("/")[2] ?? "";
  const tests = await storedRecords(phone.chromium, "observation");
  const of = (type: string) => {
    const one = tests.find(
      ({ id, erased, revs }) => !erased && id.includes(DEMO_MARK) && revs[0]?.body.type === type,
    );
    return {
      id: one?.id ?? "",
      strip: one?.revs[0]?.body.strip ?? "",
      field: one?.revs[0]?.body.field ?? "",
    };
  };
  const line = of("line");
  for (const address of [
    `#/visit/${visit}/rings`,
    `#/line/${line.id}/sheet`,
    `#/ring/${of("ring").id}/sheet`,
    `#/hole/${of("hole").id}/sheet`,
    `#/fields/${line.field}`,
    `#/fields/${line.field}/map`,
    "#/findings",
    `#/worked-out/${line.strip}`,
    `#/visit/${visit}/side-by-side`,
    `#/visit/${visit}/picture`,
  ]) {
    await phone.goTo(address);
    await note.waitFor().catch(() => {
      throw new Error(`${address} does not say it`);
    });
  }
  // The picture that is handed over says it too, and the words beside it.
  const picture = page.locator(".paper-frame img");
  await expect.poll(() => picture.getAttribute("alt")).toContain("Example farm: this field is invented");
  await phone.goTo("#/kit");
  await page.locator("main").getByText("example farm, invented").first().waitFor();
});

it("leads from the day and from its rings to the map, and from there back", async () => {
  const { page } = phone.chromium;
  await phone.goTo("#/measure");
  await toToday();
  await phone.touch("Map of this day");
  await page.waitForURL(/#\/fields\/field-[0-9a-f]+\/map\/visit-/);
  await page.locator(".leaflet-container").waitFor();
  await page.locator("a.back").tap();
  await phone.reads("Today in Rushmere Piece");
  const visit = new URL(page.url()).hash.split("/")[2] ?? "";
  await phone.goTo(`#/visit/${visit}/rings`);
  await phone.touch("Map of this day");
  await page.locator(".leaflet-container").waitFor();
  await page.goBack();
  await phone.reads(/Rings today/);
});

it("says its three stories on the screen: one clear, one that cannot be told, one that turns round", async () => {
  const { page } = phone.chromium;
  await phone.goTo("#/findings");
  await phone.reads("Rushmere Piece");
  await phone.reads("straw left");
  await shot("findings");
  await page
    .locator(".found", { hasText: "Rushmere Piece" })
    .getByRole("link", { name: /^Side by side/u })
    .tap();
  // Like with like first: before anybody asks for them there are no numbers.
  await phone.reads("Like with like first");
  await page
    .locator("fieldset", { hasText: "Which strip is set against the others?" })
    .locator("label", { hasText: "straw left" })
    .tap();
  await phone.touch("Compare anyway");
  const said = (measure: string) =>
    page
      .locator("section", { has: page.getByRole("heading", { level: 2, name: measure, exact: true }) })
      .locator(".said", { hasText: /straw left.*straw carried off|straw carried off.*straw left/iu });
  await said("Ground cover").getByText("These two places differ clearly on this day.").waitFor();
  await said("Ground cover")
    .getByText(/^Straw left: \d+ points more/u)
    .waitFor();
  await said("Worms")
    .getByText(/^Cannot tell yet/u)
    .waitFor();
  await said("Soaked in")
    .getByText(/^Straw carried off: about .* as on straw left/u)
    .waitFor();
  for (const [place, name] of [
    ["between rows", "Soaked in, between rows"],
    ["wheel track", "Soaked in, wheel track"],
  ] as const) {
    await page.locator("fieldset", { hasText: "Soaked in" }).locator("label", { hasText: place }).tap();
    await said(name)
      .getByText(/^Straw left: about .* as on straw carried off/u)
      .waitFor();
  }
  await shot("stories");
});

it("goes in one touch, but for what somebody's own line rests on, and that is said", async () => {
  await phone.goTo("#/measure");
  await toToday();
  await phone.reads("Today in Rushmere Piece");
  // A note of one's own, written on the visit of the example farm.
  const visit = /#\/visit\/(visit-[0-9a-f]+)/.exec(phone.chromium.page.url())?.[1] ?? "";
  await phone.goTo(`#/visit/${visit}/new-note`);
  await phone.chromium.page.locator("textarea").fill("Frost in the hollow");
  await phone.reads("On record.");
  await phone.goTo("#/settings");
  await phone.touch("Take the example farm away");
  await phone.reads("1 record of your own stays");
  await shot("taken-but");
  const now = await inside();
  expect(now.own).toContain("Frost in the hollow");
  const kinds = now.demo.map((id) => id.slice(0, id.indexOf("-"))).sort();
  expect(kinds).toContain("visit");
  expect(kinds).toContain("field");
  expect(kinds).not.toContain("observation");
  expect(kinds.length).toBeLessThanOrEqual(5);
  await phone.goTo("#/fields");
  await phone.reads("Rushmere Piece");
  expect(await phone.chromium.page.getByText("Lantern Quarter").count()).toBe(0);
});

it("comes anew after it was taken away, and holds a slow phone up nowhere", async () => {
  await phone.goTo("#/settings");
  await phone.reads("Bring in the example farm");
  const session = await phone.chromium.context.newCDPSession(phone.chromium.page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: 4 });
  const longestMs = await longestTask(phone.chromium.page, async () => {
    await phone.touch("Bring in the example farm");
    await phone.reads("The example farm is here.");
  });
  await session.send("Emulation.setCPUThrottlingRate", { rate: 1 });
  // 50 ms are aimed at and seen; a machine that is busy with other tests is slower as well.
  expect(longestMs).toBeLessThanOrEqual(250);
  await phone.chromium.page.getByText("Bring in the example farm").first().waitFor({ state: "detached" });
});

it("can be looked at before anything else, from the first page", async () => {
  const first = await onPhone(undefined, { welcomed: false });
  await first.goTo("#/welcome");
  await first.touch("Look at an example farm first");
  await first.reads("Hollow Lane (example farm)");
  await first.chromium.reload();
  await first.reads("Hollow Lane (example farm)");
  await first.close();
});
