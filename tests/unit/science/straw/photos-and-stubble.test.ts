import { expect, it } from "vitest";
import type { LineCounts } from "../../../../src/science/ground-cover/line.ts";
import { coverOfPhotos } from "../../../../src/science/ground-cover/photo-points.ts";
import { stubbleHeight } from "../../../../src/science/ground-cover/standing-stubble.ts";
import { coverOfStrip } from "../../../../src/science/ground-cover/strip.ts";
import { EMPTY, line, PLAIN, reached, reasonOf } from "../counts.ts";

it("points on photos: the estimator of lines, with the photo as the unit", () => {
  const photos = [44, 36, 52, 41, 47].map((hits) => line(hits));
  const cover = reached(coverOfPhotos(photos, "residue", PLAIN));
  const lines = reached(coverOfStrip(photos, "residue", PLAIN));
  expect(cover.value).toBeCloseTo(0.44, 12);
  expect(cover.range).toEqual(lines.range);
  expect(cover).toMatchObject({ n: 5, sampledBy: "photos", unit: "1" });
  expect(cover.methods).toEqual(["photo-points", ...lines.methods]);
  expect(cover.sources).toContain("corak-1993");
});

it("points on photos: says it of photos, and that they read lower than lines", () => {
  const codes = (hits: readonly number[]) =>
    reached(
      coverOfPhotos(
        hits.map((hit) => line(hit)),
        "residue",
        PLAIN,
      ),
    ).cautions.map(({ code }) => code);
  expect(codes([40, 40, 40])).toEqual(["science/photos-agree-to-the-point", "science/photos-read-lower"]);
  expect(codes([40, 41, 40])).toEqual([
    "science/photos-agree-better-than-chance",
    "science/photos-read-lower",
  ]);
  const dark = reached(coverOfPhotos([line(40), line(50), line(60), EMPTY], "residue", PLAIN));
  expect(dark.n).toBe(3);
  expect(dark.cautions.map(({ code }) => code)).toContain("science/photos-without-points");
});

it("points on photos: all, none, few and unread points are said of points", () => {
  const codes = (photos: readonly LineCounts[]) =>
    reached(coverOfPhotos(photos, "residue", PLAIN)).cautions.map(({ code }) => code);
  expect(codes([line(0), line(0), line(0)])).toContain("science/points-not-independent");
  expect(codes([line(1), line(2), line(4)])).toContain("science/few-points-hit");
  expect(codes([line(99), line(98), line(96)])).toContain("science/few-points-missed");
  expect(codes([{ ...line(40), notRead: 3 }, line(50), line(60)])).toContain("science/points-not-read");
});

it("points on photos: one photo of many points has no range, none has a reason", () => {
  const one = reached(coverOfPhotos([line(400, 1000)], "residue", PLAIN));
  expect(reasonOf(one.range)).toBe("science/too-few-photos");
  expect(reasonOf(coverOfPhotos([], "residue", PLAIN))).toBe("science/no-points-read");
  expect(reasonOf(coverOfPhotos([line(-1)], "residue", PLAIN))).toBe("science/not-a-count");
});

it("standing stubble: the mean over lines in mm, heights of standing stems alone", () => {
  const mean = reached(stubbleHeight([[180, 220], [], [150, 250, 200], [210]]));
  // (180 + 220 + 150 + 250 + 200 + 210)/6.
  expect(mean.value).toBeCloseTo(1210 / 6, 9);
  expect(mean).toMatchObject({ n: 3, unit: "mm", sampledBy: "lines" });
  expect(mean.range.ok).toBe(true);
});

it.each([0, -5, 3001, Number.NaN, Number.POSITIVE_INFINITY])("standing stubble: %f mm is none", (height) => {
  expect(reasonOf(stubbleHeight([[200, height]]))).toBe("science/not-a-stubble-height");
});

it("standing stubble: nothing measured, one line, all equal", () => {
  expect(reasonOf(stubbleHeight([]))).toBe("science/nothing-read");
  expect(reasonOf(reached(stubbleHeight([[200]])).range)).toBe("science/too-few-samples");
  expect(reasonOf(reached(stubbleHeight([[200], [200], [200]])).range)).toBe("science/all-alike");
});
