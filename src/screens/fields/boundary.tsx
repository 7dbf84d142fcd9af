/** The boundary of a field: walked, touched on the map, or none. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../record/ids.ts";
import { AskOnce } from "../parts/ask-once.tsx";
import { fromHere } from "../parts/from-here.ts";
import { useHouse } from "../parts/house.ts";
import { Key, LinkKey } from "../parts/keys.tsx";
import { useLive } from "../parts/live.ts";
import { fieldName } from "../parts/names.ts";
import { Page } from "../parts/page.tsx";
import { href } from "../parts/route.ts";
import { type SameField, sameField } from "../parts/same-field.ts";
import { useWordsOf, useWordsWith } from "../parts/words-of.ts";
import { type BoundaryWay, newDraft } from "./boundary-draft.ts";
import { MakeBoundary } from "./boundary-make.tsx";
import { type OpenDraft, useDraft, writeBoundary } from "./boundary-model.ts";
import { BOUNDARY_WORDS } from "./words.boundary.ts";
import "./boundary.css";
import { FIELD_WORDS } from "./words.ts";

export const BoundaryScreen = (props: { readonly field: RecordId<"field"> }) => {
  const house = useHouse();
  const words = useWordsWith(FIELD_WORDS);
  const says = useWordsOf(BOUNDARY_WORDS);
  const draft = useDraft(props.field);
  const same = useLive(async () => (await sameField(house.records, props.field)) ?? null, [props.field]);
  // Somebody who has just chosen to walk walks; somebody who comes back says first where the edge goes on.
  const [walking, setWalking] = useState(false);
  const back = href({ at: "field", field: props.field });
  const stored = draft.stored.value;
  if (same === undefined || stored === undefined)
    return (
      <Page title={says.title} back={back}>
        {null}
      </Page>
    );
  if (same === null)
    return (
      <Page title={words.fields.gone} back={back}>
        {null}
      </Page>
    );
  if (stored !== null)
    return (
      <MakeBoundary
        same={same}
        draft={draft}
        stored={stored}
        walking={walking}
        onWalking={setWalking}
        back={back}
      />
    );
  return (
    <Page title={says.title} under={fieldName(words, same.field)} back={back}>
      <Choose same={same} draft={draft} onChosen={(way) => setWalking(way === "walk")} back={back} />
    </Page>
  );
};

/** How to make it; with one that stands already: what to do with it. */
const Choose = (props: {
  readonly same: SameField;
  readonly draft: OpenDraft;
  readonly onChosen: (way: BoundaryWay) => void;
  readonly back: string;
}) => {
  const house = useHouse();
  const says = useWordsOf(BOUNDARY_WORDS);
  const { same, draft, onChosen } = props;
  const { boundary } = same.field.body;
  const begin = (way: BoundaryWay, base: typeof boundary) => {
    onChosen(way);
    // A draft that another window began meanwhile is gone on with.
    void draft.change((before) => before ?? newDraft(way, base ?? []));
  };
  return (
    <>
      <p class="after-writing">{boundary === null ? says.none : null}</p>
      <h2>{says.choose}</h2>
      <div class="keys boundary-ways">
        {boundary === null ? null : (
          <Key look="solid" onPress={() => begin("touch", boundary)}>
            {says.correct}
          </Key>
        )}
        <Key look={boundary === null ? "solid" : "plain"} onPress={() => begin("walk", null)}>
          {boundary === null ? says.byWalking : says.walkAnew}
        </Key>
        <p>{says.byWalkingHint}</p>
        {boundary === null ? (
          <>
            <Key onPress={() => begin("touch", null)}>{says.byTouching}</Key>
            <p>{says.byTouchingHint}</p>
            <LinkKey to={props.back}>{says.without}</LinkKey>
          </>
        ) : (
          <AskOnce
            label={says.takeAway}
            question={says.takeAwayAsk}
            hint={says.takeAwayHint}
            yes={says.takeAwayYes}
            onYes={async () => {
              const goInstead = fromHere(house.goInstead);
              if (await writeBoundary(house, same.field.id, null))
                goInstead({ at: "field", field: same.field.id });
            }}
          />
        )}
      </div>
    </>
  );
};
