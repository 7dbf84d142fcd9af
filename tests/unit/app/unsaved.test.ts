import { expect, it } from "vitest";
import { unsavedWords } from "../../../src/app/unsaved.ts";
import type { Append, Command, Draft } from "../../../src/record/command/command.ts";
import { CATALOGUES } from "../../../src/screens/catalogue.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";
import { idOf, sign, touch } from "../record/made-up.ts";

const words = CATALOGUES.en(TRADE_WORDS["us-ca"]);
const read = (draft: Draft): Append => ({
  op: "append",
  id: idOf("observation", 1),
  frame: { way: "mark-by-mark", ropeMarks: 100 },
  at: touch(1, 1),
  draft,
});

it.each<[Command, string]>([
  [read({ type: "mark", mark: 13, cover: "residue", stance: "standing" }), "mark 13: residue, standing"],
  [read({ type: "mark", mark: "next", cover: "stone" }), "next mark: rock"],
  [
    read({ type: "thickness", mark: 20, value: 31, unit: "mm", typed: "31" }),
    "mulch thickness at mark 20: 31 mm",
  ],
  [read({ type: "end", mark: "here" }), "the line ends there"],
  [{ op: "write", id: idOf("field", 1), by: sign(1), body: { name: "Low Ridge" } }, "field: Low Ridge"],
  [{ op: "delete", id: idOf("strip", 1), by: sign(1) }, "strip to be deleted"],
])("says in words that can be copied onto paper what was not kept: %o", (command, sentence) => {
  expect(unsavedWords(words, command)).toBe(sentence);
});
