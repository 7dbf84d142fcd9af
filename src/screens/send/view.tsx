/** Send & back up: is it safe, and who needs it? Kit and Settings stand beside it under their own names. */

import { useEffect } from "preact/hooks";
import { useHouse } from "../parts/house.ts";
import { useLive } from "../parts/live.ts";
import { writeNumber } from "../parts/numbers.ts";
import { Page } from "../parts/page.tsx";
import { href, type Route } from "../parts/route.ts";
import { TONGUE } from "../parts/words.common.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { BringIn } from "./bring-in.tsx";
import { finishInterrupted } from "./finish.ts";
import { MakeCopy } from "./make-copy.tsx";
import { writeMoment } from "./moment.ts";
import { readStatus, type SafetyStatus } from "./status.ts";
import { SEND_WORDS } from "./words.ts";
import "./send.css";

/** The screen. */
export const SendScreen = () => {
  const house = useHouse();
  const words = useWordsOf(SEND_WORDS).send;
  const { copiedAtMs, copiedSum } = house.settings.value;
  const status = useLive(() => readStatus(house.records, copiedAtMs), [copiedAtMs]);
  useEffect(() => {
    void finishInterrupted(house);
  }, [house]);
  return (
    <Page title={words.title} area="send">
      <section>
        <h2>{words.copy}</h2>
        <p>{words.copyFor}</p>
        <div class="status-lines">
          {status === undefined ? null : (
            <StatusLines status={status} copiedAtMs={copiedAtMs} copiedSum={copiedSum} />
          )}
        </div>
        <MakeCopy off={status === undefined || status.all === 0} sum={status?.sum ?? null} />
      </section>
      <section class="ruled">
        <h2>{words.bringIn}</h2>
        <p>{words.bringInFor}</p>
        <BringIn />
      </section>
      <section class="ruled">
        <h2>{words.beside}</h2>
        <ul class="rows">
          <Beside to={{ at: "help" }} label={words.help} hint={words.helpHint} />
          <Beside to={{ at: "kit" }} label={words.kit} hint={words.kitHint} />
          <Beside to={{ at: "settings" }} label={words.settings} hint={words.settingsHint} />
          <Beside
            to={{ at: "deleted" }}
            label={words.deleted}
            hint={words.deletedHint}
            count={status?.deleted}
          />
          <Beside
            to={{ at: "two-versions" }}
            label={words.versions}
            hint={words.versionsHint}
            count={status?.unsettled}
          />
        </ul>
      </section>
    </Page>
  );
};

const StatusLines = (props: {
  readonly status: SafetyStatus;
  readonly copiedAtMs: number | null;
  readonly copiedSum: number | null;
}) => {
  const { common } = useHouse().words.value;
  const words = useWordsOf(SEND_WORDS).send;
  const { status, copiedAtMs, copiedSum } = props;
  if (status.all === 0) return <p>{words.nothing}</p>;
  // What came by a file, or was written under a clock set back, is older than the copy and new all the same.
  const newAnyway = status.since === 0 && copiedSum !== null && copiedSum !== status.sum;
  const since = newAnyway ? words.sinceSome : words.since(status.since);
  return (
    <>
      <p>{copiedAtMs === null ? words.never : words.last(writeMoment(copiedAtMs, common.tongue))}</p>
      <p>
        <b>{copiedAtMs === null ? words.atAll(status.all) : since}</b>
      </p>
    </>
  );
};

const Beside = (props: {
  readonly to: Route;
  readonly label: string;
  readonly hint: string;
  readonly count?: number | undefined;
}) => (
  <li>
    <a class="row" href={href(props.to)}>
      <span>
        <b>{props.label}</b>
        <small>{props.hint}</small>
      </span>
      <span class="how-many">{props.count === undefined ? "" : writeNumber(props.count, TONGUE)}</span>
    </a>
  </li>
);
