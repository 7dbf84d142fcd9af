/** Every kind of record: its schema, its current version and the type of its body. */
import type { Kind } from "../ids.ts";
import type * as z from "../zod.ts";
import * as earlier from "./earlier.ts";
import * as event from "./event.ts";
import * as farm from "./farm.ts";
import * as field from "./field.ts";
import * as guess from "./guess.ts";
import * as join from "./join.ts";
import * as kit from "./kit.ts";
import * as observation from "./observation.ts";
import * as person from "./person.ts";
import * as photo from "./photo.ts";
import * as rain from "./rain.ts";
import * as spot from "./spot.ts";
import * as strip from "./strip.ts";
import * as visit from "./visit.ts";

/** What a record of each kind holds. */
export interface BodyOf {
  person: person.Person;
  farm: farm.Farm;
  field: field.Field;
  strip: strip.Strip;
  spot: spot.Spot;
  kit: kit.Kit;
  visit: visit.Visit;
  observation: observation.Observation;
  photo: photo.Photo;
  event: event.ManagementEvent;
  rain: rain.Rain;
  guess: guess.Guess;
  earlier: earlier.EarlierResult;
  join: join.Join;
}

/** Schema and current version of each kind's body. */
export const KIND: {
  readonly [K in Kind]: { readonly version: number; readonly body: z.Schema<BodyOf[K]> };
} = {
  person,
  farm,
  field,
  strip,
  spot,
  kit,
  visit,
  observation,
  photo,
  event,
  rain,
  guess,
  earlier,
  join,
};
