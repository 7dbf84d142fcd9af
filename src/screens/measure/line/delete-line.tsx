/** Deletes a line after asking once; it can be brought back. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../../record/ids.ts";
import { fromHere } from "../../parts/from-here.ts";
import { useHouse } from "../../parts/house.ts";
import { Key } from "../../parts/keys.tsx";

/** Leads back to the visit once it is done. */
export const DeleteLine = (props: {
  readonly line: RecordId<"observation">;
  readonly visit: RecordId<"visit">;
}) => {
  const house = useHouse();
  const words = house.words.value;
  const [asking, setAsking] = useState(false);
  const remove = async () => {
    const goInstead = fromHere(house.goInstead);
    const written = await house.write(house.pen.remove(props.line));
    if (written.ok) goInstead({ at: "visit", visit: props.visit });
    else house.tell(written.problem);
  };
  if (!asking)
    return (
      <Key look="danger" onPress={() => setAsking(true)}>
        {words.sheet.delete}
      </Key>
    );
  return (
    <>
      <p role="alert">{words.sheet.deleteAsk}</p>
      <div class="keys two">
        <Key onPress={() => setAsking(false)}>{words.common.close}</Key>
        <Key look="danger" onPress={() => void remove()}>
          {words.common.delete}
        </Key>
      </div>
    </>
  );
};
