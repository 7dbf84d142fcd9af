/** What a newer app wrote is refused whole: the answer names the versions, and nothing is changed. */
import { makeZip } from "client-zip";
import { describe, expect, it } from "vitest";
import { fileJobs } from "../../src/exchange/archive/jobs.ts";
import { openVolume } from "../../src/exchange/archive/open.ts";
import { FORMAT_VERSION } from "../../src/exchange/format/manifest.ts";
import { ENTRY_VERSION } from "../../src/record/entry.ts";
import { KIND } from "../../src/record/kinds/all.ts";
import type { Result } from "../../src/record/result.ts";
import { CATALOGUES, sentenceFor } from "../../src/screens/catalogue.ts";
import { TRADE_WORDS } from "../../src/screens/parts/trade.ts";
import { list } from "../../src/store/list.ts";
import { MIGRATIONS } from "../../src/store/migrations/all.ts";
import { pages } from "../../src/store/pages.ts";
import { readEntries, readHeaders, readRecord } from "../../src/store/read.ts";
import { openStore } from "../../src/store/store.ts";
import { need } from "../browser/store-samples.ts";
import { IDS, ROPE_MARKS } from "./entered.ts";
import { changesNothing, frozenArchive, frozenDatabase, laidOut, openToday } from "./frozen-files.ts";
import type { FrozenDatabase } from "./raw-database.ts";

const words = CATALOGUES.en(TRADE_WORDS["uk-ie"]);

/** The refusal, with the sentence that a person reads. */
const refusal = (result: Result<unknown>) => {
  if (result.ok) throw new Error("it was not refused");
  return { ...result.problem, sentence: sentenceFor(words, result.problem) };
};

/** The frozen database with some of its rows changed. */
const changed = (store: string, change: (value: Record<string, unknown>) => void): string => {
  const frozen: FrozenDatabase = JSON.parse(frozenDatabase(1));
  for (const { name, rows } of frozen.stores)
    if (name === store) for (const { value } of rows) change(value as Record<string, unknown>);
  return JSON.stringify(frozen);
};

const moment = {
  id: "9".repeat(16),
  lookedAtMs: 1,
  enteredAtMs: 1,
  monoMs: 1,
  page: "9".repeat(16),
  device: "9".repeat(16),
  by: null,
} as const;

const signature = {
  rev: "9".repeat(16),
  actor: "9".repeat(16),
  n: 1,
  stamp: { wallMs: 1, counter: 1, device: "9".repeat(16) },
  author: null,
} as const;

it("refuses a database of a later structure", async () => {
  const knows = MIGRATIONS.length;
  const later = { ...JSON.parse(frozenDatabase(1)), version: knows + 1 };
  const name = await laidOut(JSON.stringify(later));
  await changesNothing(name, async () => {
    const answer = await openStore({ name, tell: () => undefined, reload: () => undefined });
    expect(refusal(answer)).toMatchObject({
      code: "store/from-the-future",
      facts: { knows, has: knows + 1 },
    });
  });
});

describe("a field of a later record version", () => {
  const needs = KIND.field.version + 1;
  const expected = {
    code: "record/from-the-future",
    facts: { kind: "field", needs, knows: KIND.field.version },
    sentence: expect.stringMatching(new RegExp(`version ${needs} of field.*Nothing was changed`)),
  };
  const withLaterField = (): Promise<string> =>
    laidOut(
      changed("records", (row) => {
        if (row["id"] !== IDS.field) return;
        for (const rev of row["revs"] as Record<string, unknown>[]) rev["v"] = needs;
      }),
    );

  it("is not read, alone, in a list or page by page", async () => {
    const name = await withLaterField();
    await changesNothing(name, async () => {
      const store = await openToday(name);
      expect(refusal(await readRecord(store, IDS.field))).toMatchObject(expected);
      expect(refusal(await readHeaders(store, [IDS.field]))).toMatchObject(expected);
      expect(refusal(await list(store, { kind: "field" }))).toMatchObject(expected);
      const answers: Result<unknown>[] = [];
      for await (const page of pages(store, 100)) answers.push(page);
      expect(refusal(answers.at(-1) ?? { ok: true, value: null })).toMatchObject(expected);
      store.close();
    });
  });

  it("is not written to", async () => {
    const name = await withLaterField();
    await changesNothing(name, async () => {
      const store = await openToday(name);
      const answer = await store.run([
        { op: "change", id: IDS.rope, by: signature, patch: { spacingM: 9 } },
        { op: "change", id: IDS.field, by: { ...signature, n: 2 }, patch: { name: "overwritten" } },
      ]);
      expect(refusal(answer)).toMatchObject(expected);
      store.close();
    });
  });

  it("leaves everything else as usable as before", async () => {
    const store = await openToday(await withLaterField());
    expect(need(await list(store, { kind: "strip" }))).toHaveLength(3);
    expect(need(await readRecord(store, IDS.finished))?.entries).toHaveLength(23);
  });
});

