import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from "playwright-core";
import { afterAll, describe } from "vitest";
import { CHROMIUM } from "./found.ts";

/** Tests that need a browser, skipped where there is none. */
export const inBrowser = describe.skipIf(CHROMIUM === null);

const AGENTS = {
  iphone:
    "Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.5 Mobile/15E148 Safari/604.1",
  android:
    "Mozilla/5.0 (Linux; Android 10; K) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/137.0.0.0 Mobile Safari/537.36",
} as const;

const HANDHELD = {
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 2,
  isMobile: true,
  hasTouch: true,
} as const;

/** Devices by what they say of themselves and by their size [CSS px]. */
export const IPHONE: BrowserContextOptions = { ...HANDHELD, userAgent: AGENTS.iphone };
export const ANDROID: BrowserContextOptions = { ...HANDHELD, userAgent: AGENTS.android };
export const DESK: BrowserContextOptions = { viewport: { width: 1280, height: 800 } };

/** A phone on which no script runs. */
export const SCRIPTLESS: BrowserContextOptions = { ...IPHONE, javaScriptEnabled: false };

let running: Promise<Browser> | null = null;

function browser(): Promise<Browser> {
  const args = ["--no-sandbox", "--disable-background-networking"];
  running ??= chromium.launch({ executablePath: CHROMIUM ?? "", args });
  return running;
}

afterAll(async () => {
  await (await running)?.close();
  running = null;
});

/** A page of a browser that has never been here, and what it lives in. */
export type Opened = { readonly page: Page; readonly context: BrowserContext };

/** Does something with a page on such a device, and closes it whatever happens. */
export async function onDevice<Found>(
  device: BrowserContextOptions,
  doing: (opened: Opened) => Promise<Found>,
): Promise<Found> {
  const context = await (await browser()).newContext(device);
  context.setDefaultTimeout(20_000);
  try {
    return await doing({ page: await context.newPage(), context });
  } finally {
    await context.close();
  }
}

/** Does what leads to another page, and waits until that one is there. */
export async function onward(page: Page, doing: () => Promise<unknown>): Promise<void> {
  const loaded = page.waitForEvent("load");
  await doing();
  await loaded;
}
