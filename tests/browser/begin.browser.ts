import type { Page } from "playwright-core";
import { describe, expect, inject, test } from "vitest";
import { DESK, IPHONE, inBrowser, onDevice, onward, SCRIPTLESS } from "./chromium.ts";
import {
  answerAmounts,
  answerBeds,
  answerCrops,
  answerFrost,
  answerGarden,
  answerPeople,
  press,
} from "./first-form.ts";
import { invitation } from "./invite.ts";
import { eventsAt } from "./links.ts";

const heading = (page: Page) => page.locator("h1").textContent();

async function answerAll(page: Page): Promise<void> {
  await answerGarden(page);
  await answerFrost(page);
  await answerPeople(page);
  await answerBeds(page);
  await answerCrops(page);
  await answerAmounts(page);
}

/** Nothing of a page lies beyond its edge. */
async function fits(page: Page): Promise<void> {
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(wide, await page.title()).toBeLessThanOrEqual(0);
}

const DEVICES = [
  { named: "a desk", device: DESK, scripted: true },
  { named: "a phone", device: IPHONE, scripted: true },
  { named: "a phone without script", device: SCRIPTLESS, scripted: false },
] as const;

inBrowser("an invitation", () => {
  test.each(DEVICES)(
    "makes a garden on $named, from the first question to a person's own calendar",
    async ({ device, scripted }) => {
      await onDevice(device, async ({ page, context }) => {
        await page.goto(await invitation());
        await answerAll(page);
        expect(await heading(page)).toBe("Look it over");
        await fits(page);
        expect(await page.locator("main").textContent()).toMatch(/A month of it: \w+ 20\d\d/);
        await press(page, "Save, and make the garden");
        expect(await heading(page)).toBe("Mill End is ready");
        await fits(page);
        const codes = await page.locator("main code").allTextContents();
        const addresses = codes.filter((code) => code.startsWith("http"));
        expect(addresses.map((address) => new URL(address).pathname.split("/")[2])).toEqual([
          ...["owner-1", "helper-ada-1", "helper-bo-1"],
        ]);
        expect(addresses[0]).toMatch(new RegExp(`^${inject("sowbell").server}/`));
        const titles = (await eventsAt(`${addresses[1]}sessions.ics`)).map((each) => each.summary);
        expect(titles.join("\n")).toMatch(/carrots/);
        expect(await page.getByRole("button", { name: "Copy your own link" }).isVisible()).toBe(
          scripted,
        );
        if (scripted) {
          await context.grantPermissions(["clipboard-read", "clipboard-write"]);
          await page.getByRole("button", { name: "Copy the link of Ada" }).click();
          await page.getByText("Copied.").waitFor();
          expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(addresses[1]);
        }
        await onward(page, () =>
          page.getByRole("link", { name: "Put it in my calendar for Bo" }).click(),
        );
        expect(page.url()).toBe(`${addresses[2]}calendar`);
        await page.goto(addresses[0] ?? "");
        expect(await page.locator("body").textContent()).toContain("Mill End");
      });
    },
  );

  test("tells what can't be so at its field, keeps every answer, and goes on once it is mended", async () => {
    await onDevice(SCRIPTLESS, async ({ page }) => {
      await page.goto(await invitation());
      await page.getByLabel("For which year?").fill("2019");
      await press(page, "Go on");
      expect(await page.locator("#year-wrong").textContent()).toMatch(/^Write a year from 20/);
      await answerGarden(page);
      await answerFrost(page, "mid May");
      const summary = page.getByRole("alert").getByRole("link");
      expect(await summary.allTextContents()).toEqual([
        "mid May is not a day. Write a day such as 6 May.",
      ]);
      await summary.click();
      expect(new URL(page.url()).hash).toBe("#lastFrost");
      const field = page.getByLabel("The usual last frost of spring");
      expect(await field.getAttribute("aria-invalid")).toBe("true");
      expect(await field.inputValue()).toBe("mid May");
      await field.fill("15 May");
      await press(page, "Go on");
      expect(await heading(page)).toBe("Who gardens?");
    });
  });

  test("finds where a town lies without asking anybody, with and without script", async () => {
    for (const device of [IPHONE, SCRIPTLESS]) {
      await onDevice(device, async ({ page }) => {
        await page.goto(await invitation());
        await answerGarden(page);
        await page.getByLabel("The town, or a larger one near by").fill("Springfield");
        await answerFrost(page);
        expect(await heading(page)).toBe("When does it freeze?");
        await page.getByLabel("Springfield, IL, United States").check();
        await press(page, "Go on");
        expect(await heading(page)).toBe("Who gardens?");
        await press(page, "Go back");
        expect(await page.getByLabel("Latitude and longitude").inputValue()).toBe("39.8, -89.6");
      });
    }
  });

  test("guesses frosts for somebody who knows two temperatures, and says so", async () => {
    await onDevice(IPHONE, async ({ page }) => {
      await page.goto(await invitation());
      await answerGarden(page);
      await page.getByLabel(/Only how hot and how cold/).check();
      expect(await page.getByLabel("The usual last frost of spring").isVisible()).toBe(false);
      await page.getByLabel("How hot are the hottest month's afternoons").fill("82");
      await page.getByLabel("How cold are the coldest month's nights").fill("18");
      for (const _ of ["frost", "people", "beds"]) await press(page, "Go on");
      await answerCropsAlone(page);
      const frosts = page.locator(".said > div").filter({ hasText: "When does it freeze?" });
      expect(await frosts.textContent()).toMatch(
        /Last frost: early .*Guessed by the two temperatures/,
      );
    });
  });
});

