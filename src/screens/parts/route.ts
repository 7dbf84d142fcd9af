/** Addresses of screens. They stand behind the hash, so that any static host and any sub-folder serves them. */
import { isRecordId, kindOf, type RecordId } from "../../record/ids.ts";

/** Every screen that has an address. */
export type Route =
  | { readonly at: "welcome" }
  | { readonly at: "measure" }
  | { readonly at: "visit"; readonly visit: RecordId<"visit"> }
  | { readonly at: "line-new"; readonly visit: RecordId<"visit"> }
  | { readonly at: "line"; readonly line: RecordId<"observation"> }
  | { readonly at: "line-sheet"; readonly line: RecordId<"observation"> }
  | { readonly at: "fields" }
  | { readonly at: "field-new" }
  | { readonly at: "field"; readonly field: RecordId<"field"> }
  | { readonly at: "worked-out"; readonly strip: RecordId<"strip">; readonly visit: RecordId<"visit"> | null }
  | { readonly at: "findings" }
  | { readonly at: "send" }
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
      return "fields";
    case "findings":
    case "worked-out":
      return "findings";
    case "send":
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
    case "line":
      return `#/line/${route.line}`;
    case "line-sheet":
      return `#/line/${route.line}/sheet`;
    case "field-new":
      return "#/fields/new";
    case "field":
      return `#/fields/${route.field}`;
    case "worked-out":
      return `#/worked-out/${route.strip}${route.visit === null ? "" : `/${route.visit}`}`;
    default:
      return `#/${route.at}`;
  }
};

const named = <K extends "visit" | "observation" | "field" | "strip">(
  text: string | undefined,
  kind: K,
): RecordId<K> | null =>
  text !== undefined && isRecordId(text) && kindOf(text) === kind ? (text as RecordId<K>) : null;

/** The screen at an address; an address that names none leads to Measure. */
export const routeAt = (hash: string): Route => {
  const [first, second, third] = hash.replace(/^#\/?/, "").split("/");
  const visit = named(second, "visit");
  if (first === "visit" && visit !== null)
    return third === "new-line" ? { at: "line-new", visit } : { at: "visit", visit };
  const line = named(second, "observation");
  if (first === "line" && line !== null)
    return third === "sheet" ? { at: "line-sheet", line } : { at: "line", line };
  if (first === "fields" && second === "new") return { at: "field-new" };
  const field = named(second, "field");
  if (first === "fields" && field !== null) return { at: "field", field };
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
