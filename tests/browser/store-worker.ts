/** A worker that writes by the store's own functions, as the one for files does. */
import type { Command } from "../../src/record/command/command.ts";
import { connect } from "../../src/store/connection.ts";
import { applyCommands } from "../../src/store/write.ts";

addEventListener("message", async ({ data }: MessageEvent<{ name: string; touches: Command[] }>) => {
  const connection = await connect({ tell: () => undefined, name: data.name });
  if (!connection.ok) return postMessage(connection.problem.code);
  for (const touch of data.touches) {
    const answer = await applyCommands(connection.value, [touch]);
    if (!answer.ok) return postMessage(answer.problem.code);
  }
  return postMessage("written");
});
