/** A house over records in memory: the real commands and headers, without a database. */
import { signal } from "@preact/signals";
import type { Applied } from "../../../src/record/command/applied.ts";
import { applyCommand } from "../../../src/record/command/apply.ts";
import type { Entry } from "../../../src/record/entry.ts";
import { type Kind, kindOf, type RecordId } from "../../../src/record/ids.ts";
import type { HoleHeader } from "../../../src/record/kinds/observation.ts";
import { arranged, emptyRecord, type RecordState, shown } from "../../../src/record/record.ts";
import { ok, type Problem } from "../../../src/record/result.ts";
import { CATALOGUES } from "../../../src/screens/catalogue.ts";
import type { House } from "../../../src/screens/parts/house.ts";
import { newPen } from "../../../src/screens/parts/pen.ts";
import type { Listed, Reader } from "../../../src/screens/parts/reader.ts";
import { FIRST_SETTINGS } from "../../../src/screens/parts/settings.ts";
import { TRADE_WORDS } from "../../../src/screens/parts/trade.ts";
import { headerRow } from "../../../src/store/rows.ts";

export const DEVICE = "d".repeat(16);

/** A house with what was told to the person, and a way to bring entries in as a file does. */
export interface HouseInMemory {
  readonly house: House;
  readonly problems: Problem[];
  readonly bringIn: (id: RecordId<"observation">, ...entries: readonly Entry[]) => void;
}

export const houseInMemory = (): HouseInMemory => {
  const states = new Map<RecordId, RecordState>();
  const problems: Problem[] = [];
  const listedOf = <K extends Kind>(id: RecordId<K>): Listed<K> | undefined => {
    const state = states.get(id);
    const revision = state === undefined ? undefined : shown(state);
    if (state === undefined || revision === undefined) return undefined;
    const deleted = revision.deleted === true;
    return { id, revision, body: revision.body, deleted, versions: 1, row: headerRow(state) } as Listed<K>;
  };
  const all = (): Listed[] => [...states.keys()].flatMap((id) => listedOf(id) ?? []);
  const records = {
    subscribe: () => () => undefined,
    one: async (id: RecordId) => listedOf(id),
    many: async (ids: readonly RecordId[]) => ids.flatMap((id) => listedOf(id) ?? []),
    list: async (of: { kind?: Kind; field?: string; visit?: string }, part?: { newestFirst?: boolean }) => {
      const rows = all().filter(({ id, body, deleted }) => {
        const held = body as { readonly field?: string; readonly visit?: string };
        if (deleted || (of.kind !== undefined && kindOf(id) !== of.kind)) return false;
        if (of.field !== undefined && held.field !== of.field) return false;
        return of.visit === undefined || (held.visit === of.visit && kindOf(id) === "observation");
      });
      return part?.newestFirst === true ? rows.reverse() : rows;
    },
    deleted: async () => [],
    joins: async () => [],
    entries: async (ids: readonly RecordId[]) =>
      new Map(ids.map((id) => [id, states.get(id)?.entries ?? []] as const)),
  } as unknown as Reader;
  const house = {
    records,
    device: DEVICE,
    pen: newPen(DEVICE, () => null),
    settings: signal(FIRST_SETTINGS),
    words: signal(CATALOGUES.en(TRADE_WORDS["uk-ie"])),
    tell: (problem) => problems.push(problem),
    write: async (...commands) => {
      const done: Applied[] = [];
      for (const command of commands) {
        const applied = applyCommand(states.get(command.id), command);
        if (!applied.ok) return applied;
        states.set(command.id, applied.value.record);
        done.push(applied.value);
      }
      return ok(done);
    },
  } as Partial<House> as House;
  return {
    house,
    problems,
    bringIn: (id, ...entries) => {
      const state = states.get(id) ?? emptyRecord(id);
      states.set(id, arranged({ ...state, entries: [...state.entries, ...entries] }));
    },
  };
};

export const nowhere = { position: null, why: "not-asked" } as const;

/** A field with a strip and a visit. */
export const fieldDay = async ({ house }: HouseInMemory, day = "2026-04-01") => {
  const { pen } = house;
  const field = pen.write("field", {
    name: "Long Field",
    farm: null,
    boundary: null,
    rowDirectionDeg: null,
    soilTexture: null,
    harvestCrop: null,
  });
  const strip = pen.write("strip", { field: field.id, name: "A", done: [], wholeField: false, rep: null });
  const visit = pen.write("visit", { field: field.id, day, harvestYear: null });
  await house.write(field, strip, visit);
  return { field: field.id, strip: strip.id, visit: visit.id };
};

/** A hole of 20 × 20 × 20 cm on that day; what a test does not care about stands as usual. */
export const holeOn = async (
  { house }: HouseInMemory,
  on: Awaited<ReturnType<typeof fieldDay>>,
  more: Partial<HoleHeader> = {},
): Promise<RecordId<"observation">> => {
  const command = house.pen.write("observation", {
    type: "hole",
    ...on,
    place: null,
    person: null,
    startedAtMs: 0,
    template: null,
    sidesM: [0.2, 0.2],
    depthM: 0.2,
    method: null,
    landUse: "cropland",
    minutes: null,
    mustardMin: null,
    at: nowhere,
    number: 1,
    ...more,
  });
  await house.write(command);
  return command.id;
};
