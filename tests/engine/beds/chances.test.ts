import { describe, expect, test } from "vitest";
import { type Day, isoOf, plus } from "../../../src/base/days/day.ts";
import { degreesC } from "../../../src/base/quantities/quantity.ts";
import { chanceOf, startedOn } from "../../../src/engine/beds/chances.ts";
import { isReached } from "../../../src/engine/growth/milestones.ts";
import { ripeMilestone } from "../../../src/engine/growth/ripe.ts";
import { anchorOf } from "../../../src/engine/growth/sowing-context.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { type Given, growingOf } from "../growth/growing.ts";

const PLANTS: Given = { planting: { start: "plants", notBefore: null } };
const on = (crop: string, day: string, given: Given = {}) =>
  chanceOf(growingOf(QUARRY, crop, given), isoDay(day));

describe("what a start comes to", () => {
  test("is safe, a gamble, then too late as the summer goes", () => {
    const verdicts = ["2027-05-20", "2027-07-20", "2027-08-20"].map(
      (day) => on("carrot", day)?.verdict,
    );
    expect(verdicts).toEqual(["safe", "a gamble", "too late"]);
  });

  test("is a gamble at best for plants whose soil stays too cold for them", () => {
    const text = `${QUARRY}crops:\n  - okra: 6 plants, bought\n`;
    const okra = growingOf(text, "okra", PLANTS);
    expect(chanceOf(okra, isoDay("2027-08-01"))?.verdict).not.toBe("safe");
  });

  test("is what growth reckons of it: ready in a usual season when the milestone says", () => {
    const growing = growingOf(QUARRY, "carrot");
    const answer = chanceOf(growing, isoDay("2027-05-20"));
    const ripe = ripeMilestone(startedOn(growing, isoDay("2027-05-20")));
    if (!isReached(ripe)) throw new Error("never ripe");
    expect(answer?.ripe).toEqual({ warm: ripe.early, usual: ripe.usual, cold: ripe.late });
    expect(answer?.end).toEqual({ by: "hard frost", day: isoDay("2027-10-30") });
  });

  test("waits for the day that frost and soil let it begin", () => {
    const answer = on("carrot", "2027-03-01");
    expect(answer).toMatchObject({ verdict: "not yet", inTime: "any", why: null });
    const opens = answer?.opens ?? null;
    expect(opens && isoOf(opens)).toBe("2027-04-24");
    expect(on("carrot", "2027-04-23")?.verdict).toBe("not yet");
    expect(on("carrot", "2027-04-24")?.verdict).toBe("safe");
  });

  test("waits for the other side of what would spoil it, and says what that is", () => {
    const limits = {
      heatC: null,
      coldYoung: null,
      longDays: { value: { hours: 14, aboveC: 10 }, source: { kind: "common practice" } },
    } as const;
    const answer = on("carrot", "2027-05-20", { crop: { limits } });
    expect(answer).toMatchObject({ verdict: "not yet", why: "long days" });
    const opens = answer?.opens as Day;
    const growing = growingOf(QUARRY, "carrot", { crop: { limits } });
    expect(["safe", "a gamble"]).toContain(chanceOf(growing, opens)?.verdict);
    expect(chanceOf(growing, plus(opens, -1))?.verdict).toBe("not yet");
  });

  test("runs the garden's own risk of frost with what frost kills", () => {
    const risky = (raised: number) =>
      on("tomato", "2027-06-14", { ...PLANTS, plan: { risk: { raised, seed: 0.5 } } });

    const order = ["any", "usual", "warm", "none"];
    const at = [0.01, 0.5].map((raised) => order.indexOf(risky(raised)?.inTime ?? "none"));
    expect(at[0]).toBeGreaterThanOrEqual(at[1] ?? 0);
    expect(risky(0.5)?.end).toEqual({ by: "frost", day: isoDay("2027-10-02") });
  });

  test("is none where the facts do not say how it begins so", () => {
    expect(on("carrot", "2027-05-20", PLANTS)).toBeNull();
  });

  test("under glass is ended by frost that gets in or by the short days, and hardy crops by nothing", () => {
    const under = (crop: string, keptAboveC: number | null) => {
      const growing = growingOf(QUARRY, crop, { planting: { start: "plants" } });
      const keptAbove = keptAboveC === null ? null : degreesC(keptAboveC);
      const bed = growing.bed && { ...growing.bed, kind: "greenhouse" as const, keptAbove };
      return { ...growing, bed, climate: growing.climate.at(bed) };
    };
    const end = (...asked: Parameters<typeof under>) =>
      chanceOf(under(...asked), isoDay("2027-05-20"))?.end;
    expect(end("tomato", null)).toEqual({ by: "frost", day: isoDay("2027-10-16") });
    expect(end("tomato", 10)).toEqual({ by: "short days", day: isoDay("2027-11-02") });
    expect(end("lettuce", null)).toBeNull();
  });

  test("where nothing freezes is ended by nothing", () => {
    const glass = growingOf(QUARRY, "carrot");
    const site = { ...glass.plan.site, firstFrost: null, lastFrost: null };
    const free = growingOf(QUARRY, "carrot", { plan: { site } });
    expect(chanceOf(free, isoDay("2027-05-20"))).toMatchObject({ verdict: "safe", end: null });
  });

  test("is no worse a day earlier, unless it is too early then", () => {
    for (const [crop, given] of [
      ["carrot", {}],
      ["beet", {}],
      ["potato", {}],
      ["tomato", PLANTS],
    ] as const) {
      const growing = growingOf(QUARRY, crop, given);
      const rank = ["safe", "a gamble", "too late"];
      for (let day = isoDay("2027-04-01"); day < isoDay("2027-10-01"); day = plus(day, 1)) {
        const [before, now] = [plus(day, -1), day].map(
          (each) => chanceOf(growing, each)?.verdict ?? "",
        );
        if (before === "not yet" || now === "not yet") continue;
        expect(rank.indexOf(before ?? ""), `${crop} ${isoOf(day)}`).toBeLessThanOrEqual(
          rank.indexOf(now ?? ""),
        );
      }
    }
  });
});

test("a start is anchored by the act that begins its clock", () => {
  const day = isoDay("2027-06-01");
  expect(anchorOf(startedOn(growingOf(QUARRY, "carrot"), day), "start")?.day).toBe(day);
  expect(anchorOf(startedOn(growingOf(QUARRY, "tomato", PLANTS), day), "set out")?.day).toBe(day);
});
