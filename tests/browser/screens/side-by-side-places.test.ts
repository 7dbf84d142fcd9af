/** Strips compared by their tests at one place against the row: the example farm tells a story that turns round. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { unpackEntries } from "../../../src/record/columns.ts";
import type { Entry } from "../../../src/record/entry.ts";
import type { RecordId } from "../../../src/record/ids.ts";
import { href } from "../../../src/screens/parts/route.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

let phone: OnPhone;
let visit: RecordId<"visit">;
let left: RecordId<"strip">;
let off: RecordId<"strip">;
const page = () => phone.chromium.page;

interface Row {
  readonly id: string;
  readonly revs: readonly { readonly body: Readonly<Record<string, string>> }[];
}

/** Everything in the database, by the raw interface. */
const everything = async (): Promise<{ records: Row[]; entries: ReadonlyMap<string, Entry[]> }> => {
  const text = await phone.chromium.run(async () => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open("mulchmark");
      request.onsuccess = () => resolve(request.result);
    });
    const all = (store: string) =>
      new Promise((resolve) => {
        const request = db.transaction(store).objectStore(store).getAll();
        request.onsuccess = () => resolve(request.result);
      });
    const rows = { records: await all("records"), entries: await all("entries") };
    db.close();
    return JSON.stringify(rows);
  });
  const { records, entries } = JSON.parse(text);
  return {
    records,
    entries: new Map(entries.map((row: { id: string }) => [row.id, unpackEntries(row as never)])),
  };
};

interface RawRing {
  readonly strip: string;
  readonly place: string;
  /** Level at the start less level at the end of the hour, in millimetres. */
  readonly fell: number;
}
let rings: readonly RawRing[];

/** How many rings there are, and by how much their levels fell on average. */
const raw = (strip: string, place?: string): readonly [count: number, meanFall: number] => {
  const fell = rings
    .filter((ring) => ring.strip === strip && (place === undefined || ring.place === place))
    .map((ring) => ring.fell);
  return [fell.length, fell.reduce((sum, one) => sum + one, 0) / fell.length];
};

beforeAll(async () => {
  phone = await onPhone(undefined, { theme: process.env["DEMO_THEME"] ?? "daylight" });
  await page().setViewportSize({ width: 390, height: 844 });
  await phone.goTo("#/settings");
  await phone.touch("Bring in the example farm");
  await phone.reads("The example farm is here.");
  const { records, entries } = await everything();
  const bodyOf = (id: string) => records.find((one) => one.id === id)?.revs[0]?.body;
  const stripNamed = (name: string) =>
    records.find(({ id, revs }) => id.startsWith("strip-") && revs[0]?.body["name"] === name)?.id ?? "";
  left = stripNamed("straw left") as typeof left;
  off = stripNamed("straw carried off") as typeof off;
  const stopped = records.flatMap(({ id, revs }) => {
    const body = revs[0]?.body;
    const said = entries.get(id) ?? [];
    const day = bodyOf(body?.["visit"] ?? "")?.["day"] ?? "";
    return body?.["type"] === "ring" && said.some(({ type }) => type === "stop") ? [{ body, said, day }] : [];
  });
  const onLeft = stopped.filter(({ body }) => body["strip"] === left);
  const newest = onLeft.reduce((one, other) => (other.day > one.day ? other : one));
  visit = newest.body["visit"] as typeof visit;
  rings = stopped
    .filter(({ body }) => body["visit"] === visit)
    .map(({ body, said }) => {
      const levels = said.flatMap((entry) => (entry.type === "level" ? [entry] : []));
      const [first, last] = [levels[0], levels.at(-1)];
      if (first === undefined || last === undefined) throw new Error("a ring that nobody read");
      expect(last.lookedAtMs - first.lookedAtMs).toBe(3_600_000);
      return { strip: body["strip"] ?? "", place: body["place"] ?? "", fell: first.value - last.value };
    });
});
afterAll(() => phone.close());

const section = (name: string) =>
  page()
    .locator("main > section")
    .filter({ has: page().getByRole("heading", { level: 2, name, exact: true }) });
/** Who stands first in the sentence about these two strips is the larger one. */
const larger = async (name: string): Promise<string> => {
  const about = section(name)
    .locator(".said")
    .filter({ hasText: /straw left/i })
    .filter({ hasText: /straw carried off/i });
  await about.first().waitFor();
  const said = (await about.locator("p").first().textContent()) ?? "";
  return /^straw left/i.test(said) ? "straw left" : /^straw carried off/i.test(said) ? "carried off" : said;
};
const shot = async (name: string): Promise<void> => {
  const folder = process.env["DEMO_PICTURES"];
  if (folder !== undefined) await page().screenshot({ path: `${folder}/${name}.png`, fullPage: true });
};

