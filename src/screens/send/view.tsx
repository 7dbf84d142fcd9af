/** Send & back up: is it safe, and who needs it? Kit and Settings stand beside it under their own names. */
import { useEffect } from "preact/hooks";
import { useHouse } from "../parts/house.ts";
import { useLive } from "../parts/live.ts";
import { writeNumber } from "../parts/numbers.ts";
import { Page } from "../parts/page.tsx";
import { href, type Route } from "../parts/route.ts";
import { TONGUE } from "../parts/words.common.ts";
import { BringIn } from "./bring-in.tsx";
import { finishInterrupted } from "./finish.ts";
import { MakeCopy } from "./make-copy.tsx";
import { writeMoment } from "./moment.ts";
import { readStatus, type SafetyStatus } from "./status.ts";
import "./send.css";

/** The screen. */
export const SendScreen = () => {
  const house = useHouse();
  const words = house.words.value.send;
  const { copiedAtMs } = house.settings.value;
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
          {status === undefined ? null : <StatusLines status={status} copiedAtMs={copiedAtMs} />}
        </div>
        <MakeCopy off={status === undefined || status.all === 0} />
      </section>
      <section class="ruled">
        <h2>{words.bringIn}</h2>
        <p>{words.bringInFor}</p>
        <BringIn />
      </section>
      <section class="ruled">
        <h2>{words.beside}</h2>
        <ul class="rows">
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

const StatusLines = (props: { readonly status: SafetyStatus; readonly copiedAtMs: number | null }) => {
  const { send: words, common } = useHouse().words.value;
  const { status, copiedAtMs } = props;
  if (status.all === 0) return <p>{words.nothing}</p>;
  return (
    <>
      <p>{copiedAtMs === null ? words.never : words.last(writeMoment(copiedAtMs, common.tongue))}</p>
      <p>
        <b>{copiedAtMs === null ? words.atAll(status.all) : words.since(status.since)}</b>
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
