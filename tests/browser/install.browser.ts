import { expect, test } from "vitest";
import { APP_ICON_SVG, ICON_SIZES, iconPng } from "../../src/host/web/app-icon.ts";
import { ANDROID, DESK, IPHONE, inBrowser, onDevice, SCRIPTLESS } from "./chromium.ts";
import { linkOf } from "./links.ts";

inBrowser("without a network", () => {
  test("the last week seen is shown and says so, and any other page says that there is none", async () => {
    const base = await linkOf("quarry-lane", "helper");
    await onDevice(ANDROID, async ({ page, context }) => {
      await page.goto(base);
      await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
      await page.reload();
      const seen = await page.locator("h1").textContent();
      await context.setOffline(true);
      await page.reload();
      expect(await page.getByRole("status").first().textContent()).toMatch(/^No network\./);
      expect(await page.locator("h1").textContent()).toBe(seen);
      await page.goto(`${base}diary`);
      expect(await page.locator("h1").textContent()).toBe("No network");
      await context.setOffline(false);
      await page.goto(`${base}diary`);
      expect(await page.locator("h1").textContent()).not.toBe("No network");
    });
  });

  test("another link of the same address has nothing of it", async () => {
    const [own, other] = [
      await linkOf("quarry-lane", "helper"),
      await linkOf("quarry-lane", "reader"),
    ];
    await onDevice(ANDROID, async ({ page, context }) => {
      await page.goto(own);
      await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
      await context.setOffline(true);
      expect(await page.goto(other).catch(() => null)).toBeNull();
    });
  });
});

inBrowser("to the calendar", () => {
  test("a feed's address opened by mistake is the page that subscribes, and downloads nothing", async () => {
    const base = await linkOf("quarry-lane", "helper");
    await onDevice(DESK, async ({ page }) => {
      const downloads: string[] = [];
      page.on("download", (download) => downloads.push(download.url()));
      await page.goto(`${base}sessions.ics`);
      expect(await page.locator("h1").textContent()).toBe("In your calendar");
      expect(downloads).toEqual([]);
      const program = await fetch(`${base}sessions.ics`);
      expect(program.headers.get("content-type")).toContain("text/calendar");
    });
  });

  test("Copy copies the address and says that it did; without a script there is no button, and the address stands there", async () => {
    const base = await linkOf("quarry-lane", "helper");
    await onDevice(
      { ...IPHONE, permissions: ["clipboard-read", "clipboard-write"] },
      async ({ page }) => {
        await page.goto(`${base}calendar`);
        await page.getByRole("button", { name: "Copy" }).first().tap();
        await expect.poll(() => page.getByRole("status").first().textContent()).toBe("Copied.");
        expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(
          `${base}sessions.ics`,
        );
      },
    );
    await onDevice(SCRIPTLESS, async ({ page }) => {
      await page.goto(`${base}calendar`);
      expect(await page.getByRole("button", { name: "Copy" }).count()).toBe(0);
      expect(await page.locator("code").first().textContent()).toBe(`${base}sessions.ics`);
    });
  });
});

inBrowser("what a wrong link shows", () => {
  test("is one page in our own look, whatever is wrong with it", async () => {
    const good = await linkOf("quarry-lane", "helper");
    const { origin } = new URL(good);
    const forged = good.replace(/[^/]+\/$/, `${"A".repeat(43)}/`);
    await onDevice(IPHONE, async ({ page }) => {
      const shown = [];
      for (const path of [forged, `${forged}sessions.ics`, `${origin}/no/such/link/`]) {
        expect((await page.goto(path))?.status()).toBe(404);
        shown.push(await page.content());
      }
      expect(new Set(shown).size).toBe(1);
      expect(await page.locator("h1").textContent()).toBe("Nothing here");
    });
  });
});

/** How many dots of two pictures of one size differ by more than a browser's own drawing does from one time to the next. */
async function differing([a, b, size]: readonly [string, string, number]): Promise<number> {
  const dotsOf = async (source: string) => {
    const image = new Image(size, size);
    image.src = source;
    await image.decode();
    const canvas = new OffscreenCanvas(size, size).getContext("2d");
    canvas?.drawImage(image, 0, 0, size, size);
    return canvas?.getImageData(0, 0, size, size).data ?? new Uint8ClampedArray();
  };
  const [one, other] = [await dotsOf(a), await dotsOf(b)];
  return one.filter((value, i) => Math.abs(value - (other[i] ?? 0)) > 24).length;
}

inBrowser("the icon", () => {
  test.each(ICON_SIZES)("of %i dots is the drawing", async (size) => {
    const svg = `data:image/svg+xml;base64,${Buffer.from(APP_ICON_SVG).toString("base64")}`;
    const png = `data:image/png;base64,${Buffer.from(iconPng(size)).toString("base64")}`;
    await onDevice(DESK, async ({ page }) => {
      expect(await page.evaluate(differing, [svg, png, size] as const)).toBeLessThan(size / 2);
      expect(
        await page.evaluate(differing, [
          svg,
          "data:image/svg+xml,<svg xmlns='http://www.w3.org/2000/svg'/>",
          size,
        ] as const),
      ).toBeGreaterThan(size * size);
    });
  });
});
