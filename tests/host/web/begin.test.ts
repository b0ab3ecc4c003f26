import { beforeAll, describe, expect, test } from "vitest";
import { engine } from "../../../src/host/edge/core.ts";
import { savedPlan } from "../../../src/host/store/plans.ts";

import { ask, inStore, linkTo, ORIGIN, type Shell, shellWith } from "./garden.ts";

let shell: Shell;

beforeAll(async () => {
  shell = shellWith({ engine });
});

const TYPED = {
  garden: "Brook <End>",
  year: "2027",
  measures: "metric",
  clock: "Europe/Oslo",
  latitude: "60.1",
  lastFrost: "about 20 May",
  firstFrost: "about 20 Sep",
  hottest: "22 °C",
  coldest: "",
  people: "Ada\r\nBo\r\n",
  beds: "South bed, 4 x 1.2 m\r\nPots",
};

const send = (link: string, form: readonly (readonly [string, string])[], rest = "") =>
  ask(shell, `${link}${rest}`, {
    method: "POST",
    body: new URLSearchParams(form.map(([name, value]) => [name, value])).toString(),
    headers: { "content-type": "application/x-www-form-urlencoded" },
  });

const typed = (over: Partial<typeof TYPED> = {}) => Object.entries({ ...TYPED, ...over });

/** The text in a page's field, as a browser sends it. */
const textIn = (html: string) =>
  (/<textarea id="text"[^>]*>\n([\s\S]*?)<\/textarea>/.exec(html)?.[1] ?? "")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&")
    .replaceAll("\n", "\r\n");

