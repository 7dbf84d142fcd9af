/** Methods of positions and plans, in words, and their symbols. */
import type { PLANS_METHODS } from "../../../science/methods/plans.ts";
import type { MethodWords } from "../method-words.ts";
import type { SymbolWords } from "../symbols.ts";

type Id = keyof typeof PLANS_METHODS;

export const plansMethods: Readonly<Record<Id, MethodWords>> = {
  "field-area": {
    title: "Area of a field (Lambert's azimuthal equal-area map of WGS 84)",
    says: "The corners are laid on a map on which areas are true, and the area inside is added up there. A round earth, as simple maps reckon, would make the same field 0.45 % larger at the equator, 0.38 % smaller at 52° and 0.56 % smaller at 60°. How well the corners were walked is not in the number.",
  },
  geodesic: {
    title: "Distance and direction on the ellipsoid (Vincenty's inverse formula)",
    says: "The shortest way over the earth between two places, at any distance, and the direction of setting out. On a round earth the same way would be off by up to 0.56 %: too long northwards at the equator, too short everywhere beyond 50°.",
  },
  "true-magnetic": {
    title: "True and magnetic bearings (declination)",
    says: "Where the needle points east of true north the declination is above 0 and is added to what the compass shows; where it points west it is taken off.",
  },
  headland: {
    title: "Clear of the headland (distance to the nearest edge)",
    says: "A point counts when no edge is nearer than the headland is wide. No shrunken outline is drawn.",
  },
  "fields-near": {
    title: "Fields near a position",
    says: "The nearest by their boundary, or by where earlier measurements were made.",
  },
  "random-points": {
    title: "Random points per strip (stratified, with a least distance)",
    says: "All places of a strip are equally likely; a point too near to one before it is drawn again. The same seed gives the same points.",
  },
  "w-walk": {
    title: "Walk in the shape of a W",
    says: "Five turns that lean against the headland, with stops at equal steps. It spreads stops over the field and is not random.",
  },
  "pairs-along-edge": {
    title: "Pairs along a visible edge (equal steps from a random start)",
    says: "Two spots at the same distance to either side of the edge, so that they share their ground.",
  },
  "walking-order": {
    title: "Shortest walking order (all ways for few spots, 2-opt for many)",
    says: "Straight ways from spot to spot. For up to 13 spots no shorter order exists.",
  },
  "day-plan": {
    title: "What fits into a day",
    says: "Hours, hands, water and rings at hand shared among the tests wanted, the same number on every strip, three of each first.",
  },
};

const ellipsoid = {
  a: "half the longer axis of the earth",
  "1/f": "how little the earth is flattened, inverted",
};
const steps = {
  s_j: "way up to stop or pair number j",
  j: "number of the stop or pair, from 1",
  L: "length of the whole way",
  n: "number of stops or pairs",
};

export const plansSymbols: Pick<SymbolWords, Id> = {
  "field-area": {
    ...ellipsoid,
    q: "area of the earth up to a latitude, as a bare number",
    q_p: "the same up to the pole",
    e: "eccentricity of the ellipsoid",
    φ: "latitude",
    β: "latitude on the sphere that has the area of the earth",
    β_1: "that latitude at the middle of the field",
    R: "radius of the sphere that has the area of the earth",
    B: "scale of the map at a corner",
    Δλ: "longitude less that of the middle, the short way round",
    D: "what makes the scale at the middle the same to all sides",
    x: "metres east of the middle",
    y: "metres north of the middle",
    A: "area of the field",
    x_i: "metres east, one corner",
    y_i: "metres north, one corner",
    x_j: "metres east, the next corner",
    y_j: "metres north, the next corner",
  },
  geodesic: {
    ...ellipsoid,
    tan: "the tangent",
    U: "reduced latitude",
    U_1: "reduced latitude of the first place",
    U_2: "reduced latitude of the second place",
    f: "flattening of the earth",
    φ: "latitude",
    λ: "difference of longitude on the auxiliary sphere",
    L: "difference of longitude, the short way round",
    C: "a small term of the flattening",
    α: "direction of the way where it crosses the equator",
    σ: "length of the way on the auxiliary sphere, as an angle",
    m: "cosine of twice the angle from the equator to the middle of the way",
    s: "distance",
    b: "half the shorter axis of the earth",
    A: "a term near 1 of the flattening",
    Δσ: "a small correction of the angle",
    θ: "direction of setting out, from true north",
  },
  "true-magnetic": {
    T: "true bearing",
    M: "what the compass shows",
    D: "declination, above 0 where the needle points east of true north",
  },
  headland: { d_k: "distance to each edge", h: "width of the headland" },
  "fields-near": {
    d: "distance to the boundary or to the nearest earlier measurement",
    d_0: "fields farther than this are not offered",
  },
  "random-points": {
    P: "the chance of",
    x: "a place of the strip clear of the headland",
    A: "area of all such places",
    d_ij: "distance between two points",
    s: "least distance wanted",
    rounds: "how often a strip is begun anew",
  },
  "w-walk": {
    ...steps,
    u_k: "where a turn lies along the field, as a share",
    k: "number of the turn, from 0 to 4",
  },
  "pairs-along-edge": {
    ...steps,
    e: "left out at each end of the edge",
    r: "the random start, from 0 to 1",
    d_left: "distance of the left spot to the edge",
    d_right: "distance of the right spot to the edge",
  },
  "walking-order": {
    L: "length of the way",
    d_j: "distance to the next spot",
    n_exact: "up to so many spots all ways are compared",
  },
  "day-plan": {
    S: "number of strips",
    n_t: "tests of one kind on each strip",
    m_t: "minutes of one person for a test",
    m_line: "minutes for a line",
    m_hole: "minutes for a hole",
    m_r: "minutes of one person for a ring",
    w: "minutes on foot to each test",
    H: "hours",
    P: "people",
    n_r: "rings on each strip",
    n_most: "most rings asked for on a strip",
    V: "litres for a ring",
    W: "litres at hand",
    k: "rounds of rings that fit into the day",
    r: "minutes that a ring runs by itself",
    R: "rings that can run at the same time",
  },
};
