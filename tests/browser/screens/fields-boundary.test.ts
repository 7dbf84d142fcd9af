/** A boundary walked and touched: bad positions, a page that dies, an edge that crosses itself. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { until } from "../drivers/driver.ts";
import { type MapSample, mapSample, stand, storedBody } from "./map-sample.ts";
import { type Hands, handsOn, type OnPhone, onPhone, placeAtRest } from "./on-phone.ts";

let phone: OnPhone;
let sample: MapSample;
/** Durability of every transaction that writes small values. */
const durabilities = () => phone.chromium.run(() => (Reflect.get(globalThis, "written") as string[]) ?? []);

beforeAll(async () => {
  sample = mapSample();
  phone = await onPhone(sample.rows);
  await phone.chromium.context.grantPermissions(["geolocation"]);
  await phone.chromium.context.addInitScript(() => {
    const written: string[] = [];
    Reflect.set(globalThis, "written", written);
    const begin = IDBDatabase.prototype.transaction;
    IDBDatabase.prototype.transaction = function (names, mode, options) {
      if (mode === "readwrite" && String(names) === "meta") written.push(options?.durability ?? "default");
      return begin.call(this, names, mode, options);
    };
  });
  await phone.chromium.reload();
});
afterAll(() => phone.close());

const corners = (count: number) => phone.reads(new RegExp(`^${count} corners?$`));
/** Walks to a place and waits until it is written down as this corner. */
const walkTo = async (eastM: number, northM: number, corner: number) => {
  await stand(phone, eastM, northM);
  await corners(corner);
};
const boundaryOf = async (id: string) =>
  ((await storedBody(phone, id))?.["boundary"] ?? null) as { latitudeDeg: number }[] | null;
const cornersKept = async () => (await boundaryOf(sample.bare))?.length;

it("takes no corner by itself where the position is bad, and says why", async () => {
  await phone.goTo(`#/fields/${sample.bare}`);
  await phone.touch("Make a boundary");
  await phone.reads("No boundary yet.");
  await phone.touch("Walk its edge");
  // Once it is asked for: a position of more than ten seconds ago would be none.
  await stand(phone, 0, -300, 200);
  await phone.reads(/only within about 200 m: too coarse for an edge/);
  await phone.reads("no corner yet");
});

it("writes corners down on the way, each once it is on the disk, and none while one stands still", async () => {
  await walkTo(0, -300, 1);
  // A phone that lies still wanders by a metre or two.
  await stand(phone, 1, -301);
  await phone.reads("Standing still adds no corners.");
  await walkTo(100, -300, 2);
  await corners(2);
  const kept = await durabilities();
  expect(kept.filter((one) => one === "strict").length).toBeGreaterThanOrEqual(2);
});

it("takes the last corner back and brings it again", async () => {
  await phone.touch("Undo");
  // The walk goes on from the phone's place: a corner there is taken anew only once it has moved.
  await corners(1);
  await phone.touch("Redo");
  await corners(2);
});

it("says in plain words what two corners lack, and loses none", async () => {
  await phone.touch("Keep the boundary");
  await phone.reads("An edge needs 3 different corners, and there are 2. Go on; nothing is lost.");
  await corners(2);
});

it("pauses, and takes no corner meanwhile", async () => {
  await phone.touch("Pause");
  await stand(phone, 100, -250);
  await phone.reads("Paused.");
  await new Promise((resolve) => setTimeout(resolve, 400));
  await corners(2);
});

it("has every corner after the page died, and goes on only when told to", async () => {
  phone = { ...phone, ...(await afterDeath(phone)) };
  await corners(2);
  await phone.reads("Paused.");
  // Where the phone was carried meanwhile is no corner before somebody says so.
  await stand(phone, 100, -240);
  await new Promise((resolve) => setTimeout(resolve, 400));
  await corners(2);
  await phone.touch("Go on walking");
  // Said anew: by now it may be older than ten seconds.
  await stand(phone, 100, -240);
  await corners(3);
  await walkTo(100, -200, 4);
  await walkTo(0, -200, 5);
  // 100 m by 100 m.
  await phone.reads("400 m around");
  await phone.touch("Keep the boundary");
  await phone.reads("1 ha, 400 m around");
  // The walk says the same of its corners: the words may stand before the boundary is kept.
  await expect.poll(cornersKept).toBe(5);
});

