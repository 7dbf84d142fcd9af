import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { APP_VERSION } from "../../../src/app/version.ts";

test("archives name the version that package.json names", () => {
  const { version } = JSON.parse(readFileSync(new URL("../../../package.json", import.meta.url), "utf8")) as {
    version: string;
  };
  expect(APP_VERSION).toBe(version);
});
