import { describe, expect, test } from "vitest";
import {
  bedName,
  LONGEST_TITLE,
  sessionTitle,
  titleNaming,
  titleOf,
  wholeTitle,
} from "../../../src/views/events/titles.ts";
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
  const each = (...jobs: readonly ReturnType<typeof job>[]) => jobs.map((one) => [one]);

  test("puts like jobs together and the first job first", () => {
    const jobs = each(job("Sow", "beets"), job("Thin", "lettuce"), job("Sow", "carrots"));
    expect(sessionTitle(jobs)).toBe("Sow beets and carrots; thin lettuce");
  });

  test("says where for jobs that have a place of their own", () => {
    expect(sessionTitle(each(job("Sow", "tomatoes", "indoors"), job("Sow", "beets")))).toBe(
      "Sow tomatoes indoors; sow beets",
    );
  });

  test("counts the jobs it has no room for, those told together once", () => {
    const jobs = ["Sow", "Thin", "Weed", "Hill", "Cut"].map((verb) => job(verb, "potatoes"));
    expect(sessionTitle(each(...jobs))).toBe("Sow potatoes; thin potatoes; 3 more jobs");
    const more = [job("Feed", "brussels sprouts"), job("Feed", "winter squash")];
    expect(sessionTitle([[job("Sow", "peas and beans and all")], more])).toBe(
      "Sow peas and beans and all; 1 more job",
    );
  });

  test("counts the crops of the first job where not all fit, and then the other jobs", () => {
    const sowing = ["beets", "parsnips", "arugula", "lettuce", "kohlrabi", "peas"];
    expect(
      sessionTitle([sowing.map((object) => job("Sow", object)), [job("Thin", "brussels sprouts")]]),
    ).toBe("Sow beets, parsnips and 4 more; 1 more job");
  });

  test("begins with its lead, and then in lower case, with a mark before it", () => {
    expect(sessionTitle(each(job("Thin", "beets")), "Still open: ")).toBe("Still open: thin beets");
    expect(sessionTitle(each(job("Thin", "beets")), "", "✓ ")).toBe("✓ Thin beets");
  });

  test("is cut where even one job is too long", () => {
    expect([...sessionTitle(each(job("Sow", LONG)))].length).toBeLessThanOrEqual(LONGEST_TITLE);
  });

  test("of no job is a programmer's mistake", () => {
    expect(() => sessionTitle([])).toThrow(RangeError);
  });
});

test("a title may begin with a mark, and still is short enough", () => {
  expect(titleOf([thin("beets")], PLAN, "✓ ")).toBe("✓ Thin beets, Root bed");
  const many = ["tomatoes", "peppers", "cucumbers", "courgettes", "melons"];
  expect(titleNaming("Set out", many, { mark: "✓ ", end: ", South bed" })).toBe(
    "✓ Set out tomatoes, peppers and 3 more, South bed",
  );
});

describe("a title with all names", () => {
  test("says them bed by bed", () => {
    const all = [thin("carrots"), thin("beets"), thin("lettuce", "salad-bed")];
    expect(wholeTitle(all, PLAN)).toBe("Thin carrots and beets, Root bed; lettuce, Salad bed");
  });

  test("has a place that is no bed behind all of them", () => {
    expect(wholeTitle([job("Sow", "tomatoes", "indoors")], PLAN)).toBe("Sow tomatoes indoors");
  });

  test("has beds behind a verb that closes round its crops", () => {
    const look = (object: string, bed: string) =>
      placedOf({}, { id: object, bed, title: { verb: "Thin … again", object, where: "bed" } });
    expect(wholeTitle([look("beets", "root-bed")], PLAN)).toBe("Thin beets again, Root bed");
    expect(wholeTitle([look("beets", "root-bed"), look("lettuce", "salad-bed")], PLAN)).toBe(
      "Thin beets and lettuce again, Root bed and Salad bed",
    );
  });
});
