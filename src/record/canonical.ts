import { compareText } from "./stamp.ts";

/** A plain JSON value: what rows and files hold. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

// A Date, a Map or a Blob has no keys of its own and would be written as `{}`.
const isPlainObject = (value: unknown): value is object => {
  if (typeof value !== "object" || value === null) return false;
  const made: unknown = Object.getPrototypeOf(value);
  return made === null || made === Object.prototype;
};

/**
 * One text for one value: keys sorted, no spaces. Two devices that hold the same record write the same
 * bytes, so their digests can be compared.
 *
 * The form is that of RFC 8785 (JSON Canonicalization Scheme). Takes plain JSON values only. A value that JSON cannot hold is a bug and throws, because a silent
 * `null` would change a reading.
 *
 * @example
 * canonicalJson({ b: 1, a: [true, null] }) // => '{"a":[true,null],"b":1}'
 */
export const canonicalJson = (value: unknown): string => {
  if (value === null || typeof value === "boolean") return String(value);
  if (typeof value === "string") return JSON.stringify(value);
  if (typeof value === "number") {
    if (!Number.isFinite(value)) throw new TypeError("not a JSON number");
    return JSON.stringify(value);
  }
  // `Array.from` visits holes, which `map` would pass over and `join` would turn into nothing.
  if (Array.isArray(value)) return `[${Array.from(value, canonicalJson).join(",")}]`;
  if (isPlainObject(value)) {
    const pairs = Object.entries(value).sort(([a], [b]) => compareText(a, b));
    return `{${pairs.map(([key, item]) => `${JSON.stringify(key)}:${canonicalJson(item)}`).join(",")}}`;
  }
  throw new TypeError(`not a JSON value: ${Object.prototype.toString.call(value)}`);
};
