import { expect, it } from "vitest";
import { pagePolicy } from "../../service-worker/policy.ts";
import { builtFiles, builtText, namedByPage } from "./built.ts";

it("ships no source maps", () => {
  const files = builtFiles();
  expect(files.length).toBeGreaterThan(10);
  expect(files.filter((path) => path.endsWith(".map"))).toEqual([]);
  const scripts = files.filter((path) => /\.(?:js|css)$/.test(path));
  expect(scripts.filter((path) => builtText(path).includes("sourceMappingURL"))).toEqual([]);
});

it("has no code and no style in the page itself", () => {
  const page = builtText("index.html");
  const scripts = [...page.matchAll(/<script\b([^>]*)>([^<]*)<\/script>/g)];
  expect(scripts.length).toBeGreaterThan(0);
  for (const [, attributes = "", content = ""] of scripts) {
    expect(attributes).toMatch(/\bsrc="\.\//);
    expect(content.trim()).toBe("");
  }
  expect(page).not.toMatch(/<style\b|\sstyle=|\son\w+=|="javascript:/i);
});

it("names its policy before anything that the policy binds", () => {
  const page = builtText("index.html");
  const head = page.slice(page.indexOf("<head>") + "<head>".length).trimStart();
  const [first = ""] = /^<[^>]*>/.exec(head) ?? [];
  expect(first).toContain('http-equiv="Content-Security-Policy"');
  expect(first.replaceAll("&#39;", "'")).toContain(`content="${pagePolicy}"`);
});

it("finds its files from any folder of any host", () => {
  const page = builtText("index.html");
  const files = new Set(builtFiles());
  const named = namedByPage();
  expect(named.length).toBeGreaterThan(0);
  expect(named.filter((path) => !files.has(path))).toEqual([]);
  expect(page).not.toMatch(/(?:src|href)="\//);
});
