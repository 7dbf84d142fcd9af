/** The keys of a line at its end, in the place of the counting keys. */
import type { RecordId } from "../../../record/ids.ts";
import { endedUnread } from "../../../record/line/finished.ts";
import type { LineReading } from "../../../record/line/reading.ts";
import { useHouse } from "../../parts/house.ts";
import { Key, LinkKey } from "../../parts/keys.tsx";
import { href } from "../../parts/route.ts";
import { DeleteLine } from "./delete-line.tsx";
import { DoubtsKey, doubtsOf } from "./doubts.tsx";
import type { LineModel, StoredLine } from "./model.ts";

export const OverKeys = (props: {
  readonly model: LineModel;
  readonly stored: StoredLine;
  readonly reading: LineReading;
  readonly line: RecordId<"observation">;
}) => {
  const house = useHouse();
  const words = house.words.value;
  const { model, reading } = props;
  const { visit } = props.stored.header;
  const next = <LinkKey to={href({ at: "line-new", visit })}>{words.sheet.another}</LinkKey>;
  if (!endedUnread(reading))
    return (
      <>
        <DoubtsKey model={model} reading={reading} />
        <LinkKey
          to={href({ at: "line-sheet", line: props.line })}
          look={doubtsOf(reading) === 0 ? "straw" : "plain"}
        >
          {words.line.sheet}
        </LinkKey>
        {next}
      </>
    );
  // Another phone may have read marks on a line that this one ended before its first.
  const readTo = reading.next - 1;
  return (
    <>
      {readTo > (reading.endedAt ?? 0) ? (
        <Key look="straw" onPress={() => void model.endHere()}>
          {words.line.endAtLast(readTo)}
        </Key>
      ) : (
        <Key look="straw" off={reading.undoable?.type !== "end"} onPress={() => void model.undo()}>
          {words.line.goOn}
        </Key>
      )}
      {next}
      <DeleteLine line={props.line} visit={visit} />
    </>
  );
};
