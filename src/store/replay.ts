import { failed, ok, type Result } from "../record/result.ts";
import type { Tell } from "./notice.ts";
import type { Answer, Touch } from "./queue.ts";
import type { Stash } from "./stash.ts";

/**
 * Writes the touches that an earlier page could not, in their order. One that was written after all
 * changes nothing, because each command carries the id of what it makes.
 *
 * What is refused for its own sake is told and taken out of the stash, or it would be refused at every
 * start; what cannot be written now stays.
 *
 * @returns `store/gone` when the database went away again; else ok
 */
export const replay = async (
  stash: Stash,
  apply: (touch: Touch) => Promise<Answer>,
  tell: Tell,
): Promise<Result<undefined>> => {
  for (const { key, touches } of stash.waiting()) {
    let stays = false;
    for (const touch of touches) {
      const answer = await applied(touch, apply);
      if (answer.ok) continue;
      if (answer.problem.code === "store/gone") return answer;
      stays ||= answer.problem.code.startsWith("store/");
      tell({ type: "refused", commands: touch, problem: answer.problem });
      // What comes after may rest on what could not be written.
      if (stays) break;
    }
    if (!stays) stash.drop(key);
  }
  return ok(undefined);
};

const applied = async (touch: Touch, apply: (touch: Touch) => Promise<Answer>): Promise<Answer> => {
  try {
    return await apply(touch);
  } catch (error) {
    // Text that somebody changed by hand must not keep the app from starting for ever.
    return failed("record/not-valid", { where: "stash", what: String(error) });
  }
};
