/** What was typed and not kept, in the small store of a real window. */
import { beforeEach, expect, it } from "vitest";
import {
  forgetTyped,
  isAlike,
  readTyped,
  typedHere,
  typedKey,
  writeTyped,
} from "../../src/screens/parts/typed-store.ts";

beforeEach(() => sessionStorage.clear());

it("reads what was written, for the same form on the same page, filled from the same", () => {
  location.hash = "#/kit";
  const key = typedKey("kit new ring");
  writeTyped(key, "base", { name: "A" });
  expect(readTyped(key, "base")).toEqual({ name: "A" });
  expect(readTyped(key, "another base")).toBeNull();
  location.hash = "#/fields/new";
  expect(readTyped(typedKey("kit new ring"), "base")).toBeNull();
  expect(typedHere("kit ")).toEqual([]);
  location.hash = "#/kit";
  expect(typedHere("kit ")).toEqual(["new ring"]);
  forgetTyped("kit new ring");
  expect(sessionStorage.length).toBe(0);
});

it("keeps nothing where nothing is said", () => {
  writeTyped("a form", "", { name: "A" });
  writeTyped("a form", "", {});
  expect(sessionStorage.length).toBe(0);
});

it.each(["", "{", "null", "[]", "7", '{"base":1,"answers":{}}', '{"base":"","answers":[]}'])(
  "takes %s for nothing typed",
  (text) => {
    sessionStorage.setItem("a form", text);
    expect(readTyped("a form", "")).toBeNull();
  },
);

it("takes a value only in the place of one that is made alike", () => {
  const alike: readonly (readonly [unknown, unknown])[] = [
    ["a", ""],
    [true, false],
    [["tilled"], []],
    [null, "a strip"],
    [
      { typed: "1", confirmed: true },
      { typed: "", confirmed: false },
    ],
    [{ strip: "a", edge: { to: null } }, { strip: null }],
  ];
  for (const [value, first] of alike) expect(isAlike(value, first)).toBe(true);
  const other: readonly (readonly [unknown, unknown])[] = [
    [undefined, ""],
    [undefined, null],
    [1, ""],
    ["tilled", []],
    [[], {}],
    [
      { typed: 1, confirmed: true },
      { typed: "", confirmed: false },
    ],
    [{ typed: "1" }, { typed: "", confirmed: false }],
  ];
  for (const [value, first] of other) expect(isAlike(value, first)).toBe(false);
});

it("takes a value that leaves out what may be left out, wherever it stands", () => {
  const first = { name: "", edge: { to: null }, position: { fixes: 5, movedFrom: { fixes: 5 } } };
  const value = { name: "by the pond", position: { fixes: 5 } };
  expect(isAlike(value, first)).toBe(false);
  expect(isAlike(value, first, ["edge"])).toBe(false);
  expect(isAlike(value, first, ["edge", "movedFrom"])).toBe(true);
  expect(isAlike({ ...value, edge: 1 }, first, ["edge", "movedFrom"])).toBe(false);
  expect(isAlike({ position: null }, first, ["edge", "movedFrom"])).toBe(false);
});
