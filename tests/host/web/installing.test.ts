import { beforeAll, describe, expect, test } from "vitest";
import { ask, linkTo, publish, type Shell, shellWith } from "./garden.ts";

let shell: Shell;
let base: string;

beforeAll(async () => {
  shell = shellWith();
  await publish(shell, "quarry-lane");
  base = await linkTo("quarry-lane", "helper", "imre");
});

describe("a link on a home screen", () => {
  test("is an app of the garden's name that begins at the link and stays under it", async () => {
    const answer = await ask(shell, `${base}app.webmanifest`);
    expect(answer.headers.get("content-type")).toBe("application/manifest+json; charset=utf-8");
    expect(answer.headers.get("cache-control")).toBe("private, no-cache");
    expect(await answer.json()).toMatchObject({
      ...{ name: "Quarry Lane", id: base, start_url: base, scope: base, display: "standalone" },
      icons: [{ src: "/icon-192.png" }, { src: "/icon-512.png" }],
    });
  });

  test.each([180, 192, 512])("has an icon of %i dots that anybody may keep", async (size) => {
    const answer = await ask(shell, `/icon-${size}.png`);
    expect(answer.headers.get("content-type")).toBe("image/png");
    expect(answer.headers.get("cache-control")).toMatch(/^public/);
  });

  test("has a worker of its own, which asks nobody but here", async () => {
    const answer = await ask(shell, `${base}worker.js`);
    expect(answer.headers.get("content-type")).toBe("text/javascript; charset=utf-8");
    expect(answer.headers.get("content-security-policy")).toBe(
      "default-src 'none'; connect-src 'self'",
    );
    expect(await answer.text()).toContain("No network");
  });

  test("has none where the link opens nothing", async () => {
    const forged = base.replace(/[^/]+\/$/, `${"A".repeat(43)}/`);
    for (const rest of ["app.webmanifest", "worker.js"])
      expect((await ask(shell, `${forged}${rest}`)).status).toBe(404);
  });
});
