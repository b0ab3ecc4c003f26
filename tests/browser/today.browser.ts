import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { ANDROID, DESK, inBrowser, onDevice, onward, SCRIPTLESS } from "./chromium.ts";
import { diaryOf, linkOf } from "./links.ts";
import { everyPage, everySheet } from "./pages.ts";

const jobs = (page: Page) => page.locator(".jobs > .job:not(.answered)");
const answered = (page: Page) => page.locator(".jobs > .answered");
const jobOf = (page: Page, title: string) =>
  page.locator(".jobs > .job").filter({ has: page.locator(".line .what", { hasText: title }) });

/** Where on the screen something begins [px from the top]. */
const topOf = async (page: Page, title: string) =>
  (await jobOf(page, title).boundingBox())?.y ?? Number.NaN;

inBrowser("today, on a phone without script", () => {
  test("is there without a tap: what is to be done, with its wanted answer in reach at once", async () => {
    await onDevice(SCRIPTLESS, async ({ page }) => {
      await page.goto(await linkOf("today", "helper"));
      expect(await jobs(page).count()).toBeGreaterThanOrEqual(4);
      const first = jobs(page).first();
      const button = await first.locator(".fill").boundingBox();
      // Source: WCAG 2.2, 2.5.5, 44 CSS px; the bar at the foot covers the last 58.
      expect(button?.height).toBeGreaterThanOrEqual(48);
      expect(button?.width).toBeGreaterThanOrEqual(96);
      expect((button?.y ?? 0) + (button?.height ?? 0)).toBeLessThan(844 - 58);
      expect(await first.locator(".facts").first().textContent()).toMatch(/bed · \d+\smin/);
    });
  });

  test("takes one tap to say done and one to take it back, in the same place, and nothing else moves", async () => {
    await onDevice(SCRIPTLESS, async ({ page }) => {
      const home = await linkOf("today", "helper");
      await page.goto(home);
      const titles = () => page.locator(".jobs > .job .line .what").allTextContents();
      const before = await titles();
      const gap = async () => (await topOf(page, "Sow peas")) - (await topOf(page, "Sow arugula"));
      const order = await gap();
      await onward(page, () => jobOf(page, "Sow arugula").getByRole("button").first().tap());
      expect(await titles()).toEqual(before);
      expect(await answered(page).locator("s").textContent()).toBe("Sow arugula");
      expect(await answered(page).textContent()).toMatch(/Done \d+ \w+, Imre\./);
      expect(Math.sign(await gap())).toBe(Math.sign(order));
      const top = await topOf(page, "Sow arugula");
      expect(top).toBeGreaterThan(0);
      expect(top).toBeLessThan(600);
      await onward(page, () => answered(page).getByRole("button", { name: "Undo" }).tap());
      expect(await answered(page).count()).toBe(0);
      expect(await titles()).toEqual(before);
      expect(Math.abs((await topOf(page, "Sow arugula")) - top)).toBeLessThan(40);
      expect(new URL(page.url()).pathname).toBe(new URL(home).pathname);
    });
  });

  test.each(["Leave it this year", "Not yet"])(
    "offers to take every kind of answer back where it was tapped: %s",
    async (words) => {
      await onDevice(SCRIPTLESS, async ({ page }) => {
        await page.goto(await linkOf("today-answers", "helper"));
        const job = jobs(page).filter({
          has: page.getByRole("button", { name: words, includeHidden: true }),
        });
        const title = (await job.first().locator(".what").textContent()) ?? "";
        await jobOf(page, title).locator("summary").tap();
        await onward(page, () =>
          jobOf(page, title).getByRole("button", { name: words }).first().tap(),
        );
        expect(await jobOf(page, title).getAttribute("class")).toContain("answered");
        await onward(page, () => jobOf(page, title).getByRole("button", { name: "Undo" }).tap());
        expect(await jobOf(page, title).getAttribute("class")).not.toContain("answered");
      });
    },
  );

  test("says so once all is done, and each answer is one line of the diary", async () => {
    await onDevice(SCRIPTLESS, async ({ page }) => {
      await page.goto(await linkOf("today-done", "helper"));
      const count = await jobs(page).count();
      expect(count).toBeGreaterThanOrEqual(4);
      for (let left = count; left > 0; left -= 1) {
        await onward(page, () => jobs(page).first().locator(".fill").tap());
        expect(await jobs(page).count()).toBe(left - 1);
      }
      expect(await page.locator(".lead").textContent()).toBe("All done for today.");
      expect(await answered(page).count()).toBe(count);
      expect((await diaryOf("today-done", /,done,|done/)).length).toBeGreaterThanOrEqual(count);
    });
  });

  test("has the week below, a row a day", async () => {
    await onDevice(SCRIPTLESS, async ({ page }) => {
      await page.goto(await linkOf("this-week", "helper"));
      const days = page.locator(".week").first().locator("> li");
      expect(await days.count()).toBe(7);
      const boxes = await days.evaluateAll((all) =>
        all.map((day) => day.getBoundingClientRect().x),
      );
      expect(new Set(boxes).size).toBe(1);
      await onward(page, () => page.getByRole("link", { name: "Sow carrots" }).tap());
      expect(await page.locator("h1").textContent()).toContain("Sow carrots");
    });
  });

  test("in winter has the next dates and orders to tick, and a tick is taken back by another", async () => {
    await onDevice(SCRIPTLESS, async ({ page }) => {
      await page.goto(await linkOf("winter", "helper"));
      expect(await page.locator("main").textContent()).toMatch(/Then nothing for \d+ days\./);
      const dates = page
        .getByRole("heading", { name: "What comes next" })
        .locator("..")
        .locator("a");
      expect(await dates.count()).toBe(5);
      const ticks = page.locator(".tick");
      expect(await ticks.count()).toBeGreaterThan(10);
      const name = (await ticks.first().textContent())?.replace(/:[^:]*$/, "") ?? "";
      await onward(page, () => ticks.first().tap());
      expect(await page.locator(".ticked").textContent()).toContain(name);
      await onward(page, () => page.locator(".ticked").tap());
      expect(await page.locator(".ticked").count()).toBe(0);
    });
  });
});

