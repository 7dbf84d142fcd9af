import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { filesOfRoom, readRooms, staleFiles } from "../run/rooms.mjs";
import { projectRoot } from "../run/steps.mjs";

const table = readRooms();

describe("the table of rooms", () => {
  test("is what every tsconfig.json and biome.json say (else: npm run rooms)", () => {
    expect(staleFiles()).toEqual([]);
  });

  test("gives every source file exactly one room", () => {
    const homes = table.rooms.flatMap((room) => filesOfRoom(table, room));
    const sources = ["src", "service-worker"].flatMap((folder) =>
      readdirSync(join(projectRoot, folder), { recursive: true, encoding: "utf8" })
        .filter((path) => /\.(?:[cm]?[jt]sx?)$/.test(path))
        .map((path) => `${folder}/${path.replaceAll("\\", "/")}`),
    );
    expect(homes.sort()).toEqual(sources.sort());
  });

  test("only lets a room import from rooms above it", () => {
    for (const [index, room] of table.rooms.entries()) {
      const above = table.rooms.slice(0, index).map((other) => other.name);
      expect(above, room.name).toEqual(expect.arrayContaining(room.imports));
    }
  });

  test("says for every package that is shipped where it may be imported", () => {
    const { dependencies } = JSON.parse(readFileSync(join(projectRoot, "package.json"), "utf8")) as {
      dependencies: Record<string, string>;
    };
    const named = table.packages.flatMap((rule) => rule.names);
    const covers = (name: string) =>
      named.some(
        (pattern) => pattern === name || (pattern.endsWith("/**") && name.startsWith(pattern.slice(0, -2))),
      );
    expect(Object.keys(dependencies).filter((name) => !covers(name))).toEqual([]);
  });
});
