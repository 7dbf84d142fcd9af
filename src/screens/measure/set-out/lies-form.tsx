/** Where a line or a hole lies, and with which rope a line was counted: corrected. */
import type { RecordId } from "../../../record/ids.ts";
import type { Rope } from "../../../record/kinds/kit.ts";
import type { HoleHeader, LineHeader } from "../../../record/kinds/observation.ts";
import { changesOf, isChanged } from "../../parts/changes-of.ts";
import { useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";
import { useLive } from "../../parts/live.ts";
import { useOnce } from "../../parts/once.ts";
import type { Listed } from "../../parts/reader.ts";
import { Brought, Typed, useTyped, useWaysOut } from "../../parts/typed.tsx";
import { useWordsOf } from "../../parts/words-of.ts";
import { StripChoice } from "../hole/strip-choice.tsx";
import { goToStrip, groundCorrected, groundNow, isGround, isOldGrass, leftSpot } from "./ground.ts";
import { AngleChoice, PlaceChoice, RopeChoice } from "./lie-choices.tsx";
import { readSetOut, type SetOut } from "./model.ts";
import { SpotChoice } from "./spot-choice.tsx";
import { LIES_WORDS } from "./words.lies.ts";

/** A test whose place is corrected. */
export interface Laid {
  readonly id: RecordId<"observation">;
  readonly header: LineHeader | HoleHeader;
  /** How many marks a line was counted on; 0 when its rope is not on this device, and at holes. */
  readonly ropeMarks: number;
}

/** The name of the form on its page. */
export const LIES_FORM = "lies";

interface Props extends Laid {
  readonly onDone: () => void;
}

export const LiesForm = (props: Props) => {
  const house = useHouse();
  const { visit } = props.header;
  const found = useLive(() => readSetOut(house, visit), [visit]);
  return found === undefined || found === null ? null : (
    <Typed form={LIES_FORM} base={JSON.stringify(props.header)}>
      <Form {...props} setOut={found} />
    </Typed>
  );
};

const marksOf = (ropes: readonly Listed<"kit">[], rope: RecordId<"kit"> | null): number | null =>
  ropes.flatMap(({ id, body }) => (id === rope ? [(body as Rope).marks] : []))[0] ?? null;

const Form = ({ id, header, ropeMarks, setOut, onDone }: Props & { readonly setOut: SetOut }) => {
  const house = useHouse();
  const { common } = house.words.value;
  const says = useWordsOf(LIES_WORDS);
  const { spots, strips, ropes } = setOut;
  const onLine = header.type === "line";
  const first = {
    ground: groundNow(header, spots),
    place: header.place,
    rope: onLine ? header.rope : null,
    angleToRowsDeg: onLine ? header.angleToRowsDeg : null,
  };
  const [said, setSaid] = useTyped(
    "lies",
    first,
    ({ ground, rope }) =>
      isGround(ground, strips, spots, first.ground) &&
      (rope === first.rope || ropes.some((one) => one.id === rope)),
  );
  const say = (more: Partial<typeof said>) => setSaid((before) => ({ ...before, ...more }));
  const out = useWaysOut(onDone);
  const [busy, once] = useOnce();
  const { ground, place, rope, angleToRowsDeg } = said;
  const lies = groundCorrected(ground, first.ground, spots);
  const marks = rope === first.rope ? null : marksOf(ropes, rope);
  // The marks were counted one by one along the rope: on another number of them nobody knows what was not read.
  const otherMarks = marks !== null && ropeMarks > 0 && marks !== ropeMarks ? marks : null;
  const keep = async () => {
    if (lies === null) return;
    const shared = { ...lies, place };
    const { patch, without } = onLine
      ? changesOf<LineHeader, "spot">(
          header,
          { ...shared, rope: rope ?? header.rope, angleToRowsDeg },
          leftSpot(ground),
        )
      : changesOf<HoleHeader, "spot">(header, shared, leftSpot(ground));
    await out.keep(isChanged({ patch, without }) ? [house.pen.change(id, patch, without)] : []);
  };
  return (
    <>
      <Brought />
      <p class="aside">{says.hint}</p>
      {isOldGrass(spots, ground) ? null : (
        <StripChoice
          field={setOut.field.id}
          strips={strips}
          chosen={ground.strip}
          onChoose={(strip) => say({ ground: goToStrip(ground, strip, spots) })}
        />
      )}
      <SpotChoice
        spots={spots}
        strips={strips}
        ground={ground}
        usual={first.ground.strip}
        here={(onLine ? header.start : header.at).position}
        onChoose={(next) => say({ ground: next })}
      />
      {onLine ? (
        <>
          <RopeChoice ropes={ropes} chosen={rope} onChoose={(one) => say({ rope: one })} />
          {otherMarks === null ? null : (
            <p class="wrong" role="status">
              {says.otherMarks(ropeMarks, otherMarks)}
            </p>
          )}
        </>
      ) : null}
      <PlaceChoice chosen={place} onChoose={(one) => say({ place: one })} />
      {onLine ? (
        <AngleChoice chosen={angleToRowsDeg} onChoose={(deg) => say({ angleToRowsDeg: deg })} />
      ) : null}
      {lies === null ? <p>{says.needsStrip}</p> : null}
      <div class="keys two">
        <Key onPress={out.close}>{common.close}</Key>
        <Key look="solid" off={busy || lies === null || otherMarks !== null} onPress={() => once(keep)}>
          {says.keep}
        </Key>
      </div>
    </>
  );
};
