/** One picture to hand over: drawn on the phone, looked at, then shared or saved. */
import { readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, it } from "vitest";
import { href } from "../../../src/screens/parts/route.ts";
import { daySample, putPhotoBytes } from "./day-sample.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

let phone: OnPhone;
const sample = daySample({ photos: true });
const page = () => phone.chromium.page;
const image = () => page().locator(".paper-frame img");
const alt = async () => (await image().getAttribute("alt")) ?? "";

/** Colours at places of the preview, as red, green and blue. */
const coloursAt = async (...places: readonly (readonly [number, number])[]): Promise<readonly string[]> => {
  await image().waitFor();
  return phone.chromium.run(async (at) => {
    const shown = document.querySelector<HTMLImageElement>(".paper-frame img");
    const canvas = document.createElement("canvas");
    canvas.width = 1080;
    canvas.height = 1350;
    const pen = canvas.getContext("2d");
    if (shown === null || pen === null) return [];
    await shown.decode();
    pen.drawImage(shown, 0, 0);
    return at.map(([x = 0, y = 0]) => [...pen.getImageData(x, y, 1, 1).data.slice(0, 3)].join(" "));
  }, places);
};

beforeAll(async () => {
  phone = await onPhone(sample.rows);
  await putPhotoBytes(phone);
  await phone.goTo(href({ at: "visit", visit: sample.visit }));
  await phone.touch("One picture to send");
});
afterAll(() => phone.close());

it("says in the picture two numbers with samples and range, the guess, day, field, and what it does not show", async () => {
  for (const words of [
    "Long Bottom, 7 May 2024",
    "straw left: 83 % (range",
    "carried off: 38 % (range",
    "4 lines",
    "guessed before: 60 %",
    "45 points more ground cover",
    "What this does not show",
    "Ground and treatment cannot be told apart",
    "Mulchmark",
  ])
    await expect.poll(alt).toContain(words);
});

it("is 1080 by 1350 points of paper with two photos in it", async () => {
  const size = () =>
    phone.chromium.run(() => {
      const shown = document.querySelector<HTMLImageElement>(".paper-frame img");
      return [shown?.naturalWidth ?? 0, shown?.naturalHeight ?? 0];
    });
  await expect.poll(size).toEqual([1080, 1350]);
  await expect.poll(async () => (await coloursAt([20, 20]))[0]).toBe("251 247 236");
  await expect.poll(async () => (await coloursAt([300, 250]))[0]).not.toBe("251 247 236");
});

it("leaves photos out that were taken off, and draws the scale in their place", async () => {
  for (const at of [0, 1]) await page().locator(".photo-tick").nth(at).tap();
  await page().locator(".photo-tick input:checked").first().waitFor({ state: "detached" });
  await expect.poll(async () => (await coloursAt([300, 250]))[0]).toBe("251 247 236");
});

it("takes another number, and the old-grass spot beside one strip", async () => {
  await phone.touch("Soaked in");
  await page().getByRole("group", { name: "Second strip" }).getByText("old-grass spot").tap();
  await expect.poll(alt).toContain("soaked in after 60 min");
  await expect.poll(alt).toContain("old-grass spot: 95 mm");
  await expect.poll(alt).toContain("no strip to compare with");
  expect(await alt()).not.toContain("differ");
});

it("is saved as a picture where the browser cannot share, with words where it lies", async () => {
  const [download] = await Promise.all([page().waitForEvent("download"), phone.touch("Save this picture")]);
  expect(download.suggestedFilename()).toBe("mulchmark-long-bottom-2024-05-07.png");
  const bytes = readFileSync(await download.path());
  // The eight bytes that every PNG begins with (ISO/IEC 15948, 5.2).
  expect([...bytes.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  await phone.reads("Look under Downloads or Files");
});

it("is saved in plain words as well", async () => {
  const [download] = await Promise.all([page().waitForEvent("download"), phone.touch("Save it in words")]);
  expect(download.suggestedFilename()).toBe("mulchmark-long-bottom-2024-05-07.txt");
  expect(readFileSync(await download.path(), "utf8")).toMatch(/^Long Bottom, 7 May 2024\n/);
});

it("goes out by the phone's own sheet where that is there", async () => {
  await phone.chromium.run(() => {
    const given: string[] = [];
    Object.assign(window, { given });
    Object.defineProperty(navigator, "canShare", { value: () => true, configurable: true });
    Object.defineProperty(navigator, "share", {
      value: async ({ files }: { files: File[] }) => {
        given.push(...files.map(({ name, type }) => `${name} ${type}`));
      },
      configurable: true,
    });
  });
  await phone.touch("Ground cover");
  await phone.touch("Send this picture");
  await phone.reads("Handed over.");
  expect(await phone.chromium.run(() => (window as unknown as { given: string[] }).given)).toEqual([
    "mulchmark-long-bottom-2024-05-07.png image/png",
  ]);
});
