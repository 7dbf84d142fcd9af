/** What a person does, as script: the only way to touch that every engine's driver has. */
import { type Driver, until } from "../browser/drivers/driver.ts";

/** A key, link, answer or row is touched once it is there and may be touched. */
export const touch = (driver: Driver, words: string): Promise<void> =>
  until(`"${words}" is touched`, () =>
    driver.run((wanted) => {
      const all = [...document.querySelectorAll<HTMLElement>("a, button, label")];
      const said = (one: HTMLElement) => (one.getAttribute("aria-label") ?? one.textContent ?? "").trim();
      const found =
        all.find((one) => said(one) === wanted) ?? all.find((one) => said(one).startsWith(wanted));
      if (found === undefined || (found instanceof HTMLButtonElement && found.disabled)) return false;
      found.click();
      return true;
    }, words),
  );

/** Writes on the line whose label begins with these words. */
export const write = (driver: Driver, label: string, text: string): Promise<void> =>
  until(`"${text}" is written on "${label}"`, () =>
    driver.run(
      (wanted, typed) => {
        const found = [...document.querySelectorAll("label")].find((one) =>
          (one.textContent ?? "").trim().startsWith(wanted),
        );
        const line = found?.control;
        if (!(line instanceof HTMLInputElement || line instanceof HTMLTextAreaElement)) return false;
        line.value = typed;
        line.dispatchEvent(new Event("input", { bubbles: true }));
        return true;
      },
      label,
      text,
    ),
  );

/** Waits until these words stand on the screen. */
export const reads = (driver: Driver, words: string): Promise<void> =>
  until(`it reads "${words}"`, () =>
    driver.run(
      (wanted) =>
        (document.querySelector("#app")?.textContent ?? "").replaceAll(/\s+/gu, " ").includes(wanted),
      words,
    ),
  );

/** Touches an answer key several times, slower than a drop of water. */
export const answer = (driver: Driver, key: string, times: number): Promise<void> =>
  driver.run(
    async (name, touches) => {
      for (let n = 0; n < touches; n++) {
        await new Promise((resolve) => setTimeout(resolve, n === 0 ? 300 : 60));
        document.querySelector<HTMLElement>(`[data-answer="${name}"]`)?.click();
      }
    },
    key,
    times,
  );

/** Types on the number pad. */
export const type = async (driver: Driver, digits: string): Promise<void> => {
  for (const digit of digits)
    await until(`${digit} is typed`, () =>
      driver.run((wanted) => {
        const key = [...document.querySelectorAll<HTMLElement>(".pad-keys button")].find(
          ({ textContent }) => textContent?.trim() === wanted,
        );
        key?.click();
        return key !== undefined;
      }, digit),
    );
  await touch(driver, "Done");
};