it("refuses entries of a later version, to read and to add to", async () => {
  const needs = ENTRY_VERSION + 1;
  const name = await laidOut(
    changed("entries", (row) => {
      const columns = row["columns"] as Record<string, unknown>;
      if (row["id"] === IDS.half) columns["v"] = { all: needs };
    }),
  );
  const expected = { code: "record/from-the-future", facts: { needs, knows: ENTRY_VERSION } };
  await changesNothing(name, async () => {
    const store = await openToday(name);
    expect(refusal(await readEntries(store, [IDS.half]))).toMatchObject(expected);
    const answer = await store.run([
      {
        op: "append",
        id: IDS.half,
        frame: { way: "mark-by-mark", ropeMarks: ROPE_MARKS },
        at: moment,
        draft: { type: "mark", mark: "next", cover: "bare" },
      },
    ]);
    expect(refusal(answer)).toMatchObject(expected);
    store.close();
  });
});

describe("an archive of a later version", () => {
  type Changes = Partial<Record<"manifest.json" | "records.ndjson", (text: string) => string>>;

  const digest = async (text: string): Promise<string> => {
    const bytes = new Uint8Array(await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text)));
    return [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  };

  /** The frozen archive written anew with some of its texts changed and its sums put right. */
  const rewritten = async (changes: Changes): Promise<File> => {
    const { files, manifest, read } = need(await openVolume(await frozenArchive(1)));
    const contents = new Map<string, Blob>();
    for (const listed of files) {
      const pieces: Uint8Array<ArrayBuffer>[] = [];
      need(await read(listed, (piece) => void pieces.push(piece.slice())));
      contents.set(listed.name, new Blob(pieces));
    }
    const records = await contents.get("records.ndjson")?.text();
    if (records === undefined) throw new Error("The archive has no records");
    const lines = changes["records.ndjson"]?.(records) ?? records;
    contents.set("records.ndjson", new Blob([lines]));
    const sha256 = await digest(lines);
    const head = {
      ...manifest,
      recordsDigest: sha256,
      files: manifest.files.map((one) =>
        one.name === "records.ndjson" ? { ...one, sha256, byteCount: new Blob([lines]).size } : one,
      ),
    };
    const text = changes["manifest.json"]?.(JSON.stringify(head)) ?? JSON.stringify(head);
    const inputs = [
      { name: "manifest.json", input: text },
      ...[...contents].map(([name, input]) => ({ name, input })),
    ];
    return new File([await new Response(makeZip(inputs)).blob()], "later.zip");
  };

  const later =
    (changes: Readonly<Record<string, unknown>>) =>
    (text: string): string =>
      JSON.stringify({ ...JSON.parse(text), ...changes });

  /** Each file waits under an id of its own: whoever may still say yes to one holds a lock on its id. */
  const freshId = (): string => crypto.randomUUID().replaceAll("-", "").slice(0, 16);
  const watch = { onProgress: () => undefined, signal: new AbortController().signal };

  const isRefused = async (file: File, facts: Record<string, unknown>): Promise<void> => {
    const name = await laidOut(frozenDatabase(1));
    await changesNothing(name, async () => {
      const store = await openToday(name);
      const answer = refusal(await fileJobs(store).stage(freshId(), file, watch));
      expect(answer).toMatchObject({ code: "exchange/from-the-future", facts });
      expect(answer.sentence).toMatch(new RegExp(`version ${facts["needs"]}.*Nothing was changed`));
      store.close();
    });
  };

  it("is staged when nothing of it is later: the test itself writes sound archives", async () => {
    const store = await openToday(await laidOut(frozenDatabase(1)));
    const answer = await fileJobs(store).stage(freshId(), await rewritten({}), watch);
    expect(need(answer)).toMatchObject({ records: { new: 0, changed: 0, same: 27 }, refusedCount: 0 });
  });

  it("is refused for a later format", async () => {
    const needs = FORMAT_VERSION + 1;
    const file = await rewritten({
      "manifest.json": later({ formatVersion: needs, something: "that this app has never heard of" }),
    });
    await isRefused(file, { what: "format", needs, knows: FORMAT_VERSION, app: "frozen" });
  });

  it("is refused for later entries", async () => {
    const needs = ENTRY_VERSION + 1;
    const file = await rewritten({ "manifest.json": later({ entryVersion: needs }) });
    await isRefused(file, { what: "entry", needs });
  });

  it("is refused for one record of a later version, though its manifest says nothing of it", async () => {
    const needs = KIND.field.version + 1;
    const file = await rewritten({
      "records.ndjson": (text) =>
        text
          .split("\n")
          .map((line) =>
            line.includes(`"id":"${IDS.field}"`)
              ? line.replaceAll(`"v":${KIND.field.version}`, `"v":${needs}`)
              : line,
          )
          .join("\n"),
    });
    await isRefused(file, { needs });
  });
});
