/** Which revision stands in the place of which: the order that merging keeps the greatest of. */
import { canonicalJson } from "../../record/canonical.ts";
import { type Revision, seenOf } from "../../record/record.ts";

const sawAllOf = (a: Revision, b: Revision): boolean => b.seen.every(([actor, n]) => seenOf(a, actor) >= n);

const isSameRevision = (a: Revision, b: Revision): boolean =>
  a.rev === b.rev && a.dot[0] === b.dot[0] && a.dot[1] === b.dot[1];

const knows = (a: Revision, b: Revision): boolean =>
  (seenOf(a, b.dot[0]) >= b.dot[1] || isSameRevision(a, b)) && sawAllOf(a, b);

/**
 * Does `a` stand in the place of `b`? It does when it was made from `b` and from everything that `b`
 * was made from. Between revisions that this app made, the second follows from the first. It is asked
 * because a made-up file can claim anything: without it the order would not be transitive, and the
 * outcome would depend on which file came first.
 *
 * Two texts under one `rev` are a damaged or made-up copy: the canonically greater text is kept. When
 * the copies also differ in what they were made from, neither knows the other and both are kept.
 */
export const standsIn = (a: Revision, b: Revision): boolean => {
  if (!knows(a, b)) return false;
  if (!knows(b, a)) return true;
  return a.rev === b.rev && canonicalJson(a) > canonicalJson(b);
};
