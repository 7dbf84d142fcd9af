/** The tables of a ring's sheet on narrow phones: no key wraps and no word is cut in two. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { daySample } from "./day-sample.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";
import { storedRecords } from "./on-record.ts";

let phone: OnPhone;
let sheet = "";

beforeAll(async () => {
  phone = await onPhone(daySample().rows);
  const tests = await storedRecords(phone.chromium, "observation");
  const ring = tests.find(({ revs }) => Reflect.get(revs[0]?.body ?? {}, "type") === "ring");
  sheet = `#/ring/${ring?.id}/sheet`;
});
afterAll(() => phone.close());

/** On how many lines each of these pieces of text stands. */
const linesOf = (table: string, pieces: readonly string[]) =>
  phone.chromium.run(
    (within, wanted) => {
      const texts = [...document.querySelectorAll(`${within} th, ${within} td`)].flatMap((cell) => [
        ...cell.childNodes,
      ]);
      return wanted.map((piece) => {
        const text = texts.find(
          (node) => node.nodeType === Node.TEXT_NODE && node.textContent?.includes(piece) === true,
        );
        if (text === undefined) return `${piece}: not there`;
        const range = document.createRange();
        const from = text.textContent?.indexOf(piece) ?? 0;
        range.setStart(text, from);
        range.setEnd(text, from + piece.length);
        return `${piece}: ${new Set([...range.getClientRects()].map(({ top }) => top)).size}`;
      });
    },
    table,
    pieces,
  );

it.each([
  { width: 390, height: 844 },
  { width: 320, height: 640 },
])("gives the keys room at $width by $height", async (size) => {
  await phone.chromium.page.setViewportSize(size);
  await phone.goTo(sheet);
  await phone.chromium.page.locator(".ring-table").waitFor();
  const keys = ["after 30 min", "after 60 min", "after 180 min", "last half hour", "mulch inside"];
  await expect.poll(() => linesOf(".sheet-two", keys)).toEqual(keys.map((key) => `${key}: 1`));
  const words = ["soaked", "rate,", "since", "as read", "180 min", "150 mm"];
  await expect.poll(() => linesOf(".ring-table", words)).toEqual(words.map((word) => `${word}: 1`));
});
