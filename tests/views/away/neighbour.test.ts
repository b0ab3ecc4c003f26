import { describe, expect, test } from "vitest";
import { caution, householdOnly, how, sign } from "../../../src/engine/practices/sentence.ts";
import type { ScheduledTask } from "../../../src/engine/schedule/scheduled-task.ts";
import type { AwayNeed } from "../../../src/views/away/away-need.ts";
import { neighbourList } from "../../../src/views/away/neighbour.ts";
import { voiceOf } from "../../../src/views/events/sentences.ts";
import { inDays, placedOf, SATURDAY } from "../../engine/schedule/given.ts";
import { planOf, QUARRY } from "../../gardens.ts";

const PLAN = planOf(QUARRY);
const listed = (
  jobs: readonly ScheduledTask[],
  needs: readonly AwayNeed[],
  known: readonly ScheduledTask[] = [],
) =>
  neighbourList(jobs, needs, {
    plan: PLAN,
    voice: voiceOf(PLAN, "reader"),
    scheduled: new Map(known.map((each) => [each.task.id, each])),
  });

describe("the neighbour's list", () => {
  test("is empty where the garden needs nobody", () => {
    expect(listed([], [])).toEqual({ orders: [], brief: [], cautions: [] });
  });

  test("says where trays stand and when the greenhouse wants air", () => {
    const trays = { kind: "trays", plants: ["tomatoes", "basil"] } as const;
    expect(listed([], [{ ...trays, hardeningFloorC: null }, { kind: "vents" }]).orders).toEqual([
      "Every day: small plants in trays (tomatoes and basil), in the greenhouse. Dry on top? Water them gently.",
      "Greenhouse, a sunny morning: open the door and the vents. Shut both by four in the afternoon.",
    ]);
    expect(listed([], [{ ...trays, hardeningFloorC: 10 }]).orders[0]).toContain(
      "in the shade outdoors",
    );
  });

  test("has a board once, from the first of its days on", () => {
    const board = {
      practice: "board",
      title: { verb: "Board off", object: "beets", where: "bed" },
    } as const;
    const jobs = [SATURDAY, inDays(2)].map((day) => placedOf({ day }, board));
    expect(listed(jobs, []).orders).toEqual([
      "From Saturday 8 May, each evening: Root bed, beets. Lift the board. Anything green under it? Take the board away and keep the soil damp.",
    ]);
  });

  test("has covers in one line for all that is tender, from the first of their days on", () => {
    const frost = (object: string, day: number) =>
      placedOf(
        { day: inDays(day) },
        {
          practice: "first frost",
          step: "warning",
          title: { verb: "Frost from now on:", object, where: null },
        },
      );
    expect(listed([frost("beans", 2), frost("tomatoes", 0)], []).orders).toEqual([
      "From 8 May, is a night near freezing forecast? Before dark lay the covers over: Root bed, beans; Root bed, tomatoes. Off again in the morning.",
    ]);
  });

  test("names what may be eaten by its sign, what grows out first, and cautions apart, each once", () => {
    const first = (id: string, object: string) =>
      placedOf(
        {},
        {
          id,
          title: { verb: "Pick", object, where: "bed" },
          say: [
            how("Pick them."),
            sign("They come away at a lift."),
            caution("Cook them."),
            householdOnly(caution("Oda is away.")),
          ],
        },
      );
    const pick = (task: string, left: "ripens" | "grows out" | "stands") =>
      ({ kind: "pick", task, bed: "root-bed", from: SATURDAY, left }) as const;
    const { orders, cautions } = listed(
      [],
      [pick("a", "ripens"), pick("b", "grows out"), pick("c", "stands"), pick("none", "ripens")],
      [first("a", "tomatoes"), first("b", "beans"), first("c", "lettuce")],
    );
    expect(orders).toEqual([
      "Pick and eat, when:",
      "Root bed, beans: They come away at a lift. Pick every other day, even what you can't use.",
      "Root bed, tomatoes: They come away at a lift.",
      "Root bed, lettuce: They come away at a lift. Take outer leaves, leave the middle.",
    ]);
    expect(cautions).toEqual(["Beans, tomatoes and lettuce: Cook them."]);
  });

  test("leaves a caution as it is that names its crop", () => {
    const say = [how("Pick."), caution("Raw runner beans are poisonous.")];
    const first = placedOf(
      {},
      { id: "a", title: { verb: "Pick", object: "runner beans", where: "bed" }, say },
    );
    const pick = {
      kind: "pick",
      task: "a",
      bed: "root-bed",
      from: SATURDAY,
      left: "ripens",
    } as const;
    expect(listed([], [pick], [first]).cautions).toEqual(["Raw runner beans are poisonous."]);
  });
});
