/** Addresses of screens. They stand behind the hash, so that any static host and any sub-folder serves them. */
import { isRecordId, kindOf, type RecordId } from "../../record/ids.ts";

/** Pages of help, in the order of their list. */
export const HELP_TOPICS = [
  "line",
  "hole",
  "ring",
  "compare",
  "cautions",
  "keeping",
  "locked",
  "words",
  "methods",
] as const;
export type HelpTopic = (typeof HELP_TOPICS)[number];

/** Every screen that has an address. */
export type Route =
  | { readonly at: "welcome" }
  | { readonly at: "measure" }
  | { readonly at: "visit"; readonly visit: RecordId<"visit"> }
  | { readonly at: "line-new"; readonly visit: RecordId<"visit"> }
  | { readonly at: "line"; readonly line: RecordId<"observation"> }
  | { readonly at: "line-sheet"; readonly line: RecordId<"observation"> }
  | { readonly at: "rings"; readonly visit: RecordId<"visit"> }
  | {
      readonly at: "ring-new";
      readonly visit: RecordId<"visit">;
      readonly follows: RecordId<"observation"> | null;
    }
  | { readonly at: "ring"; readonly ring: RecordId<"observation"> }
  | { readonly at: "ring-sheet"; readonly ring: RecordId<"observation"> }
  | { readonly at: "big-figures"; readonly visit: RecordId<"visit"> }
  | { readonly at: "hole-new"; readonly visit: RecordId<"visit"> }
  | { readonly at: "hole"; readonly hole: RecordId<"observation"> }
  | { readonly at: "hole-sheet"; readonly hole: RecordId<"observation"> }
  | {
      readonly at: "note-new";
      readonly visit: RecordId<"visit">;
      /** The marked spot that it is written at, or null. */
      readonly spot: RecordId<"spot"> | null;
    }
  | { readonly at: "note"; readonly note: RecordId<"observation"> }
  | {
      readonly at: "side-by-side";
      readonly visit: RecordId<"visit">;
      /** The strip that the others are compared with, or null for the one measured last. */
      readonly strip: RecordId<"strip"> | null;
      /** Behind a strip: the places against the row whose tests alone are compared. */
      readonly only?: string | undefined;
    }
  | { readonly at: "picture"; readonly visit: RecordId<"visit"> }
  | { readonly at: "fields" }
  | { readonly at: "field-new" }
  | { readonly at: "field"; readonly field: RecordId<"field"> }
  | {
      readonly at: "map";
      readonly field: RecordId<"field">;
      readonly visit: RecordId<"visit"> | null;
    }
  | { readonly at: "boundary"; readonly field: RecordId<"field"> }
  | { readonly at: "spot"; readonly field: RecordId<"field">; readonly spot: RecordId<"spot"> | "new" }
  | { readonly at: "worked-out"; readonly strip: RecordId<"strip">; readonly visit: RecordId<"visit"> | null }
  | { readonly at: "findings" }
  | { readonly at: "send" }
  | { readonly at: "help" }
  | { readonly at: "help-topic"; readonly topic: HelpTopic }
  | { readonly at: "settings" }
  | { readonly at: "kit" }
  | { readonly at: "deleted" }
  | { readonly at: "two-versions" };

/** The four areas. */
export type Area = "measure" | "fields" | "findings" | "send";

/** Which area a screen belongs to. */
export const areaOf = (route: Route): Area => {
  switch (route.at) {
    case "fields":
    case "field-new":
    case "field":
    case "map":
    case "boundary":
    case "spot":
      return "fields";
    case "findings":
    case "worked-out":
    case "side-by-side":
      return "findings";
    case "send":
    case "picture":
    case "help":
    case "help-topic":
    case "settings":
    case "kit":
    case "deleted":
    case "two-versions":
      return "send";
    default:
      return "measure";
  }
};