it("has a story in its raw readings: more where the straw stayed at each place, and less in all", () => {
  expect([raw(left)[0], raw(off)[0]]).toEqual([7, 7]);
  expect(raw(left)[1]).toBeLessThan(raw(off)[1]);
  for (const [place, counts] of [
    ["between-rows", [2, 5]],
    ["wheel-track", [5, 2]],
  ] as const) {
    expect([raw(left, place)[0], raw(off, place)[0]]).toEqual(counts);
    expect(raw(left, place)[1]).toBeGreaterThan(raw(off, place)[1]);
  }
});

it("says that all places together are not like with like, and shows the other strip ahead", async () => {
  await phone.goTo(href({ at: "visit", visit }));
  await phone.goTo(href({ at: "side-by-side", visit, strip: left }));
  await phone.reads(
    "the places against the row differ, or their shares do. The choice above looks at one place",
  );
  await phone.touch("Compare anyway");
  expect(await larger("Soaked in")).toBe("carried off");
  await shot("places-all");
});

it("offers the places with the tests that each strip has there, and turns round at each of them", async () => {
  const choice = page().getByRole("group", { name: "Soaked in: tests at which place against the row?" });
  const options = await choice.locator("label").allInnerTexts();
  expect(options.map((one) => one.split("\n")[0])).toEqual(["all places", "between rows", "wheel track"]);
  for (const [at, counts] of [
    [0, [7, 7]],
    [1, [2, 5]],
    [2, [5, 2]],
  ] as const) {
    expect(options[at]).toMatch(new RegExp(`straw left[^\\d]* ${counts[0]}(,|$)`));
    expect(options[at]).toMatch(new RegExp(`straw carried off[^\\d]* ${counts[1]}(,|$)`));
  }
  await choice.getByText("between rows").tap();
  expect(await larger("Soaked in, between rows")).toBe("straw left");
  await phone.reads(
    /^Soaked in, between rows, straw left and straw carried off: alike in the place against the row/,
  );
  await choice.getByText("wheel track").tap();
  expect(await larger("Soaked in, wheel track")).toBe("straw left");
  // Two rings on the other side are too few to give a range, and that is said.
  await section("Soaked in, wheel track").getByText("too few to give a range, 2 rings").first().waitFor();
  await section("Soaked in, wheel track")
    .getByText("1 more ring where there are fewest would give a range.")
    .first()
    .waitFor();
  await shot("places-wheel-track");
});

it("shows the same table, and how it was worked out, of these tests alone", async () => {
  const part = section("Soaked in, wheel track");
  await part.getByText("Show as table").tap();
  await part.getByRole("row", { name: /straw carried off.*after 60 min.*2 rings/ }).waitFor();
  await part.getByRole("button", { name: /How this was worked out/ }).tap();
  await part.getByText("Sources").waitFor();
});

it("keeps the choice over a reload and over Back", async () => {
  await phone.chromium.reload();
  // Lines were counted in two ways: that word is asked for anew each time.
  await phone.touch("Compare anyway");
  expect(await larger("Soaked in, wheel track")).toBe("straw left");
  await phone.goTo(href({ at: "picture", visit }));
  await phone.reads("One picture to send");
  await page().goBack();
  await phone.touch("Compare anyway");
  expect(await larger("Soaked in, wheel track")).toBe("straw left");
  // One touch back to the strips, not one for each place that was looked at.
  await page().goBack();
  await page().waitForURL(/#\/visit\/visit-[0-9a-f]+$/);
});

it("keeps the choice while another strip is set against the others, and gives it up by its own key", async () => {
  await phone.goTo(href({ at: "side-by-side", visit, strip: off, only: "soak.between-rows" }));
  await phone.touch("Compare anyway");
  expect(await larger("Soaked in, between rows")).toBe("straw left");
  await page()
    .getByRole("group", { name: "Which strip is set against the others?" })
    .getByText("straw left", { exact: false })
    .first()
    .tap();
  await page().waitForURL(new RegExp(`${left}/soak\\.between-rows$`));
  await phone.touch("all places");
  await page().waitForURL(new RegExp(`${left}$`));
  await phone.reads("so no number is shown yet");
});

it("leads from the picture, which keeps all places together, to the choice", async () => {
  await phone.goTo(href({ at: "picture", visit }));
  await phone.touch("Soaked in");
  const picture = page().locator(".paper-frame img");
  await expect.poll(() => picture.getAttribute("alt")).toContain("the places against the row differ");
  await phone.touch("Not like with like: look at each place against the row by itself");
  await page()
    .getByRole("group", { name: /tests at which place/ })
    .waitFor();
  await page().goBack();
  await phone.touch("Ground cover");
  await expect.poll(() => page().getByText("look at each place against the row by itself").count()).toBe(0);
});
