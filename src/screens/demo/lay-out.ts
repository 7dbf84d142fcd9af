/** The example farm itself: its fields, strips, marked spots and kit. */
import { NO_STRIP } from "../../record/ground.ts";
import type { RecordId } from "../../record/ids.ts";
import type { Treatment } from "../../record/kinds/strip.ts";
import type { DemoPen } from "./demo-pen.ts";
import { type Lie, onEarth, type Place, positionAt } from "./ground.ts";
import type { FarmWords } from "./words.farm.ts";

/** A strip with the part of the field that it covers; old grass covers its corner and is no strip. */
export interface DemoStrip {
  readonly id: RecordId<"strip">;
  readonly fromM: number;
  readonly toM: number;
  /** The marked spot on it that is measured each season. */
  readonly spot: { readonly id: RecordId<"spot">; readonly place: Place } | null;
}

/** A field with all that lies on it. */
export interface DemoField {
  readonly id: RecordId<"field">;
  readonly lie: Lie;
}

/** The field of three strips, with its visible edge and its old grass. */
export interface Piece extends DemoField {
  readonly strawLeft: DemoStrip;
  readonly strawOff: DemoStrip;
  readonly coverCrop: DemoStrip;
  readonly oldGrass: DemoStrip;
  readonly edge: RecordId<"spot">;
}

/** The field of three pairs. */
export interface Quarter extends DemoField {
  readonly pairs: readonly { readonly withCover: DemoStrip; readonly withoutCover: DemoStrip }[];
}

export interface DemoKit {
  readonly rope: RecordId<"kit">;
  readonly ropeMarks: number;
  readonly rings: readonly RecordId<"kit">[];
  readonly template: RecordId<"kit">;
  readonly ruler: RecordId<"kit">;
}

const YARD: Lie = { eastM: 0, northM: 0, rowsDeg: 20 };
const FAR_SIDE: Lie = { eastM: 620, northM: -90, rowsDeg: 95 };

const corners = (lie: Lie, outline: readonly (readonly [acrossM: number, alongM: number])[]) =>
  outline.map(([acrossM, alongM]) => onEarth(lie, { acrossM, alongM }));

interface Strips {
  readonly field: RecordId<"field">;
  readonly lie: Lie;
  readonly atMs: number;
}

/** A strip, with a marked spot on it when one is asked for. */
const strip = (
  pen: DemoPen,
  words: FarmWords,
  { field, lie, atMs }: Strips,
  one: {
    readonly name: string;
    readonly done: readonly Treatment[];
    readonly acrossM: readonly [number, number];
    readonly rep?: number;
    readonly spotAlongM?: number;
  },
): DemoStrip => {
  const [fromM, toM] = one.acrossM;
  const body = { field, name: one.name, done: [...one.done], wholeField: false, rep: one.rep ?? null };
  const id = pen.write("strip", body, atMs);
  if (one.spotAlongM === undefined) return { id, fromM, toM, spot: null };
  const place = { acrossM: (fromM + toM) / 2, alongM: one.spotAlongM };
  const spot = pen.write(
    "spot",
    {
      field,
      strip: id,
      name: words.spotOf(one.name),
      position: positionAt(lie, place, atMs),
      oldGrass: false,
    },
    atMs,
  );
  return { id, fromM, toM, spot: { id: spot, place } };
};

/**
 * The farm and its kit.
 *
 * @param nowMs the farm itself is dated now: it says when it was brought in
 */
export const layFarm = (pen: DemoPen, words: FarmWords, nowMs: number, beganMs: number) => {
  const farm = pen.write("farm", { name: words.farm }, nowMs);
  const ropeMarks = 50;
  const ring = (name: string, first: number, second: number): RecordId<"kit"> =>
    pen.write(
      "kit",
      { type: "ring", name, insideM: [first, second], heightsM: [0.25], outsideM: null },
      beganMs,
    );
  const kit: DemoKit = {
    rope: pen.write("kit", { type: "rope", name: words.rope, marks: ropeMarks, spacingM: 0.3 }, beganMs),
    ropeMarks,
    rings: words.rings.map((name, at) => ring(name, 0.3, (299 + (at % 3)) / 1000)),
    template: pen.write("kit", { type: "hole-template", name: words.template, sidesM: [0.2, 0.2] }, beganMs),
    ruler: pen.write("kit", { type: "ruler", name: words.ruler, stepM: 0.001 }, beganMs),
  };
  pen.write("kit", { type: "bottle", name: words.bottle, volumeM3: 0.001 }, beganMs);
  return { farm, kit };
};

