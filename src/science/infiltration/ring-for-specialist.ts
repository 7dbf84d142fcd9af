/** Everything that stands behind the readings of one ring: curves, conductivities, and the class of its rate. */
import type { Result } from "../../record/result.ts";
import type { Conductivity } from "./kfs/conductivity.ts";
import {
  fallingHeadKfsOfRing,
  type SoilAndWater,
  steadyBeerkanOfRing,
  steadyKfsOfRing,
  transientBeerkanOfRing,
} from "./kfs/of-ring.ts";
import { type PermeabilityClass, permeabilityClass } from "./kfs/permeability-class.ts";
import { type RingFits, ringFits } from "./models/ring-fits.ts";
import { ringRate } from "./ring-rate.ts";
import type { RingSet } from "./ring-set.ts";
import type { Soaking } from "./soaking.ts";

/** Equations for the conductivity that the readings of one ring can be put into. */
export const KFS_WAYS = ["steady-ring", "falling-head", "beerkan-steady", "beerkan-transient"] as const;
export type KfsWay = (typeof KFS_WAYS)[number];

/** What a person states of the ground and the water, because no reading says it. */
export interface GroundStated extends SoilAndWater {
  /** Water content when full less water content before, as a share of the volume; null when not known. */
  readonly moistureGap: number | null;
}

/** What a specialist asks of a ring. Plain data: it is worked out off the page and handed over. */
export interface RingForSpecialist {
  readonly fits: Result<RingFits>;
  readonly kfs: Readonly<Record<KfsWay, Result<Conductivity>>>;
  /** Of the rate that enters the mean of the strip; the wetting is never given a class. */
  readonly permeability: Result<PermeabilityClass>;
}

/**
 * Works out all of it for one ring.
 *
 * @returns per part its reason when it cannot be given: as `ringFits`, as the functions of `kfs/of-ring.ts` and
 * as `ringRate`; `science/not-a-moisture-gap` for the falling head while nobody stated the room for water
 *
 * @example
 * ringForSpecialist(soaking, set, { alphaPerMm: 0.012, waterC: null, moistureGap: null }).fits;
 */
export const ringForSpecialist = (
  soaking: Soaking,
  set: RingSet,
  ground: GroundStated,
): RingForSpecialist => {
  const rate = ringRate(soaking);
  const { moistureGap } = ground;
  return {
    fits: ringFits(soaking.curve),
    kfs: {
      "steady-ring": steadyKfsOfRing(soaking, set, ground),
      // Without a first pour nobody has to state the room for water: so that reason comes first.
      "falling-head": fallingHeadKfsOfRing(soaking, set, moistureGap ?? Number.NaN, ground),
      "beerkan-steady": steadyBeerkanOfRing(soaking, set, ground),
      "beerkan-transient": transientBeerkanOfRing(soaking, set, ground),
    },
    permeability: rate.ok ? permeabilityClass(rate.value.mmPerH) : rate,
  };
};
