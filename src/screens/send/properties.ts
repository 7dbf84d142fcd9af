/** What two versions of a record say differently, property by property, in plain words. */
import { canonicalJson, type Json } from "../../record/canonical.ts";
import { NO_STRIP } from "../../record/ground.ts";
import { isRecordId } from "../../record/ids.ts";
import { EVENTS } from "../../record/kinds/event.ts";
import { MEASURES } from "../../record/kinds/guess.ts";
import { LAND_USES, MULCH_INSIDE, RING_WAYS, WAYS } from "../../record/kinds/observation.ts";
import { TREATMENTS } from "../../record/kinds/strip.ts";
import type { Revision } from "../../record/record.ts";
import { RULER_READS } from "../../record/ring/entries.ts";
import { PLACES, type Stood } from "../../record/shapes.ts";
import type { UnitHabits } from "../../record/units.ts";
import { ringSizeWords, stepWords } from "../kit/fine-lengths.ts";
import { accuracyWords } from "../parts/accuracy.ts";
import { lengthWords } from "../parts/lengths.ts";
import { writeDay, writeNumber } from "../parts/numbers.ts";
import { TONGUE } from "../parts/words.common.ts";
import { type Known, nameById } from "./describe.ts";
import { writeMoment } from "./moment.ts";
import type { Property, Spoken } from "./words.records.ts";

/** One property as each version says it, in the order of the versions. */
export interface PropertyRow {
  readonly label: string;
  readonly said: readonly string[];
}

/** What values need to become words. */
export interface Speech {
  readonly words: Spoken;
  readonly known: Known;
  readonly habits: UnitHabits;
}

/** The member of a list that a text is, or undefined. */
const among = <T extends string>(list: readonly T[], value: string): T | undefined =>
  list.find((one) => one === value);

/** Words of one of a few answers. */
const answerWords = ({ words }: Speech, property: Property, value: string): string | undefined => {
  const from = <T extends string>(list: readonly T[], said: Readonly<Record<T, string>>) => {
    const one = among(list, value);
    return one === undefined ? undefined : said[one];
  };
  const { records } = words;
  switch (property) {
    case "way":
      return from(WAYS, words.setOut.ways) ?? from(RING_WAYS, records.ringWays);
    case "place":
      return from(PLACES, words.place);
    case "what":
      return from(EVENTS, records.events) ?? from(MEASURES, records.measures);
    case "rulerReads":
      return from(RULER_READS, records.rulerReads);
    case "mulch":
      return from(MULCH_INSIDE, records.mulchInside);
    case "landUse":
      return from(LAND_USES, records.landUses);
    default:
      return undefined;
  }
};

const textWords = (speech: Speech, property: Property, value: string): string => {
  const { words, known } = speech;
  if (value === "") return words.records.notSaid;
  if (value === NO_STRIP) return words.records.noStrip;
  if (isRecordId(value)) return nameById(words, known, value);
  if (property === "day") return writeDay(value, words.common.tongue);
  if (property === "sha256") return words.records.pictureId(value.slice(0, 8));
  return answerWords(speech, property, value) ?? value;
};

const numberWords = ({ words, habits }: Speech, property: Property, value: number): string => {
  if (property === "spacingM") return lengthWords("spacing", value, habits);
  if (property === "rowSpacingM") return lengthWords("spacing", value, habits);
  if (property === "passWidthM") return lengthWords("distance", value, habits);
  if (property.endsWith("AtMs") || property === "atMs") return writeMoment(value, words.common.tongue);
  if (property.endsWith("Deg")) return words.records.degrees(writeNumber(value, TONGUE, 1));
  if (property === "outsideM" || property === "depthM") return ringSizeWords(value, habits);
  if (property === "stepM") return stepWords(value, habits);
  if (property === "volumeM3") return lengthWords("volume", value, habits);
  if (property === "minutes" || property === "mustardMin")
    return words.records.minutes(writeNumber(value, TONGUE, 2));
  if (property === "depthMm") return lengthWords("depthSoaked", value / 1000, habits);
  // A year is written without a mark between its thousands.
  return property === "harvestYear" ? String(value) : writeNumber(value, TONGUE, 3);
};

const isStood = (value: object): value is Stood => "position" in value && "why" in value;

const placeWords = ({ words, habits }: Speech, { position, why }: Stood): string => {
  if (position === null) return words.noPosition[why ?? "not-asked"];
  const at = `${position.latitudeDeg.toFixed(5)}, ${position.longitudeDeg.toFixed(5)}`;
  return position.accuracyM === null
    ? at
    : words.records.within(
        at,
        accuracyWords(position.accuracyM, position.accuracyMeans, words.standing, habits),
      );
};

/** Lists of numbers: sizes of a ring or a hole, and the minutes at which readings are due. */
const numbersWords = ({ words, habits }: Speech, property: Property, list: readonly number[]): string =>
  property === "planMin"
    ? words.records.minutes(list.map((value) => writeNumber(value, TONGUE, 2)).join(", "))
    : list.map((value) => ringSizeWords(value, habits)).join(", ");

const listWords = (speech: Speech, property: Property, list: readonly unknown[]): string => {
  const { words } = speech;
  if (property === "boundary") return words.records.corners(writeNumber(list.length, TONGUE));
  const numbers = list.filter((one) => typeof one === "number");
  if (numbers.length > 0) return numbersWords(speech, property, numbers);
  const done = list.flatMap((one) => {
    const treatment = typeof one === "string" ? among(TREATMENTS, one) : undefined;
    return treatment === undefined ? [] : [words.treatment[treatment]];
  });
  return done.length === 0 ? words.records.notSaid : done.join(", ");
};

/** A value as a person reads it. */
export const valueWords = (speech: Speech, property: Property, value: unknown): string => {
  const { records } = speech.words;
  if (value === null || value === undefined) return records.notSaid;
  if (typeof value === "boolean") return value ? records.yes : records.no;
  if (typeof value === "string") return textWords(speech, property, value);
  if (typeof value === "number") return numberWords(speech, property, value);
  if (Array.isArray(value)) return listWords(speech, property, value);
  if (typeof value !== "object") return "";
  if (isStood(value)) return placeWords(speech, value);
  return placeWords(speech, { position: value as Stood["position"], why: null });
};

/** The properties that these versions say differently; a deletion is one of them. */
export const differences = (speech: Speech, versions: readonly Revision[]): readonly PropertyRow[] => {
  const { words } = speech;
  const bodies = versions.map(({ body }) => body as unknown as { readonly [key: string]: Json });
  const keys = [...new Set(bodies.flatMap((body) => Object.keys(body)))].filter(
    (key) => key !== "type",
  ) as Property[];
  const rows = keys.flatMap((key) => {
    const texts = new Set(bodies.map((body) => canonicalJson(body[key] ?? null)));
    return texts.size < 2
      ? []
      : [
          {
            label: words.records.properties[key],
            said: bodies.map((body) => valueWords(speech, key, body[key])),
          },
        ];
  });
  const deleted = versions.map((version) => version.deleted === true);
  if (new Set(deleted).size < 2) return rows;
  const state = deleted.map((one) => (one ? words.versions.deletedHere : words.versions.livesHere));
  return [{ label: words.versions.state, said: state }, ...rows];
};
