import fc from "fast-check";
import { expect, test } from "vitest";
import { partLines } from "../../src/exchange/archive/lines.ts";
import { openVolume } from "../../src/exchange/archive/open.ts";
import { parseLine, recordLine } from "../../src/exchange/format/line.ts";
import { parseManifest } from "../../src/exchange/format/manifest.ts";
import { FARM_LINE, filesOf, sha256, volumeByHand } from "../unit/exchange/volume-by-hand.ts";

const photo = { name: `photos/${sha256("jpeg")}.jpg`, content: "jpeg" };
const good = new Uint8Array(await volumeByHand(FARM_LINE, (manifest) => manifest, [photo]).arrayBuffer());
const MANIFEST_TEXT = String(filesOf()[0]?.content);

/** Everything in a volume, or the code of the first problem. */
const contentOf = async (file: Blob): Promise<string> => {
  const opened = await openVolume(file);
  if (!opened.ok) return opened.problem.code;
  let content = JSON.stringify(opened.value.manifest);
  for (const listed of opened.value.files) {
    const done = await opened.value.read(listed, (piece) => {
      content += Buffer.from(piece).toString("latin1");
      return undefined;
    });
    if (!done.ok) return done.problem.code;
  }
  return content;
};

test("a volume with any bytes changed, cut or put in is refused by a code, or is as it was", async () => {
  const whole = await contentOf(new Blob([good]));
  const at = fc.nat(good.length - 1);
  const change = fc.oneof(
    fc.record({ at, bytes: fc.uint8Array({ minLength: 1, maxLength: 8 }), instead: fc.nat(8) }),
    fc.record({ at, bytes: fc.constant(new Uint8Array()), instead: fc.nat(good.length) }),
  );
  await fc.assert(
    fc.asyncProperty(fc.array(change, { minLength: 1, maxLength: 3 }), async (changes) => {
      const bytes = changes.reduce(
        (before, one) =>
          Buffer.concat([before.subarray(0, one.at), one.bytes, before.subarray(one.at + one.instead)]),
        Buffer.from(good),
      );
      const content = await contentOf(new Blob([bytes]));
      if (content !== whole) expect(content).toMatch(/^exchange\/[a-z0-9-]+$/);
    }),
    { numRuns: 1500 },
  );
});

test("no line of text makes the reader throw", () => {
  const json = fc.oneof(
    fc.json({ maxDepth: 6 }),
    fc.string(),
    fc.string({ unit: "binary" }),
    fc.nat(30_000).map((depth) => "[".repeat(depth) + "]".repeat(depth)),
  );
  fc.assert(
    fc.property(json, (line) => {
      const read = parseLine(line);
      if (!read.ok) expect(read.problem.code).toMatch(/^(exchange|record)\/[a-z-]+$/);
    }),
    { numRuns: 3000 },
  );
});

/** Puts any JSON in the place of any part of a value. */
const withPart = (value: unknown, path: readonly number[], part: unknown): unknown => {
  const [first, ...rest] = path;
  if (first === undefined || typeof value !== "object" || value === null) return part;
  if (Array.isArray(value)) {
    const at = value.length === 0 ? 0 : first % value.length;
    return value.map((item, index) => (index === at ? withPart(item, rest, part) : item));
  }
  const keys = Object.keys(value);
  const key = keys[first % Math.max(1, keys.length)] ?? "x";
  return { ...value, [key]: withPart(Reflect.get(value, key), rest, part) };
};

test("a record or a manifest with any part replaced is refused by a code, or read and written the same", () => {
  const part = fc.oneof(
    fc.jsonValue({ maxDepth: 3 }),
    fc.constantFrom("__proto__", "constructor", -0, 1e308, 2 ** 53, "\ud800", "=1+1"),
  );
  const path = fc.array(fc.nat(20), { minLength: 1, maxLength: 6 });
  fc.assert(
    fc.property(path, part, (where, what) => {
      const read = parseLine(JSON.stringify(withPart(JSON.parse(FARM_LINE), where, what)));
      if (read.ok) expect(parseLine(recordLine(read.value).trimEnd())).toEqual(read);
      else expect(read.problem.code).toMatch(/^record\/[a-z-]+$/);
      const manifest = parseManifest(JSON.stringify(withPart(JSON.parse(MANIFEST_TEXT), where, what)));
      if (!manifest.ok) expect(manifest.problem.code).toMatch(/^exchange\/[a-z-]+$/);
    }),
    { numRuns: 3000 },
  );
});

test("keys that reach into every object are refused", () => {
  for (const key of ["__proto__", "constructor", "prototype"]) {
    const line = FARM_LINE.replace('"name":"Hill"', `"name":"Hill","${key}":{"erased":true}`);
    expect(parseLine(line)).toMatchObject({ ok: false, problem: { code: "record/forbidden-key" } });
  }
  expect(Reflect.get({}, "erased")).toBeUndefined();
});

test("lines come out the same however the bytes are cut", async () => {
  const text = fc.array(
    fc.string({ unit: "grapheme", maxLength: 12 }).filter((one) => !one.includes("\n")),
    {
      maxLength: 8,
    },
  );
  await fc.assert(
    fc.asyncProperty(text, fc.array(fc.nat(60), { maxLength: 12 }), async (lines, cuts) => {
      const bytes = new TextEncoder().encode(lines.map((line) => `${line}\n`).join(""));
      const found: string[] = [];
      const parter = partLines((line, number) => {
        found.push(line);
        expect(number).toBe(found.length);
        return undefined;
      });
      const ends = [...cuts.map((cut) => cut % (bytes.length + 1)).sort((a, b) => a - b), bytes.length];
      let from = 0;
      for (const to of ends) {
        expect(await parter.take(bytes.subarray(from, to))).toBeUndefined();
        from = to;
      }
      expect(parter.end()).toBeUndefined();
      expect(found).toEqual(lines);
    }),
  );
});

test("a line beyond the limit, broken text and a last line without its end are refused", async () => {
  const parter = (longest: number) => partLines(() => undefined, longest);
  const bytes = new TextEncoder().encode("12345");
  expect(await parter(4).take(bytes)).toMatchObject({ problem: { code: "exchange/too-large" } });
  const twoPieces = parter(8);
  await twoPieces.take(bytes);
  expect(await twoPieces.take(bytes)).toMatchObject({ problem: { code: "exchange/too-large" } });
  expect(await parter(8).take(Uint8Array.of(0xff, 0x0a))).toMatchObject({
    problem: { code: "exchange/damaged" },
  });
  const open = parter(8);
  await open.take(bytes);
  expect(open.end()).toMatchObject({ problem: { code: "exchange/damaged" } });
});
