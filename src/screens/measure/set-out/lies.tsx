/** On the sheet of a line or a hole: its marked spot, when its place was last corrected, and the key to correct it. */
import { useState } from "preact/hooks";
import { lastChangeOf } from "../../kit/kit-list.ts";
import { useHouse } from "../../parts/house.ts";
import { useLive } from "../../parts/live.ts";
import { OpensHere } from "../../parts/opens-here.tsx";
import type { Reader } from "../../parts/reader.ts";
import { typedHere } from "../../parts/typed-store.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { writeMoment } from "../../send/moment.ts";
import { type Laid, LIES_FORM, LiesForm } from "./lies-form.tsx";
import { LIES_WORDS } from "./words.lies.ts";

const readLies = async (records: Reader, { id, header }: Laid) => {
  const test = await records.one(id);
  const changed = test === undefined ? null : lastChangeOf(test);
  const [spot, person] = await Promise.all([
    header.spot === undefined ? undefined : records.one(header.spot),
    changed?.by == null ? undefined : records.one(changed.by),
  ]);
  return { spot: spot?.body, changed, by: person?.body.name || null };
};

export const Lies = ({ test }: { readonly test: Laid }) => {
  const house = useHouse();
  const { common } = house.words.value;
  const says = useWordsOf(LIES_WORDS);
  const [correcting, setCorrecting] = useState(() => typedHere(LIES_FORM).length > 0);
  const found = useLive(() => readLies(house.records, test), [test.id, test.header.spot]);
  const { type } = test.header;
  return (
    <>
      {found?.spot === undefined ? null : <p>{says.atSpot(found.spot.name || common.noName)}</p>}
      {found === undefined || found.changed === null ? null : (
        <p>{says.lastChanged(writeMoment(found.changed.atMs, common.tongue), found.by)}</p>
      )}
      <OpensHere
        label={says.correct[type]}
        open={correcting}
        onOpen={() => setCorrecting(true)}
        form={() => <LiesForm {...test} onDone={() => setCorrecting(false)} />}
      />
    </>
  );
};
