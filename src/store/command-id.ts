import type { Command } from "../record/command/command.ts";

/** Id of what a command makes; an erasing goes by the record's id, because it happens once. */
export const commandId = (command: Command): string => {
  if ("at" in command) return command.at.id;
  return "by" in command ? command.by.rev : command.id;
};
