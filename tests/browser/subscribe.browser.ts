import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { ANDROID, DESK, IPHONE, inBrowser, onDevice, onward, SCRIPTLESS } from "./chromium.ts";
import { eventsAt, linkOf } from "./links.ts";

const DEVICES = [
  { named: "an iPhone", device: IPHONE, first: "iPhone, iPad and Mac", open: true },
  { named: "an Android phone", device: ANDROID, first: "Android", open: true },
  { named: "a desk", device: DESK, first: "Google Calendar", open: false },
] as const;

const CAN_READ_CODES = spawnSync("zbarimg", ["--version"]).status === 0;
if (!CAN_READ_CODES)
  console.log("No zbarimg, so no code for a camera is read. Debian has it in zbar-tools.");

/** What a camera reads in the code on a page. */
async function codeOn(page: Page): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "sowbell-code-"));
  try {
    const path = join(folder, "code.png");
    await page.locator("img.qr").screenshot({ path });
    const read = execFileSync("zbarimg", ["--quiet", "--raw", path], {
      encoding: "utf8",
      // It looks for a message bus and says so where there is none.
      stdio: ["ignore", "pipe", "ignore"],
    });
    return read.trim();
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

inBrowser("subscribing", () => {
  test.each(DEVICES)(
    "on $named the first link hands the person's own sessions to the calendar",
    async ({ device }) => {
      const base = await linkOf("quarry-lane", "helper");
      const href = await onDevice(device, async ({ page }) => {
        await page.goto(`${base}calendar`);
        return page.locator("main a").first().getAttribute("href");
      });
      expect(href).toBe(`${base.replace(/^http:/, "webcal:")}sessions.ics`);
      const events = await eventsAt((href ?? "").replace(/^webcal:/, "http:"));
      expect(events.length).toBeGreaterThan(50);
    },
  );

  test.each(DEVICES)("on $named what to do there stands first", async ({ device, first, open }) => {
    const base = await linkOf("quarry-lane", "helper");
    await onDevice(device, async ({ page }) => {
      await page.goto(`${base}calendar`);
      const way = page.locator("main details").first();
      expect(await way.locator("summary").textContent()).toBe(first);
      expect(await way.locator("p").isVisible()).toBe(open);
    });
  });

  test("from the garden's page the calendar is one tap away, and every address offered is a calendar", async () => {
    await onDevice(SCRIPTLESS, async ({ page }) => {
      await page.goto(await linkOf("quarry-lane", "helper"));
      await onward(page, () => page.getByRole("link", { name: "Put it in my calendar" }).tap());
      const hrefs = await page
        .locator('a.do[href^="webcal:"]')
        .evaluateAll((all) => all.map((a) => a.getAttribute("href")));
      const copied = await page.locator("main code").allTextContents();
      expect(hrefs.map((href) => href?.replace(/^webcal:/, "http:"))).toEqual(copied);
      for (const address of copied) await eventsAt(address);
      expect(copied.length).toBeGreaterThan(10);
    });
  });

  test("a reader's first link is the jobs without names", async () => {
    const base = await linkOf("quarry-lane", "reader");
    await onDevice(IPHONE, async ({ page }) => {
      await page.goto(`${base}calendar`);
      const href = await page.locator("main a").first().getAttribute("href");
      expect(href).toBe(`${base.replace(/^http:/, "webcal:")}tasks.ics`);
      const events = await eventsAt(`${base}tasks.ics`);
      expect(JSON.stringify(events)).not.toMatch(/Imre|Oda/);
    });
  });

  test.skipIf(!CAN_READ_CODES)("at a desk a camera reads the page's own address", async () => {
    await onDevice(DESK, async ({ page }) => {
      await page.goto(`${await linkOf("quarry-lane", "helper")}calendar`);
      expect(await codeOn(page)).toBe(page.url());
    });
  });

  test.skipIf(!CAN_READ_CODES)("and does in the dark too", async () => {
    await onDevice({ ...DESK, colorScheme: "dark" }, async ({ page }) => {
      await page.goto(`${await linkOf("quarry-lane", "helper")}calendar`);
      expect(await codeOn(page)).toBe(page.url());
    });
  });

  test("a phone in hand is shown no code to point itself at", async () => {
    await onDevice(ANDROID, async ({ page }) => {
      await page.goto(`${await linkOf("quarry-lane", "helper")}calendar`);
      expect(await page.locator("img.qr").count()).toBe(0);
    });
  });
});
