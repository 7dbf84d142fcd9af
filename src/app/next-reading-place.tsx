/** Where the next reading stands. Light enough for the first screen: the alarm is loaded when a ring is there. */
import type { ReadonlySignal } from "@preact/signals";
import { useEffect, useState } from "preact/hooks";
import { readClock } from "../device/clock.ts";
import { kindOf, type RecordId } from "../record/ids.ts";
import type { House } from "../screens/parts/house.ts";
import { ReadFailed } from "../screens/parts/reader.ts";
import type { Changed } from "../store/changes.ts";
import type { NextReading } from "./next-reading.tsx";
import "./next-reading.css";
import { wasToCome } from "./reading-to-come.ts";
import { begunLately, mayRing } from "./rings-begun.ts";
import type { RunningRing } from "./running-rings.ts";

interface Loaded {
  readonly View: typeof NextReading;
  readonly rings: ReadonlySignal<readonly RunningRing[] | undefined>;
}

const load = async (house: House, stop: AbortSignal): Promise<Loaded> => {
  const [view, rings] = await Promise.all([import("./next-reading.tsx"), import("./running-rings.ts")]);
  return { View: view.NextReading, rings: rings.watchRunningRings(house, stop) };
};

/** Waits until this device knows of a ring or hole begun lately, by whichever window or file it came. */
const untilBegun = async (house: House, stop: AbortSignal): Promise<void> => {
  const { records } = house;
  /** What the alarm never rings for: a line tells of itself at every touch. */
  const others = new Set<RecordId>();
  const isThere = async (changed: Changed): Promise<boolean> => {
    if (changed !== "everything") {
      const fresh = changed.filter((id) => kindOf(id) === "observation" && !others.has(id));
      if (fresh.length === 0) return false;
      for (const id of fresh) others.add(id);
      const found = await records.many(fresh as RecordId<"observation">[]);
      return found.some(({ body }) => mayRing(body));
    }
    return (await begunLately(records, readClock().wallMs)).length > 0;
  };
  await new Promise<void>((resolve) => {
    const look = (changed: Changed): void => {
      isThere(changed).then(
        (there) => there && resolve(),
        (error: unknown) => {
          if (!(error instanceof ReadFailed)) throw error;
          // The screen below reads too, and says why it cannot.
        },
      );
    };
    const unsubscribe = records.subscribe(look);
    stop.addEventListener("abort", unsubscribe, { once: true });
    look("everything");
  });
};

/**
 * The next reading above every screen, its alarm, and the dimming while rings run. Mounted once, first of
 * all in the shell, and never taken away: the alarm ends with it.
 *
 * @param props see `NextReading`
 */
export const NextReadingPlace = (props: {
  readonly house: House;
  readonly onBoard: boolean;
  readonly bright: boolean;
  readonly hole?: RecordId<"observation"> | undefined;
  readonly boardOf: (visit: RecordId<"visit">) => string;
}) => {
  const { house } = props;
  const [loaded, setLoaded] = useState<Loaded | null>(null);
  useEffect(() => {
    const stop = new AbortController();
    untilBegun(house, stop.signal)
      .then(() => load(house, stop.signal))
      .then(
        (parts) => !stop.signal.aborted && setLoaded(parts),
        // Its code is gone: the bar that offers to load the window again says so.
        () => undefined,
      );
    return () => stop.abort();
  }, [house]);
  if (loaded !== null) return <loaded.View {...props} rings={loaded.rings} />;
  return !props.onBoard && wasToCome() ? <div class="next-reading" aria-hidden="true" /> : null;
};
