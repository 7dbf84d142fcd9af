/** What was typed and not kept is there again after a reload and after Back, until it is kept or left. */
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from "vitest";
import type { RecordId } from "../../../src/record/ids.ts";
import { beginSample, sampleStartMs } from "../../bench/seed.ts";
import { sampleFarm } from "../accessibility/sample.ts";
import { until } from "../drivers/driver.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";
import { storedRecords } from "./on-record.ts";

let phone: OnPhone;
const { rows, addresses } = sampleFarm();
const measured = {
  latitudeDeg: 52.0004,
  longitudeDeg: 0.502,
  accuracyM: 4,
  accuracyMeans: "not-known",
  spreadM: null,
  fixes: 5,
  how: "standing-still",
  atMs: sampleStartMs,
} as const;
const more = beginSample();
const edge = more.add("spot", {
  field: (addresses["field"] ?? "").split("/")[2] as RecordId<"field">,
  strip: null,
  name: "by the ditch",
  position: {
    ...measured,
    latitudeDeg: 52.0006,
    accuracyM: null,
    accuracyMeans: null,
    how: "by-hand",
    movedFrom: measured,
  },
  oldGrass: false,
  edge: { between: [null, null], to: null },
});
const BROUGHT = "Brought back what you had typed.";

const page = () => phone.chromium.page;
const line = (label: string) => page().getByRole("textbox", { name: label });
const stands = async (label: string, text: string) => {
  await expect.poll(() => line(label).first().inputValue()).toBe(text);
};
const press = (name: string) => page().getByRole("button", { name, exact: true }).last().tap();
const chosen = (name: string) => page().getByLabel(name, { exact: true }).first().isChecked();
/** On the screen itself: beside it the same sentence is told to a screen reader. */
const brought = () => page().locator(".keys p", { hasText: BROUGHT });
const broughtCount = () => brought().count();
const told = (sentence: string) => page().locator("p[aria-live]", { hasText: sentence }).waitFor();
/** As after the phone threw the page out: the same address in the same window, and nothing in memory. */
const again = async () => {
  await phone.chromium.reload();
  await brought().first().waitFor();
};
const kept = () =>
  phone.chromium.run(() => Object.keys(sessionStorage).filter((key) => key.startsWith("mulchmark-typed ")));

/** The database stays away until the page is loaded again: what is open fails, and opening fails too. */
const takeDatabaseAway = () =>
  phone.chromium.run(() => {
    const gone = (name: string) => () => {
      throw new DOMException("gone", name);
    };
    IDBDatabase.prototype.transaction = gone("InvalidStateError");
    IDBFactory.prototype.open = gone("UnknownError");
  });
const bodiesNamed = async (kind: string, name: string) =>
  (await storedRecords(phone.chromium, kind)).filter(
    ({ revs }) => Reflect.get(revs[0]?.body ?? {}, "name") === name,
  );

beforeAll(async () => {
  phone = await onPhone({ ...rows, records: [...rows.records, ...more.rows().records] });
});
afterAll(() => phone.close());
beforeEach(() => phone.chromium.run(() => sessionStorage.clear()));
// Every test ends with its form kept or left: then nothing of it may lie about.
afterEach(() => until("nothing lies about", async () => (await kept()).length === 0));

it("brings a new field back after a reload and after Back, and begins it afresh", async () => {
  await phone.goTo("#/fields");
  await phone.touch("Add a field");
  await phone.write("What is it called?", "Far Piece");
  await phone.touch("another farm");
  await phone.write("Name of the farm", "Mill House");
  await again();
  await stands("What is it called?", "Far Piece");
  await stands("Name of the farm", "Mill House");
  await page().goBack();
  await phone.touch("Add a field");
  await brought().first().waitFor();
  await stands("Name of the farm", "Mill House");
  await press("Begin afresh");
  await stands("What is it called?", "");
  expect(await broughtCount()).toBe(0);
  expect(await kept()).toEqual([]);
  await phone.write("What is it called?", "Near Piece");
  await phone.touch("Back to the list");
  await phone.reads("Near Piece");
  await phone.touch("Add a field");
  await stands("What is it called?", "");
  expect(await broughtCount()).toBe(0);
});

