/** What one test found, in the words that stand beside each number. */
import type { Problem } from "../../record/result.ts";
import type { Catalogue } from "../catalogue.ts";
import { nameWithFate } from "../fields/cover-model.ts";
import { writeDay, writeNumber } from "../parts/numbers.ts";
import { grassNames } from "../parts/old-grass.ts";
import { href } from "../parts/route.ts";
import { toVisit } from "../parts/to-visit.ts";
import { TONGUE } from "../parts/words.common.ts";
import type { Drawn } from "./drawing.tsx";
import type { Mind } from "./minds.tsx";
import type { GrassFound, StripFound, TestFound } from "./newest-test.ts";
import type { FindingsWords } from "./words.ts";

const grassName = ({ findings, common }: Catalogue & FindingsWords, grass: GrassFound, day: string): string =>
  findings.grass(grassNames(grass.spots), grass.day === day ? "" : writeDay(grass.day, common.tongue));

/** Reasons that all say the same: there is no line, hole or ring yet that a number could come from. */
const NOTHING_YET: ReadonlySet<string> = new Set(["science/no-marks-read", "science/nothing-read"]);

/**
 * The strips of the day, and old grass below them.
 *
 * @param say the sentence of a reason
 */
export const drawnOf = (
  words: Catalogue & FindingsWords,
  { measure, minutes, day, strips, grass }: TestFound,
  say: (problem: Problem) => string,
): readonly Drawn[] => {
  const { lacking, wormsPerHole, ringsStood } = words.findings;
  const nothing = measure === "soak" ? lacking.soak(writeNumber(minutes, TONGUE)) : lacking[measure];
  const one = (
    key: string,
    name: string,
    to: string,
    { found, perHole, stood }: Omit<StripFound, "id" | "strip" | "visits" | "chance" | "cautions">,
  ): Drawn => ({
    key,
    name,
    to,
    found: found.ok ? found.value : null,
    beside: found.ok
      ? [
          ...(perHole === null ? [] : [wormsPerHole(writeNumber(perHole, TONGUE, perHole < 10 ? 1 : 0))]),
          ...(stood === null || stood === found.value.n ? [] : [ringsStood(stood)]),
        ]
      : [NOTHING_YET.has(found.problem.code) ? nothing : say(found.problem)],
  });
  return [
    ...strips.map((of) =>
      one(
        of.id,
        nameWithFate(words, of.strip),
        measure === "cover"
          ? href({ at: "worked-out", strip: of.id, visit: of.visits[0] ?? null })
          : toVisit(of.visits),
        of,
      ),
    ),
    ...(grass === null ? [] : [one("old-grass", grassName(words, grass, day), toVisit(grass.visits), grass)]),
  ];
};

/** What has to be borne in mind with these numbers. */
export const mindsOf = (
  words: Catalogue & FindingsWords,
  { day, strips, grass }: TestFound,
): readonly Mind[] => [
  ...strips.flatMap(({ strip, cautions }) =>
    cautions.map((caution) => ({ of: nameWithFate(words, strip), caution })),
  ),
  ...(grass === null ? [] : grass.cautions.map((caution) => ({ of: grassName(words, grass, day), caution }))),
];
