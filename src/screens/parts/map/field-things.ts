/** What of a field's records lies on its map. */
import type { RecordId } from "../../../record/ids.ts";
import type { Position } from "../../../record/shapes.ts";
import { middleOf } from "../../../science/position/boundary.ts";
import type { LatitudeLongitude } from "../../../science/position/distance.ts";
import type { Catalogue } from "../../catalogue.ts";
import { fieldName, stripName } from "../names.ts";
import { dayOf, writeClock, writeDay } from "../numbers.ts";
import { onGrass, type Spots, spotsOf } from "../old-grass.ts";
import type { Listed, Reader } from "../reader.ts";
import { href } from "../route.ts";
import { onceEach, type SameField, sameField, sameStrip } from "../same-field.ts";
import type { Drawing, Label, Sign, Thing } from "./drawing.ts";
import type { MAP_WORDS } from "./words.ts";

type MapWords = ReturnType<(typeof MAP_WORDS)["en"]>;

/** The records that a field's map is made of. */
export interface OnField {
  readonly same: SameField;
  readonly farm: Listed<"farm"> | undefined;
  readonly strips: readonly Listed<"strip">[];
  readonly stripOf: (id: RecordId<"strip">) => RecordId<"strip">;
  readonly spots: readonly Listed<"spot">[];
  /** The marked spots where tests were made, deleted ones too. */
  readonly measuredAt: Spots;
  /** Newest first. */
  readonly tests: readonly Listed<"observation">[];
  /** There are older ones that were left out. */
  readonly more: boolean;
  readonly kit: ReadonlyMap<RecordId, Listed<"kit">>;
}

/** Signs are elements of the page: more than this hold up a slow phone. */
export const MOST_TESTS = 120;

const testsOf = async (
  records: Reader,
  same: SameField,
  visit: RecordId<"visit"> | null,
): Promise<readonly Listed<"observation">[]> => {
  if (visit !== null)
    return records.list({ visit, kind: "observation" }, { newestFirst: true, limit: MOST_TESTS + 1 });
  const lists = await Promise.all(
    same.ids.map((field) =>
      records.list({ field, kind: "observation" }, { newestFirst: true, limit: MOST_TESTS + 1 }),
    ),
  );
  return lists.flat().sort((a, b) => b.row.keys.atMs - a.row.keys.atMs);
};

/** Spots and tests looked at for whether a field has a map at all: a page must not wait for all of them. */
const FEW = 8;

/** Whether there is a place to draw on a field: told by its boundary, some marked spots and its newest tests. */
export const hasPlaces = async (records: Reader, same: SameField): Promise<boolean> => {
  if (same.field.body.boundary !== null) return true;
  const some = await Promise.all(
    same.ids.map(async (field) => {
      const [spots, tests] = await Promise.all([
        records.list({ field, kind: "spot" }, { limit: FEW }),
        records.list({ field, kind: "observation" }, { newestFirst: true, limit: FEW }),
      ]);
      const starts = tests.map(({ body }) => (body.type === "line" ? body.start : body.at).position);
      return [...spots.map(({ body }) => body.position), ...starts].some((position) => position !== null);
    }),
  );
  return some.includes(true);
};

/**
 * Reads what lies on a field, from headers alone.
 *
 * @param visit only what was measured on this one; null for the newest of all
 * @returns null when the field is not on this device
 */
export const readOnField = async (
  records: Reader,
  field: RecordId<"field">,
  visit: RecordId<"visit"> | null,
): Promise<OnField | null> => {
  const same = await sameField(records, field);
  if (same === undefined) return null;
  const [all, joins, farm, strips, spots] = await Promise.all([
    testsOf(records, same, visit),
    records.joins(),
    same.field.body.farm === null ? undefined : records.one(same.field.body.farm),
    Promise.all(same.ids.map((id) => records.list({ field: id, kind: "strip" }))),
    Promise.all(same.ids.map((id) => records.list({ field: id, kind: "spot" }))),
  ]);
  const stripOf = sameStrip(joins);
  const tests = all.slice(0, MOST_TESTS);
  const rings = tests.flatMap(({ body }) => (body.type === "ring" ? [body.ring] : []));
  const [kit, measuredAt] = await Promise.all([records.many([...new Set(rings)]), spotsOf(records, tests)]);
  return {
    same,
    farm,
    strips: onceEach(strips.flat(), stripOf),
    stripOf,
    spots: spots.flat(),
    measuredAt,
    tests,
    more: all.length > MOST_TESTS,
    kit: new Map(kit.map((one) => [one.id, one])),
  };
};

/** What is drawn, and how many tests have no position to be drawn at. */
export interface FieldDrawing {
  readonly drawing: Drawing;
  readonly without: number;
  /** The middle of the field, or of what lies on it. */
  readonly middle: LatitudeLongitude | null;
  readonly name: string;
}

