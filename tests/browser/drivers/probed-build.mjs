// Builds the app with the project's own configuration, plus two things for a test to hold on to: a
// mark that tells one build from another, and a part that is fetched when first asked for.
// Arguments: folder to build into, mark. Run as a program of its own: the surroundings of a test
// would make it a build for development.
import { build } from "vite";

const [outDir = "", mark = ""] = process.argv.slice(2);
const part = "virtual:late-part";

await build({
  logLevel: "warn",
  build: { outDir, emptyOutDir: true },
  plugins: [
    {
      name: "probe",
      enforce: "pre",
      resolveId: (id) => (id === part ? `\0${part}` : null),
      load: (id) => (id === `\0${part}` ? `export const mark = ${JSON.stringify(mark)};` : null),
      transform: (code, id) =>
        id.endsWith("/src/app/main.tsx")
          ? `${code}
import * as probedUpdates from "./update.ts";
globalThis.probe = { mark: ${JSON.stringify(mark)}, updates: probedUpdates, latePart: () => import("${part}") };
`
          : null,
    },
  ],
});
