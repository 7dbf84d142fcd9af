// Builds the app with its own configuration and lays its store open to a test, as `globalThis.exposed`.
// Argument: folder to build into. Run as a program of its own: the surroundings of a test would make it a
// build for development.
import { build } from "vite";

const [outDir = ""] = process.argv.slice(2);
const opened = "rememberWhere(house);";

await build({
  logLevel: "warn",
  build: { outDir, emptyOutDir: true },
  plugins: [
    {
      name: "exposed",
      enforce: "pre",
      transform: (code, id) => {
        if (!id.endsWith("/src/app/main.tsx")) return null;
        if (!code.includes(opened)) throw new Error("src/app/main.tsx opens the house in another way now.");
        return `import { putPhoto } from "../store/photos.ts";\n${code.replace(
          opened,
          `${opened} globalThis.exposed = { connection: house.records.connection, putPhoto };`,
        )}`;
      },
    },
  ],
});
