/** The first minutes: language, units, who measures; a field with its edge walked, its soil and two strips. */
import { it } from "vitest";
import type { Day } from "./day.ts";

export const firstRun = (today: () => Day): void => {
  it("says first that nothing is sent anywhere, and says it again without signal", async () => {
    const { reads, loseSignal } = today();
    await reads("Nothing is sent anywhere.");
    await loseSignal();
    await reads("Nothing is sent anywhere.");
  });

  it("asks for the language, the units and who measures, and goes on to the first field", async () => {
    const { choose, write, press, reads } = today();
    await choose("UK & Ireland");
    await choose("Metric");
    await write("Name", "Kim");
    await press("Add a field");
    await reads("What is it called?");
  });
};

export const addField = (today: () => Day): void => {
  it("writes down a field and the farm that it belongs to", async () => {
    const { write, choose, press, touch, reads } = today();
    await write("What is it called?", "Long Bottom");
    await choose("another farm");
    await write("Name of the farm", "Hollow Lane");
    await press("Back to the list");
    await touch("Long Bottom");
    await reads("Hollow Lane");
  });

  it("walks its edge: four corners, 200 m by 100 m", async () => {
    const { stand, touch, press, reads } = today();
    await stand(0, 0);
    await touch("Make a boundary");
    await touch("Walk its edge");
    await reads("1 corner");
    for (const [at, [eastM, northM]] of (
      [
        [200, 0],
        [200, 100],
        [0, 100],
      ] as const
    ).entries()) {
      await stand(eastM, northM);
      await reads(`${at + 2} corners`);
    }
    await press("Keep the boundary");
    // 200 m · 100 m is 2 ha, 2 · (200 + 100) m is 600 m; the earth is not quite flat.
    await reads(/^2 ha, (599|600|601) m around$/);
  });

  it("says what soil it is", async () => {
    const { chromium, touch, choose, reads } = today();
    await touch(/^Soil/);
    await choose("sandy loam");
    await chromium.page.getByRole("button", { name: "Done", exact: true }).last().tap();
    await reads("sandy loam");
  });

  it("adds two strips with what was done on each", async () => {
    const { write, choose, press, touch, reads } = today();
    await press("Add a strip");
    await write("Name of the strip", "north half");
    await choose("straw left");
    await choose("not tilled");
    await press("Done");
    await reads("straw left · not tilled");
    await press("Add a strip");
    await write("Name of the strip", "south half");
    await choose("straw carried off");
    await press("Done");
    await reads("straw carried off");
    await touch("Measure here today");
    await reads("Today in Long Bottom");
    await reads("12 May 2026");
  });
};
