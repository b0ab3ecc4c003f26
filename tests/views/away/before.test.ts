import { describe, expect, test } from "vitest";
import { caution } from "../../../src/engine/practices/sentence.ts";
import type { ScheduledTask } from "../../../src/engine/schedule/scheduled-task.ts";
import type { AwayNeed } from "../../../src/views/away/away-need.ts";
import { type AwayContext, beforeLines, minutesTitle } from "../../../src/views/away/before.ts";
import { buildAwayLists } from "../../../src/views/away/lists.ts";
import { inDays, placedOf, SATURDAY } from "../../engine/schedule/given.ts";
import { planOf, QUARRY } from "../../gardens.ts";

const SPAN = { from: inDays(3), to: inDays(9) };
const LEAVE = { ...SPAN, away: ["imre", "oda"], home: [], alone: [SPAN] };

type Given = {
  readonly before?: readonly ScheduledTask[];
  readonly neighbour?: readonly ScheduledTask[];
  readonly needs?: readonly AwayNeed[];
  readonly leave?: AwayContext["report"]["leave"];
};

function lines({ before = [], neighbour = [], needs = [], leave = LEAVE }: Given) {
  const jobs = buildAwayLists((list) =>
    list === "before" ? before : list === "neighbour" ? neighbour : [],
  );
  const known = [...before, ...neighbour, PICK];
  return beforeLines({
    report: { leave, begun: false, jobs: buildAwayLists(() => []), needs },
    plan: planOf(QUARRY),
    jobs,
    scheduled: new Map(known.map((each) => [each.task.id, each])),
  });
}

const PICK = placedOf(
  {},
  {
    id: "2027/beans/harvest/1",
    bed: "south-bed",
    title: { verb: "Pick", object: "beans", where: "bed" },
  },
);
const bearing = { kind: "pick", task: PICK.task.id, bed: "south-bed", from: SATURDAY } as const;

describe("before you go", () => {
  test("jobs have their minutes, their day and their caution", () => {
    const job = placedOf({}, { say: [caution("Mind the roots.")] });
    expect(minutesTitle(job, planOf(QUARRY))).toBe("20 min: Thin beets, Root bed");
    expect(lines({ before: [job] })).toEqual([
      "20 min: Thin beets, Root bed, planned for Saturday 8 May. Mind the roots.",
    ]);
  });

  test("jobs whose own day lies in the absence are told without it", () => {
    expect(lines({ before: [placedOf({ day: inDays(4) })] })).toEqual([
      "20 min: Thin beets, Root bed.",
    ]);
  });

  test("one walks from under a roof from bed to bed, and waters last", () => {
    const before = [
      placedOf(
        {},
        { id: "a", bed: null, title: { verb: "Tidy", object: "the shed", where: null } },
      ),
      placedOf({}, { id: "b", practice: "water", bed: null }),
      placedOf({}, { id: "c" }),
    ];
    const trays = { kind: "trays", plants: ["tomatoes"], hardeningFloorC: 10 } as const;
    const needs = [trays, { kind: "vents" }, { ...bearing, left: "grows out" }] as const;
    expect(lines({ before, needs })).toEqual([
      "10 min: Trays of tomatoes: full shade all day, out of the wind, on a wet mat, watered well. Nights below 50 °F to come: leave them inside.",
      "5 min: Greenhouse: vents set to open by themselves, or show the neighbour how.",
      "20 min: Thin beets, Root bed, planned for Saturday 8 May.",
      "10 min: Pick beans, South bed: all that would grow out, small ones too.",
      "20 min: Tidy the shed, planned for Saturday 8 May.",
      "30 min: Water beds and bags deep, the evening before; a finger finds them wet all down.",
    ]);
  });

  test("what is not ready by then, and what may stand, is not picked", () => {
    expect(lines({ needs: [{ ...bearing, left: "ripens" }] })[0]).toContain("ripe or nearly");
    expect(lines({ needs: [{ ...bearing, left: "stands" }] })).toEqual([]);
    expect(lines({ needs: [{ ...bearing, left: "ripens", from: SPAN.from }] })).toEqual([]);
  });

  test("covers lie ready where a frost may come meanwhile", () => {
    const frost = placedOf({}, { practice: "first frost", step: "warning" });
    expect(lines({ neighbour: [frost] })).toEqual([
      "10 min: Covers and pegs, laid ready: Root bed.",
    ]);
  });

  test("who does not leave last leaves the house's own needs to the other", () => {
    const alone = [{ from: inDays(5), to: inDays(9) }];
    expect(lines({ needs: [{ kind: "vents" }], leave: { ...LEAVE, alone } })).toEqual([]);
  });

  test("trays indoors want light and a wet mat", () => {
    expect(lines({ needs: [{ kind: "trays", plants: ["kale"], hardeningFloorC: null }] })).toEqual([
      "10 min: Trays of kale: good light without hard sun, on a wet mat, watered well.",
    ]);
  });
});