/** Where the handle of a corner lies. */
const handleOf = (number: number) =>
  placeAtRest(phone.chromium.page.locator(".ground .corner", { hasText: new RegExp(`^${number}$`) }));

it("touches corners on the map, drags one, and takes the dragging back", async () => {
  const { page } = phone.chromium;
  await phone.goTo(`#/fields/${sample.bare}/boundary`);
  await phone.touch("Correct its corners");
  await corners(5);
  const box = await handleOf(1);
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x - 30, box.y + 30, { steps: 6 });
  await page.mouse.up();
  await until("the corner moved", async () => {
    const now = await page.locator(".ground .corner", { hasText: /^1$/ }).boundingBox();
    return now !== null && Math.abs(now.x - box.x) > 15;
  });
  await phone.touch("Undo");
  await until("the corner is back", async () => {
    const now = await page.locator(".ground .corner", { hasText: /^1$/ }).boundingBox();
    return now !== null && Math.abs(now.x - box.x) < 3;
  });
  await phone.touch("Corner at the cross");
  await corners(6);
  await phone.touch("Undo");
  await corners(5);
});

it("names both sides of an edge that crosses itself, and changes nothing of the field", async () => {
  const { page } = phone.chromium;
  // The second corner carried over to the far side of the field.
  const target = await handleOf(5);
  const box = await handleOf(2);
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(target.x + 12, target.y - 40, { steps: 8 });
  await page.mouse.up();
  const before = await boundaryOf(sample.bare);
  await phone.touch("Keep the boundary");
  await phone.reads(
    /The edge crosses itself: the side that leads to corner \d and the side that leads to corner \d\./,
  );
  await expect.poll(() => page.locator("path.crossing").count()).toBe(2);
  expect(await boundaryOf(sample.bare)).toEqual(before);
  await corners(5);
  await phone.touch("Undo");
  await phone.touch("Keep the boundary");
  await phone.reads("1 ha, 400 m around");
});

it("sets corners by keys alone", async () => {
  const { page } = phone.chromium;
  await phone.goTo(`#/fields/${sample.bare}/boundary`);
  await phone.touch("Correct its corners");
  await page.getByRole("button", { name: /^Corner 3/ }).focus();
  await page.keyboard.press("Enter");
  await phone.reads("The next corner comes after this one.");
  await page.locator(".ground .leaflet-container").focus();
  await page.keyboard.press("ArrowUp");
  await page.getByRole("button", { name: "Move it to the cross" }).focus();
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: "Remove it" }).focus();
  await page.keyboard.press("Enter");
  await corners(4);
  await phone.touch("Throw these corners away");
  await phone.touch("Yes, throw them away");
  await phone.reads("How shall the boundary be made?");
  expect(await cornersKept()).toBe(5);
});

it("takes a boundary away when asked twice", async () => {
  await phone.touch("Take the boundary away");
  await phone.touch("Yes, take it away");
  await phone.reads("Make a boundary");
  await expect.poll(() => boundaryOf(sample.bare)).toBeNull();
});

/** Kills the page in the middle of its work, and opens its address in another window of the same phone. */
const afterDeath = async (before: OnPhone): Promise<Hands & Pick<OnPhone, "chromium">> => {
  const { chromium } = before;
  const address = await chromium.run(() => location.href);
  const session = await chromium.context.newCDPSession(chromium.page);
  const died = chromium.page.waitForEvent("crash");
  void session.send("Page.crash").catch(() => undefined);
  await died;
  const tab = await chromium.tab();
  await chromium.page.close();
  await tab.open(address);
  return { chromium: { ...chromium, ...tab, close: chromium.close }, ...handsOn(tab) };
};
