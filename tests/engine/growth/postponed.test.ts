import { describe, expect, test } from "vitest";
import { isReached, seenMilestone } from "../../../src/engine/growth/milestones.ts";
import { LOOK_AGAIN_DAYS, postponed } from "../../../src/engine/growth/postponed.ts";
import { ripeMilestone } from "../../../src/engine/growth/ripe.ts";
import { upMilestone } from "../../../src/engine/growth/up.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { daysOf, groundsOf, growingOf } from "./growing.ts";

const told = (line: string, name = "carrot") =>
  growingOf(`${QUARRY}diary:\n  - ${line}\n`, name, { acts: { start: "2027-05-03" } });

describe("what was looked for in vain", () => {
  const plain = upMilestone(growingOf(QUARRY, "carrot", { acts: { start: "2027-05-03" } }));

  test("is likely three days on, and never before the day after", () => {
    expect(daysOf(upMilestone(told("30 May: carrots not up yet")))).toBe("05-31 06-02 06-02");
    expect(groundsOf(upMilestone(told("30 May: carrots not up yet")))).toContain("seen");
    expect(LOOK_AGAIN_DAYS).toBe(3);
  });

  test("is the green while that can still come, and the crop when that is near", () => {
    expect(daysOf(upMilestone(told("30 May: no carrots yet")))).toBe("05-31 06-02 06-02");
    expect(daysOf(upMilestone(told("20 July: no carrots yet")))).toBe(daysOf(plain));
    const ripe = (line: string) => daysOf(ripeMilestone(told(line)));
    const usual = daysOf(
      ripeMilestone(growingOf(QUARRY, "carrot", { acts: { start: "2027-05-03" } })),
    );
    expect(ripe("30 May: no carrots yet")).toBe(ripe("30 May: carrots not up yet"));
    expect(ripe("15 September: no carrots yet")).not.toBe(usual);
  });

  test("moves nothing where it was not to be up yet", () => {
    const early = upMilestone(told("10 May: carrots not up yet"));
    expect(isReached(early) && isReached(plain) && early.usual - plain.usual).toBe(0);
  });

  test("moves only its own stage and sowing, and nothing that was seen", () => {
    const ripe = told("30 May: carrots not ripe yet");
    expect(daysOf(upMilestone(ripe))).toBe(daysOf(plain));
    const seen = seenMilestone(isoDay("2027-05-20"));
    expect(postponed(told("30 May: carrots not up yet"), "up", seen)).toBe(seen);
    expect(daysOf(upMilestone({ ...told("30 May: carrots not up yet"), sowing: 2 }))).toBe(
      "it is not in yet",
    );
  });
});
