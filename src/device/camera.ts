/** Pictures from the camera or from a file: made small, and without what the camera wrote about them. */
import { beginDigest } from "../exchange/format/digest.ts";
import { failed, ok, type Result } from "../record/result.ts";

/** A picture as it is kept. */
export interface Picture {
  /** SHA-256 of the bytes, in hexadecimal. */
  readonly sha256: string;
  readonly type: "image/jpeg";
  readonly bytes: ArrayBuffer;
  readonly widthPx: number;
  readonly heightPx: number;
  /** One plain colour all over: the lens was covered, or the browser drew nothing. */
  readonly plain: boolean;
}

/** The longest edge of a kept picture: a leaf can be told from a stone, and 1,000 pictures fit on a phone. */
export const LONGEST_EDGE_PX = 1600;
/** A file larger than this is not opened: it would push the readings out of the memory of a phone. */
export const MOST_FILE_BYTES = 60_000_000;
/** More picture points than this take about 300 MB to open, and an old phone throws the page away instead. */
export const MOST_PIXELS = 70_000_000;
/** JPEG qualities that are tried until the picture is no larger than the file that it was made from. */
const QUALITIES = [0.8, 0.65, 0.5, 0.35] as const;
/** A picture is looked at in so many by so many points to find out whether anything is on it. */
const LOOK_POINTS = 16;

/**
 * Width and height of a picture whose longest edge is at most `LONGEST_EDGE_PX`. It is never made larger.
 *
 * @example
 * fitted(4000, 3000) // => { widthPx: 1600, heightPx: 1200 }
 */
export const fitted = (
  widthPx: number,
  heightPx: number,
): { readonly widthPx: number; readonly heightPx: number } => {
  const scale = Math.min(1, LONGEST_EDGE_PX / Math.max(widthPx, heightPx));
  return {
    widthPx: Math.max(1, Math.round(widthPx * scale)),
    heightPx: Math.max(1, Math.round(heightPx * scale)),
  };
};

const HEIF_BRANDS: ReadonlySet<string> = new Set([
  "heic",
  "heix",
  "heim",
  "heis",
  "hevc",
  "hevx",
  "mif1",
  "msf1",
]);

/**
 * Whether a file begins like a picture in HEIC or HEIF (ISO/IEC 23008-12), which most browsers cannot open.
 *
 * @param head the first 12 bytes or more
 */
export const isHeif = (head: Uint8Array): boolean => {
  const text = String.fromCharCode(...head.subarray(4, 12));
  return text.startsWith("ftyp") && HEIF_BRANDS.has(text.slice(4));
};

/** A picture as an element of the page: it says its size, turned the right way up, before it is opened. */
const elementOf = (address: string): Promise<HTMLImageElement | null> =>
  new Promise((resolve) => {
    const element = new Image();
    element.onload = () => resolve(element.naturalWidth > 0 && element.naturalHeight > 0 ? element : null);
    element.onerror = () => resolve(null);
    element.src = address;
  });

type Size = ReturnType<typeof fitted>;

/**
 * The picture made small while it is opened, so that the full size is never held. Null in a browser that
 * does not know the options, or that pays no heed to them.
 */
const openedSmall = async (file: Blob, { widthPx, heightPx }: Size): Promise<ImageBitmap | null> => {
  try {
    const bitmap = await createImageBitmap(file, {
      imageOrientation: "from-image",
      resizeWidth: widthPx,
      resizeHeight: heightPx,
      resizeQuality: "high",
    });
    if (bitmap.width === widthPx && bitmap.height === heightPx) return bitmap;
    bitmap.close();
    return null;
  } catch {
    return null;
  }
};

/** Draws onto white, which is what a see-through picture is seen on; null without a canvas. */
const drawn = (source: CanvasImageSource, { widthPx, heightPx }: Size): HTMLCanvasElement | null => {
  const canvas = document.createElement("canvas");
  canvas.width = widthPx;
  canvas.height = heightPx;
  const pen = canvas.getContext("2d");
  if (pen === null) return null;
  pen.imageSmoothingQuality = "high";
  pen.fillStyle = "#fff";
  pen.fillRect(0, 0, widthPx, heightPx);
  pen.drawImage(source, 0, 0, widthPx, heightPx);
  return canvas;
};