/** Puts the records into signs with their words. */
export const drawField = (words: Catalogue, map: MapWords, on: OnField): FieldDrawing => {
  const { tongue } = words.common;
  const nameOf = (id: RecordId<"strip"> | null): string => {
    const strip = id === null ? undefined : on.strips.find((one) => one.id === on.stripOf(id));
    return stripName(words, strip);
  };
  const groundOf = (body: Listed<"observation">["body"]): readonly string[] => {
    const spot = body.spot === undefined ? undefined : on.measuredAt.get(body.spot);
    const name = spot?.body.name ?? "";
    if (onGrass(on.measuredAt, body)) return [words.common.oldGrass(name)];
    return [...(body.strip === null ? [] : [nameOf(body.strip)]), ...(name === "" ? [] : [name])];
  };
  const test = ({ id, body }: Listed<"observation">): Thing | null => {
    const [at, to] =
      body.type === "line"
        ? [body.start.position ?? body.end.position, body.end.position]
        : [body.at.position, null];
    if (at === null) return null;
    const when = `${writeDay(dayOf(body.startedAtMs), tongue)}, ${writeClock(body.startedAtMs, tongue)}`;
    const ground = groundOf(body);
    const about = (...more: readonly string[]): string => [...ground, ...more, when].join(" · ");
    const thing = { id, at, to: to === at ? null : to };
    switch (body.type) {
      case "line":
        return {
          ...thing,
          sign: "line",
          label: "",
          name: map.signs.line,
          about: about(),
          href: href({ at: "line-sheet", line: id }),
        };
      case "ring": {
        const letter = on.kit.get(body.ring)?.body.name ?? "";
        return {
          ...thing,
          sign: "ring",
          label: [...letter].slice(0, 2).join(""),
          name: letter === "" ? map.signs.ring : map.ring(letter),
          about: about(),
          href: href({ at: "ring-sheet", ring: id }),
        };
      }
      case "hole":
        return {
          ...thing,
          sign: "hole",
          label: String(body.number),
          name: map.hole(body.number),
          about: about(),
          href: href({ at: "hole-sheet", hole: id }),
        };
      case "note":
        return {
          ...thing,
          sign: "note",
          label: "",
          name: map.signs.note,
          about: about(...(body.text === "" ? [] : [body.text.slice(0, 80)])),
          href: href({ at: "note", note: id }),
        };
    }
  };
  const spot = ({ id, body }: Listed<"spot">): Thing | null => {
    if (body.position === null) return null;
    const sign: Sign = body.edge === undefined ? (body.oldGrass ? "old-grass" : "spot") : "edge";
    const [one, other] = body.edge?.between ?? [null, null];
    return {
      id,
      sign,
      at: body.position,
      to: body.edge?.to ?? null,
      label: body.name,
      name: body.name === "" ? map.signs[sign] : body.name,
      about: [
        ...(body.name === "" ? [] : [map.signs[sign]]),
        ...(body.edge === undefined ? [] : [map.between(nameOf(one), nameOf(other))]),
        ...(body.strip === null ? [] : [nameOf(body.strip)]),
        ...(moved(body.position) ? [map.byHand] : []),
      ].join(" · "),
      href: href({ at: "spot", field: on.same.field.id, spot: id }),
    };
  };
  const tests = on.tests.map(test);
  const things = [...on.spots.map(spot), ...tests].filter((one) => one !== null);
  const { boundary } = on.same.field.body;
  const places = boundary ?? things.map(({ at }) => at);
  const middle = middleOf(places);
  return {
    drawing: { boundary, things, labels: stripLabels(on, nameOf), here: null, corners: null },
    without: tests.filter((one) => one === null).length,
    middle: middle.ok ? middle.value : null,
    name: fieldName(words, on.same.field),
  };
};

const moved = (position: Position): boolean => position.movedFrom !== undefined;

/** Strips have no outline of their own: each name stands in the middle of what was measured on it. */
const stripLabels = (on: OnField, nameOf: (id: RecordId<"strip">) => string): readonly Label[] => {
  const places = new Map<RecordId<"strip">, LatitudeLongitude[]>();
  const put = (strip: RecordId<"strip"> | null, at: LatitudeLongitude | null): void => {
    if (strip === null || at === null) return;
    const of = on.stripOf(strip);
    places.set(of, [...(places.get(of) ?? []), at]);
  };
  for (const { body } of on.tests) {
    // Old grass lies in no strip, and would draw the name of one to it.
    if (onGrass(on.measuredAt, body)) continue;
    if (body.type !== "line") put(body.strip, body.at.position);
    else {
      put(body.strip, body.start.position);
      put(body.strip, body.end.position);
    }
  }
  for (const { body } of on.spots) if (!body.oldGrass) put(body.strip, body.position);
  return [...places].flatMap(([strip, all]) => {
    const middle = middleOf(all);
    return middle.ok ? [{ id: strip, text: nameOf(strip), at: middle.value }] : [];
  });
};
