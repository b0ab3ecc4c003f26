import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { engine } from "../../../src/host/edge/core.ts";
import { savedPlan } from "../../../src/host/store/plans.ts";
import { ports } from "../ports.ts";
import { typed } from "./forms.ts";
import { ask, inStore, linkTo, type Shell, shellWith } from "./garden.ts";

const YEARS = `source: Open-Meteo
fetched: 2027-01-20
years: 1996 to 2025
latitude: 60.1
longitude: 10.5
in: °C
low: [-9, -8, -4, 0, 4, 8, 12, 11, 6, 0, -5, -9]
high: [1, 3, 8, 14, 19, 24, 29, 28, 22, 14, 6, 1]
last frost: [20 Apr, 6 May, 21 May]
first frost: [17 Sep, 2 Oct, 17 Oct]
`;

let shell: Shell;
/** Where the years were asked for, in the order of asking. */
let asked: string[] = [];

beforeAll(async () => {
  shell = shellWith({ engine });
});

beforeEach(() => {
  asked = [];
  ports.askYears = () => async (cell) => {
    asked.push(cell);
    return { file: YEARS, fault: null };
  };
});

const PLACE = { way: "place", lastFrost: "", firstFrost: "", hottest: "", coldest: "" };

const send = async (garden: string, over: Readonly<Record<string, string>>) => {
  const answer = await ask(shell, await linkTo(garden, "invitation"), {
    method: "POST",
    body: typed({ ...PLACE, ...over }).toString(),
    headers: { "content-type": "application/x-www-form-urlencoded" },
  });
  return { status: answer.status, html: await answer.text() };
};

const carried = (html: string, name: string) =>
  (new RegExp(`name="${name}" value="([^"]*)"`).exec(html)?.[1] ?? "").replaceAll("&quot;", '"');

describe("a form that goes by its place", () => {
  test("asks once, to a tenth of a degree, shows what was found, and goes on with it", async () => {
    const found = await send("placed", { at: "frost", step: "next", where: "60.12345, 10.54321" });
    expect(found.html).toContain("When does it freeze?");
    expect(found.html).toMatch(
      /role="status"[\s\S]*Last frost: early 20 Apr, usual 6 May, late 21 May/,
    );
    expect(asked).toHaveLength(1);
    expect(asked[0]).toContain("60.1|10.5");
    expect(asked[0]).not.toContain("60.12");
    const years = carried(found.html, "years");
    expect(years).toBe(YEARS);
    const next = await send("placed", { at: "frost", step: "next", years });
    expect(next.html).toContain("Who gardens?");
    expect(asked).toHaveLength(1);
    const saved = await send("placed", { at: "look", step: "next", years });
    expect(saved.html).toContain("is ready");
    const plan = await inStore("placed", (sql) => savedPlan(sql, 2027));
    expect(plan?.text).toContain("weather: from Open-Meteo");
    expect(Object.values(plan?.beside ?? {})).toEqual([YEARS]);
    expect(asked).toHaveLength(1);
  });

  test("asks nobody where another way was chosen, or the place is not said", async () => {
    await send("unasked", {
      at: "frost",
      step: "next",
      way: "dates",
      lastFrost: "6 May",
      firstFrost: "2 Oct",
    });
    const nowhere = await send("unasked", { at: "frost", step: "next", where: "" });
    expect(asked).toEqual([]);
    expect(nowhere.status).toBe(422);
    expect(nowhere.html).toMatch(/<a href="#where">/);
  });

  test("says so where the service is silent, and goes by the two temperatures", async () => {
    ports.askYears = () => async () => ({ file: null, fault: "not reached" });
    const { status, html } = await send("silent", { at: "frost", step: "next" });
    expect(status).toBe(200);
    expect(html).toMatch(
      /role="alert"[^>]*>Open-Meteo could not be asked for the years there: not reached\./,
    );
    expect(html).toMatch(/value="numbers" checked/);
    const numbers = { way: "numbers", hottest: "22", coldest: "-7" };
    expect((await send("silent", { at: "frost", step: "next", ...numbers })).html).toContain(
      "Who gardens?",
    );
  });

  test("waits no longer than a few seconds for an answer, which is there the next time", async () => {
    let answer: () => void = () => undefined;
    ports.askYears = () => () =>
      new Promise((done) => {
        answer = () => done({ file: YEARS, fault: null });
      });
    const { html } = await send("late", { at: "frost", step: "next" });
    expect(html).toContain("no answer so far");
    answer();
  }, 20_000);

  test("another place is asked for anew", async () => {
    await send("moved", { at: "frost", step: "next", years: YEARS, where: "47, 11" });
    expect(asked).toHaveLength(1);
  });
});

describe("a town", () => {
  const town = {
    at: "frost",
    step: "next",
    way: "dates",
    lastFrost: "6 May",
    firstFrost: "2 Oct",
    where: "",
  };

  test("is looked up without asking anybody, and the one that is chosen is where the garden lies", async () => {
    const { status, html } = await send("town", { ...town, town: "Helena" });
    expect(status).toBe(200);
    expect(html).toMatch(
      /<input type="radio" name="where" value="46\.6, -112\.0" checked[^>]*\/> Helena, MT, United States/,
    );
    expect(html).not.toContain('<input id="where"');
    expect(asked).toEqual([]);
    const next = await send("town", { ...town, town: "Helena", where: "46.6, -112.0" });
    expect(next.html).toContain("Who gardens?");
  });

  test("that is none is told at its field, and nothing else is asked for it", async () => {
    const { status, html } = await send("town", { ...town, town: "Nowhere Much" });
    expect(status).toBe(422);
    expect(html).toMatch(/<a href="#town">No town of 20,000 people/);
  });
});