/** The address of a screen. */
export const href = (route: Route): string => {
  switch (route.at) {
    case "visit":
      return `#/visit/${route.visit}`;
    case "line-new":
      return `#/visit/${route.visit}/new-line`;
    case "rings":
      return `#/visit/${route.visit}/rings`;
    case "ring-new":
      return `#/visit/${route.visit}/new-ring${route.follows === null ? "" : `/${route.follows}`}`;
    case "big-figures":
      return `#/visit/${route.visit}/big-figures`;
    case "side-by-side":
      return `#/visit/${route.visit}/side-by-side${route.strip === null ? "" : `/${route.strip}${route.only ? `/${route.only}` : ""}`}`;
    case "picture":
      return `#/visit/${route.visit}/picture`;
    case "ring":
      return `#/ring/${route.ring}`;
    case "ring-sheet":
      return `#/ring/${route.ring}/sheet`;
    case "hole-new":
      return `#/visit/${route.visit}/new-hole`;
    case "hole":
      return `#/hole/${route.hole}`;
    case "hole-sheet":
      return `#/hole/${route.hole}/sheet`;
    case "note-new":
      return `#/visit/${route.visit}/new-note${route.spot === null ? "" : `/${route.spot}`}`;
    case "note":
      return `#/note/${route.note}`;
    case "line":
      return `#/line/${route.line}`;
    case "line-sheet":
      return `#/line/${route.line}/sheet`;
    case "field-new":
      return "#/fields/new";
    case "field":
      return `#/fields/${route.field}`;
    case "map":
      return `#/fields/${route.field}/map${route.visit === null ? "" : `/${route.visit}`}`;
    case "boundary":
      return `#/fields/${route.field}/boundary`;
    case "spot":
      return `#/fields/${route.field}/spot/${route.spot}`;
    case "help-topic":
      return `#/help/${route.topic}`;
    case "worked-out":
      return `#/worked-out/${route.strip}${route.visit === null ? "" : `/${route.visit}`}`;
    default:
      return `#/${route.at}`;
  }
};

const named = <K extends "visit" | "observation" | "field" | "strip" | "spot">(
  text: string | undefined,
  kind: K,
): RecordId<K> | null =>
  text !== undefined && isRecordId(text) && kindOf(text) === kind ? (text as RecordId<K>) : null;

const ofVisit = (
  visit: RecordId<"visit">,
  third: string | undefined,
  fourth: string | undefined,
  fifth: string | undefined,
): Route => {
  switch (third) {
    case "new-line":
      return { at: "line-new", visit };
    case "rings":
      return { at: "rings", visit };
    case "new-ring":
      return { at: "ring-new", visit, follows: named(fourth, "observation") };
    case "big-figures":
      return { at: "big-figures", visit };
    case "new-hole":
      return { at: "hole-new", visit };
    case "side-by-side":
      return { at: "side-by-side", visit, strip: named(fourth, "strip"), only: fifth };
    case "picture":
      return { at: "picture", visit };
    case "new-note":
      return { at: "note-new", visit, spot: named(fourth, "spot") };
    default:
      return { at: "visit", visit };
  }
};

const ofField = (field: RecordId<"field">, third: string | undefined, fourth: string | undefined): Route => {
  switch (third) {
    case "map":
      return { at: "map", field, visit: named(fourth, "visit") };
    case "boundary":
      return { at: "boundary", field };
    case "spot":
      return { at: "spot", field, spot: named(fourth, "spot") ?? "new" };
    default:
      return { at: "field", field };
  }
};

const ofTest = (first: string | undefined, id: RecordId<"observation">, sheet: boolean): Route | null => {
  switch (first) {
    case "line":
      return sheet ? { at: "line-sheet", line: id } : { at: "line", line: id };
    case "ring":
      return sheet ? { at: "ring-sheet", ring: id } : { at: "ring", ring: id };
    case "hole":
      return sheet ? { at: "hole-sheet", hole: id } : { at: "hole", hole: id };
    case "note":
      return { at: "note", note: id };
    default:
      return null;
  }
};

/** A page of help; a topic that there is none of leads to the list. */
const helpAt = (second: string | undefined): Route => {
  const topic = HELP_TOPICS.find((one) => one === second);
  return topic === undefined ? { at: "help" } : { at: "help-topic", topic };
};

/** The screen at an address; an address that names none leads to Measure. */
export const routeAt = (hash: string): Route => {
  const [first, second, third, fourth, fifth] = hash.replace(/^#\/?/, "").split("/");
  const visit = named(second, "visit");
  if (first === "visit" && visit !== null) return ofVisit(visit, third, fourth, fifth);
  const id = named(second, "observation");
  const test = id === null ? null : ofTest(first, id, third === "sheet");
  if (test !== null) return test;
  if (first === "fields" && second === "new") return { at: "field-new" };
  if (first === "help") return helpAt(second);
  const field = named(second, "field");
  if (first === "fields" && field !== null) return ofField(field, third, fourth);
  const strip = named(second, "strip");
  if (first === "worked-out" && strip !== null)
    return { at: "worked-out", strip, visit: named(third, "visit") };
  switch (first) {
    case "welcome":
    case "fields":
    case "findings":
    case "send":
    case "settings":
    case "kit":
    case "deleted":
    case "two-versions":
      return { at: first };
    default:
      return { at: "measure" };
  }
};
