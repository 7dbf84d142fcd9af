/** Steps for bodies that hold positions: what the radius stands for was not written down before. */
import type { Json } from "./canonical.ts";

type Body = { readonly [key: string]: Json };

const isBody = (value: Json | undefined): value is Body =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Changes one property where it is there; anything of another form is left for the schema to refuse. */
const at = (body: Json, key: string, change: (value: Json) => Json): Json =>
  isBody(body) && body[key] !== undefined ? { ...body, [key]: change(body[key]) } : body;

/** No record tells which device took it, so its radius may stand for either. One that says it is left alone. */
const withMeaning = (position: Json): Json => {
  const moved = at(position, "movedFrom", withMeaning);
  if (!isBody(moved) || "accuracyMeans" in moved) return moved;
  return { ...moved, accuracyMeans: moved["accuracyM"] === null ? null : "not-known" };
};

const inStood = (stood: Json): Json => at(stood, "position", withMeaning);

/** A measurement: lines stood at two places, everything else at one. */
export const observationWithMeaning = (body: Json): Json =>
  ["start", "end", "at"].reduce<Json>((lifted, key) => at(lifted, key, inStood), body);

/** A marked spot, and the end of the edge that begins there. */
export const spotWithMeaning = (body: Json): Json =>
  at(at(body, "position", withMeaning), "edge", (edge) => at(edge, "to", withMeaning));
