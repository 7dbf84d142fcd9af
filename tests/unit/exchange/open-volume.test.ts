import { describe, expect, test } from "vitest";
import { openVolume } from "../../../src/exchange/archive/open.ts";
import { RECORDS } from "../../../src/exchange/format/names.ts";
import { FARM_LINE, filesOf, sha256, volumeByHand } from "./volume-by-hand.ts";
import { type HandFile, zipByHand } from "./zip-by-hand.ts";

/** Opens a volume and reads every file in it; gives the code of the first problem, or `whole`. */
const codeOf = async (file: Blob): Promise<string> => {
  const opened = await openVolume(file);
  if (!opened.ok) return opened.problem.code;
  for (const listed of opened.value.files) {
    const done = await opened.value.read(listed, () => undefined);
    if (!done.ok) return done.problem.code;
  }
  return "whole";
};

const changed = (at: number, change: Partial<HandFile>): Blob =>
  zipByHand({ files: filesOf().map((file, index) => (index === at ? { ...file, ...change } : file)) });
const [MANIFEST_AT, README_AT, RECORDS_AT] = [0, 1, 2];

const photo = (bytes: string): HandFile => ({ name: `photos/${sha256(bytes)}.jpg`, content: bytes });

describe("a volume that keeps to the format", () => {
  test("is read as it was written, stored or deflated", async () => {
    expect(await codeOf(volumeByHand())).toBe("whole");
    const opened = await openVolume(volumeByHand());
    if (!opened.ok) throw new Error(opened.problem.code);
    const records = opened.value.files.find(({ name }) => name === RECORDS);
    if (records === undefined) throw new Error("no records");
    const pieces: Uint8Array<ArrayBuffer>[] = [];
    expect((await opened.value.read(records, (piece) => void pieces.push(piece))).ok).toBe(true);
    expect(await new Blob(pieces).text()).toBe(FARM_LINE);
  });

  test("may be packed anew with a comment, in another order, or with Zip64 fields", async () => {
    expect(await codeOf(zipByHand({ files: filesOf(), comment: "packed anew" }))).toBe("whole");
    expect(await codeOf(zipByHand({ files: filesOf().reverse() }))).toBe("whole");
    expect(await codeOf(zipByHand({ files: filesOf(), zip64: true }))).toBe("whole");
  });

  test("holds photos under their digests", async () => {
    expect(await codeOf(volumeByHand(FARM_LINE, (manifest) => manifest, [photo("jpeg")]))).toBe("whole");
  });
});

describe("what is not an archive", () => {
  test.each([
    ["nothing", new Blob([])],
    ["a text", new Blob(["Not a zip at all. ".repeat(100)])],
    ["a zip cut short", volumeByHand().slice(0, 700)],
  ])("%s", async (_, file) => {
    expect(await codeOf(file)).toBe("exchange/not-a-zip");
  });

  test("a zip of something else", async () => {
    expect(await codeOf(zipByHand({ files: [{ name: "letter.txt", content: "Dear" }] }))).toBe(
      "exchange/not-ours",
    );
    expect(await codeOf(zipByHand({ files: [{ name: "manifest.json", content: '{"name":"other"}' }] }))).toBe(
      "exchange/not-ours",
    );
    expect(await codeOf(zipByHand({ files: [{ name: "manifest.json", content: "{" }] }))).toBe(
      "exchange/not-ours",
    );
    expect(await codeOf(zipByHand({ files: [] }))).toBe("exchange/not-ours");
  });
});

describe("what is newer than this app", () => {
  const newer = (change: (manifest: Record<string, unknown>) => unknown) =>
    openVolume(volumeByHand(FARM_LINE, change));

  test.each([
    ["the format, whatever else stands there", { formatVersion: 2, somethingNew: true }, "format"],
    ["entries", { entryVersion: 7 }, "entry"],
    ["a kind", { kinds: [{ kind: "farm", version: 3, count: 1 }] }, "farm"],
    [
      "a kind that nobody knows here",
      { kinds: [{ kind: "drone-flight", version: 1, count: 1 }] },
      "drone-flight",
    ],
  ])("%s", async (_, change, what) => {
    const opened = await newer((manifest) => ({ ...manifest, ...change, appVersion: "9.1.0" }));
    expect(opened).toMatchObject({
      ok: false,
      problem: { code: "exchange/from-the-future", facts: { what, app: "9.1.0" } },
    });
  });
});

