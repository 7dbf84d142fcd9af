import { describe, expect, it } from "vitest";
import { fitted, isHeif } from "../../../src/device/camera.ts";

describe("the size of a kept picture", () => {
  it("has its longest edge at 1600 px, whichever way up it is", () => {
    expect(fitted(4000, 3000)).toEqual({ widthPx: 1600, heightPx: 1200 });
    expect(fitted(3000, 4000)).toEqual({ widthPx: 1200, heightPx: 1600 });
  });
  it("is never larger than the picture, and never nothing", () => {
    expect(fitted(640, 480)).toEqual({ widthPx: 640, heightPx: 480 });
    expect(fitted(1600, 1)).toEqual({ widthPx: 1600, heightPx: 1 });
    expect(fitted(20_000, 3)).toEqual({ widthPx: 1600, heightPx: 1 });
  });
});

describe("HEIC by its first bytes (ISO/IEC 14496-12: box size, `ftyp`, brand)", () => {
  const head = (text: string) => Uint8Array.from([0, 0, 0, 24, ...new TextEncoder().encode(text)]);
  it("is known by its brand", () => {
    for (const brand of ["heic", "heix", "mif1"]) expect(isHeif(head(`ftyp${brand}`))).toBe(true);
  });
  it("is not taken for a film or for an AVIF picture, and a short file is none", () => {
    for (const text of ["ftypisom", "ftypavif", "ftyp", "mdatheic"]) expect(isHeif(head(text))).toBe(false);
    expect(isHeif(new Uint8Array())).toBe(false);
  });
});
