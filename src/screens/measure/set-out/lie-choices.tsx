/** Which rope, where it lies against the crop rows, and at which angle: asked before a line and when it is corrected. */
import type { RecordId } from "../../../record/ids.ts";
import { PLACES, type Place } from "../../../record/shapes.ts";
import { useHouse } from "../../parts/house.ts";
import { Choice } from "../../parts/keys.tsx";
import { lengthWords } from "../../parts/lengths.ts";
import type { Listed } from "../../parts/reader.ts";

export const RopeChoice = (props: {
  readonly ropes: readonly Listed<"kit">[];
  readonly chosen: RecordId<"kit"> | null;
  readonly onChoose: (rope: RecordId<"kit">) => void;
}) => {
  const { words, settings } = useHouse();
  const { setOut, common } = words.value;
  return (
    <Choice
      question={setOut.rope}
      options={props.ropes.flatMap(({ id, body }) =>
        body.type === "rope"
          ? [
              {
                value: id,
                label: body.name === "" ? common.noName : body.name,
                hint: setOut.ropeMarks(
                  body.marks,
                  lengthWords("spacing", body.spacingM, settings.value.habits),
                ),
              },
            ]
          : [],
      )}
      chosen={props.chosen}
      onChoose={props.onChoose}
    />
  );
};

export const PlaceChoice = (props: {
  readonly chosen: Place | null;
  readonly onChoose: (place: Place | null) => void;
}) => {
  const { setOut, place: places } = useHouse().words.value;
  return (
    <Choice
      question={setOut.place}
      options={[
        ...PLACES.map((place) => ({ value: place, label: places[place] })),
        { value: "unsaid" as const, label: setOut.unplaced },
      ]}
      chosen={props.chosen ?? "unsaid"}
      onChoose={(place) => props.onChoose(place === "unsaid" ? null : place)}
    />
  );
};

const ANGLES = ["45", "90", "0", "unknown"] as const;
const angleOf = (angleDeg: number | null): (typeof ANGLES)[number] =>
  ANGLES.find((angle) => angle === String(angleDeg)) ?? "unknown";

export const AngleChoice = (props: {
  readonly chosen: number | null;
  readonly onChoose: (angleDeg: number | null) => void;
}) => {
  const { setOut } = useHouse().words.value;
  return (
    <Choice
      question={setOut.angle}
      options={ANGLES.map((angle) => ({ value: angle, label: setOut.angles[angle] }))}
      chosen={angleOf(props.chosen)}
      onChoose={(angle) => props.onChoose(angle === "unknown" ? null : Number(angle))}
    />
  );
};
