import { readFileSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { expect, test } from "vitest";
import { LIMITS } from "../../../src/exchange/format/limits.ts";
import { digestOfRecords, parseLine, recordLine } from "../../../src/exchange/format/line.ts";
import { KINDS } from "../../../src/record/ids.ts";
import { archiveSchema } from "./archive-schema.ts";
import { FARM_LINE, sha256 } from "./volume-by-hand.ts";

const file = (name: string): string => resolve(import.meta.dirname, "../../../src/exchange/format", name);
const page = readFileSync(file("archive-format.md"), "utf8");

test("archive-schema.json is what the schemas give now (WRITE_ARCHIVE_SCHEMA=1 writes it)", () => {
  const schema = JSON.parse(JSON.stringify(archiveSchema())) as unknown;
  const path = file("archive-schema.json");
  if (process.env["WRITE_ARCHIVE_SCHEMA"] === "1")
    writeFileSync(path, `${JSON.stringify(schema, null, 2)}\n`);
  expect(JSON.parse(readFileSync(path, "utf8"))).toEqual(schema);
});

test("the record on the format's page is read, and written the same", () => {
  expect(page).toContain(FARM_LINE.trimEnd());
  const read = parseLine(FARM_LINE.trimEnd());
  if (!read.ok) throw new Error(read.problem.code);
  expect(recordLine(read.value)).toBe(FARM_LINE);
  expect(digestOfRecords([read.value])).toBe(sha256(FARM_LINE));
});

test("the format's page names every kind in order, and the limits that the code has", () => {
  expect(page.replaceAll(/\s+/g, " ")).toContain(KINDS.join(", "));
  const grouped = (n: number): string => String(n).replaceAll(/\B(?=(\d{3})+$)/g, " ");
  for (const limit of Object.values(LIMITS)) expect(page).toContain(grouped(limit));
});
