/** Deleted records: what was deleted and can be brought back, and what stayed without its place. */

import { useState } from "preact/hooks";
import { readClock } from "../../device/clock.ts";
import { useHouse } from "../parts/house.ts";
import { Key } from "../parts/keys.tsx";
import { useLive } from "../parts/live.ts";
import { Page } from "../parts/page.tsx";
import type { Listed } from "../parts/reader.ts";
import { href } from "../parts/route.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { type DeletedList, type Orphans, readDeleted } from "./deleted-model.ts";
import { authorName, type Known, kindById, kindWord, nameOf } from "./describe.ts";
import { writeMoment } from "./moment.ts";
import { useSpoken } from "./words.records.ts";
import { SEND_WORDS } from "./words.ts";
import "./send.css";

/** The screen. */
export const DeletedScreen = () => {
  const house = useHouse();
  const words = useWordsOf(SEND_WORDS).deleted;
  const list = useLive(() => readDeleted(house.records, readClock().wallMs), []);
  return (
    <Page title={words.title} back={href({ at: "send" })} area="send">
      <p class="intro">{words.about}</p>
      {list === undefined ? null : <Lists list={list} />}
    </Page>
  );
};

/** Orphans named one by one before "and 12 more". */
const NAMED = 5;

const Lists = ({ list }: { readonly list: DeletedList }) => {
  const words = useWordsOf(SEND_WORDS).deleted;
  const [older, setOlder] = useState(false);
  const { recent, known, orphans } = list;
  return (
    <>
      {recent.length > 0 ? (
        <DeletedRows rows={recent} known={known} />
      ) : (
        <p class="quiet-line">{list.older.length === 0 ? words.noneAtAll : words.none}</p>
      )}
      {list.older.length === 0 ? null : older ? (
        <DeletedRows rows={list.older} known={known} />
      ) : (
        <div class="keys beneath">
          <Key onPress={() => setOlder(true)}>{words.older(list.older.length)}</Key>
        </div>
      )}
      {orphans.length === 0 ? null : (
        <section class="ruled">
          <h2>{words.orphans}</h2>
          <p>{words.orphansAbout}</p>
          <ul class="rows">
            {orphans.map((one) => (
              <OrphanRow key={one.parent} orphans={one} known={known} />
            ))}
          </ul>
        </section>
      )}
    </>
  );
};

const useBringBack = () => {
  const house = useHouse();
  const words = useWordsOf(SEND_WORDS).deleted;
  return async (one: Listed, what: string) => {
    const done = await house.write(house.pen.restore(one.id));
    if (done.ok) house.say(words.back(what));
    else house.tell(done.problem);
  };
};

const DeletedRows = (props: { readonly rows: readonly Listed[]; readonly known: Known }) => {
  const words = useSpoken();
  const bringBack = useBringBack();
  return (
    <ul class="rows">
      {props.rows.map((one) => {
        const name = nameOf(words, props.known, one);
        const when = writeMoment(one.revision.stamp.wallMs, words.common.tongue);
        const who = authorName(props.known, one.revision.author);
        return (
          <li class="with-key" key={one.id}>
            <div>
              <b>{name}</b>
              <small>{kindWord(words, props.known, one)}</small>
              <small>{who === null ? words.deleted.when(when) : words.deleted.whenBy(when, who)}</small>
            </div>
            <button
              type="button"
              class="key"
              aria-label={words.deleted.bringBackWhat(name)}
              onClick={() => void bringBack(one, name)}
            >
              {words.deleted.bringBack}
            </button>
          </li>
        );
      })}
    </ul>
  );
};

const OrphanRow = (props: { readonly orphans: Orphans; readonly known: Known }) => {
  const words = useSpoken();
  const bringBack = useBringBack();
  const { deleted, parent, stayed } = props.orphans;
  const name = deleted === undefined ? "" : nameOf(words, props.known, deleted);
  const kind = deleted === undefined ? kindById(words, parent) : kindWord(words, props.known, deleted);
  const title = deleted === undefined ? words.deleted.missing(kind) : `${name} (${kind})`;
  return (
    <li class="with-key">
      <div>
        <b>{words.deleted.orphanOf(title, stayed.length, deleted === undefined)}</b>
        {stayed.slice(0, NAMED).map((one) => (
          <small
            key={one.id}
          >{`${kindWord(words, props.known, one)}: ${nameOf(words, props.known, one)}`}</small>
        ))}
        {stayed.length > NAMED ? <small>{words.deleted.moreOrphans(stayed.length - NAMED)}</small> : null}
      </div>
      {deleted === undefined ? null : (
        <button
          type="button"
          class="key"
          aria-label={words.deleted.bringBackWhat(name)}
          onClick={() => void bringBack(deleted, name)}
        >
          {words.deleted.bringBack}
        </button>
      )}
    </li>
  );
};
