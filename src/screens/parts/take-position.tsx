/** The position of a test taken again on its sheet, by standing still where it was made. */
import { useState } from "preact/hooks";
import type { RecordId } from "../../record/ids.ts";
import { useHouse } from "./house.ts";
import { Key } from "./keys.tsx";
import { useOnce } from "./once.ts";
import { StandingWords, useStanding } from "./standing.tsx";

interface Of {
  readonly test: RecordId<"observation">;
  /** Where to stand. */
  readonly question: string;
}

/** The key, and the standing still behind it. */
export const TakePositionOf = (props: Of) => {
  const { setOut } = useHouse().words.value;
  const [taking, setTaking] = useState(false);
  return taking ? (
    <TakePosition {...props} onDone={() => setTaking(false)} />
  ) : (
    <Key onPress={() => setTaking(true)}>{setOut.takePosition}</Key>
  );
};

const TakePosition = ({ test, question, onDone }: Of & { readonly onDone: () => void }) => {
  const house = useHouse();
  const { common, setOut } = house.words.value;
  const standing = useStanding();
  const [busy, once] = useOnce();
  const keep = async () => {
    const written = await house.write(house.pen.change(test, { at: standing.stood }));
    if (written.ok) onDone();
    else house.tell(written.problem);
  };
  return (
    <>
      <StandingWords standing={standing} question={question} />
      <div class="keys two">
        <Key onPress={onDone}>{common.close}</Key>
        <Key look="solid" off={busy || standing.stood.position === null} onPress={() => once(keep)}>
          {setOut.stopHere}
        </Key>
      </div>
    </>
  );
};
