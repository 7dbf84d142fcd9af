/** The picture in words: what is drawn, and the same as plain text. */
import { isDemoId } from "../../../record/demo-mark.ts";
import type { UnitHabits } from "../../../record/units.ts";
import { type Catalogue, sentenceFor } from "../../catalogue.ts";
import { nameWithFate } from "../../fields/cover-model.ts";
import { noRangeText } from "../../findings/no-range.ts";
import { scaleEnd, shortUnit, valueText, withUnit } from "../../findings/side-by-side/numbers.ts";
import { seenText, versusOf, versusRangeText } from "../../findings/side-by-side/say.ts";
import { otherDayOf } from "../../findings/side-by-side/sides.ts";
import type { SideWords } from "../../findings/side-by-side/words.ts";
import type { BesideWords } from "../../findings/words.beside.ts";
import { fieldName } from "../../parts/names.ts";
import { writeClock, writeDay, writeNumber } from "../../parts/numbers.ts";
import type { Listed } from "../../parts/reader.ts";
import { TONGUE } from "../../parts/words.common.ts";
import type { HalfOfPicture, PictureNow } from "./model.ts";
import type { PictureWords } from "./words.ts";

/** One of the two numbers, ready to be written. */
export interface HalfWritten {
  readonly name: string;
  readonly value: string;
  readonly unit: string;
  /** Range or why there is none, and samples. */
  readonly range: string;
  /** Empty when nobody guessed. */
  readonly guess: string;
  /** Between 0 and 1 on the scale that both share. */
  readonly at: number;
  /** Both ends of the range on it; null when there is none. */
  readonly from: number | null;
  readonly to: number | null;
}

/** Everything that is written in the picture. */
export interface Content {
  readonly field: string;
  /** Said right under the field when it belongs to the example farm; else empty. */
  readonly invented: string;
  readonly day: string;
  readonly what: string;
  /** Said before the numbers: in which ways it is not like with like. */
  readonly unlike: readonly string[];
  readonly halves: readonly HalfWritten[];
  /** What was seen, then what it proves. */
  readonly said: readonly string[];
  readonly notShownTitle: string;
  readonly notShown: readonly string[];
  readonly foot: string;
  /** The ends of the scale. */
  readonly scale: readonly [string, string];
}

/** Words that the picture is written with. */
export interface WritingWords {
  readonly catalogue: Catalogue;
  readonly picture: PictureWords;
  readonly side: SideWords;
  readonly beside: BesideWords;
  readonly sentences: Readonly<Record<string, string>>;
  readonly habits: UnitHabits;
}

const nameOf = (
  { day, visit, measure }: PictureNow,
  { of }: HalfOfPicture,
  { catalogue, picture }: WritingWords,
): string => {
  if (of !== "old-grass") return nameWithFate(catalogue, of.strip);
  const other = otherDayOf(day.yardstick, measure, visit.body.day);
  return other === null ? picture.grass : `${picture.grass}, ${writeDay(other, catalogue.common.tongue)}`;
};

const writtenHalf = (now: PictureNow, half: HalfOfPicture, end: number, with_: WritingWords): HalfWritten => {
  const { measure, asked } = now;
  const { picture, habits } = with_;
  const { estimate, guess } = half;
  const { range: bounds } = estimate;
  const range = bounds.ok
    ? picture.range(
        valueText(measure, bounds.value.lower, habits),
        valueText(measure, bounds.value.upper, habits),
      )
    : noRangeText(with_.catalogue, with_.beside, with_.sentences, bounds.problem);
  return {
    name: nameOf(now, half, with_),
    value: valueText(measure, estimate.value, habits),
    unit: asked.measure === "worms" ? "" : shortUnit(measure, habits),
    range: `${range}, ${picture.samples[measure](estimate.n)}`,
    guess: guess === null ? "" : picture.guessed(withUnit(measure, guess, habits)),
    at: Math.min(1, estimate.value / end),
    from: estimate.range.ok ? estimate.range.value.lower / end : null,
    to: estimate.range.ok ? Math.min(1, estimate.range.value.upper / end) : null,
  };
};

