/** Signs of the map as drawings, each with its own shape, and names written on the ground. */
import type { Sign } from "./drawing.ts";

const SVG = "http://www.w3.org/2000/svg";

/** Paths in a square of 24; the outline is drawn in ink, the inside in paper or in the colour of the sign. */
const PATHS: Readonly<Record<Sign, string>> = {
  // A peg in the ground with its flag.
  spot: "M7 22V3L19 7.5L7 12",
  // Blades of grass.
  "old-grass": "M12 22V6M12 22C12 15 9 11 4 9M12 22C12 15 15 11 20 9",
  // Ground of two kinds.
  edge: "M3 3H21V21H3ZM3 21L21 3",
  // A rope with its knots.
  line: "M1 12H23M6 8V16M12 8V16M18 8V16",
  ring: "M12 2A10 10 0 1 0 12.1 2Z",
  hole: "M3 3H21V21H3Z",
  // A leaf of paper with its corner folded.
  note: "M5 2H15L20 7V22H5ZM15 2V7H20",
};

/** Signs with room for a letter or a number. */
const LETTERED: ReadonlySet<Sign> = new Set(["ring", "hole"]);

/** A sign with the letters that stand in it. Text goes in as text, whatever it holds. */
export const signElement = (sign: Sign, label: string): HTMLElement => {
  const whole = document.createElement("div");
  whole.className = `sign sign-${sign}`;
  const drawing = document.createElementNS(SVG, "svg");
  drawing.setAttribute("viewBox", "0 0 24 24");
  const path = document.createElementNS(SVG, "path");
  path.setAttribute("d", PATHS[sign]);
  drawing.append(path);
  whole.append(drawing);
  if (label !== "" && LETTERED.has(sign)) {
    const text = document.createElement("b");
    text.textContent = label;
    whole.append(text);
  }
  return whole;
};

/** A name on the ground: of a strip, or of the spot beside it. */
export const labelElement = (text: string, of: "strip" | "spot"): HTMLElement => {
  const label = document.createElement("div");
  label.className = `ground-name of-${of}`;
  label.textContent = text;
  return label;
};

/** The handle of a corner, with its number when there are few. */
export const cornerElement = (number: number, chosen: boolean): HTMLElement => {
  const handle = document.createElement("div");
  handle.className = chosen ? "corner chosen" : "corner";
  const text = document.createElement("b");
  text.textContent = String(number);
  handle.append(text);
  return handle;
};
