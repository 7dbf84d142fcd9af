/** Pictures made small in a real browser. */
import { afterEach, expect, test, vi } from "vitest";
import { LONGEST_EDGE_PX, makePicture, type Picture } from "../../src/device/camera.ts";
import { heicHead, holds, withExif } from "./picture-samples.ts";
import { need } from "./store-samples.ts";

afterEach(() => vi.restoreAllMocks());

/** Four quarters: red and green above, blue and yellow below. */
const QUARTERS = ["#f00", "#0f0", "#00f", "#ff0"] as const;

const drawnBlob = (
  width: number,
  height: number,
  draw: (pen: CanvasRenderingContext2D) => void,
  type = "image/jpeg",
  quality = 0.95,
): Promise<Blob> => {
  const canvas = document.createElement("canvas");
  canvas.width = width;
  canvas.height = height;
  const pen = canvas.getContext("2d");
  if (pen === null) throw new Error("no canvas");
  draw(pen);
  return new Promise((resolve, reject) =>
    canvas.toBlob((blob) => (blob === null ? reject(new Error("no blob")) : resolve(blob)), type, quality),
  );
};
const quarters = (width: number, height: number, type?: string): Promise<Blob> =>
  drawnBlob(
    width,
    height,
    (pen) => {
      for (const [at, colour] of QUARTERS.entries()) {
        pen.fillStyle = colour;
        pen.fillRect((at % 2) * (width / 2), at < 2 ? 0 : height / 2, width / 2, height / 2);
      }
    },
    type,
  );
/** Noise, as stubble is: it does not shrink by itself. */
const stubble = (width: number, height: number, quality: number): Promise<Blob> =>
  drawnBlob(
    width,
    height,
    (pen) => {
      for (let at = 0; at < 4000; at++) {
        pen.fillStyle = `hsl(${(at * 47) % 360} 60% ${(at * 31) % 100}%)`;
        pen.fillRect((at * 127) % width, (at * 241) % height, width / 40, height / 200);
      }
    },
    "image/jpeg",
    quality,
  );
const bytesOf = async (blob: Blob) => new Uint8Array(await blob.arrayBuffer());

/** The colour in the middle of each quarter, as the nearest of the four. */
const coloursOf = async ({ bytes, widthPx, heightPx }: Picture): Promise<readonly string[]> => {
  const bitmap = await createImageBitmap(new Blob([bytes], { type: "image/jpeg" }));
  expect([bitmap.width, bitmap.height]).toEqual([widthPx, heightPx]);
  const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
  const pen = canvas.getContext("2d");
  pen?.drawImage(bitmap, 0, 0);
  return [0, 1, 2, 3].map((at) => {
    const x = Math.round(bitmap.width * (at % 2 === 0 ? 0.25 : 0.75));
    const y = Math.round(bitmap.height * (at < 2 ? 0.25 : 0.75));
    const [red = 0, green = 0, blue = 0] = pen?.getImageData(x, y, 1, 1).data ?? [];
    return `#${[red, green, blue].map((part) => (part > 128 ? "f" : "0")).join("")}`;
  });
};

test("a large photo is made small, with its longest edge at 1600 px", async () => {
  const picture = need(await makePicture(await stubble(4000, 3000, 0.95)));
  expect([picture.widthPx, picture.heightPx]).toEqual([1600, 1200]);
  expect(picture.plain).toBe(false);
  expect(await crypto.subtle.digest("SHA-256", picture.bytes).then(hexOf)).toBe(picture.sha256);
});

const hexOf = (digest: ArrayBuffer): string =>
  Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, "0")).join("");

// Exif 2.32, tag 274: in 6 row 0 is the visual right-hand side, in 3 the visual bottom, in 8 the left-hand side.
const TURNED = [
  [1, ["#f00", "#0f0", "#00f", "#ff0"]],
  [3, ["#ff0", "#00f", "#0f0", "#f00"]],
  [6, ["#00f", "#f00", "#ff0", "#0f0"]],
  [8, ["#0f0", "#ff0", "#f00", "#00f"]],
] as const;

