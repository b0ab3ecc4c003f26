import { describe, expect, test } from "vitest";
import { bedName, LONGEST_TITLE, sessionTitle, titleOf } from "../../../src/views/events/titles.ts";
import { placedOf } from "../../engine/schedule/given.ts";
import { planOf, QUARRY } from "../../gardens.ts";

const PLAN = planOf(QUARRY);
const thin = (object: string, bed: string | null = "root-bed", where: string | null = "bed") =>
  placedOf({}, { id: object, bed, title: { verb: "Thin", object, where } });
const job = (verb: string, object: string, where: string | null = "bed") =>
  placedOf({}, { id: `${verb} ${object}`, title: { verb, object, where } });
const LONG = "some parsnips that the neighbour brought us in a box";

describe("a bed's name", () => {
  test("is the plan's for its key", () => {
    expect(bedName(PLAN, "root-bed")).toBe("Root bed");
  });

  test("is empty for none and for one the plan does not have", () => {
    expect(bedName(PLAN, null)).toBe("");
    expect(bedName(PLAN, "moon")).toBe("");
  });
});

describe("a title", () => {
  test("is verb, crop and bed", () => {
    expect(titleOf([thin("beets")], PLAN)).toBe("Thin beets, Root bed");
  });

  test("names every crop of like tasks, and the bed where they share it", () => {
    expect(titleOf([thin("beets"), thin("carrots")], PLAN)).toBe(
      "Thin beets and carrots, Root bed",
    );
  });

  test("names no bed where they stand in several", () => {
    expect(titleOf([thin("beets"), thin("lettuce", "salad-bed")], PLAN)).toBe(
      "Thin beets and lettuce",
    );
  });

  test("names a crop once", () => {
    expect(titleOf([thin("beets"), thin("beets")], PLAN)).toBe("Thin beets, Root bed");
  });

  test("has another place where the task names one", () => {
    expect(titleOf([thin("beets", null, "indoors")], PLAN)).toBe("Thin beets indoors");
  });

  test("has no place where the task names none", () => {
    expect(titleOf([thin("beets", "root-bed", null)], PLAN)).toBe("Thin beets");
  });

  test("counts the crops it has no room for", () => {
    const all = ["beets", "carrots", "leeks", "parsnips", "turnips", "radishes"];
    expect(
      titleOf(
        all.map((object) => thin(object)),
        PLAN,
      ),
    ).toBe("Thin beets, carrots, leeks and 3 more, Root bed");
  });

  test("gives up the bed before the crop", () => {
    const beets = thin("beets of the kind that nobody remembers");
    expect(titleOf([beets], PLAN)).toBe("Thin beets of the kind that nobody remembers");
  });

  test("is cut where even the crop is too long, and always under fifty characters", () => {
    const title = titleOf([thin(LONG)], PLAN);
    expect(title).toMatch(/^Thin some parsnips.*…$/);
    expect([...title].length).toBeLessThanOrEqual(LONGEST_TITLE);
  });

  test("counts characters and not half ones", () => {
    const title = titleOf([thin("\u{1F955}".repeat(60), null)], PLAN);
    expect([...title].length).toBe(LONGEST_TITLE);
    expect(title).not.toMatch(/\p{Cs}/u);
  });

  test("of no task is a programmer's mistake", () => {
    expect(() => titleOf([], PLAN)).toThrow(RangeError);
  });
});

describe("a session's title", () => {
  test("puts like jobs together and the first job first", () => {
    const jobs = [job("Sow", "beets"), job("Thin", "lettuce"), job("Sow", "carrots")];
    expect(sessionTitle(jobs)).toBe("Sow beets and carrots; thin lettuce");
  });

  test("says where for jobs that have a place of their own", () => {
    expect(sessionTitle([job("Sow", "tomatoes", "indoors"), job("Sow", "beets")])).toBe(
      "Sow tomatoes indoors; sow beets",
    );
  });

  test("counts the jobs it has no room for", () => {
    const jobs = ["Sow", "Thin", "Weed", "Hill", "Cut"].map((verb) => job(verb, "potatoes"));
    expect(sessionTitle(jobs)).toBe("Sow potatoes; thin potatoes; 3 more jobs");
  });

  test("begins with its lead, and then in lower case", () => {
    expect(sessionTitle([job("Thin", "beets")], "Still open: ")).toBe("Still open: thin beets");
  });

  test("is cut where even one job is too long", () => {
    expect([...sessionTitle([job("Sow", LONG)])].length).toBeLessThanOrEqual(LONGEST_TITLE);
  });
});
