import preact from "@preact/preset-vite";
import { defineConfig, type Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { pagePolicy } from "./service-worker/policy.ts";

/** Writes the policy into the built page, before anything that it binds. The page served while developing has none: reloading on a change needs inline code. */
function policyInPage(): Plugin {
  return {
    name: "policy-in-page",
    apply: "build",
    transformIndexHtml: {
      order: "post",
      handler: () => [
        {
          tag: "meta",
          attrs: { "http-equiv": "Content-Security-Policy", content: pagePolicy },
          injectTo: "head-prepend",
        },
      ],
    },
  };
}

export default defineConfig({
  root: "src",
  // Relative addresses: the built app works from any sub-folder of any static host.
  base: "./",
  publicDir: "../public",
  build: {
    outDir: "../dist",
    emptyOutDir: true,
    target: ["safari16.4", "chrome109", "firefox115"],
    sourcemap: false,
    // A file inlined as a data: address would be refused by the policy, except for pictures.
    assetsInlineLimit: 0,
    // The list of the parts that each part needs would weigh more than it saves: all of them lie on the device,
    // so only styles are asked for ahead, which must be there before the screen is.
    modulePreload: {
      polyfill: false,
      resolveDependencies: (_, needed, { hostType }) =>
        hostType === "html" ? needed : needed.filter((path) => path.endsWith(".css")),
    },
    // Some hosts leave out files whose names begin with an underscore, and one missing file fails
    // the whole installation.
    rolldownOptions: { output: { chunkFileNames: "assets/part-[name]-[hash].js" } },
  },
  worker: { format: "es" },
  plugins: [
    preact(),
    policyInPage(),
    VitePWA({
      strategies: "injectManifest",
      srcDir: "../service-worker",
      filename: "sw.ts",
      registerType: "prompt",
      injectRegister: false,
      manifest: false,
      injectManifest: {
        // The default ends the built worker in an `export`, and it then never registers, silently.
        rollupFormat: "iife",
        globPatterns: ["**/*"],
        globIgnores: ["sw.js"],
        maximumFileSizeToCacheInBytes: 8_000_000,
      },
    }),
  ],
});
