/** Moves a position by hand: step by step, or by typing degrees. For tests, notes and marked spots alike. */
import { useRef, useState } from "preact/hooks";
import { readClock } from "../../device/clock.ts";
import type { RecordId } from "../../record/ids.ts";
import { readNumber } from "../../record/number.ts";
import type { Position, Stood } from "../../record/shapes.ts";
import { type LatitudeLongitude, roughDistanceM } from "../../science/position/distance.ts";
import { accuracyWords } from "./accuracy.ts";
import { useHouse } from "./house.ts";
import { Halves, Key, WriteLine } from "./keys.tsx";
import { lengthWords } from "./lengths.ts";
import { measuredOf, movedByM, movedTo, oneStep, WAYS_TO_GO } from "./move-position-model.ts";
import { dayOf, writeClock, writeDay } from "./numbers.ts";
import { useOnce } from "./once.ts";
import { MOVE_WORDS } from "./words.move-position.ts";
import { useWordsOf } from "./words-of.ts";
import "./move-position.css";

/** Decimals of a degree: about a centimetre. */
const DEGREE_DECIMALS = 6;
/** A position typed farther away than this is asked about once (own choice, no source). */
const FAR_M = 2000;
/** Steps in the units that a person measures distances in, in metres. */
const STEPS_M = { m: { small: 1, large: 10 }, ft: { small: 0.9144, large: 9.144 } } as const;

const degrees = (deg: number): string => deg.toFixed(DEGREE_DECIMALS);

/** A position in words: where it is, how it was come by, and when. It never speaks of now. */
export const PositionWords = ({ position }: { readonly position: Position }) => {
  const house = useHouse();
  const { move: words } = useWordsOf(MOVE_WORDS);
  const { habits } = house.settings.value;
  const { standing, common } = house.words.value;
  const { tongue } = common;
  const byM = movedByM(position);
  const measured = measuredOf(position);
  const how = (): string => {
    if (byM !== null) return words.moved(lengthWords("distance", byM, habits));
    if (measured === null) return words.byHand;
    return measured.accuracyM === null
      ? words.standingUnstated
      : words.standing(accuracyWords(measured.accuracyM, measured.accuracyMeans, standing, habits));
  };
  return (
    <p class="position-words" role="status">
      <b>{words.at(degrees(position.latitudeDeg), degrees(position.longitudeDeg))}</b>
      <br />
      {how()} {words.taken(writeDay(dayOf(position.atMs), tongue), writeClock(position.atMs, tongue))}
    </p>
  );
};

interface MoveProps {
  readonly position: Position | null;
  /** Writes the position down; false when that did not work. Null when an undo takes it away again. */
  readonly onMove: (position: Position | null) => Promise<boolean>;
}

/** Which position of a record: a line has two, everything else has one. */
type Which = "at" | "start" | "end";

/** The position with a key that opens the form to move it. */
export const MovePosition = ({ position, onMove, which = "at" }: MoveProps & { readonly which?: Which }) => {
  const { move: words } = useWordsOf(MOVE_WORDS);
  const [open, setOpen] = useState(false);
  return (
    <div class="move-position">
      {position === null ? null : <PositionWords position={position} />}
      {open ? (
        <MoveForm position={position} onMove={onMove} onClose={() => setOpen(false)} />
      ) : (
        <Key onPress={() => setOpen(true)}>{(position === null ? words.put : words.open)[which]}</Key>
      )}
    </div>
  );
};

/** A position of a test on its sheet: in words, or why there is none, and moved by hand. */
export const MovePositionOf = (props: {
  readonly test: RecordId<"observation">;
  readonly which: Which;
  readonly stood: Stood;
}) => {
  const house = useHouse();
  const { test, which, stood } = props;
  const why = stood.why ?? "not-asked";
  const move = async (position: Position | null): Promise<boolean> => {
    const next: Stood = { position, why: position === null ? why : null };
    const written = await house.write(house.pen.change(test, { [which]: next }));
    if (!written.ok) house.tell(written.problem);
    return written.ok;
  };
  return (
    <>
      {stood.position === null ? <p>{house.words.value.noPosition[why]}</p> : null}
      <MovePosition position={stood.position} which={which} onMove={move} />
    </>
  );
};

