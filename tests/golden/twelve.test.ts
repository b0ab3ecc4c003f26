import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { dayFromIso } from "../../src/base/days/day.ts";
import { planOf, tellOf } from "../gardens.ts";

type Row = {
  readonly task: string;
  readonly day: string;
  readonly within: number;
  readonly rule: string;
  readonly source: string;
};

const read = (name: string) => readFileSync(join(import.meta.dirname, name), "utf8");
const PLAN = read("twelve.yaml");
const TABLE = parse(read("twelve-by-hand.yaml"), { schema: "core" }) as Readonly<
  Record<string, readonly Row[]>
>;
const placed = tellOf(PLAN, { on: "2027-01-01" }).scheduled;

describe("twelve plantings, by hand and by the code", () => {
  test("are the same twelve", () => {
    const told = planOf(PLAN).plantings.map(({ key }) => key.replace("2027/", ""));
    expect(Object.keys(TABLE).sort()).toEqual([...told].sort());
    expect(told).toHaveLength(12);
  });

  const rows = Object.entries(TABLE).flatMap(([planting, all]) =>
    all.map((row) => [`2027/${planting}/${row.task}`, row] as const),
  );

  test.each(rows)("%s falls on the day reckoned by hand, or as near as it says", (id, row) => {
    const found = placed.find(({ task }) => task.id === id);
    const by = dayFromIso(row.day) ?? Number.NaN;
    expect(found, id).toBeDefined();
    expect(Math.abs((found?.task.window.due ?? Number.NaN) - by), row.rule).toBeLessThanOrEqual(
      row.within,
    );
  });

  test("say a rule and a source for every day", () => {
    for (const [id, { rule, source }] of rows) {
      expect(rule.length, id).toBeGreaterThan(8);
      expect(source.length, id).toBeGreaterThan(6);
    }
  });
});
