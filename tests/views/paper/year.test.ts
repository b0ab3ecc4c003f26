import { describe, expect, test } from "vitest";
import { QUARRY } from "../../gardens.ts";
import { LIVED, reportOf } from "./paper-year.ts";

describe("a year looked back on", () => {
  const report = reportOf(LIVED, "2027-11-15");

  test("goes bed by bed as one walks, every planting in its bed", () => {
    expect(report.beds.map(({ name }) => name)).toEqual([
      "Bags",
      "Root bed",
      "Salad bed",
      "South bed",
      "Garlic bed",
    ]);
    expect(report.beds.flatMap(({ lines }) => lines.map(({ name }) => name))).toEqual([
      "Potatoes",
      "Carrots",
      "Beets",
      "Lettuce",
      "Tomatoes",
      "Garlic",
    ]);
  });

  test("tells what else was written of a planting, and each remark by its kind", () => {
    const carrots = report.beds[1]?.lines[0];
    expect(carrots?.also).toEqual(["thin 13 June"]);
    expect(report.remarks.map(({ kind }) => kind)).toEqual(["moved", "failed", "left", "plain"]);
    expect(report.packets.map(({ name }) => name)).toEqual(["Tomatoes"]);
  });

  test("in the middle of the season goes on, and knows nothing of what comes", () => {
    const may = reportOf(LIVED, "2027-06-02");
    expect([may.goesOn, may.remarks.length]).toEqual([true, 1]);
    expect(reportOf(LIVED, "2028-03-01").goesOn).toBe(false);
  });

  test("lists what nobody wrote about only where the household wants to be asked", () => {
    const asking = LIVED.replace("people:", "assume: open\npeople:");
    expect(report.unreported).toEqual([]);
    expect(
      reportOf(asking, "2027-11-15").unreported.some((job) =>
        job.startsWith("Thin beets, Root bed ("),
      ),
    ).toBe(true);
    expect(
      reportOf(asking, "2027-11-15").unreported.some((job) => job.startsWith("Sow beets")),
    ).toBe(false);
  });
});

test("a year of which nothing was written is all supposed", () => {
  const stages = reportOf(QUARRY, "2027-11-15").beds.flatMap(({ lines }) =>
    lines.flatMap(({ sowings }) => sowings.map(({ begun }) => begun.known)),
  );
  expect(new Set(stages)).toEqual(new Set(["supposed"]));
});
