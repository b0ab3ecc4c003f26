import { expect, test } from "vitest";
import { bedsInFrost, bedsWithRoom } from "../../src/app/beds.ts";
import { frostNight } from "../../src/app/frost.ts";
import { isoDay } from "../gardens.ts";
import { SPRING } from "./reports.ts";

test("the room is told under every bed", () => {
  const drawn = bedsWithRoom(SPRING.year, isoDay("2027-07-01"), "page");
  expect(drawn?.widthPx).toBe(1123);
  const root = drawn?.words.find(({ name }) => name.startsWith("Root bed"));
  expect(root?.text).toMatch(/Free: about .* across now/);
});

test("a cold night is told under the beds with the very lines of the page", () => {
  const day = isoDay("2027-06-15");
  const drawn = bedsInFrost(SPRING.year, day, -2);
  for (const { name, lines } of frostNight(SPRING.year, day, -2).text.sections) {
    const bed = drawn?.words.find((each) => each.name.startsWith(name));
    if (name !== "Trays") for (const line of lines) expect(bed?.text).toContain(line);
  }
});
