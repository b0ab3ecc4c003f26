import { expect, test } from "vitest";
import { month } from "../../src/app/month.ts";
import { isoDay } from "../gardens.ts";
import { SPRING, TODAY } from "./reports.ts";

test("a month's sheet is of the month that any of its days names, and of the person asked for", () => {
  const html = month(
    { ...SPRING.year, events: SPRING.events },
    { month: isoDay("2027-06-17"), person: "oda", today: TODAY },
  );
  expect(html).toContain("<title>Quarry Lane, June 2027, Oda</title>");
});