it("opens the form of a ring again with all its sizes, and keeps it as it was typed", async () => {
  await phone.goTo("#/kit");
  await phone.touch("Add a ring");
  await phone.write("1. Inside edge to inside edge, in cm", "30.4");
  await phone.write("2. The same at right angles, in cm", "30.6");
  await phone.write("Place 1", "25");
  await phone.write("Place 2", "24.5");
  await again();
  await stands("1. Inside edge to inside edge, in cm", "30.4");
  await stands("2. The same at right angles, in cm", "30.6");
  await stands("Place 2", "24.5");
  // The letter was proposed and not typed: it is proposed again.
  await stands("Letter", "C");
  await phone.touch("Keep this ring");
  await phone.reads("30.4 cm by 30.6 cm inside");
  const rings = (await storedRecords(phone.chromium, "kit")).map(({ revs }) => revs[0]?.body);
  expect(rings.find((body) => Reflect.get(body ?? {}, "name") === "C")).toMatchObject({
    insideM: [0.304, 0.306],
    heightsM: [0.25, 0.245],
    outsideM: null,
  });
});

it("does not bring a size back in another unit, and forgets what was closed", async () => {
  await phone.goTo("#/kit");
  await phone.touch("Add a rope");
  await phone.write("How many marks?", "80");
  await phone.write("From mark to mark, in cm", "15");
  const setUnits = async (name: string) => {
    await phone.goTo("#/settings");
    await page().locator("label.tick", { hasText: name }).first().tap();
    await phone.goTo("#/kit");
  };
  await setUnits("US customary");
  await brought().first().waitFor();
  await stands("How many marks?", "80");
  await stands("From mark to mark, in inches", "");
  await setUnits("Metric");
  await stands("From mark to mark, in cm", "15");
  await press("Close");
  await phone.touch("Add a rope");
  await stands("How many marks?", "");
  expect(await broughtCount()).toBe(0);
  await press("Close");
});

it("brings a strip back, new or corrected, and what nobody touched from the record", async () => {
  await phone.goTo(addresses["field"] ?? "");
  await phone.touch("Add a strip");
  await phone.write("Name of the strip", "north half");
  await page().locator(".strip-form").getByText("tilled", { exact: true }).tap();
  await again();
  await stands("Name of the strip", "north half");
  await expect.poll(() => chosen("tilled")).toBe(true);
  await press("Done");
  await phone.reads("north half");
  await phone.touch("Change a strip");
  await page().locator("button.row", { hasText: "north half" }).tap();
  await phone.write("Rep", "3");
  await again();
  await stands("Rep", "3");
  await stands("Name of the strip", "north half");
  await press("Close");
  await phone.goTo("#/fields");
  await phone.goTo(addresses["field"] ?? "");
  await phone.reads("north half");
  expect(await line("Rep").count()).toBe(0);
});

it("brings back the correction of what was done on a field, and details of it", async () => {
  await phone.goTo(addresses["field"] ?? "");
  const timeline = page().locator(".field-timeline");
  await timeline.getByRole("button", { name: "Harvested" }).first().tap();
  await timeline.getByRole("button", { name: "Correct it or add words" }).tap();
  await phone.write("In your own words (may stay empty)", "wet corner left");
  await timeline.locator(".strip-form").getByText("yesterday", { exact: true }).tap();
  await again();
  await stands("In your own words (may stay empty)", "wet corner left");
  await expect.poll(() => chosen("yesterday")).toBe(true);
  await timeline.getByRole("button", { name: "Done" }).tap();
  await timeline.getByText("wet corner left").first().waitFor();
  await phone.touch("Direction of the rows");
  await phone.touch("in degrees");
  await phone.write("Degrees from true north, 0 to 360", "200");
  await again();
  await stands("Degrees from true north, 0 to 360", "200");
  await press("Done");
  await phone.reads("20° from true north");
});

