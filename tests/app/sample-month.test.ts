import { expect, test } from "vitest";
import { sampleMonth } from "../../src/app/sample-month.ts";
import { planOf } from "../gardens.ts";

const text = (crops: string) =>
  `garden: Lane\nyear: 2027\nmeasures: metric\nplace: { clock: Europe/Oslo, latitude: 60, last frost: about 20 May, first frost: about 20 Sep }\n${crops}`;
const AT = Date.UTC(2026, 11, 1);

test("is the fullest month, each job on its first day there, and how many more there are", () => {
  const plan = planOf(
    text(
      "crops: [carrot: 3 rows, tomato: 6 plants, potato: 12 tubers, leek: 20 plants, onion: 40 sets, pea: 3 m, lettuce: 12 plants, kale: 6 plants]\n",
    ),
  );
  const sample = sampleMonth(plan, AT);
  expect(sample?.name).toMatch(/^(?:May|June) 2027$/);
  expect(sample?.jobs.length).toBeLessThanOrEqual(14);
  const titles = sample?.jobs.map(({ title }) => title) ?? [];
  expect(new Set(titles).size).toBe(titles.length);
  expect(sample?.more).toBeGreaterThan(0);
  for (const { day } of sample?.jobs ?? [])
    expect(day).toMatch(/^(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) \d+ (?:May|June)$/);
});

test("is the same whenever it is asked for, before the season", () => {
  const plan = planOf(text("crops: [carrot: 3 rows]\n"));
  expect(sampleMonth(plan, AT)).toEqual(sampleMonth(plan, Date.UTC(2027, 0, 20)));
});
