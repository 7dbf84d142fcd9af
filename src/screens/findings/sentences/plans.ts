/** Sentences for every reason and caution of positions and plans, by code. */
export const plansSentences: Readonly<Record<string, string>> = {
  "science/boundary-crosses-itself":
    "The boundary crosses or touches itself, at the edges that lead to corners {first} and {second}: move a corner or walk it again.",
  "science/boundary-without-area": "All corners of this boundary lie on one line: it has no area.",
  "science/classes-without-a-range":
    "The marks of one class lie on few passes: a range would claim more than they tell.",
  "science/edge-too-crooked":
    "The edge is too crooked for {asked} pairs at this distance from it: {fit} found their place. Go nearer to the edge or ask for fewer.",
  "science/edge-too-short": "Nothing is left of this edge once both ends are taken off.",
  "science/exact-by-definition":
    "It follows from what was entered. Nothing was sampled, so there is no range to give.",
  "science/field-too-large": "A corner lies more than {mostKm} km from the middle of the field.",
  "science/headland-too-wide":
    "Nothing of this field is left inside so wide an edge: {mostM} m is the widest that leaves anything.",
  "science/near-a-pole": "Maps of fields are not made beyond {most}° of latitude.",
  "science/nearly-opposite":
    "These two places lie through the middle of the earth from each other: the shortest way between them cannot be told.",
  "science/not-a-bearing": "A bearing is a number of degrees.",
  "science/not-a-day": "Hours of a day lie between 0 and {most}.",
  "science/not-a-declination": "A declination lies between 180° west and 180° east.",
  "science/not-minutes": "Minutes of a test have to be above 0.",
  "science/nothing-wanted": "Choose at least one test to plan for.",
  "science/points-do-not-fit":
    "{asked} points do not fit: at most {fit} were placed. Ask for fewer, or let them lie closer to each other or to the edge.",
  "science/too-far-from-field": "This position lies more than {mostKm} km from the middle of the field.",
  "science/too-far-to-walk": "Two of these spots lie more than {mostKm} km apart.",
  "science/too-few-corners": "A boundary needs {needs} different corners, there are {has}.",
  "science/too-few-for-a-range":
    "Only {has} of a test fit on each strip: it needs {needs} to give a range. More hands, more hours, more water or fewer strips would help.",
  "science/too-many-places": "No more than {most} spots are put in order.",
  "science/too-many-points": "No more than {most} points are planned at once.",
  "science/walk-leaves-field": "Part of this walk crosses ground outside the boundary. No stop lies there.",
};
