/** Draws the picture: 1080 by 1350 points of paper, so that it fills a phone upright and prints on half a page. */
import type { Content, HalfWritten } from "./content.ts";
import {
  type Block,
  besideEachOther,
  CLAY,
  figureBlock,
  INK,
  PAPER,
  RULE,
  stacked,
  textBlock,
} from "./paper.ts";

export const WIDE_PX = 1080;
export const HIGH_PX = 1350;
const EDGE = 64;
const INSIDE = WIDE_PX - 2 * EDGE;
const GUTTER = 48;
const HALF = (INSIDE - GUTTER) / 2;
/** A photo is worth its place from this height on, and no higher than that. */
const PHOTO_LEAST = 220;
const PHOTO_MOST = 460;

/** Markers, lines and names of the two numbers: never told apart by colour alone. */
const COLOURS = ["#000000", "#0072b2"] as const;
const DASHES: readonly (readonly number[])[] = [[], [22, 10]];

const column = (at: number) => ({ left: EDGE + at * (HALF + GUTTER), width: HALF });
const whole = { left: EDGE, width: INSIDE } as const;

const ruleBlock = (ctx: CanvasRenderingContext2D): Block => ({
  height: 4,
  draw: (top) => {
    ctx.fillStyle = RULE;
    ctx.fillRect(EDGE, top, INSIDE, 4);
  },
});

const halfBlock = (ctx: CanvasRenderingContext2D, half: HalfWritten, at: number, scale: number): Block => {
  const place = column(at);
  return stacked(
    [
      textBlock(ctx, half.name, { px: 38 * scale, weight: 700, colour: INK }, place),
      figureBlock(ctx, half.value, half.unit, { px: 150 * scale, weight: 700, colour: INK }, place),
      textBlock(ctx, half.range, { px: 32 * scale, weight: 600, colour: INK }, place),
      ...(half.guess === ""
        ? []
        : [textBlock(ctx, half.guess, { px: 32 * scale, weight: 400, colour: INK }, place)]),
    ],
    4,
  );
};

const marker = (ctx: CanvasRenderingContext2D, at: number, x: number, y: number): void => {
  ctx.beginPath();
  if (at === 0) ctx.rect(x - 15, y - 15, 30, 30);
  else ctx.arc(x, y, 17, 0, 2 * Math.PI);
  ctx.fill();
};

/** One number with its range on the scale that both share. */
const barBlock = (ctx: CanvasRenderingContext2D, half: HalfWritten, at: number, named: boolean): Block => {
  const label = textBlock(ctx, half.name, { px: 26, weight: 600, colour: INK }, whole);
  const labelHigh = named ? label.height : 0;
  return {
    height: labelHigh + 52,
    draw: (top) => {
      if (named) label.draw(top);
      const y = top + labelHigh + 26;
      const across = (share: number): number => EDGE + 18 + share * (INSIDE - 36);
      ctx.fillStyle = RULE;
      ctx.fillRect(EDGE, y - 1.5, INSIDE, 3);
      const colour = COLOURS[at] ?? INK;
      ctx.strokeStyle = colour;
      ctx.fillStyle = colour;
      if (half.from !== null && half.to !== null) {
        ctx.lineWidth = 9;
        ctx.setLineDash([...(DASHES[at] ?? [])]);
        ctx.beginPath();
        ctx.moveTo(across(half.from), y);
        ctx.lineTo(across(half.to), y);
        ctx.stroke();
        ctx.setLineDash([]);
        ctx.lineWidth = 5;
        for (const end of half.to < 1 ? [half.from, half.to] : [half.from]) {
          ctx.beginPath();
          ctx.moveTo(across(end), y - 16);
          ctx.lineTo(across(end), y + 16);
          ctx.stroke();
        }
      }
      marker(ctx, at, across(half.at), y);
    },
  };
};

const axisBlock = (ctx: CanvasRenderingContext2D, [low, high]: Content["scale"]): Block => ({
  height: 34,
  draw: (top) => {
    textBlock(ctx, low, { px: 26, weight: 400, colour: INK }, whole).draw(top);
    const width = ctx.measureText(high).width;
    textBlock(
      ctx,
      high,
      { px: 26, weight: 400, colour: INK },
      { left: EDGE + INSIDE - width, width: width + 2 },
    ).draw(top);
  },
});

/** A photo with the words that belong to it. */
export interface CaptionedPhoto {
  readonly bitmap: ImageBitmap;
  readonly caption: string;
}

