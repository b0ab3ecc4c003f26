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

  test("is brought into sight by its line's button, at a desk and on a phone, however long the plan is", async () => {
    for (const device of [DESK, IPHONE]) {
      await onDevice(device, async ({ page }) => {
        const text = await openPlan(page, "quarry-lane");
        await field(page).fill(`${text}rumour: soft\n`);
        const line = text.split("\n").length;
        await field(page).evaluate((area) => {
          area.scrollTop = 0;
        });
        const button = page
          .locator("#checked")
          .getByRole("button", { name: `line ${line}`, exact: true });
        await button.click();
        expect(await selected(page)).toBe("rumour: soft");
        const seen = await field(page).evaluate((area: HTMLTextAreaElement, line) => {
          const height = Number.parseFloat(getComputedStyle(area).lineHeight);
          const inField = (line - 1) * height - area.scrollTop;
          const onScreen = area.getBoundingClientRect().top + inField;
          return {
            inField: inField >= 0 && inField < area.clientHeight,
            onScreen,
            most: innerHeight,
          };
        }, line);
        expect(seen.inField).toBe(true);
        expect(seen.onScreen).toBeGreaterThan(0);
        expect(seen.onScreen).toBeLessThan(seen.most - 56);
      });
    }
  });

  test("found when it was saved is led to as well, once scripts run", async () => {
    await onDevice(DESK, async ({ page }) => {
      const text = await openPlan(page, "quarry-lane");
      await field(page).fill(text.replace(RIGHT, MISTAKE));
      await onward(page, () => save(page).click());
      const line = lineOf(text, RIGHT);
      await page
        .locator(".beside")
        .getByRole("button", { name: `line ${line}`, exact: true })
        .click();
      expect(await selected(page)).toBe(MISTAKE);
    });
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

/** What the page says when one would leave it; null: nothing. The page is left all the same. */
async function warningOnLeaving(page: Page, leave: () => Promise<unknown>): Promise<string | null> {
  let warned: string | null = null;
  page.once("dialog", (dialog) => {
    warned = dialog.type();
    void dialog.accept();
  });
  await onward(page, leave);
  return warned;
}

inBrowser("work that is not saved", () => {
  test("is warned of before the page is left, stands there again, and can be thrown away", async () => {
    await onDevice(DESK, async ({ page }) => {
      const text = await openPlan(page, "quarry-lane");
      const address = page.url();
      await field(page).focus();
      await typeBehind(page, RIGHT, "   # kept");
      expect(
        await warningOnLeaving(page, () => page.getByRole("link", { name: "More" }).click()),
      ).toBe("beforeunload");
      await page.goto(address);
      expect(await field(page).inputValue()).toContain("# kept");
      expect(await page.locator("#saving").textContent()).toContain("It is not saved yet.");
      await page.getByRole("button", { name: "Throw it away" }).click();
      expect(await field(page).inputValue()).toBe(text);
      expect(await warningOnLeaving(page, () => page.goto(address))).toBeNull();
      expect(await field(page).inputValue()).toBe(text);
    });
  });

  test("is warned of no more once it is saved, and saving is seen", async () => {
    await onDevice(DESK, async ({ page }) => {
      const text = await openPlan(page, "written-leaving");
      await typeBehind(page, RIGHT, "   # saved");
      await page.evaluate(() => {
        document.querySelector("form")?.addEventListener("submit", () => {
          sessionStorage.setItem("seen", document.getElementById("saving")?.textContent ?? "");
        });
      });
      expect(await warningOnLeaving(page, () => save(page).click())).toBeNull();
      expect(await page.evaluate(() => sessionStorage.getItem("seen"))).toBe("Saving …");
      expect(await page.getByRole("status").first().textContent()).toContain("Saved as version 2.");
      expect(
        await warningOnLeaving(page, () => page.getByRole("link", { name: "More" }).click()),
      ).toBeNull();
      expect(text).not.toContain("# saved");
    });
  });
});

inBrowser("the season of a plan", () => {
  test("stands beside its text at a desk, and is drawn anew for what was checked last", async () => {
    await onDevice(DESK, async ({ page }) => {
      const text = await openPlan(page, "quarry-lane");
      const picture = page.locator("#pictures img >> nth=0");
      const [left, right] = await Promise.all([field(page).boundingBox(), picture.boundingBox()]);
      expect((left?.x ?? 0) + (left?.width ?? 0)).toBeLessThan(right?.x ?? 0);
      expect(Math.abs((left?.y ?? 0) - (right?.y ?? 0))).toBeLessThan(200);
      const before = await picture.getAttribute("src");
      await field(page).fill(text.replace(/- radish: .*/, "- rutabaga: 10 ft"));
      await page.locator("#pictures").getByText("not saved yet").waitFor();
      expect(await picture.getAttribute("src")).not.toBe(before);
      await picture.evaluate((image: HTMLImageElement) => image.decode());
      expect(
        await picture.evaluate((image: HTMLImageElement) => image.naturalWidth),
      ).toBeGreaterThan(0);
    });
  });

  test("is folded on a phone, and there without script too", async () => {
    for (const [device, open] of [
      [IPHONE, false],
      [SCRIPTLESS, true],
    ] as const) {
      await onDevice(device, async ({ page }) => {
        await openPlan(page, "quarry-lane");
        expect(await page.locator("#pictures img >> nth=0").isVisible()).toBe(open);
      });
    }
  });
});

inBrowser("an old version", () => {
  test("is looked at, and nothing of it can be written in", async () => {
    await onDevice(DESK, async ({ page }) => {
      const text = await openPlan(page, "written-old");
      await field(page).fill(`${text}# newer\n`);
      await onward(page, () => save(page).click());
      await page.getByText("Earlier versions").click();
      await onward(page, () => page.getByRole("link", { name: /version 1/ }).click());
      expect(await page.locator("textarea, [contenteditable]").count()).toBe(0);
      await onward(page, () =>
        page.getByRole("button", { name: "Use this version again" }).click(),
      );
      expect(await field(page).inputValue()).toBe(text);
    });
  });
});
