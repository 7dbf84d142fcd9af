/** A short day in every engine: the first start, no host from then on, a line, a ring, a hole, one file out. */
import { afterEach, describe, expect, it } from "vitest";
import { openVolume } from "../../src/exchange/archive/open.ts";
import { startChromium } from "../browser/drivers/chromium.ts";
import { type Driver, until, untilControlled } from "../browser/drivers/driver.ts";
import { startFirefox } from "../browser/drivers/firefox.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "../browser/drivers/serve-built.ts";
import { startWebKit } from "../browser/drivers/webkit.ts";
import { answer, reads, touch, type, write } from "./by-script.ts";

const engines: readonly { readonly name: string; readonly start: () => Promise<Driver> }[] = [
  { name: "Chromium", start: startChromium },
  { name: "Firefox", start: startFirefox },
  { name: "WebKit", start: startWebKit },
];

/** The rows of a table of the file, without its head. */
const rowsIn = async (copy: Blob, name: string): Promise<string[]> => {
  const opened = await openVolume(copy);
  if (!opened.ok) throw new Error(opened.problem.code);
  const listed = opened.value.files.find((one) => one.name === name);
  if (listed === undefined) throw new Error(`no ${name} in the copy`);
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  expect((await opened.value.read(listed, (piece) => void pieces.push(piece))).ok).toBe(true);
  return (await new Blob(pieces).text()).trim().split("\r\n").slice(1);
};

/** The host is gone from here on. */
const firstStart = async (on: Driver, host: BuiltServer): Promise<void> => {
  await on.open(host.url);
  await reads(on, "Nothing is sent anywhere.");
  await untilControlled(on);
  await host.close();
  await on.reload();
  await touch(on, "Metric");
  await touch(on, "Measure now, name the field later");
};

const countLine = async (on: Driver): Promise<void> => {
  await touch(on, "Count a line");
  await touch(on, "Add a rope");
  await write(on, "Name", "R1");
  await write(on, "How many marks?", "10");
  await write(on, "From mark to mark", "15.5");
  await touch(on, "Keep this rope");
  await reads(on, "10 marks, 15.5 cm apart");
  await touch(on, "Start counting");
  await reads(on, "What does the raindrop meet at mark 1?");
  await answer(on, "residue", 4);
  await reads(on, "What does the raindrop meet at mark 5?");
  await on.reload();
  await reads(on, "What does the raindrop meet at mark 5?");
  await answer(on, "residue", 3);
  await answer(on, "bare", 3);
  await reads(on, "All 10 marks are read.");
  await touch(on, "See this line");
  // 7 of 10.
  await reads(on, "Strip so far: 70 %, 1 line. Too few to give a range.");
  await touch(on, "All of this day");
};

const readRing = async (on: Driver): Promise<void> => {
  await touch(on, "Set out a ring");
  await touch(on, "I have read this");
  await touch(on, "I understand");
  await write(on, "1. Inside edge", "30");
  await touch(on, "Keep this ring");
  await reads(on, "30 cm across");
  await touch(on, "whole field");
  await touch(on, "Set it out");
  await touch(on, "Start");
  await type(on, "120");
  await reads(on, "Taken: 120 mm deep");
  await answer(on, "look", 1);
  await reads(on, "how deep was the water at");
  // The moment is kept, and its number may come after the page was loaded again.
  await on.reload();
  await reads(on, "how deep was the water at");
  await type(on, "113");
  await reads(on, "Taken: 113 mm deep");
  await touch(on, "Back");
  // 120 less 113.
  await reads(on, "7 mm in");
  await touch(on, "Back");
};

const digHole = async (on: Driver): Promise<void> => {
  await touch(on, "Dig a hole");
  await touch(on, "whole field");
  await touch(on, "Start hole 1");
  await reads(on, "Sort the mulch first");
  await answer(on, "worm", 3);
  await reads(on, "Taken: worm from the mulch");
  await on.reload();
  await until("the figure says 3", () => on.run(() => document.querySelector(".big")?.textContent === "3"));
};

/** Makes a copy, and gives what the app hands to the browser to be saved. */
const makeCopy = async (on: Driver): Promise<Blob> => {
  await on.run(() => {
    location.hash = "#/send";
    const make = URL.createObjectURL.bind(URL);
    URL.createObjectURL = (made) => {
      Reflect.set(globalThis, "handedOver", made);
      return make(made);
    };
  });
  await touch(on, "Make a copy");
  // A field, its strip, the visit, a rope and a ring, and the three tests.
  await reads(on, "Read back and compared: 8 records, 0 photos.");
  await touch(on, "Save");
  await reads(on, "The browser has it now.");
  const base64 = await on.run(async () => {
    const bytes = new Uint8Array(await (Reflect.get(globalThis, "handedOver") as File).arrayBuffer());
    let text = "";
    for (const byte of bytes) text += String.fromCharCode(byte);
    return btoa(text);
  });
  return new Blob([Buffer.from(base64, "base64")]);
};

/** Chooses the file that was handed over as one to bring in. */
const chooseCopy = (on: Driver): Promise<void> =>
  on.run(() => {
    const files = new DataTransfer();
    files.items.add(new File([Reflect.get(globalThis, "handedOver") as File], "copy.zip"));
    const into = document.querySelector<HTMLInputElement>("input[type=file]");
    if (into === null) return;
    into.files = files.files;
    into.dispatchEvent(new Event("change", { bubbles: true }));
  });

describe.each(engines)("a short day in $name", ({ start }) => {
  let driver: Driver | undefined;
  let host: BuiltServer | undefined;
  afterEach(async () => {
    await driver?.close();
    await host?.close();
    driver = undefined;
    host = undefined;
  });

  it("keeps all of it through reloads without a host, and hands it on in one file", async () => {
    host = await serveBuilt({ directory: builtFolder, under: "/farm/" });
    driver = await start();
    const on = driver;
    await firstStart(on, host);
    await countLine(on);
    await readRing(on);
    await digHole(on);

    const copy = await makeCopy(on);
    expect(await rowsIn(copy, "view/marks.csv")).toHaveLength(10);
    const readings = await rowsIn(copy, "view/ring-readings.csv");
    expect(readings.flatMap((row) => /,(\d+),mm,water-depth,/.exec(row)?.[1] ?? [])).toEqual(["120", "113"]);
    expect(await rowsIn(copy, "view/hole-entries.csv")).toHaveLength(3);

    await chooseCopy(on);
    await reads(on, "Everything in this file is here already.");
  });
});
