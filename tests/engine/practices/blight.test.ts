import { describe, expect, test } from "vitest";
import { blightWatch } from "../../../src/engine/practices/blight.ts";
import { normalsOf } from "../../gardens.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { planWith } from "./garden.ts";
import { said, titles, windows } from "./told.ts";

const acts = { start: "2027-05-08" };
const PLAN = planWith(["potato: 10 tubers", "beet: 1 row"]);
const watch = (given: Given = {}, text = PLAN) =>
  blightWatch(growingOf(text, "potato", { acts, ...given }));

describe("watching for blight", () => {
  test("begins when nights are mild and leaves have met, once a season", () => {
    const [task, ...more] = watch();
    expect(more).toEqual([]);
    expect(task?.id).toBe("2027/potato/scout/blight");
    expect(titles(watch())).toEqual(["Watch for blight on potatoes [bed]"]);
    expect(windows(watch())).toEqual(["blight 06-29 07-02 07-16"]);
    expect(said(task)).toContain("nights above 50 °F and leaves wet for six hours");
    expect(watch({ sowing: 2 })).toEqual([]);
  });

  test("is none where summers are dry or every night is cold, nor for what blight leaves alone", () => {
    const site = growingOf(PLAN, "potato").plan.site;
    const { lowC, highC } = site.normals ?? { lowC: [], highC: [] };
    const normals = normalsOf(lowC, highC);
    const rain = (mm: number) =>
      watch({ plan: { site: { ...site, normals: { ...normals, rainMm: Array(12).fill(mm) } } } });
    expect([rain(5).length, rain(60).length]).toEqual([0, 1]);
    const cold = normalsOf(
      lowC.map((low) => Math.min(low, 5)),
      highC,
    );
    expect(watch({ plan: { site: { ...site, normals: cold } } })).toEqual([]);
    expect(blightWatch(growingOf(PLAN, "beet", { acts }))).toEqual([]);
  });

  test("says that a beetle is to be reported where it has to be", () => {
    expect(said(watch()[0])).not.toContain("must be reported");
    const dublin = PLAN.replace("America/Denver", "Europe/Dublin");
    expect(said(watch({}, dublin)[0])).toContain("beetle on potatoes must be reported");
  });
});
