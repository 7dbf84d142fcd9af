/** A marked spot: its name, what it is, and where. Nothing of it is needed but what one wants to say. */
import type { RecordId } from "../../record/ids.ts";
import type { Spot } from "../../record/kinds/spot.ts";
import { NotesOfSpot } from "../measure/notes/of-spot.tsx";
import { AskOnce } from "../parts/ask-once.tsx";
import { changesOf } from "../parts/changes-of.ts";
import { fromHere } from "../parts/from-here.ts";
import { type House, useHouse } from "../parts/house.ts";
import { Choice, Key, WriteLine } from "../parts/keys.tsx";
import { useLive } from "../parts/live.ts";
import { drawField, type OnField, readOnField } from "../parts/map/field-things.ts";
import { MAP_WORDS } from "../parts/map/words.ts";
import { fieldName, stripName } from "../parts/names.ts";
import { useOnce } from "../parts/once.ts";
import { Page } from "../parts/page.tsx";
import { PhotoPart } from "../parts/photos/photo-part.tsx";
import { href } from "../parts/route.ts";
import { Brought, Typed, useForget, useKeeping, useTyped } from "../parts/typed.tsx";
import { useWordsOf } from "../parts/words-of.ts";
import { SpotPlace } from "./spot-where.tsx";
import { DETAILS_WORDS } from "./words.details.ts";
import "./boundary.css";
import "./fields.css";

type Kind = "spot" | "old-grass" | "edge";
type StripOrNone = RecordId<"strip"> | "none";

const kindOf = (spot: Spot): Kind =>
  spot.edge === undefined ? (spot.oldGrass ? "old-grass" : "spot") : "edge";

/** A spot is no edge, and was not moved by hand, where these are left out. */
const MAY_LACK = ["edge", "movedFrom"];

/** What the field holds, and the spot as it is stored. */
interface SpotNow {
  readonly on: OnField;
  readonly stored: Spot | null;
}

const readSpot = async (
  house: House,
  field: RecordId<"field">,
  spot: RecordId<"spot"> | "new",
): Promise<SpotNow | null> => {
  const on = await readOnField(house.records, field, null);
  if (on === null) return null;
  if (spot === "new") return { on, stored: null };
  const found = await house.records.one(spot);
  return found === undefined || found.deleted ? null : { on, stored: found.body };
};

export const SpotScreen = (props: {
  readonly field: RecordId<"field">;
  readonly spot: RecordId<"spot"> | "new";
}) => {
  const house = useHouse();
  const says = useWordsOf(DETAILS_WORDS);
  const { field, spot } = props;
  const now = useLive(() => readSpot(house, field, spot), [field, spot]);
  const back = href({ at: "field", field });
  const title = spot === "new" ? says.newSpot : says.aSpot;
  if (now === undefined || now === null)
    return (
      <Page title={now === null ? says.spotGone : title} back={back} area="fields">
        {null}
      </Page>
    );
  return (
    <Typed form="spot" base={JSON.stringify(now.stored)}>
      <SpotForm now={now} field={field} spot={spot} title={title} back={back} />
    </Typed>
  );
};

