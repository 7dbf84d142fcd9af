import type { Migration } from "./migration.ts";

/** The first structure. A released migration is never changed: databases out there were made by it. */
export const version1: Migration = {
  version: 1,
  up: (db) => {
    const records = db.createObjectStore("records", { keyPath: "id" });
    records.createIndex("kind", ["keys.kind", "keys.living", "keys.atMs"]);
    records.createIndex("field", ["keys.field", "keys.kind", "keys.living", "keys.atMs"]);
    records.createIndex("visit", ["keys.visit", "keys.living", "keys.atMs"]);
    records.createIndex("strip", ["keys.strip", "keys.living", "keys.atMs"]);
    db.createObjectStore("entries", { keyPath: "id" });
    db.createObjectStore("photos", { keyPath: "sha256" });
    db.createObjectStore("meta");
    db.createObjectStore("fieldStates", { keyPath: "field" });
    db.createObjectStore("summaries", { keyPath: ["field", "science"] });
    db.createObjectStore("staged", { keyPath: ["import", "n"] });
    db.createObjectStore("imports", { keyPath: "id" });
    return Promise.resolve();
  },
};
