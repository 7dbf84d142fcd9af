/** What a guide for worms says of holes of its size, for the files of the guides' sources. */
import { GUIDES } from "../../src/science/earthworms/guides.ts";
import { readByGuide } from "../../src/science/earthworms/read-guide.ts";
import { reached } from "../unit/science/counts.ts";
import { hole } from "../unit/science/earthworms/holes.ts";

type Guide = (typeof GUIDES)[number];

export const guideOf = (id: Guide["id"]): Guide => {
  const guide = GUIDES.find((one) => one.id === id);
  if (guide === undefined) throw new Error(`no guide ${id}`);
  return guide;
};

/** Words of the guide for each mean of two holes of that size. */
export const levelsOf = (
  id: Guide["id"],
  { sideM, depthM }: { readonly sideM: number; readonly depthM: number },
  means: readonly number[],
): readonly string[] => {
  const guide = guideOf(id);
  const at = {
    landUse: null,
    month: guide.season?.months[0] ?? 5,
    hemisphere: guide.season?.hemisphere ?? "north",
  } as const;
  return means.map((mean) => {
    const two = [Math.floor(mean), Math.ceil(mean)].map((worms) =>
      hole(worms, { sidesM: [sideM, sideM], depthM }),
    );
    return reached(readByGuide(guide, two, at)).level.says;
  });
};
