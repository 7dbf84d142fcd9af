/** Everything that was done on a field and every visit, on one axis, newest first. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../record/ids.ts";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { stripName } from "../parts/names.ts";
import { writeDay } from "../parts/numbers.ts";
import { href } from "../parts/route.ts";
import { forgetTyped } from "../parts/typed-store.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { paperText } from "./papers-model.ts";
import { DeleteThis, EVENT_FORM, EventForm, RainForm } from "./timeline-form.tsx";
import type { TimelineHand } from "./timeline-hand.ts";
import { type OnAxis, rainText, type TimelineNow } from "./timeline-model.ts";
import { TIMELINE_WORDS } from "./timeline-words.ts";
import { YEARS_WORDS } from "./years-words.ts";

/** Shown at first, and added by each "show more". */
const AT_ONCE = 12;

interface AxisProps {
  readonly now: TimelineNow;
  readonly hand: TimelineHand;
  /** Id of what is being corrected. */
  readonly opened: string | null;
  readonly onOpen: (id: string | null) => void;
}

export const Axis = (props: AxisProps) => {
  const says = useWordsOf(TIMELINE_WORDS);
  const [most, setMost] = useState(AT_ONCE);
  const { axis } = props.now;
  const hidden = axis.length - most;
  if (axis.length === 0) return <p>{says.none}</p>;
  return (
    <>
      <h3>{says.listTitle}</h3>
      <ol class="timeline">
        {axis.slice(0, most).map((one) => (
          <li key={one.of.id} class={one.kind}>
            <Row {...props} one={one} />
            {props.opened === one.of.id ? <Correct {...props} one={one} /> : null}
          </li>
        ))}
      </ol>
      {hidden > 0 ? (
        <Key onPress={() => setMost(most + AT_ONCE)}>{says.more(Math.min(hidden, AT_ONCE))}</Key>
      ) : null}
    </>
  );
};

type OneProps = AxisProps & { readonly one: OnAxis };

const Row = ({ now, one, opened, onOpen }: OneProps) => {
  const { words, settings } = useHouse();
  const says = useWordsOf(TIMELINE_WORDS);
  const found = useWordsOf(YEARS_WORDS);
  const { common } = words.value;
  const day = writeDay(one.day, common.tongue);
  if (one.kind === "visit") {
    const { harvestYear } = one.of.body;
    return (
      <a class="row" href={href({ at: "visit", visit: one.of.id })}>
        <span>
          {says.visit}
          <small>{[day, ...(harvestYear === null ? [] : [says.harvestYear(harvestYear)])].join(" · ")}</small>
        </span>
      </a>
    );
  }
  const stripNamed = (strip: RecordId<"strip"> | null): string =>
    strip === null ? says.wholeField : stripName(words.value, now.named.get(strip));
  if (one.kind === "paper") {
    const { what, value, strip } = one.of.body;
    return (
      <div class="row">
        <span>
          {`${found.papers[what]}, ${paperText(what, value, settings.value.habits)}`}
          <small>{[day, stripNamed(strip), found.fromPaper].join(" · ")}</small>
        </span>
      </div>
    );
  }
  const about =
    one.kind === "rain"
      ? [day]
      : [day, stripNamed(one.of.body.strip), ...(one.of.body.words === "" ? [] : [one.of.body.words])];
  return (
    <button
      type="button"
      class="row"
      aria-expanded={opened === one.of.id}
      onClick={() => onOpen(opened === one.of.id ? null : one.of.id)}
    >
      <span>
        <b>
          {one.kind === "rain"
            ? says.rainOf(rainText(one.of.body, settings.value.habits.depthSoaked))
            : says.events[one.of.body.what]}
        </b>
        <small>{about.join(" · ")}</small>
      </span>
      <small class="row-change">{common.change}</small>
    </button>
  );
};

const Correct = ({ now, hand, one, onOpen }: OneProps) => {
  const close = () => onOpen(null);
  const after = (done: boolean): boolean => {
    if (done) close();
    return done;
  };
  if (one.kind === "visit" || one.kind === "paper") return null;
  return (
    <>
      {one.kind === "event" ? (
        <EventForm
          key={one.of.id}
          id={one.of.id}
          before={one.of.body}
          strips={now.strips}
          onKeep={async (said) => after(await hand.change(one.of.id, one.of.body, said))}
          onClose={close}
        />
      ) : (
        <RainForm
          before={one.of.body}
          day={null}
          onKeep={async (said) => {
            after(await hand.change(one.of.id, one.of.body, { ...one.of.body, ...said }));
          }}
          onClose={close}
        />
      )}
      <DeleteThis
        onDelete={async () => {
          if (after(await hand.remove(one.of.id, one.of.body))) forgetTyped(EVENT_FORM + one.of.id);
        }}
      />
    </>
  );
};
