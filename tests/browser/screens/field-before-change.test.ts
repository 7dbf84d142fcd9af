/** The page of a field right after a change: what was found before it stands there, said to be so, until all is read. */
import { afterAll, beforeAll, expect, it } from "vitest";
import type { RecordId } from "../../../src/record/ids.ts";
import type { LineHeader } from "../../../src/record/kinds/observation.ts";
import { href } from "../../../src/screens/parts/route.ts";
import type { ChromiumTab } from "../drivers/chromium.ts";
import { until } from "../drivers/driver.ts";
import { handsOn, type OnPhone, onPhone } from "./on-phone.ts";
import { storedRecords } from "./on-record.ts";
import { yearsSample } from "./years-sample.ts";

declare global {
  /** Questions to a worker that wait; undefined: none has to. */
  var held: (() => void)[] | undefined;
}

const sample = yearsSample();
const field = href({ at: "field", field: sample.field });
let phone: OnPhone;
const page = () => phone.chromium.page;
const BEFORE = "From before the last changes …";

beforeAll(async () => {
  phone = await onPhone(sample.rows);
  await page().addInitScript(() => {
    const ask = Worker.prototype.postMessage;
    Worker.prototype.postMessage = function (this: Worker, ...question: unknown[]) {
      const send = (): void => Reflect.apply(ask, this, question);
      if (globalThis.held === undefined) send();
      else globalThis.held.push(send);
    };
  });
  await phone.chromium.reload();
});
afterAll(() => phone.close());

const hold = () =>
  phone.chromium.run(() => {
    globalThis.held = [];
  });
const letGo = () =>
  phone.chromium.run(() => {
    const waiting = globalThis.held ?? [];
    globalThis.held = undefined;
    for (const send of waiting) send();
  });

const firstStrip = () => page().locator("main .ruled .rows .row").first().textContent();
const newestDay = () => page().locator(".found-day").first().textContent();
/** How far below their heading the results begin: what stands above them comes and goes with no other change. */
const beginsAt = () =>
  page()
    .locator(".field-years :is(h2, h3, h4)")
    .evaluateAll((all) => {
      const tops = all.slice(0, 3).map((one) => one.getBoundingClientRect().top);
      return tops.map((top) => Math.round(top - (tops[0] ?? 0)));
    });

/** The lines of the first strip, newest first: 16, 15 and 14 covered marks of 20 in the last year. */
const linesOfStrip = (): readonly RecordId<"observation">[] => {
  const [strip] = sample.strips;
  const lines = sample.rows.records.filter(({ revs }) => {
    const body = revs[0]?.body as Partial<LineHeader> | undefined;
    return body?.type === "line" && body.strip === strip;
  });
  return lines.sort((a, b) => b.keys.atMs - a.keys.atMs).map(({ id }) => id as RecordId<"observation">);
};

const deleteLine = async (tab: ChromiumTab, line: RecordId<"observation"> | undefined): Promise<void> => {
  if (line === undefined) throw new Error("There is no such line");
  await handsOn(tab).goTo(href({ at: "line-sheet", line }));
  await tab.page.getByRole("button", { name: "Delete this line", exact: true }).tap();
  await tab.page.getByRole("button", { name: "Delete", exact: true }).last().tap();
  await until("it is deleted", async () =>
    (await storedRecords(phone.chromium, "observation")).some(
      ({ id, revs }) => id === line && revs[0]?.deleted === true,
    ),
  );
};

it("has nothing from before at the first time", async () => {
  await hold();
  await phone.goTo(field);
  await phone.reads("Being worked out …");
  await letGo();
  await expect.poll(firstStrip).toMatch(/3 lines.*75 %/s);
  await expect.poll(newestDay).toMatch(/75 %/);
  expect(await page().getByText(BEFORE).count()).toBe(0);
});

it("shows what was found before the change, and says so where each number stands", async () => {
  await deleteLine(phone.chromium, linesOfStrip()[0]);
  await hold();
  await phone.goTo(field);
  await page().locator(".field-years").getByText(BEFORE).waitFor();
  await expect.poll(newestDay).toMatch(/75 %/);
  await expect.poll(firstStrip).toMatch(new RegExp(`${BEFORE}.*75 %`, "s"));
  // Its range and its samples would be taken for those of now.
  expect(await firstStrip()).not.toMatch(/lines/);
});

it("puts the new numbers in their place, and nothing moves", async () => {
  const before = await beginsAt();
  await letGo();
  await phone.reads("Brought up to date.");
  // 14 and 15 of 20 marks: 29 of 40.
  await expect.poll(newestDay).toMatch(/2 lines.*73 %/s);
  await expect.poll(firstStrip).toMatch(/2 lines.*73 %/s);
  expect(await page().getByText(BEFORE).count()).toBe(0);
  expect(await beginsAt()).toEqual(before);
});

it("says nothing of it the next time", async () => {
  await phone.goTo("#/fields");
  await phone.goTo(field);
  await expect.poll(newestDay).toMatch(/73 %/);
  expect(await page().getByText("Brought up to date.").count()).toBe(0);
});

it("answers no other question by what was kept", async () => {
  await phone.goTo("#/settings");
  await phone.touch("Count stones as ground cover");
  await hold();
  await phone.goTo(field);
  await phone.reads("Being worked out …");
  expect(await page().locator(".found-day").count()).toBe(0);
  await letGo();
  await expect.poll(newestDay).toMatch(/73 %/);
});

it("says it on a page that stands open, once the new numbers do not come at once", async () => {
  await hold();
  const before = await beginsAt();
  const other = await phone.chromium.tab();
  await other.open(page().url().replace(/#.*/, "#/measure"));
  await deleteLine(other, linesOfStrip()[1]);
  await page().getByRole("heading", { name: "Found, not up to date" }).waitFor();
  await expect.poll(newestDay).toMatch(/73 %/);
  await expect.poll(firstStrip).toMatch(new RegExp(`${BEFORE}.*73 %`, "s"));
  expect(await beginsAt()).toEqual(before);
  await letGo();
  // 14 of 20 marks.
  await expect.poll(newestDay).toMatch(/1 line.*70 %/s);
  await expect.poll(firstStrip).toMatch(/1 line.*70 %/s);
  await page().getByRole("heading", { name: "Found, by harvest year" }).waitFor();
  expect(await page().getByText(BEFORE).count()).toBe(0);
  expect(await beginsAt()).toEqual(before);
});
