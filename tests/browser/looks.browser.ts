import { mkdirSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import type { BrowserContextOptions, Page } from "playwright-core";
import { expect, test } from "vitest";
import { ANDROID, DESK, inBrowser, onDevice, onward } from "./chromium.ts";
import { everyStep, press } from "./first-form.ts";
import { YEAR } from "./gardens.ts";
import { invitation } from "./invite.ts";
import { jobPageOf, linkOf } from "./links.ts";
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

/** Keeps a picture of the page in view; says where it would scroll sideways. */
async function keep(page: Page, look: string, name: string): Promise<readonly string[]> {
  mkdirSync(join(SCREENS, look), { recursive: true });
  await page.screenshot({ path: join(SCREENS, look, `${name}.png`), fullPage: true });
  const [needs = 0, has = 0] = await page.evaluate(() => [
    document.documentElement.scrollWidth,
    document.documentElement.clientWidth,
  ]);
  return needs > has ? [`${name}: ${needs} of ${has}`] : [];
}

async function lookAt(page: Page, shown: readonly Shown[], look: string) {
  const wide: string[] = [];
  for (const { name, address } of shown) {
    await page.goto(address);
    if (address.endsWith(".svg")) await frame(page, address);
    wide.push(...(await keep(page, look, name)));
  }
  return wide;
}

/** Puts a drawing into an empty page, since the browser takes no picture of a drawing that stands alone. */
async function frame(page: Page, address: string): Promise<void> {
  const svg = await (await fetch(address)).text();
  await page.goto("about:blank");
  await page.setContent(`<!doctype html>${svg}`);
}

/** Words of drawings that leave them, or touch others, as the browser has set them; a rim of a pixel is air. */
function wrongWords(page: Page): Promise<readonly string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll(".sowbell-picture")].flatMap((picture) => {
      const whole = picture.getBoundingClientRect();
      const words = [...picture.querySelectorAll("text")].map((text) => ({
        said: text.textContent,
        box: text.getBoundingClientRect(),
      }));
      const out = words.filter(
        ({ box }) => box.left < whole.left - 1 || box.right > whole.right + 1,
      );
      const touching = words.flatMap((one, i) =>
        words
          .slice(i + 1)
          .filter(
            ({ box }) =>
              Math.min(one.box.right, box.right) - Math.max(one.box.left, box.left) > 1 &&
              Math.min(one.box.bottom, box.bottom) - Math.max(one.box.top, box.top) >
                0.35 * box.height,
          )
          .map((two) => `${one.said} | ${two.said}`),
      );
      return [...out.map(({ said }) => `out: ${said}`), ...touching];
    }),
  );
}

/** Presses a job's one answer that begins so; which job it is of follows for a screen reader. */
const answer = (page: Page, words: string) =>
  onward(page, () => page.getByRole("button", { name: words }).click());

/** Goes through the forms and stops at each answer, by its name. Nothing it writes stays. */
async function* answers(page: Page): AsyncGenerator<string> {
  await page.goto(await invitation());
  for await (const step of everyStep(page)) yield `invitation-${step}`;
  await page.goto(`${await linkOf("quarry-lane", "owner")}links`);
  await press(page, "Show the link of Imre");
  yield "owner-link-shown";
  await page.goto(`${await linkOf("quarry-lane", "owner")}plan/${YEAR}`);
  // What is asked for and left behind is a complaint of the browser's.
  await page.waitForLoadState("networkidle");
  await page.getByLabel("The plan, as text").fill("garden: Quarry Lane\nmeasuers: metric\n");
  await page.locator("#checked button").first().waitFor();
  yield "owner-plan-checked";
  await press(page, "Save");
  yield "owner-plan-wrong";
  await page.goto(await jobPageOf(`${await linkOf("tapped", "helper")}tasks.ics`, "Sow parsnips"));
  await answer(page, "Sown today");
  yield "job-answered";
  await answer(page, "Undo");
  yield "job-undone";
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

  test.each(LOOKS)("and so does what answers a form, on $named", async ({ named, device }) => {
    await onDevice(device, async ({ page }) => {
      const wide: string[] = [];
      const heard = await complaints(page, async () => {
        for await (const name of answers(page)) wide.push(...(await keep(page, named, name)));
      });
      expect(wide).toEqual([]);
      expect(heard).toEqual([]);
    });
  });

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

  test.each(LOOKS)(
    "words of drawings keep apart and inside, as $named sets them",
    async ({ device }) => {
      await onDevice(device, async ({ page }) => {
        const drawn = [...(await everyPage()), ...(await everyPicture())].filter(({ name }) =>
          /frost-told|room|beds-drawn|season$/.test(name),
        );
        expect(drawn.length).toBeGreaterThan(6);
        for (const { name, address } of drawn) {
          await page.goto(address);
          if (address.endsWith(".svg")) await frame(page, address);
          expect(await wrongWords(page), name).toEqual([]);
        }
      });
    },
  );

  test("every image says what is seen in it, and how large it is before it is there", async () => {
    await onDevice(DESK, async ({ page }) => {
      const bare: string[] = [];
      for (const { name, address } of await everyPage()) {
        await page.goto(address);
        const images = await page
          .locator("img")
          .evaluateAll((all) =>
            all.map((image) => ["alt", "width", "height"].map((each) => image.getAttribute(each))),
          );
        for (const [alt, width, height] of images)
          if (!alt || alt.length < 12 || !width || !height) bare.push(`${name}: ${alt}`);
      }
      expect(bare).toEqual([]);
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
