/** Makes the file of the picture. */
import type { Connection } from "../../../store/connection.ts";
import { photo } from "../../../store/photos.ts";
import type { Listed } from "../../parts/reader.ts";
import type { Content } from "./content.ts";
import { type CaptionedPhoto, drawPicture, HIGH_PX, WIDE_PX } from "./draw.ts";

/** The picture, and how many of its photos could not be opened. */
export interface MadePicture {
  readonly file: File;
  readonly photosLost: number;
}

const bitmapOf = async (connection: Connection, { body }: Listed<"photo">): Promise<ImageBitmap | null> => {
  const row = await photo(connection, body.sha256);
  if (!row.ok || row.value === undefined) return null;
  // Bytes that another program wrote may be no picture at all: the numbers go out without it.
  return createImageBitmap(new Blob([row.value.bytes], { type: row.value.type })).catch(() => null);
};

const fileOf = (canvas: HTMLCanvasElement, name: string): Promise<File | null> =>
  new Promise((resolve) => {
    canvas.toBlob((blob) => {
      resolve(blob === null ? null : new File([blob], name, { type: "image/png" }));
    }, "image/png");
  });

/**
 * Draws the picture and puts it into a file. The photos are opened one after the other and given back at once.
 *
 * @returns null when this browser cannot draw it (no canvas, or no memory for one)
 */
export const makePictureFile = async (
  connection: Connection,
  content: Content,
  photos: readonly { readonly photo: Listed<"photo">; readonly caption: string }[],
  name: string,
): Promise<MadePicture | null> => {
  const canvas = document.createElement("canvas");
  canvas.width = WIDE_PX;
  canvas.height = HIGH_PX;
  const ctx = canvas.getContext("2d");
  if (ctx === null) return null;
  const drawn: CaptionedPhoto[] = [];
  for (const one of photos) {
    const bitmap = await bitmapOf(connection, one.photo);
    if (bitmap !== null) drawn.push({ bitmap, caption: one.caption });
  }
  drawPicture(ctx, content, drawn);
  for (const { bitmap } of drawn) bitmap.close();
  const file = await fileOf(canvas, name);
  return file === null ? null : { file, photosLost: photos.length - drawn.length };
};
