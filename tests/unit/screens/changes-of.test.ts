import { expect, it } from "vitest";
import { changesOf, isChanged } from "../../../src/screens/parts/changes-of.ts";

interface Said {
  readonly name: string;
  readonly sides: readonly number[];
  readonly edge?: string;
}
const stored: Said = { name: "post", sides: [1, 2], edge: "combine pass" };

it("holds what was said otherwise, and what was left out", () => {
  expect(changesOf<Said, "edge">(stored, { name: "oak", sides: [1, 2] }, ["edge"])).toEqual({
    patch: { name: "oak" },
    without: ["edge"],
  });
  const { edge: _, ...plain } = stored;
  expect(changesOf<Said, "edge">(plain, stored, ["edge"])).toEqual({
    patch: { edge: "combine pass" },
    without: [],
  });
});

it("is empty when everything stands as it was", () => {
  expect(isChanged(changesOf<Said, "edge">(stored, stored, ["edge"]))).toBe(false);
  // What nobody asked about is not taken away.
  expect(isChanged(changesOf<Said, "edge">(stored, { name: "post" }, []))).toBe(false);
  expect(isChanged(changesOf<Said, "edge">(stored, { name: "post" }, ["edge"]))).toBe(true);
});
