import { expect, test } from "vitest";
import { spellEvents } from "../../../src/views/events/spells.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";

const DAY = isoDay("2027-07-10");
const US = planOf(QUARRY);
const METRIC = { ...US, measures: "metric" as const };

test("a soaking says how much, what not to do, and what to look over", () => {
  const spell = {
    kind: "soaking",
    day: DAY,
    rainMm: 26,
    slugFood: ["lettuce"],
    splitting: ["tomatoes"],
  } as const;
  const [us] = spellEvents([US], [spell]);
  expect(us).toMatchObject({
    key: "2027/garden/soaking/2027-07-10",
    kind: "warning",
    title: "1 in of rain: no watering outdoors",
    when: { kind: "all day", day: DAY },
    categories: ["soaking"],
  });
  expect(us?.text).toContain("Slugs come out of it: look lettuce over after dark.");
  expect(us?.text).toContain("Pick ripe tomatoes first: they split.");
  const [metric] = spellEvents([METRIC], [{ ...spell, slugFood: [], splitting: [] }]);
  expect(metric?.title).toBe("25 mm of rain: no watering outdoors");
  expect(metric?.text).not.toMatch(/Slugs|split/);
});

test("a dry spell says since when and until when, and which rows to keep damp", () => {
  const [event] = spellEvents(
    [US],
    [
      {
        ...{ kind: "dry spell", day: DAY, seeds: ["carrots"] },
        ...{ since: isoDay("2027-06-30"), until: isoDay("2027-07-14") },
      },
    ],
  );
  expect(event?.key).toBe("2027/garden/dry-spell/2027-07-10");
  expect(event?.text).toContain("damp every day until they are up: carrots.");
  expect(event?.text).toMatch(/since 30 Jun.*until 14 Jul/);
});

test("blight weather names what to look over, and defers to the label", () => {
  const [event] = spellEvents(
    [US],
    [{ kind: "blight weather", day: DAY, plants: ["potatoes", "tomatoes"] }],
  );
  expect(event?.title).toBe("Look potatoes and tomatoes over for blight");
  expect(event?.text).toContain("Potatoes and tomatoes: cut leaves");
  expect(event?.text).toContain("the label and local rules");
});
