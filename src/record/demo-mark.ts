/**
 * How the hexadecimal part of every id of the example farm begins; read it as "fallow field". An id drawn by
 * chance begins so once in 2⁴⁸ times.
 */
export const DEMO_MARK = "fa110f1e1d00";

/** Whether a record belongs to the example farm. */
export const isDemoId = (id: string): boolean => id.startsWith(DEMO_MARK, id.indexOf("-") + 1);

/** Whether a test belongs to the example farm: it came with it, or was made on one of its fields. */
export const isDemoTest = (id: string, field: string): boolean => isDemoId(id) || isDemoId(field);
