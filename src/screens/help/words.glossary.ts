import type { TradeWords } from "../parts/trade.ts";

/** One word of the trade, what it means, and how science says it. */
export interface Term {
  readonly word: string;
  readonly means: string;
  readonly science: string;
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

/** The words on the screens, with their scientific terms (common usage of the fields named). */
export const glossary = (trade: TradeWords): readonly Term[] => {
  const { saddle, levelledOff, shelter, spade } = trade;
  return [
    {
      word: "Ground cover",
      means: "Share of the ground where a raindrop meets residue or living green before soil.",
      science: "fractional ground cover; surface cover",
    },
    {
      word: "Residue",
      means: `What the last crops left: straw, stalks, leaves, ${trade.stubble}.`,
      science: "crop residue; plant litter",
    },
    {
      word: "Cover crop",
      means: "A crop grown to cover and feed the ground, not for harvest.",
      science: "cover crop; green manure",
    },
    {
      word: "Line",
      means: "A rope with marks, laid across a strip and read mark by mark.",
      science: "line-point transect; line transect",
    },
    {
      word: "Mark",
      means: "A point on the rope or tape that is read: a knot, a band of paint, a number.",
      science: "sampling point",
    },
    {
      word: "Hole",
      means: `A ${spade} hole of known size whose soil is sorted for worms.`,
      science: "hand-sorted monolith",
    },
    { word: "Square", means: "The outline on the ground that is dug or cut.", science: "quadrat" },
    {
      word: capital(saddle),
      means: "The thick ring around a grown worm.",
      science: "clitellum",
    },
    { word: "Young", means: `A worm without a ${saddle}.`, science: "juvenile" },
    { word: "Surface worm", means: "Lives in mulch and the topmost soil.", science: "epigeic" },
    { word: "Topsoil worm", means: "Lives in the topsoil and burrows sideways.", science: "endogeic" },
    {
      word: "Deep burrower",
      means: "Lives in an upright burrow of its own and feeds at the surface.",
      science: "anecic",
    },
    {
      word: "Mustard water",
      means: "Brings worms up from below the hole.",
      science: "chemical extraction with allyl isothiocyanate",
    },
    {
      word: "Ring",
      means: "A short tube driven into the ground and filled with water.",
      science: "ring infiltrometer, single or double",
    },
    {
      word: "Soaked in",
      means: "Depth of water that the ground took since the start.",
      science: "cumulative infiltration",
    },
    { word: "Rate", means: "How fast water soaks in just now.", science: "infiltration rate" },
    {
      word: capital(levelledOff),
      means: "The rate hardly changes any more.",
      science: "quasi-steady infiltration",
    },
    { word: "Still slowing", means: "The rate goes on falling.", science: "transient infiltration" },
    {
      word: "One measured pour",
      means: "A known amount, and how long until it is gone.",
      science: "falling head, one depth",
    },
    { word: "Ruler in the ring", means: "The falling level is read.", science: "falling head" },
    {
      word: "Kept at one level",
      means: "The water is topped up and its amount written down.",
      science: "constant head",
    },
    {
      word: "Burrow",
      means: "A hole of a worm, root or animal that carries water.",
      science: "biopore; macropore",
    },
    {
      word: "When ponding starts",
      means: "The moment in a storm when water begins to stand.",
      science: "time to ponding",
    },
    {
      word: "Runs off first",
      means: "Which of two places sheds water earlier in a storm.",
      science: "infiltration-excess runoff",
    },
    {
      word: "Range",
      means: "Where the true value lies, as far as the samples can say.",
      science: "confidence interval",
    },
    {
      word: "Give or take",
      means: "Half of the range, on either side of the value.",
      science: "half-width of the confidence interval",
    },
    {
      word: "Clearly different",
      means: "Where there is no difference, chance alone says so about once in 20 times.",
      science: "statistically significant at the 5 % level",
    },
    {
      word: "Could still be chance",
      means: "The samples differ no more than chance makes them differ now and then.",
      science: "not statistically significant",
    },
    {
      word: "Strip",
      means: "A part of a field on which one thing was done.",
      science: "plot; treatment unit",
    },
    { word: "Rep", means: "The same thing done again on another strip.", science: "replicate; block" },
    {
      word: "Visible edge",
      means: "Where something changes along a line in the field: straw left here, carried off there.",
      science: "paired-site contrast",
    },
    {
      word: "Old-grass spot",
      means: "Ground of this farm under grass for many years: its own yardstick.",
      science: "reference site",
    },
    {
      word: "Marked spot",
      means: "A place that is found again and measured again every season.",
      science: "permanent sampling point",
    },
    {
      word: "Guess",
      means: "What was expected before the first test of a strip. It is kept beside the result.",
      science: "visual estimate made beforehand",
    },
    {
      word: "Position",
      means: "Where something was measured, taken standing still.",
      science: "geographic coordinates, WGS 84",
    },
    { word: "Cut and weigh", means: "All growth of a square, dried.", science: "above-ground dry matter" },
    {
      word: "Terminated",
      means: "A cover crop that was ended: rolled and crimped, mown, frosted or sprayed.",
      science: "cover-crop termination",
    },
    { word: capital(shelter), means: "Trees or bushes that slow the wind.", science: "windbreak" },
  ];
};
