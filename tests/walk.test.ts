import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { isoOf } from "../src/base/days/day.ts";
import { cropOf } from "../src/crops/crops.ts";
import { climateOf } from "../src/engine/climate/climate.ts";
import { lastFrostAt } from "../src/engine/climate/frost.ts";
import { type Anchors, anchorKey } from "../src/engine/growth/anchors.ts";
import { bagLifts } from "../src/engine/growth/filling.ts";
import { isReached, type Milestone } from "../src/engine/growth/milestones.ts";
import { ripeMilestone } from "../src/engine/growth/ripe.ts";
import { aheadWarmerK } from "../src/engine/growth/seasons.ts";
import type { SowingContext } from "../src/engine/growth/sowing-context.ts";
import { plantingOutDay } from "../src/engine/growth/starting.ts";
import { upMilestone } from "../src/engine/growth/up.ts";
import { boundsOf, dailyWarmth, packetWarmth, warmthBetween } from "../src/engine/growth/warmth.ts";
import type { Task } from "../src/engine/practices/all.ts";
import { bagStartCm, HILL } from "../src/engine/practices/hill.ts";
import { PLANT } from "../src/engine/practices/plant.ts";
import { householdOf } from "../src/engine/schedule/household.ts";
import { scheduleTasks } from "../src/engine/schedule/schedule-tasks.ts";
import type { ScheduledTask } from "../src/engine/schedule/scheduled-task.ts";
import { uidOf } from "../src/views/calendar/uid.ts";
import { eventsOf } from "../src/views/events/events.ts";
import { tasksIn } from "./engine/practices/told.ts";
import { gardenOf, isoDay, planOf } from "./gardens.ts";
import { CHOICES, dawn, toldAt, write } from "./properties/feeds.ts";

/*
 * One potato planting, from the phrase in the plan to the lines in the calendar. Each step takes what the one
 * before it gave, and every value on the way is written out. Read from top to bottom.
 */

const TEXT = readFileSync(join(import.meta.dirname, "golden", "potato.yaml"), "utf8");
const KEY = "2027/potato-early-red";
const [TASKS] = CHOICES;
if (!TASKS) throw new Error("no feed");

const plan = planOf(TEXT);
const [planting] = plan.plantings;
const [bed] = plan.beds;
const crop = cropOf("potato");
if (!planting || !bed?.bags || !crop?.outdoors) throw new Error("the potato's plan has changed");
const outdoors = crop.outdoors;
const bags = { count: 6, acrossCm: bed.bags.across.si, highCm: bed.bags.high.si };
const climate = climateOf(plan, []);
const household = householdOf(plan.people, plan.away);

const growing: SowingContext = {
  plan,
  planting,
  crop,
  bed,
  sowing: 1,
  climate,
  anchors: new Map(),
  observations: [],
  around: household.around,
  soFar: null,
};

const windowOf = ({ window: { earliest, due, latest } }: Task) =>
  [earliest, due, latest].map(isoOf).join(" ");
const spanOf = (milestone: Milestone) =>
  isReached(milestone)
    ? [milestone.early, milestone.usual, milestone.late].map(isoOf).join(" ")
    : milestone.none;
const placing = (tasks: readonly Task[]): readonly ScheduledTask[] =>
  scheduleTasks(tasks, {
    household,
    publishedState: {},
    weatherAsOf: null,
    done: new Map(),
    baseline: {},
    doneBefore: new Map(),
    load: new Map(),
    days: new Map(),
  });
const dayAndPeople = ({ task, day, people }: ScheduledTask) =>
  `${task.step} ${isoOf(day)} ${people.join()}`;

describe("1. the phrase becomes a planting", () => {
  test("“potato: early red, 18 plants, sprouted first” is eighteen tubers of a variety", () => {
    expect(planting).toMatchObject({
      key: KEY,
      crop: "potato",
      variety: "early red",
      amount: { kind: "plants", count: 18 },
      sproutedFirst: true,
      bed: "bags",
    });
  });

  test("what the phrase leaves out comes from the crop: it starts from tubers", () => {
    expect(planting.start).toBe("tubers");
  });

  test("“6 grow bags, 16 in across, 14 in high” is a bed of bags, in centimetres inside", () => {
    expect(bags).toEqual({ count: 6, acrossCm: 40.64, highCm: 35.56 });
  });
});

describe("2. the climate warms the soil", () => {
  const soil = (day: string) => Math.round(climate.soilC(isoDay(day), bed) * 100) / 100;

  test("the twelve means become a curve, and soil follows the eleven days' air up to the day and the sun", () => {
    expect(climate.rough).toBe(false);
    expect([soil("2027-04-22"), soil("2027-04-23"), soil("2027-04-24")]).toEqual([
      6.84, 7.05, 7.27,
    ]);
  });

  test("a potato wants 45 °F, 7.22 °C, so 24 April is the first warm enough", () => {
    expect(outdoors.soilMinC.value).toBeCloseTo(7.22, 2);
  });
});

