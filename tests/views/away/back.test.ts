import { describe, expect, test } from "vitest";
import type { ScheduledTask } from "../../../src/engine/schedule/scheduled-task.ts";
import type { AwayNeed } from "../../../src/views/away/away-need.ts";
import { backLines } from "../../../src/views/away/back.ts";
import type { AwayContext } from "../../../src/views/away/before.ts";
import { buildAwayLists } from "../../../src/views/away/lists.ts";
import { inDays, placedOf, SATURDAY, windowOf } from "../../engine/schedule/given.ts";
import { planOf, QUARRY } from "../../gardens.ts";

const SPAN = { from: inDays(-9), to: inDays(-2) };
const LEAVE = { ...SPAN, away: ["imre", "oda"], home: [], alone: [SPAN] };
const PICK = placedOf({}, { id: "pick", title: { verb: "Pick", object: "beans", where: "bed" } });

function lines(
  back: readonly ScheduledTask[],
  needs: readonly AwayNeed[],
  leave: AwayContext["report"]["leave"] = LEAVE,
) {
  return backLines({
    report: { leave, begun: true, jobs: buildAwayLists(() => []), needs },
    plan: planOf(QUARRY),
    jobs: buildAwayLists((list) => (list === "back" ? back : [])),
    scheduled: new Map([...back, PICK].map((each) => [each.task.id, each])),
  });
}

const pick = (left: "grows out" | "ripens" | "stands") =>
  ({ kind: "pick", task: "pick", bed: "root-bed", from: SATURDAY, left }) as const;
const up = (board: boolean) =>
  ({
    kind: "up",
    plants: "carrots",
    bed: "root-bed",
    day: inDays(-5),
    late: inDays(2),
    board,
  }) as const;

describe("when you're back", () => {
  test("what is past its best days says so, without a reproach", () => {
    const late = placedOf({ window: windowOf(7, -3, "later") });
    expect(lines([late], [])).toEqual([
      "20 min: Thin beets, Root bed, Saturday 8 May. Best was till 5 May; do it first.",
    ]);
    expect(lines([placedOf()], [])).toEqual(["20 min: Thin beets, Root bed, Saturday 8 May."]);
  });

  test("what is lost tonight comes first, then jobs of the week, then what bears, and small things last", () => {
    const order = lines(
      [placedOf({}, { id: "a", harm: "when you can" }), placedOf({}, { id: "b" })],
      [pick("ripens"), pick("grows out"), up(true)],
    ).map((line) => line.split(/[:,]/)[0]);
    expect(order).toEqual(["Carrots", "20 min", "Pick beans", "20 min", "Pick beans"]);
  });

  test("seed is looked for, under its board where one still lies", () => {
    expect(lines([], [up(true), up(false)])).toEqual([
      "Carrots, Root bed: may be up since about 3 May. Look under the board: any green, off with it. Nothing by 10 May: scratch and look.",
      "Carrots, Root bed: may be up since about 3 May. Nothing by 10 May: scratch and look.",
    ]);
  });

  test("trays go on where they were, those outdoors by the hour", () => {
    const trays = { kind: "trays", plants: ["kale"] } as const;
    expect(lines([], [{ ...trays, hardeningFloorC: null }])).toEqual([
      "Trays of kale: water what is dry.",
    ]);
    expect(lines([], [{ ...trays, hardeningFloorC: 10 }])[0]).toContain("by the hour, as before.");
  });

  test("leaves that may stand, water and air are no news", () => {
    const water = { kind: "water", bed: null, litresAWeek: null, runs: null } as const;
    expect(lines([], [pick("stands"), water, { kind: "vents" }])).toEqual([]);
  });

  test("what the other found on coming home first is not told again", () => {
    const alone = [{ from: SPAN.from, to: inDays(-4) }];
    expect(lines([], [up(true)], { ...LEAVE, alone })).toEqual([]);
  });
});
