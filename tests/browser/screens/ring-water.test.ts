/** Water of the day where nobody measures it: the litres on the board go by the ruler. */
import { afterAll, beforeAll, it } from "vitest";
import { dayOf } from "../../../src/screens/parts/numbers.ts";
import { beginSample, fieldOf } from "../../bench/seed.ts";
import { ringOf } from "../../bench/seed-rings.ts";
import { answerOnPad, type OnPhone, onPhone } from "./on-phone.ts";

let phone: OnPhone;
let board = "";
let ring = "";

beforeAll(async () => {
  const { add, rows } = beginSample();
  const field = add("field", fieldOf("Low Ridge"));
  const visit = add("visit", { field, day: dayOf(Date.now()), harvestYear: null });
  const strip = add("strip", { field, name: "straw left", done: [], wholeField: false, rep: null });
  const kit = add("kit", {
    type: "ring",
    name: "A",
    insideM: [0.3, 0.302],
    heightsM: [0.25],
    outsideM: null,
  });
  ring = add("observation", ringOf({ visit, field, strip, ring: kit }, { startedAtMs: Date.now() }));
  board = `#/visit/${visit}/rings`;
  phone = await onPhone(rows());
});
afterAll(() => phone.close());

const key = (name: string) => phone.chromium.page.getByRole("button", { name, exact: true }).first();
const answer = (digits: string) => answerOnPad(phone.chromium.page, digits);

it("counts the first filling by its depth", async () => {
  await phone.goTo(board);
  await phone.reads("Poured: 0 L");
  await phone.goTo(`#/ring/${ring}`);
  await key("Start").tap();
  await answer("100");
  await phone.reads("Taken: 100 mm deep");
  await phone.goTo(board);
  // 100 mm in a ring of 30 cm by 30.2 cm: 1 dm · π/4 · 3 dm · 3.02 dm = 7.116 L.
  await phone.reads("Poured: about 7.1 L");
  await phone.touch("Water at hand?");
  await phone.write("How much water stands ready now, in litres?", "20");
  await key("Keep it").tap();
  await phone.reads("Water left: 20 L");
});

it("counts a refill that nobody measured by what it raised, and less is left", async () => {
  await phone.goTo(`#/ring/${ring}`);
  await key("Refill").tap();
  await answer("60");
  await phone.reads("how much water was poured in?");
  await key("Not measured").tap();
  await key("Read now").tap();
  await answer("95");
  await phone.reads("Taken: 95 mm deep");
  await phone.goTo(board);
  // 35 mm more: 2.490 L.
  await phone.reads("Poured: about 9.6 L");
  await phone.reads("Water left: about 17.5 L");
});
