/** A map in a screen: the ground, its scale and north, and the keys beneath it. */
import type { ComponentChildren, RefObject } from "preact";
import { useEffect, useId, useRef, useState } from "preact/hooks";
import type { LatitudeLongitude } from "../../../science/position/distance.ts";
import { useHouse } from "../house.ts";
import { Key } from "../keys.tsx";
import { writeNumber } from "../numbers.ts";
import { TONGUE } from "../words.common.ts";
import { useWordsOf } from "../words-of.ts";
import { type Drawing, placesOf } from "./drawing.ts";
import type { Ground } from "./ground.ts";
import type { Here } from "./here.ts";
import { scaleBar } from "./scale.ts";
import { MAP_WORDS } from "./words.ts";
import "./ground-view.css";

const LONGEST_BAR_PX = 120;

export const GroundView = (props: {
  /** What the map shows, for somebody who cannot see it. */
  readonly label: string;
  readonly drawing: Drawing;
  /** Its ground is still read: the room is kept, so that nothing below moves when it is there. */
  readonly waits?: boolean;
  /** Part of a page that is scrolled: one finger scrolls on. */
  readonly still?: boolean;
  /** Where it opens, when not at the whole of the ground. */
  readonly start?: LatitudeLongitude | null;
  /** A cross in its middle, for setting something there. */
  readonly cross?: boolean;
  /** Where the person is; adds the key that asks for it and goes there. */
  readonly here: Here;
  /** The open map, for whoever sets something at its middle. */
  readonly ground?: RefObject<Ground | null>;
  readonly onTouch?: (place: LatitudeLongitude) => void;
  readonly onPick?: (id: string) => void;
  readonly onPickCorner?: (at: number) => void;
  readonly onMoveCorner?: (at: number, place: LatitudeLongitude) => void;
  /** More keys in the row beneath. */
  readonly children?: ComponentChildren;
}) => {
  const words = useWordsOf(MAP_WORDS);
  const element = useRef<HTMLElement>(null);
  const own = useRef<Ground>(null);
  const opened = props.ground ?? own;
  const [failed, setFailed] = useState(false);
  const [open, setOpen] = useState(false);
  const [metresPerPx, setMetresPerPx] = useState(0);
  const hint = useId();
  // The map lives longer than one drawing of the screen; it must speak to the newest.
  const now = useRef(props);
  now.current = props;
  const empty = placesOf(props.drawing).length === 0;
  const still = props.still === true;
  useEffect(() => {
    if (empty) return;
    let over = false;
    import("./ground.ts").then(
      ({ openGround }) => {
        if (over || element.current === null) return;
        opened.current = openGround(element.current, still, {
          onTouch: (place) => now.current.onTouch?.(place),
          onPick: (id) => now.current.onPick?.(id),
          onPickCorner: (at) => now.current.onPickCorner?.(at),
          onMoveCorner: (at, place) => now.current.onMoveCorner?.(at, place),
          onScale: setMetresPerPx,
        });
        setOpen(true);
      },
      () => setFailed(true),
    );
    return () => {
      over = true;
      opened.current?.close();
      opened.current = null;
      setOpen(false);
    };
  }, [empty, still, opened]);
  useEffect(() => {
    if (open) opened.current?.draw(props.drawing);
  }, [open, opened, props.drawing]);
  useEffect(() => {
    const { start } = now.current;
    if (open && start !== undefined && start !== null) opened.current?.goTo(start);
  }, [open, opened]);
  if (failed)
    return (
      <>
        <p>{words.cannotDraw}</p>
        <div class="keys ground-keys">{props.children}</div>
      </>
    );
  if (empty && props.waits !== true) return <p>{words.noPlace}</p>;
  return (
    <>
      <div class={`ground ${still ? "" : "tall"}`}>
        <section ref={element} aria-label={props.label} aria-describedby={hint} />
        {props.cross === true ? <Cross /> : null}
        <div class="ground-foot">
          <Scale metresPerPx={metresPerPx} />
          <North />
        </div>
        <p id={hint} class="out-of-sight">
          {words.hint}
        </p>
      </div>
      <div class="keys ground-keys">
        <Key onPress={() => opened.current?.closer()}>{words.closer}</Key>
        <Key onPress={() => opened.current?.farther()}>{words.farther}</Key>
        <Key onPress={() => opened.current?.showAll()}>{words.fit}</Key>
        <WhereAmI here={props.here} ground={opened} />
        {props.children}
      </div>
    </>
  );
};

/** Asks where the person is, once, and brings that place to the middle of the map. */
const WhereAmI = (props: { readonly here: Here; readonly ground: RefObject<Ground | null> }) => {
  const words = useWordsOf(MAP_WORDS);
  const { here, ground } = props;
  const [wanted, setWanted] = useState(false);
  const { fix, oldForMs } = here;
  const known = oldForMs === null ? fix : null;
  useEffect(() => {
    if (!wanted || known === null) return;
    ground.current?.goTo(known);
    setWanted(false);
  }, [wanted, known, ground]);
  return (
    <Key
      onPress={() => {
        here.start();
        setWanted(true);
      }}
    >
      {words.whereAmI}
    </Key>
  );
};

const Cross = () => (
  <svg
    class="cross"
    viewBox="0 0 44 44"
    fill="none"
    stroke="currentColor"
    stroke-width="3"
    aria-hidden="true"
  >
    <path d="M22 2V17M22 27V42M2 22H17M27 22H42" />
  </svg>
);

const Scale = (props: { readonly metresPerPx: number }) => {
  const { habits } = useHouse().settings.value;
  const unit = habits.distance;
  const bar = scaleBar(props.metresPerPx, unit, LONGEST_BAR_PX);
  return (
    <span>
      {bar === null ? "\u00a0" : `${writeNumber(bar.length, TONGUE, 2)} ${unit}`}
      <svg
        width={LONGEST_BAR_PX + 4}
        height="10"
        fill="none"
        stroke="currentColor"
        stroke-width="2.5"
        aria-hidden="true"
      >
        {bar === null ? null : <path d={`M2 1V8H${bar.px + 2}V1`} />}
      </svg>
    </span>
  );
};

const North = () => {
  const words = useWordsOf(MAP_WORDS);
  return (
    <span>
      <svg
        width="18"
        height="20"
        viewBox="0 0 18 20"
        fill="none"
        stroke="currentColor"
        stroke-width="2.5"
        aria-hidden="true"
      >
        <path d="M9 19V2M3 8L9 2L15 8" />
      </svg>{" "}
      {words.north}
    </span>
  );
};
