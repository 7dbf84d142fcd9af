/** The board of the day: every ring with what soaked in so far and when it is read next, late ones first. */
import { useComputed } from "@preact/signals";
import { useEffect, useMemo, useState } from "preact/hooks";
import { kindOf, type RecordId } from "../../../record/ids.ts";
import type { Changed } from "../../../store/changes.ts";
import { DemoPlace } from "../../demo/demo-place.tsx";
import { bellWaits, screenOn } from "../../parts/can-ring.ts";
import { useHouse } from "../../parts/house.ts";
import { BackDrawing } from "../../parts/icons.tsx";
import { Key, LinkKey } from "../../parts/keys.tsx";
import { useLive } from "../../parts/live.ts";
import { LockedPhone } from "../../parts/locked-phone.tsx";
import { fieldName } from "../../parts/names.ts";
import { NotRead } from "../../parts/not-read.tsx";
import { writeDay } from "../../parts/numbers.ts";
import { Page } from "../../parts/page.tsx";
import { href } from "../../parts/route.ts";
import { ScreenWords } from "../../parts/screen-words.tsx";
import { useToday } from "../../parts/visits.ts";
import { ALARM_WORDS } from "../../parts/words.alarm.ts";
import { useWordsOf } from "../../parts/words-of.ts";
import { useJobs } from "./board-jobs.ts";
import { type Board, type BoardModel, useBoard } from "./board-model.ts";
import { BoardNumber } from "./board-number.tsx";
import { boardPanel, useBoardFocus, useBoardSteps } from "./board-panel.ts";
import { BoardRow } from "./board-row.tsx";
import { BoardWater } from "./board-water.tsx";
import { proposedStarts } from "./gaps.ts";
import { inReadingOrder, stageOf } from "./status.ts";
import { useNow } from "./tick.ts";
import { WhoReads } from "./who-reads.tsx";
import { RING_WORDS } from "./words.ts";
import "../line/line.css";
import "./rings.css";

const tellsOfPeople = (changed: Changed): boolean =>
  changed === "everything" || changed.some((id) => kindOf(id) === "person");

/** The rings of a visit, by its address. */
export const RingsScreen = (props: { readonly visit: RecordId<"visit"> }) => {
  const words = useWordsOf(RING_WORDS);
  const model = useBoard(props.visit);
  const board = model.board.value;
  if (board === undefined) return <div class="frame" aria-busy="true" />;
  if (board === null)
    return (
      <Page title={words.setOut.notHere} back={href({ at: "measure" })} area="measure">
        {null}
      </Page>
    );
  return <BoardOfDay model={model} board={board} />;
};