describe("an invitation", () => {
  test("leads from a short form over the crops and the text to a garden and its owner's link", async () => {
    const link = await linkTo("k7dq2mxw", "invitation");
    const first = await (await ask(shell, link)).text();
    expect(first).toContain('<option value="Europe/Oslo">');
    expect(first.length).toBeLessThan(50_000);

    const crops = await (await send(link, [...typed(), ["step", "crops"]])).text();
    expect(crops).toContain("Carrots");
    expect(crops).toContain('aria-label="The bed for Carrots"');
    expect(crops.length).toBeLessThan(50_000);

    const ticked = [
      ["crop", "carrot"],
      ["bed-carrot", "1"],
      ["crop", "tomato"],
      ["step", "text"],
    ] as const;
    const plan = await (await send(link, [...typed(), ...ticked])).text();
    const text = textIn(plan);
    expect(text).toContain("garden: Brook <End>");
    expect(text).toMatch(/South bed:[\s\S]*- tomato[\s\S]*Pots:[\s\S]*- carrot/);

    const check = await send(
      link,
      [
        ["base", "0"],
        ["text", text.replace("year: 2027", "year: soon")],
      ],
      "check",
    );
    expect(await check.json()).toContainEqual({
      line: 7,
      stops: true,
      says: expect.stringContaining("year"),
    });
    expect(await inStore("k7dq2mxw", (sql) => savedPlan(sql, 2027))).toBeNull();

    const made = await send(link, [
      ["base", "0"],
      ["text", text],
      ["step", "save"],
    ]);
    const owner = await linkTo("k7dq2mxw", "owner");
    const html = await made.text();
    expect(html).toContain(`<code>${ORIGIN}${owner}</code>`);
    expect(html).toContain('<svg class="qr"');
    expect((await ask(shell, owner)).status).toBe(200);

    const again = await send(link, [
      ["base", "0"],
      ["text", text],
      ["step", "save"],
    ]);
    // Its recovery phrase is another each time.
    const plain = (page: string) => page.replace(/([a-z2-7]{4} ){5}[a-z2-7]{4}/, "");
    expect(plain(await again.text())).toBe(plain(html));
  });

  test("that made its garden opens nothing more, nor to whoever sends another plan", async () => {
    const link = await linkTo("k7dq2mxw", "invitation");
    expect((await ask(shell, link)).status).toBe(404);
    expect((await send(link, [...typed(), ["step", "crops"]])).status).toBe(404);
    const other =
      "garden: Mine\nyear: 2027\nplace: { clock: UTC, last frost: none, first frost: none }\ncrops: [leek]\n";
    expect(
      (
        await send(link, [
          ["base", "0"],
          ["text", other],
          ["step", "save"],
        ])
      ).status,
    ).toBe(404);
    expect(
      (
        await send(
          link,
          [
            ["base", "0"],
            ["text", other],
          ],
          "check",
        )
      ).status,
    ).toBe(404);
    expect((await inStore("k7dq2mxw", (sql) => savedPlan(sql, 2027)))?.summary.name).toBe(
      "Brook <End>",
    );
  });

  test("keeps what was typed where something is wrong with it, and says what", async () => {
    const link = await linkTo("another", "invitation");
    const wrong = typed({ lastFrost: "in the middle of spring", beds: "South bed\nSouth bed" });
    const answer = await send(link, [...wrong, ["step", "crops"]]);
    expect(answer.status).toBe(422);
    const html = await answer.text();
    expect(html).toContain('value="in the middle of spring"');
    expect(html).toContain("Two beds are called South bed.");
    expect(html).toMatch(/role="alert"[\s\S]*<li>[\s\S]*<li>/);
  });

  test("saves no plan with something wrong in it, and loses nothing of it", async () => {
    const link = await linkTo("another", "invitation");
    const text = "garden: Mine\nyear: 2027\ncrops: [leek]\n# <mine>\n";
    const answer = await send(link, [
      ["base", "0"],
      ["text", text],
      ["step", "save"],
    ]);
    expect(answer.status).toBe(422);
    expect(textIn(await answer.text())).toBe(text.replaceAll("\n", "\r\n"));
    expect((await ask(shell, link)).status).toBe(200);
  });

  test("makes one garden even where two send their plans at once", async () => {
    const link = await linkTo("both", "invitation");
    const plan = (year: number) =>
      `garden: G${year}\nyear: ${year}\nplace: { clock: UTC, last frost: none, first frost: none }\ncrops: [leek]\n`;
    const both = await Promise.all(
      [2027, 2028].map((year) =>
        send(link, [
          ["base", "0"],
          ["text", plan(year)],
          ["step", "save"],
        ]),
      ),
    );
    expect(both.map(({ status }) => status).sort()).toEqual([200, 404]);
    const saved = await inStore("both", (sql) => [2027, 2028].map((year) => savedPlan(sql, year)));
    expect(saved.filter((one) => one !== null)).toHaveLength(1);
  });

  test("supposes no clock on one's own machine, and knows the platform's by any name", async () => {
    const link = await linkTo("clocks", "invitation");
    const here = await ask(shell, `http://127.0.0.1${link}`, {
      cf: { timezone: "America/Chicago" },
    });
    expect(await here.text()).toContain('<option value="">Choose one</option>');
    const named = await ask(shell, link, { cf: { timezone: "Asia/Kolkata" } });
    expect(await named.text()).toMatch(/<option value="Asia\/Kolkata" selected/);
  });

  test("says so where more was typed than it takes, and cuts nothing off", async () => {
    const link = await linkTo("another", "invitation");
    const beds = Array.from({ length: 201 }, (_, at) => `Bed ${at}`).join("\n");
    const answer = await send(link, [...typed({ beds }), ["step", "crops"]]);
    expect(answer.status).toBe(422);
    const html = await answer.text();
    expect(html).toContain("More than 200 people or beds");
    expect(html).toContain("Bed 200</textarea>");
  });

  test("revoked by who keeps the deployment opens nothing", async () => {
    const close = { method: "DELETE" };
    const admin = await linkTo("third", "admin");
    expect((await ask(shell, `${admin}links/invitation-1`, close)).status).toBe(200);
    expect((await ask(shell, await linkTo("third", "invitation"))).status).toBe(404);
  });
});
