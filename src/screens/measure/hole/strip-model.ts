/** What the holes of one strip say together, on one day. */

import type { RecordId } from "../../../record/ids.ts";
import type { LandUse } from "../../../record/kinds/observation.ts";
import type { Result } from "../../../record/result.ts";
import { WORMS_GIVE_OR_TAKE } from "../../../science/constants.ts";
import { wormsPerHole, wormsPerM2 } from "../../../science/earthworms/field.ts";
import { GROWN_GROUPS, type GroupShare, shareOfHolesWith } from "../../../science/earthworms/groups.ts";
import { guidesFor } from "../../../science/earthworms/guides.ts";
import { type HolesNeeded, holesNeeded } from "../../../science/earthworms/holes-needed.ts";
import { type GuideReading, readByGuide } from "../../../science/earthworms/read-guide.ts";
import type { Caution, Estimate } from "../../../science/estimate.ts";
import { onGrass, spotsOf } from "../../parts/old-grass.ts";
import type { Reader } from "../../parts/reader.ts";
import { sameField, sameStrip } from "../../parts/same-field.ts";
import { countOfHole, type DayHole, holesOfDay } from "./holes-of-day.ts";
import { hemisphereOf } from "./new-model.ts";
import { workedDaysAgo } from "./worked-ago.ts";

export interface StripHoles {
  /** By number. */
  readonly holes: readonly DayHole[];
  readonly unfinished: number;
  readonly perHole: Result<Estimate>;
  readonly perM2: Result<Estimate>;
  readonly groups: readonly GroupShare[];
  /** Null before the first hole that counts, or when its size is not known. */
  readonly more: Result<HolesNeeded> | null;
  /** Guides that fit hole, depth, season and land use; the one of the method first. */
  readonly guides: readonly GuideReading[];
  /** Each once. */
  readonly cautions: readonly Caution[];
  /** Worms per hole that were guessed before; null when nobody did. */
  readonly guess: number | null;
}

const once = (cautions: readonly Caution[]): readonly Caution[] => [
  ...new Map(cautions.map((caution) => [caution.code, caution])).values(),
];

/** One land use for all holes, or null: a guide is for one. */
const landUseOf = (holes: readonly DayHole[]): LandUse | null => {
  const all = new Set(holes.map(({ header }) => header.landUse));
  const [only] = all;
  return all.size === 1 ? (only ?? null) : null;
};

/** Reads the holes of a strip on the day of a visit; null when there is none, or the visit is not here. */
export const readStripHoles = async (
  records: Reader,
  visitId: RecordId<"visit">,
  strip: RecordId<"strip">,
): Promise<StripHoles | null> => {
  const visit = await records.one(visitId);
  if (visit === undefined) return null;
  const [all, joins, same] = await Promise.all([
    holesOfDay(records, visit),
    records.joins(),
    sameField(records, visit.body.field),
  ]);
  const fields = same?.ids ?? [visit.body.field];
  const spots = await spotsOf(
    records,
    all.map(({ header }) => ({ body: header })),
  );
  const stripOf = sameStrip(joins);
  const isStrip = (id: RecordId<"strip">): boolean => stripOf(id) === stripOf(strip);
  const holes = all.filter(({ header }) => isStrip(header.strip) && !onGrass(spots, header));
  if (holes.length === 0) return null;
  const [worked, guesses] = await Promise.all([
    workedDaysAgo(records, fields, isStrip, visit.body.day),
    Promise.all(fields.map((field) => records.list({ field, kind: "guess" }))),
  ]);
  const counts = holes.map((hole) => ({ ...countOfHole(hole), workedDaysAgo: worked }));
  const perHole = wormsPerHole(counts);
  const perM2 = wormsPerM2(counts);
  const sidesM = counts.findLast((one) => one.sidesM !== null)?.sidesM ?? null;
  const finished = holes.filter(({ reading }) => reading.finished);
  const at = holes.map(({ header }) => header.at.position).find((position) => position !== null) ?? null;
  const method = finished.at(-1)?.header.method ?? null;
  const landUse = landUseOf(finished);
  const guides = guidesFor(landUse)
    .flatMap((guide) => {
      const read = readByGuide(guide, counts, {
        landUse,
        month: Number(visit.body.day.slice(5, 7)),
        hemisphere: hemisphereOf(at),
      });
      return read.ok ? [read.value] : [];
    })
    .sort((a, b) => Number(b.guide.id === method) - Number(a.guide.id === method));
  const guess = guesses
    .flat()
    .find(
      ({ body }) =>
        body.what === "worms-per-hole" &&
        body.visit === visitId &&
        body.strip !== null &&
        isStrip(body.strip),
    );
  const estimate = perHole.ok ? perHole : perM2;
  return {
    holes,
    unfinished: holes.length - finished.length,
    perHole,
    perM2,
    groups: GROWN_GROUPS.flatMap((group) => {
      const share = shareOfHolesWith(group, counts);
      return share.ok ? [share.value] : [];
    }),
    more:
      estimate.ok && sidesM !== null ? holesNeeded(counts, { giveOrTake: WORMS_GIVE_OR_TAKE, sidesM }) : null,
    guides,
    cautions: once([...(estimate.ok ? estimate.value.cautions : [])]).filter(
      ({ code }) => code !== "science/holes-unfinished",
    ),
    guess: guess?.body.value ?? null,
  };
};
