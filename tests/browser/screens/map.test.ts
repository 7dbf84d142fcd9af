/** The map of a field: drawn without one request, and the same as a list. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { until } from "../drivers/driver.ts";
import { HOSTILE, type MapSample, mapSample, placeAt, stand } from "./map-sample.ts";
import { type OnPhone, onPhone, placeAtRest } from "./on-phone.ts";

let phone: OnPhone;
let sample: MapSample;
/** Every address that the page asked for. */
const asked: string[] = [];

/** How many of the scripts and styles that the page itself has asked for hold the drawing of maps. */
const mapParts = () =>
  phone.chromium.run(async () => {
    const parts = performance
      .getEntriesByType("resource")
      .map(({ name }) => name)
      .filter((name) => /assets.*\.(?:js|css)$/u.test(name));
    const texts = await Promise.all([...new Set(parts)].map(async (name) => (await fetch(name)).text()));
    return texts.filter((text) => text.includes("leaflet-container")).length;
  });

beforeAll(async () => {
  sample = mapSample();
  phone = await onPhone(sample.rows);
  phone.chromium.page.on("request", (request) => asked.push(request.url()));
});
afterAll(() => phone.close());

const drawn = () =>
  phone.chromium.run(() => ({
    edges: document.querySelectorAll(".ground path.field-edge").length,
    ways: document.querySelectorAll(".ground path.way").length,
    signs: [...document.querySelectorAll(".ground .sign")]
      .map((one) => one.className.split(" sign-")[1])
      .sort(),
    strips: [...document.querySelectorAll(".ground .of-strip")].map((one) => one.textContent).sort(),
    spots: [...document.querySelectorAll(".ground .of-spot")].map((one) => one.textContent).sort(),
    pictures: document.querySelectorAll(".ground img").length,
  }));

it("is not loaded before a map is looked at", async () => {
  await phone.goTo("#/findings");
  await phone.reads("Findings");
  expect(await mapParts()).toBe(0);
});

it("stands above the details on the page of a field, with its area", async () => {
  await phone.goTo(`#/fields/${sample.field}`);
  await phone.chromium.page.locator(".ground .sign").first().waitFor();
  await expect.poll(drawn).toEqual({
    edges: 1,
    ways: 2,
    signs: ["edge", "hole", "line", "note", "old-grass", "ring", "spot"],
    strips: ["straw left", "straw off"],
    spots: ["by the oak", "edge", "old pasture"],
    pictures: 0,
  });
  // 200 m by 150 m.
  await phone.reads("3 ha, 700 m around");
  await phone.reads("north is up");
  // Its script and its style come now, and were kept for it before.
  await expect.poll(mapParts).toBe(2);
});

it("is left while it still comes closer, and nothing is missing then", async () => {
  await phone.chromium.page.locator(".ground-keys").getByRole("button", { name: "Closer" }).tap();
  await phone.goTo("#/findings");
  await phone.reads("Findings");
  // The library ends a zoom after a quarter of a second; what goes wrong on the page fails the test that closes it.
  await phone.chromium.page.waitForTimeout(400);
  await phone.goTo(`#/fields/${sample.field}`);
  await phone.chromium.page.locator(".ground .sign").first().waitFor();
});

it("writes no name over another one or over a sign", async () => {
  await placeAtRest(phone.chromium.page.locator(".ground .sign").first());
  const over = await phone.chromium.run(() => {
    const boxes = [...document.querySelectorAll(".ground-name, .sign svg")]
      .filter((one) => getComputedStyle(one).visibility === "visible")
      .map((one) => ({ name: one.textContent ?? "", box: one.getBoundingClientRect() }));
    return boxes.flatMap(({ name, box }, at) =>
      name === ""
        ? []
        : boxes
            .filter(
              ({ box: other }, place) =>
                place !== at &&
                box.left < other.right &&
                other.left < box.right &&
                box.top < other.bottom &&
                other.top < box.bottom,
            )
            .map((other) => `${name} over ${other.name === "" ? "a sign" : other.name}`),
    );
  });
  expect(over).toEqual([]);
});

it("says in its name what it is, and opens as a screen of its own", async () => {
  // The page of the field shows no list: its label leads to where one is.
  const region = (list: string) =>
    phone.chromium.page.getByRole("region", {
      name: `Map of Top Field: 7 things on it. ${list}`,
      exact: true,
    });
  await expect.poll(() => region("“Open the map” leads to the same as a list.").count()).toBe(1);
  await phone.touch("Open the map");
  await expect.poll(() => region("The list that follows holds the same.").count()).toBe(1);
  await phone.reads("What lies on it");
  await phone.reads("Distances are from the middle of the field.");
  // The middle of the ground is 100 m east and 75 m north of its corner; the ring 60 m east, 90 m north.
  const ring = phone.chromium.page.locator(".rows li", { hasText: "Ring A" });
  await expect.poll(() => ring.textContent()).toContain("43 m west");
  await phone.reads("1 test has no position.");
});

