import type { Page } from "playwright-core";
import { onward } from "./chromium.ts";
import { YEAR } from "./gardens.ts";

/** Presses a button that leads to another page. */
export const press = (page: Page, name: string): Promise<void> =>
  onward(page, () => page.getByRole("button", { name, exact: true }).click());

/** The first page of an invitation filled in and sent. */
export async function answerGarden(page: Page): Promise<void> {
  await page.getByLabel("What is the garden called?").fill("Mill End");
  await page.getByLabel("For which year?").fill(String(YEAR));
  await page.getByLabel("inches and °F").check();
  await page.getByLabel("Whose clock does it go by?").selectOption("Europe/Paris");
  await press(page, "Go on");
}

/** The next one, by the frost dates. */
export async function answerFrost(page: Page, lastFrost = "about 6 May"): Promise<void> {
  await page.getByLabel("The usual last frost of spring").fill(lastFrost);
  await page.getByLabel("The usual first frost of autumn").fill("about 2 Oct");
  await press(page, "Go on");
}

/** Ada and Bo. */
export async function answerPeople(page: Page): Promise<void> {
  await page.getByRole("group", { name: "Person 1" }).getByLabel("Name").fill("Ada");
  await page.getByRole("group", { name: "Person 2" }).getByLabel("Name").fill("Bo");
  await press(page, "Go on");
}

/** A bed and six bags. */
export async function answerBeds(page: Page): Promise<void> {
  const bed = page.getByRole("group", { name: "Bed 1" });
  await bed.getByLabel("Name").fill("South bed");
  await bed.getByLabel("Length in feet").fill("12");
  await bed.getByLabel("Width in feet").fill("4");
  const bags = page.getByRole("group", { name: "Bed 2" });
  await bags.getByLabel("Name").fill("Bags");
  await bags.getByLabel("What is it?").selectOption("Grow bags");
  await bags.getByLabel("How many").fill("6");
  await press(page, "Go on");
}

/** Carrots in the bed and tomatoes in the bags. */
export async function answerCrops(page: Page): Promise<void> {
  await page.getByLabel("Carrots", { exact: true }).check();
  await page.getByLabel("Tomatoes", { exact: true }).check();
  await press(page, "Go on");
}

/** How much of both, where, and how the tomatoes begin. */
export async function answerAmounts(page: Page): Promise<void> {
  const carrots = page.getByRole("group", { name: "Carrots" });
  await carrots.getByLabel("How much").fill("3");
  await carrots.getByLabel("Where").selectOption("South bed");
  const tomatoes = page.getByRole("group", { name: "Tomatoes" });
  await tomatoes.getByLabel("How much").fill("6");
  await tomatoes.getByLabel("Where").selectOption("Bags");
  await tomatoes.getByLabel("How it begins").selectOption("bought as plants");
  await press(page, "Go on");
}

/** Goes through the form from its first page, and stops at each page before it is filled in, once where something is wrong on it. */
export async function* everyStep(page: Page): AsyncGenerator<string> {
  yield "garden";
  await answerGarden(page);
  yield "frost";
  await answerFrost(page, "mid May");
  yield "frost-wrong";
  await answerFrost(page);
  yield "people";
  await answerPeople(page);
  yield "beds";
  await answerBeds(page);
  yield "crops";
  await answerCrops(page);
  yield "amounts";
  await answerAmounts(page);
  yield "look";
  await page.getByText("The plan as text").click();
  await press(page, "Change it as text");
  yield "text";
  await press(page, "Save, and make the garden");
  yield "ready";
}
