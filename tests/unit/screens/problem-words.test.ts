import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { CATALOGUES } from "../../../src/screens/catalogue.ts";
import { PHOTO_WORDS } from "../../../src/screens/parts/photos/words.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";

const source = join(import.meta.dirname, "../../../src");
const trade = TRADE_WORDS["uk-ie"];
/** Sentences of photos come with the screens that take them. */
const problems: Readonly<Record<string, string>> = {
  ...CATALOGUES.en(trade).problems,
  ...PHOTO_WORDS.en(trade).problems,
};

/** Codes that never reach a screen, and why. */
const silent: Readonly<Record<string, string>> = {
  "store/closed": "only a test closes a connection",
};

const codesIn = (room: string): string[] => {
  const files = readdirSync(join(source, room), { recursive: true, encoding: "utf8" }).filter((name) =>
    /\.tsx?$/.test(name),
  );
  const codes = files.flatMap((name) => [
    ...readFileSync(join(source, room, name), "utf8").matchAll(
      /"((?:record|store|exchange|device)\/[a-z0-9-]+)"/g,
    ),
  ]);
  return [...new Set(codes.map(([, code]) => code ?? ""))].sort();
};

it("has a sentence for every reason that a room can give", () => {
  const codes = ["record", "store", "exchange", "device", "app"].flatMap(codesIn);
  expect(codes.length).toBeGreaterThan(40);
  const wordless = codes.filter((code) => !(code in problems) && !(code in silent));
  expect(wordless).toEqual([]);
});
