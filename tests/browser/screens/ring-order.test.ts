/** The rows of the board change places by themselves: a finger on its way must not hit another ring. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { boardSample } from "../../bench/rings-board.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";

const MINUTE_MS = 60_000;
// Five minutes on, all three are late: A the longest, then B, then C.
const sample = boardSample(Date.now() - 5 * MINUTE_MS, 3, 5);
let phone: OnPhone;
const row = (letter: string) => phone.chromium.page.locator(`[data-ring="${letter}"]`);
const order = () =>
  phone.chromium.page.locator(".board-row").evaluateAll((all) => all.map((one) => one.dataset["ring"]));

beforeAll(async () => {
  phone = await onPhone(sample.rows);
  await phone.goTo(sample.board);
});
afterAll(() => phone.close());

it("does not take a touch on a row that has only just come under the finger", async () => {
  await expect.poll(order).toEqual(["A", "B", "C"]);
  const hit = await phone.chromium.run(
    () =>
      new Promise<string>((resolve) => {
        const touch = (atMs: number): void => {
          const key = document.querySelector(".board-row .key");
          const click = new MouseEvent("click", { bubbles: true, detail: 1 });
          // When the finger came down, however late a busy page tells of it.
          Object.defineProperty(click, "timeStamp", { value: atMs });
          key?.dispatchEvent(click);
        };
        const ring = (): string => document.querySelector<HTMLElement>(".board-row")?.dataset["ring"] ?? "";
        const list = document.querySelector(".board-row")?.parentElement;
        const begunMs = performance.now();
        new MutationObserver((_, watching) => {
          if (ring() === "A") return;
          watching.disconnect();
          // Later than drops on wet glass come, and sooner than anybody sees that the rows have moved.
          const atMs = Math.max(begunMs + 270, performance.now());
          setTimeout(() => {
            touch(atMs);
            resolve(ring());
          }, atMs - performance.now());
        }).observe(list as Node, { childList: true });
        touch(begunMs);
      }),
  );
  expect(hit).toBe("B");
  await phone.reads("the rings changed places: touch again");
  await row("A").getByText("1 number missing").waitFor();
  await phone.chromium.page.waitForTimeout(500);
  expect(await row("B").getByText("missing").count()).toBe(0);
});

it("takes it once the row stands there", async () => {
  await row("B").getByRole("button").tap();
  await row("B").getByText("1 number missing").waitFor();
  await expect.poll(() => phone.chromium.page.getByText("the rings changed places").count()).toBe(0);
});
