/** Methods of water, nitrogen, shelter and cover-crop mass, in words, and their symbols. */
import type { WATER_METHODS } from "../../../science/methods/water.ts";
import type { MethodWords } from "../method-words.ts";

type Id = keyof typeof WATER_METHODS;

export const waterMethods: Readonly<Record<Id, MethodWords>> = {
  "vapour-pressure": {
    title: "What air holds (saturation and actual vapour pressure)",
    says: "Warm air holds more water. The mean of warmest and coldest is taken of the pressures, never of the temperatures.",
  },
  "air-pressure": {
    title: "Air pressure by height (psychrometric constant)",
    says: "Air is thinner higher up, and water evaporates more easily in it.",
  },
  "wind-at-2-m": {
    title: "Wind at 2 m",
    says: "Wind measured higher up is slowed down to what it is at 2 m over grass.",
  },
  "extraterrestrial-radiation": {
    title: "Sun above the air (extraterrestrial radiation)",
    says: "From latitude and the day of the year.",
  },
  "net-radiation": {
    title: "What grass keeps of the sun (net radiation)",
    says: "Sunshine, or how far apart day and night are, says what reaches the ground; part is sent back and part radiates away.",
  },
  "penman-monteith": {
    title: "Reference evapotranspiration (FAO-56 Penman–Monteith)",
    says: "What well-watered short grass gives off, from warmth, sun, wind and humidity. What was not read is replaced by a usual range.",
  },
  hargreaves: {
    title: "Reference evapotranspiration from temperatures (Hargreaves)",
    says: "From the warmest and the coldest of the day alone, with a range to either side.",
  },
  "two-stage-drying": {
    title: "Bare soil drying (two stages)",
    says: "After rain the surface first gives off as much as the air takes, then ever less until it is dry.",
  },
  "mulch-cut": {
    title: "By how much mulch cuts evaporation",
    says: "At the low end nothing until three quarters are covered, at the high end 5 % for each 10 % covered.",
  },
  "kept-by-mulch": {
    title: "Water that mulch keeps",
    says: "What bare soil would have lost in the period, times the cut. The other form of the rule makes the evaporable water smaller.",
  },
  "available-water": {
    title: "Plant-available water (total and readily available)",
    says: "What roots can reach between field capacity and wilting point, and how much of it a crop takes before it misses it.",
  },
  "water-that-counts": {
    title: "Extra water that counts",
    says: "No more than the root zone misses, times the person's own figure for a millimetre.",
  },
  "mixture-c-n": {
    title: "C:N of a mixture",
    says: "All carbon over all nitrogen. A mean of the ratios would be wrong. Where a table prints one figure a fifth to either side stands in.",
  },
  "nitrogen-line": {
    title: "Nitrogen of a cover crop in the first weeks",
    says: "Straight lines over the percentage of nitrogen, by two editions of one leaflet.",
  },
  "nitrogen-tie-up": {
    title: "Nitrogen tied up or set free",
    says: "By the microbes' own diet if all of it rotted, and by the line: the range holds both.",
  },
  "first-season-nitrogen": {
    title: "Nitrogen of the first season",
    says: "A half or a quarter of the nitrogen, by how and where the cover crop is ended.",
  },
  "shelter-wind": {
    title: "Wind behind trees",
    says: "Straight lines between the figures of two tables, which differ.",
  },
  "shelter-zones": {
    title: "Zones behind trees",
    says: "Each stretch of a row pushed down the wind by so many tree heights.",
  },
  "shelter-net": {
    title: "What trees give and take on the field",
    says: "Gain in the sheltered zone, less the loss beside the trees and the land that they take.",
  },
  "quadrat-mass": {
    title: "Mass from frames (ratio estimator, t range on logs)",
    says: "All dry mass over all area; how much the frames differ says how far the true mass may lie.",
  },
  "quadrat-counts": {
    title: "Plants per square metre (ratio estimator, t range on logs)",
    says: "All plants over all area, with the spread between frames.",
  },
  "quadrat-none-found": {
    title: "Bound when no frame has a plant (exact, one-sided)",
    says: "So many plants could be there, growing by chance, and still be missed by all frames 5 times of 100.",
  },
  "frame-against-rows": {
    title: "Frame against rows",
    says: "A frame that is no whole number of rows wide catches a row too few or too many.",
  },
  "weed-statements": {
    title: "What was published of mass and weeds",
    says: "Each statement with the mass that it was made for; nothing is worked out between them.",
  },
  "rolling-stage": {
    title: "Stage for rolling (Zadoks scale)",
    says: "From the start of flowering, and before the grain turns milky.",
  },
};

export { waterSymbols } from "./water-symbols.ts";
