import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { generatedFiles } from "../run/rooms.mjs";
import { projectRoot } from "../run/steps.mjs";

/** One complaint of a tool: the file it stands in, the rule or number of the error, and all that was said. */
export type Complaint = { readonly file: string; readonly rule: string; readonly text: string };

/** A copy of the sources and of the real configuration in a temporary folder, to plant violations in. */
export type PlantedCopy = {
  readonly root: string;
  /** Writes files (path from the project's folder to text) and brings the generated configuration in line. */
  plant(files: Readonly<Record<string, string>>): void;
  remove(): void;
};

/** Makes the copy. Packages are linked, not copied. */
export function copyProject(): PlantedCopy {
  const root = realpathSync(mkdtempSync(join(tmpdir(), "mulchmark-rooms-")));
  for (const path of ["src", "service-worker", "tests/architecture", "biome.json", "package.json"])
    cpSync(join(projectRoot, path), join(root, path), { recursive: true });
  symlinkSync(join(projectRoot, "node_modules"), join(root, "node_modules"), "junction");
  const plant = (files: Readonly<Record<string, string>>): void => {
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(root, path)), { recursive: true });
      writeFileSync(join(root, path), text);
    }
    for (const [path, content] of generatedFiles(root)) {
      mkdirSync(dirname(join(root, path)), { recursive: true });
      writeFileSync(join(root, path), JSON.stringify(content));
    }
  };
  plant({});
  return { root, plant, remove: () => rmSync(root, { recursive: true, force: true }) };
}

/** What `tsc -b` says about the given projects. */
export function compilerComplaints(root: string, projects: readonly string[]): Complaint[] {
  const output = runTool(root, "typescript/bin/tsc", ["-b", "--pretty", "false", ...projects]);
  const complaints: Complaint[] = [];
  for (const line of output.split(/\r?\n/)) {
    const start = /^(.+?)\(\d+,\d+\): error (TS\d+): /.exec(line);
    const previous = complaints.at(-1);
    if (start) complaints.push({ file: slashes(start[1] ?? ""), rule: start[2] ?? "", text: line });
    else if (previous && line.startsWith(" "))
      complaints[complaints.length - 1] = { ...previous, text: `${previous.text}\n${line}` };
    else if (line.includes("error TS")) complaints.push({ file: "", rule: "", text: line });
  }
  return complaints;
}

/** What Biome's linter says about everything in the folder. */
export function linterComplaints(root: string): Complaint[] {
  const args = ["lint", "--max-diagnostics=none", "--error-on-warnings", "--reporter=github"];
  const output = runTool(root, "@biomejs/biome/bin/biome", args);
  return output.split(/\r?\n/).flatMap((line) => {
    const found = /^::\w+ title=([^,]+),file=([^,]+),[^:]*::/.exec(line);
    if (!found) return [];
    const file = slashes(found[2] ?? "").replace(`${slashes(root)}/`, "");
    return [{ file, rule: found[1] ?? "", text: line }];
  });
}

/** Runs a tool with Node in the given folder and returns everything that it printed. */
export function runTool(root: string, script: string, args: readonly string[]): string {
  const path = join(projectRoot, "node_modules", script);
  const result = spawnSync(process.execPath, [path, ...args], {
    cwd: root,
    encoding: "utf8",
    maxBuffer: 2 ** 26,
  });
  return `${result.stdout}\n${result.stderr}`;
}

function slashes(path: string): string {
  return path.replaceAll("\\", "/");
}
