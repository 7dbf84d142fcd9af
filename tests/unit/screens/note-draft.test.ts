import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Command } from "../../../src/record/command/command.ts";
import type { RecordId } from "../../../src/record/ids.ts";
import { failed, ok } from "../../../src/record/result.ts";
import type { Position, Stood } from "../../../src/record/shapes.ts";
import { AT_LATEST_MS, newDraft, PAUSE_MS } from "../../../src/screens/measure/notes/draft.ts";
import { firstWords } from "../../../src/screens/measure/notes/model.ts";
import type { House } from "../../../src/screens/parts/house.ts";
import { fieldDay, houseInMemory, nowhere } from "./hole-house.ts";

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const position: Position = {
  latitudeDeg: 52,
  longitudeDeg: -1,
  accuracyM: 4,
  accuracyMeans: "68-percent",
  spreadM: 1,
  fixes: 9,
  how: "standing-still",
  atMs: 0,
};

/** A draft over records in memory, and every command that it wrote. */
const drafting = async (stood: Stood = nowhere) => {
  const { house, problems } = houseInMemory();
  const on = await fieldDay({ house, problems, bringIn: () => undefined });
  const kept = new Map<string, unknown>();
  const meta = {
    get: async (_store: string, name: string) => kept.get(name),
  };
  const connection = {
    // Steps are read by `get`; writing them needs a real database and is tested on a phone.
    use: async (job: (db: typeof meta) => Promise<unknown>) => {
      try {
        return await job(meta);
      } catch {
        return ok(undefined);
      }
    },
  };
  const commands: Command[] = [];
  const begun: RecordId[] = [];
  let full = false;
  const desk = {
    ...house,
    records: { ...house.records, connection } as unknown as House["records"],
    write: async (...written: readonly Command[]) => {
      if (full) return failed("store/quota");
      commands.push(...written);
      return house.write(...written);
    },
  };
  const open = (note: { id: RecordId<"observation">; text: string } | null) =>
    newDraft({
      house: desk,
      on: { visit: on.visit, field: on.field, spot: null, strip: null },
      note: note === null ? null : { ...note, strip: null },
      stood: () => stood,
      onBegun: (id) => begun.push(id),
    });
  const read = async (id: RecordId<"observation"> | null) =>
    id === null ? undefined : (await house.records.one(id))?.body;
  return {
    on,
    open,
    read,
    commands,
    begun,
    problems,
    fill: (isFull: boolean) => {
      full = isFull;
    },
  };
};

