/** Two rings at once: one read by a ruler, one filled from a bottle whose first pour only wets the ground. */

import { it } from "vitest";
import { MOVED_MS } from "../../../src/device/glass.ts";
import type { Day } from "./day.ts";

/** Opens the screen of a ring from the board. */
const open = async (day: Day, letter: string): Promise<void> => {
  await day.chromium.page.locator(`[data-ring="${letter}"] a`).first().tap();
  await day.chromium.page.locator(".count.ring .tools").first().waitFor();
};

/** When the ring that was begun last ran, by the clock of the page. */
let begunMs = 0;
const nowMs = ({ chromium }: Day): Promise<number> => chromium.run(() => Date.now());

/** Goes on to so many minutes after that, whatever the hands took so far: a slow machine makes no other readings. */
const passTo = async (day: Day, minutes: number): Promise<void> =>
  day.later(Math.max(0, minutes - ((await nowMs(day)) - begunMs) / 60_000));

export const setOutRings = (today: () => Day): void => {
  it("sets out a ring that is put into the kit on the way, and says first what to mind", async () => {
    const { touch, press, write, choose, stand, reads } = today();
    await touch("All of this day");
    await touch("Set out a ring");
    await reads("Buried cables, pipes and drains");
    await press("I have read this");
    await reads("A locked phone cannot ring.");
    await press("I understand");
    await stand(60, 70);
    await reads("Position within about 4 m");
    await write("1. Inside edge to inside edge, in cm", "30");
    await press("Keep this ring");
    await reads("30 cm across");
    await choose("north half");
    await choose("between rows");
    await choose("mulch kept");
    await write("Your guess, in mm", "40");
    await press("Set it out");
    await reads("Water in? Then start the clock.");
  });

  it("starts it with the water at 150 mm", async () => {
    const { press, reads, answer } = today();
    await press("Start");
    await reads("how deep was the water at");
    await answer("150");
    await reads(/Next reading .* in 2/u);
  });

  it("sets out the other ring, with a bottle", async () => {
    const { back, touch, press, write, choose, reads } = today();
    await back();
    await touch("Set out a ring");
    await press("Add a ring");
    await write("1. Inside edge to inside edge, in cm", "30");
    await press("Keep this ring");
    await reads("B");
    await choose("south half");
    await choose("between rows");
    await choose("mulch kept");
    await choose("one measured pour");
    await press("Add a bottle");
    await write("Name", "litre");
    await write("It holds, full to its mark, in mL", "1000");
    await press("Keep this bottle");
    await choose("litre");
    await press("Set it out");
    await press("Start");
    begunMs = await nowMs(today());
    await press("Bottle: 1000 mL");
    await reads("The first pour only wets the ground");
  });
};

export const readRings = (today: () => Day): void => {
  it("reads the ruler after five minutes, and writes down a burrow", async () => {
    const { back, press, answer, reads, touch, figure } = today();
    await back();
    await open(today(), "A");
    await passTo(today(), 5);
    await press("Read now");
    await answer("136");
    // 150 less 136.
    await figure("14 mm");
    await touch("Something happened");
    await touch("Burrow in the ring");
    await reads("Burrow in the ring");
  });

  it("pours again once the first litre is gone", async () => {
    const { back, press, reads, figure } = today();
    await back();
    await open(today(), "B");
    await passTo(today(), 6);
    await press("Water gone now");
    await reads("soaked in after 6 min");
    // 1 L on a circle of 30 cm: 1000 cm³ / (π · 15² cm²) = 1.415 cm.
    await figure("14 mm");
    await press("Poured");
    await press("Bottle: 1000 mL");
    await reads(/^Taken: 1000 mL/);
  });

  it("reads both after half an hour, from the board", async () => {
    const { back, chromium, press, reads, answer, touch } = today();
    await back();
    await passTo(today(), 30);
    await press("Read now: Ring A");
    await reads("1 number missing");
    // The rings change places, and a touch right upon that is not taken; no hand finds the other key so fast.
    await chromium.page.waitForTimeout(2 * MOVED_MS);
    await press("Read now: Ring B");
    await touch("Write down 2 numbers");
    await answer("98");
    await press("All gone");
    // 150 less 98; and two litres of 14.15 mm each.
    await reads("52 mm in 30 min");
    await reads("28 mm in 30 min");
  });

  it("reads the ruler after an hour, and both tests are finished", async () => {
    const { back, chromium, press, answer, reads, figure } = today();
    await open(today(), "A");
    await passTo(today(), 60);
    await press("Read now");
    await answer("76");
    // 150 less 76.
    await figure("74 mm");
    await back();
    for (const letter of ["A", "B"]) {
      await press("Stop a ring");
      await press(`Stop: Ring ${letter}`);
    }
    await chromium.page.locator('[data-ring="B"]').getByText("stopped: finished").waitFor();
    await back();
    await reads("Today in Long Bottom");
  });
};
