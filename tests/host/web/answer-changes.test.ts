import { expect, test } from "vitest";
import { buildSchedule, horizonAt } from "../../../src/app/build.ts";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import { startOf } from "../../../src/base/days/instants.ts";
import { readPlan } from "../../../src/garden/plan/read.ts";
import type { StoredLine } from "../../../src/host/store/diary.ts";
import { changesFromAnswer } from "../../../src/host/web/answer-changes.ts";
import { buildScheduleNow, type GardenView } from "../../../src/host/web/garden-request.ts";
import { QUARRY } from "../../gardens.ts";

const CARROTS_OUT = "2027/carrot/sow-outdoors/1";
const { plan } = readPlan(QUARRY, { garden: "quarry-lane", file: "2027.yaml" });
const zone = plan?.site.clock ?? "";

/** The garden as of a day, with answers to its tasks given on days of 2027. */
function telling(
  on: readonly [number, number],
  ...said: readonly (readonly [string, string])[]
): GardenView {
  const lines = said.map(
    ([task, text], at): StoredLine => ({
      ...{ id: at + 1, day: dayOrThrow(2027, ...on), text, task, person: null },
      saidAt: startOf(dayOrThrow(2027, ...on), zone),
    }),
  );
  const stored = { id: "quarry-lane", plans: [{ plan }], lines, standing: {}, usual: null };
  const now = () => startOf(dayOrThrow(2027, ...on), zone) + 3_600_000;
  return {
    context: { core: { tell: buildSchedule, horizonAt }, now },
    stored,
  } as unknown as GardenView;
}

const moved = (at: GardenView, task: string) =>
  changesFromAnswer(at, [task], buildScheduleNow(at).scheduled);

test("an answer that moves later days tells which, and from when", () => {
  const late = telling([6, 1], [CARROTS_OUT, "done"]);
  const after = moved(late, CARROTS_OUT);
  expect(after?.length).toBeGreaterThan(1);
  expect(after?.join("\n")).toMatch(/^Thin carrots.*later\)$/m);
  expect(after?.join("\n")).not.toMatch(/^Sow carrots/m);
});

test("one that moves nothing says so, and where nobody answered nothing is said", () => {
  const weeded = telling([6, 5], ["2027/beet/thin/1", "done"]);
  expect(moved(weeded, "2027/beet/thin/1")).toEqual([]);
  expect(moved(weeded, "2027/carrot/thin/1")).toBeNull();
});

test("it is told till the next day's evening, and the newest answer counts", () => {
  const at = telling([6, 1], [CARROTS_OUT, "done"]);
  const later = { ...at, context: { ...at.context, now: () => at.context.now() + 40 * 3_600_000 } };
  expect(moved(later, CARROTS_OUT)).toBeNull();
  const undone = telling([6, 1], [CARROTS_OUT, "done"], [CARROTS_OUT, "undo: done"]);
  expect(moved(undone, CARROTS_OUT)?.join("\n")).toMatch(/sooner\)/);
});
