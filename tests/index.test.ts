import { expect, test } from "vitest";
import { buildSchedule, feedName, horizonAt, readGarden, writeFeed } from "../src/index.ts";
import { QUARRY } from "./gardens.ts";

test("the core is a library: plans in, a calendar out", () => {
  const { garden, problems } = readGarden([
    { garden: "quarry-lane", file: "2027.yaml", text: QUARRY },
  ]);
  expect(problems.filter(({ weight }) => weight === "problem")).toEqual([]);
  if (garden === null) throw new Error("no garden");
  const instant = Date.UTC(2027, 4, 8, 12);
  const { events } = buildSchedule(garden, horizonAt(garden, instant), {});
  const choice = {
    of: { person: "imre" },
    kind: "sessions",
    bed: null,
    quiet: false,
    reader: false,
  } as const;
  const { text } = writeFeed({
    garden: garden.id,
    name: feedName(garden.plans.toReversed(), choice),
    choice,
    events,
    link: null,
    cause: instant,
    ledger: null,
  });
  expect(text).toMatch(/^BEGIN:VCALENDAR\r\n/);
  expect(text).toContain("Quarry Lane: Imre");
});
