/** Methods of residue and straw, in words, and their symbols. */
import type { STRAW_METHODS } from "../../../science/methods/straw.ts";
import type { MethodWords } from "../method-words.ts";
import type { SymbolWords } from "../symbols.ts";

type Id = keyof typeof STRAW_METHODS;

export const strawMethods: Readonly<Record<Id, MethodWords>> = {
  "photo-points": {
    title: "Points on photos",
    says: "The photo is the sample, its points are what marks are on a line.",
  },
  "cover-mass": {
    title: "Cover from mass, and mass from cover (exponential curve)",
    says: "Pieces overlap more and more, so that each further tonne covers less. The coefficient of a crop is a range.",
  },
  "thickness-mass": {
    title: "Mass of a mulch from its thickness",
    says: "Thickness times how heavy straw lies.",
  },
  "straw-harvest-index": {
    title: "Straw grown (harvest index)",
    says: "What grew above ground less the grain, from the grain's share of it. Chaff and stubble are in it.",
  },
  "straw-per-grain": {
    title: "Straw grown (straw per grain)",
    says: "So much dry straw for each kilogram of grain as weighed.",
  },
  "straw-line": {
    title: "Straw grown (straight line of yield)",
    says: "A line per crop that was drawn for whole countries; a quarter to either side stands in for one field.",
  },
  "cutting-height": {
    title: "Straw below the cut",
    says: "Stems are heavier below than above: a share of their mass stays for a share of their height.",
  },
  "two-day-loss": {
    title: "Rate of loss from lines on two days",
    says: "The mass behind both covers, one over the other. The coefficient of the crop falls out, and the ranges of both days make this range.",
  },
  "residue-decay": {
    title: "Rotting by warmth and wetness (decomposition days)",
    says: "Each day counts as what it lacks most, warmth or wetness; mass goes by a fixed share per such day.",
  },
  "stems-standing": {
    title: "Stems that still stand",
    says: "All of them at first, then a fixed share falls per decomposition day.",
  },
  "mass-left": { title: "Mass left", says: "What lay there less the share that is gone." },
  passes: {
    title: "Cover after passes",
    says: "What each pass or winter leaves, one after another. It acts on cover, never on mass.",
  },
  "rain-erosion": {
    title: "Soil loss by rain under cover (RUSLE surface cover)",
    says: "Loss as a share of that of the same ground bare. A band, since rills and splash answer differently.",
  },
  "wind-erosion": {
    title: "Soil loss by wind under cover",
    says: "Loss as a share of that of the same ground bare, by two curves: one published, one from memory.",
  },
  "straw-ledger": {
    title: "Straw ledger",
    says: "Grown, carried off, grazed, left and brought back per strip and harvest year, all as dry matter.",
  },
  "could-leave": {
    title: "What could leave",
    says: "What must lie at the date that matters, turned back to harvest by the loss until then, is taken from what grew.",
  },
  "leave-as": {
    title: "As a cutting height, swaths or years",
    says: "What a usual baling carries off, against what could leave.",
  },
  "straw-nutrients": {
    title: "Nutrients in straw",
    says: "Content per tonne times tonnes, less what rain washed out.",
  },
  "break-even": {
    title: "Price at which selling breaks even",
    says: "Nutrients and baling per tonne, and what straw would be worth on the field less what mulch costs, over the tonnes sold.",
  },
};

const cover = "share of the ground that is covered";
const mass = "dry mass that lies flat";
const lossShare = "share of the mass that is gone";
const single = "how far a single figure is taken to reach to either side";
const content = "nutrient per tonne of straw";
const grown = "dry mass that grew, grain aside";

