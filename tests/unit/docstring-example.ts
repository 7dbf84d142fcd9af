/** One example of a docstring that says what it gives. */
export type DocstringExample = { readonly line: number; readonly code: string };

/** What to run, in order: statements, and expressions with what they should give. */
export type ExampleStep =
  | { readonly kind: "statement"; readonly code: string }
  | { readonly kind: "import"; readonly names: string; readonly from: string }
  | { readonly kind: "check"; readonly code: string; readonly expected: string };

const arrow = /^(.*?)\s*\/\/ => (.+)$/;
const importLine = /^import \{([^}]+)\} from "([^"]+)";?$/;

/** Finds every `@example` with a `// =>` in the text of a source file; line numbers start at 1. */
export function examplesIn(source: string): DocstringExample[] {
  const found: DocstringExample[] = [];
  for (const block of source.matchAll(/\/\*\*[\s\S]*?\*\//g)) {
    const lines = block[0].replace(/\*\/$/, "").split(/\r?\n/);
    const firstLine = source.slice(0, block.index).split("\n").length;
    let example: { line: number; code: string[] } | undefined;
    const close = (): void => {
      if (example?.code.some((line) => arrow.test(line)))
        found.push({ line: example.line, code: example.code.join("\n") });
      example = undefined;
    };
    for (const [index, raw] of lines.entries()) {
      const line = raw.replace(/^\s*\/?\*{1,2} ?/, "");
      const tag = /^@(\w+)\s*(.*)$/.exec(line);
      if (tag) close();
      if (tag?.[1] === "example") example = { line: firstLine + index, code: tag[2] ? [tag[2]] : [] };
      else if (!tag) example?.code.push(line);
    }
    close();
  }
  return found;
}

/**
 * Splits an example into steps. A statement ends with a semicolon at the end of its line;
 * `code // => expected` ends an expression or a declaration, whose name is then compared.
 */
export function stepsOf(example: DocstringExample): ExampleStep[] {
  const steps: ExampleStep[] = [];
  let open: string[] = [];
  for (const line of example.code
    .split("\n")
    .filter((text) => text.trim() !== "" && !text.startsWith("```"))) {
    const imported = importLine.exec(line);
    const answer = arrow.exec(line);
    if (imported) steps.push({ kind: "import", names: imported[1] ?? "", from: imported[2] ?? "" });
    else if (answer) {
      steps.push(...checkOf([...open, answer[1] ?? ""].join("\n").trim(), (answer[2] ?? "").trim()));
      open = [];
    } else if (line.trimEnd().endsWith(";")) {
      steps.push({ kind: "statement", code: [...open, line].join("\n") });
      open = [];
    } else open.push(line);
  }
  return steps;
}

function checkOf(code: string, expected: string): ExampleStep[] {
  const declared = /^(?:const|let)\s+(\w+)/.exec(code)?.[1];
  if (declared !== undefined)
    return [
      { kind: "statement", code },
      { kind: "check", code: declared, expected },
    ];
  return [{ kind: "check", code: code.replace(/;$/, ""), expected }];
}