const BoardOfDay = (props: { readonly model: BoardModel; readonly board: Board }) => {
  const { model, board } = props;
  const house = useHouse();
  const words = useWordsOf(RING_WORDS).board;
  const now = useNow();
  const today = useToday();
  const panel = useMemo(() => boardPanel(model), [model]);
  useBoardSteps(panel);
  useBoardFocus(panel);
  const [stopping, setStopping] = useState(false);
  const visit = board.visit.id;
  const people = useLive(() => house.records.list({ kind: "person" }), [], tellsOfPeople);
  const names = useMemo(
    () => new Map((people ?? []).map(({ id, body }) => [id as string, body.name])),
    [people],
  );
  /** Ids in their order as one text: the list is drawn again only when the order changes. */
  const order = useComputed(() =>
    inReadingOrder(
      model.rings.value.map(({ ring }) => ring.value),
      now.value,
    )
      .map(({ id }) => id)
      .join(" "),
  );
  const starts = useComputed(() =>
    proposedStarts(
      model.rings.value.map(({ ring }) => ring.value),
      now.value,
    ),
  );
  const all = model.rings.value;
  const rings = all.map(({ ring }) => ring.value);
  const open = panel.open.value;
  useEffect(() => {
    if (open.length === 0) panel.writing.value = false;
  }, [panel, open.length]);
  const { onJob, notTaken } = useJobs(order, () => setStopping(false));
  // A row that is the same element is not drawn again with the list: its own signals redraw it.
  const rows = useMemo(
    () =>
      new Map(
        all.map((one) => [
          one.id as string,
          <BoardRow
            key={one.id}
            of={one}
            now={now}
            starts={starts}
            stopping={stopping}
            readers={names}
            onJob={onJob}
          />,
        ]),
      ),
    [all, now, starts, stopping, names, onJob],
  );
  const writing = panel.writing.value && open.length > 0;
  const close = () => {
    panel.writing.value = false;
  };
  const waits = rings.some((ring) => stageOf(ring) === "waiting");
  const runs = rings.some((ring) => stageOf(ring) === "running");
  return (
    <>
      {writing ? (
        <div class="count ring">
          <Head board={board} today={today} onBack={close} />
          <BoardNumber rings={rings} now={now} open={open} onClose={close} />
        </div>
      ) : null}
      {/* The board stays behind the number: taken down and put up again, twelve rows hold up every answer. */}
      <div class="frame board" inert={writing}>
        <Head board={board} today={today} instead={notTaken ? words.notTaken : undefined} />
        <main class="leaf">
          <div class="board-part">
            <DemoPlace id={board.visit.body.field} />
          </div>
          <BoardWater visit={visit} rings={rings} now={now} />
          <div class="board-part">
            <LockedPhone />
          </div>
          {all.length === 0 ? <p class="board-none">{words.none}</p> : null}
          <ul>{order.value.split(" ").map((id) => rows.get(id))}</ul>
          {waits ? <p class="board-note">{words.gapsHint}</p> : null}
          {people === undefined ? <NotRead /> : <WhoReads people={people} />}
          <div class="board-part beside">
            <LinkKey to={href({ at: "map", field: board.visit.body.field, visit })}>{words.map}</LinkKey>
          </div>
          <div class="board-part">{runs ? <ScreenWords /> : null}</div>
        </main>
        <div class="foot">
          <div class="actions keys">
            {open.length > 0 ? (
              <button
                type="button"
                class="key solid"
                data-opens="numbers"
                onClick={() => {
                  // Behind the touch and its frame: all in one task would hold the page up longer than a blink.
                  setTimeout(() => {
                    panel.writing.value = true;
                  });
                }}
              >
                {words.writeNumbers(open.length)}
              </button>
            ) : null}
            <div class="board-foot">
              <LinkKey to={href({ at: "ring-new", visit, follows: null })}>{words.add}</LinkKey>
              <LinkKey to={href({ at: "big-figures", visit })}>{words.big}</LinkKey>
              <Key off={!runs} onPress={() => setStopping(!stopping)}>
                {stopping ? words.readMode : words.stopMode}
              </Key>
            </div>
          </div>
        </div>
      </div>
    </>
  );
};

/** What keeps the alarm from being heard just now, in one short line: the bar that says it is not shown here. */
const useInTheWay = (): string | null => {
  const words = useWordsOf(ALARM_WORDS);
  if (bellWaits.value) return words.silent;
  return screenOn.value === "refused" || screenOn.value === "not-here" ? words.dark : null;
};

const Head = (props: {
  readonly board: Board;
  readonly today: string;
  /** Said in the place of the small line. */
  readonly instead?: string | undefined;
  readonly onBack?: () => void;
}) => {
  const house = useHouse();
  const catalogue = house.words.value;
  const words = useWordsOf(RING_WORDS).board;
  const inTheWay = useInTheWay();
  const { visit, field } = props.board;
  const { day } = visit.body;
  const title = day === props.today ? words.title : words.titleThen(writeDay(day, catalogue.common.tongue));
  return (
    <header class="head">
      <a
        class="back"
        href={href({ at: "visit", visit: visit.id })}
        aria-label={catalogue.common.back}
        onClick={(event) => {
          if (props.onBack === undefined) return;
          event.preventDefault();
          props.onBack();
        }}
      >
        <BackDrawing />
      </a>
      <div>
        <h1>{`${title} · ${fieldName(catalogue, field)}`}</h1>
        <p>{props.instead ?? inTheWay ?? words.locked}</p>
      </div>
    </header>
  );
};
