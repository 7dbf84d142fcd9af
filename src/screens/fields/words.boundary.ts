/** Words of the boundary: walking it, touching it, and what may be wrong with it. */
import { plural, writeNumber } from "../parts/numbers.ts";
import { TONGUE } from "../parts/words.common.ts";
import type { WordsOf } from "../parts/words-of.ts";

const corners = (count: number): string =>
  `${writeNumber(count, TONGUE)} ${plural(count, TONGUE, { one: "corner", other: "corners" })}`;

const english = () => ({
  title: "Boundary",
  none: "No boundary yet. Everything works without one; with it the field has an area, a place on the map, and is offered at its gateway.",
  choose: "How shall the boundary be made?",
  byWalking: "Walk its edge",
  byWalkingHint: "Walk or drive once round with the phone in the hand. Corners are written down on the way.",
  byTouching: "Touch its corners on the map",
  byTouchingHint: "The map is plain paper: it shows what has a position, your own place and the scale.",
  correct: "Correct its corners",
  walkAnew: "Walk it anew",
  without: "Leave it without a boundary",
  make: "Make a boundary",
  changeIt: "Boundary",
  goOn: (count: number) => `Go on with the boundary: ${corners(count)} so far`,
  corners,
  stillNone: "no corner yet",
  openArea: "no area inside yet",
  area: (area: string, around: string) => `${area}, ${around} around`,
  around: (around: string) => `${around} around`,
  goodTo: (accuracy: string, apart: string) =>
    `Position within about ${accuracy}. A corner is written down every ${apart} or so.`,
  standing: "Standing still adds no corners.",
  coarse: (accuracy: string, most: string) =>
    `This position is only within about ${accuracy}: too coarse for an edge. Nothing is taken by itself until it is better than ${most}. Open sky helps.`,
  old: (ago: string) => `No new position for ${ago}. Nothing is taken until one comes.`,
  round: "You are back at the first corner. Keep the boundary when you are round.",
  paused: "Paused. Walk to where the edge goes on, then go on.",
  straight: "From the last corner the edge runs straight to where you go on.",
  screenStays:
    "The screen stays on while you walk. With the screen off no corners come; those so far are safe.",
  screenCannot: "This phone may turn its screen off; no corners come while it is off. Those so far are safe.",
  unseen: (from: number, to: number) =>
    `No position between corner ${writeNumber(from, TONGUE)} and corner ${writeNumber(to, TONGUE)}: the edge runs straight there.`,
  coarseCorners: (count: number, accuracy: string) =>
    `${corners(count)} ${plural(count, TONGUE, { one: "was", other: "were" })} taken with a position within about ${accuracy} at best. The area is rough.`,
  leftOut: (count: number) =>
    `${corners(count)} past the first one ${plural(count, TONGUE, { one: "is", other: "are" })} left out, so that the end does not cross the beginning.`,
  pause: "Pause",
  goOnWalking: "Go on walking",
  begin: "Begin to walk",
  cornerHere: "Corner here",
  cornerAtCross: "Corner at the cross",
  moveToCross: "Move it to the cross",
  removeCorner: "Remove it",
  letGo: "Let it go",
  chosen: (number: number) => `Corner ${writeNumber(number, TONGUE)}`,
  chosenHint: "The next corner comes after this one.",
  touchHint: "Touch the map to set a corner, drag a corner to move it. Or bring a place under the cross.",
  keepIt: "Keep the boundary",
  touchInstead: "Go on by touching the map",
  walkInstead: "Go on by walking",
  throwAway: "Throw these corners away",
  throwAwayAsk: "Throw these corners away?",
  throwAwayHint: "The boundary that the field had before stays as it is.",
  throwAwayYes: "Yes, throw them away",
  takeAway: "Take the boundary away",
  takeAwayAsk: "Take the boundary away?",
  takeAwayHint: "What was measured stays where it is. The boundary can be made again.",
  takeAwayYes: "Yes, take it away",
  noStart:
    "There is nothing to begin from yet. Ask for your position, or stand in the field and mark a spot first.",
  cornerList: "Corners",
  denied: "This browser does not give its position. The corners can be touched on the map.",
  full: (most: number) => `No more than ${writeNumber(most, TONGUE)} corners are kept.`,
  problems: {
    "science/too-few-corners":
      "An edge needs {needs} different corners, and there {has|is|are} {has}. Go on; nothing is lost.",
    "science/boundary-crosses-itself":
      "The edge crosses itself: the side that leads to corner {first} and the side that leads to corner {second}. Both are marked on the map. Move or remove a corner, or take the last ones back.",
    "science/boundary-without-area":
      "All corners lie on one line, so there is no area inside. Go on, or move one.",
    "science/field-too-large":
      "One corner lies more than {mostKm} km from the middle. Take it back or move it.",
    "science/not-a-place": "One corner is no place on earth. Take it back.",
    "science/near-a-pole": "No map can be made so near to a pole.",
    "science/no-number": "The area of this edge cannot be worked out.",
  } as Readonly<Record<string, string>>,
});

export const BOUNDARY_WORDS: WordsOf<ReturnType<typeof english>> = { en: english };
