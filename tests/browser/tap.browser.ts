import type { Locator, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { inBrowser, onDevice, onward, SCRIPTLESS } from "./chromium.ts";
import { diaryOf, jobPageOf, linkOf } from "./links.ts";

/** The crops whose sowing is answered here, one a test so that none meets another's answer. */
const TITLES = {
  carrot: "Sow carrots",
  beet: "Sow beets",
  chard: "Sow chard",
  turnip: "Sow turnips",
  kohlrabi: "Sow kohlrabi",
} as const;

type Crop = keyof typeof TITLES;

/** Where the phone's calendar leads to from each sowing; looked up before any answer moves one. */
const pages = new Map<Crop, string>();

const openJob = (page: Page, crop: Crop) => page.goto(pages.get(crop) ?? "");
const sown = (page: Page) => page.getByRole("button", { name: "Sown today" });
const undo = (page: Page) => page.getByRole("button", { name: "Undo" });
const saidOf = (crop: Crop) => diaryOf("tapped", new RegExp(`/${crop}/sow-outdoors/`));
const told = (page: Page) => page.locator("main").textContent();

/** What moved with an answer. A tap is answered before the build behind it, so the page may have to be opened anew. */
async function movedWithIt(page: Page): Promise<Locator> {
  const moved = page.locator("details", { hasText: "moved with it" });
  const known = async () => {
    const soon = (await told(page))?.includes("What moves with it stands here in a moment.");
    if (soon) await page.reload();
    return !soon;
  };
  await expect.poll(known, { timeout: 20_000, interval: 500 }).toBe(true);
  return moved;
}

inBrowser("one tap on a phone without script", () => {
  beforeAll(async () => {
    const feed = `${await linkOf("tapped", "helper")}sessions.ics`;
    for (const crop of Object.keys(TITLES) as Crop[])
      pages.set(crop, await jobPageOf(feed, TITLES[crop]));
  });

  test("says that it is done, when, by whom and what moved, and can be taken back", async () => {
    await onDevice(SCRIPTLESS, async ({ page }) => {
      await openJob(page, "turnip");
      expect(await page.locator("h1").textContent()).toContain(TITLES.turnip);
      await onward(page, () => sown(page).tap());
      expect(await told(page)).toMatch(/Done \d+ \w+, Imre\./);
      const moved = await movedWithIt(page);
      await moved.locator("summary").tap();
      expect(
        await moved
          .locator("li")
          .filter({ hasText: /turnips/ })
          .count(),
      ).toBeGreaterThan(0);
      expect(await saidOf("turnip")).toHaveLength(1);
      await onward(page, () => undo(page).tap());
      expect(await told(page)).not.toContain("Done");
      expect(await sown(page).isVisible()).toBe(true);
      expect(await saidOf("turnip")).toHaveLength(2);
    });
  });

  test("a double click is one answer", async () => {
    await onDevice(SCRIPTLESS, async ({ page }) => {
      await openJob(page, "beet");
      await onward(page, () => sown(page).dblclick());
      await page.waitForLoadState();
      await undo(page).waitFor();
      expect(await saidOf("beet")).toHaveLength(1);
    });
  });

  test("back, forward and reload after it write nothing more", async () => {
    await onDevice(SCRIPTLESS, async ({ page }) => {
      await page.goto(await linkOf("tapped", "helper"));
      await onward(page, () => page.getByRole("link", { name: TITLES.chard }).tap());
      await onward(page, () => sown(page).tap());
      expect(await undo(page).isVisible()).toBe(true);
      await page.goBack();
      await page.goForward();
      await page.reload();
      expect(await undo(page).isVisible()).toBe(true);
      expect(await saidOf("chard")).toHaveLength(1);
    });
  });

  test("the same answer from a second window that was open all the while is one answer", async () => {
    await onDevice(SCRIPTLESS, async ({ page, context }) => {
      await openJob(page, "carrot");
      const other = await context.newPage();
      await other.goto(page.url());
      await onward(page, () => sown(page).tap());
      await onward(other, () => sown(other).tap());
      expect(await undo(other).isVisible()).toBe(true);
      expect(await saidOf("carrot")).toHaveLength(1);
    });
  });

  test("without a network nothing is written, and once it is back one tap is one answer", async () => {
    await onDevice(SCRIPTLESS, async ({ page, context }) => {
      await openJob(page, "kohlrabi");
      const at = page.url();
      await context.setOffline(true);
      await sown(page).tap();
      await expect.poll(() => page.url()).toContain("chrome-error:");
      expect(await saidOf("kohlrabi")).toHaveLength(0);
      await context.setOffline(false);
      await page.goBack();
      if (page.url() !== at) await page.goto(at);
      await onward(page, () => sown(page).tap());
      expect(await undo(page).isVisible()).toBe(true);
      expect(await saidOf("kohlrabi")).toHaveLength(1);
    });
  });

  test.each(["quarry-lane", "this-week"])(
    "on the page of a job of %s a thumb finds every button and nothing lies beside the screen",
    async (garden) => {
      await onDevice(SCRIPTLESS, async ({ page }) => {
        await page.goto(await jobPageOf(`${await linkOf(garden, "helper")}sessions.ics`, "Sow"));
        const buttons = await page.locator("button").all();
        expect(buttons.length).toBeGreaterThan(1);
        for (const button of buttons) {
          const box = await button.boundingBox();
          // Source: WCAG 2.2, 2.5.5, 44 CSS px.
          expect(box?.height).toBeGreaterThanOrEqual(44);
          expect(box?.width).toBeGreaterThanOrEqual(44);
        }
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(wide).toBeLessThanOrEqual(390);
      });
    },
  );
});
