import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults, RunOptions } from "axe-core";
import type { BrowserContextOptions, Page } from "playwright-core";
import { expect, test } from "vitest";
import { ANDROID, DESK, inBrowser, onDevice, onward } from "./chromium.ts";
import { everyStep } from "./first-form.ts";
import { invitation } from "./invite.ts";
import { linkOf } from "./links.ts";
import { everyPage, everyPicture, everySheet, type Shown } from "./pages.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** Every rule axe has on by itself, and the size of targets, which it has not. */
const RULES: RunOptions = { rules: { "target-size": { enabled: true } } };

/** What is wrong with the page in view, a line a rule: where first, how often, and what would mend it. */
async function violationsOn(page: Page): Promise<readonly string[]> {
  // As the browser's own tools would run it: the page's policy lets no script of a stranger in.
  await page.evaluate(AXE);
  const { violations } = await page.evaluate(
    (rules) =>
      (globalThis as unknown as { axe: { run: (o: RunOptions) => Promise<AxeResults> } }).axe.run(
        rules,
      ),
    RULES,
  );
  return violations.map(({ id, nodes }) => {
    const [first] = nodes;
    return `${id}, ${nodes.length} times, ${first?.target.join(" ")}: ${first?.failureSummary}`;
  });
}

async function faultsOn(page: Page, shown: readonly Shown[]): Promise<readonly string[]> {
  const faults: string[] = [];
  for (const { name, address } of shown) {
    await page.goto(address);
    await page.locator("details").evaluateAll((all) => {
      for (const fold of all) fold.setAttribute("open", "");
    });
    faults.push(...(await violationsOn(page)).map((fault) => `${name}: ${fault}`));
  }
  return faults;
}

const LIGHTS: readonly { named: string; device: BrowserContextOptions }[] = [
  { named: "a phone by day", device: { ...ANDROID, colorScheme: "light" } },
  { named: "a phone in the dark", device: { ...ANDROID, colorScheme: "dark" } },
  { named: "a desk by day", device: { ...DESK, colorScheme: "light" } },
  { named: "a desk in the dark", device: { ...DESK, colorScheme: "dark" } },
];

inBrowser("axe", () => {
  test.each(LIGHTS)("finds nothing on any page, on $named", async ({ device }) => {
    await onDevice(device, async ({ page }) => {
      expect(await faultsOn(page, await everyPage())).toEqual([]);
    });
  });

  test.each(LIGHTS)("finds nothing on a sheet to be printed, on $named", async ({ device }) => {
    await onDevice(device, async ({ page }) => {
      expect(await faultsOn(page, await everySheet())).toEqual([]);
    });
  });

  test.each(LIGHTS)("finds nothing in a drawing set into a page, on $named", async ({ device }) => {
    await onDevice(device, async ({ page }) => {
      for (const { name, address } of await everyPicture()) {
        const svg = await (await fetch(address)).text();
        await page.setContent(
          `<!doctype html><html lang="en"><title>${name}</title><main><h1>${name}</h1>${svg}</main></html>`,
        );
        expect(await violationsOn(page), name).toEqual([]);
      }
    });
  });

  test.each(LIGHTS)(
    "finds nothing where a plan was not saved and a line of it is told, on $named",
    async ({ device }) => {
      await onDevice(device, async ({ page }) => {
        const [plan] = (await everyPage()).filter(({ name }) => name === "owner-plan");
        await page.goto(plan?.address ?? "");
        await page.getByLabel("The plan, as text").fill("garden: [\n");
        await page.locator("#checked button").first().waitFor();
        expect(await violationsOn(page)).toEqual([]);
        await onward(page, () => page.getByRole("button", { name: "Save" }).click());
        expect(await violationsOn(page)).toEqual([]);
      });
    },
  );

  test.each(LIGHTS)("finds nothing where a link is shown, on $named", async ({ device }) => {
    await onDevice(device, async ({ page }) => {
      await page.goto(`${await linkOf("quarry-lane", "owner")}links`);
      await onward(page, () => page.getByRole("button", { name: "Show the link of Imre" }).click());
      expect(await violationsOn(page)).toEqual([]);
    });
  });

  test.each(LIGHTS)("finds nothing on any page of an invitation, on $named", async ({ device }) => {
    await onDevice(device, async ({ page }) => {
      await page.goto(await invitation());
      for await (const step of everyStep(page)) expect(await violationsOn(page), step).toEqual([]);
    });
  });
});
