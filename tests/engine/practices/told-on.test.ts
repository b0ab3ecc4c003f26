import { describe, expect, test } from "vitest";
import { type Day, isoOf } from "../../../src/base/days/day.ts";
import { daysNamed } from "../../../src/engine/schedule/published-state.ts";
import type { ScheduledTask } from "../../../src/engine/schedule/scheduled-task.ts";
import { ALONE, isoDay, QUARRY, tellOf } from "../../gardens.ts";

const PEAS = `${ALONE}  Pea bed:
    is: 8 x 4 ft
    crops:
      - pea: 1 row
      - radish: 10 ft, every 14 days, 4 times
`;

const toldOf = (text: string, id: string): ScheduledTask => {
  const found = tellOf(text, { on: "2027-01-02" }).scheduled.find(({ task }) => task.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};
const upDays = ({ task }: ScheduledTask): readonly Day[] =>
  daysNamed(task.say.filter(({ part }) => part === "how"));
const sow = (diary: string) =>
  toldOf(diary === "" ? PEAS : `${PEAS}diary:\n  - ${diary}\n`, "2027/pea/sow-outdoors/1");

describe("a sowing on another day than it was due", () => {
  const [up = 0, look = 0, again = 0] = upDays(sow(""));

  test("is up, looked for and sown again later where it was sown later", () => {
    const late = sow("28 May: sowed the peas");
    expect(isoOf(late.day)).toBe("2027-05-28");
    const days = upDays(late);
    expect(days).toHaveLength(3);
    expect(days[0]).toBeGreaterThan(isoDay("2027-05-31"));
    expect(days[0]).toBeGreaterThan(up);
    expect(days[1]).toBeGreaterThan(look);
    expect(days[2]).toBeGreaterThan(again);
  });

  test("has the dates of the second sowing once it was sown again", () => {
    const twice = upDays(sow("20 Apr: sowed the peas\n  - 28 May: resowed the peas"));
    expect(twice).toEqual(upDays(sow("28 May: sowed the peas")));
  });

  test("has the dates of the day to which it is put off after it failed", () => {
    const failed = sow("20 Apr: sowed the peas\n  - 25 May: peas failed");
    expect(failed.done).toBeNull();
    expect(upDays(failed)[0]).toBeGreaterThan(failed.day);
  });

  test("counts from the day somebody has hours for it", () => {
    const sundays = QUARRY.replace("Wed 18-19 and Sat 9-12", "Sun 9-12");
    const placed = tellOf(sundays, { on: "2027-01-02" }).scheduled;
    const moved = placed.filter(
      ({ task, day }) => task.practice === "sow outdoors" && day !== task.window.due,
    );
    expect(moved.length).toBeGreaterThan(0);
    for (const each of moved) {
      const alone = toldOf(
        `${ALONE}diary:\n  - ${isoOf(each.day)}: sowed the ${each.task.crop}s\n`,
        each.task.id,
      );
      expect(upDays(each), each.task.id).toEqual(upDays(alone));
    }
  });

  test("is told anew for a later sowing too", () => {
    const id = "2027/radish/repeat/2";
    const [, second] = [toldOf(PEAS, "2027/radish/sow-outdoors/1"), toldOf(PEAS, id)];
    const diary = `  - 3 May: sowed the radishes\n  - 28 May: sowed more radishes\n`;
    const late = toldOf(`${PEAS}diary:\n${diary}`, id);
    expect(second.done).toBeNull();
    expect(isoOf(late.day)).toBe("2027-05-28");
    expect(upDays(late)[0]).toBeGreaterThan(late.day);
  });
});
