/** Sentences for every reason and caution of water, nitrogen, shelter and cover-crop mass, by code. */
export const waterSentences: Readonly<Record<string, string>> = {
  "science/belt-wider-than-field": "The trees take as much width as the field has, or more.",
  "science/beyond-shelter-table":
    "What was published of wind behind trees reaches from {least} to {most} tree heights, no nearer and no farther.",
  "science/coarse-residue-keeps-less":
    "Coarse stalks keep less water than straw: twice to four times their mass was needed for what straw did.",
  "science/cool-later-seedbed":
    "In spring the same mulch keeps the seedbed cool and wet, and sowing comes later. Set that against the water.",
  "science/could-go-either-way": "It may tie nitrogen up or set some free: these figures do not tell which.",
  "science/counted-from-first-rain":
    "The surface is taken for dry before the first rain of the period: nothing is counted until then.",
  "science/dew-above-warmth": "The dew point cannot lie that high above the temperatures of the day.",
  "science/dry-above-fresh": "A dried part cannot weigh more than it did fresh.",
  "science/few-plants":
    "Only {plants} {plants|plant|plants} in all frames: in clumps the range tends to be too narrow. More frames help.",
  "science/few-quadrats": "{advised} frames or more are advised, there {has|is|are} {has}.",
  "science/frame-not-whole-rows":
    "The frame is no whole number of rows wide: by where it lies it reads up to {least} % or +{most} % wrong. Use a frame as wide as whole rows.",
  "science/humidity-not-read":
    "Humidity was not read: the air is taken to be damp at the coldest hour, which in dry country says too little.",
  "science/kept-without-plants":
    "This is water kept from a surface without plants over it. Under a crop that shades the ground it is less.",
  "science/local-advice-first":
    "Local advice and local rules come first: these figures were found elsewhere and only frame the question.",
  "science/most-not-this-year":
    "This is over all the time that it rots: most of it is not this year, the less so when it lies on the surface.",
  "science/mulch-rule-disputed":
    "Studies disagree: with gaps in the mulch some found nothing kept, some 5 % for each 10 % covered. That it helps is sure, how much is not.",
  "science/mulch-thickness-not-in-rule":
    "Neither rule knows how thick a mulch is, and that matters most: it stands beside the answer and changes nothing.",
  "science/mulch-thickness-not-known":
    "How thick or heavy the mulch is was not said, and that matters most. Measure it beside the cover.",
  "science/nitrogen-rule-from-elsewhere":
    "The line was found for winter cover crops before summer vegetables in the north-west of the United States.",
  "science/no-mass": "There is no mass to work with.",
  "science/no-plants-found":
    "None in {quadrats} frames. The upper end says what could still have been missed if plants grew by chance.",
  "science/no-rain-dates":
    "Without the dates of rain there is no figure: what mulch keeps comes after each rain.",
  "science/no-row": "No row of trees is drawn.",
  "science/no-sheltered-zone":
    "The trees compete as far as the field goes: there is no sheltered part that could pay.",
  "science/no-weed-statement": "Nothing is published of this for other than grasses such as rye.",
  "science/no-worth-per-mm": "What 1 mm of water is worth has to be in money or grain for a hectare.",
  "science/not-a-calendar-day": "This is no day of the calendar.",
  "science/not-a-period": "The period has to be whole days, not backwards, and {most} at most.",
  "science/not-one-a-day":
    "There are {has} figures of what the air asks for and {days} days: give one for each, or one for all.",
  "science/one-wind-only": "This is for one wind. Winds from elsewhere shelter other ground.",
  "science/only-if-water-lacks": "At most this much, and only if water is what the crop lacks.",
  "science/out-of-bounds": "A figure lies outside what can be: it has to lie between {least} and {most}.",
  "science/quadrats-alike":
    "All {quadrats} frames are alike, which is mostly luck. The spread of plants by chance stands in for theirs.",
  "science/rain-not-measured":
    "{rains} {rains|rain was|rains were} not measured and {rains|is|are} taken to have wet the surface through.",
  "science/rain-outside-period": "{rains} {rains|rain|rains} outside the period {rains|is|are} not counted.",
  "science/rest-drains": "What the root zone cannot hold drains away and counts for nothing.",
  "science/rings-are-points": "A ring is a point: whether the whole strip takes in as much is not known.",
  "science/roots-less-deep": "Young crops, and crops on a pan, root less deep than this.",
  "science/shelter-old-studies":
    "The gains stem from studies of 1934 to 1984; harvesters that measured yield since have seen fields without any.",
  "science/shelter-table-square-wind":
    "For one density of trees, a wind square to them, and away from their ends.",
  "science/sun-not-read": "Sunshine was not read: it is guessed from how far apart day and night are.",
  "science/temperatures-only":
    "From temperatures alone: about 10 % off, more in humid or windy places. Hold it against a weather station nearby.",
  "science/warmest-below-coldest": "The warmest of the day lies below the coldest.",
  "science/weed-numbers-disputed":
    "One review found fewer kilograms of weeds but as many weeds, another found both fewer.",
  "science/weeds-annual-only":
    "It holds for annual weeds that come up late: hardly for perennials, early ones, or ground full of seed.",
  "science/weeds-as-published":
    "These are statements as published, no promise. Where weeds are sprayed they are no test to pass.",
  "science/wind-along-row":
    "The wind blows along the trees, or less than {degrees} degrees off: there is no sheltered zone.",
  "science/wind-not-read": "Wind was not read: a usual wind stands in.",
  "science/wind-slanting": "The wind meets some rows at a slant: the sheltered strip is narrower there.",
  "science/windward-not-counted":
    "Trees also slow the wind before it reaches them, over two to five tree heights. That is not drawn.",
};