describe("3. the day to plant is reckoned, test by test", () => {
  const reckoned = plantingOutDay(growing, outdoors);
  const { lastFrost } = plan.site;

  test("half of all springs have had their last frost by 6 May; potatoes go in two weeks before", () => {
    expect(lastFrost && isoOf(lastFrostAt(lastFrost, plan.risk.seed))).toBe("2027-05-06");
    expect(outdoors.weeksFromLastFrost?.value).toBe(-2);
  });

  test("soil says 24 April, frost 22 April: the later one decides", () => {
    expect(reckoned.tests.map(({ basis: ground, day }) => `${ground} ${isoOf(day)}`)).toEqual([
      "soil 2027-04-24",
      "last frost 2027-04-22",
    ]);
    expect(isoOf(reckoned.day)).toBe("2027-04-24");
    expect(reckoned.basis).toEqual(["soil", "last frost"]);
  });

  test("a warm spring makes it 22 April, where the frost decides again, and a cold one 29 April", () => {
    expect(aheadWarmerK(climate, "warm", reckoned.day)).toBe(1);
    expect(isoOf(reckoned.early)).toBe("2027-04-22");
    expect(isoOf(reckoned.late)).toBe("2027-04-29");
  });

  test("it would be held till 27 May at the latest, three weeks after the frost, and was not", () => {
    expect(reckoned.stop && isoOf(reckoned.stop)).toBe("2027-05-27");
    expect(reckoned.stopped).toBe(false);
  });
});

const [plant] = tasksIn(PLANT, growing);
if (!plant) throw new Error("no task to plant");

describe("4. the practice makes a task of it", () => {
  test("from 24 April, best on 24 April, fine for two weeks", () => {
    expect(plant.id).toBe(`${KEY}/plant/1`);
    expect(windowOf(plant)).toBe("2027-04-24 2027-04-24 2027-05-08");
  });

  test("it wants hands for an hour, and would be missed within the week", () => {
    expect([plant.rhythm, plant.minutes, plant.harm]).toEqual(["session", 60, "this week"]);
  });

  test("its day will start the planting's clock", () => {
    expect(plant.sets).toEqual({ planting: KEY, sowing: 1, act: "start" });
  });
});

const [planted] = placing([plant]);
if (!planted) throw new Error("nothing placed");

describe("5. placing finds its day", () => {
  test("Imre gardens on Saturdays, so it falls on Saturday 24 April, inside the window", () => {
    expect(dayAndPeople(planted)).toBe("1 2027-04-24 imre");
    expect(planted.note).toBeNull();
  });
});

const anchors: Anchors = new Map([
  [
    anchorKey(KEY, 1, "start"),
    { day: planted.day, from: "placed", basis: plant.basis, task: plant.id },
  ],
]);
const started: SowingContext = { ...growing, anchors };

describe("6. the placed day anchors what comes after", () => {
  test("shoots show 14 to 22 days later", () => {
    expect(spanOf(upMilestone(started))).toBe("2027-05-08 2027-05-12 2027-05-16");
  });

  test("tubers want 110 days at 60 °F: so much warmth above 40 °F as those would bring", () => {
    if (!crop.warmth) throw new Error("potatoes go by warmth");
    expect(packetWarmth(110, crop.warmth)).toBeCloseTo((110 * (60 - 40)) / 1.8, 9);
    const daily = dailyWarmth(climate, boundsOf(crop.warmth), 0);
    const [day, before] = ["2027-08-21", "2027-08-20"].map(isoDay);
    if (day === undefined || before === undefined) throw new Error("no days");
    expect(warmthBetween(daily, planted.day, before)).toBeLessThan(packetWarmth(110, crop.warmth));
    expect(warmthBetween(daily, planted.day, day)).toBeGreaterThan(packetWarmth(110, crop.warmth));
  });

  test("100 of them in a warm season, 110 in the usual one, 120 in a cold one", () => {
    expect(spanOf(ripeMilestone(started))).toBe("2027-08-05 2027-08-22 2027-09-15");
  });
});

const hills = tasksIn(HILL, started);

describe("7. hilling fills the bag", () => {
  test("tubers start in eight inches: five of mix, three of cover", () => {
    expect(bagStartCm(started)).toBeCloseTo(8 * 2.54, 10);
  });

  test("up to an inch under the rim that leaves five inches, in lifts of three and two", () => {
    const lifts = bagLifts(bags, 8 * 2.54, 2.54);
    expect(lifts.map(({ inches }) => inches)).toEqual([3, 2]);
    expect(8 + 3 + 2 + 1).toBe(14);
  });

  test("three inches of sixteen across are eleven litres with a tenth for settling, 65 for six", () => {
    const [first] = bagLifts(bags, 8 * 2.54, 2.54);
    expect(first?.litresABag).toBeCloseTo((Math.PI / 4) * 40.64 ** 2 * 7.62 * 1.1 * 0.001, 6);
    expect(first?.litresAll).toBeCloseTo(65.2, 1);
  });

  test("the first is due 28 days after planting, the second two weeks on, five days either way", () => {
    expect(hills.map(windowOf)).toEqual([
      "2027-05-17 2027-05-22 2027-05-27",
      "2027-05-31 2027-06-05 2027-06-10",
    ]);
  });

  test("both hang on the task that planted, and on its basis and their age", () => {
    for (const hill of hills) {
      expect(hill.hangsOn).toEqual([plant.id]);
      expect(hill.basis).toEqual(["soil", "last frost", "age"]);
    }
  });
});

