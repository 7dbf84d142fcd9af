/** Sentences for every reason and caution of infiltration models and storms, by code. */
export const stormsSentences: Readonly<Record<string, string>> = {
  "science/collapses-to-at-once":
    "Not identifiable: by these readings all of it soaked in before the first one, and nothing after. Only that depth can be given.",
  "science/collapses-to-at-once-then-steady":
    "Not identifiable: all the slowing lies before the first reading. Only what soaked in at once and one steady rate can be given. Earlier readings would tell.",
  "science/collapses-to-kostiakov":
    "Not identifiable: the readings hold no steady part beside the slowing one, so this is Kostiakov's curve. A longer test would tell.",
  "science/collapses-to-root-time":
    "Not identifiable: the readings slow like the root of time with no steady part, so only the sorptivity S can be given. A longer test would tell.",
  "science/collapses-to-steady":
    "Not identifiable: the readings do not slow down, so only one steady rate can be given.",
  "science/curve-number-not-a-point":
    "Curve numbers are for small catchments and design storms, not for a point in a field. A cross-check beside the rings, never in their place.",
  "science/gauge-read-seldom":
    "Up to {minutes} min lie between two looks at the gauge. Bursts in between are lost, so too little runs off here.",
  "science/gauge-went-down": "The total of the gauge goes down at one reading: was it emptied?",
  "science/head-not-known": "How deep the water stood was not read.",
  "science/held-at-its-bound":
    "{symbol} is held at its bound: the readings would have it beyond what can be.",
  "science/kfs-double-ring":
    "This equation is for a single ring. Inside a double ring less water goes sideways, so it reads too low.",
  "science/kfs-first-pour-not-gone": "There is no first pour of measured water that soaked away and counts.",
  "science/kfs-front-below-ring":
    "The water went down to about {front} mm and the ring stands {ring} mm deep: below it water goes sideways, and this reads too high.",
  "science/kfs-heads-disagree":
    "The deeper water did not soak in faster: two heads say nothing of this soil.",
  "science/kfs-insertion-not-measured":
    "It was not measured how deep the ring stands, so it is not known whether the water stayed inside it.",
  "science/kfs-no-steady-part": "These readings hold no steady part that this equation could use.",
  "science/kfs-no-suction-left":
    "By these two heads the soil has no suction: it is not alike all the way down, or the rates were not steady yet.",
  "science/kfs-not-level-yet": "The rate was not steady yet, so this conductivity reads too high.",
  "science/kfs-one-point": "One ring is one point: conductivity differs by several times within a few paces.",
  "science/kfs-outside-steady-range":
    "This equation was made for water at least {head} mm deep and a ring at least {depth} mm in the ground.",
  "science/kfs-ring-too-deep":
    "A Beerkan ring stands about 10 mm deep. This one is more than {mm} mm in the ground.",
  "science/not-a-curve-number": "A curve number lies between 0 and 100.",
  "science/not-a-depth": "A depth that this rests on cannot be used.",
  "science/not-a-filled-share": "The share of pores that are filled lies from 0 to below 100 %.",
  "science/not-a-moisture-gap":
    "The room for water in the soil, wet less dry, is a share of its volume between 0 and 100 %.",
  "science/not-a-peak": "The peak of a storm lies between its beginning and its end.",
  "science/not-a-rain": "This amount of rain cannot be used.",
  "science/not-a-rate": "This rate cannot be used.",
  "science/not-a-soil": "These values of a soil cannot be used.",
  "science/not-a-water-temperature": "The temperature of the water lies between 0 and 60 °C (32 and 140 °F).",
  "science/not-an-alpha": "Choose what the soil is like first.",
  "science/not-an-area": "An area that this rests on cannot be used.",
  "science/soil-by-texture":
    "These are middle values of a texture: single soils differ from them by factors.",
  "science/not-for-design": "Not for drains, ponds or structures: these follow local codes.",
  "science/nothing-left-over": "The curve goes through every reading, so there is nothing to judge it by.",
  "science/parameter-hardly-known":
    "{symbol} is hardly known: its error is as large as its value. Many other values fit as well.",
  "science/parameters-inseparable": "These readings cannot tell this value from the others.",
  "science/storm-all-soaks-in": "All of this storm soaks in at every ring.",
  "science/storm-beyond-readings":
    "This storm goes deeper than the {mm} mm that soaked in during the test: beyond that the curve is a guess.",
  "science/storm-flooding-reads-high":
    "A flooded ring takes in about twice what falling rain does: expect more to run off.",
  "science/storm-no-crusting": "Crusting under heavy drops is not in it: bare ground takes less.",
  "science/storm-no-slope": "Slope and water from higher up are not in it.",
  "science/storm-order-not-clear":
    "The order is not clear: for {pairs} {pairs|pair|pairs} of strips the rings do not agree on which runs off first.",
  "science/storm-range-too-narrow":
    "With few rings this range is rather too narrow: instead of 95 of 100 it holds the truth in about 90, in fewer when nearly all of the storm soaks in.",
  "science/storm-ring-is-a-point": "A ring is a point, not a field.",
  "science/storm-rings-beyond-readings":
    "At {rings} {rings|ring|rings} this storm goes deeper than the test did: beyond that the curve is a guess.",
  "science/storm-shape-of-one-country":
    "This shape of a storm was made for the United States; elsewhere, and in newer rules there, others apply.",
  "science/storm-small-ring-overstates":
    "A small ring overstates, because water also goes sideways below it.",
  "science/too-few-readings-for-a-curve":
    "Too few readings for this curve: it needs {needs} at different times, there are {has}.",
};
