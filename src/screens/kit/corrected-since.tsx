/** On a test: that something of its kit was corrected after it, so that its numbers go by other sizes than then. */
import type { RecordId } from "../../record/ids.ts";
import type { Kit } from "../../record/kinds/kit.ts";
import { useHouse } from "../parts/house.ts";
import { useLive } from "../parts/live.ts";
import type { Reader } from "../parts/reader.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { writeMoment } from "../send/moment.ts";
import { type LastChange, lastChangeOf } from "./kit-list.ts";
import { KIT_WORDS } from "./words.ts";

interface Corrected {
  readonly id: RecordId<"kit">;
  readonly body: Kit;
  readonly changed: LastChange;
  /** Empty when nobody was named. */
  readonly by: string;
}

const readCorrected = async (
  records: Reader,
  kit: readonly RecordId<"kit">[],
  sinceMs: number,
): Promise<readonly Corrected[]> => {
  const found = (await records.many(kit)).flatMap((one) => {
    const changed = lastChangeOf(one);
    // Deleting changes no size.
    return changed === null || one.deleted || changed.atMs <= sinceMs
      ? []
      : [{ id: one.id, body: one.body, changed }];
  });
  const people = await records.many(found.flatMap(({ changed }) => changed.by ?? []));
  return found.map((one) => ({
    ...one,
    by: people.find(({ id }) => id === one.changed.by)?.body.name ?? "",
  }));
};

/**
 * One sentence for each thing of the kit that was corrected after the test began; nothing when none was.
 *
 * @param props.kit what the test was made with (`kitOf`)
 * @param props.sinceMs when the test began, by the wall clock
 */
export const CorrectedSince = (props: {
  readonly kit: readonly RecordId<"kit">[];
  readonly sinceMs: number;
}) => {
  const house = useHouse();
  const words = house.words.value.common;
  const kit = useWordsOf(KIT_WORDS);
  const { sinceMs } = props;
  const corrected = useLive(
    () => readCorrected(house.records, props.kit, sinceMs),
    [props.kit.join(" "), sinceMs],
  );
  return (
    <>
      {corrected?.map(({ id, body, changed, by }) => (
        <p key={id}>
          {kit.correctedSince(
            kit[body.type].called(body.name || words.noName),
            writeMoment(changed.atMs, words.tongue),
            by === "" ? null : by,
          )}
        </p>
      ))}
    </>
  );
};
