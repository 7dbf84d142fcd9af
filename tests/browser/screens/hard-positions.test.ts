/** Positions on a bad day: refused, slow, far off, wandering, lost on the way. Counting never waits for one. */
import { afterAll, beforeAll, beforeEach, expect, it } from "vitest";
import { beginSample, fieldOf, lineOf, marksRead } from "../../bench/seed.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

/** The sky as a test has it. */
interface Sky {
  permission: "granted" | "denied" | "prompt";
  readonly watches: Map<
    number,
    { readonly take: (fix: object) => void; readonly miss: (why: object) => void }
  >;
  last: number;
}
declare global {
  var sky: Sky | undefined;
}

let phone: OnPhone;
let newLine: string;
let visitAddress: string;

beforeAll(async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Top Field"));
  const visit = add("visit", { field, day: "2024-05-07", harvestYear: null });
  const strip = add("strip", { field, name: "A", done: [], wholeField: false, rep: null });
  const rope = add("kit", { type: "rope", name: "R1", marks: 3, spacingM: 0.3 });
  const position = {
    latitudeDeg: 52,
    longitudeDeg: 0,
    accuracyM: 4,
    accuracyMeans: "not-known" as const,
    spreadM: null,
    fixes: 1,
    how: "by-hand" as const,
    atMs: Date.UTC(2024, 4, 7, 9),
  };
  add("observation", lineOf({ visit, field, strip, rope }, { start: { position, why: null } }), {
    entries: marksRead("rrb"),
  });
  visitAddress = `#/visit/${visit}`;
  newLine = `${visitAddress}/new-line`;
  phone = await onPhone(rows());
  await phone.chromium.context.addInitScript(() => {
    const sky: Sky = { permission: "granted", watches: new Map(), last: 0 };
    globalThis.sky = sky;
    Object.defineProperty(navigator, "geolocation", {
      value: {
        watchPosition: (take: (fix: object) => void, miss: (why: object) => void) => {
          sky.last += 1;
          sky.watches.set(sky.last, { take, miss });
          return sky.last;
        },
        clearWatch: (id: number) => sky.watches.delete(id),
      },
    });
    // A phone whose location reference says what its radius stands for (form of the user agent from memory).
    Object.defineProperty(navigator, "userAgent", { value: "Mozilla/5.0 (Linux; Android 10; K)" });
    Object.defineProperty(navigator, "permissions", {
      value: { query: () => Promise.resolve({ state: sky.permission }) },
    });
  });
  await phone.chromium.page.clock.install();
});
afterAll(() => phone.close());

beforeEach(async () => {
  await phone.chromium.reload();
  await phone.goTo("#/measure");
  await phone.reads("Which field are you in?");
  await phone.goTo(newLine);
  await phone.reads("Stand still at the start of the line");
  await phone.chromium.page.waitForFunction(() => globalThis.sky?.watches.size === 1);
});

/** A fix, so many metres north of where the field lies, taken so long ago. */
const fix = (northM: number, accuracyM = 4, ageMs = 0) =>
  phone.chromium.run(
    (north, accuracy, age) => {
      for (const { take } of globalThis.sky?.watches.values() ?? [])
        take({
          coords: { latitude: 52 + north / 111_000, longitude: 0, accuracy, altitude: null },
          timestamp: Date.now() - age,
        });
    },
    northM,
    accuracyM,
    ageMs,
  );
const miss = (code: number) =>
  phone.chromium.run((why) => {
    for (const { miss: say } of globalThis.sky?.watches.values() ?? []) say({ code: why });
  }, code);
const watched = () => phone.chromium.run(() => globalThis.sky?.watches.size ?? 0);
const pass = (ms: number) => phone.chromium.page.clock.runFor(ms);

/** The start of the line that was begun last, as it is stored. */
const startKept = async () => {
  await phone.touch("Start counting");
  await phone.reads("What does the raindrop meet at mark 1?");
  return phone.chromium.run(async () => {
    const id = location.hash.split("/")[2] ?? "";
    const db = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open("mulchmark");
      request.onsuccess = () => resolve(request.result);
    });
    const row = await new Promise<{ revs: { body: { start: Kept } }[] }>((resolve) => {
      const request = db.transaction("records").objectStore("records").get(id);
      request.onsuccess = () => resolve(request.result);
    });
    db.close();
    return row.revs[0]?.body.start ?? { position: null, why: null };
  });
};
interface Kept {
  readonly position: {
    readonly latitudeDeg: number;
    readonly fixes: number;
    readonly accuracyMeans: string;
  } | null;
  readonly why: string | null;
}

