/** Sentences for every reason and caution of ring tests, by code. */
export const infiltrationSentences: Readonly<Record<string, string>> = {
  "science/clocks-apart":
    "{readings} {readings|reading was|readings were} taken while the clock of this device was set or stood still: check {readings|its time|their times}.",
  "science/curve-broken":
    "Some of the readings before {minutes} min do not count, so the depth is known up to {reachedMin} min only.",
  "science/drops-too-small":
    "The drops are too small for this ruler: {steps} of its steps, {mm} mm, are needed in each. Cannot tell with this ruler; top up from a measured bottle instead.",
  "science/few-rings-may-miss-burrows":
    "None of the {rings} rings is over a burrow. Where one spot in ten or five has one, so few rings often miss it, and the mean is then higher than this range says in 10 to 45 of 100 strips.",
  "science/levels-not-in-a-day": "At this rate it would take more than a day to level off.",
  "science/no-half-hour-yet": "The last readings in a row span {minutes} min, not half an hour yet.",
  "science/no-outer-ring": "This is not a double ring.",
  "science/not-a-ring": "The sizes of this ring cannot be right: check its inside diameters.",
  "science/not-a-time": "A time that this rests on cannot be used.",
  "science/not-levelling-yet": "There is no sign yet of a rate that it would level off at.",
  "science/not-measured": "This was not measured.",
  "science/not-so-long-yet": "The readings reach up to {reachedMin} min, not {minutes} min.",
  "science/nothing-soaked-yet": "Nothing has soaked in that could be counted yet.",
  "science/one-ring-only": "One ring is one point: a range of the strip needs three rings.",
  "science/only-wetting":
    "Only the first pour was made. It wets the ground and is never given a class: pour once more.",
  "science/rates-scatter": "The last three rates differ, but they do not slow down: more readings will tell.",
  "science/rests-on-present-rate": "It holds as long as water goes on soaking in as fast as now.",
  "science/ring-answers-in-doubt":
    "{looks} {looks|reading has|readings have} two answers and {looks|counts|count} nowhere until one is chosen.",
  "science/ring-began-apart":
    "Water was first read {minutes} min away from the start. Times count from that reading, and what soaked in before it is in no sum.",
  "science/ring-bumped": "The ring was bumped: {minutes} min around it are left out.",
  "science/ring-burrow": "There is a burrow in the ring. It counts.",
  "science/ring-crack": "There is a crack in the ring. It counts, and it will close when the ground is wet.",
  "science/ring-leaked": "The ring leaked: {minutes} min are left out, and what came before counts.",
  "science/ring-level-rose":
    "The level rose without a refill that was written down: {minutes} min are left out.",
  "science/ring-levels-unlike":
    "Water depth and down-from-the-rim follow each other and the rim was not measured: {minutes} min are left out.",
  "science/ring-moved": "The ring was moved: {minutes} min are left out, and what came before counts.",
  "science/ring-no-water-left": "No water was left to keep the level: {minutes} min are left out.",
  "science/ring-not-in-the-ground":
    "By its readings this ring does not stand in the ground: check its height and its rim.",
  "science/ring-numbers-missing":
    "{looks} {looks|reading still misses its|readings still miss their} number.",
  "science/ring-out-of-round": "The two inside diameters of this ring differ by more than {percent} %.",
  "science/ring-rained-on": "It rained into the ring: {minutes} min are left out.",
  "science/ring-ran-dry": "The ring ran dry: {minutes} min are left out.",
  "science/ring-rate-rose":
    "It soaked in faster at one reading than before: a leak, a burrow or a disturbance? Have a look.",
  "science/ring-refill-unseen":
    "A refill took longer than a minute and its water was not measured: {minutes} min are left out.",
  "science/ring-topped-up-late": "Water was topped up late: {minutes} min before it are left out.",
  "science/ring-wall-not-measured":
    "The outside of the inner ring was not measured: the space between the rings counts as a little too large.",
  "science/rings-all-alike": "All {rings} rings read the same: that shows no spread to make a range from.",
  "science/rings-below-ruler":
    "In {rings} {rings|ring|rings} nothing was seen to soak in. The least that the ruler could have shown stands in.",
  "science/rings-left-out":
    "{rings} {rings|ring has|rings have} no number that can be used and {rings|is|are} left out.",
  "science/rings-not-drained":
    "{rings} {rings|ring|rings} did not drain and {rings|stands|stand} with what had soaked in by the last reading.",
  "science/rings-not-read-so-long":
    "{rings} of {of} rings {rings|has|have} no reading that counts at {minutes} min and {rings|is|are} not in that depth. Where they ran dry because they soak fastest, it is too low.",
  "science/rings-not-read-together": "The two rings were not read over the same time.",
  "science/rings-with-burrow": "{rings} {rings|ring has|rings have} a burrow. It counts.",
  "science/rings-with-crack": "{rings} {rings|ring has|rings have} a crack. It counts.",
  "science/ruler-wrong-way":
    "The levels go up where water soaks in: is the ruler read the other way round, or was water added?",
  "science/side-flow":
    "Between the rings {ratio} times as much went in as inside: water goes sideways, and the inner ring may read too fast.",
  "science/too-few-intervals":
    "Three stretches of readings are needed to tell whether it levels off, there {has|is|are} {has}.",
  "science/too-few-rings": "Too few rings: it needs {needs}, there {has|is|are} {has}.",
  "science/water-partly-reckoned":
    "Some of this water was not measured, so it is reckoned from levels and a little too few.",
  "science/undrained-unread": "The pour did not drain, and the water left in the ring was not read.",
};
