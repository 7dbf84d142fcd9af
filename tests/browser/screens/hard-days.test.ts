/** Days on a bad day: clocks years off, another time zone, midnight, and hundreds of lines on one visit. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

const HOUR_MS = 3_600_000;
/** 24 May 2024 was a Friday; 22:30 in UTC, which is the first time zone of these tests. */
const LATE_MS = Date.UTC(2024, 4, 24, 22, 30);

let phone: OnPhone;
let zone: (name: string) => Promise<void>;

beforeAll(async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Top Field"));
  add("strip", { field, name: "A", done: [], wholeField: false, rep: null });
  add("kit", { type: "rope", name: "R1", marks: 2, spacingM: 0.3 });
  phone = await onPhone(rows());
  const { context, page } = phone.chromium;
  await context.addInitScript(() => {
    const real = Date.now.bind(Date);
    // Kept by the tab, so that it outlives a loading of the page.
    Date.now = () => real() + Number(sessionStorage.getItem("aheadMs") ?? 0);
  });
  const session = await context.newCDPSession(page);
  zone = async (timezoneId) => {
    await session.send("Emulation.setTimezoneOverride", { timezoneId });
  };
  await zone("UTC");
  await phone.chromium.reload();
});
afterAll(() => phone.close());

/** Sets the clock of the device; whoever looks at the phone again makes it look at its calendar. */
const setClock = (wallMs: number) =>
  phone.chromium.run((ms) => {
    sessionStorage.setItem("aheadMs", "0");
    sessionStorage.setItem("aheadMs", String(ms - Date.now()));
    document.dispatchEvent(new Event("visibilitychange"));
  }, wallMs);

const home = async () => {
  await phone.goTo("#/fields");
  await phone.reads("Add a field");
  await phone.goTo("#/measure");
  await phone.reads("Which field are you in?");
};
const visits = () =>
  phone.chromium.run(async () => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open("mulchmark");
      request.onsuccess = () => resolve(request.result);
    });
    const rows = await new Promise<{ id: string; revs: { body: { day: string } }[] }[]>((resolve) => {
      const request = db.transaction("records").objectStore("records").getAll();
      request.onsuccess = () => resolve(request.result);
    });
    db.close();
    return rows
      .filter(({ id }) => id.startsWith("visit-"))
      .map(({ revs }) => revs[0]?.body.day ?? "")
      .sort();
  });
const countLine = async () => {
  await phone.touch("Count a line");
  await phone.touch("Start counting");
  await phone.reads("What does the raindrop meet at mark 1?");
  await phone.chromium.page.tap('[data-answer="residue"]');
  await phone.reads("Taken: mark 1");
  // A second touch within a quarter of a second is held for a bounce.
  await phone.chromium.page.waitForTimeout(300);
  await phone.chromium.page.tap('[data-answer="residue"]');
  await phone.reads("All 2 marks are read.");
};

it("goes on with a visit past midnight, says so, and begins no other in silence", async () => {
  await setClock(LATE_MS);
  await home();
  await phone.touch("Top Field");
  await phone.reads("Today in Top Field");
  await countLine();
  await setClock(LATE_MS + 2 * HOUR_MS);
  await home();
  await phone.reads("visit of 24 May 2024, still going on: 1 line");
  await phone.touch("Top Field");
  await phone.reads("Visit of 24 May 2024");
  await phone.reads("It is 25 May 2024 by now. What is counted here still stands under 24 May 2024.");
  await countLine();
  await phone.goTo("#/measure");
  await phone.touch("Top Field");
  await phone.reads("25 May 2024, 00:3");
  await expect.poll(visits).toEqual(["2024-05-24"]);
});

it("goes on from the field's own page too, and begins the new day when it is asked to", async () => {
  await phone.touch("Everything of this field");
  await phone.touch("Measure here today");
  await phone.reads("Visit of 24 May 2024");
  await phone.touch("Begin a visit of 25 May 2024");
  await phone.reads("Today in Top Field");
  await expect.poll(visits).toEqual(["2024-05-24", "2024-05-25"]);
});

it("keeps to the visit when a border between time zones makes it another day", async () => {
  // 00:30 in UTC is 19:30 of the day before in Chicago.
  await zone("America/Chicago");
  await phone.chromium.run(() => document.dispatchEvent(new Event("visibilitychange")));
  await home();
  await phone.touch("Top Field");
  await phone.reads(/Today in Top Field/);
  await expect.poll(visits).toEqual(["2024-05-24", "2024-05-25"]);
  await zone("UTC");
  await phone.chromium.run(() => document.dispatchEvent(new Event("visibilitychange")));
  await phone.reads("Visit of 24 May 2024");
});

it("calls a visit of long ago by its day, and measures today in a visit of today", async () => {
  await setClock(LATE_MS + 3 * 24 * HOUR_MS);
  await phone.reads("Add a line to that day");
  await phone.touch("Measure here today");
  await phone.reads("Today in Top Field");
  await expect.poll(visits).toEqual(["2024-05-24", "2024-05-25", "2024-05-27"]);
});

it("says that a day is still to come after the clock was set back by years, and corrects the day", async () => {
  await setClock(Date.UTC(2031, 2, 1, 12));
  await home();
  await phone.touch("Top Field");
  await phone.reads("Today in Top Field");
  await setClock(LATE_MS + 4 * 24 * HOUR_MS);
  await phone.reads("Visit of 1 Mar 2031");
  await phone.reads("By the clock of this device this day is still to come.");
  await phone.touch("Correct the day");
  await phone.chromium.page.getByLabel("On which day was it measured?").fill("2024-05-28");
  await phone.touch("Done");
  await phone.reads("Today in Top Field");
  await expect.poll(visits).toEqual(["2024-05-24", "2024-05-25", "2024-05-27", "2024-05-28"]);
});

it("does not say that a copy holds what was written under a clock set back", async () => {
  await phone.goTo("#/send");
  await phone.touch("Make a copy");
  await phone.reads(/Read back and compared/);
  const download = phone.chromium.page.waitForEvent("download");
  await phone.chromium.page.getByRole("button", { name: "Save", exact: true }).tap();
  await download;
  await phone.reads("Nothing new since.");
  await setClock(Date.UTC(2014, 0, 1, 12));
  await phone.goTo("#/fields/new");
  await phone.write("What is it called?", "Low Ridge");
  await phone.touch("Back to the list");
  await phone.reads("Low Ridge");
  await phone.goTo("#/send");
  await phone.reads("Some records are new or changed since.");
});

it("tells two fields apart that nobody has named yet", async () => {
  await setClock(LATE_MS + 40 * 24 * HOUR_MS);
  for (const minutes of [0, 7]) {
    await setClock(LATE_MS + 40 * 24 * HOUR_MS + minutes * 60_000);
    await home();
    await phone.touch("Measure now, name the field later");
    await phone.reads("Today in a field not named yet");
  }
  await home();
  const names = phone.chromium.page.locator(".rows b").filter({ hasText: "not named yet" });
  await expect
    .poll(async () => (await names.allTextContents()).sort())
    .toEqual(["not named yet (3 Jul 2024, 22:30)", "not named yet (3 Jul 2024, 22:37)"]);
});
