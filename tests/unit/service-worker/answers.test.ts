import { describe, expect, it } from "vitest";
import { type Asked, treat, withPolicyHeader } from "../../../service-worker/answers.ts";
import { headerPolicy } from "../../../service-worker/policy.ts";

const scope = "https://host.example/farm/";
const files = new Set([`${scope}index.html`, `${scope}assets/a.js`, `${scope}page.html`]);

function treated(url: string, more: Partial<Asked> = {}) {
  const asked: Asked = { url, method: "GET", mode: "cors", destination: "script", scope, ...more };
  return treat(asked, (address) => files.has(address));
}

const page = { mode: "navigate", destination: "document" };

describe("how the service worker treats a request", () => {
  it.each(["GET", "POST"])("refuses another origin (%s)", (method) => {
    expect(treated("https://elsewhere.example/x", { method })).toEqual({ kind: "refused" });
    expect(treated("http://host.example/farm/x", { method })).toEqual({ kind: "refused" });
  });

  it.each(["", "?from=home", "#/measure", "index.html", "index.html?x=1#/fields"])(
    "opens the app at %j",
    (end) => {
      expect(treated(scope + end, page)).toEqual({
        kind: "file",
        url: `${scope}index.html`,
        withPolicy: true,
      });
    },
  );

  it("sends a page that is not there home, and serves one that is", () => {
    expect(treated(`${scope}no/such/page`, page)).toEqual({ kind: "sent-home" });
    expect(treated(`${scope}page.html`, page)).toEqual({
      kind: "file",
      url: `${scope}page.html`,
      withPolicy: true,
    });
  });

  it.each(["worker", "sharedworker"])("binds the script of a %s, of the build or not", (destination) => {
    for (const name of ["assets/a.js", "other.js"]) {
      expect(treated(scope + name, { destination })).toEqual({
        kind: "file",
        url: scope + name,
        withPolicy: true,
      });
    }
  });

  it("leaves alone what is not a file of the app", () => {
    expect(treated(`${scope}other.js`)).toEqual({ kind: "left-alone" });
    expect(treated("https://host.example/other/index.html", page)).toEqual({ kind: "left-alone" });
    expect(treated(`${scope}index.html`, { ...page, method: "POST" })).toEqual({ kind: "left-alone" });
  });
});

describe("the policy as header", () => {
  it("stands beside a policy of the host and keeps the rest", async () => {
    const answer = withPolicyHeader(
      new Response("text", {
        status: 203,
        headers: { "content-type": "text/html", "content-security-policy": "img-src 'none'" },
      }),
    );
    expect(answer.status).toBe(203);
    expect(answer.headers.get("content-type")).toBe("text/html");
    expect(answer.headers.get("content-security-policy")).toBe(`img-src 'none', ${headerPolicy}`);
    expect(await answer.text()).toBe("text");
  });

  it("is the page's policy and forbids frames", () => {
    expect(headerPolicy).toBe(
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; connect-src 'self'; worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
    );
  });

  it("leaves an answer that may not be read as it is", () => {
    const refused = Response.error();
    expect(withPolicyHeader(refused)).toBe(refused);
  });
});
