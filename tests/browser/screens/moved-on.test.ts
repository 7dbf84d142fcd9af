/** Who goes elsewhere while something is still being written down stays there. */
import { afterAll, beforeAll, expect, it } from "vitest";
import type { Kind } from "../../../src/record/ids.ts";
import { sampleFarm } from "../accessibility/sample.ts";
import { until } from "../drivers/driver.ts";
import { type OnPhone, onPhone } from "./on-phone.ts";
import { storedRecords } from "./on-record.ts";

let phone: OnPhone;
const { rows, addresses } = sampleFarm();
const page = () => phone.chromium.page;
const hash = () => phone.chromium.run(() => location.hash);

beforeAll(async () => {
  phone = await onPhone(rows);
});
afterAll(() => phone.close());

const isDeleted = async (kind: Kind, id: string): Promise<boolean> =>
  (await storedRecords(phone.chromium, kind)).some((one) => one.id === id && one.revs[0]?.deleted === true);

/** Touches the key with these words and goes to another address in the same moment. */
const touchAndGo = (words: string, address: string) =>
  phone.chromium.run(
    (text, to) => {
      [...document.querySelectorAll("main button")]
        .filter((key): key is HTMLButtonElement => key.textContent?.trim() === text)
        .at(-1)
        ?.click();
      location.hash = to;
    },
    words,
    address,
  );

it("leads on from where the key was touched, as long as he stays", async () => {
  await phone.goTo(addresses["spot"] ?? "");
  await phone.write("What is it called?", "by the gate");
  await phone.touch("Keep this spot");
  await page().waitForURL((url) => url.hash === addresses["field"]);
});

it.each([
  ["note", "Delete this note", "Delete", "observation"],
  ["line-sheet", "Delete this line", "Delete", "observation"],
  ["ring-sheet", "Delete this ring", "Delete", "observation"],
  ["hole-sheet", "Delete this hole", "Delete", "observation"],
  ["field", "Delete this field", "Yes, delete it", "field"],
] as const)("leaves him where he went from the %s that he deleted", async (screen, ask, yes, kind) => {
  const address = addresses[screen] ?? "";
  const id = /(?:observation|field)-[0-9a-f]+/.exec(address)?.[0] ?? "";
  await phone.goTo(address);
  await page().getByRole("button", { name: ask, exact: true }).tap();
  await page().getByRole("button", { name: yes, exact: true }).last().waitFor();
  await touchAndGo(yes, "#/help");
  await until("it is deleted", () => isDeleted(kind, id));
  await page().waitForTimeout(300);
  expect(await hash()).toBe("#/help");
});
