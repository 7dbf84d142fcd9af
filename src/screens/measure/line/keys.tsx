/** The counting keys: they never move while a line is counted. */
import type { ComponentType } from "preact";
import type { Cover, Stance } from "../../../record/entry.ts";
import { useHouse } from "../../parts/house.ts";
import { BareDrawing, GreenDrawing, OwnDrawing, StalksDrawing, StoneDrawing } from "../../parts/icons.tsx";
import { Halves } from "../../parts/keys.tsx";

const DRAWINGS: Readonly<Record<Cover, ComponentType<{ readonly size?: number }>>> = {
  residue: StalksDrawing,
  bare: BareDrawing,
  green: GreenDrawing,
  stone: StoneDrawing,
  own: OwnDrawing,
};

/** Flat or standing, for the residue that follows. */
export const StanceSwitch = (props: {
  readonly stance: Stance;
  readonly onStance: (stance: Stance) => void;
  /** In *misses only* the switch speaks of the marks that are not called. */
  readonly rest?: boolean;
}) => {
  const words = useHouse().words.value.line;
  return (
    <Halves
      label={words.stance}
      options={[
        { value: "flat", label: props.rest === true ? words.restFlat : words.flat },
        { value: "standing", label: props.rest === true ? words.restStanding : words.standing },
      ]}
      chosen={props.stance}
      onChoose={props.onStance}
    />
  );
};

/** Residue large, the others below it. `flash` is the answer taken last, with its running number. */
export const AnswerKeys = (props: {
  readonly fifthKey: string | null;
  /** Leave residue out: only what is not residue is called. */
  readonly missesOnly?: boolean;
  readonly off?: boolean;
  readonly flash: { readonly cover: Cover; readonly count: number } | null;
  readonly onAnswer: (cover: Cover, touchedAtMs: number) => void;
}) => {
  const words = useHouse().words.value.line;
  const small: Cover[] = ["bare", "green", "stone", ...(props.fifthKey === null ? [] : (["own"] as const))];
  const key = (cover: Cover, large: boolean) => {
    const Drawing = DRAWINGS[cover];
    const taken = props.flash?.cover === cover;
    // The key stays the same element, or a press that is held while its mark lands would be lost. Two names
    // for one motion start it anew when the same answer comes twice.
    const flashClass = (props.flash?.count ?? 0) % 2 === 0 ? "flash" : "flash-again";
    return (
      <button
        type="button"
        key={cover}
        class={`key answer ${large ? "straw large" : ""} ${taken ? flashClass : ""}`}
        disabled={props.off === true}
        data-answer={cover}
        onClick={(event) => props.onAnswer(cover, event.timeStamp)}
      >
        <Drawing size={large ? 44 : 34} />
        <span>{cover === "own" ? (props.fifthKey ?? "") : words.cover[cover]}</span>
      </button>
    );
  };
  return (
    <div class={`answers ${small.length === 4 ? "four" : ""}`}>
      {props.missesOnly === true ? null : key("residue", true)}
      {small.map((cover) => key(cover, false))}
    </div>
  );
};
