/** Sentences for every reason and caution of comparing and the years, by code. */
export const comparisonSentences: Readonly<Record<string, string>> = {
  "science/blocks-not-complete": "Every treatment has to stand once in every block: one is missing.",
  "science/few-worms-wide-range":
    "Only {worms} {worms|worm|worms} on one side. Worms come in whole ones, so the range is wider than it has to be: it holds the truth mostly 97 to 99 times of 100.",
  "science/few-years-wide-range":
    "With {years} years the range is wider than it has to be: it holds the truth 97 to 99 times of 100.",
  "science/ground-and-treatment":
    "There is one strip of each, so nothing can tell what the ground did from what was done to it. This speaks of these two places only.",
  "science/least-stands-in":
    "In {values} {values|place|places} nothing was seen, and a ratio has no place for nothing: the least that could have been seen stands in. The ratio is then one of typical places; that of the means may lie outside its range, the more often the more places there are.",
  "science/likeness-not-known":
    "One of the conditions was written down on one side only: nobody can know whether it is like with like.",
  "science/no-ratio-of-nothing": "Nothing was seen on one side, so there is no ratio.",
  "science/no-spread-seen":
    "All of these are alike or differ by the same, so how much they vary is not known yet, and there is no range.",
  "science/no-worthwhile-difference":
    "Say which difference would be worth while: more than none, or more than one time as many.",
  "science/nothing-in-either": "Nothing was found in either place, so there is no ratio.",
  "science/one-time-only": "All readings are of one year: a change needs two.",
  "science/pairs-of-one-place-averaged":
    "{places} {places|place has|places have} several pairs. They count as one, by their mean.",
  "science/range-if-lopsided":
    "A range from {values} values holds the truth 95 times of 100 if they spread evenly to both sides. Where a few are far larger than the rest it is less, mostly 85 to 92 times.",
  "science/range-without-end":
    "There were so few, and they lay so unevenly, that the range has no upper end. More holes help.",
  "science/ranges-for-all-pairs":
    "There are {pairs} pairs to look at, and some lie apart by chance. Each range is widened so that all together hold the truth 95 times of 100, where the values spread evenly; each by itself 98 times and more.",
  "science/ratio-turned": "Nothing was found in the second place: this is the second over the first.",
  "science/readings-lie-close":
    "Readings of one line lie close together and are alike: for the strip this range is too narrow.",
  "science/several-spots":
    "These readings belong to several spots or seasons: each has to be looked at by itself first.",
  "science/spots-are-sub-samples":
    "Spots of one strip are alike: {spots} spots on {strips} strips count for about {worth}. Every strip enters as one number.",
  "science/spots-share-the-years":
    "The {spots} series of this field share the weather of each year: many spots do not make up for few years.",
  "science/time-repeated": "One spot has several readings in one year: one number a year is needed.",
  "science/too-few-blocks": "Too few blocks to compare: it needs {needs}, there {has|is|are} {has}.",
  "science/too-few-pairs-for-five-percent":
    "Even where all pairs point the same way, {pairs} {pairs|pair does|pairs do} so by chance alone in {percent} of 100 cases: six pairs are the least that can come below 5.",
  "science/too-few-strips-for-five-percent":
    "Even where no strip of one kind lies among those of the other, {strips} strips in all do so by chance alone in {percent} of 100 cases.",
  "science/too-few-times-for-a-range": "Too few years for a range of the change per year.",
  "science/too-few-to-compare": "Too few to give a range: it needs {needs}, there {has|is|are} {has}.",
  "science/too-few-treatments":
    "There is nothing to compare with: it needs {needs}, there {has|is|are} {has}.",
  "science/too-few-years-for-five-percent":
    "With {years} years the order of the readings can never get below {percent} %: {needs} years are the least that can reach 5 %.",
  "science/resampled-range-too-narrow":
    "The range comes from drawing anew from {values} {values|value|values}: with so few it is too narrow.",
  "science/too-many-samples":
    "More than {most} would be needed for this: it is too small a difference to look for.",
  "science/unlike-depths": "Not like with like: the depths differ by more than a tenth.",
  "science/unlike-efforts":
    "Not like with like: people and minutes of sorting differ by more than half as much again.",
  "science/unlike-harvest-years": "Not like with like: these are different harvest years.",
  "science/unlike-mulch-in-ring": "Not like with like: the mulch inside the rings was not treated alike.",
  "science/unlike-places": "Not like with like: the places against the row differ, or their shares do.",
  "science/unlike-pours":
    "Not like with like: a first pour wets the ground and is never compared with a later one.",
  "science/unlike-seasons": "Not like with like: these were read in different seasons.",
  "science/unlike-sizes": "Not like with like: rings or holes of different size read differently.",
  "science/unlike-ways": "Not like with like: these were read in different ways.",
  "science/unlike-wetness": "Not like with like: the ground was not equally wet.",
  "science/values-from-paper":
    "{values} {values|value comes|values come} from paper, without the readings behind {values|it|them}.",
  "science/values-left-out": "{values} {values|value|values} that cannot be used {values|was|were} left out.",
  "science/years-may-run-together":
    "The range takes each of the {years} years for itself. Where wet or dry years follow each other it is too narrow, and holds the truth {least} to {most} times of 100.",
  "science/years-with-several":
    "In {values} {values|year|years} a spot was read several times: the middle one counts.",
};
