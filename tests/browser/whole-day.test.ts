/**
 * One day from the first start to a second phone, as somebody meets it who has never seen the app: everything
 * by touch, in profiles on disk, and without signal from the first minute on.
 */
import { afterAll, beforeAll, describe } from "vitest";
import { beginDay, type Day } from "./whole-day/day.ts";
import { addField, firstRun } from "./whole-day/field.ts";
import { compare, handOverPicture, readToday } from "./whole-day/findings.ts";
import { handOver } from "./whole-day/hand-over.ts";
import { digHoles, writeNote } from "./whole-day/hole-and-note.ts";
import { countMarkByMark, countOtherLines } from "./whole-day/lines.ts";
import { readRings, setOutRings } from "./whole-day/rings.ts";

let first: Day;
let second: Day;
const here = (): Day => first;
const there = (): Day => second;

beforeAll(async () => {
  first = await beginDay();
  second = await beginDay(9);
});
afterAll(async () => {
  await first.close();
  await second.close();
});

describe("the first start", () => firstRun(here));
describe("the field", () => addField(here));
describe("the first line", () => countMarkByMark(here));
describe("the other lines", () => countOtherLines(here));
describe("rings set out", () => setOutRings(here));
describe("rings read", () => readRings(here));
describe("holes", () => digHoles(here));
describe("a note", () => writeNote(here));
describe("today in this field", () => readToday(here));
describe("side by side", () => compare(here));
describe("a picture to hand over", () => handOverPicture(here));
describe("the second phone", () => handOver(here, there));
