/** What can be said beside a number, or in its place. */

/** Sentences for every reason and caution of science, by code. */
export const scienceWords: Readonly<Record<string, string>> = {
  "science/accuracy-not-stated": "The device did not say how good its position is.",
  "science/all-alike": "All readings are the same: the ruler is too coarse to show how much they differ.",
  "science/few-hits":
    "Only {hits} {hits|mark|marks} hit in all: the range tends to be too narrow. More lines help.",
  "science/few-misses":
    "Only {misses} {misses|mark|marks} missed in all: the range tends to be too narrow. More lines help.",
  "science/fixes-left-out": "Position readings that name no place on earth were left out: {fixes}.",
  "science/in-step-with-rows":
    "Marks and rows fall in step: the marks meet the same places of every row. Lay the line at another angle.",
  "science/less-than-one-pass":
    "The line does not cross one full machine pass, and residue is thrown unevenly across it.",
  "science/lines-agree-better-than-chance":
    "The {lines} lines agree better than marks falling by chance would. With few lines that is mostly luck: the true range may be wider.",
  "science/lines-agree-to-the-mark":
    "The {lines} lines agree to the mark. A usual spread stands in for theirs.",
  "science/lines-without-marks": "Lines without a mark that was read were left out: {lines}.",
  "science/marks-not-independent":
    "All or none of {marks} {marks|mark|marks} hit. Marks on one line are not independent: they count for {effectiveMarks}.",
  "science/marks-not-read": "{notRead} {notRead|mark was|marks were} not read and {notRead|is|are} left out.",
  "science/moving": "The position was moving: were you standing still?",
  "science/no-degrees-of-freedom": "There are too few lines to work with.",
  "science/no-line-yet": "Before the first line this is a plan only.",
  "science/no-marks-read": "No mark was read yet.",
  "science/no-number": "A number that this rests on cannot be used.",
  "science/no-position": "No position could be taken.",
  "science/not-a-count": "A count that this rests on is not a whole number.",
  "science/not-a-half-width": "Give or take has to lie above 0 and below 50 points.",
  "science/not-a-length": "A length has to be more than nothing.",
  "science/not-a-place": "This position names no place on earth.",
  "science/not-a-probability": "A chance has to lie between 0 and 1.",
  "science/not-a-target": "A target has to lie above 0 and below 100 %.",
  "science/not-an-angle": "An angle to the rows lies between 0 and 90 degrees.",
  "science/nothing-read": "Nothing was read yet.",
  "science/one-line-only":
    "This range speaks of one line only. For the strip it is far too narrow, since marks near each other are alike.",
  "science/too-far-apart": "The two positions lie too far apart to belong to one line.",
  "science/too-few-fixes": "Too few position readings to say how steady they were: {has} of {needs}.",
  "science/too-few-lines": "Too few lines to give a range: it needs {needs}, there {has|is|are} {has}.",
  "science/too-few-samples": "Too few readings to give a range: it needs {needs}, there {has|is|are} {has}.",
  "science/too-many-lines":
    "More than {most} lines would be needed: a rope with more marks helps more than another line.",
};