export const strawSymbols: Pick<SymbolWords, Id> = {
  "photo-points": {
    p: "share of the ground that is covered, over all photos",
    h_i: "points of one photo that hit",
    m_i: "points of that photo that were read",
    lower: "how much lower photos read than lines in one study, as a share",
  },
  "cover-mass": {
    C: cover,
    A_i: "ground that a kilogram of one residue covers",
    M_i: "dry mass of that residue",
    M: mass,
    A: "ground that a kilogram covers",
    C_most: "cover that is taken for full",
    single,
    C_near: "above this share a few marks change the mass much",
  },
  "thickness-mass": { M: mass, T: "thickness of the mulch", ρ: "dry mass of a cubic metre of mulch" },
  "straw-harvest-index": {
    R: grown,
    G: "grain as weighed",
    D: "dry share of the grain",
    h: "grain's share of all that grew, both dry",
  },
  "straw-per-grain": {
    R: grown,
    G: "grain as weighed",
    r: "dry straw per kilogram of grain as weighed",
    single,
  },
  "straw-line": {
    R: grown,
    a: "straw for each further kilogram of dry grain",
    G: "grain as weighed",
    D: "dry share of the grain",
    b: "straw that grows with no grain at all",
    single,
  },
  "cutting-height": {
    s: "share of the straw that stays below the cut",
    z: "cutting height",
    H: "length of the straw",
    q: "how the mass of stems lies: 1 even, more is heavier below",
  },
  "two-day-loss": {
    m: "mass, but for the coefficient of the crop",
    C: cover,
    k: "share that goes per day, on the log scale",
    m_1: "that mass on the first day",
    m_2: "that mass on the second day",
    d: "days between them",
    t_ν: "Student's t for the degrees of freedom of both days together",
    t_1: "Student's t for the lines of the first day",
    t_2: "Student's t for the lines of the second day",
    k_low: "lower end of the rate",
    k_high: "upper end of the rate",
    l_1: "log mass of the first day",
    l_2: "log mass of the second day",
    L_1: "lower end of the log mass of the first day",
    L_2: "lower end of the log mass of the second day",
    U_1: "upper end of the log mass of the first day",
    U_2: "upper end of the log mass of the second day",
    C_most: "cover that is taken for full",
  },
  "residue-decay": {
    F: "how warm a day is for rotting, 0 to 1",
    T: "mean temperature of the day",
    A: "degrees below freezing at which nothing rots",
    T_0: "temperature at which residue rots fastest",
    W: "how wet residue is, 0 to 1",
    R: "rain of half a month",
    R_0: "rain of half a month that is enough",
    d_R: "days of rain that count as half a month",
    D: "decomposition days",
    min: "the smaller of these",
    f: lossShare,
    k: "share that goes per decomposition day, on the log scale",
    single,
  },
  "stems-standing": {
    S: "share of the stems that still stand",
    k: "how fast stems fall, per decomposition day",
    D: "decomposition days",
    B: "decomposition days until the first stem falls",
    single,
  },
  "mass-left": { M_end: "dry mass that is left", M: "dry mass before", f: lossShare },
  passes: {
    C_end: "cover after the passes",
    C: "cover before them",
    f: lossShare,
    r_1: "share of the cover that the first pass leaves",
    r_2: "share that the next one leaves, and so on",
  },
  "rain-erosion": {
    S: "soil loss as a share of that of bare ground",
    b: "how steeply it falls with each percent of cover",
    C: "ground covered, in percent",
    R_s: "roughness of smooth soil",
    R_u: "roughness of this soil, no less than smooth",
    p: "power of the roughness",
  },
  "wind-erosion": {
    S: "soil loss as a share of that of bare ground, 1 at most",
    a: "factor of the measured curve",
    b: "how steeply that curve falls with each percent of cover",
    c: "how steeply the other curve falls",
    C: "ground covered, in percent",
    C_from: "cover from which on the curve was measured",
    C_to: "cover up to which it was measured",
  },
  "straw-ledger": {
    O: "straw carried off",
    n: "bales",
    w: "weight of a bale",
    D: "dry share of it",
    A: "area of the strip",
    E: "straw grazed",
    h: "head of animals",
    d: "days on the stubble",
    e: "straw that one animal eats in a day",
    L: "straw left",
    G: grown,
  },
  "could-leave": {
    K: "what has to stay at harvest",
    M: "what must lie at the date that matters",
    f: "share of the mass that is gone by then",
    F: "what has to stay for the soil's carbon, where it was published",
    X: "what could leave",
    G: grown,
    F_plough: "the same under the plough",
    single,
  },
  "leave-as": {
    t: "share of all that grew that a usual baling carries off",
    c: "share of it that is chaff",
    s: "share of the straw that stays below the cut",
    p: "share of the swath that the baler picks up",
    x: "share of all that grew that could leave",
    n: "one swath, or one year, in so many",
    n_most: "beyond this, leave all",
  },
  "straw-nutrients": {
    q: "nutrient that leaves",
    n: content,
    n_maize: "the same, of stover and soybean",
    n_PDA: "the same, by PDA",
    n_IPCC: "the same, by IPCC",
    X: "straw that leaves",
    n_end: "nutrient per tonne after rain",
    w: "share that was washed out",
    "P in P₂O₅": "kilograms of P in a kilogram of P₂O₅",
    "K in K₂O": "kilograms of K in a kilogram of K₂O",
    single,
  },
  "break-even": {
    P: "price per tonne at which selling breaks even",
    n_i: "one nutrient per tonne of straw",
    p_i: "price of that nutrient",
    b: "baling and hauling per tonne",
    W: "what straw would be worth on the field, per hectare",
    C: "what mulch costs, per hectare",
    X: "tonnes sold per hectare",
  },
};
