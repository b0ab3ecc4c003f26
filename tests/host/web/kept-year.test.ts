import { describe, expect, test, vi } from "vitest";
import type { Year } from "../../../src/app/build.ts";
import { engine } from "../../../src/host/edge/core.ts";
import type { Engine } from "../../../src/host/edge/engine.ts";
import { buildRecord } from "../../../src/host/store/build.ts";
import { addLine } from "../../../src/host/store/diary.ts";
import { keptPlanned } from "../../../src/host/web/kept-year.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { ask, inStore, linkTo, publish, shellWith } from "./garden.ts";

/** 25 May 2027, noon in the garden's zone. */
const NOW = Date.UTC(2027, 4, 25, 18);
const VIEWS = ["frost.svg", "soil.svg", "season.svg", "frost?low=29", "room?bed=root-bed"];
const PAPERS = ["sheet/2027-05", "sheet/2027-06", "sheet/2027-12", "year", "year/2027"];

/** A shell whose engine counts its builds. */
function counting(over: Partial<Engine> = {}) {
  const build = vi.fn(engine.build);
  return { build, shell: shellWith({ engine: { ...engine, build, ...over }, now: () => NOW }) };
}

/** Pages by their path, each answered with 200. */
async function pagesOf(
  shell: Parameters<typeof ask>[0],
  garden: string,
  paths: readonly string[] = [...VIEWS, ...PAPERS],
): Promise<Readonly<Record<string, string>>> {
  const link = await linkTo(garden, "helper", "imre");
  const pages: Record<string, string> = {};
  for (const path of paths) {
    const answer = await ask(shell, `${link}${path}`);
    expect([path, answer.status]).toEqual([path, 200]);
    pages[path] = (await answer.text()).replaceAll(link, "/link/");
  }
  return pages;
}

/** A sheet without the bar that its screen has. */
const sheetOf = (html = "") => html.replace(/<style>[^<]*<\/style><nav .*<\/nav>/s, "");

describe("what looks at the year", () => {
  test("builds nothing, and shows what a build would show", async () => {
    const { build, shell } = counting();
    await publish(shell, "kept", QUARRY);
    build.mockClear();
    const kept = await pagesOf(shell, "kept");
    expect(build).not.toHaveBeenCalled();
    const input = {
      plans: [],
      id: "kept",
      instant: NOW,
      published: {},
      baseline: null,
      weather: null,
    };
    const plan = engine.readPlan({ text: QUARRY, garden: "kept", file: "plans/kept/2027.yaml" });
    const { year, events } = engine.build({ ...input, plans: plan ? [plan] : [] });
    const today = isoDay("2027-05-25");
    for (const subject of ["frost", "soil", "season"] as const)
      expect(kept[`${subject}.svg`]).toBe(engine.draw(year, today, subject));
    for (const month of [5, 6, 12].map((m) => isoDay(`2027-${String(m).padStart(2, "0")}-01`))) {
      const asked = { month, person: "imre", today };
      const name = `sheet/${["2027-05", "2027-06", "2027-12"].find((m) => isoDay(`${m}-01`) === month)}`;
      expect(sheetOf(kept[name])).toBe(engine.month({ ...year, events }, asked));
    }
    expect(sheetOf(kept["year/2027"])).toBe(
      engine.review(year, { year: 2027, today, planned: (_, plan) => plan() }),
    );
    const none = await ask(shell, `${await linkTo("kept", "helper", "imre")}year/1999`);
    expect(none.status).toBe(404);
  });

  test("shows the last build's year till the next has come, though more was said since", async () => {
    const { build, shell } = counting();
    await publish(shell, "said", QUARRY);
    const before = await pagesOf(shell, "said", VIEWS);
    await inStore("said", (sql) => {
      const line = { text: "carrots up", task: null, person: null, saidAt: NOW };
      addLine(sql, { day: isoDay("2027-05-20"), ...line });
    });
    build.mockClear();
    const [view = ""] = VIEWS;
    expect(await pagesOf(shell, "said", [view])).toEqual({ [view]: before[view] });
    expect(build).toHaveBeenCalledTimes(1);
    expect((await inStore("said", buildRecord)).line).toBe(1);
  });

  test("is built first where another plan or other code is in force", async () => {
    const { build, shell } = counting();
    await publish(shell, "other", QUARRY);
    build.mockClear();
    await pagesOf({ ...shell, code: "code 2" }, "other");
    expect(build).toHaveBeenCalledTimes(1);
  });
});

test("what was planned is built once for these plans, and again where it can't be read", async () => {
  const { shell } = counting();
  await publish(shell, "planned", QUARRY);
  const build = vi.fn(() => [{ year: 2027 }] as unknown as Year["seasons"]);
  const asked = () => inStore("planned", (sql) => keptPlanned({ sql })(2027, build));
  expect([await asked(), await asked()]).toEqual([[{ year: 2027 }], [{ year: 2027 }]]);
  expect(build).toHaveBeenCalledTimes(1);
  const cut = "UPDATE pieces SET bytes = substr(bytes, 1, 20) WHERE name = 'planned/2027'";
  await inStore("planned", (sql) => sql.rows(cut));
  await asked();
  await publish(shell, "planned", `${QUARRY}diary:\n  - 20 May: carrots up\n`, 1);
  await asked();
  expect(build).toHaveBeenCalledTimes(3);
});

describe("a year of which a piece", () => {
  const damages = [
    ["is gone", "DELETE FROM pieces WHERE name GLOB 'year/*'"],
    ["was cut short", "UPDATE pieces SET bytes = substr(bytes, 1, 40) WHERE name GLOB 'year/*'"],
    [
      "is a reading cut short",
      "UPDATE pieces SET bytes = substr(bytes, 1, 40) WHERE name GLOB 'reading/*'",
    ],
  ] as const;

  test.each(damages)("%s is built once and then stored whole again", async (how, damage) => {
    const garden = `damaged-${how.replaceAll(" ", "-")}`;
    const { build, shell } = counting();
    await publish(shell, garden, QUARRY);
    const before = await pagesOf(shell, garden);
    await inStore(garden, (sql) => sql.rows(damage));
    build.mockClear();
    expect(await pagesOf(shell, garden)).toEqual(before);
    expect(build).toHaveBeenCalledTimes(1);
  });

  test("can't be read nor built is not shown", async () => {
    vi.spyOn(console, "error").mockReturnValue();
    const { shell } = counting();
    await publish(shell, "stuck", QUARRY);
    await inStore("stuck", (sql) => sql.rows("DELETE FROM pieces WHERE name GLOB 'year/*'"));
    const stuck = counting({
      build: () => {
        throw new Error("stuck");
      },
    });
    const link = await linkTo("stuck", "helper", "imre");
    expect((await ask(stuck.shell, `${link}season.svg`)).status).toBe(503);
    expect((await ask(stuck.shell, link)).status).toBe(200);
  });
});
