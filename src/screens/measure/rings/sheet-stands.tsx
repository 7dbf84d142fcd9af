/** How a ring stood, on its sheet, and correcting it. */
import { useState } from "preact/hooks";
import { rimToSoilMm, standingOf } from "../../../science/infiltration/ring-set.ts";
import { RainPlace } from "../../fields/rain-place.tsx";
import { CorrectedSince } from "../../kit/corrected-since.tsx";
import { stepWords } from "../../kit/fine-lengths.ts";
import { kitOf } from "../../kit/kit-list.ts";
import { useHouse } from "../../parts/house.ts";
import { lengthWords } from "../../parts/lengths.ts";
import { MovePositionOf } from "../../parts/move-position.tsx";
import { OpensHere } from "../../parts/opens-here.tsx";
import { href } from "../../parts/route.ts";
import { TakePositionOf } from "../../parts/take-position.tsx";
import { typedHere } from "../../parts/typed-store.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { writeMoment } from "../../send/moment.ts";
import { readDegrees } from "../hole/sizes.ts";
import { conditionsOf } from "./conditions.ts";
import type { DayRing } from "./day.ts";
import { areaText, depthText, plainStep } from "./figures.ts";
import type { RingSheet } from "./sheet-model.ts";
import { Line } from "./sheet-parts.tsx";
import { STANDS_FORM, StandsForm } from "./stands-form.tsx";
import { RING_WORDS } from "./words.ts";

export const SheetConditions = ({ sheet }: { readonly sheet: RingSheet }) => {
  const house = useHouse();
  const catalogue = house.words.value;
  const all = useWordsOf(RING_WORDS);
  const words = all.sheet;
  const { habits } = house.settings.value;
  const { ring, result } = sheet;
  const { header, kit, set } = ring;
  const size = (metres: number): string => lengthWords("ringSize", metres, habits);
  const [first, second] = set.insideM;
  const { insertionMm, outOfLevelMm } = standingOf(set);
  const [correcting, setCorrecting] = useState(() => typedHere(STANDS_FORM).length > 0);
  const { wetness, water } = conditionsOf(ring.entries);
  const name = (text: string): string => (text === "" ? catalogue.common.noName : text);
  return (
    <section class="ruled">
      <h2>{words.conditions}</h2>
      <table class="figures sheet-two">
        <tbody>
          <Line what={words.way}>
            {all.ways[header.way]}
            {header.way === "measured-pour" ? null : `, ${all.setOut.readsWords[header.rulerReads]}`}
          </Line>
          <Line what={words.place}>
            {header.place === null ? words.unknown : catalogue.place[header.place]}
          </Line>
          {sheet.spot === undefined ? null : <Line what={words.spot}>{name(sheet.spot.body.name)}</Line>}
          <Line what={words.mulch}>{header.mulch === null ? words.unknown : all.mulch[header.mulch]}</Line>
          {wetness === null ? null : <Line what={words.wetness}>{all.setOut.wetnesses[wetness]}</Line>}
          {water === null ? null : <Line what={words.waterWarm}>{readDegrees(water)}</Line>}
          <Line what={words.area}>
            {result.soaking.ok ? `${areaText(result.soaking.value.areaM2, habits)}, ` : ""}
            {words.areaBy(size(first), second === null ? null : size(second))}
          </Line>
          {kit.outer === null ? null : <Line what={words.outer}>{name(kit.outer.name)}</Line>}
          <RimLine ring={ring} />
          {insertionMm.ok ? <Line what={words.insertion}>{depthText(insertionMm.value, habits)}</Line> : null}
          {outOfLevelMm.ok ? (
            <Line what={words.outOfLevel}>{depthText(outOfLevelMm.value, habits)}</Line>
          ) : null}
          <Line what={words.ruler}>
            {kit.ruler === null
              ? all.setOut.rulerStep(plainStep(habits))
              : `${name(kit.ruler.name)}, ${all.setOut.rulerStep(stepWords(kit.ruler.stepM, habits))}`}
          </Line>
          {kit.bottle === null ? null : (
            <Line what={words.bottle}>
              {`${name(kit.bottle.name)}, ${lengthWords("volume", kit.bottle.volumeM3, habits)}`}
            </Line>
          )}
          {sheet.person === undefined ? null : <Line what={words.who}>{name(sheet.person.body.name)}</Line>}
          {sheet.follows === null ? null : (
            <Line what={words.follows}>
              <a class="line-link" href={href({ at: "ring-sheet", ring: sheet.follows.id })}>
                {words.olderRing(sheet.follows.letter)}
              </a>
            </Line>
          )}
          {sheet.followedBy === null ? null : (
            <Line what={words.followedBy}>
              <a class="line-link" href={href({ at: "ring-sheet", ring: sheet.followedBy.id })}>
                {words.olderRing(sheet.followedBy.letter)}
              </a>
            </Line>
          )}
        </tbody>
      </table>
      <RainPlace visit={header.visit} />
      <h3>{words.position}</h3>
      <MovePositionOf test={ring.id} which="at" stood={header.at} />
      <TakePositionOf test={ring.id} question={all.setOut.stand} />
      <CorrectedSince kit={kitOf(header)} sinceMs={header.startedAtMs} />
      {sheet.changed === null ? null : (
        <p>{words.corrected(writeMoment(sheet.changed.atMs, catalogue.common.tongue), sheet.changedBy)}</p>
      )}
      <OpensHere
        label={words.correct}
        open={correcting}
        onOpen={() => setCorrecting(true)}
        form={() => <StandsForm ring={ring} onDone={() => setCorrecting(false)} />}
      />
    </section>
  );
};

/** What was read from the rim down to the ground, and what it is good for where it is missing. */
const RimLine = ({ ring }: { readonly ring: DayRing }) => {
  const { settings } = useHouse();
  const words = useWordsOf(RING_WORDS).sheet;
  const { rulerReads, rimToSoilM, way } = ring.header;
  const meanMm = rimToSoilMm(ring.set);
  const size = (metres: number): string => lengthWords("ringSize", metres, settings.value.habits);
  if (meanMm !== null)
    return (
      <Line what={words.rim}>{words.rimMean(rimToSoilM.map(size).join(", "), size(meanMm / 1000))}</Line>
    );
  return rulerReads === "down-from-rim" && way !== "measured-pour" ? (
    <Line what={words.rim}>{words.rimMissing}</Line>
  ) : null;
};
