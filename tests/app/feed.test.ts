import { describe, expect, test } from "vitest";
import { type FeedChoice, feedName, writeFeed } from "../../src/app/feed.ts";
import { planOf, QUARRY, tellOf } from "../gardens.ts";

const HOUSEHOLD: FeedChoice = {
  of: "household",
  kind: "sessions",
  bed: null,
  quiet: false,
  reader: false,
};

describe("a feed's name", () => {
  const nameOf = (choice: Partial<FeedChoice>) =>
    feedName([planOf(QUARRY)], { ...HOUSEHOLD, ...choice });

  test("is the garden's, and behind it whose or which bed's it is", () => {
    expect(nameOf({})).toBe("Quarry Lane");
    expect(nameOf({ of: { person: "imre" } })).toBe("Quarry Lane: Imre");
    expect(nameOf({ bed: "root-bed" })).toBe("Quarry Lane: Root bed");
    expect(nameOf({ of: { person: "oda" }, bed: "root-bed" })).toBe("Quarry Lane: Oda, Root bed");
  });

  test("says what it holds beside the sessions where it is nobody's and no bed's", () => {
    expect(nameOf({ kind: "tasks" })).toBe("Quarry Lane: all tasks");
    expect(nameOf({ kind: "warnings" })).toBe("Quarry Lane: warnings");
    expect(nameOf({ kind: "warnings", of: { person: "imre" } })).toBe("Quarry Lane: Imre");
  });

  test("names people and beds as the newest plan that has them does", () => {
    const newer = planOf(
      QUARRY.replaceAll("Root bed", "Roots").replace("year: 2027", "year: 2028"),
    );
    expect(feedName([newer, planOf(QUARRY)], { ...HOUSEHOLD, bed: "roots" })).toBe(
      "Quarry Lane: Roots",
    );
    expect(feedName([newer, planOf(QUARRY)], { ...HOUSEHOLD, bed: "root-bed" })).toBe(
      "Quarry Lane: Root bed",
    );
  });
});

test("a feed is written of the events that its choice shows", () => {
  const { events } = tellOf(QUARRY, { on: "2027-05-08" });
  const write = (choice: FeedChoice) =>
    writeFeed({
      garden: "quarry-lane",
      name: "Quarry Lane",
      events,
      choice,
      link: null,
      clock: "America/Denver",
      cause: 0,
      now: 0,
      ledger: null,
    });
  const [all, warnings] = [write(HOUSEHOLD), write({ ...HOUSEHOLD, kind: "warnings" })];
  expect(Object.keys(all.ledger.entries).length).toBeGreaterThan(
    Object.keys(warnings.ledger.entries).length,
  );
  expect(write({ ...HOUSEHOLD, quiet: true }).text).not.toContain("BEGIN:VALARM");
});