/** A photo cut to its frame from the middle, never stretched. */
const photoBlock = (
  ctx: CanvasRenderingContext2D,
  photo: ImageBitmap,
  { left, width }: { readonly left: number; readonly width: number },
  height: number,
): Block => ({
  height,
  draw: (top) => {
    const scale = Math.max(width / photo.width, height / photo.height);
    const [wide, high] = [width / scale, height / scale];
    ctx.drawImage(
      photo,
      (photo.width - wide) / 2,
      (photo.height - high) / 2,
      wide,
      high,
      left,
      top,
      width,
      height,
    );
    ctx.strokeStyle = INK;
    ctx.lineWidth = 3;
    ctx.strokeRect(left, top, width, height);
  },
});

const photosBlock = (
  ctx: CanvasRenderingContext2D,
  photos: readonly CaptionedPhoto[],
  height: number,
): Block =>
  besideEachOther(
    photos.map(({ bitmap, caption }, at) => {
      const place = photos.length === 1 ? whole : column(at);
      return stacked(
        [
          photoBlock(ctx, bitmap, place, height),
          textBlock(ctx, caption, { px: 24, weight: 400, colour: INK }, place),
        ],
        6,
      );
    }),
  );

const textBlocks = (ctx: CanvasRenderingContext2D, content: Content, scale: number, withBars: boolean) => {
  const text = (words: string, px: number, weight = 400, colour = INK): Block =>
    textBlock(ctx, words, { px: px * scale, weight, colour }, whole);
  const head = stacked(
    [
      text(content.field, 58, 700),
      ...(content.invented === "" ? [] : [text(content.invented, 34, 700, CLAY)]),
      text(`${content.day} · ${content.what}`, 34, 600),
    ],
    6,
  );
  const numbers = [
    ...content.unlike.map((one) => text(one, 30, 700, CLAY)),
    besideEachOther(content.halves.map((half, at) => halfBlock(ctx, half, at, scale))),
    ...(withBars
      ? [
          stacked(
            [
              ...content.halves.map((half, at) => barBlock(ctx, half, at, content.halves.length > 1)),
              axisBlock(ctx, content.scale),
            ],
            2,
          ),
        ]
      : []),
    ...content.said.map((one, at) => text(one, at === 0 ? 38 : 32, at === 0 ? 700 : 400)),
  ];
  const last = stacked(
    [text(content.notShownTitle, 28, 700), ...content.notShown.map((one) => text(one, 27))],
    2,
  );
  return { head, numbers, last };
};

/** Text is made smaller in these steps until all of it is on the paper. */
const SCALES = [1, 0.92, 0.84, 0.76, 0.68, 0.6] as const;
const GAP = 22;

/**
 * Draws the picture onto a canvas of `WIDE_PX` by `HIGH_PX`.
 *
 * Whatever has to be said beside the numbers is never left out for want of room: the letters become smaller, and
 * photos take what is left.
 *
 * @param photos none, one or two
 */
export const drawPicture = (
  ctx: CanvasRenderingContext2D,
  content: Content,
  photos: readonly CaptionedPhoto[],
): void => {
  ctx.fillStyle = PAPER;
  ctx.fillRect(0, 0, WIDE_PX, HIGH_PX);
  const foot = textBlock(ctx, content.foot, { px: 25, weight: 400, colour: INK }, whole);
  const room = HIGH_PX - 2 * EDGE - foot.height - GAP;
  let chosen = { blocks: [] as readonly Block[], free: 0 };
  for (const scale of SCALES) {
    const { head, numbers, last } = textBlocks(ctx, content, scale, photos.length === 0);
    const before = [head, ruleBlock(ctx)];
    const after = [...numbers, ruleBlock(ctx), last];
    const used = [...before, ...after].reduce((sum, { height }) => sum + height + GAP, 0);
    const free = room - used;
    const captionHigh = photosBlock(ctx, photos, 0).height;
    const photoHigh = Math.min(PHOTO_MOST, free - GAP - captionHigh);
    if (photos.length === 0) chosen = { blocks: [...before, ...after], free };
    else
      chosen = {
        blocks: [...before, photosBlock(ctx, photos, Math.max(PHOTO_LEAST, photoHigh)), ...after],
        free: free - GAP - captionHigh - Math.max(PHOTO_LEAST, photoHigh),
      };
    if (chosen.free >= 0) break;
  }
  // What is left over goes between the blocks, as far as they still belong together.
  const spare = Math.min(26, Math.max(0, chosen.free) / Math.max(1, chosen.blocks.length - 1));
  stacked(chosen.blocks, GAP + spare).draw(EDGE);
  foot.draw(HIGH_PX - EDGE - foot.height + 10);
};
