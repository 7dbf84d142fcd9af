import { Key, LinkKey } from "../parts/keys.tsx";
import { dayOf, writeClock, writeDay } from "../parts/numbers.ts";
import { href } from "../parts/route.ts";
import { useWordsWith } from "../parts/words-of.ts";
import { type CoverNow, groundWithFate } from "./cover-model.ts";
import type { FieldNow } from "./model.ts";
import { FIELD_WORDS } from "./words.ts";

/** Lines shown at first, and added by each "show more". */
export const LINES_AT_ONCE = 12;

export const Lines = (props: {
  readonly now: FieldNow;
  readonly found: CoverNow | undefined;
  readonly onMore: () => void;
}) => {
  const words = useWordsWith(FIELD_WORDS);
  const { found, now } = props;
  const { lines, strips, spots } = now.newest;
  // Behind hundreds of rings there may be older lines or none: the results know of most that there are.
  const behind = now.newest.unread && (found?.cover.lines ?? Number.POSITIVE_INFINITY) > lines.length;
  const more = now.newest.more || behind;
  if (lines.length === 0 && (found === undefined || !more)) return null;
  return (
    <section class="ruled">
      <h2>{words.fields.lines}</h2>
      <ul class="rows">
        {lines.map(({ id, body }) => (
          <li key={id}>
            <a class="row" href={href({ at: "line-sheet", line: id })}>
              <span>
                <b>
                  {groundWithFate(
                    words,
                    strips.get(body.strip),
                    body.spot === undefined ? undefined : spots.get(body.spot),
                  )}
                </b>
                <small>
                  {[
                    `${writeDay(dayOf(body.startedAtMs), words.common.tongue)}, ${writeClock(body.startedAtMs, words.common.tongue)}`,
                    body.place === null ? words.fields.placeNotSaid : words.place[body.place],
                  ].join(" · ")}
                </small>
              </span>
            </a>
          </li>
        ))}
      </ul>
      {more ? <Key onPress={props.onMore}>{words.fields.more(LINES_AT_ONCE)}</Key> : null}
    </section>
  );
};

/** Lines that were begun and never finished; below the list, so that nothing moves when they are found. */
export const Unfinished = ({ found }: { readonly found: CoverNow | undefined }) => {
  const words = useWordsWith(FIELD_WORDS);
  const lines = found?.cover.unfinished ?? [];
  const [line] = lines;
  if (line === undefined) return null;
  return (
    <section class="ruled">
      <h2>{words.fields.unfinished(lines.length)}</h2>
      <LinkKey to={href({ at: "line", line })} look="straw">
        {words.fields.goOnWith(lines.length)}
      </LinkKey>
    </section>
  );
};
