/** Two versions of one record, next to each other, until one is chosen; and lines with two answers. */

import type { Revision } from "../../record/record.ts";
import { useHouse } from "../parts/house.ts";
import { useLive } from "../parts/live.ts";
import { Page } from "../parts/page.tsx";
import { href } from "../parts/route.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { authorName, type Known, kindWord, nameOf } from "./describe.ts";
import type { DoubtfulLine } from "./doubts.ts";
import { writeMoment } from "./moment.ts";
import { differences } from "./properties.ts";
import { readUnsettled, settle, type Versions } from "./versions-model.ts";
import { useSpoken } from "./words.records.ts";
import { SEND_WORDS } from "./words.ts";
import "./send.css";

/** The screen. */
export const TwoVersionsScreen = () => {
  const house = useHouse();
  const words = useWordsOf(SEND_WORDS).versions;
  const found = useLive(() => readUnsettled(house.records), []);
  return (
    <Page title={words.title} back={href({ at: "send" })} area="send">
      {found === undefined ? null : found.records.length + found.lines.length === 0 ? (
        <h2>{words.none}</h2>
      ) : (
        <p class="intro">{words.about}</p>
      )}
      {found === undefined || found.records.length === 0 ? null : (
        <section>
          <h2>{words.records}</h2>
          {found.records.map((one) => (
            <SideBySide key={one.record.id} versions={one} known={found.known} />
          ))}
        </section>
      )}
      {found === undefined || found.lines.length === 0 ? null : (
        <section class="ruled">
          <h2>{words.answers}</h2>
          <p>{words.answersAbout}</p>
          <ul class="rows">
            {found.lines.map((one) => (
              <DoubtfulRow key={one.line.id} doubtful={one} known={found.known} />
            ))}
          </ul>
        </section>
      )}
    </Page>
  );
};

/** Every version but the first is ruled off from the one before. */
const besides = (at: number): string => (at === 0 ? "" : "beside");

const SideBySide = (props: { readonly versions: Versions; readonly known: Known }) => {
  const house = useHouse();
  const words = useSpoken();
  const { record, versions } = props.versions;
  const { known } = props;
  const name = nameOf(words, known, record);
  const rows = differences({ words, known, habits: house.settings.value.habits }, versions);
  const label = (version: Revision) =>
    words.versions.version(
      authorName(known, version.author),
      writeMoment(version.stamp.wallMs, words.common.tongue),
    );
  const keep = async (version: Revision) => {
    const done = await house.write(settle(house, record, version));
    if (done.ok) house.say(words.versions.kept(name));
    else house.tell(done.problem);
  };
  return (
    <div class="side-by-side">
      <h3>
        {name} <small>{kindWord(words, known, record)}</small>
      </h3>
      <table>
        <thead>
          <tr>
            {versions.map((version, at) => (
              <th key={version.rev} scope="col" class={besides(at)}>
                {label(version)}
                <small class="shown-now">{at === 0 ? words.versions.shownNow : ""}</small>
              </th>
            ))}
          </tr>
        </thead>
        {rows.map((row) => (
          <tbody key={row.label}>
            <tr>
              <th scope="rowgroup" colSpan={versions.length}>
                {row.label}
              </th>
            </tr>
            <tr>
              {versions.map((version, at) => (
                <td key={version.rev} class={besides(at)}>
                  {row.said[at]}
                </td>
              ))}
            </tr>
          </tbody>
        ))}
        {rows.length > 0 ? null : (
          <tbody>
            <tr>
              <td colSpan={versions.length}>{words.versions.alike}</td>
            </tr>
          </tbody>
        )}
        <tfoot>
          <tr>
            {versions.map((version, at) => (
              <td key={version.rev} class={besides(at)}>
                <button
                  type="button"
                  class="key"
                  aria-label={words.versions.keepWhat(name, label(version))}
                  onClick={() => void keep(version)}
                >
                  {words.versions.keep}
                </button>
              </td>
            ))}
          </tr>
        </tfoot>
      </table>
    </div>
  );
};

const DoubtfulRow = (props: { readonly doubtful: DoubtfulLine; readonly known: Known }) => {
  const words = useSpoken();
  const { line } = props.doubtful;
  return (
    <li>
      <a class="row" href={href({ at: "line", line: line.id })}>
        <span>
          <b>{nameOf(words, props.known, line)}</b>
          <small>{words.versions.inDoubt(props.doubtful)}</small>
        </span>
      </a>
    </li>
  );
};