const saidOf = ({ compared, measure }: PictureNow, with_: WritingWords): readonly string[] => {
  const place = compared?.places[0];
  if (place === undefined) return [];
  const { catalogue, picture, side } = with_;
  if (!place.compared.ok) return [picture.cannotCompare];
  const versus = versusOf(
    measure,
    place.compared.value,
    nameWithFate(catalogue, place.a.strip.strip),
    nameWithFate(catalogue, place.b.strip.strip),
  );
  const { word } = place.compared.value.comparison;
  return [seenText(side, versus), `${picture.places[word]} ${versusRangeText(side, versus)}`.trim()];
};

const unlikeOf = ({ compared }: PictureNow, { catalogue, sentences }: WritingWords): readonly string[] =>
  (compared?.likeness ?? []).flatMap(({ unlike }) =>
    unlike.map(({ caution }) => sentenceFor(catalogue, caution, sentences)),
  );

/** Writes the picture. */
export const contentOf = (now: PictureNow, with_: WritingWords): Content => {
  const { catalogue, picture, habits } = with_;
  const { measure, asked, halves, second, compared } = now;
  const { common } = catalogue;
  const end = scaleEnd(
    measure,
    halves.map(({ estimate }) => estimate),
  );
  return {
    field: fieldName(catalogue, now.day.same.field),
    invented: isDemoId(now.day.same.field.id) ? picture.invented : "",
    day: writeDay(now.visit.body.day, common.tongue),
    what:
      measure === "cover"
        ? picture.unit.cover
        : measure === "worms"
          ? picture.unit[asked.per]
          : picture.unit.soak(writeNumber(asked.minutes, TONGUE)),
    unlike: [...new Set(unlikeOf(now, with_))],
    halves: halves.map((half) => writtenHalf(now, half, end, with_)),
    said: saidOf(now, with_),
    notShownTitle: picture.notShown,
    notShown: [
      compared === null ? picture.onePlace : picture.twoPlaces,
      ...(second === "old-grass" ? [picture.withGrass] : []),
      ...(measure === "soak" ? [picture.rings] : [picture.sampling]),
      picture.local,
    ],
    foot: picture.foot(common.product, common.tagline),
    scale: [valueText(measure, 0, habits), withUnit(measure, end, habits)],
  };
};

/** What a photo is of: when it was taken, and on which strip it hangs. */
export const captionOf = (
  { day }: Pick<PictureNow, "day">,
  { id, body }: Listed<"photo">,
  catalogue: Catalogue,
  words: PictureWords,
): string => {
  const found = day.strips.find(({ photos }) => photos.some((one) => one.id === id));
  const clock = writeClock(body.takenAtMs, catalogue.common.tongue);
  return words.photo(clock, found === undefined ? "" : nameWithFate(catalogue, found.strip));
};

/** The same as plain text, one thing on a line. */
export const textOf = (content: Content): string =>
  [
    `${content.field}, ${content.day}`,
    ...(content.invented === "" ? [] : [content.invented]),
    content.what,
    "",
    ...content.unlike,
    ...content.halves.map(({ name, value, unit, range, guess }) =>
      [`${name}: ${`${value} ${unit}`.trim()} (${range})`, guess].filter((part) => part !== "").join("; "),
    ),
    ...(content.said.length === 0 ? [] : ["", ...content.said]),
    "",
    `${content.notShownTitle}:`,
    ...content.notShown,
    "",
    content.foot,
    "",
  ].join("\n");

/** A name for the file that every system takes. */
export const fileName = (field: string, day: string, end: "png" | "txt"): string => {
  const plain = field
    .normalize("NFKD")
    .replace(/\p{Mark}/gu, "")
    .replace(/[^A-Za-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .toLowerCase()
    .slice(0, 40);
  return `${["mulchmark", plain, day].filter((part) => part !== "").join("-")}.${end}`;
};
