/** Where a note is: taken standing still while it is written, and moved by hand if that was not the place. */
import { useEffect, useRef, useState } from "preact/hooks";
import type { Stood } from "../../../record/shapes.ts";
import { Key } from "../../parts/keys.tsx";
import { MovePosition } from "../../parts/move-position.tsx";
import { type Standing, StandingWords, useStanding } from "../../parts/standing.tsx";
import { useWordsOf } from "../../parts/words-of.ts";
import type { Draft } from "./draft.ts";
import type { NotePlace } from "./model.ts";
import { NOTE_WORDS } from "./words.ts";

/** So many fixes make a position that need not be taken again (own choice, no source). */
const ENOUGH_FIXES = 5;

/** The position that stands for the note now, when it is better than the one on record; else null. */
const betterOf = (kept: Stood, standing: Standing): Stood | null => {
  const { stood, moving } = standing;
  if (stood.position === null || moving) return null;
  if (kept.position === null) return stood;
  const { how, fixes, movedFrom } = kept.position;
  const mayGrow = how === "standing-still" && movedFrom === undefined && fixes < ENOUGH_FIXES;
  return mayGrow && stood.position.fixes >= ENOUGH_FIXES ? stood : null;
};

export const WhereItIs = (props: {
  readonly place: NotePlace;
  readonly draft: Draft;
  readonly standing: Standing;
  /** Somebody who has just begun the note stands where it is; who opens it later may stand anywhere. */
  readonly begunHere: boolean;
}) => {
  const { place, draft, standing, begunHere } = props;
  const { notes: words } = useWordsOf(NOTE_WORDS);
  const kept = place.note?.header.at ?? null;
  // Once somebody put the position, or took it away by Undo, none comes by itself any more.
  const settled = useRef(false);
  const better = kept === null || !begunHere || settled.current ? null : betterOf(kept, standing);
  const betterFixes = better?.position?.fixes ?? 0;
  useEffect(() => {
    if (kept !== null && better !== null) void draft.putPosition(kept, better, true);
  }, [draft, betterFixes > 0, betterFixes >= ENOUGH_FIXES, kept === null]);
  const move = async (position: Stood["position"]): Promise<boolean> => {
    if (kept === null) return false;
    settled.current = true;
    return draft.putPosition(
      kept,
      { position, why: position === null ? (kept.why ?? "not-asked") : null },
      false,
    );
  };
  if (kept === null || (kept.position === null && begunHere && !settled.current))
    return (
      <>
        <StandingWords standing={standing} question={words.stand} />
        {kept === null ? null : <MovePosition position={null} onMove={move} />}
      </>
    );
  return (
    <section>
      <h2>{words.positionHere}</h2>
      {kept.position === null ? <TakeHere onTake={(position) => move(position)} /> : null}
      <MovePosition position={kept.position} onMove={move} />
    </section>
  );
};

/** Takes the position of now for a note that has none, only when somebody says that they stand there. */
const TakeHere = (props: { readonly onTake: (position: Stood["position"]) => Promise<boolean> }) => {
  const { notes: words } = useWordsOf(NOTE_WORDS);
  const [open, setOpen] = useState(false);
  if (open) return <Taking onTake={props.onTake} />;
  return (
    <>
      <p class="aside">{words.takePositionHint}</p>
      <Key onPress={() => setOpen(true)}>{words.takePosition}</Key>
    </>
  );
};

const Taking = (props: { readonly onTake: (position: Stood["position"]) => Promise<boolean> }) => {
  const { notes: words } = useWordsOf(NOTE_WORDS);
  const standing = useStanding();
  const { position } = standing.stood;
  return (
    <>
      <StandingWords standing={standing} question={words.stand} />
      <Key off={position === null} onPress={() => void props.onTake(standing.stood.position)}>
        {words.usePosition}
      </Key>
    </>
  );
};
