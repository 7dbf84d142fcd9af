import type { Cover } from "../../../record/entry.ts";
import type { Way } from "../../../record/kinds/observation.ts";
import type { KindOfAMark } from "../../../science/ground-cover/line.ts";
import { plural, writeNumber } from "../../parts/numbers.ts";
import type { TradeWords } from "../../parts/trade.ts";
import { TONGUE } from "../../parts/words.common.ts";

const number = (value: number): string => writeNumber(value, TONGUE);
const marksOf = (count: number): string =>
  `${number(count)} ${plural(count, TONGUE, { one: "mark", other: "marks" })}`;

/** Words of the line: setting it out, counting it, its sheet. */
export const lineWords = (trade: TradeWords) => ({
  line: {
    title: (index: number) => `line ${number(index)}`,
    question: (mark: number) => `What does the raindrop meet at mark ${number(mark)}?`,
    missQuestion: "Which mark has no residue?",
    missHint: "Type the number on the rope, then touch what lies there.",
    totalsQuestion: "How many marks of each?",
    ended: (mark: number) => `The line ended at mark ${number(mark)}.`,
    full: (marks: number) => (marks === 1 ? "The one mark is read." : `All ${number(marks)} marks are read.`),
    nothingRead: "Nothing was read on this line.",
    endsDiffer: "Two people ended this line differently.",
    endAtLast: (mark: number) => `End it at mark ${number(mark)}, the last one read`,
    afterAll: "Residue after all",
    soFar: "ground cover so far",
    read: (read: number, marks: number) => `${number(read)} of ${marksOf(marks)}`,
    missed: (count: number) =>
      count === 0
        ? "no misses called"
        : `${number(count)} ${plural(count, TONGUE, { one: "miss", other: "misses" })} called`,
    notRead: (count: number) => `${number(count)} not read`,
    cover: {
      residue: "Residue",
      bare: "Bare",
      green: "Green",
      stone: trade.stone.charAt(0).toUpperCase() + trade.stone.slice(1),
      own: "Own",
    } satisfies Record<Cover, string>,
    stance: "How the residue lies",
    flat: "flat",
    standing: "standing",
    restFlat: "the rest lies flat",
    restStanding: "the rest stands",
    setMark: "Set mark number",
    setMarkQuestion: "Which number does the rope say?",
    setMarkHint: "Marks that are skipped become not read.",
    endHere: "Line ends here",
    endAtQuestion: "At which mark does the line end?",
    correct: "Correct a mark",
    correctTitle: "Touch a mark to correct it",
    correctQuestion: (mark: number) => `What lies at mark ${number(mark)}?`,
    corrected: "corrected",
    twoAnswers: (mark: number) => `Two answers for mark ${number(mark)}: which one?`,
    twoThicknesses: (mark: number) => `Two answers for the mulch at mark ${number(mark)}: which one?`,
    twoTotals: "Two answers for the totals: which one?",
    twoEnds: "Two answers for where the line ends: which one?",
    doubts: (count: number) =>
      `${number(count)} ${plural(count, TONGUE, { one: "question has", other: "questions have" })} two answers: choose`,
    doubtsTitle: "Two people, two answers",
    doubtsNone: "Nothing is open any more.",
    atMark: (mark: number, what: string) => `mark ${number(mark)}: ${what}`,
    unread: "not read",
    undone: (what: string) => `Undone: ${what}`,
    redone: (what: string) => `Redone: ${what}`,
    took: (what: string) => `Taken: ${what}`,
    did: {
      setMark: (mark: number) => `mark number set to ${number(mark)}`,
      thickness: (mark: number) => `mulch thickness at mark ${number(mark)}`,
      totals: "totals",
      end: (mark: number) => `line ends at mark ${number(mark)}`,
    },
    thicknessQuestion: (mark: number) => `How thick is the mulch at mark ${number(mark)}?`,
    ground: (oldGrass: boolean) => `${oldGrass ? "Old grass" : "Strip"} so far:`,
    strip: (value: string, low: string, high: string, lines: string) =>
      `${value} %, ${low} to ${high}, ${lines}.`,
    stripNoRange: (value: string, lines: string) => `${value} %, ${lines}. Too few to give a range.`,
    stripNone: (oldGrass: boolean) => `First line ${oldGrass ? "on this old grass" : "of this strip"}.`,
    more: (low: number, high: number, points: string) =>
      low === 0 && high === 0
        ? `Enough for give or take ${points} points.`
        : low === high
          ? `About ${number(low)} more ${plural(low, TONGUE, { one: "line", other: "lines" })} for give or take ${points} points.`
          : `About ${number(low)} to ${number(high)} more lines for give or take ${points} points.`,
    sheet: "See this line",
    goOn: "Go on counting",
    onTheRope: (marks: number) =>
      `That number is not on the rope: ${plural(marks, TONGUE, { one: "it has one mark", other: `it has marks 1 to ${number(marks)}` })}.`,
    notACount: "That is not a count. Write whole marks, or leave it empty for none.",
    keepTotals: "Keep these totals",
    totalsSum: (sum: number, marks: number) => `${number(sum)} of ${marksOf(marks)}`,
    totalsTooMany: (sum: number, marks: number) =>
      `That makes ${number(sum)}, but the rope has ${marksOf(marks)}.`,
    kinds: {
      flat: "Residue, flat",
      standing: "Residue, standing",
    },
    gone: "This line is not on this device.",
    deleted: "This line was deleted. It lies under Deleted records.",
  },
  setOut: {
    ropeNamed: (name: string) => `rope ${name}`,
    title: "New line",
    strip: "Which strip?",
    addStrip: "Add a strip",
    rope: "Which rope or tape?",
    ropeMarks: (marks: number, spacing: string) =>
      marks === 1 ? marksOf(marks) : `${marksOf(marks)}, ${spacing} apart`,
    addRope: "Add a rope",
    way: "How will you count?",
    ways: {
      "mark-by-mark": "mark by mark",
      "misses-only": "misses only",
      totals: "totals",
    } satisfies Record<Way, string>,
    wayHints: {
      "mark-by-mark": "one touch for every mark",
      "misses-only": "call the marks without residue",
      totals: "sums counted aloud or on paper",
    } satisfies Record<Way, string>,
    angle: "How does the line lie to the rows?",
    angles: { "90": "straight across", "45": "diagonal", "0": "along the rows", unknown: "not said" },
    place: "Where does it lie?",
    fifth: "A fifth key of your own",
    fifthHint: "For example dung or moss. Leave it empty for none.",
    thickness: "Ask for the mulch thickness at every tenth mark",
    harvestYear: (year: number) => `${trade.harvestYear} ${year}`,
    stand: "Stand still at the start of the line",
    standEnd: "Stand still at the end of the line",
    looking: "Looking for the position …",
    positionAt: (accuracy: string, fixes: number) =>
      `Position within about ${accuracy}, from ${number(fixes)} ${plural(fixes, TONGUE, { one: "reading", other: "readings" })}.`,
    moving: "It wanders: stand still a little longer.",
    takeStart: "Take the start position again",
    takeEnd: "Take the end position",
    stopHere: "Use this position",
    start: "Start counting",
    needs: "Choose a strip and a rope first.",
    wholeField: "The whole field",
    notALength: "That is too small or too large to be kept.",
    takePosition: "Take the position here",
    rowSpacing: (unit: string) => `From row to row, in ${unit} (may stay empty)`,
    passWidth: (unit: string) => `Width of one machine pass, in ${unit} (may stay empty)`,
    layoutWhy:
      "With these the app can warn: marks that fall in step with the rows, or a line that does not cross one whole pass.",
    more: "More about this line",
    unplaced: "not said",
  },
  sheet: {
    title: "This line",
    kinds: "What lay at the marks",
    kind: {
      "residue-flat": "residue, flat",
      "residue-standing": "residue, standing",
      green: "green",
      bare: "bare",
      stone: trade.stone,
      own: "own key",
    } satisfies Record<KindOfAMark, string>,
    share: "share",
    marks: "marks",
    notFinished: "This line is not finished and has no part in its strip yet.",
    wilson: (low: string, high: string) => `${low} to ${high}, this line alone`,
    wilsonHint: "The range of one line speaks of this line only. A strip gets its range from three lines on.",
    thickness: (mean: string, count: number) =>
      `Mulch ${mean} thick, ${number(count)} ${plural(count, TONGUE, { one: "reading", other: "readings" })}`,
    cover: "Ground cover on this line",
    strip: "The strip",
    oldGrass: "Old-grass spot",
    today: "All of this day",
    another: "Next line",
    workedOut: "How this was worked out",
    positions: "Where it lay",
    start: "Start",
    end: "End",
    length: (value: string) => `${value} from start to end`,
    delete: "Delete this line",
    deleteAsk: "Delete this line with all its marks? It can be brought back for 30 days.",
    correct: "Correct a mark",
  },
});