const SpotForm = (props: {
  readonly now: SpotNow;
  readonly field: RecordId<"field">;
  readonly spot: RecordId<"spot"> | "new";
  readonly title: string;
  readonly back: string;
}) => {
  const house = useHouse();
  const words = house.words.value;
  const says = useWordsOf(DETAILS_WORDS);
  const map = useWordsOf(MAP_WORDS);
  const { now, field, spot } = props;
  const first: Spot = now.stored ?? {
    field: now.on.same.field.id,
    strip: null,
    name: "",
    position: null,
    oldGrass: false,
  };
  const sides = ({ strip, edge }: Spot) => [strip, ...(edge?.between ?? [])];
  const [said, setSaid] = useTyped<Spot>(
    "spot",
    first,
    (typed) => {
      const known = new Set([null, ...sides(first), ...now.on.strips.map(({ id }) => id)]);
      return sides(typed).every((id) => known.has(id));
    },
    MAY_LACK,
  );
  const forget = useForget();
  const keeping = useKeeping();
  const [busy, once] = useOnce();
  const say = (more: Partial<Spot>) => setSaid((before) => ({ ...before, ...more }));
  const kind = kindOf(said);
  const [one, other] = said.edge?.between ?? [null, null];
  const sameSides = kind === "edge" && one !== null && one === other;
  const { drawing } = drawField(words, map, now.on);
  const ground = { ...drawing, things: drawing.things.filter(({ id }) => id !== spot) };
  const become = (next: Kind) =>
    setSaid(({ edge, ...rest }) => ({
      ...rest,
      oldGrass: next === "old-grass",
      ...(next === "edge" ? { edge: edge ?? { between: [null, null], to: null } } : {}),
    }));
  const keep = () =>
    once(async () => {
      const goInstead = fromHere(house.goInstead);
      const body = { ...said, name: said.name.trim() };
      const written = await keeping(() =>
        house.write(
          spot === "new" || now.stored === null
            ? house.pen.write("spot", body)
            : changeCommand(house, spot, now.stored, body),
        ),
      );
      if (!written.ok) {
        house.tell(written.problem);
        return;
      }
      forget();
      goInstead({ at: "field", field });
    });
  const strips = now.on.strips.map((strip) => ({
    value: strip.id as StripOrNone,
    label: stripName(words, strip),
  }));
  const whichStrip = (
    question: string,
    chosen: RecordId<"strip"> | null,
    onSay: (strip: RecordId<"strip"> | null) => void,
  ) => (
    <Choice<StripOrNone>
      question={question}
      options={[...strips, { value: "none", label: kind === "edge" ? says.notSaid : says.noStrip }]}
      chosen={chosen ?? "none"}
      onChoose={(id) => onSay(id === "none" ? null : id)}
    />
  );
  return (
    <Page
      title={props.title}
      under={fieldName(words, now.on.same.field)}
      back={props.back}
      area="fields"
      foot={
        <Key look="solid" off={busy || sameSides} onPress={keep}>
          {says.keepSpot}
        </Key>
      }
    >
      <Brought />
      <WriteLine label={says.spotName} value={said.name} onWrite={(name) => say({ name })} />
      <Choice<Kind>
        question={says.spotKind}
        column
        options={(["spot", "old-grass", "edge"] as const).map((value) => ({
          value,
          label: says.kinds[value],
          hint: says.kindHints[value],
        }))}
        chosen={kind}
        onChoose={become}
      />
      <SpotPlace
        question={kind === "edge" ? says.whereBegins : says.whereIsIt}
        position={said.position}
        ground={ground}
        onPlace={(position) => say({ position })}
      />
      {said.edge === undefined ? (
        strips.length === 0 ? null : (
          whichStrip(says.spotStrip, said.strip, (strip) => say({ strip }))
        )
      ) : (
        <>
          <SpotPlace
            question={says.whereEnds}
            position={said.edge.to}
            ground={ground}
            onPlace={(to) => say({ edge: { between: [one, other], to } })}
          />
          {whichStrip(says.oneSide, one, (id) =>
            say({ edge: { between: [id, other], to: said.edge?.to ?? null } }),
          )}
          {whichStrip(says.otherSide, other, (id) =>
            say({ edge: { between: [one, id], to: said.edge?.to ?? null } }),
          )}
          {sameSides ? <p class="wrong">{says.sameSides}</p> : null}
        </>
      )}
      {spot === "new" ? null : (
        <>
          <PhotoPart of={spot} />
          <NotesOfSpot same={now.on.same} spot={spot} />
          <DeleteSpot spot={spot} field={field} />
        </>
      )}
    </Page>
  );
};

/** A key that asks once more. What was measured there stays. */
const DeleteSpot = (props: { readonly spot: RecordId<"spot">; readonly field: RecordId<"field"> }) => {
  const house = useHouse();
  const says = useWordsOf(DETAILS_WORDS);
  const [forget, keeping] = [useForget(), useKeeping()];
  const { spot, field } = props;
  return (
    <div class="ruled keys last-keys">
      <AskOnce
        label={says.deleteSpot}
        question={says.deleteSpotAsk}
        hint={says.deleteSpotHint}
        yes={says.deleteYes}
        onYes={async () => {
          const goInstead = fromHere(house.goInstead);
          const written = await keeping(() => house.write(house.pen.remove(spot)));
          if (written.ok) {
            forget();
            goInstead({ at: "field", field });
          } else house.tell(written.problem);
        }}
      />
    </div>
  );
};

/** A spot that is no edge any more has none. */
const changeCommand = ({ pen }: House, spot: RecordId<"spot">, stored: Spot, said: Spot) => {
  const { patch, without } = changesOf(stored, said, ["edge"]);
  return pen.change(spot, patch, without);
};
