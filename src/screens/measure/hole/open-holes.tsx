/** A strip along the top: the holes that are open, each one touch away, with its count and its mustard wait. */
import { useEffect, useRef } from "preact/hooks";
import { mustardNow } from "../../../record/hole/sorting.ts";
import type { RecordId } from "../../../record/ids.ts";
import { useHouse } from "../../parts/house.ts";
import { useLive } from "../../parts/live.ts";
import { href } from "../../parts/route.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { useNow } from "./hands.ts";
import { type DayHole, holesOfVisit } from "./holes-of-day.ts";
import { HOLE_WORDS } from "./words.ts";

const MINUTE_MS = 60_000;

export const OpenHoles = (props: {
  readonly hole: RecordId<"observation">;
  readonly visit: RecordId<"visit">;
}) => {
  const { records } = useHouse();
  const words = useWordsOf(HOLE_WORDS);
  const all = useLive(() => holesOfVisit(records, props.visit), [props.visit]);
  const shown = (all ?? []).filter(({ id, reading }) => id === props.hole || reading.closed === null);
  const waiting = shown.some(({ reading }) => reading.closed === null && reading.mustard.length > 0);
  const now = useNow(waiting);
  const house = useHouse();
  const says = ({ reading, header }: DayHole): string => {
    if (!reading.settled) return "?";
    const latest = reading.closed === null ? mustardNow(reading, now).at(-1) : undefined;
    if (latest === undefined) return words.worms(reading.foundTotal);
    const over = header.mustardMin !== null && latest.agoMs >= header.mustardMin * MINUTE_MS;
    return over
      ? words.lookNow(reading.foundTotal)
      : words.waiting(reading.foundTotal, Math.floor(latest.agoMs / MINUTE_MS));
  };
  const strip = useRef<HTMLElement>(null);
  const here = shown.findIndex(({ id }) => id === props.hole);
  useEffect(() => {
    // With many holes open the one on screen would lie out of sight.
    strip.current?.children[here]?.scrollIntoView({ block: "nearest", inline: "nearest" });
  }, [here]);
  return (
    // Unseen until all holes are known: they stand before the key for the next one, which moves.
    <nav ref={strip} class="open-holes" aria-label={words.openHoles} inert={all === undefined}>
      {shown.map((hole) => (
        <a
          key={hole.id}
          href={href({ at: "hole", hole: hole.id })}
          aria-current={hole.id === props.hole ? "page" : undefined}
          onClick={(event) => {
            // Changing between holes is no step: Back leads out of all of them.
            event.preventDefault();
            if (hole.id !== props.hole) house.goInstead({ at: "hole", hole: hole.id });
          }}
        >
          <b>{words.title(hole.header.number)}</b>
          <small>{says(hole)}</small>
        </a>
      ))}
      <a class="next-hole" href={href({ at: "hole-new", visit: props.visit })}>
        <b>{words.next}</b>
        <small aria-hidden="true">+</small>
      </a>
    </nav>
  );
};
