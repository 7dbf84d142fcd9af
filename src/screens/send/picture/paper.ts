/** Blocks of text on a canvas: each knows its height before anything is drawn. */

/** Paper and ink, as in daylight: the picture is looked at on other people's screens and on paper. */
export const INK = "#1e1912";
export const PAPER = "#fbf7ec";
export const RULE = "#8a7d66";
export const CLAY = "#803611";
const FAMILY = 'system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", sans-serif';

/** How a text looks. */
export interface Look {
  readonly px: number;
  readonly weight: number;
  readonly colour: string;
}

/** Something that takes a height and draws itself at a place from the top. */
export interface Block {
  readonly height: number;
  readonly draw: (top: number) => void;
}

/** Height of a line over the size of its letters. */
const LEADING = 1.24;

const setLook = (ctx: CanvasRenderingContext2D, { px, weight, colour }: Look): void => {
  ctx.font = `${weight} ${px}px ${FAMILY}`;
  ctx.fillStyle = colour;
  ctx.textBaseline = "alphabetic";
};

/** A word that is wider than the line is broken where it is full: a long name must not run off the paper. */
const pieces = (ctx: CanvasRenderingContext2D, word: string, width: number): readonly string[] => {
  if (ctx.measureText(word).width <= width) return [word];
  const parts: string[] = [];
  let part = "";
  for (const letter of word) {
    if (part !== "" && ctx.measureText(part + letter).width > width) {
      parts.push(part);
      part = letter;
    } else part += letter;
  }
  return [...parts, part];
};

const linesOf = (ctx: CanvasRenderingContext2D, text: string, width: number): readonly string[] => {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/u).flatMap((one) => pieces(ctx, one, width))) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line !== "" && ctx.measureText(longer).width > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === "" ? lines : [...lines, line];
};

/** Text in lines of a width. */
export const textBlock = (
  ctx: CanvasRenderingContext2D,
  text: string,
  look: Look,
  { left, width }: { readonly left: number; readonly width: number },
): Block => {
  setLook(ctx, look);
  const lines = linesOf(ctx, text, width);
  const step = look.px * LEADING;
  return {
    height: lines.length * step,
    draw: (top) => {
      setLook(ctx, look);
      for (const [at, line] of lines.entries()) ctx.fillText(line, left, top + at * step + look.px);
    },
  };
};

/** A value and its unit behind it, smaller, made to fit the width. */
export const figureBlock = (
  ctx: CanvasRenderingContext2D,
  value: string,
  unit: string,
  look: Look,
  { left, width }: { readonly left: number; readonly width: number },
): Block => {
  const smaller = (px: number): Look => ({ ...look, px: px * 0.36 });
  const wide = (px: number): number => {
    setLook(ctx, { ...look, px });
    const first = ctx.measureText(value).width;
    setLook(ctx, smaller(px));
    return first + (unit === "" ? 0 : ctx.measureText(` ${unit}`).width);
  };
  const px = Math.min(look.px, (look.px * width) / wide(look.px));
  return {
    // Figures have nothing below their line, and less above it than letters.
    height: look.px * 0.98,
    draw: (top) => {
      const base = top + look.px * 0.86;
      setLook(ctx, { ...look, px });
      ctx.fillText(value, left, base);
      const after = left + ctx.measureText(value).width;
      setLook(ctx, smaller(px));
      if (unit !== "") ctx.fillText(` ${unit}`, after, base);
    },
  };
};

/** Blocks below each other with gaps between. */
export const stacked = (blocks: readonly Block[], gap: number): Block => ({
  height: blocks.reduce((sum, { height }) => sum + height, 0) + gap * Math.max(0, blocks.length - 1),
  draw: (top) => {
    let at = top;
    for (const block of blocks) {
      block.draw(at);
      at += block.height + gap;
    }
  },
});

/** Blocks beside each other; as high as the highest. */
export const besideEachOther = (blocks: readonly Block[]): Block => ({
  height: Math.max(0, ...blocks.map(({ height }) => height)),
  draw: (top) => {
    for (const block of blocks) block.draw(top);
  },
});
