/** Sentences for every reason and caution of residue and straw, by code. */
export const strawSentences: Readonly<Record<string, string>> = {
  "science/carbon-floor-varies":
    "How much has to stay for the soil's carbon varies much from field to field: no single number fits.",
  "science/cover-capped":
    "Full cover has no finite mass: it was taken as 99.9 %, and more may lie there than this says.",
  "science/cover-not-mass":
    "What a pass leaves is a share of the cover. Of the mass it leaves less, most of all where cover is high.",
  "science/cover-rose": "Cover rose between the two days: these lines tell no loss.",
  "science/dung-not-counted": "What animals left as dung is not counted back.",
  "science/few-points-hit":
    "Only {hits} {hits|point|points} hit in all: the range tends to be too narrow. More photos help.",
  "science/few-points-missed":
    "Only {misses} {misses|point|points} missed in all: the range tends to be too narrow. More photos help.",
  "science/flat-residue-only":
    "This is for dry residue that lies flat. Standing stubble weighs more for the same cover.",
  "science/grown-not-known":
    "What grew is not known in {years} {years|year|years}: these are left out of what grew and what was left.",
  "science/heavy-load-rots-slower": "Thick straw keeps dry on top and loses a smaller share than this says.",
  "science/leave-all-at-the-low-end": "At the low end nothing could leave: there is no way of baling for it.",
  "science/local-rules-first":
    "Local rules, contracts and the advice of licensed advisers come before this answer.",
  "science/may-be-none-could-leave": "It may be that nothing could leave: that is the low end.",
  "science/cover-as-published": "A published figure for this crop. One line after harvest is better.",
  "science/measured-elsewhere":
    "Measured elsewhere, on wheat straw without tillage. Lines of your own field on two days are better.",
  "science/more-gone-than-grown":
    "In {harvestYear} more went than could have grown: check bales, weight and area.",
  "science/near-full-cover":
    "Cover above 95 % tells little of the mass: a few marks more or less change it much.",
  "science/no-carbon-floor":
    "What has to stay for the soil's carbon was not published for this crop and system.",
  "science/rests-on-a-table":
    "It rests on figures of a handbook and on no sample of this field, so there is no range.",
  "science/no-figure-for-crop": "No figure is known for this crop: put in your own.",
  "science/no-loss-seen": "No loss can be seen between the two days.",
  "science/no-residue": "Without residue on both days, or with a range that reaches none, there is no rate.",
  "science/no-points-read": "No point of a photo was read yet.",
  "science/none-could-leave": "Nothing could leave this year.",
  "science/not-a-range":
    "A range goes from its low end over its middle to its high end, and stays within what is possible.",
  "science/not-a-straw-year":
    "An area, a year or a count of bales or animals in the straw ledger cannot be used.",
  "science/not-a-stubble-height":
    "A height of stubble has to be more than nothing and no more than {most} mm. Where nothing stands, leave it out.",
  "science/nutrients-vary":
    "Nutrients in straw vary, and potash washes out in rain. A laboratory's figure is better.",
  "science/only-what-was-counted":
    "Only what was put in is counted. What straw does for soil carbon and structure has no price here.",
  "science/outside-published-range":
    "The curve was measured from {from} to {to} % cover: outside that, its end stands in.",
  "science/photos-agree-better-than-chance":
    "The {lines} photos agree better than points falling by chance would. With few photos that is mostly luck: the true range may be wider.",
  "science/photos-agree-to-the-point":
    "The {lines} photos agree to the point. The usual spread of lines stands in for theirs.",
  "science/photos-read-lower":
    "Photos tend to read lower than lines, by about {points} points in one study: compare photos with photos.",
  "science/photos-without-points": "Photos without a point that was read were left out: {lines}.",
  "science/points-not-independent":
    "All or none of {marks} {marks|point|points} hit. Points on one photo are not independent: they count for {effectiveMarks}.",
  "science/points-not-read":
    "{notRead} {notRead|point was|points were} not read and {notRead|is|are} left out.",
  "science/price-inside-range": "The figures cannot tell whether selling gains or loses at this price.",
  "science/short-in-the-year-of-baling":
    "Baling all in one year, or whole swaths, leaves ground short of cover in that year or those swaths. Spread what stays.",
  "science/too-few-photos": "Too few photos to give a range: it needs {needs}, there {has|is|are} {has}.",
  "science/year-twice": "The ledger has {harvestYear} twice for one strip.",
  "science/years-without-a-line":
    "{years} {years|year|years} between the first and the last {years|is|are} not in the ledger, so the sum is not of all years.",
};