async function answerCropsAlone(page: Page): Promise<void> {
  await page.getByLabel("Carrots", { exact: true }).check();
  await press(page, "Go on");
  await press(page, "Go on");
}

inBrowser("going back", () => {
  describe.each([
    { named: "with script", device: IPHONE },
    { named: "without", device: SCRIPTLESS },
  ])("$named", ({ device }) => {
    test("by the page's own way keeps what was typed on this page too, right or wrong", async () => {
      await onDevice(device, async ({ page }) => {
        await page.goto(await invitation());
        await answerGarden(page);
        await page.getByLabel("The usual last frost of spring").fill("mid May");
        await press(page, "Go back");
        expect(await page.getByLabel("What is the garden called?").inputValue()).toBe("Mill End");
        await press(page, "Go on");
        expect(await page.getByLabel("The usual last frost of spring").inputValue()).toBe(
          "mid May",
        );
      });
    });

    test("by the browser's own way, and forth again, too", async () => {
      await onDevice(device, async ({ page }) => {
        await page.goto(await invitation());
        await answerGarden(page);
        await answerFrost(page);
        await answerPeople(page);
        await answerBeds(page);
        await page.goBack();
        expect(await heading(page)).toBe("The beds");
        const bed = page.locator('[name="beds.0.name"]');
        expect(await bed.inputValue()).toBe("South bed");
        await bed.fill("North bed");
        await press(page, "Go on");
        await answerCropsAlone(page);
        expect(await page.locator(".said").textContent()).toContain("North bed");
        expect(await page.locator(".said").textContent()).toContain("Ada");
      });
    });
  });
});

inBrowser("the plan as text", () => {
  test("can be changed before the garden is made, and its problems are told by line", async () => {
    await onDevice(DESK, async ({ page }) => {
      await page.goto(await invitation());
      await answerAll(page);
      await page.getByText("The plan as text").click();
      await press(page, "Change it as text");
      const text = page.getByLabel("The plan, as text");
      expect(await text.inputValue()).toMatch(/South bed:\n(?:.*\n)*? +- carrot: 3 rows/);
      await text.fill((await text.inputValue()).replace("year: ", "yaer: "));
      await page.locator("#checked").getByText("Not yet to be saved").waitFor();
      await text.fill((await text.inputValue()).replace("yaer: ", "year: "));
      await press(page, "Save, and make the garden");
      expect(await heading(page)).toBe("Mill End is ready");
    });
  });

  test("sent twice makes one garden, and its links are shown again", async () => {
    await onDevice(SCRIPTLESS, async ({ page }) => {
      const invited = await invitation();
      await page.goto(invited);
      await answerAll(page);
      await onward(page, () =>
        page.getByRole("button", { name: "Save, and make the garden" }).dblclick(),
      );
      await page.waitForLoadState();
      expect(await page.locator("main code").first().textContent()).toContain("/owner-1/");
      expect((await page.goto(invited))?.status()).toBe(404);
    });
  });
});
