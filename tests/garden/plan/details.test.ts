import { describe, expect, it } from "vitest";
import { daysFrom } from "../../../src/garden/plan/details.ts";
import { least, planOf, read, told } from "./canonical.ts";

const crop = (item: string) => planOf(least(`crops:\n  - ${item}`)).plantings[0];
const wrong = (item: string) => told(least(`crops:\n  - ${item}`));

describe("details of a planting", () => {
  it("say how much in plants, cloves, tubers, rows or length", () => {
    expect(crop("tomato: 6 plants")?.amount).toEqual({ kind: "plants", count: 6 });
    expect(crop("garlic: 60 cloves")?.amount).toEqual({ kind: "plants", count: 60 });
    expect(crop("carrot: 3 rows")?.amount).toEqual({ kind: "rows", count: 3 });
    expect(crop("carrot: 10 ft of row")?.amount).toMatchObject({
      kind: "length",
      length: { si: 304.8 },
    });
    expect(crop("carrot")?.amount).toBeNull();
    expect(wrong("carrot: 3 rows, 10 ft")).toEqual(["said-twice@8:21"]);
    expect(wrong("{crop: carrot, length: 10 gal}")).toEqual(["quantity-unclear@8:28"]);
  });

  it("doubt a mulch that nobody lays, with the word that is meant, and keep it as written", () => {
    expect(wrong("carrot: mulched with strwa")).toEqual(["mulch-unknown@8:26"]);
    expect(crop("carrot: mulched with strwa")?.mulch).toBe("strwa");
    expect(read(least("crops:\n  - carrot: mulched with strwa")).problems[0]?.shouldBe).toContain(
      "straw",
    );
    for (const known of ["straw", "half-rotted leaves", "leaf-mould", "chipped bark", "no"])
      expect(wrong(`{crop: carrot, mulch: ${known}}`), known).toEqual([]);
  });

  it("say days as a number, with their word, or in weeks", () => {
    expect(["72", "72 days", "2 weeks", "two weeks", "week", "1 day"].map(daysFrom)).toEqual([
      72, 72, 14, 14, 7, 1,
    ]);
    expect(["0", "soon", "9 months", "-3", "5000"].map(daysFrom)).toEqual([
      null,
      null,
      null,
      null,
      null,
    ]);
    expect(crop("tomato: 72 days, harden off 7 days")).toMatchObject({ days: 72, hardenDays: 7 });
    expect(crop("{crop: tomato, days: 72, harden off: 7}")).toMatchObject({
      days: 72,
      hardenDays: 7,
    });
    expect(wrong("{crop: tomato, days: soon}")).toEqual(["quantity-unclear@8:26"]);
  });

  it("say how often it is sown again", () => {
    expect(crop("lettuce: every 14 days, 4 times")?.repeat).toEqual({ everyDays: 14, times: 4 });
    expect(crop("lettuce: every two weeks")?.repeat).toEqual({ everyDays: 14, times: null });
    expect(crop("lettuce: 1 times")?.repeat).toBeNull();
    const plan = planOf(least("crops:\n  - carrot: 3 times"));
    expect(plan.plantings[0]?.repeat).toEqual({ everyDays: 25, times: 3 });
    expect(plan.filled).toContainEqual({
      what: "carrot: every",
      value: "25 days",
      why: "the crop facts",
    });
  });

  it("give its covers", () => {
    expect(crop("carrot: under a board")?.under).toEqual(["board"]);
    expect(crop("carrot: under a net and fleece")?.under).toEqual(["net", "fabric"]);
    expect(crop("{crop: carrot, under: [a board, net]}")?.under).toEqual(["board", "net"]);
    expect(wrong("carrot: under a board and moss")).toEqual(["unknown-word@8:31"]);
  });

  it("say whether it is cut young to grow again, which a root or fruit is not", () => {
    expect(crop("head lettuce: cut and come again")?.cutAgain).toBe(true);
    expect(crop("head lettuce: 3 plants")?.cutAgain).toBe(false);
    expect(crop("carrot: cut and come again")?.cutAgain).toBe(false);
  });

  it("say what is left out, by plain names", () => {
    expect(crop("carrot: without weeding and thinning")?.without).toEqual(["weed", "thin"]);
    expect(crop("carrot: without weeding, without thinning")?.without).toEqual(["weed", "thin"]);
    expect(crop("{crop: potato, without: [earthing up]}")?.without).toEqual(["hill"]);
    expect(wrong("carrot: without wedding")).toEqual(["practice-unknown@8:21"]);
  });
});
