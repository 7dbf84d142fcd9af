/** The alarm of this device: its clocks, its timer, its sound and its vibration. */
import type { AlarmParts } from "./alarm.ts";
import { showBadge } from "./badge.ts";
import { openClaims } from "./claims.ts";
import { readClock, watchPauses } from "./clock.ts";
import { bellState, strikeBell } from "./sound.ts";
import { vibrateForDue } from "./vibrate.ts";

/** How an alarm may make itself noticed. */
export interface AlarmManner {
  readonly sound: boolean;
  readonly vibrate: boolean;
}

/**
 * What `startAlarm` needs, from this device.
 *
 * @param manner asked at each alarm, so that a setting changed meanwhile counts at once
 */
export const alarmParts = (manner: () => AlarmManner): AlarmParts => {
  let badge: number | null = null;
  return {
    readClock,
    watchPauses,
    later: (job, inMs) => {
      const timer = setTimeout(job, inMs);
      return () => clearTimeout(timer);
    },
    claim: openClaims(
      () => document.visibilityState === "visible" && (!manner().sound || bellState() === "ready"),
    ),
    ring: () => {
      const { sound, vibrate } = manner();
      if (sound) void strikeBell();
      if (vibrate) vibrateForDue();
    },
    showBadge: (count) => {
      if (count === badge) return;
      badge = count;
      showBadge(count);
    },
  };
};
