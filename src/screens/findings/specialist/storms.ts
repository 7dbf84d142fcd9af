/** Methods of infiltration models and storms, in words, and their symbols. */
import type { STORMS_METHODS } from "../../../science/methods/storms.ts";
import type { MethodWords } from "../method-words.ts";
import type { SymbolWords } from "../symbols.ts";

type Id = keyof typeof STORMS_METHODS;

export const stormsMethods: Readonly<Record<Id, MethodWords>> = {
  "fit-kostiakov": {
    title: "Kostiakov's curve (power of time)",
    says: "Laid through the depths themselves, never through their logarithms.",
  },
  "fit-kostiakov-lewis": {
    title: "Kostiakov and Lewis's curve (power of time with a steady part)",
    says: "The steady part is never below 0. Where the readings would have it so, this is Kostiakov's curve.",
  },
  "fit-philip": {
    title: "Philip's two-term curve",
    says: "A part that slows with the root of time, and a steady part. Neither is below 0.",
  },
  "fit-horton": {
    title: "Horton's curve",
    says: "A rate that dies away towards a steady one, laid through the depths directly.",
  },
  "fit-green-ampt": {
    title: "Curve of Green and Ampt",
    says: "A wetting front drawn down by suction and by its own weight; the curve is solved at each reading. Without a steady part only S is left.",
  },
  "variable-projection": {
    title: "Least squares without a start value (variable projection)",
    says: "All unknowns but one are solved for exactly; the one left is looked for over its whole span. The same readings always give the same curve.",
  },
  "curve-errors": {
    title: "Standard errors of a curve",
    says: "From how much each unknown moves the curve. Depths add up, so an error of one reading lives on in the later ones: these errors are rather too small.",
  },
  "curve-aicc": {
    title: "Which curve the readings speak for (Akaike's criterion, corrected)",
    says: "The lowest is chosen. Differences below 2 say nothing, and no curve is right.",
  },
  "kfs-falling-head": {
    title: "Conductivity from one pour (simplified falling head)",
    says: "The first pour on ground whose wetness is known, with water going straight down inside the ring.",
  },
  "kfs-steady-ring": {
    title: "Conductivity from a steady rate (single ring)",
    says: "Takes out what depth of water, suction and sideways flow add to the rate of a ring.",
  },
  "kfs-two-heads": {
    title: "Conductivity from two depths of water (two heads)",
    says: "Needs no kind of soil, but small errors of the rates become large.",
  },
  "kfs-beerkan-steady": {
    title: "Conductivity from the steady end of a Beerkan run",
    says: "From the steady rate. Not to be mixed with the transient equation.",
  },
  "kfs-beerkan-transient": {
    title: "Conductivity from the whole Beerkan run (transient)",
    says: "From the slope of depth over root of time. Not to be mixed with the steady equation.",
  },
  "kfs-at-20": {
    title: "Conductivity at 20 °C",
    says: "Cold water is thicker. Shown beside the value as it was measured, never in its place, and never used for classes.",
  },
  "permeability-class": {
    title: "Permeability class",
    says: "Names for the permeability of saturated soil. A value on a break belongs to the faster class.",
  },
  "time-compression": {
    title: "Would a storm soak in? (time compression)",
    says: "What soil can take depends on what it has taken, not on the clock. Solved exactly inside each step of the storm.",
  },
  "green-ampt-ponding": {
    title: "Ponding on a Green and Ampt soil (Mein and Larson)",
    says: "The same for a soil that is known by its texture alone.",
  },
  "storm-triangular": {
    title: "Triangular storm",
    says: "Rises evenly to its peak and falls evenly to nothing.",
  },
  "storm-24-h-shape": {
    title: "Published shapes of a storm of 24 hours",
    says: "On the steps of the published tables; a coarser step flattens the peak.",
  },
  "storm-rings-mean": {
    title: "Mean depth over the rings of a strip (Student's t)",
    says: "The ring is the sample. Held between nothing and the whole storm; with few rings rather too narrow.",
  },
  "storm-order": {
    title: "Which strip runs off first",
    says: "By when half of its rings run off, with the share of pairs of rings that agree.",
  },
  "curve-number": {
    title: "Runoff by curve number",
    says: "A handbook figure for small catchments, as a cross-check.",
  },
  "curve-number-of-ground": {
    title: "Curve number of mixed, drier or wetter ground",
    says: "The mean by area of several kinds of ground; turned down before dry ground and up before wet.",
  },
};

const level = "how many of 100 such ranges would hold the truth, as a share";
const F = "depth soaked in";
const t = "hours since water was first in the ring";
const alpha = "how strongly the soil draws water in by suction, by its kind";
const deep = "a ring that stands deeper is said";
const conductivity = "conductivity of the soil full of water";
const shape = {
  g: "shape of the ring in the ground",
  C_1: "factor of the depth of the ring",
  C_2: "factor of the radius of the ring",
  d: "how deep the ring stands",
  a: "radius of the ring",
} as const;

