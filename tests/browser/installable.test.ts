import { afterAll, beforeAll, expect, it } from "vitest";
import { type ChromiumDriver, startChromium } from "./drivers/chromium.ts";
import { untilControlled } from "./drivers/driver.ts";
import { type BuiltServer, builtFolder, serveBuilt } from "./drivers/serve-built.ts";

let chromium: ChromiumDriver;
let host: BuiltServer;

beforeAll(async () => {
  chromium = await startChromium();
  host = await serveBuilt({ directory: builtFolder, under: "/farm/mulchmark/" });
});

afterAll(async () => {
  await host.close();
  await chromium.close();
});

it("can be installed from a folder of a host: the browser finds nothing missing", async () => {
  await chromium.open(host.url);
  await untilControlled(chromium);
  const session = await chromium.context.newCDPSession(chromium.page);
  const manifest = await session.send("Page.getAppManifest");
  expect(manifest.url).toBe(`${host.url}manifest.webmanifest`);
  expect(manifest.errors).toEqual([]);
  const { installabilityErrors } = await session.send("Page.getInstallabilityErrors");
  expect(installabilityErrors).toEqual([]);
});

it("has every picture of the manifest in the size that it names", async () => {
  const wrong = await chromium.run(async () => {
    const { icons }: { icons: { src: string; sizes: string }[] } = await fetch("./manifest.webmanifest").then(
      (answer) => answer.json(),
    );
    const sizes = await Promise.all(
      icons.map(async ({ src, sizes: named }) => {
        const picture = new Image();
        picture.src = src;
        await picture.decode();
        return named === "any" || named === `${picture.naturalWidth}x${picture.naturalHeight}` ? [] : [src];
      }),
    );
    return sizes.flat();
  });
  expect(wrong).toEqual([]);
});
