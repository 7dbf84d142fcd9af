/** What every screen is handed: the records, the pen, the settings, the words. */
import type { ReadonlySignal } from "@preact/signals";
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { Applied } from "../../record/command/apply.ts";
import type { Command } from "../../record/command/command.ts";
import type { Problem, Result } from "../../record/result.ts";
import type { Catalogue } from "../catalogue.ts";
import type { FilesDesk } from "./files-desk.ts";
import type { Pen } from "./pen.ts";
import type { Reader } from "./reader.ts";
import type { ResultsDesk } from "./results-desk.ts";
import type { Route } from "./route.ts";
import type { Settings } from "./settings.ts";

export interface House {
  readonly records: Reader;
  /** Writes commands through the ordered queue; resolves once they are committed. */
  readonly write: (...commands: readonly Command[]) => Promise<Result<readonly Applied[]>>;
  readonly pen: Pen;
  /** Id of this installation. */
  readonly device: string;
  readonly settings: ReadonlySignal<Settings>;
  readonly changeSettings: (patch: Partial<Settings>) => void;
  readonly words: ReadonlySignal<Catalogue>;
  readonly go: (route: Route) => void;
  /** Takes the place of the current address, so that Back does not return to a step that is over. */
  readonly goInstead: (route: Route) => void;
  /** Shows a problem in a sentence above the screen until it is closed. */
  readonly tell: (problem: Problem) => void;
  /** Says something to a screen reader. */
  readonly say: (sentence: string) => void;
  /** Files in and out; the worker behind it starts at first use. */
  readonly files: FilesDesk;
  /** Results of whole fields; worked out off the page. */
  readonly results: ResultsDesk;
}

export const HouseContext = createContext<House | null>(null);

/** The house that a screen stands in. */
export const useHouse = (): House => {
  const house = useContext(HouseContext);
  if (house === null) throw new Error("a screen was drawn outside the house");
  return house;
};