export const stormsSymbols: Pick<SymbolWords, Id> = {
  "fit-kostiakov": { F, a: "depth soaked in after one hour", t, b: "how it slows, between 0 and 1" },
  "fit-kostiakov-lewis": {
    F,
    a: "depth of the slowing part after one hour",
    t,
    b: "how it slows, between 0 and 1",
    c: "steady part",
  },
  "fit-philip": { F, S: "sorptivity, the part that slows with the root of time", t, A: "steady part" },
  "fit-horton": {
    F,
    f_c: "rate in the end",
    f_0: "rate at the beginning",
    k: "how fast the rate dies away",
    t,
  },
  "fit-green-ampt": {
    F,
    M: "suction and depth of water, times the room in the soil",
    K: conductivity,
    t,
    ψ: "suction at the wetting front",
    h: "depth of water in the ring",
    θ_d: "room for water in the soil, as a share of its volume",
    S: "sorptivity, when that is all the readings hold",
  },
  "variable-projection": { F_i: "depth at one reading", F: "depth of the curve at that time" },
  "curve-errors": {
    s: "what is left over at a reading, on average",
    SSE: "sum of the squares of what is left over",
    n: "number of readings",
    p: "number of unknowns that are free",
    V: "variances of the unknowns, on its diagonal",
    J: "how much each unknown moves the curve at each reading",
    J_T: "the same, turned",
  },
  "curve-aicc": {
    AIC_c: "the criterion",
    n: "number of readings",
    SSE: "sum of the squares of what is left over",
    κ: "unknowns with the spread counted",
    p: "number of unknowns that are free",
  },
  "kfs-falling-head": {
    K: conductivity,
    θ_d: "room for water in the soil, as a share of its volume",
    t: "time until the water was gone",
    D: "depth poured",
    "α*": alpha,
  },
  "kfs-steady-ring": {
    K: conductivity,
    q: "steady rate",
    H: "depth of water in the ring",
    "α*": alpha,
    ...shape,
    H_least: "less water than this is said",
    d_least: "a ring less deep than this is said",
  },
  "kfs-two-heads": {
    K: conductivity,
    q_1: "steady rate under the lower water",
    q_2: "steady rate under the higher water",
    H_1: "the lower depth of water",
    H_2: "the higher depth of water",
    φ: "flow by suction",
    "α*": alpha,
    ...shape,
  },
  "kfs-beerkan-steady": {
    K: conductivity,
    q: "steady rate",
    γ: "shape of the wetting front",
    γ_w: "a constant of the steady flow",
    a: "radius of the ring",
    "α*": alpha,
    d_most: deep,
  },
  "kfs-beerkan-transient": {
    F,
    t: "time since the first pour",
    b_0: "where the straight line begins",
    b_1: "slope of the straight line",
    K: conductivity,
    B: "factor of the slope",
    C: "factor of the edge",
    a: "radius of the ring",
    "α*": alpha,
    d_most: deep,
  },
  "kfs-at-20": {
    K_20: "conductivity with water of 20 °C",
    K: "conductivity as measured",
    μ: "viscosity of the water as it was",
    μ_20: "viscosity of water of 20 °C",
    x: "temperature on the scale of the formula",
    T: "temperature of the water in °C",
    T_0: "0 °C on the absolute scale",
    T_1: "scale of the formula",
    a_i: "factor of one of four terms",
    b_i: "power of one of four terms",
  },
  "permeability-class": {
    K: "rate",
    K_class: "lowest rate of the class",
    K_soil: "usual rates by soil, beside it",
  },
  "time-compression": {
    f: "rate that the soil can take",
    F_p: "soaked in when water begins to stand",
    i: "intensity of the rain",
    t_p: "time until then, under even rain",
    F_1: "soaked in at the beginning of a step",
    F_2: "soaked in at its end",
    F: "soaked in, by the curve",
    t: "time of the curve at a depth",
    Δt: "length of the step",
    R: "ran off",
    P: "rain",
  },
  "green-ampt-ponding": {
    F_p: "soaked in when water begins to stand",
    K: conductivity,
    M: "suction times the room in the soil",
    i: "intensity of the rain",
    F,
    t: "time",
    t_p: "time until water begins to stand",
  },
  "storm-triangular": {
    i_p: "intensity at the peak",
    P: "depth of the storm",
    D: "how long it lasts",
    t_r: "when the peak comes",
    r: "the same as a share of how long it lasts",
    n_s: "straight pieces on each side",
  },
  "storm-24-h-shape": {
    P: "depth of the storm",
    t: "time",
    s: "share fallen by then, from the table",
  },
  "storm-rings-mean": {
    x̄: "mean over the rings",
    x_i: "one ring",
    n: "number of rings",
    t_: "Student's t for n−1 degrees of freedom",
    s: "spread between the rings",
    "1−α": level,
  },
  "storm-order": {
    t_s: "when the strip runs off",
    median: "the middle one",
    t_i: "when one ring runs off",
    q: "share of pairs that agree",
    w_ij: "1 when the ring of the first strip runs off before the ring of the second, a half when together",
    n_1: "rings of the first strip",
    n_2: "rings of the second strip",
    q_sure: "share from which on the order is called clear",
  },
  "curve-number": {
    Q: "runs off",
    P: "rain",
    S: "what the ground can hold back",
    CN: "curve number",
    λ: "share of S that is held before any runs off",
    S_1: "first number of the scale",
    S_0: "second number of the scale",
  },
  "curve-number-of-ground": {
    CN: "curve number of ground as wet as on the average",
    A_i: "area of one kind of ground",
    CN_i: "its curve number",
    CN_dry: "curve number of drier ground",
    d_1: "factor for drier ground",
    d_2: "bend for drier ground",
    CN_wet: "curve number of wetter ground",
    w_1: "factor for wetter ground",
    w_2: "bend for wetter ground",
  },
};
