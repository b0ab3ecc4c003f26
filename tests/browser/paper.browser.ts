import { execFileSync, spawnSync } from "node:child_process";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { DESK, inBrowser, onDevice } from "./chromium.ts";
import { everyPage, everySheet, type Shown } from "./pages.ts";

const CAN_READ = spawnSync("pdftotext", ["-v"]).status === 0;
if (!CAN_READ)
  console.log("No pdftotext, so pages on paper are only counted. Debian has it in poppler-utils.");

type Size = "A4" | "Letter";

const SIZES: readonly Size[] = ["A4", "Letter"];

/** A page as it prints, and its words as one line without the marks between them. */
async function printed(page: Page, format: Size) {
  const pdf = await page.pdf({ format });
  const pages = pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
  const text = CAN_READ ? execFileSync("pdftotext", ["-", "-"], { input: pdf }).toString() : "";
  return { pages, text: bare(text) };
}

/** Letters and digits alone, since lines break elsewhere on paper. */
const bare = (text: string) => text.replace(/[^\p{L}\p{N}]+/gu, "");

/** The lines that the page has to show on paper: what is neither form nor way on, nor said to a screen reader alone. */
function linesOf(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const inside = (each: Element) =>
      each.closest("form, nav, .do, .unseen, script, style, title") === null;
    const leaves = [...document.querySelectorAll("body *")].filter(
      (each) => each.children.length === 0 && inside(each),
    );
    return leaves.map((each) => each.textContent ?? "").filter((text) => text.trim() !== "");
  });
}

async function named(shown: Promise<readonly Shown[]>, ...names: readonly string[]) {
  return (await shown).filter(({ name }) => names.includes(name));
}

inBrowser("on paper", () => {
  test.each(SIZES)("a week, a job, a month and a year stand whole on %s", async (size) => {
    await onDevice(DESK, async ({ page }) => {
      const pages = await named(everyPage(), "helper-week", "job", "job-visit");
      for (const { name, address } of [...pages, ...(await everySheet())]) {
        await page.goto(address);
        const { pages, text } = await printed(page, size);
        expect(pages, name).toBeGreaterThan(0);
        if (!CAN_READ) continue;
        for (const line of await linesOf(page)) expect(text, name).toContain(bare(line));
      }
    });
  });

  test.skipIf(!CAN_READ).each(SIZES)("neither ways on nor buttons stand on %s", async (size) => {
    await onDevice(DESK, async ({ page }) => {
      for (const { address } of await named(everyPage(), "helper-week", "job", "job-visit")) {
        await page.goto(address);
        const { text } = await printed(page, size);
        expect(text).not.toContain(bare("Frost tonight"));
        expect(text).not.toContain(bare("Leave it this year"));
        expect(text).not.toContain(bare("Not yet"));
      }
    });
  });

  test.each(SIZES)("nothing of a sheet lies beside %s", async (size) => {
    const width = size === "A4" ? 794 : 816;
    await onDevice({ viewport: { width, height: 1000 } }, async ({ page }) => {
      await page.emulateMedia({ media: "print" });
      for (const { name, address } of await everySheet()) {
        await page.goto(address);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(wide, name).toBeLessThanOrEqual(width);
      }
    });
  });
});
