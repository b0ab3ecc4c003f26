import { mkdirSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import type { BrowserContextOptions, Page } from "playwright-core";
import { expect, test } from "vitest";
import { ANDROID, DESK, inBrowser, onDevice } from "./chromium.ts";
import { linkOf } from "./links.ts";
import { everyPage, everyPicture, everySheet, type Shown } from "./pages.ts";

const SCREENS = fileURLToPath(new URL("../../.sowbell/screens/", import.meta.url));

const LOOKS: readonly { named: string; device: BrowserContextOptions }[] = [
  { named: "phone-day", device: { ...ANDROID, colorScheme: "light" } },
  { named: "phone-dark", device: { ...ANDROID, colorScheme: "dark" } },
  { named: "desk-day", device: { ...DESK, colorScheme: "light" } },
  { named: "desk-dark", device: { ...DESK, colorScheme: "dark" } },
];

/** What a page complains of in the browser's own console while something is done: errors, and what its policy forbids. */
async function complaints(page: Page, doing: () => Promise<unknown>): Promise<readonly string[]> {
  const heard: string[] = [];
  page.on("console", (said) => {
    if (said.type() === "error" || said.type() === "warning") heard.push(said.text());
  });
  page.on("pageerror", (error) => heard.push(String(error)));
  page.on("requestfailed", (request) => heard.push(`${request.url()} failed`));
  await doing();
  // An answer of 400, 404 or 422 is written in the console too, and is no fault of the page.
  return heard.filter((line) => !/^Failed to load resource: .* (400|404|422)/.test(line));
}

/** What lies beside the screen: the pages that would scroll sideways. */
async function lookAt(page: Page, shown: readonly Shown[], look: string) {
  const wide: string[] = [];
  mkdirSync(join(SCREENS, look), { recursive: true });
  for (const { name, address } of shown) {
    await page.goto(address);
    const [needs, has] = await page.evaluate(() => [
      document.documentElement.scrollWidth,
      document.documentElement.clientWidth,
    ]);
    if ((needs ?? 0) > (has ?? 0)) wide.push(`${name}: ${needs} of ${has}`);
    if (address.endsWith(".svg")) await frame(page, address);
    await page.screenshot({ path: join(SCREENS, look, `${name}.png`), fullPage: true });
  }
  return wide;
}

/** Puts a drawing into an empty page, since the browser takes no picture of a drawing that stands alone. */
async function frame(page: Page, address: string): Promise<void> {
  await page.setContent(`<!doctype html><img src="${address}" alt="" style="width: 100%">`, {
    waitUntil: "load",
  });
}

inBrowser("the look of every page", () => {
  test.each(LOOKS)(
    "fits $named and has nothing in the console to complain of",
    async ({ named, device }) => {
      await onDevice(device, async ({ page }) => {
        const shown = [...(await everyPage()), ...(await everySheet()), ...(await everyPicture())];
        let wide: readonly string[] = [];
        const heard = await complaints(page, async () => {
          wide = await lookAt(page, shown, named);
        });
        console.log(`${shown.length} screens in ${relative(process.cwd(), join(SCREENS, named))}`);
        expect(wide).toEqual([]);
        expect(heard).toEqual([]);
      });
    },
  );

  test("the garden's page with its style takes under 50 kB, all of it from here", async () => {
    await onDevice(ANDROID, async ({ page }) => {
      const sizes: Promise<number>[] = [];
      const origins = new Set<string>();
      page.on("requestfinished", (request) => {
        origins.add(new URL(request.url()).origin);
        const size = request.sizes();
        sizes.push(size.then((all) => all.responseBodySize + all.responseHeadersSize));
      });
      const address = await linkOf("this-week", "helper");
      await page.goto(address, { waitUntil: "networkidle" });
      const total = (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0);
      expect(total).toBeLessThan(50_000);
      expect([...origins]).toEqual([new URL(address).origin]);
    });
  });

  test("no page asks anything of anybody else", async () => {
    await onDevice(DESK, async ({ page }) => {
      const origins = new Set<string>();
      page.on("request", (request) => origins.add(new URL(request.url()).origin));
      for (const { address } of [...(await everyPage()), ...(await everySheet())])
        await page.goto(address);
      expect([...origins]).toHaveLength(1);
    });
  });
});
