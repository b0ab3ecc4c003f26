import { expect, test } from "vitest";
import { changesSince } from "../../src/app/changes.ts";
import { gardenOf, isoDay, QUARRY } from "../gardens.ts";

const changes = (diary: string, since: string, today: string) =>
  changesSince(gardenOf(`${QUARRY}diary:\n${diary}`), {
    since: isoDay(since),
    today: isoDay(today),
  });

test("what the diary has said since a day moves what hangs on it, with the line behind it", () => {
  const moved = changes("  - 20 May: beets sown\n", "2027-05-10", "2027-05-25");
  expect(moved.find(({ id }) => id === "2027/beet/sow-outdoors/1")?.text).toContain("done 20 May");
  const thin = moved.find(({ id }) => id === "2027/beet/thin/1");
  expect(thin?.text).toMatch(/^Thin beets, Root bed: .*, was /);
  expect(thin?.why).toEqual(["20 May: beets sown"]);
});

test("what it said before, or says after today, moves nothing", () => {
  expect(changes("  - 20 May: beets sown\n", "2027-05-21", "2027-05-25")).toEqual([]);
  expect(changes("  - 20 May: beets sown\n", "2027-05-10", "2027-05-19")).toEqual([]);
});

test("what it says on that very day, or today, moves too", () => {
  for (const [since, today] of [
    ["2027-05-20", "2027-05-25"],
    ["2027-05-10", "2027-05-20"],
  ] as const) {
    const moved = changes("  - 20 May: beets sown\n", since, today);
    const thin = moved.find(({ id }) => id === "2027/beet/thin/1");
    expect(thin?.why, since).toEqual(["20 May: beets sown"]);
  }
});
