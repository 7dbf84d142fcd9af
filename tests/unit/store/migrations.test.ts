import { readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { MIGRATIONS } from "../../../src/store/migrations/all.ts";

const folder = join(import.meta.dirname, "../../../src/store/migrations");

test("migrations begin at 1, have no gap, and each has a file of its own", () => {
  expect(MIGRATIONS.map(({ version }) => version)).toEqual(MIGRATIONS.map((_, at) => at + 1));
  const files = readdirSync(folder).filter((name) => name.startsWith("version-"));
  expect(files.sort()).toEqual(MIGRATIONS.map(({ version }) => `version-${version}.ts`).sort());
});
