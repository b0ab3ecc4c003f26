import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { DESK, inBrowser, onDevice, onward } from "./chromium.ts";
import { YEAR } from "./gardens.ts";
import { invitation } from "./invite.ts";
import { linkOf } from "./links.ts";
import { everyPage } from "./pages.ts";

/** Everything on a page that keys can come to, in the order it is written and so read. A group of radios is one stop. */
const STOPS =
  'a[href], button, select, textarea:not([hidden]), summary, input:not([type="hidden"]):not([type="radio"]), input[type="radio"]:checked, pre';

/** A stop of the Tab key: its place among all there are, and how its focus shows. */
type Stop = { readonly at: number; readonly outline: string; readonly inView: boolean };

/** Marks every stop with its place, whatever comes into focus later; gives how many there are. */
function numberStops(page: Page): Promise<number> {
  return page.evaluate((stops) => {
    const all = [...document.querySelectorAll<HTMLElement>(stops)].filter(
      (each) =>
        each.checkVisibility() && (each.tagName !== "PRE" || each.scrollWidth > each.clientWidth),
    );
    for (const [at, each] of all.entries()) each.dataset.stop = String(at);
    return all.length;
  }, STOPS);
}

function focused(page: Page): Promise<Stop> {
  return page.evaluate(() => {
    const at = document.activeElement as HTMLElement;
    const { outlineStyle, outlineWidth } = getComputedStyle(at);
    const { bottom, top } = at.getBoundingClientRect();
    return {
      at: Number(at.dataset.stop ?? -1),
      outline: `${outlineStyle} ${outlineWidth}`,
      inView: bottom > 0 && top < innerHeight,
    };
  });
}

/** Where the next Tab leads. A field for a day has more than one place of its own, which count as one. */
async function onByTab(page: Page): Promise<Stop> {
  const before = await focused(page);
  for (let presses = 0; presses < 4; presses++) {
    await page.keyboard.press("Tab");
    const now = await focused(page);
    if (now.at !== before.at) return now;
  }
  return before;
}

/** What is wrong with going through a page by Tab alone, from its top to its end. */
async function wrongWithTabs(page: Page): Promise<readonly string[]> {
  const wrong: string[] = [];
  const count = await numberStops(page);
  for (let stop = 0; stop < count; stop++) {
    const { at, outline, inView } = await onByTab(page);
    if (at !== stop) return [...wrong, `after ${stop} of ${count} stops comes ${at}`];
    if (!/^solid [1-9]/.test(outline)) wrong.push(`stop ${at}: ${outline}`);
    if (!inView) wrong.push(`stop ${at} is out of view`);
  }
  return wrong;
}

/** Goes on by Tab until that is in focus, once round the page at the most; throws where it never is. */
async function tabTo(page: Page, name: string): Promise<void> {
  const stops = await page.locator("a, button, input, select, textarea, summary").count();
  for (let presses = 0; presses <= stops + 1; presses++) {
    await page.keyboard.press("Tab");
    const now = await page.evaluate(() => {
      const { activeElement: at } = document;
      const labels = (at as HTMLInputElement | null)?.labels ?? [];
      return [at?.textContent ?? "", ...[...labels].map((each) => each.textContent ?? "")];
    });
    if (now.some((each) => each.trim() === name)) return;
  }
  throw new Error(`no way by keys to ${name}`);
}

inBrowser("keys alone", () => {
  test("reach everything on every page in reading order, and always show where they are", async () => {
    await onDevice(DESK, async ({ page }) => {
      for (const { name, address } of await everyPage()) {
        await page.goto(address);
        expect(await wrongWithTabs(page), name).toEqual([]);
      }
    });
  });

  test("lead from the garden's page to a job and back", async () => {
    await onDevice(DESK, async ({ page }) => {
      await page.goto(await linkOf("this-week", "helper"));
      await tabTo(page, "Sow carrots");
      await onward(page, () => page.keyboard.press("Enter"));
      expect(await page.locator("h1").textContent()).toContain("Sow carrots");
      await tabTo(page, "Today");
      await onward(page, () => page.keyboard.press("Enter"));
      expect(await page.locator("h1").textContent()).toBe("This Week");
    });
  });

  test("answer an invitation from its first page to the garden", async () => {
    await onDevice(DESK, async ({ page }) => {
      const type = async (field: string, said: string) => {
        await tabTo(page, field);
        await page.keyboard.type(said);
      };
      const goOn = () => onward(page, () => page.keyboard.press("Enter"));
      await page.goto(await invitation());
      await type("What is the garden called?", "Mill End");
      await tabTo(page, "metric");
      await page.keyboard.press("ArrowDown");
      await type("Whose clock does it go by?", "Europe/Paris");
      await tabTo(page, "Go on");
      await goOn();
      await type("The usual last frost of spring", "about 6 May");
      await type("The usual first frost of autumn", "about 2 Oct");
      // The return key in a field goes on, as the button does.
      await goOn();
      await type("Name", "Ada");
      await goOn();
      await type("Name", "South bed");
      await goOn();
      await tabTo(page, "Carrots");
      await page.keyboard.press("Space");
      await goOn();
      await type("How much", "3");
      await goOn();
      expect(await page.locator("h1").textContent()).toBe("Look it over");
      const text = await page.locator("pre").textContent();
      expect(text).toMatch(/measures: inches and °F/);
      expect(text).toMatch(/South bed:\n(?:.*\n)*? +- carrot: 3 rows/);
      await tabTo(page, "Save, and make the garden");
      await goOn();
      expect(await page.locator("h1").textContent()).toBe("Mill End is ready");
    });
  });

  test("change a plan, go to the line that is wrong, mend and save it", async () => {
    await onDevice(DESK, async ({ page }) => {
      await page.goto(`${await linkOf("written-keys", "owner")}plan/${YEAR}`);
      const text = page.getByLabel("The plan, as text");
      const before = await text.inputValue();
      await tabTo(page, "The plan, as text");
      await page.keyboard.press("Control+End");
      await page.keyboard.type("rumour: soft");
      await page.locator("#checked button").last().waitFor();
      await tabTo(page, `line ${before.split("\n").length}`);
      await page.keyboard.press("Enter");
      await page.keyboard.type("# quiet");
      await page.locator("#checked").getByText("It can be saved.").waitFor();
      await tabTo(page, "Save");
      await onward(page, () => page.keyboard.press("Enter"));
      expect(await page.getByRole("status").first().textContent()).toContain("Saved as version");
      expect(await text.inputValue()).toBe(`${before}# quiet`);
    });
  });
});