describe("a note under the pen", () => {
  it("exists from its first character, with the position of that moment", async () => {
    const { open, read, begun, on } = await drafting({ position, why: null });
    const draft = open(null);
    expect(draft.note.value).toBeNull();
    draft.type("W");
    await vi.advanceTimersByTimeAsync(0);
    expect(begun).toEqual([draft.note.value]);
    expect(await read(draft.note.value)).toMatchObject({
      type: "note",
      text: "W",
      ...{ visit: on.visit, field: on.field, strip: null },
      at: { position, why: null },
    });
    expect(draft.onRecord.value).toBe(true);
  });

  it("writes at a pause, and not one revision a key", async () => {
    const { open, read, commands } = await drafting();
    const draft = open(null);
    const words = "Water stands";
    for (let length = 1; length <= words.length; length++) {
      draft.type(words.slice(0, length));
      await vi.advanceTimersByTimeAsync(100);
    }
    expect(draft.onRecord.value).toBe(false);
    await vi.advanceTimersByTimeAsync(PAUSE_MS);
    expect(draft.onRecord.value).toBe(true);
    expect(await read(draft.note.value)).toMatchObject({ text: words });
    expect(commands).toHaveLength(2);
  });

  it("does not wait for a pause that never comes", async () => {
    const { open, read } = await drafting();
    const draft = open(null);
    for (let length = 1; length <= 40; length++) {
      draft.type("x".repeat(length));
      await vi.advanceTimersByTimeAsync(PAUSE_MS / 4);
    }
    const text = ((await read(draft.note.value)) as { text: string }).text.length;
    expect(text).toBeGreaterThan(AT_LATEST_MS / (PAUSE_MS / 4) - 2);
  });

  it("writes the rest when the screen is left", async () => {
    const { open, read } = await drafting();
    const draft = open(null);
    draft.type("A");
    draft.type("At the gate");
    await draft.leave();
    expect(await read(draft.note.value)).toMatchObject({ text: "At the gate" });
  });

  it("keeps words on the screen that could not be written, says why, and writes them with the next", async () => {
    const { open, read, problems, fill } = await drafting();
    const draft = open(null);
    fill(true);
    draft.type("Full");
    await vi.advanceTimersByTimeAsync(PAUSE_MS);
    expect(problems.map(({ code }) => code)).toContain("store/quota");
    expect([draft.text.value, draft.onRecord.value, draft.note.value]).toEqual(["Full", false, null]);
    fill(false);
    draft.type("Full again");
    await vi.advanceTimersByTimeAsync(PAUSE_MS);
    expect(await read(draft.note.value)).toMatchObject({ text: "Full again" });
    expect(draft.onRecord.value).toBe(true);
  });

  it("leaves half a character out, which no file could carry", async () => {
    const { open, read } = await drafting();
    const draft = open(null);
    draft.type("a\ud83d");
    await vi.advanceTimersByTimeAsync(PAUSE_MS);
    expect(await read(draft.note.value)).toMatchObject({ text: "a" });
    draft.type("a\ud83c\udf3e");
    await vi.advanceTimersByTimeAsync(PAUSE_MS);
    expect(await read(draft.note.value)).toMatchObject({ text: "a\ud83c\udf3e" });
  });

  it("undoes and redoes every kind of change, last first; a new change ends what could be redone", async () => {
    const { open, read, on } = await drafting({ position, why: null });
    const draft = open(null);
    draft.type("One");
    await draft.flush();
    draft.type("One two");
    await draft.flush();
    await draft.chooseStrip(on.strip);
    await draft.putPosition({ position, why: null }, { position: null, why: "not-asked" }, false);
    const now = () => read(draft.note.value);
    expect(await draft.step("undo")).toBe("position");
    expect(await now()).toMatchObject({ at: { position } });
    expect(await draft.step("undo")).toBe("strip");
    expect(await now()).toMatchObject({ strip: null });
    expect(await draft.step("undo")).toBe("words");
    expect([draft.text.value, (await now())?.type]).toEqual(["One", "note"]);
    expect(await draft.step("redo")).toBe("words");
    expect(draft.text.value).toBe("One two");
    draft.type("One three");
    await draft.flush();
    expect(await draft.step("redo")).toBeNull();
    expect(await draft.step("undo")).toBe("words");
    expect(await draft.step("undo")).toBe("words");
    expect(await draft.step("undo")).toBe("words");
    expect(draft.text.value).toBe("");
    expect(await draft.step("undo")).toBeNull();
  });

  it("begins with a chosen strip before a camera opens, and takes the empty note away when nothing came", async () => {
    const { open, read, on, commands } = await drafting();
    const draft = open(null);
    await draft.rest();
    expect(commands).toEqual([]);
    await draft.chooseStrip(on.strip);
    await draft.rest();
    const id = draft.note.value;
    expect(await read(id)).toMatchObject({ text: "", strip: on.strip });
    await draft.leave();
    expect(commands.map(({ op }) => op)).toEqual(["write", "erase"]);
    expect(await read(id)).toBeUndefined();
  });

  it("keeps a note without words that has a photo, and one whose words were taken out again", async () => {
    const { open, commands } = await drafting();
    const withPhoto = open(null);
    await withPhoto.ensure();
    withPhoto.photoCame(`photo-${"0".repeat(32)}`, false);
    await withPhoto.leave();
    const emptied = open(null);
    emptied.type("x");
    await emptied.flush();
    emptied.type("");
    await emptied.leave();
    expect(commands.map(({ op }) => op)).toEqual(["write", "write", "change"]);
  });

  it("begins a note of its own for a photo that was ready only after the screen was left", async () => {
    const { open, read, on, begun } = await drafting();
    const draft = open(null);
    await draft.chooseStrip(on.strip);
    await draft.rest();
    const first = draft.note.value;
    await draft.leave();
    const second = await draft.ensure();
    expect(second).not.toBe(first);
    expect(await read(second)).toMatchObject({ strip: on.strip });
    expect(begun).toEqual([first]);
  });

  it("takes what another window wrote, unless something is being typed here", async () => {
    const { open, read } = await drafting();
    const draft = open(null);
    draft.type("Mine");
    await draft.flush();
    draft.heard({ text: "Theirs", strip: null });
    expect(draft.text.value).toBe("Theirs");
    draft.type("Theirs and mine");
    draft.heard({ text: "Theirs once more", strip: null });
    expect(draft.text.value).toBe("Theirs and mine");
    await draft.flush();
    expect(await read(draft.note.value)).toMatchObject({ text: "Theirs and mine" });
  });
});

describe("the first words of a note", () => {
  it("are its first line, cut between letters", () => {
    expect(firstWords("  At the gate\nmore")).toBe("At the gate");
    expect(firstWords("\ud83c\udf3e".repeat(90), 3)).toBe("\ud83c\udf3e\ud83c\udf3e…");
    expect(firstWords("")).toBe("");
  });
});