describe("what was damaged or made up", () => {
  const twice = (name: string, content = "x"): Blob =>
    zipByHand({ files: [...filesOf(), { name, content }] });

  test.each<[string, Blob, string]>([
    ["a name twice", twice("README.txt"), "exchange/damaged"],
    ["a path upwards", twice("../records.ndjson"), "exchange/unexpected-file"],
    ["a path from the root", twice("/etc/hosts"), "exchange/unexpected-file"],
    ["a path of Windows", twice("..\\x.txt"), "exchange/unexpected-file"],
    ["a directory", twice("photos/", ""), "exchange/unexpected-file"],
    ["a file that nobody listed", twice("view/more.csv"), "exchange/unexpected-file"],
    ["a missing file", zipByHand({ files: filesOf().slice(0, 2) }), "exchange/damaged"],
    ["other content", changed(README_AT, { content: "For a PERSON.\r\n" }), "exchange/damaged"],
    ["a wrong check sum", changed(RECORDS_AT, { claims: { crc: 1 } }), "exchange/damaged"],
    ["a size too small", changed(RECORDS_AT, { claims: { unpacked: 10 } }), "exchange/damaged"],
    ["a size too large", changed(RECORDS_AT, { claims: { unpacked: 5000 } }), "exchange/damaged"],
    ["packed bytes that reach on", changed(README_AT, { claims: { packed: 400 } }), "exchange/damaged"],
    [
      "broken deflate",
      changed(RECORDS_AT, { content: "xxxx", deflate: false, method: 8, claims: { unpacked: 266 } }),
      "exchange/damaged",
    ],
    ["another name in the local header", changed(README_AT, { localName: "README.TXT" }), "exchange/damaged"],
    ["encryption", changed(README_AT, { flags: 0x0801 }), "exchange/encrypted"],
    ["an unknown packing", changed(README_AT, { method: 12 }), "exchange/unknown-packing"],
    [
      "more entries than there are",
      zipByHand({ files: filesOf(), claims: { entries: 9 } }),
      "exchange/damaged",
    ],
    [
      "a directory elsewhere",
      zipByHand({ files: filesOf(), claims: { directoryAt: 1e9 } }),
      "exchange/damaged",
    ],
    ["a split zip", zipByHand({ files: filesOf(), claims: { disk: 1 } }), "exchange/damaged"],
    [
      "a lie in the manifest",
      volumeByHand(FARM_LINE, (m) => ({ ...m, recordsDigest: sha256("") })),
      "exchange/manifest-not-valid",
    ],
    [
      "a volume that there is not",
      volumeByHand(FARM_LINE, (m) => ({ ...m, volume: { number: 2, of: 1 } })),
      "exchange/manifest-not-valid",
    ],
    [
      "a key too many",
      volumeByHand(FARM_LINE, (m) => ({ ...m, script: "x" })),
      "exchange/manifest-not-valid",
    ],
    [
      "a name that is a path",
      volumeByHand(FARM_LINE, (m) => ({
        ...m,
        files: [{ name: "../x", byteCount: 1, sha256: sha256("x"), volume: 1 }],
      })),
      "exchange/manifest-not-valid",
    ],
  ])("%s", async (_, file, code) => {
    expect(await codeOf(file)).toBe(code);
  });

  test("two files of the directory share their bytes", async () => {
    const name = `photos/${sha256("jpeg")}.jpg`;
    const files = [...filesOf(FARM_LINE, (m) => m, [photo("jpeg")])];
    const overlapping = zipByHand({
      files: [
        ...files,
        { name: `${name}x`, localName: name, content: "jpeg", sameBytesAs: files.length - 1 },
      ],
    });
    expect(await codeOf(overlapping)).toBe("exchange/damaged");
  });

  test("a photo with other bytes than its name says", async () => {
    const lying = { name: `photos/${sha256("jpeg")}.jpg`, content: "evil" };
    // The manifest agrees with the bytes, so only the name gives the lie away: see the tests of bringing in.
    expect(await codeOf(volumeByHand(FARM_LINE, (m) => m, [lying]))).toBe("whole");
  });
});

describe("what unpacks to far more than it should", () => {
  const zeros = new Uint8Array(30_000_000);
  test("a bomb that tells its size", async () => {
    expect(await codeOf(changed(README_AT, { content: zeros, deflate: true }))).toBe("exchange/too-large");
  });
  test("a bomb that lies about its size", async () => {
    const lying = { content: zeros, deflate: true, claims: { unpacked: 15 } };
    expect(await codeOf(changed(README_AT, lying))).toBe("exchange/too-large");
  });
  test("a bomb in the place of the manifest", async () => {
    const lying = { content: zeros, deflate: true, claims: { unpacked: 900_000 } };
    expect(await codeOf(changed(MANIFEST_AT, lying))).toBe("exchange/damaged");
  });
  test("more files than a volume may have", async () => {
    const many = Array.from({ length: 20_002 }, (_, at) => ({ name: `photos/${at}`, content: "" }));
    expect(await codeOf(zipByHand({ files: many }))).toBe("exchange/too-large");
  });
  test("a photo above its limit", async () => {
    expect(
      await codeOf(
        volumeByHand(FARM_LINE, (m) => m, [
          { name: `photos/${"0".repeat(64)}.jpg`, content: new Uint8Array(20_000_001) },
        ]),
      ),
    ).toBe("exchange/too-large");
  });
});