it("lists the boundary and the strips, which have no sign, and leads to what belongs to them", async () => {
  const list = phone.chromium.page.locator(".rows li");
  // The boundary, two strips and seven signs.
  await expect.poll(() => list.count()).toBe(10);
  const row = (at: number) => list.nth(at).locator("a");
  await expect.poll(() => row(0).textContent()).toBe("Boundary3 ha, 700 m aroundOpen");
  expect(await row(0).getAttribute("href")).toBe(`#/fields/${sample.field}/boundary`);
  // One line of "straw off" has no position, so its hole alone tells where it lies: 40 m east and 15 m south of
  // the middle of the ground.
  const off = list.filter({ has: phone.chromium.page.getByText("straw off", { exact: true }) });
  await expect.poll(() => off.textContent()).toContain("strip · 43 m east");
  expect(await off.locator("a").getAttribute("href")).toBe(`#/fields/${sample.field}`);
});

it("writes what somebody typed as text, whatever it holds", async () => {
  await phone.reads(HOSTILE);
  expect(await phone.chromium.run(() => document.title)).not.toBe("1");
});

it("tells more of a sign that is touched, and leads to it", async () => {
  await phone.chromium.page.locator(".ground .sign-hole").tap();
  const picked = phone.chromium.page.locator(".picked");
  await picked.getByText("Hole 1").waitFor();
  await expect.poll(() => picked.locator("a").getAttribute("href")).toContain("/sheet");
});

it("comes closer by keys of the keyboard, and shows the scale in the person's own unit", async () => {
  const scale = phone.chromium.page.locator(".ground-foot span").first();
  await placeAtRest(phone.chromium.page.locator(".ground .sign").first());
  await expect.poll(() => scale.textContent()).toMatch(/^(?:20|50|100) m$/);
  const before = await scale.textContent();
  await phone.chromium.page.locator(".ground .leaflet-container").focus();
  await phone.chromium.page.keyboard.press("+");
  await phone.chromium.page.keyboard.press("+");
  await until("the scale changed", async () => (await scale.textContent()) !== before);
  await phone.touch("Whole field");
  await until("the scale is as before", async () => (await scale.textContent()) === before);
});

it("shows where one is with its accuracy, counts distances from there, and never passes an old place off", async () => {
  const { page, context } = phone.chromium;
  await context.grantPermissions(["geolocation"]);
  await stand(phone, 60, 80, 12);
  await phone.touch("Where am I?");
  await phone.reads("You stand within about 12 m of the middle of the circle.");
  await phone.reads("Distances are from where you stand.");
  const ring = page.locator(".rows li", { hasText: "Ring A" });
  await expect.poll(() => ring.textContent()).toContain("10 m north");
  await expect.poll(() => page.locator("path.here-now").count()).toBe(1);
  await page.clock.install();
  await page.clock.runFor(45_000);
  await phone.reads(
    /No new position\. The dashed circle is where you stood \d+ seconds ago, not where you are now\./,
  );
  await expect.poll(() => page.locator("path.here-then").count()).toBe(1);
  await expect.poll(() => page.locator("path.here-now").count()).toBe(0);
  await phone.reads("Distances are from the middle of the field.");
});

it("holds only what was measured on a visit when it is asked for one", async () => {
  await phone.goTo(`#/fields/${sample.field}/map/${sample.visit}`);
  await phone.reads("What lies on it");
  await phone.chromium.page.locator(".ground .sign-ring").waitFor();
});

it("says what would show up while nothing of a field has a position", async () => {
  await phone.goTo(`#/fields/${sample.bare}/map`);
  await phone.reads("Nothing here has a position yet.");
  const rows = phone.chromium.page.locator(".rows li");
  await expect.poll(() => rows.allTextContents()).toEqual(["Boundarynone yetOpen"]);
});

it("asked nobody else for anything", async () => {
  const own = await phone.chromium.run(() => location.origin);
  expect(asked.filter((url) => !url.startsWith(own) && !url.startsWith("blob:"))).toEqual([]);
  expect(placeAt(0, 0).latitudeDeg).toBe(52);
});
