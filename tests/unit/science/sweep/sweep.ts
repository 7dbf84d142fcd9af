/**
 * What every exported function of the room is fed with: its own example, bent. Each number of it becomes nought, less
 * than nothing, no number, endless, huge and tiny, one at a time and all at once; each list becomes empty, one, all
 * alike, turned round.
 */

/** How a function is tried. */
export interface Tried<A extends readonly unknown[]> {
  /** Arguments that it answers; the bent ones are made from them. */
  readonly args: A;
  readonly more?: readonly A[];
  /** It trusts its callers in this room with finite numbers; only the reason why stands here. It still throws nothing. */
  readonly inner?: string;
  /** For an inner function: its callers let only numbers above nought through. */
  readonly above0?: true;
  /** It may answer "without end"; the reason why. */
  readonly endless?: string;
  /** Nothing at all in it is an answer and no want of one; the reason why. */
  readonly ofNothing?: string;
  /** Its lists have as many items as their type says, so none is taken away or put in; the reason why. */
  readonly fixed?: string;
  /** It is only called as it stands; the reason why. */
  readonly unbent?: string;
  /** What is bent in place of the arguments, and how arguments come of it; null when it is refused before. */
  readonly from?: {
    readonly raw: readonly unknown[];
    readonly make: (...raw: never[]) => A | null;
  };
  /** What is asked of an answer that is itself a function. */
  readonly ask?: (answer: never) => unknown;
}

type Callable = (...args: never[]) => unknown;
type FunctionsOf<M> = { readonly [K in keyof M as M[K] extends Callable ? K : never]: M[K] };
type ArgumentsOf<F> = F extends (...args: infer A) => unknown ? A : never;

/** One example for every function of a module: one that is missing does not compile. */
export type Examples<M> = {
  readonly [K in keyof FunctionsOf<M>]: ArgumentsOf<M[K]> | Tried<ArgumentsOf<M[K]>>;
};

/** A function with its example. */
export interface Swept extends Tried<readonly unknown[]> {
  readonly name: string;
  readonly call: (...args: readonly unknown[]) => unknown;
}

/** All functions of one file with their examples. */
export const swept = <M extends object>(path: string, module: M, examples: Examples<M>): readonly Swept[] =>
  Object.entries(examples).map(([name, example]): Swept => {
    const tried = (Array.isArray(example) ? { args: example } : example) as Tried<readonly unknown[]>;
    return { ...tried, name: `${path} ${name}`, call: module[name as keyof M] as Swept["call"] };
  });

type Path = readonly (string | number)[];

/** Numbers that readings, files and slips of the pen can hold. */
const NUMBERS = [
  0,
  -1,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
  1e308,
  5e-324,
  0.5,
  1e9,
];

const isList = (value: unknown): value is readonly unknown[] | Float64Array =>
  Array.isArray(value) || value instanceof Float64Array;

/** Places inside of the arguments; of a long list its first and its last item stand for all. */
const placesIn = (value: unknown, path: Path = []): readonly Path[] => {
  if (typeof value !== "object" || value === null || value instanceof Map || value instanceof Set)
    return [path];
  const keys: readonly (string | number)[] = isList(value)
    ? [...new Set([0, value.length - 1])].filter((key) => key >= 0)
    : Object.keys(value);
  return [
    path,
    ...keys.flatMap((key) => placesIn((value as Record<string | number, unknown>)[key], [...path, key])),
  ];
};

const at = (value: unknown, path: Path): unknown =>
  path.reduce<unknown>((inside, key) => (inside as Record<string | number, unknown>)[key], value);

const bent = (value: unknown, [key, ...rest]: Path, into: unknown): unknown => {
  if (key === undefined) return into;
  const inside = (value as Record<string | number, unknown>)[key];
  const changed = bent(inside, rest, into);
  if (value instanceof Float64Array)
    return value.map((one, place) => (place === key ? Number(changed) : one));
  if (Array.isArray(value)) return value.map((one: unknown, place) => (place === key ? changed : one));
  return { ...(value as object), [key]: changed };
};

const everyNumber = (value: unknown, into: number): unknown => {
  if (typeof value === "number") return into;
  if (value instanceof Float64Array) return value.map(() => into);
  if (Array.isArray(value)) return value.map((one: unknown) => everyNumber(one, into));
  if (typeof value !== "object" || value === null || value instanceof Map || value instanceof Set)
    return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, everyNumber(one, into)]));
};

/** Lists that say what stands behind a figure, and hold no readings. */
const BEHIND = new Set(["assumptions", "cautions", "methods", "sources"]);

const everyList = (value: unknown): unknown => {
  if (value instanceof Float64Array) return new Float64Array(0);
  if (Array.isArray(value)) return [];
  if (typeof value !== "object" || value === null || value instanceof Map || value instanceof Set)
    return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, one]) => [key, BEHIND.has(key) ? one : everyList(one)]),
  );
};

const listsOf = (list: readonly unknown[] | Float64Array): readonly unknown[] =>
  list instanceof Float64Array
    ? [list.slice(0, 0), list.slice(0, 1), list.map(() => list[0] ?? 0), list.slice().reverse()]
    : [[], list.slice(0, 1), list.map(() => list[0]), [...list].reverse(), [...list, ...list]];

/** Bent arguments, and how they were bent. */
interface Bent {
  readonly how: string;
  readonly args: readonly unknown[];
  /** No number went in that is none, endless, or beyond what the callers of an inner function let through. */
  readonly possible: boolean;
  /** No number went in that is nought or less. */
  readonly above: boolean;
}

const isPossible = (value: number): boolean =>
  value === 0 || (Math.abs(value) <= 1e9 && Math.abs(value) >= 1e-9);

