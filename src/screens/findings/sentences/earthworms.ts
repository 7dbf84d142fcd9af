/** Sentences for the reasons and cautions of spade holes. */

export const earthwormSentences: Readonly<Record<string, string>> = {
  "science/all-empty": "No hole has a worm: there is no spread to speak of.",
  "science/depth-unlike-last-time":
    "The holes are not as deep as last time: counts from unlike depths do not compare.",
  "science/depths-differ": "Holes of different depths are in this mean.",
  "science/efforts-differ": "People and minutes of sorting differ much between these holes.",
  "science/efforts-unlike-last-time": "People and minutes of sorting differ much from last time.",
  "science/exact-share-wide":
    "With {holes} holes the range of a share is wider than it has to be: it holds the truth 98 times of 100 and more.",
  "science/few-holes-may-miss-patches":
    "{holes} holes may all have missed the patches without worms, or the crowded ones. If one hole in ten holds ten times as many as the others, the range of 5, 10 and 20 holes holds the truth about 50, 65 and 85 times of 100, and of 30 about 93.",
  "science/guide-by-hand-only":
    "This guide counts worms found by hand: those that mustard water drove up are left out of this reading.",
  "science/guide-other-depth": "The holes are not as deep as those of this guide.",
  "science/guide-other-hole-size": "The holes are not the size of those of this guide.",
  "science/guide-other-land-use": "This guide is for other land.",
  "science/guide-other-season": "This guide is for another time of the year.",
  "science/guide-season-not-known":
    "This guide is for one time of the year, and without a position nobody can tell the season.",
  "science/guide-states-no-hole": "This guide states no size or depth of hole.",
  "science/guide-states-no-season": "This guide states no time of the year.",
  "science/guide-supposes-wet-pasture":
    "This guide was made for permanent pasture where much rain falls, counted after 20 to 25 mm (about 1 in) of it. Where it is drier or was cropped lately, fewer worms are no bad sign.",
  "science/guide-without-level": "This guide says nothing of so few worms.",
  "science/guides-disagree":
    "Guides disagree: one asks for about {times} times as many worms as another. Name the guide, and compare with the old-grass spot first.",
  "science/hole-size-unlike-last-time": "The holes are not the size of those of last time.",
  "science/hole-sizes-differ": "The holes are not one size: use worms per m².",
  "science/hole-sizes-mixed": "Holes of different sizes are in this mean, and small ones vary more.",
  "science/holes-alike":
    "All {holes} holes are alike, which is mostly luck. The spread of worms that lie by chance stands in for theirs.",
  "science/counts-in-clumps":
    "The worms lie in clumps here: a range for worms that lie by chance would be too narrow.",
  "science/holes-as-if-apart":
    "This supposes that holes tell nothing of each other: dig them 30 m (100 ft) apart or more.",
  "science/holes-close-together":
    "{holes} holes lie within {metres} m of another one: near holes are alike, so the mean of the field is less sure than its range says.",
  "science/holes-in-doubt": "Holes with two answers were left out until one is chosen: {holes}.",
  "science/holes-not-determined":
    "Holes where the kinds of grown worms cannot be told were left out: {holes}. Only young worms, worms left in the pot, or a total alone.",
  "science/holes-unfinished": "Holes that are not finished were left out: {holes}.",
  "science/holes-without-size": "Holes of unknown size were left out: {holes}.",
  "science/layers-differ": "Mulch or mustard water was looked at in only some of these holes.",
  "science/no-hole-size": "The size of the hole is not known.",
  "science/no-hole-yet": "Before the first hole this is a plan only.",
  "science/no-over-dispersion-seen": "The holes differ no more than chance alone makes them differ.",
  "science/none-found":
    "No worm in {holes} holes. The upper end says what could still have been missed if worms lay by chance; in clumps it could be more.",
  "science/not-a-share-of-mean": "Give or take has to lie above 0 and at most at 100 % of the mean.",
  "science/not-determined":
    "Not determined in {holes} {holes|hole|holes}: only young worms, worms left in the pot, or a total alone. That is not the same as absent.",
  "science/range-supposes-chance":
    "This range supposes that worms lie by chance. In clumps it is too narrow.",
  "science/soil-cold": "Holes with few or no worms and cold soil: {holes}. The count may be too low.",
  "science/soil-dry": "Holes with few or no worms and dry soil: {holes}. The count may be too low.",
  "science/too-few-holes": "Too few holes to give a range: it needs {needs}, there are {has}.",
  "science/too-many-holes": "More than {most} holes would be needed: a wider give or take helps more.",
  "science/two-answers": "There are two answers for one number: choose one.",
  "science/worked-recently":
    "The soil was worked {days} {days|day|days} before: worms may be fewer than usual.",
};