inBrowser("today, at a desk", () => {
  test("has the week as seven columns side by side", async () => {
    await onDevice(DESK, async ({ page }) => {
      await page.goto(await linkOf("this-week", "helper"));
      const days = page.locator(".week").first().locator("> li");
      const tops = await days.evaluateAll((all) => all.map((day) => day.getBoundingClientRect().y));
      expect(tops).toHaveLength(7);
      expect(new Set(tops).size).toBe(1);
    });
  });

  test("is answered by keys alone, and the focus is never under the bar", async () => {
    await onDevice(DESK, async ({ page }) => {
      await page.goto(await linkOf("today-keys", "helper"));
      const title = (await jobs(page).first().locator(".what").textContent()) ?? "";
      await page.keyboard.press("Tab");
      await page.keyboard.press("Enter");
      expect(await jobs(page).first().locator("details").getAttribute("open")).not.toBeNull();
      await page.keyboard.press("Enter");
      await page.keyboard.press("Tab");
      await onward(page, () => page.keyboard.press("Enter"));
      expect(await answered(page).locator(".what").textContent()).toBe(title);
      // The place that the answer leads back to is where Tab goes on from.
      await page.keyboard.press("Tab");
      expect(await page.evaluate(() => document.activeElement?.textContent)).toMatch(/^Undo/);
      await onward(page, () => page.keyboard.press("Enter"));
      expect(await answered(page).count()).toBe(0);
    });
  });
});

inBrowser("the bar at the foot", () => {
  test("is on every page and sheet of a garden, within reach of the thumb, with five places at most", async () => {
    await onDevice(ANDROID, async ({ page }) => {
      const shown = [...(await everyPage()), ...(await everySheet())];
      const gardens = shown.filter(({ name }) => !/^(front|invitation)/.test(name));
      for (const { name, address } of gardens) {
        await page.goto(address);
        const places = page.locator("nav.bar a");
        expect(await places.count(), name).toBeGreaterThan(1);
        expect(await places.count(), name).toBeLessThanOrEqual(5);
        for (const place of await places.all()) {
          const box = await place.boundingBox();
          expect(box?.height, name).toBeGreaterThanOrEqual(44);
          expect((box?.y ?? 0) + (box?.height ?? 0), name).toBeGreaterThan(844 - 64);
        }
      }
    });
  });

  test("leads from a sheet back to today, and from anywhere to the calendar in two taps", async () => {
    await onDevice(ANDROID, async ({ page }) => {
      await page.goto(`${await linkOf("quarry-lane", "helper")}sheet`);
      await onward(page, () => page.locator(".bar").getByRole("link", { name: "Today" }).tap());
      await onward(page, () => page.getByRole("link", { name: "Put it in my calendar" }).tap());
      expect(await page.locator('a[href^="webcal:"]').first().isVisible()).toBe(true);
    });
  });
});