const MoveForm = ({ position, onMove, onClose }: MoveProps & { readonly onClose: () => void }) => {
  const house = useHouse();
  const { common } = house.words.value;
  const { move: words } = useWordsOf(MOVE_WORDS);
  const { habits } = house.settings.value;
  const [size, setSize] = useState<"small" | "large">("small");
  const [busy, once] = useOnce();
  // Undo goes back as far as the form was open; a move made elsewhere meanwhile is not in its way.
  const before = useRef<(Position | null)[]>([]);
  const steps = STEPS_M[habits.distance];
  const measured = measuredOf(position);
  const move = (to: Position | null) =>
    once(async () => {
      if (await onMove(to)) before.current.push(position);
    });
  const undo = () =>
    once(async () => {
      const last = before.current.at(-1);
      if (last !== undefined && (await onMove(last))) before.current.pop();
    });
  const put = (to: LatitudeLongitude) => move(movedTo(position, to, readClock().wallMs));
  return (
    <section class="move-form">
      <h3>{words.title}</h3>
      <p>{position === null ? words.none : words.kept}</p>
      {position === null ? null : (
        <>
          <Halves
            label={words.stepSize}
            options={[
              { value: "small", label: lengthWords("distance", steps.small, habits) },
              { value: "large", label: lengthWords("distance", steps.large, habits) },
            ]}
            chosen={size}
            onChoose={setSize}
          />
          <div class="rose">
            {WAYS_TO_GO.map((way) => (
              <div key={way} class={`to-${way}`}>
                <Key onPress={() => put(oneStep(position, way, steps[size]))}>
                  {words.step[way](lengthWords("distance", steps[size], habits))}
                </Key>
              </div>
            ))}
          </div>
        </>
      )}
      <TypeDegrees position={position} onPut={put} />
      <div class="keys beside">
        {position?.movedFrom === undefined || measured === null ? null : (
          <Key off={busy} onPress={() => move(measured)}>
            {words.back}
          </Key>
        )}
        <Key off={before.current.length === 0} onPress={undo}>
          {words.undo}
        </Key>
        <Key onPress={onClose}>{common.close}</Key>
      </div>
    </section>
  );
};

/** Degrees as a map or another device shows them. */
const TypeDegrees = (props: {
  readonly position: Position | null;
  readonly onPut: (to: LatitudeLongitude) => void;
}) => {
  const house = useHouse();
  const { move: words } = useWordsOf(MOVE_WORDS);
  const { habits } = house.settings.value;
  const [open, setOpen] = useState(props.position === null);
  const [latitude, setLatitude] = useState("");
  const [longitude, setLongitude] = useState("");
  const [wrong, setWrong] = useState(false);
  const [asked, setAsked] = useState<LatitudeLongitude | null>(null);
  const degreesIn = (typed: string, most: number): number | null => {
    const read = readNumber(typed, { min: -most, max: most });
    return read.ok && Math.abs(read.value.value) <= most ? read.value.value : null;
  };
  const done = (to: LatitudeLongitude) => {
    props.onPut(to);
    setAsked(null);
    setLatitude("");
    setLongitude("");
  };
  const put = () => {
    const latitudeDeg = degreesIn(latitude, 90);
    const longitudeDeg = degreesIn(longitude, 180);
    setWrong(latitudeDeg === null || longitudeDeg === null);
    if (latitudeDeg === null || longitudeDeg === null) return;
    const to = { latitudeDeg, longitudeDeg };
    if (props.position !== null && roughDistanceM(props.position, to) > FAR_M) setAsked(to);
    else done(to);
  };
  if (!open)
    return (
      <div class="beside">
        <Key onPress={() => setOpen(true)}>{words.type}</Key>
      </div>
    );
  const write = (set: (text: string) => void) => (text: string) => {
    set(text);
    setWrong(false);
    setAsked(null);
  };
  return (
    <div class="type-degrees">
      {/* A pad of digits alone has no minus on some phones. */}
      <WriteLine label={words.latitude} value={latitude} onWrite={write(setLatitude)} />
      <WriteLine
        label={words.longitude}
        value={longitude}
        wrong={wrong ? words.wrong : null}
        onWrite={write(setLongitude)}
      />
      {asked === null || props.position === null ? (
        <Key onPress={put}>{words.putThere}</Key>
      ) : (
        <>
          <p class="wrong" role="alert">
            {words.far(lengthWords("distance", roughDistanceM(props.position, asked), habits))}
          </p>
          <Key onPress={() => done(asked)}>{words.farYes}</Key>
        </>
      )}
    </div>
  );
};