it("keeps its box as high with words as with the key that asks first: nothing below moves", async () => {
  const height = () =>
    phone.chromium.run(() => document.querySelector(".standing")?.getBoundingClientRect().height);
  await phone.reads("Looking for the position …");
  const withWords = await height();
  await fix(0);
  await phone.reads(/^Position within about 4 m/);
  expect(await height()).toBe(withWords);
  await phone.chromium.run(() => {
    if (globalThis.sky !== undefined) globalThis.sky.permission = "prompt";
  });
  await phone.goTo(visitAddress);
  await phone.goTo(newLine);
  await phone.reads("Take the position here");
  expect(await height()).toBe(withWords);
});

it("says that the browser refuses, and counts", async () => {
  await miss(1);
  await phone.reads("This browser does not give its position. Measuring goes on without it.");
  expect(await startKept()).toEqual({ position: null, why: "denied" });
});

it("says after ten seconds that it is slow, waits a minute without holding anyone up, and counts", async () => {
  await phone.reads("Looking for the position …");
  await pass(11_000);
  await phone.reads("The position is slow to come.");
  await pass(50_000);
  expect(await startKept()).toEqual({ position: null, why: "slow" });
});

it("does not give a position to a line that it came too late for", async () => {
  await startKept();
  await expect.poll(watched).toBe(0);
});

it("never takes an old position for this place", async () => {
  await fix(500, 4, 60_000);
  await pass(11_000);
  await phone.reads("The position is slow to come.");
  expect(await startKept()).toEqual({ position: null, why: "slow" });
});

it("leaves the walk to the place out of the position of the place", async () => {
  for (let step = 0; step < 20; step += 1) {
    await fix(-300 + step * 15);
    await pass(1000);
  }
  await phone.reads("It wanders: stand still a little longer.");
  for (let step = 0; step < 12; step += 1) {
    await fix(0);
    await pass(1000);
  }
  await phone.chromium.page.getByText("It wanders").first().waitFor({ state: "detached" });
  await phone.reads(/^Position within about 4 m \(2 times in 3\), from/);
  const { position } = await startKept();
  expect(Math.abs((position?.latitudeDeg ?? 0) - 52) * 111_000).toBeLessThan(4);
  expect(position?.accuracyMeans).toBe("68-percent");
});

it("says how old a position is that was lost on the way, keeps none, and takes the next new one alone", async () => {
  await fix(-400);
  await fix(-400);
  await phone.reads("Position within about 4 m");
  await pass(95_000);
  await phone.reads(/No new position. The last one is (9\d|1\d\d) seconds old and will not be taken/);
  await miss(2);
  await phone.reads(/No new position./);
  await fix(0);
  await phone.reads("Position within about 4 m (2 times in 3), from 1 reading.");
  const { position } = await startKept();
  expect(position?.fixes).toBe(1);
  expect(position?.latitudeDeg).toBeCloseTo(52, 6);
});

it("asks anew when a device falls silent, so that one that speaks only when moved is not taken for lost", async () => {
  await fix(0);
  const before = await phone.chromium.run(() => globalThis.sky?.last ?? 0);
  await pass(11_000);
  await phone.chromium.page.waitForFunction(
    (last) => (globalThis.sky?.last ?? 0) > last && globalThis.sky?.watches.size === 1,
    before,
  );
  await fix(0);
  await pass(15_000);
  await phone.reads("Position within about 4 m");
});

it("takes positions whose own clock is a minute off, once they are seen to come as time goes by", async () => {
  for (let step = 0; step < 6; step += 1) {
    await fix(0, 4, 60_000);
    await pass(1000);
  }
  await phone.reads("Position within about 4 m");
});

it("says when a position is coarse, and when a line lies far from all others of the field", async () => {
  await fix(2100, 80);
  await phone.reads("That is coarse; it gets better under open sky.");
  await startKept();
  await phone.goTo(visitAddress);
  await phone.reads(/A line of this day lies 2,1\d\d m from every other line of this field./);
});
