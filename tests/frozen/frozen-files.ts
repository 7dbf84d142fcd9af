/** The frozen files as an in-browser test finds them. */
import { expect } from "vitest";
import { openStore, type Store } from "../../src/store/store.ts";
import { need } from "../browser/store-samples.ts";
import { dumpDatabase, type FrozenDatabase, loadDatabase } from "./raw-database.ts";

const databases = import.meta.glob<string>("./db-*.json", { query: "?raw", import: "default", eager: true });
const archives = import.meta.glob<string>("./archive-*.mulchmark.zip", {
  query: "?url",
  import: "default",
  eager: true,
});

/** Text of a frozen database. */
export const frozenDatabase = (number: number): string => {
  const text = databases[`./db-${number}.json`];
  if (text === undefined) throw new Error(`Database ${number} was not frozen yet: see freeze.mjs`);
  return text;
};

/** A frozen archive as a file that somebody chose. */
export const frozenArchive = async (number: number): Promise<File> => {
  const url = archives[`./archive-${number}.mulchmark.zip`];
  if (url === undefined) throw new Error(`Archive ${number} was not frozen yet: see freeze.mjs`);
  const answer = await fetch(url);
  return new File([await answer.blob()], "frozen.zip", { type: "application/zip" });
};

/** Lays a database out under a new name. */
export const laidOut = async (text: string): Promise<string> => {
  const name = `frozen-${crypto.randomUUID()}`;
  await loadDatabase(name, text);
  return name;
};

/** Opens the store of today over a database. */
export const openToday = async (name: string): Promise<Store> =>
  need(await openStore({ name, tell: () => undefined, reload: () => undefined }));

/** The stores with their rows, whatever else the structure has become. */
export const rowsIn = async (
  name: string,
): Promise<Record<string, FrozenDatabase["stores"][number]["rows"]>> => {
  const { stores }: FrozenDatabase = JSON.parse(await dumpDatabase(name));
  return Object.fromEntries(stores.map((store) => [store.name, store.rows]));
};

/** Runs something and expects that not one row or version of the database is another afterwards. */
export const changesNothing = async (name: string, job: () => Promise<void>): Promise<void> => {
  const before = await dumpDatabase(name);
  await job();
  expect(await dumpDatabase(name)).toBe(before);
};
