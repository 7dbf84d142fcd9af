import { readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, test } from "vitest";
import { filesOfRoom, readRooms } from "../run/rooms.mjs";
import { projectRoot } from "../run/steps.mjs";
import { type DocstringExample, examplesIn, stepsOf } from "./docstring-example.ts";

/*
 * Every example with `// => expected` in the rooms that need neither page nor database is run.
 * The names that its own file exports are at hand, others are imported by the example.
 * `expected` is JavaScript; of an object only the named parts are compared; `≈ 0.33` means equal to the digits shown.
 */

type Names = Record<string, unknown>;

const table = readRooms();
const files = table.rooms
  .filter((room) => room.kind === "pure")
  .flatMap((room) => filesOfRoom(table, room))
  .map((path) => ({ path, examples: examplesIn(readFileSync(join(projectRoot, path), "utf8")) }))
  .filter(({ examples }) => examples.length > 0);

describe.each(files)("$path", ({ path, examples }) => {
  test.each(examples)("example at line $line", async (example) => {
    await runExample(path, example);
  });
});

test("an example that says something wrong is found out", async () => {
  const wrong = examplesIn("/**\n * @example\n * const sum = 1 + 1;\n * sum // => 3\n */");
  expect(wrong).toHaveLength(1);
  for (const example of wrong)
    await expect(runExample("src/record/result.ts", example)).rejects.toThrow("example");
});

async function runExample(path: string, example: DocstringExample): Promise<void> {
  const file = join(projectRoot, path);
  const names: Names = { ...(await load(file)) };
  const body: string[] = [];
  let checks = 0;
  for (const step of stepsOf(example)) {
    if (step.kind === "import") Object.assign(names, await load(resolve(dirname(file), step.from)));
    else if (step.kind === "statement") body.push(step.code);
    else {
      checks += 1;
      const digits = /^≈\s*(-?[\d.]+)$/.exec(step.expected)?.[1];
      const expected = digits ?? step.expected;
      body.push(
        `compare((${step.code}\n), (${expected}\n), ${JSON.stringify(digits ?? null)}, ${JSON.stringify(step.code)});`,
      );
    }
  }
  expect(checks).toBeGreaterThan(0);
  await evaluate(body.join("\n"), { ...names, compare });
}

async function load(file: string): Promise<Names> {
  return (await import(/* @vite-ignore */ pathToFileURL(file).href)) as Names;
}

function compare(actual: unknown, expected: unknown, digits: string | null, code: string): void {
  const message = `example: ${code}`;
  if (digits !== null) expect(actual, message).toBeCloseTo(Number(digits), digits.split(".")[1]?.length ?? 0);
  else if (typeof expected === "object" && expected !== null) expect(actual, message).toMatchObject(expected);
  else expect(actual, message).toBe(expected);
}

async function evaluate(body: string, names: Names): Promise<void> {
  const AsyncFunction = Object.getPrototypeOf(evaluate).constructor as new (
    ...parts: string[]
  ) => (...values: unknown[]) => Promise<void>;
  await new AsyncFunction(...Object.keys(names), body)(...Object.values(names));
}
