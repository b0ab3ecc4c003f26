import type { Page } from "playwright-core";
import { expect, inject, test } from "vitest";
import { DESK, IPHONE, inBrowser, onDevice, onward, SCRIPTLESS } from "./chromium.ts";
import { YEAR } from "./gardens.ts";
import { invitation } from "./invite.ts";
import { eventsAt } from "./links.ts";

type Answers = { readonly garden: string; readonly beds: string };

const ANSWERS = { garden: "Mill End", beds: "South bed, 12 x 4 ft\nNorth bed, 8 x 4 ft" };

/** The first page filled in and sent. */
async function answerPlace(page: Page, { garden, beds }: Answers): Promise<void> {
  await page.getByLabel("What is the garden called?").fill(garden);
  await page.getByLabel("For which year?").fill(String(YEAR));
  await page.getByLabel("inches and °F").check();
  await page.getByLabel("Whose clock does it go by?").selectOption("Europe/Paris");
  await page.getByLabel("The usual last frost of spring").fill("about 6 May");
  await page.getByLabel("The usual first frost of autumn").fill("about 2 Oct");
  await page.getByLabel("Latitude, if you know it").fill("46.6");
  await page.getByLabel("Who gardens? One name a line").fill("Ada\nBo");
  await page.getByLabel("The beds, one a line, with their size").fill(beds);
  await press(page, "On to the crops");
}

const press = (page: Page, name: string) =>
  onward(page, () => page.getByRole("button", { name }).click());

const DEVICES = [
  { named: "a desk", device: DESK },
  { named: "a phone", device: IPHONE },
  { named: "a phone without script", device: SCRIPTLESS },
] as const;

inBrowser("an invitation", () => {
  test.each(DEVICES)(
    "makes a garden on $named, from the first question to a person's own calendar",
    async ({ device }) => {
      await onDevice(device, async ({ page }) => {
        await page.goto(await invitation());
        await answerPlace(page, ANSWERS);
        await page.getByLabel("Carrots", { exact: true }).check();
        await page.getByLabel("The bed for Carrots", { exact: true }).selectOption("North bed");
        await page.getByLabel("Tomatoes", { exact: true }).check();
        await press(page, "On to the plan");
        const text = page.getByLabel("The plan, as text");
        expect(await text.inputValue()).toMatch(/North bed:\n(?:.*\n)*? +- carrot/);
        await text.fill((await text.inputValue()).replace("- carrot", "- carrot: 3 rows"));
        await press(page, "Save, and make the garden");
        const address = (await page.locator("main code").textContent()) ?? "";
        expect(address).toMatch(
          new RegExp(`^${inject("sowbell").server}/\\w+/owner-1/[\\w-]{43}/$`),
        );
        expect(await page.locator("svg.qr").isVisible()).toBe(true);
        await onward(page, () => page.getByRole("link", { name: "Open it here" }).click());
        expect(page.url()).toBe(address);
        expect(await page.locator("h1").textContent()).toBe("Mill End");
        await onward(page, () => page.getByRole("link", { name: "Links to hand on" }).click());
        await press(page, "Show the link of Ada");
        const feed = (await page.locator("main .faint code").textContent()) ?? "";
        const titles = (await eventsAt(feed)).map(({ summary }) => summary);
        expect(titles.join("\n")).toMatch(/carrots/);
        await onward(page, () => page.getByRole("link", { name: "Open it here" }).click());
        expect(page.url()).toMatch(/\/helper-ada-1\//);
        expect(await page.locator("h1").textContent()).toBe("Mill End");
      });
    },
  );

  test("tells what can't be so, keeps every answer, and goes on once it is mended", async () => {
    await onDevice(SCRIPTLESS, async ({ page }) => {
      await page.goto(await invitation());
      await answerPlace(page, { ...ANSWERS, beds: "South bed\nSouth bed" });
      const alert = page.getByRole("alert");
      expect(await alert.textContent()).toContain("Two beds are called South bed.");
      expect(await page.getByLabel("Who gardens? One name a line").inputValue()).toBe("Ada\nBo");
      expect(await page.getByLabel("inches and °F").isChecked()).toBe(true);
      await page.getByLabel("The beds, one a line, with their size").fill("South bed");
      await press(page, "On to the crops");
      expect(await page.locator("h1").textContent()).toBe("What grows there");
    });
  });

  test("shows the owner's link again to whoever sends the last page again, and makes no second garden", async () => {
    await onDevice(SCRIPTLESS, async ({ page }) => {
      const invited = await invitation();
      await page.goto(invited);
      await answerPlace(page, ANSWERS);
      await press(page, "On to the plan");
      await onward(page, () =>
        page.getByRole("button", { name: "Save, and make the garden" }).dblclick(),
      );
      await page.waitForLoadState();
      const address = await page.locator("main code").textContent();
      expect(address).toContain("/owner-1/");
      expect((await page.goto(invited))?.status()).toBe(404);
    });
  });
});
