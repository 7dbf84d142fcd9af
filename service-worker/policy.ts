/**
 * What the page and its workers may load and run, in one place: the build writes it into the page
 * as meta, and the service worker sends it as header on documents and worker scripts, because a
 * meta does not bind workers.
 */
const directives = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
];

/** The policy as the built page carries it. */
export const pagePolicy: string = directives.join("; ");

/** The policy as header: a meta cannot say who may frame the page, a header can. */
export const headerPolicy: string = [...directives, "frame-ancestors 'none'"].join("; ");
