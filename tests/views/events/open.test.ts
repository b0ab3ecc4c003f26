import { describe, expect, test } from "vitest";
import { isOpen, openEvent, seasonEvent } from "../../../src/views/events/open.ts";
import { inDays, placedOf, SATURDAY } from "../../engine/schedule/given.ts";
import { planOf, QUARRY } from "../../gardens.ts";

const DONE = planOf(QUARRY);
const OPEN = planOf(QUARRY, { assume: "open" });
const IMRES = placedOf({ people: ["imre"] });
const told = (days: number) => ({ imre: inDays(days) });

describe("work is still open", () => {
  test("once its day is past, till four weeks after its last good day", () => {
    expect(isOpen(IMRES, OPEN, told(1))).toBe(true);
    expect(isOpen(IMRES, OPEN, told(7 + 28))).toBe(true);
    expect(isOpen(IMRES, OPEN, told(7 + 29))).toBe(false);
  });

  test("not yet on its own day", () => {
    expect(isOpen(IMRES, OPEN, told(0))).toBe(false);
  });

  test("only in a household that wants to be asked", () => {
    expect(isOpen(IMRES, DONE, told(1))).toBe(false);
  });

  test("no longer once it is done", () => {
    const done = placedOf({ people: ["imre"], done: { day: SATURDAY, by: null } });
    expect(isOpen(done, OPEN, told(1))).toBe(false);
  });

  test("only where it wants one person's hours", () => {
    expect(isOpen(placedOf({ people: ["imre"] }, { rhythm: "daily" }), OPEN, told(1))).toBe(false);
    expect(isOpen(placedOf({ people: ["imre", "oda"] }), OPEN, told(1))).toBe(false);
    expect(isOpen(placedOf(), OPEN, told(1))).toBe(false);
  });
});

describe("a person's open work", () => {
  const weed = placedOf(
    { people: ["imre"] },
    {
      id: "2027/bed/bags/weed/1",
      practice: "weed",
      bed: "bags",
      title: { verb: "Weed", object: "Bags", where: null },
    },
  );
  const event = openEvent("imre", inDays(8), [weed, IMRES], OPEN);

  test("is one all-day event whose name never changes", () => {
    expect(event).toMatchObject({
      key: "imre/open",
      set: "sessions",
      people: ["imre"],
      when: { kind: "all day", day: inDays(8) },
      busy: false,
    });
  });

  test("names its tasks, beds and practices", () => {
    expect(event.tasks).toEqual(["2027/bed/bags/weed/1", "2027/beet/thin/1"]);
    expect(event.beds).toEqual(["bags", "root-bed"]);
    expect(event.categories).toEqual(["thin", "weed"]);
  });

  test("says till when each is fine, and never that it is late", () => {
    const early = openEvent("imre", inDays(2), [IMRES], OPEN);
    expect(early.text).toBe("Still open:\nThin beets, Root bed. Fine till Saturday 15 May.");
    expect(event.text).toBe("Still open:\nWeed Bags.\nThin beets, Root bed.");
  });

  test("has a title as any other", () => {
    expect(event.title).toBe("Still open: weed Bags; thin beets");
  });

  test("counts what it has no room for", () => {
    const many = Array.from({ length: 60 }, () => IMRES);
    const { text } = openEvent("imre", inDays(2), many, OPEN);
    expect(text.length).toBeLessThanOrEqual(900);
    expect(text).toMatch(/\nAnd \d+ more\.$/);
  });
});

describe("the season's own line", () => {
  test("stands on the first day shown, for everybody, in both sets", () => {
    expect(seasonEvent(DONE, SATURDAY)).toMatchObject({
      key: "2027/garden/season",
      set: "both",
      kind: "season",
      tasks: [],
      people: [],
      when: { kind: "all day", day: SATURDAY },
    });
  });

  test("says that nothing is due", () => {
    expect(seasonEvent(DONE, SATURDAY).title).toMatch(/^Nothing due until/);
  });
});