it("brings a ring that is set out back: rims, guess, plan and what was chosen", async () => {
  await phone.goTo(addresses["ring-new"] ?? "");
  await page().getByText("straw left", { exact: true }).tap();
  await page().getByText("wheel track", { exact: true }).tap();
  await phone.write("Place 1, in cm", "4.2");
  await phone.write("Place 3, in cm", "4.6");
  await phone.write("Minutes after the start", "5 10 40");
  await again();
  await stands("Place 1, in cm", "4.2");
  await stands("Place 2, in cm", "");
  await stands("Place 3, in cm", "4.6");
  await stands("Minutes after the start", "5 10 40");
  await expect.poll(() => chosen("wheel track")).toBe(true);
  // The ring of the kit that was kept above is the one that is free.
  await press("Set it out");
  await page().waitForURL(/#\/ring\//);
  const id = new URL(page().url()).hash.split("/")[2];
  const body = (await storedRecords(phone.chromium, "observation")).find((one) => one.id === id)?.revs[0]
    ?.body;
  expect(body).toMatchObject({ rimToSoilM: [0.042, 0.046], planMin: [5, 10, 40], place: "wheel-track" });
});

it("brings the corrections of how a ring stood back", async () => {
  await phone.goTo(addresses["ring-sheet"] ?? "");
  await phone.touch("Correct how it stood");
  await phone.write("Place 2, in cm", "3.1");
  await again();
  await stands("Place 2, in cm", "3.1");
  await press("Close");
  expect(await line("Place 2, in cm").count()).toBe(0);
});

it("brings own sizes of a hole, and a line that is set out, back", async () => {
  await phone.goTo(addresses["hole-new"] ?? "");
  await page().locator("label.tick", { hasText: "own sizes" }).tap();
  await phone.write("Depth, in cm", "25");
  await phone.write("Minutes to sort (may stay empty)", "12");
  await again();
  await stands("Depth, in cm", "25");
  await stands("Minutes to sort (may stay empty)", "12");
  await press("Begin afresh");
  expect(await broughtCount()).toBe(0);
  await phone.goTo(addresses["line-new"] ?? "");
  await phone.write("A fifth key of your own", "moss");
  await again();
  await stands("A fifth key of your own", "moss");
  await press("Begin afresh");
  // As on the last line.
  await stands("A fifth key of your own", "dung");
});

it("brings sums of marks back until they are kept", async () => {
  const lines = await storedRecords(phone.chromium, "observation");
  const totals = lines.find(({ revs }) => Reflect.get(revs[0]?.body ?? {}, "way") === "totals");
  await phone.goTo(`#/line/${totals?.id}`);
  await phone.write("Bare", "12");
  await phone.write("Green", "30");
  await again();
  await stands("Bare", "12");
  await stands("Green", "30");
  await page().locator(".count-keys .key.solid").tap();
  await until(
    "the sums are kept",
    async () => (await page().locator(".count-keys .key.solid").count()) === 0,
  );
  await until("nothing lies about", async () => (await kept()).length === 0);
  // What is typed between an undo and its redo does not come back with the next undo.
  await press("Undo");
  await stands("Bare", "12");
  await phone.write("Bare", "50");
  await press("Redo");
  await page().locator(".count-keys .key.solid").waitFor({ state: "detached" });
  await press("Undo");
  await stands("Bare", "12");
  await stands("Green", "30");
  expect(await broughtCount()).toBe(0);
  await press("Redo");
});

it("brings a marked spot back, and lets it be kept once", async () => {
  await phone.goTo(addresses["spot"] ?? "");
  await phone.write("What is it called?", "by the pond");
  await again();
  await stands("What is it called?", "by the pond");
  await press("Keep this spot");
  await page().waitForURL((url) => url.hash === addresses["field"]);
  const spots = (await storedRecords(phone.chromium, "spot")).map(({ revs }) => revs[0]?.body);
  expect(spots.filter((body) => Reflect.get(body ?? {}, "name") === "by the pond")).toHaveLength(1);
  await phone.goTo(addresses["spot"] ?? "");
  await stands("What is it called?", "");
});

it("brings the correction of a spot back that is no edge any more, and lies where it was measured", async () => {
  await phone.goTo(`${addresses["field"]}/spot/${edge}`);
  await stands("What is it called?", "by the ditch");
  await phone.reads("What lies on one side?");
  await page().getByText("marked spot", { exact: false }).last().tap();
  await phone.touch("Put it back where it was measured");
  await again();
  await stands("What is it called?", "by the ditch");
  expect(await page().getByText("What lies on one side?").count()).toBe(0);
  expect(await page().getByText("Put it back where it was measured").count()).toBe(0);
  await press("Keep this spot");
  await page().waitForURL((url) => url.hash === addresses["field"]);
  const [kept] = await bodiesNamed("spot", "by the ditch");
  expect(kept?.revs[0]?.body).toHaveProperty("position.how", "standing-still");
  expect(kept?.revs[0]?.body).not.toHaveProperty("position.movedFrom");
});

it("says nothing of a form that stands as it did at first", async () => {
  await phone.goTo("#/kit");
  await phone.touch("Add a bottle");
  await phone.write("It holds, full to its mark, in mL", "2");
  await phone.write("It holds, full to its mark, in mL", "");
  await phone.chromium.reload();
  await phone.reads("Add a bottle");
  expect(await broughtCount()).toBe(0);
});

it("asks on as ever where the browser refuses to keep anything", async () => {
  const tab = await phone.chromium.tab();
  await tab.page.addInitScript(() => {
    Object.defineProperty(globalThis, "sessionStorage", {
      get: () => {
        throw new DOMException("denied", "SecurityError");
      },
    });
  });
  await tab.open(`${new URL(page().url()).origin}/#/kit`);
  await tab.page.getByRole("button", { name: "Add a bottle" }).tap();
  await tab.page.getByRole("textbox", { name: "Name" }).fill("5 L");
  await tab.page.getByRole("textbox", { name: /^It holds/ }).fill("5000");
  await tab.page.getByRole("button", { name: "Keep this bottle" }).tap();
  await tab.page.getByText("5 L").first().waitFor();
  const bottles = async () =>
    (await storedRecords(phone.chromium, "kit")).filter(
      ({ revs }) => Reflect.get(revs[0]?.body ?? {}, "name") === "5 L",
    );
  await until("the bottle is kept", async () => (await bottles()).length === 1);
  await tab.close();
});

it("does not bring a form back whose record is written by the reload, when the database went away", async () => {
  await phone.goTo("#/kit");
  await phone.touch("Add a bottle");
  await phone.write("Name", "went away");
  await phone.write("It holds, full to its mark, in mL", "2000");
  await takeDatabaseAway();
  const loaded = page().waitForEvent("load");
  await phone.touch("Keep this bottle");
  await loaded;
  await phone.reads("went away");
  expect(await broughtCount()).toBe(0);
  expect(await bodiesNamed("kit", "went away")).toHaveLength(1);
  await phone.goTo(addresses["field"] ?? "");
  await phone.touch("Add a strip");
  await phone.write("Name of the strip", "went away");
  // Not twice within a minute: this is another time.
  await phone.chromium.run(() => sessionStorage.removeItem("mulchmark-reloaded-at-ms"));
  await takeDatabaseAway();
  const loadedAgain = page().waitForEvent("load");
  await press("Done");
  await loadedAgain;
  await phone.reads("went away");
  expect(await broughtCount()).toBe(0);
  expect(await bodiesNamed("strip", "went away")).toHaveLength(1);
});

it("keeps what was typed where it was not put by for a reload", async () => {
  await phone.goTo("#/kit");
  await phone.touch("Add a bottle");
  await phone.write("It holds, full to its mark, in mL", "3000");
  // There was a reload just now: the page stays, and what comes after the loss is not put by.
  await phone.chromium.run(() => sessionStorage.setItem("mulchmark-reloaded-at-ms", String(Date.now())));
  await takeDatabaseAway();
  await phone.write("Name", "lost by a reading");
  await phone.chromium.run(() => dispatchEvent(new PageTransitionEvent("pagehide", { persisted: true })));
  await phone.chromium.run(() => dispatchEvent(new PageTransitionEvent("pageshow", { persisted: true })));
  await page().getByText("loading again has not helped").first().waitFor();
  await phone.touch("Keep this bottle");
  await again();
  await stands("Name", "lost by a reading");
  await stands("It holds, full to its mark, in mL", "3000");
  expect(await bodiesNamed("kit", "lost by a reading")).toHaveLength(0);
  await press("Close");
});

it("keeps the sizes that were typed last when their part of the form is drawn anew", async () => {
  const method = (at: "first" | "last") =>
    page().getByRole("group", { name: "Which worm method?" }).locator("label.tick")[at]().tap();
  await phone.goTo(addresses["hole-new"] ?? "");
  await method("last");
  await phone.write("Depth, in cm", "25");
  await again();
  await phone.write("Depth, in cm", "30");
  await method("first");
  expect(await line("Depth, in cm").count()).toBe(0);
  await method("last");
  await stands("Depth, in cm", "30");
  await phone.chromium.reload();
  await method("last");
  await stands("Depth, in cm", "30");
  await press("Begin afresh");
});

it("does not say that anything was brought back where nothing was", async () => {
  await phone.goTo("#/kit");
  await phone.touch("Add a rope");
  await phone.write("From mark to mark, in cm", "15");
  const setUnits = async (name: string) => {
    await phone.goTo("#/settings");
    await page().locator("label.tick", { hasText: name }).first().tap();
    await phone.goTo("#/kit");
  };
  await setUnits("US customary");
  await stands("From mark to mark, in inches", "");
  expect(await broughtCount()).toBe(0);
  await setUnits("Metric");
  await stands("From mark to mark, in cm", "15");
  await expect.poll(broughtCount).toBe(1);
  await press("Close");
});

it("does not bring a template back that was deleted meanwhile", async () => {
  await phone.goTo(addresses["hole-new"] ?? "");
  await page().locator("label.tick", { hasText: "own sizes" }).tap();
  await page().locator("label.tick", { hasText: "T1" }).tap();
  await phone.write("Depth, in cm", "25");
  await phone.goTo("#/kit");
  await page()
    .getByRole("button", { name: /^Correct .*T1$/ })
    .tap();
  await press("Delete");
  await press("Delete");
  await page()
    .getByRole("button", { name: /^Correct .*T1$/ })
    .waitFor({ state: "detached" });
  await phone.goTo(addresses["hole-new"] ?? "");
  await page().locator("label.tick", { hasText: "own sizes" }).tap();
  await line("One side, in cm").waitFor();
  await phone.chromium.run(() => sessionStorage.clear());
});

it("brings back what was said of a ring whose strip was deleted meanwhile", async () => {
  await phone.goTo(addresses["ring-sheet"] ?? "");
  await phone.touch("Correct how it stood");
  await page().getByText("wheel track", { exact: true }).tap();
  await phone.goTo(addresses["field"] ?? "");
  await phone.touch("Change a strip");
  await page().locator("button.row", { hasText: "straw left" }).tap();
  await phone.touch("Delete this strip");
  await phone.touch("Yes, delete it");
  await page().locator("button.row", { hasText: "straw left" }).waitFor({ state: "detached" });
  await phone.goTo(addresses["ring-sheet"] ?? "");
  await again();
  await expect.poll(() => chosen("wheel track")).toBe(true);
  await press("Close");
});

it("tells a screen reader what was brought back, and begins afresh with the focus in the form", async () => {
  const focused = () =>
    phone.chromium.run(() => [document.activeElement?.tagName, document.activeElement?.textContent]);
  await phone.goTo("#/kit");
  await phone.touch("Add a bottle");
  await phone.write("Name", "5 L");
  await again();
  await told(BROUGHT);
  await press("Begin afresh");
  await told("The form begins afresh.");
  await expect.poll(focused).toEqual(["H3", "New bottle"]);
  await press("Close");
  // A form without a heading of its own is focused as a whole.
  await phone.goTo(addresses["field"] ?? "");
  await phone.touch("Change name or farm");
  await phone.write("What is it called?", "Another Bottom");
  await again();
  await press("Begin afresh");
  await stands("What is it called?", "Long Bottom");
  await expect.poll(async () => (await focused())[0]).toBe("FIELDSET");
  await press("Close");
});

it("goes on knowing where somebody stands when a form begins afresh", async () => {
  const { context } = phone.chromium;
  await context.grantPermissions(["geolocation"]);
  for (const [screen, write] of [
    ["line-new", () => phone.write("A fifth key of your own", "moss")],
    ["hole-new", () => page().getByText("wheel track", { exact: true }).tap()],
    ["ring-new", () => page().getByText("wheel track", { exact: true }).tap()],
  ] as const) {
    await phone.goTo(addresses[screen] ?? "");
    await write();
    await again();
    await context.setGeolocation({ latitude: 52.0005, longitude: 0.501, accuracy: 4 });
    const standing = page().locator(".standing [role=status]");
    await standing.getByText("4 m").waitFor();
    // No other position comes: what is known now must do.
    await phone.chromium.run(() => {
      Geolocation.prototype.watchPosition = () => 0;
    });
    await press("Begin afresh");
    await brought().waitFor({ state: "detached" });
    expect(await standing.textContent()).toContain("4 m");
  }
  await context.clearPermissions();
});
