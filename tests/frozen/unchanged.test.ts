import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join, sep } from "node:path";
import { expect, it } from "vitest";

const here = import.meta.dirname;
const frozenNames = /^(?:db-\d+\.json|archive-\d+\.mulchmark\.zip|build-\d+\/.*\.\w+)$/;

const listed = readFileSync(join(here, "SHA256SUMS"), "utf8")
  .trimEnd()
  .split("\n")
  .map((line) => {
    const [, digest = "", name = ""] = /^([0-9a-f]{64}) {2}(\S+)$/.exec(line) ?? [];
    return { digest, name };
  });

it("holds at least one database, one archive and one build", () => {
  const names = listed.map(({ name }) => name);
  expect(names).toContain("db-1.json");
  expect(names).toContain("archive-1.mulchmark.zip");
  expect(names).toContain("build-1/sw.js");
});

it("has every frozen file in the list, once", () => {
  const found = readdirSync(here, { recursive: true, encoding: "utf8" })
    .map((name) => name.split(sep).join("/"))
    .filter((name) => frozenNames.test(name));
  expect(listed.map(({ name }) => name).sort()).toEqual(found.sort());
});

it.each(listed)("$name is as it was when it was frozen", ({ name, digest }) => {
  expect(
    createHash("sha256")
      .update(readFileSync(join(here, name)))
      .digest("hex"),
  ).toBe(digest);
});
