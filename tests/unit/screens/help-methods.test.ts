import { expect, it } from "vitest";
import { METHODS } from "../../../src/science/methods/all.ts";
import type { MethodId } from "../../../src/science/methods.ts";
import { SOURCES } from "../../../src/science/sources.ts";
import { CHAPTERS } from "../../../src/screens/help/chapters.ts";
import { findMethods } from "../../../src/screens/help/find-methods.ts";

it("has every method in one chapter and in no other", () => {
  const shown = CHAPTERS.flatMap(({ methods }) => methods);
  expect(shown.toSorted()).toEqual(Object.keys(METHODS).toSorted());
});

it("has every source, and in the chapter of each method that names it", () => {
  const shown = new Set<string>(CHAPTERS.flatMap(({ sources }) => sources));
  expect([...shown].toSorted()).toEqual(Object.keys(SOURCES).toSorted());
  for (const { methods, sources } of CHAPTERS) {
    expect(new Set(sources).size).toBe(sources.length);
    for (const id of methods) {
      expect(sources).toEqual(expect.arrayContaining([...METHODS[id].sources]));
      expect(sources).toEqual(expect.arrayContaining(METHODS[id].constants.map(({ source }) => source)));
    }
  }
});

it("shows positions with the plans and not with ground cover", () => {
  const chapterOf = (method: MethodId) => CHAPTERS.find(({ methods }) => methods.includes(method))?.id;
  expect(chapterOf("standing-still")).toBe("plans");
  expect(chapterOf("short-distance")).toBe("plans");
  expect(chapterOf("strip-ratio")).toBe("ground-cover");
});

it("finds by an author, whatever the case and whatever the accents", () => {
  expect(findMethods("WILSON", "en")?.methods).toContain("wilson-one-line");
  expect(findMethods("wilson", "en")?.sources).toContain("wilson-1927");
  expect(findMethods("théil sen", "en")).toEqual(findMethods("theil sen", "en"));
});

it("finds what holds all the words, in any order, and what is called so in science", () => {
  const both = findMethods("one range line", "en")?.methods ?? [];
  expect(both).toContain("wilson-one-line");
  for (const id of both) expect(findMethods("range", "en")?.methods).toContain(id);
  expect(findMethods("penman", "en")?.methods).toContain("penman-monteith");
  expect(findMethods("no such word anywhere", "en")).toEqual({ methods: [], sources: [] });
});

it("looks for nothing before two letters are there", () => {
  expect(findMethods("", "en")).toBeNull();
  expect(findMethods(" w ", "en")).toBeNull();
});
