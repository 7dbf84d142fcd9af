import { readdirSync } from "node:fs";
import { join, posix } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { filesOfRoom, readRooms } from "../run/rooms.mjs";
import {
  type Complaint,
  compilerComplaints,
  copyProject,
  linterComplaints,
  runTool,
} from "./planted-copy.ts";
import { allowed, compilerPlants, exported, linterPlants, type Plant } from "./plants.ts";

/*
 * A checker with a wrong path checks one file and is green. So violations are planted in a copy, each must be refused
 * by the real configuration, and both tools must have looked at as many files as there are.
 */

const table = readRooms();
const folders = table.rooms.map((room) => room.folder);
function filesOf(plants: Record<string, Plant>): Record<string, string> {
  return Object.assign({}, ...Object.values(plants).map((plant) => plant.files));
}

function rulesAgainst(complaints: readonly Complaint[], file: string): string[] {
  return complaints.filter((complaint) => complaint.file === file).map((complaint) => complaint.rule);
}

describe("the copy as it is", () => {
  const copy = copyProject();
  afterAll(copy.remove);
  const filled = table.rooms.filter((room) => filesOfRoom(table, room).length > 0).map((room) => room.folder);

  test("passes the compiler, which looked at every source file", () => {
    const output = runTool(copy.root, "typescript/bin/tsc", [
      "-b",
      "--pretty",
      "false",
      "--listFiles",
      ...filled,
    ]);
    expect(output.split(/\r?\n/).filter((line) => line.includes("error TS"))).toEqual([]);
    const lines = new Set(output.replaceAll("\\", "/").split(/\r?\n/));
    const sources = table.rooms.flatMap((room) => filesOfRoom(table, room));
    const root = copy.root.replaceAll("\\", "/");
    expect(sources.length).toBeGreaterThan(0);
    expect(sources.filter((path) => !lines.has(`${root}/${path}`))).toEqual([]);
  });

  test("passes the linter, which looked at every source file", () => {
    expect(linterComplaints(copy.root).map((complaint) => complaint.text)).toEqual([]);
    for (const folder of ["src", "service-worker"]) {
      const output = runTool(copy.root, "@biomejs/biome/bin/biome", ["lint", "--colors=off", folder]);
      const counted = Number(/Checked (\d+) files? in/.exec(output)?.[1]);
      const files = readdirSync(join(copy.root, folder), { recursive: true, encoding: "utf8" });
      expect(counted, folder).toBe(
        files.filter((path) => /\.(?:[cm]?[jt]sx?|jsonc?|css|html|md)$/.test(path)).length,
      );
    }
  });
});

describe("violations that the compiler refuses", () => {
  const copy = copyProject();
  let complaints: Complaint[] = [];
  beforeAll(() => {
    copy.plant({ ...filesOf(compilerPlants), ...allowed });
    complaints = compilerComplaints(copy.root, folders);
  });
  afterAll(copy.remove);

  test.each(Object.entries(compilerPlants))("%s", (_, plant) => {
    const rules = rulesAgainst(complaints, plant.refused);
    expect(rules.filter((rule) => plant.rules.includes(rule))).not.toEqual([]);
    expect(rules.filter((rule) => !plant.rules.includes(rule))).toEqual([]);
  });

  test.each(Object.keys(allowed))("but not %s", (path) => {
    expect(rulesAgainst(complaints, path)).toEqual([]);
  });
});

// A copy of its own: the typings of a package planted in a pure room could bring the page's names in with them.
describe("violations that the linter refuses", () => {
  const copy = copyProject();
  let complaints: Complaint[] = [];
  beforeAll(() => {
    copy.plant({ ...filesOf(linterPlants), ...allowed });
    complaints = linterComplaints(copy.root);
  });
  afterAll(copy.remove);

  test.each(Object.entries(linterPlants))("%s", (_, plant) => {
    expect(rulesAgainst(complaints, plant.refused)).toEqual(expect.arrayContaining(plant.rules));
  });

  test.each(Object.keys(allowed))("but not %s", (path) => {
    expect(rulesAgainst(complaints, path)).toEqual([]);
  });
});

describe("every pair of rooms", () => {
  const copy = copyProject();
  let compiler: Complaint[] = [];
  const pairs = table.rooms.flatMap((from) =>
    table.rooms.filter((to) => to !== from).map((to) => pairPlant(from, to)),
  );
  beforeAll(() => {
    copy.plant(Object.assign({}, ...pairs.map((pair) => pair.files)));
    compiler = compilerComplaints(copy.root, folders);
  });
  afterAll(copy.remove);

  test("is open or shut as the table says", () => {
    const open = pairs.filter((pair) => rulesAgainst(compiler, pair.importer).length === 0);
    expect(open.map((pair) => pair.name)).toEqual(
      pairs.filter((pair) => pair.allowed).map((pair) => pair.name),
    );
  });
});

function pairPlant(from: (typeof table.rooms)[number], to: (typeof table.rooms)[number]) {
  const target = `planted-for-${from.name.replaceAll("/", "-")}.ts`;
  const importer = `${from.folder}/planted-imports-${to.name.replaceAll("/", "-")}.ts`;
  const path = posix.join(posix.relative(from.folder, to.folder), target);
  const specifier = path.startsWith(".") ? path : `./${path}`;
  return {
    name: `${from.name} imports ${to.name}`,
    importer,
    allowed: from.imports.includes(to.name),
    files: { [`${to.folder}/${target}`]: exported, [importer]: `export { planted } from "${specifier}";\n` },
  };
}
