import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { DESK, IPHONE, inBrowser, onDevice, onward, SCRIPTLESS } from "./chromium.ts";
import { YEAR } from "./gardens.ts";
import { linkOf } from "./links.ts";

const MISTAKE = "measuers: inches and °F";
const RIGHT = "measures: inches and °F";

const field = (page: Page) => page.getByLabel("The plan, as text");
const save = (page: Page) => page.getByRole("button", { name: "Save" });

async function openPlan(page: Page, garden: string): Promise<string> {
  await page.goto(`${await linkOf(garden, "owner")}plan/${YEAR}`);
  return field(page).inputValue();
}

/** The number of the line that holds it, from 1. */
function lineOf(text: string, part: string): number {
  return text.slice(0, text.indexOf(part)).split("\n").length;
}

function selected(page: Page): Promise<string> {
  return field(page).evaluate((text: HTMLTextAreaElement) =>
    text.value.slice(text.selectionStart, text.selectionEnd),
  );
}

/** Puts the cursor behind a part of the text, as a pointer would, and types there. */
async function typeBehind(page: Page, part: string, typed: string): Promise<void> {
  await field(page).evaluate((text: HTMLTextAreaElement, part) => {
    text.focus();
    const at = text.value.indexOf(part) + part.length;
    text.setSelectionRange(at, at);
  }, part);
  await page.keyboard.type(typed);
}

inBrowser("a mistake in a plan", () => {
  test("is told by its line while one writes, leads there, keeps the plan from being saved, and mended is version 2", async () => {
    await onDevice(DESK, async ({ page }) => {
      const text = await openPlan(page, "written");
      const line = lineOf(text, RIGHT) + 1;
      await typeBehind(page, RIGHT, "\nrumour: soft");
      const checked = page.locator("#checked");
      await checked.getByText("Not yet to be saved: 1 line wants putting right.").waitFor();
      const item = checked.locator("li").filter({ hasText: "rumour" });
      expect(await item.textContent()).toMatch(/rumour/);
      expect((await page.locator(".gutter").textContent())?.split("\n")[line - 1]).toBe(
        `✗ ${line}`,
      );
      await item.getByRole("button", { name: `line ${line}`, exact: true }).click();
      expect(await selected(page)).toBe("rumour: soft");
      const [answer] = await Promise.all([
        page.waitForResponse(
          (answer) => answer.request().method() === "POST" && !answer.url().endsWith("/check"),
        ),
        onward(page, () => save(page).click()),
      ]);
      expect(answer.status()).toBe(422);
      expect(await page.getByRole("alert").textContent()).toContain(
        "Nothing of what you wrote is lost.",
      );
      expect(await field(page).inputValue()).toContain("\nrumour: soft\n");
      expect(await page.locator(".beside").textContent()).toContain(`line ${line}`);
      await expect.poll(() => page.locator(".gutter").textContent()).toContain(`✗ ${line}\n`);
      await field(page).fill((await field(page).inputValue()).replace("rumour: soft\n", ""));
      await page.locator("#checked").getByText("It can be saved.").waitFor();
      expect(await page.locator(".gutter").textContent()).not.toContain("✗");
      await onward(page, () => save(page).click());
      expect(await page.getByRole("status").first().textContent()).toBe(
        "Saved as version 2. The calendars follow.",
      );
      expect(await field(page).inputValue()).toBe(text);
    });
  });

  test("is told without script when it is saved, nothing of the text is lost, and mended is version 2", async () => {
    await onDevice(SCRIPTLESS, async ({ page }) => {
      const text = await openPlan(page, "written-bare");
      await field(page).fill(text.replace(RIGHT, MISTAKE));
      await onward(page, () => save(page).tap());
      expect(await page.getByRole("alert").textContent()).toContain("Not saved yet");
      expect(await page.locator(".beside").textContent()).toContain(`line ${lineOf(text, RIGHT)}`);
      expect(await page.locator(".beside").textContent()).toContain("measures");
      expect(await field(page).inputValue()).toBe(text.replace(RIGHT, MISTAKE));
      await field(page).fill(text.replace(RIGHT, `${RIGHT}   # as ever`));
      await onward(page, () => save(page).tap());
      expect(await page.getByRole("status").first().textContent()).toContain("Saved as version 2.");
      await page.reload();
      expect(await field(page).inputValue()).toContain("# as ever");
    });
  });

  test("keeps its numbers beside its lines however far one scrolls, at a desk and on a phone", async () => {
    for (const device of [DESK, IPHONE]) {
      await onDevice(device, async ({ page }) => {
        await openPlan(page, "quarry-lane");
        await field(page).evaluate((text) => {
          text.scrollTop = 700;
          text.dispatchEvent(new Event("scroll"));
        });
        const tops = await page.evaluate(() =>
          [".gutter", "#text"].map((name) => document.querySelector(name)?.scrollTop),
        );
        expect(tops[0]).toBe(tops[1]);
        const heights = await page.evaluate(() =>
          [".gutter", "#text"].map((name) => document.querySelector(name)?.scrollHeight ?? 0),
        );
        expect(Math.abs((heights[0] ?? 0) - (heights[1] ?? 0))).toBeLessThan(24);
      });
    }
  });

  test("and what somebody else saved meanwhile is shown beside one's own", async () => {
    await onDevice(DESK, async ({ page, context }) => {
      const text = await openPlan(page, "written-together");
      const other = await context.newPage();
      await openPlan(other, "written-together");
      await field(page).fill(text.replace(RIGHT, `${RIGHT}   # ours`));
      await onward(page, () => save(page).click());
      await field(other).fill(`${text}  - 26 May: slugs ate the lettuce\n`);
      await onward(other, () => save(other).click());
      expect(await other.getByRole("alert").textContent()).toContain("somebody saved version 2");
      expect(await field(other).inputValue()).toContain("# ours");
      await onward(other, () => save(other).click());
      expect(await other.getByRole("status").first().textContent()).toContain(
        "Saved as version 3.",
      );
    });
  });
});
