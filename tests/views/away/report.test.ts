import { describe, expect, test } from "vitest";
import { isIn } from "../../../src/views/away/leave.ts";
import { awayReports } from "../../../src/views/away/report.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { once } from "../../once.ts";
import { type Away, awayOf, LUSH, unnamed, withAway } from "./given.ts";

/** Absences of one, of all, of a day, overlapping and long, over the year. */
const LINES = [
  ["Oda, 19 to 23 Jun", "Imre, 21 to 27 Jun"],
  ["everybody, 24 Apr to 2 May", "everybody, 26 to 30 May"],
  ["everybody, 12 Jul", "Imre, 14 to 30 Jul"],
  ["Oda, 1 Jun to 31 Jul", "everybody, 10 to 24 Aug"],
  ["everybody, 4 to 22 Sep", "everybody, 28 Sep to 3 Oct"],
  ["everybody, 1 May to 31 Aug"],
];

const gardens = once(() =>
  LINES.flatMap((lines) =>
    [QUARRY, LUSH, unnamed(LUSH)].flatMap((text) => {
      const named = text.includes("people:");
      const theirs = lines.filter((line) => named || line.startsWith("everybody"));
      return theirs.length > 0 ? [awayOf(withAway(text, ...theirs))] : [];
    }),
  ),
);

const LISTS = ["before", "home", "neighbour", "waits", "back"] as const;
const listsWith = ({ reports }: Away, number: number, id: string) =>
  LISTS.filter((list) => reports[number]?.jobs[list].includes(id));

describe("a report", () => {
  test("has every job the feed places in the absence in exactly one list", () => {
    const found = gardens().flatMap((away) =>
      away.reports.flatMap(({ leave }, i) =>
        away.scheduled
          .filter(({ day }) => isIn(day, leave))
          .map(({ task }) => listsWith(away, i, task.id).length),
      ),
    );
    expect(found.length).toBeGreaterThan(250);
    expect(new Set(found)).toEqual(new Set([1]));
  });

  test("has no job twice, and none that the feed does not have", () => {
    for (const { reports, scheduled } of gardens())
      for (const { jobs } of reports) {
        const ids = LISTS.flatMap((list) => jobs[list]);
        expect(new Set(ids).size).toBe(ids.length);
        expect(ids.filter((id) => !scheduled.some(({ task }) => task.id === id))).toEqual([]);
      }
  });

  test("has jobs of those at home only for those who are there", () => {
    for (const { reports, scheduled } of gardens())
      for (const { leave, jobs } of reports)
        for (const id of jobs.home) {
          const people = scheduled.find(({ task }) => task.id === id)?.people ?? [];
          expect(
            people.filter((key) => !leave.home.includes(key)),
            id,
          ).toEqual([]);
        }
  });

  test("is plain: written as JSON and read back it is the same", () => {
    for (const { reports } of gardens())
      expect(JSON.parse(JSON.stringify(reports))).toEqual(reports);
  });

  test("does not hang on the order of what was scheduled", () => {
    const { plan, year, scheduled, reports } = awayOf(withAway(LUSH, "everybody, 4 to 22 Sep"));
    const turned = { ...year, scheduled: [...scheduled].reverse() };
    const asked = { person: null, today: isoDay("2027-01-01") };
    expect(awayReports(plan, turned, asked)).toEqual(reports);
  });
});

describe("what a garden needs", () => {
  const kinds = (text: string, ...lines: readonly string[]) =>
    (awayOf(withAway(text, ...lines)).reports[0]?.needs ?? []).map(({ kind }) => kind);

  test("is nothing of a neighbour while one is at home", () => {
    expect(kinds(LUSH, "Oda, 10 to 24 Aug")).toEqual([]);
  });

  test("is water in a summer without anybody, bags after two days already", () => {
    expect(kinds(LUSH, "everybody, 10 to 20 Jul")).toContain("water");
    const { reports } = awayOf(withAway(LUSH, "everybody, 16 to 17 Jul"));
    const water = reports[0]?.needs.filter((need) => need.kind === "water");
    expect(water?.map(({ bed }) => bed)).toEqual(["bags"]);
    expect(kinds(LUSH, "everybody, 16 Jul")).not.toContain("water");
  });

  test("is water alone where the one at home leaves watering out", () => {
    const dry = LUSH.replace(
      "Oda: { gardens: Sun 10-12,",
      "Oda: { leave out: water, gardens: Sun 10-12,",
    );
    const away = awayOf(withAway(dry, "Imre, 10 to 30 Jul"));
    expect(away.reports[0]?.leave.alone).toEqual([]);
    expect(away.reports[0]?.jobs.neighbour.length).toBeGreaterThan(1);
    expect(new Set(away.reports[0]?.needs.map(({ kind }) => kind))).toEqual(new Set(["water"]));
  });

  test("is nothing in winter", () => {
    expect(kinds(LUSH, "everybody, 1 to 20 Dec")).toEqual([]);
  });
});

describe("reports asked for one", () => {
  const text = withAway(LUSH, "Oda, 19 to 23 Jun", "Imre, 3 to 9 Jul", "everybody, 1 to 7 Aug");

  test("are of their own absences and of everybody's", () => {
    const away = (person: string) =>
      awayOf(text, { person }).reports.map(({ leave }) => leave.away.join());
    expect(away("oda")).toEqual(["oda", "imre,oda"]);
    expect(away("imre")).toEqual(["imre", "imre,oda"]);
  });

  test("have before and after only what is theirs or everybody's", () => {
    const { reports, scheduled } = awayOf(text, { person: "oda" });
    const [, all] = reports;
    const ids = [
      ...(all?.jobs.before ?? []),
      ...(all?.jobs.waits ?? []),
      ...(all?.jobs.back ?? []),
    ];
    const people = ids.map((id) => scheduled.find(({ task }) => task.id === id)?.people ?? []);
    expect(people.filter((theirs) => theirs.length > 0 && !theirs.includes("oda"))).toEqual([]);
    expect(awayOf(text).reports[2]?.jobs.before.length).toBeGreaterThan(
      all?.jobs.before.length ?? 0,
    );
  });

  test("know whether they have gone, and leave out what is over", () => {
    expect(awayOf(text, { on: "2027-08-03" }).reports.map(({ begun }) => begun)).toEqual([true]);
    expect(awayOf(text, { on: "2027-08-08" }).reports).toEqual([]);
  });
});