for (const way of ["with the options of decoding", "without them"] as const)
  test(`a photo is turned the right way up and loses its position, ${way}`, async () => {
    if (way === "without them")
      vi.spyOn(globalThis, "createImageBitmap").mockRejectedValue(new TypeError("unknown option"));
    const plain = await bytesOf(await quarters(2400, 1200));
    const pictures: (readonly [number, Picture])[] = [];
    for (const [orientation] of TURNED) {
      const photo = withExif(plain, orientation);
      expect(holds(photo, "Exif")).toBe(true);
      pictures.push([orientation, need(await makePicture(new Blob([photo], { type: "image/jpeg" })))]);
    }
    vi.restoreAllMocks();
    for (const [orientation, picture] of pictures) {
      const colours = TURNED.find(([one]) => one === orientation)?.[1];
      expect(await coloursOf(picture)).toEqual(colours);
      const upright = orientation < 5;
      expect([picture.widthPx, picture.heightPx]).toEqual(upright ? [1600, 800] : [800, 1600]);
      expect(holds(new Uint8Array(picture.bytes), "Exif")).toBe(false);
    }
  });

test("a browser that pays no heed to the size still gives a small picture", async () => {
  const real = globalThis.createImageBitmap;
  vi.spyOn(globalThis, "createImageBitmap").mockImplementation((source: ImageBitmapSource) => real(source));
  const file = await quarters(2000, 1000);
  const picture = need(await makePicture(file));
  vi.restoreAllMocks();
  expect([picture.widthPx, picture.heightPx]).toEqual([1600, 800]);
  expect(await coloursOf(picture)).toEqual(QUARTERS);
});

test("a picture is never made larger, in points or in bytes", async () => {
  const small = await stubble(600, 400, 0.5);
  const picture = need(await makePicture(small));
  expect([picture.widthPx, picture.heightPx]).toEqual([600, 400]);
  expect(picture.bytes.byteLength).toBeLessThanOrEqual(small.size);
});

test("the same picture gives the same bytes", async () => {
  const file = await stubble(1800, 1200, 0.9);
  expect(need(await makePicture(file)).sha256).toBe(need(await makePicture(file)).sha256);
});

test("a long narrow picture keeps at least one point across; a see-through one stands on white", async () => {
  const narrow = need(await makePicture(await quarters(8000, 2, "image/png")));
  expect([narrow.widthPx, narrow.heightPx]).toEqual([LONGEST_EDGE_PX, 1]);
  const clear = need(
    await makePicture(await drawnBlob(100, 100, (pen) => pen.fillRect(0, 0, 10, 10), "image/png")),
  );
  const bitmap = await createImageBitmap(new Blob([clear.bytes]));
  const pen = new OffscreenCanvas(100, 100).getContext("2d");
  pen?.drawImage(bitmap, 0, 0);
  expect(pen?.getImageData(60, 60, 1, 1).data[0]).toBeGreaterThan(250);
});

test("a photo of one plain colour is kept and said", async () => {
  const dark = await drawnBlob(400, 300, (pen) => pen.fillRect(0, 0, 400, 300));
  expect(need(await makePicture(dark)).plain).toBe(true);
});

test("what is no picture is refused with its reason, and no address of it is left", async () => {
  const made = vi.spyOn(URL, "createObjectURL");
  const revoked = vi.spyOn(URL, "revokeObjectURL");
  const codeOf = async (file: Blob) => {
    const picture = await makePicture(file);
    return picture.ok ? "kept" : picture.problem.code;
  };
  expect(await codeOf(new Blob(["rows and rows"], { type: "text/plain" }))).toBe("device/not-a-picture");
  expect(await codeOf(new Blob(["a word"], { type: "image/jpeg" }))).toBe("device/not-a-picture");
  expect(await codeOf(new Blob([]))).toBe("device/not-a-picture");
  expect(await codeOf(new Blob([heicHead()], { type: "image/heic" }))).toBe("device/picture-heif");
  const cut = (await bytesOf(await quarters(400, 300))).slice(0, 30);
  expect(await codeOf(new Blob([cut]))).toBe("device/not-a-picture");
  expect(revoked.mock.calls).toEqual(made.mock.results.map(({ value }) => [value]));
});

test("what is too large is not opened", async () => {
  const piece = new Uint8Array(1_000_000);
  const large = new Blob(Array.from({ length: 61 }, () => piece));
  expect(await makePicture(large)).toEqual({
    ok: false,
    problem: { code: "device/picture-too-large", facts: { is: "61 MB", most: "60 MB" } },
  });
});

test("a file that was taken away meanwhile is said", async () => {
  const gone = new Blob(["x"]);
  vi.spyOn(gone, "slice").mockReturnValue({
    arrayBuffer: () => Promise.reject(new DOMException("gone", "NotReadableError")),
  } as unknown as Blob);
  expect(await makePicture(gone)).toMatchObject({ problem: { code: "device/picture-unreadable" } });
});
