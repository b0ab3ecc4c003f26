import { describe, expect, test } from "vitest";
import { celsius } from "../../src/base/quantities/quantity.ts";
import { QUARRY, tellOf } from "../gardens.ts";

const MORE = `  Long bed:
    is: 24 x 4 ft
    crops:
      - radish: 10 ft, every 10 days
      - pea: 2 rows
      - spinach: 1 row
      - bush bean: 12 ft, every 14 days, 3 times, without thinning
      - cucumber: 4 plants, from seed indoors
      - parsnip: 18 in
diary:
  - 8 May: soil 58 °F in Root bed
  - 12 May: carrots sown
`;

/** The canonical garden with hours, new crops, a soil measured, and a station warmer than the garden. */
const US = `${QUARRY.replace("  greenhouse:", "  colder than the forecast by: 3 °F\n  greenhouse:")}${MORE}`;

const CM = { ft: 30.48, in: 2.54 } as const;
const metres = (value: number, unit: keyof typeof CM) =>
  `${Number(((value * CM[unit]) / 100).toFixed(6))} m`;

/** The same text with every length in metres and every temperature in °C, to the digit. */
function metricOf(text: string): string {
  return text
    .replace("measures: inches and °F", "measures: metric")
    .replace(
      /(\d+) x (\d+) ft/g,
      (_, a, b) => `${metres(+a, "ft").slice(0, -2)} x ${metres(+b, "ft")}`,
    )
    .replace(/(\d+) (ft|in)\b/g, (_, value, unit: "ft" | "in") => metres(+value, unit))
    .replace(/(low|high): \[(.*)\]/g, (_, key, list: string) => {
      const means = list.split(",").map((value) => celsius(Number(value)));
      return `${key}: [${means.join(", ")}]`;
    })
    .replace("by: 3 °F", `by: ${3 / 1.8} °C`)
    .replace(/(\d+) °F/g, (_, value) => `${celsius(Number(value))} °C`);
}

const METRIC = metricOf(US);

describe("one garden in US and in metric measures", () => {
  const told = (text: string) => tellOf(text, { on: "2027-05-27" });
  const days = (text: string) =>
    told(text).scheduled.map(({ task, day, window, people }) => ({
      ...{ id: task.id, day, people, earliest: window.earliest, due: window.due },
      ...{ latest: window.latest, minutes: task.minutes },
    }));

  test("is written without a single US measure", () => {
    expect(METRIC).not.toMatch(/°F| ft\b| in,| in\n|inches/);
    expect(METRIC).toContain("is: 3.6576 x 1.2192 m");
  });

  test("has the same tasks by the same people on the same days", () => {
    const us = days(US);
    expect(us.length).toBeGreaterThan(80);
    expect(days(METRIC)).toEqual(us);
  });

  test("is told in other words", () => {
    const texts = (text: string) =>
      told(text)
        .events.map(({ text }) => text)
        .join("\n");
    expect(texts(METRIC)).not.toEqual(texts(US));
  });
});
