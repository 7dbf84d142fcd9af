/** Sums of marks, counted aloud or on paper. */
import { useHouse } from "../../parts/house.ts";
import { Key, WriteLine } from "../../parts/keys.tsx";
import { Brought, useForget, useKeeping, useTyped, withTyped } from "../../parts/typed.tsx";
import type { LineModel } from "./model.ts";
import { sayEntry } from "./say.ts";

const KINDS = ["flat", "standing", "green", "bare", "stone", "own"] as const;
type Kind = (typeof KINDS)[number];
type Typed = Readonly<Record<Kind, string>>;

const NOTHING: Typed = { flat: "", standing: "", green: "", bare: "", stone: "", own: "" };

/** A count as typed; an empty line counts as none, null is not a count. */
const count = (typed: string): number | null => {
  const text = typed.trim();
  if (text === "") return 0;
  return /^\d{1,4}$/.test(text) ? Number(text) : null;
};

/** Sums that were just taken back stand there again, so that one of them can be put right. */
const takenBack = ({ reading, entries }: LineModel): Typed => {
  const undone = reading.value?.redoable?.takesBack;
  const before = entries.value.find(({ id }) => id === undone);
  if (before?.type !== "totals") return NOTHING;
  const typed = KINDS.map((kind) => [kind, before[kind] === 0 ? "" : String(before[kind])] as const);
  return Object.fromEntries(typed) as Record<Kind, string>;
};

interface TotalsProps {
  readonly model: LineModel;
  readonly marks: number;
  readonly fifthKey: string | null;
}

const Form = (props: TotalsProps) => {
  const { words } = useHouse();
  const { model } = props;
  const [typed, setTyped] = useTyped<Typed>("sums", takenBack(model));
  const forget = useForget();
  const keeping = useKeeping();
  const last = model.last.value;
  const line = words.value.line;
  const label = (kind: Kind): string => {
    if (kind === "flat" || kind === "standing") return line.kinds[kind];
    return kind === "own" ? (props.fifthKey ?? line.cover.own) : line.cover[kind];
  };
  const kinds = KINDS.filter((kind) => kind !== "own" || props.fifthKey !== null);
  const counts = Object.fromEntries(KINDS.map((kind) => [kind, count(typed[kind])])) as Record<
    Kind,
    number | null
  >;
  const sum = KINDS.reduce((total, kind) => total + (counts[kind] ?? 0), 0);
  const readable = KINDS.every((kind) => counts[kind] !== null);
  const fits = readable && sum >= 1 && sum <= props.marks;
  // Once sums are on record, also by a redo, what was typed must not hide what is taken back later.
  const write = (job: () => Promise<void>) =>
    void keeping(job).then(() => {
      if (model.finished.value) forget();
    });
  const keep = () => {
    const { flat, standing, green, bare, stone, own } = counts;
    if (!fits || flat === null || standing === null || green === null) return;
    if (bare === null || stone === null || own === null) return;
    write(() => model.totals({ flat, standing, green, bare, stone, own }));
  };
  return (
    <>
      <main class="leaf">
        <Brought />
        <h2>{line.totalsQuestion}</h2>
        {model.reading.value?.redoable == null ? null : (
          <div class="keys two">
            <p class="last">{last === null ? "" : sayEntry(words.value, props.fifthKey, last)}</p>
            <Key onPress={() => write(model.redo)}>{words.value.common.redo}</Key>
          </div>
        )}
        {kinds.map((kind) => (
          <WriteLine
            key={kind}
            numeric
            label={label(kind)}
            value={typed[kind]}
            wrong={counts[kind] === null ? line.notACount : null}
            onWrite={(text) => setTyped({ ...typed, [kind]: text })}
          />
        ))}
      </main>
      <div class="count-keys">
        <p role="status" class={sum > props.marks ? "wrong" : ""}>
          {sum > props.marks ? line.totalsTooMany(sum, props.marks) : line.totalsSum(sum, props.marks)}
        </p>
        <Key look="solid" off={!fits} onPress={keep}>
          {line.keepTotals}
        </Key>
      </div>
    </>
  );
};

/** Six lines to write sums on; the sum of all stands below. */
export const Totals = withTyped<TotalsProps>(() => "sums", Form);
