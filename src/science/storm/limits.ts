/** What has to stand beside every depth of a storm that was worked out from rings. */
import type { Caution } from "../estimate.ts";

/**
 * A ring is a point · no slope · no crusting · flooding reads about twice what rain does (de Laat & Savenije,
 * p. 67) · a small ring overstates · not for drains or structures.
 */
export const STORM_LIMITS: readonly Caution[] = [
  { code: "science/storm-ring-is-a-point", facts: {} },
  { code: "science/storm-no-slope", facts: {} },
  { code: "science/storm-no-crusting", facts: {} },
  { code: "science/storm-flooding-reads-high", facts: {} },
  { code: "science/storm-small-ring-overstates", facts: {} },
  { code: "science/not-for-design", facts: {} },
];