const bentOnce = (args: readonly unknown[], fixed: boolean): readonly Bent[] =>
  placesIn(args).flatMap((path): readonly Bent[] => {
    if (path.length === 0) return [];
    const here = at(args, path);
    const bends = typeof here === "number" ? NUMBERS : isList(here) && !fixed ? listsOf(here) : [];
    return bends.map((into) => ({
      how: `${path.join(".")} = ${typeof into === "number" ? into : JSON.stringify(into)?.slice(0, 60)}`,
      args: bent(args, path, into) as readonly unknown[],
      possible: typeof into !== "number" || isPossible(into),
      above: typeof into !== "number" || into > 0,
    }));
  });

const allAtOnce = (args: readonly unknown[]): readonly Bent[] =>
  NUMBERS.map((into) => ({
    how: `every number = ${into}`,
    args: args.map((one) => everyNumber(one, into)),
    possible: isPossible(into),
    above: into > 0,
  }));

/** All objects inside of the arguments: an answer may hand them back as they came. */
const objectsIn = (value: unknown, found = new Set<unknown>()): ReadonlySet<unknown> => {
  if (typeof value !== "object" || value === null || found.has(value)) return found;
  found.add(value);
  for (const one of Object.values(value)) objectsIn(one, found);
  return found;
};

/** The first number that is none (or endless) inside of an answer, as a path. */
const oddNumberIn = (
  value: unknown,
  endless: boolean,
  echoed: ReadonlySet<unknown>,
  path: Path = [],
): string | null => {
  if (typeof value === "number")
    return Number.isNaN(value) || !(endless || Number.isFinite(value)) ? `${path.join(".")}: ${value}` : null;
  if (typeof value !== "object" || value === null || path.length > 12 || echoed.has(value)) return null;
  const inside: readonly (readonly [string | number, unknown])[] =
    value instanceof Map || value instanceof Set
      ? [...value].map((one, key) => [key, one])
      : isList(value)
        ? Array.from(value, (one, key) => [key, one] as const)
        : Object.entries(value);
  for (const [key, one] of inside) {
    const odd = oddNumberIn(one, endless, echoed, [...path, key]);
    if (odd !== null) return odd;
  }
  return null;
};

/** What a call may at most take, in milliseconds, on a machine shared with others. */
const LONGEST_MS = 20_000;

const isAnswer = (value: unknown): value is { readonly ok: boolean } =>
  typeof value === "object" && value !== null && "ok" in value;

const trouble = (
  { from, call, ask, inner, above0, endless }: Swept,
  { how, args, possible, above: bentAbove0 }: Bent,
): readonly string[] => {
  const began = performance.now();
  try {
    const made =
      from === undefined ? args : (from.make as (...raw: readonly unknown[]) => typeof args | null)(...args);
    if (made === null) return [];
    const answer = call(...made);
    const asked =
      ask === undefined || (isAnswer(answer) && !answer.ok)
        ? answer
        : (ask as (one: unknown) => unknown)(answer);
    const tookMs = performance.now() - began;
    if (tookMs > LONGEST_MS) return [`${how}: took ${Math.round(tookMs)} ms`];
    if (inner !== undefined && !(possible && (bentAbove0 || above0 === undefined))) return [];
    const odd = oddNumberIn(asked, endless !== undefined, objectsIn(args));
    return odd === null ? [] : [`${how}: ${odd}`];
  } catch (error) {
    return [`${how}: threw ${String(error)}`];
  }
};

/** Everything that is wrong with what a function makes of its bent example. */
export const troublesOf = (one: Swept): readonly string[] => {
  const all = one.from === undefined ? [one.args, ...(one.more ?? [])] : [one.from.raw];
  const plain = all.flatMap((args) =>
    trouble(one, { how: "as it stands", args, possible: true, above: true }),
  );
  if (one.unbent !== undefined) return plain;
  const bends = all
    .flatMap((args) => [...bentOnce(args, one.fixed !== undefined), ...allAtOnce(args)])
    .flatMap((each) => trouble(one, each));
  return [...plain, ...bends, ...ofNothing(one)];
};

/** With nothing in any list, an answer needs a reason to be one: nought is no reading. */
const ofNothing = (one: Swept): readonly string[] => {
  const empty = one.args.map(everyList);
  if (
    one.ofNothing !== undefined ||
    one.fixed !== undefined ||
    JSON.stringify(empty) === JSON.stringify(one.args)
  )
    return [];
  let answer: unknown;
  try {
    answer = one.call(...empty);
  } catch (error) {
    return [`every list empty: threw ${String(error)}`];
  }
  return isAnswer(answer) && answer.ok
    ? [`every list empty: an answer, ${JSON.stringify(answer).slice(0, 100)}`]
    : [];
};

/** Every method that an answer to the examples says of itself. */
export const methodsSaid = (all: readonly Swept[]): ReadonlySet<unknown> => {
  const said = new Set<unknown>();
  const look = (value: unknown, seen: Set<unknown>): void => {
    if (typeof value !== "object" || value === null || seen.has(value)) return;
    seen.add(value);
    for (const [key, one] of Object.entries(value)) {
      if (key === "method" && typeof one === "string") said.add(one);
      if (key === "methods" && Array.isArray(one)) for (const method of one) said.add(method);
      look(one, seen);
    }
  };
  for (const { args, more, call } of all)
    for (const each of [args, ...(more ?? [])]) look(call(...each), new Set());
  return said;
};

/** Names that stand in one of two lists and not in the other. */
export const notSwept = (
  exported: readonly string[],
  sweptNames: readonly string[],
): { readonly missing: readonly string[]; readonly gone: readonly string[] } => ({
  missing: exported.filter((name) => !sweptNames.includes(name)),
  gone: sweptNames.filter((name) => !exported.includes(name)),
});
