/** Which way the rows run: in words, in degrees, or by standing at both ends of one. */
import { useState } from "preact/hooks";
import { readNumber } from "../../record/number.ts";
import type { Position } from "../../record/shapes.ts";
import { sentenceFor } from "../catalogue.ts";
import { useHouse } from "../parts/house.ts";
import { Choice, Key, WriteLine } from "../parts/keys.tsx";
import { lengthWords } from "../parts/lengths.ts";
import { useOnce } from "../parts/once.ts";
import { StandingWords, useStanding } from "../parts/standing.tsx";
import { Brought, useTyped } from "../parts/typed.tsx";
import { useWordsOf } from "../parts/words-of.ts";
import { ROW_WINDS, type RowWind, rowsBetween, rowsOf, windOfRows } from "./row-direction.ts";
import { DETAILS_WORDS } from "./words.details.ts";

type Way = "words" | "degrees" | "walking";

interface Said {
  readonly onSay: (deg: number | null) => void;
}

export const RowDirection = (props: {
  readonly before: number | null;
  readonly onKeep: (deg: number | null) => Promise<void>;
  readonly onClose: () => void;
}) => {
  const house = useHouse();
  const words = house.words.value;
  const says = useWordsOf(DETAILS_WORDS);
  const { before, onKeep } = props;
  const [way, setWay] = useTyped<Way>("way", "words");
  const [deg, setDeg] = useTyped("direction", before);
  const [typed, setTyped] = useTyped("degrees", before === null ? "" : String(before));
  const [wrong, setWrong] = useState<string | null>(null);
  const [busy, once] = useOnce();
  const keep = () => {
    if (way !== "degrees" || typed.trim() === "") {
      once(() => onKeep(way === "degrees" ? null : deg));
      return;
    }
    const read = readNumber(typed, { min: 0, max: 360 });
    if (!read.ok) setWrong(sentenceFor(words, read.problem));
    else if (!(read.value.value >= 0 && read.value.value <= 360)) setWrong(says.degreesWrong);
    else {
      const rows = rowsOf(read.value.value);
      once(() => onKeep(rows));
    }
  };
  return (
    <div class="strip-form">
      <Brought />
      <Choice
        question={says.howRows}
        column
        options={[
          { value: "words", label: says.byWords, hint: says.byWordsHint },
          { value: "degrees", label: says.byDegrees, hint: says.byDegreesHint },
          { value: "walking", label: says.byWalking, hint: says.byWalkingHint },
        ]}
        chosen={way}
        onChoose={setWay}
      />
      {way === "words" ? <InWords deg={deg} onSay={setDeg} /> : null}
      {way === "degrees" ? (
        <WriteLine
          label={says.degreesLabel}
          hint={says.degreesHint}
          value={typed}
          wrong={wrong}
          numeric
          onWrite={(text) => {
            setTyped(text);
            setWrong(null);
          }}
        />
      ) : null}
      {way === "walking" ? <BothEnds onSay={setDeg} /> : null}
      <div class="keys two beside">
        <Key onPress={props.onClose}>{words.common.close}</Key>
        <Key look="solid" off={busy} onPress={keep}>
          {words.common.done}
        </Key>
      </div>
    </div>
  );
};

const InWords = ({ deg, onSay }: Said & { readonly deg: number | null }) => {
  const says = useWordsOf(DETAILS_WORDS);
  return (
    <Choice<RowWind | "none">
      question={says.rowsRun}
      column
      options={[
        ...ROW_WINDS.map(({ name }) => ({ value: name, label: says.windOf[name] })),
        { value: "none", label: says.notSaid },
      ]}
      chosen={deg === null ? "none" : windOfRows(deg)}
      onChoose={(name) => onSay(ROW_WINDS.find((one) => one.name === name)?.deg ?? null)}
    />
  );
};

/** One stands at each end; nothing is taken while the position wanders off by itself. */
const BothEnds = ({ onSay }: Said) => {
  const says = useWordsOf(DETAILS_WORDS);
  const { habits } = useHouse().settings.value;
  const standing = useStanding();
  // A row is walked to its end with the first one in hand: it must not be lost on the way.
  const [first, setFirst] = useTyped<Position | null>("first end", null);
  const [other, setOther] = useTyped<Position | null>("other end", null);
  const rows = first === null || other === null ? null : rowsBetween(first, other);
  const { position } = standing.stood;
  const take = () => {
    if (first === null) {
      setFirst(position);
      return;
    }
    setOther(position);
    const found = position === null ? null : rowsBetween(first, position);
    if (found !== null) onSay(Math.round(found.deg * 10) / 10 === 180 ? 0 : Math.round(found.deg * 10) / 10);
  };
  return (
    <>
      <StandingWords standing={standing} question={first === null ? says.firstEnd : says.otherEnd} />
      <Key off={position === null} onPress={take}>
        {first === null ? says.useFirst : says.useOther}
      </Key>
      {other !== null && rows === null ? <p class="wrong">{says.sameSpot}</p> : null}
      {rows === null ? null : (
        <p role="status">
          {says.walkedRows(rows.deg, lengthWords("distance", rows.lengthM, habits))}{" "}
          {rows.offDeg === null || rows.offDeg < 2 ? "" : says.rowsOff(rows.offDeg)}
        </p>
      )}
    </>
  );
};
