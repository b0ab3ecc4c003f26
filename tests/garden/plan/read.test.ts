import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { readPlan } from "../../../src/garden/plan/read.ts";
import { least, PLAN, planOf, read, TEXT, told } from "./canonical.ts";

const root = new URL("../../../plans/", import.meta.url);
const file = (name: string) => readFileSync(new URL(name, root), "utf8");

describe("a year that is not its file's", () => {
  const said = (file: string, text: string) =>
    readPlan(text, { garden: "quarry-lane", file }, PRACTICES).problems.flatMap(
      ({ code, weight, at }) =>
        code === "year-unlike-file" ? [`${weight} ${at.line}:${at.column}`] : [],
    );
  const next = TEXT.replace("year: 2027", "year: 2028");

  it("is doubted at its place, and the plan is used", () => {
    expect(said("plans/lane/2027.yaml", next)).toEqual(["doubt 2:7"]);
    expect(said("2027.yaml", TEXT)).toEqual([]);
    expect(said("2028.yaml", next)).toEqual([]);
    expect(said("plan.yaml", next)).toEqual([]);
  });
});

describe("reading a plan", () => {
  it("gives the whole garden of the canonical text", () => {
    expect(PLAN).toMatchObject({
      garden: "quarry-lane",
      name: "Quarry Lane",
      year: 2027,
      measures: "us",
      assume: "done",
    });
    expect(PLAN.beds.map(({ key }) => key)).toEqual([
      "bags",
      "root-bed",
      "south-bed",
      "garlic-bed",
    ]);
    expect(PLAN.plantings.map(({ key }) => key)).toEqual([
      "2027/potato-early-red",
      "2027/carrot",
      "2027/beet",
      "2027/tomato",
      "2027/lettuce",
      "2027/garlic",
      "2027/second-garlic",
    ]);
    expect(PLAN.diary.map(({ day, text }) => [isoOf(day), text])).toEqual([
      ["2027-05-24", "carrots up"],
      ["2027-05-25", "soil in South bed 58 °F"],
    ]);
  });

  it("is plain JSON, stored and read back without loss", () => {
    expect(JSON.parse(JSON.stringify(PLAN))).toEqual(PLAN);
  });

  it("is the same for the same text", () => {
    expect(planOf(TEXT)).toEqual(PLAN);
    expect(planOf(TEXT.replaceAll("\n", "\r\n"))).toEqual(PLAN);
  });

  it("has no plan exactly when there is a problem; a doubt leaves it", () => {
    expect(read(least("crops:\n  - moonflower"))).toMatchObject({
      problems: [{ weight: "doubt" }],
    });
    expect(read(least("crops:\n  - moonflower")).plan).not.toBeNull();
    expect(read(least("crops:\n  - carrot: singing, loudly")).plan).toBeNull();
  });

  it("reports everything at once, in reading order", () => {
    const text = TEXT.replace("46.6", "146")
      .replace("Oda, 19", "Odo, 19")
      .replace("3 rows", "3 rwos");
    expect(told(text)).toEqual(["out-of-range@6:3", "nobody-called@21:5", "unknown-word@30:17"]);
  });

  it("reports nobody where the key people itself is misspelt", () => {
    expect(told(TEXT.replace("people:", "poeple:"))).toEqual(["unknown-key@17:1"]);
  });

  it("lists what it filled in", () => {
    const { filled } = planOf(least("crops:\n  - carrot"));
    expect(filled.map(({ what }) => what).sort()).toEqual([
      "carrot: from",
      "carrot: how much",
      "first frost",
      "hottest afternoons and coldest nights",
      "last frost",
      "latitude",
      "measures",
      "risk: plants we raised",
      "risk: seed in the ground",
    ]);
    for (const { value, why } of filled) expect(`${value} ${why}`.length).toBeGreaterThan(8);
  });

  it("refuses a file that is empty or has no keys", () => {
    expect(told("")).toEqual(["not-a-plan@1:1"]);
    expect(told("# only a comment\n")).toEqual(["not-a-plan@1:1"]);
    expect(told("- carrot")).toEqual(["not-a-plan@1:1"]);
  });

  it("reports a problem in what an alias stands for once", () => {
    const crops = "crops:\n  - carrot: &p 3 rows, with love\n  - beet: *p";
    expect(told(least(crops))).toEqual(["unknown-word@8:24"]);
  });

  it("keeps chores open where the plan says so", () => {
    expect(planOf(`assume: open\n${least("")}`).assume).toBe("open");
  });
});

describe("our own plans", () => {
  it("have neither a problem nor a doubt", () => {
    for (const name of ["quarry-lane/2027.yaml", "first-steps/2027.yaml"]) {
      const { plan, problems } = readPlan(file(name), { garden: "x", file: name }, PRACTICES);
      expect(problems).toEqual([]);
      expect(plan?.year).toBe(2027);
      expect(file(name)).toMatch(/^# yaml-language-server: \$schema=\.\.\/plan\.schema\.json\n/);
    }
  });

  it("begin with one of ten lines", () => {
    expect(file("first-steps/2027.yaml").trimEnd().split("\n")).toHaveLength(10);
  });
});
