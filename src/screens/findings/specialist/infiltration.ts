/** Methods of ring tests, in words, and their symbols. */
import type { INFILTRATION_METHODS } from "../../../science/methods/infiltration.ts";
import type { MethodWords } from "../method-words.ts";
import type { SymbolWords } from "../symbols.ts";

type Id = keyof typeof INFILTRATION_METHODS;

export const infiltrationMethods: Readonly<Record<Id, MethodWords>> = {
  "ring-area": {
    title: "Area inside a ring",
    says: "From two inside diameters at right angles. Between two rings: inside the outer one less outside the inner one.",
  },
  "ring-measured-pour": {
    title: "Depth of a measured pour (single ring, falling head)",
    says: "Volume over the measured area inside the ring. The first pour wets the ground: it is kept and shown, and never given a class or compared.",
  },
  "ring-ruler": {
    title: "Drops of the level between refills (ruler in the ring)",
    says: "Each drop is counted from the last level after a refill.",
  },
  "ring-kept-level": {
    title: "Water kept at one level (constant head)",
    says: "What is poured in to bring the level back is what soaked in. The first filling is not counted.",
  },
  "ring-depth-after": {
    title: "Depth soaked in after a fixed time",
    says: "Straight between the readings on either side of that time, and never beyond the last reading.",
  },
  "ring-last-half-hour": {
    title: "Rate of the last half hour",
    says: "What soaked in during the last half hour that was read, over the time that water stood in the ring.",
  },
  "ring-levelled-off": {
    title: "Does it level off, or still slow? (quasi-steady rate)",
    says: "The rates of the last three intervals agree, the three span at least a third of the time run, none is far longer than another, and each drop is many steps of the ruler. Short intervals next to each other are put together first. The 10 % is published, all else is our own rule. The rate given is all that soaked in during the three over their time.",
  },
  "ring-until-level": {
    title: "How much longer until it levels off (two-term curve)",
    says: "A part that slows with the root of time and a steady part are laid through the readings. A rough guide, at the least.",
  },
  "ring-side-flow": {
    title: "Water going sideways (double ring)",
    says: "The rate between the two rings over the rate inside the inner one. The inner ring is the result.",
  },
  "ring-water": {
    title: "Water for rings",
    says: "Measured litres count as measured; else the rise of the level by the area inside. What is still needed goes by the present rate.",
  },
  "finish-first": {
    title: "Which rings to finish first",
    says: "Next always a ring of the strip with the fewest finished ones, and of these the one that takes the least water.",
  },
  "rings-geometric-mean": {
    title: "Mean of the rings (geometric mean)",
    says: "Rates of rings differ by multiples, so their logarithms are averaged. Rates are averaged, never times.",
  },
  "rings-log-t": {
    title: "Range of the mean of rings (Student's t on logarithms)",
    says: "How much the rings differ from each other says how far the true mean may lie. The ring is the sample.",
  },
  "smallest-ratio": {
    title: "Smallest difference that so many rings can show (two-sample t on logarithms)",
    says: "How many times as fast one strip has to soak in so that it shows in 80 of 100 tries.",
  },
};

const level = "how many of 100 such ranges would hold the truth, as a share";

export const infiltrationSymbols: Pick<SymbolWords, Id> = {
  "ring-area": {
    A: "area inside the ring",
    π: "the circle number, 3.14159",
    d_1: "one inside diameter",
    d_2: "the inside diameter at right angles to it",
    A_b: "area between the two rings",
    A_o: "area inside the outer ring",
    A_w: "area inside the outer edge of the inner ring",
    e: "diameters that differ by more are said, as a share",
  },
  "ring-measured-pour": {
    F: "depth poured in",
    V: "volume poured in",
    A: "area inside the ring",
    r: "rate",
    h: "depth of water left; none once it is gone",
    t: "time from the pour until then",
    t_dry: "longest time without water that the curve goes on over",
  },
  "ring-ruler": {
    F: "depth soaked in",
    h_i: "level at one reading, or after a refill",
    h_j: "level at the reading that follows it",
    t_fill: "longest time of a refill that the curve goes on over",
    e: "smallest step of a ruler that nobody named",
    k: "steps by which two readings may be off",
    r_up: "a rate so many times the one before is said, however it is read",
    t_gap: "least time between readings of two rings",
  },
  "ring-kept-level": {
    F: "depth soaked in",
    V_i: "volume of one pour",
    A: "area inside the ring",
    t_top: "pours within this time of each other count as one",
  },
  "ring-depth-after": {
    F: "depth soaked in at the time asked for",
    F_1: "depth at the reading before it",
    F_2: "depth at the reading after it",
    t: "the time asked for",
    t_1: "time of the reading before it",
    t_2: "time of the reading after it",
  },
  "ring-last-half-hour": {
    r: "rate",
    ΔF: "depth soaked in during the last half hour",
    Δt: "time of it that water stood in the ring",
    t_last: "how long the last half hour is",
  },
  "ring-levelled-off": {
    r_j: "rate of one of the three intervals",
    ΔF_j: "depth soaked in during that interval",
    Δt_j: "length of that interval",
    r_max: "highest of the three rates",
    r_min: "lowest of the three rates",
    r̄: "mean of the three rates",
    q: "most that they may differ, as a share of their mean (published: of the smallest)",
    t_0: "when the three intervals begin",
    t_3: "when the three intervals end",
    g: "least share of the time run that they span",
    k: "least number of steps in each drop",
    e: "smallest step of the ruler",
    r: "rate over the three intervals together",
    Δt_max: "longest of the three intervals",
    Δt_min: "shortest of them",
    u: "most that one may be longer than another, as a multiple",
  },
  "ring-until-level": {
    F: "depth soaked in",
    S: "the part that slows with the root of time",
    t: "time",
    B: "the steady part",
    T: "time from the start until the last third of it agrees within 10 %",
    c: "what that rule comes to for such a curve",
    T_most: "no longer than this is said",
  },
  "ring-side-flow": {
    q: "how many times as much goes in between the rings",
    r_b: "rate between the rings",
    r_i: "rate inside the inner ring",
    q_max: "from where on it is said",
  },
  "ring-water": {
    V: "litres",
    V_i: "litres of one pour",
    A: "area inside, in m²",
    h: "depth, or rise of the level, in mm",
    r: "present rate, in mm/h",
    Δt: "minutes still to run",
  },
  "finish-first": {
    V_j: "litres that a ring still takes",
    W: "litres at hand",
    V_i: "litres of a ring before it in the order",
  },
  "rings-geometric-mean": {
    ḡ: "geometric mean",
    x_i: "one ring",
    n: "number of rings",
  },
  "rings-log-t": {
    y_i: "logarithm of one ring",
    x_i: "one ring",
    ȳ: "mean of the logarithms",
    n: "number of rings",
    t_: "Student's t for n−1 degrees of freedom",
    s: "spread between the logarithms",
    "1−α": level,
    n_least: "rings from which on there is a range",
  },
  "smallest-ratio": {
    s: "spread between rings, on logarithms",
    c: "spread between rings as a share of their mean",
    ν: "degrees of freedom",
    n: "rings on each of the two strips",
    R: "smallest ratio of the two strips that shows",
    t_: "Student's t",
    w: "share of tries in which it shows",
    α: "what the level leaves over: 5 of 100",
    "1−α": level,
  },
};
