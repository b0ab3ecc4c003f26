import { expect, test } from "vitest";
import { plus } from "../../../src/base/index.ts";
import { RAIN_HIGH_PX, rainBars, rainOf, rainText } from "../../../src/views/pictures/rain.ts";
import { sheetOf } from "../../../src/views/pictures/sheet.ts";
import { isoDay } from "../../gardens.ts";

const FIRST = isoDay("2027-05-01");
const days = [0, 1, 2].map((i) => ({ day: plus(FIRST, i) }));
const rain = rainOf(days, {
  rainMm: (day) => (day === FIRST ? null : day === plus(FIRST, 1) ? 0 : 20),
});

test("only days of which the rain is known count, dry ones too", () => {
  expect(rain).toEqual([
    { day: plus(FIRST, 1), mm: 0 },
    { day: plus(FIRST, 2), mm: 20 },
  ]);
  expect([rainText(rain, "metric"), rainText(rain, "us"), rainText([], "us")]).toEqual([
    " 20 mm of rain fell.",
    " 0.8 in of rain fell.",
    "",
  ]);
});

test("the wettest day fills the strip, and a drizzle does not", () => {
  const scale = { from: FIRST, to: plus(FIRST, 9), leftPx: 0, rightPx: 100 };
  const room = { topPx: 50, measures: "metric", sheet: sheetOf("phone") } as const;
  const high = (all: typeof rain) =>
    Number(/v-([\d.]+)h/.exec(rainBars(all, scale, room).join(""))?.[1]);
  expect(high(rain)).toBe(RAIN_HIGH_PX);
  expect(high([{ day: FIRST, mm: 1 }])).toBe(RAIN_HIGH_PX / 10);
  expect(rainBars([{ day: FIRST, mm: 0 }], scale, room)).toEqual([]);
});
