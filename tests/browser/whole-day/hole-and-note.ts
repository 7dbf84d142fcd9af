/** A spade hole from the mulch to the last worm, a total on the other strip, and a note with a photo. */
import { it } from "vitest";
import { until } from "../drivers/driver.ts";
import { type Day, times } from "./day.ts";

export const digHoles = (today: () => Day): void => {
  it("sets out the hole with a template that is put into the kit on the way", async () => {
    const { touch, choose, press, write, stand, reads } = today();
    await touch("Dig a hole");
    await stand(70, 72);
    await reads("Position within about 4 m");
    await press("I have read this");
    await choose("own sizes");
    await press("Add a hole template");
    await write("Name", "frame");
    await write("One side, in cm", "20");
    await press("Keep this hole template");
    await reads("20 × 20 cm");
    await write("Depth, in cm", "20");
    await choose("north half");
    await choose("between rows");
    await write("Guess first", "8");
    await press("Start hole 1");
    await reads("Sort the mulch first");
  });

  it("sorts the mulch, then the soil, and a worm too many is taken back", async () => {
    const { chromium, answers, press, reads, figure } = today();
    await answers(...times(3, "worm"));
    await reads("Taken: worm from the mulch");
    await chromium.page.tap('[data-layer="soil"]');
    await answers(...times(10, "worm"));
    await figure("13");
    await press("Undo");
    await reads("Undone: worm from the soil");
    await figure("12");
  });

  it("places what is in the pot", async () => {
    const { answers, press, reads } = today();
    await press("Place the worms");
    await answers(...times(5, "young"), ...times(2, "surface"), ...times(4, "topsoil"), "deep");
    await reads("12 found, 12 placed");
    await press("Close the hole");
    await reads("Hole 1 is closed.");
  });

  it("takes a total alone on the other strip", async () => {
    const { chromium, touch, choose, press, answer, reads } = today();
    await touch("Next hole");
    await choose("south half");
    await chromium.page.getByRole("button", { name: /^Start hole 2/ }).tap();
    await chromium.page.tap('[data-layer="soil"]');
    await press("Count at once");
    await answer("4");
    await reads("Taken: 4 worms from the soil, counted at once");
    await press("Close the hole");
    await reads("Hole 2 is closed.");
  });
};

/** A photo as a phone takes it: drawn in the page, larger than any screen. */
const takePhoto = async ({ chromium }: Day): Promise<Buffer> =>
  Buffer.from(
    await chromium.run(() => {
      const canvas = document.createElement("canvas");
      canvas.width = 2400;
      canvas.height = 1800;
      const pen = canvas.getContext("2d");
      if (pen === null) return "";
      for (let row = 0; row < 60; row++) {
        pen.fillStyle = row % 2 === 0 ? "#7a5c22" : "#24512f";
        pen.fillRect(row * 40, 0, 40, 1800);
      }
      return canvas.toDataURL("image/jpeg", 0.95).split(",")[1] ?? "";
    }),
    "base64",
  );

export const writeNote = (today: () => Day): void => {
  it("writes a note on a strip, with a photo", async () => {
    const { chromium, back, touch, choose, reads } = today();
    await back();
    await touch("Write a note");
    await chromium.page
      .getByRole("textbox", { name: "What do you see here?" })
      .pressSequentially("Slaked crust by the gate.");
    await reads("On record.");
    await choose("north half");
    await chromium.page.locator("input[type=file]:not([capture])").setInputFiles({
      name: "crust.jpg",
      mimeType: "image/jpeg",
      buffer: await takePhoto(today()),
    });
    await until(
      "the photo is shown",
      async () => (await chromium.page.locator(".photo-rows img").count()) === 1,
    );
  });
};