/** Nothing but one colour: some browsers draw a picture that is too large for them without any error. */
const isPlain = (canvas: HTMLCanvasElement): boolean => {
  const small = drawn(canvas, { widthPx: LOOK_POINTS, heightPx: LOOK_POINTS });
  const points = small?.getContext("2d")?.getImageData(0, 0, LOOK_POINTS, LOOK_POINTS).data;
  return points?.every((value, at) => Math.abs(value - (points[at % 4] ?? 0)) <= 1) ?? true;
};

/** A phone keeps the memory of a canvas until it has no size. */
const letGo = (canvas: HTMLCanvasElement | null): void => {
  if (canvas === null) return;
  canvas.width = 0;
  canvas.height = 0;
};

const drawnSmall = async (
  file: Blob,
  element: HTMLImageElement,
  size: Size,
): Promise<{ readonly canvas: HTMLCanvasElement; readonly plain: boolean } | null> => {
  const bitmap = await openedSmall(file, size);
  const first = bitmap === null ? null : drawn(bitmap, size);
  bitmap?.close();
  if (first !== null && !isPlain(first)) return { canvas: first, plain: false };
  letGo(first);
  const second = drawn(element, size);
  return second === null ? null : { canvas: second, plain: isPlain(second) };
};

const encoded = (canvas: HTMLCanvasElement, quality: number): Promise<Blob | null> =>
  new Promise((resolve) => canvas.toBlob(resolve, "image/jpeg", quality));

/** The first quality that makes the picture no larger than its file, else the smallest that came out. */
const smallEnough = async (canvas: HTMLCanvasElement, fileBytes: number): Promise<Blob | null> => {
  let smallest: Blob | null = null;
  for (const quality of QUALITIES) {
    const made = await encoded(canvas, quality);
    // A browser that cannot write JPEG hands out PNG instead.
    if (made === null || made.type !== "image/jpeg") return smallest;
    if (smallest === null || made.size < smallest.size) smallest = made;
    if (made.size <= fileBytes) return made;
  }
  return smallest;
};

/** The first bytes of a file; null when it cannot be read, for instance because it was taken away meanwhile. */
const headOf = async (file: Blob): Promise<Uint8Array | null> => {
  try {
    return new Uint8Array(await file.slice(0, LOOK_POINTS).arrayBuffer());
  } catch {
    return null;
  }
};

/**
 * Makes the picture that is kept of a file: turned the right way up, its longest edge at most 1600 px, written
 * anew as JPEG. By being written anew it loses what the camera wrote into it, its position above all.
 *
 * @param file what a camera or a person's choice of files gave
 * @returns the picture; or `device/picture-unreadable`, `device/picture-too-large` (is, most),
 *   `device/picture-heif`, `device/not-a-picture`, `device/picture-not-made`
 * @example
 * const picture = await makePicture(input.files[0]);
 * if (picture.ok) keep(picture.value.sha256, picture.value.bytes);
 */
export const makePicture = async (file: Blob): Promise<Result<Picture>> => {
  if (file.size > MOST_FILE_BYTES)
    return failed("device/picture-too-large", {
      is: `${Math.round(file.size / 1e6)} MB`,
      most: `${MOST_FILE_BYTES / 1e6} MB`,
    });
  const head = await headOf(file);
  if (head === null) return failed("device/picture-unreadable");
  const address = URL.createObjectURL(file);
  try {
    const element = await elementOf(address);
    if (element === null) return failed(isHeif(head) ? "device/picture-heif" : "device/not-a-picture");
    const { naturalWidth, naturalHeight } = element;
    if (naturalWidth * naturalHeight > MOST_PIXELS)
      return failed("device/picture-too-large", {
        is: `${Math.round((naturalWidth * naturalHeight) / 1e6)} megapixels`,
        most: `${MOST_PIXELS / 1e6} megapixels`,
      });
    return await written(file, element, fitted(naturalWidth, naturalHeight));
  } finally {
    URL.revokeObjectURL(address);
  }
};

const written = async (file: Blob, element: HTMLImageElement, size: Size): Promise<Result<Picture>> => {
  const made = await drawnSmall(file, element, size);
  const blob = made === null ? null : await smallEnough(made.canvas, file.size);
  letGo(made?.canvas ?? null);
  if (made === null || blob === null) return failed("device/picture-not-made");
  const bytes = await blob.arrayBuffer();
  const digest = beginDigest();
  digest.add(new Uint8Array(bytes));
  return ok({ sha256: digest.hex(), type: "image/jpeg", bytes, ...size, plain: made.plain });
};
