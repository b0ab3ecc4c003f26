import { describe, expect, test } from "vitest";
import { frostTonight } from "../../../../src/engine/beds/frost-tonight.ts";
import { freeInBeds } from "../../../../src/engine/beds/room.ts";
import { frostNotes, roomNotes } from "../../../../src/views/pictures/from-above/notes.ts";
import { isoDay, QUARRY } from "../../../gardens.ts";
import { sketchOf } from "../drawn.ts";

const { year } = sketchOf(QUARRY, "phone", "2027-06-20");

describe("a cold night on the beds", () => {
  const notes = frostNotes(frostTonight(year, isoDay("2027-06-20"), -1));
  const note = (bed: string) => notes.beds.find((each) => each.bed === bed);

  test("says of each bed what the page says, and marks what is to be covered", () => {
    expect(notes.alone).toBe(true);
    expect(note("south-bed")?.lines.join(" ")).toContain("tomatoes");
    expect(note("south-bed")?.marks.map(({ planting }) => planting)).toEqual(["2027/tomato"]);
  });

  test("marks nothing that is left alone", () => {
    expect(note("root-bed")?.lines.join(" ")).toMatch(/^Leave /);
    expect(note("root-bed")?.marks).toEqual([]);
  });
});

test("the room says of each bed what is free and from when, and keeps that much to be seen", () => {
  const notes = roomNotes(freeInBeds(year, isoDay("2027-06-20")), "us");
  const root = notes.beds.find(({ bed }) => bed === "root-bed");
  expect(root?.lines[0]).toMatch(/^Free: about .* across now, all of it about /);
  expect(root?.freeCm).toBeGreaterThan(10);
  const garlic = notes.beds.find(({ bed }) => bed === "garlic-bed");
  expect(garlic?.lines).toEqual([
    expect.stringMatching(/^From \d+ \w+ it is wanted for garlic\.$/),
  ]);
});
