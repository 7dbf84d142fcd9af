/** Earlier results from paper: drawn apart and said, written down and corrected. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../record/ids.ts";
import type { EarlierResult } from "../../record/kinds/earlier.ts";
import { changesOf, isChanged } from "../parts/changes-of.ts";
import { useHouse } from "../parts/house.ts";
import { useLive } from "../parts/live.ts";
import { writeDay } from "../parts/numbers.ts";
import { OpensHere } from "../parts/opens-here.tsx";
import { forgetTyped, typedHere } from "../parts/typed-store.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { PAPER_FORM, PaperForm } from "./paper-form.tsx";
import { paperText, paperValue, readPlaces, unitOf } from "./papers-model.ts";
import { DeleteThis } from "./timeline-form.tsx";
import type { Paper } from "./years-model.ts";
import { YEARS_WORDS } from "./years-words.ts";

const NEW = `${PAPER_FORM}new`;

/** Writes a paper down, new or corrected; true once that is done. */
const useKeep = () => {
  const house = useHouse();
  const says = useWordsOf(YEARS_WORDS);
  return async (before: Paper | null, said: EarlierResult): Promise<boolean> => {
    const { pen } = house;
    const changes = changesOf<EarlierResult, never>(before ?? said, said, []);
    if (before === null || isChanged(changes)) {
      const written = await house.write(
        before === null ? pen.write("earlier", said) : pen.change(before.id, changes.patch),
      );
      if (!written.ok) {
        house.tell(written.problem);
        return false;
      }
    }
    const value = paperText(said.what, said.value, house.settings.value.habits);
    house.say(says.paperForm.written(`${says.papers[said.what]}, ${value}`));
    return true;
  };
};

/** The key that writes one down. */
export const AddPaper = ({ field }: { readonly field: RecordId<"field"> }) => {
  const house = useHouse();
  const says = useWordsOf(YEARS_WORDS);
  const keep = useKeep();
  const [open, setOpen] = useState(() => typedHere(NEW).length > 0);
  const places = useLive(() => readPlaces(house.records, field), [field]);
  if (places === undefined || places === null) return null;
  return (
    <OpensHere
      label={says.addPaper}
      class="keys beside"
      open={open}
      onOpen={() => setOpen(true)}
      form={() => (
        <PaperForm
          before={null}
          {...places}
          onKeep={async (said) => {
            const done = await keep(null, said);
            if (done) setOpen(false);
            return done;
          }}
          onClose={() => setOpen(false)}
        />
      )}
    />
  );
};

/** Results from paper: drawn apart, and said. */
export const Papers = (props: { readonly papers: readonly Paper[]; readonly field: RecordId<"field"> }) => {
  const { settings, words } = useHouse();
  const says = useWordsOf(YEARS_WORDS);
  const { habits } = settings.value;
  const { common } = words.value;
  const [opened, setOpened] = useState<string | null>(
    () => props.papers.find(({ id }) => typedHere(PAPER_FORM + id).length > 0)?.id ?? null,
  );
  return (
    <div class="from-paper">
      <h5>{says.paper}</h5>
      <p class="aside">{says.paperHint}</p>
      <ul class="rows">
        {props.papers.map((paper) => (
          <li key={paper.id}>
            <button
              type="button"
              class="row"
              aria-expanded={opened === paper.id}
              onClick={() => setOpened(opened === paper.id ? null : paper.id)}
            >
              <span>
                {says.papers[paper.what]}
                <small>
                  {[writeDay(paper.day, common.tongue), says.samples(paper.samples), paper.origin]
                    .filter((part) => part !== "")
                    .join(" · ")}
                </small>
                <small class="row-change">{common.change}</small>
              </span>
              <span class="value">
                {paperValue(paper.what, paper.value, habits)}
                <small> {unitOf(paper.what, habits)}</small>
              </span>
            </button>
            {opened === paper.id ? (
              <Correct paper={paper} field={props.field} onDone={() => setOpened(null)} />
            ) : null}
          </li>
        ))}
      </ul>
    </div>
  );
};

const Correct = (props: {
  readonly paper: Paper;
  readonly field: RecordId<"field">;
  readonly onDone: () => void;
}) => {
  const house = useHouse();
  const says = useWordsOf(YEARS_WORDS);
  const keep = useKeep();
  const { paper, onDone } = props;
  const places = useLive(() => readPlaces(house.records, props.field), [props.field]);
  if (places === undefined || places === null) return null;
  return (
    <>
      <PaperForm
        before={paper}
        field={paper.field}
        strips={places.strips}
        onKeep={async (said) => {
          const done = await keep(paper, said);
          if (done) onDone();
          return done;
        }}
        onClose={onDone}
      />
      <DeleteThis
        onDelete={async () => {
          const written = await house.write(house.pen.remove(paper.id));
          if (written.ok) {
            forgetTyped(PAPER_FORM + paper.id);
            house.say(says.paperForm.deleted);
          } else house.tell(written.problem);
        }}
      />
    </>
  );
};