/** The first field: three strips side by side, an edge that can be seen, and old grass in its corner. */
export const layPiece = (pen: DemoPen, words: FarmWords, farm: RecordId<"farm">, beganMs: number): Piece => {
  const lie = YARD;
  const field = pen.write(
    "field",
    {
      name: words.piece,
      farm,
      boundary: corners(lie, [
        [0, 0],
        [268, -6],
        [281, 130],
        [262, 252],
        [120, 264],
        [4, 246],
      ]),
      rowDirectionDeg: lie.rowsDeg,
      soilTexture: "silt-loam",
      harvestCrop: "winter-wheat",
    },
    beganMs,
  );
  const on = { field, lie, atMs: beganMs };
  const strawLeft = strip(pen, words, on, {
    name: words.strawLeft,
    done: ["straw-left", "no-cover-crop"],
    acrossM: [36, 108],
    spotAlongM: 70,
  });
  const strawOff = strip(pen, words, on, {
    name: words.strawOff,
    done: ["straw-carried-off", "no-cover-crop"],
    acrossM: [108, 180],
    spotAlongM: 70,
  });
  const coverCrop = strip(pen, words, on, {
    name: words.coverCrop,
    done: ["straw-left", "cover-crop"],
    acrossM: [180, 252],
    spotAlongM: 70,
  });
  const grassPlace = { acrossM: 15, alongM: 205 };
  const grassSpot = pen.write(
    "spot",
    {
      field,
      strip: null,
      name: words.oldGrassSpot,
      position: positionAt(lie, grassPlace, beganMs),
      oldGrass: true,
    },
    beganMs,
  );
  const edge = pen.write(
    "spot",
    {
      field,
      strip: null,
      name: words.edge,
      position: positionAt(lie, { acrossM: 108, alongM: 24 }, beganMs),
      oldGrass: false,
      edge: {
        between: [strawLeft.id, strawOff.id],
        to: positionAt(lie, { acrossM: 108, alongM: 236 }, beganMs),
      },
    },
    beganMs,
  );
  const oldGrass = { id: NO_STRIP, fromM: 4, toM: 26, spot: { id: grassSpot, place: grassPlace } };
  return { id: field, lie, strawLeft, strawOff, coverCrop, oldGrass, edge };
};

/** The second field: cover crop and none, three times side by side. */
export const layQuarter = (
  pen: DemoPen,
  words: FarmWords,
  farm: RecordId<"farm">,
  beganMs: number,
): Quarter => {
  const lie = FAR_SIDE;
  const field = pen.write(
    "field",
    {
      name: words.quarter,
      farm,
      boundary: corners(lie, [
        [0, 0],
        [232, 0],
        [232, 170],
        [150, 188],
        [0, 176],
      ]),
      rowDirectionDeg: lie.rowsDeg,
      soilTexture: "clay-loam",
      harvestCrop: "barley",
    },
    beganMs,
  );
  const on = { field, lie, atMs: beganMs };
  const pairs = [1, 2, 3].map((rep) => {
    const fromM = 8 + (rep - 1) * 72;
    // Which side comes first changes from pair to pair, so that a slope across the field favours neither.
    const first = rep % 2 === 1;
    return {
      withCover: strip(pen, words, on, {
        name: words.withCover(rep),
        done: ["cover-crop", "straw-left"],
        acrossM: first ? [fromM, fromM + 36] : [fromM + 36, fromM + 72],
        rep,
        ...(rep === 2 ? { spotAlongM: 88 } : {}),
      }),
      withoutCover: strip(pen, words, on, {
        name: words.withoutCover(rep),
        done: ["no-cover-crop", "straw-left"],
        acrossM: first ? [fromM + 36, fromM + 72] : [fromM, fromM + 36],
        rep,
        ...(rep === 2 ? { spotAlongM: 88 } : {}),
      }),
    };
  });
  return { id: field, lie, pairs };
};