const placed = [planted, ...placing(hills)];

describe("8. placing finds their days", () => {
  test("the twenty-second of May and the fifth of June are Saturdays", () => {
    expect(placing(hills).map(dayAndPeople)).toEqual(["1 2027-05-22 imre", "2 2027-06-05 imre"]);
  });
});

const events = eventsOf(placed, { plan, publishedState: {}, openDays: {} });

describe("9. words make two sets of events", () => {
  const first = (set: string) =>
    events.find((event) => event.set === set && event.tasks[0] === hills[0]?.id);

  test("each task stands all day in the tasks set and in Imre's session of that day", () => {
    expect(events.map(({ set, key }) => `${set} ${key}`)).toEqual([
      `tasks ${KEY}/plant/1`,
      `tasks ${KEY}/hill/1`,
      `tasks ${KEY}/hill/2`,
      "sessions imre/2027-04-24",
      "sessions imre/2027-05-22",
      "sessions imre/2027-06-05",
    ]);
  });

  test("the task says how, when it is right, why now, till when, and a caution", () => {
    expect(first("tasks")).toMatchObject({
      title: "Hill potatoes, Bags",
      day: isoDay("2027-05-22"),
      when: { kind: "all day" },
    });
    expect(first("tasks")?.text.split("\n")).toEqual([
      "Add 3 in of mix round the shoots: about 3 gal each, 17 gal for all 6. Leave 2 to 4 in of tops in the light. Before a frost night, bury the shoots whole.",
      "Right when: shoots stand 6 to 8 in clear of the soil.",
      "Planted 24 Apr.",
      "Fine till Thursday 27 May.",
      "Wet mix is heavy: lift with two.",
    ]);
  });

  test("the session begins at nine on Imre's clock, fifteen hundred in UTC, and lasts its minutes", () => {
    const from = Date.UTC(2027, 4, 22, 15);
    expect(first("sessions")?.when).toEqual({ kind: "timed", from, to: from + 45 * 60_000 });
    expect(first("sessions")?.text).toMatch(/^45 min\. Take: bagged mix, a bucket\.\n/);
  });
});

const now = dawn("2027-01-01");
const written = write(toldAt(gardenOf(TEXT), now), TASKS, now);
const uid = uidOf("quarry-lane", `${KEY}/hill/1`);
const block = written.text
  .split("BEGIN:VEVENT\r\n")
  .find((each) => each.includes(uid))
  ?.replaceAll("\r\n ", "")
  .split("\r\n");

describe("10. the calendar writes it down", () => {
  test("its UID is made of garden, planting, practice and step, and of nothing that moves", () => {
    expect(uid).toBe("c8fe10a4-7e55-8d12-b386-94ece7c2c861");
  });

  test("it is one whole day, told first on 1 January, ringing at six the evening before", () => {
    expect(block).toEqual(
      expect.arrayContaining([
        `UID:${uid}`,
        "SEQUENCE:0",
        "DTSTAMP:20270101T070000Z",
        "DTSTART;VALUE=DATE:20270522",
        "DTEND;VALUE=DATE:20270523",
        "SUMMARY:Hill potatoes\\, Bags",
        "TRANSP:TRANSPARENT",
        "CATEGORIES:hill",
        "LAST-MODIFIED:20270101T070000Z",
        "TRIGGER:-PT6H",
      ]),
    );
  });
});

describe("11. the ledger remembers it", () => {
  const entry = written.ledger.entries[`${KEY}/hill/1`];

  test("with the instant it was told, its day, and its text as it was written", () => {
    expect(entry).toMatchObject({ sequence: 0, stamp: now, when: `day ${isoDay("2027-05-22")}` });
    expect(written.text).toContain(entry?.text);
  });

  test("so that telling it again writes the same bytes and keeps the same ledger", () => {
    const again = write(toldAt(gardenOf(TEXT), now), TASKS, now + 86_400_000, written.ledger);
    expect(again).toEqual(written);
  });
});

describe("and the loop of three passes comes to the same days", () => {
  test("as this walk did step by step", () => {
    const told = toldAt(gardenOf(TEXT), now);
    const walked = new Set(placed.map(({ task }) => task.id));
    const days = told.scheduled.filter(({ task }) => walked.has(task.id)).map(dayAndPeople);
    expect(days.sort()).toEqual(placed.map(dayAndPeople).sort());
  });
});
