/** What lies on record behind the screens, and photos to lay there. */
import type { ChromiumDriver } from "../drivers/chromium.ts";
import { withExif } from "../picture-samples.ts";

/** A photo as a phone takes it: drawn in the page, with the position of the camera in it. */
export const photoOf = async (chromium: ChromiumDriver, colour: string): Promise<Buffer> => {
  const base64 = await chromium.run((fill) => {
    const canvas = document.createElement("canvas");
    canvas.width = 2400;
    canvas.height = 1800;
    const pen = canvas.getContext("2d");
    if (pen !== null) {
      pen.fillStyle = fill;
      pen.fillRect(0, 0, 2400, 900);
      for (let row = 0; row < 40; row++) pen.fillRect(row * 60, 900, 24, 900);
    }
    return canvas.toDataURL("image/jpeg", 0.95).split(",")[1] ?? "";
  }, colour);
  return Buffer.from(withExif(new Uint8Array(Buffer.from(base64, "base64")), 1));
};

export interface Stored {
  readonly id: string;
  readonly erased: boolean;
  readonly revs: readonly {
    readonly deleted?: true;
    readonly dot: readonly [string, number];
    readonly body: {
      readonly type?: string;
      readonly text?: string;
      readonly strip?: string | null;
      readonly spot?: string;
      readonly visit?: string;
      readonly field?: string;
      readonly of?: string;
      readonly at?: { readonly position: Where | null };
      readonly start?: { readonly position: Where | null };
    };
  }[];
}
interface Where {
  readonly latitudeDeg: number;
  readonly how: string;
  readonly fixes: number;
  readonly movedFrom?: Where;
}
/** What lies in the database, read by the raw interface. */
export const storedRecords = async (chromium: ChromiumDriver, kind: string): Promise<readonly Stored[]> =>
  JSON.parse(
    await chromium.run(async (prefix) => {
      const db = await new Promise<IDBDatabase>((resolve) => {
        const request = indexedDB.open("mulchmark");
        request.onsuccess = () => resolve(request.result);
      });
      const rows = await new Promise((resolve) => {
        const request = db
          .transaction("records")
          .objectStore("records")
          .getAll(IDBKeyRange.bound(`${prefix}-`, `${prefix}-~`));
        request.onsuccess = () => resolve(request.result);
      });
      db.close();
      return JSON.stringify(rows);
    }, kind),
  );
