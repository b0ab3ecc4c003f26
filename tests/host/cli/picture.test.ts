import { describe, expect, test } from "vitest";
import { labelsOf, read, viewOf } from "../../views/pictures/drawn.ts";
import { folderOf, PLAN, sowbell } from "./terminal.ts";

const garden = () => folderOf({ "2027.yaml": PLAN });
const drawn = async (...args: readonly string[]) => {
  const { exit, out, err } = await sowbell(["picture", garden(), ...args]);
  expect([exit, err]).toEqual([0, ""]);
  return read(out);
};
const said = async (...args: readonly string[]) =>
  labelsOf(await drawn(...args)).map((label) => label.text);

describe("picture", () => {
  test("writes one drawing of what was asked for, for a phone where nothing is said", async () => {
    for (const subject of ["frost", "soil", "season"]) {
      const svg = await drawn("--of", subject);
      expect([svg.name, viewOf(svg).widthPx]).toEqual(["svg", 390]);
    }
    expect(viewOf(await drawn("--of", "season", "--for", "page"))).toEqual({
      widthPx: 1123,
      heightPx: 794,
    });
  });

  test("draws the beds as they stand, and says where a plan names none", async () => {
    const beds = await said("--of", "beds", "--on", "2027-07-04");
    expect(beds[0]).toMatch(/, 4 July 2027$/);
    const bare = folderOf({ "2027.yaml": PLAN.slice(0, PLAN.indexOf("beds:")) });
    const { exit, out, err } = await sowbell(["picture", bare, "--of", "beds"]);
    expect([exit, out]).toEqual([1, ""]);
    expect(err).toContain("names no beds");
  });

  test("draws today by --on, else by the clock", async () => {
    expect(await said("--of", "season", "--on", "2027-07-04")).toContain("today 4 July");
    expect(await said("--of", "season", "--on", "2027-07-04")).not.toContain("today 1 March");
  });

  test("draws the year asked for", async () => {
    const folder = folderOf({
      "2027.yaml": PLAN,
      "2028.yaml": PLAN.replace("year: 2027", "year: 2028"),
    });
    const title = async (...args: readonly string[]) => {
      const { out } = await sowbell(["picture", folder, "--of", "season", ...args]);
      return labelsOf(read(out))[0]?.text;
    };
    expect(await title()).toBe("Back Step, 2027");
    expect(await title("--year", "2028")).toBe("Back Step, 2028");
    expect(await title("--on", "2028-07-01")).toBe("Back Step, 2028");
  });
});

describe("wrong usage is told", () => {
  test.each([
    [[], /--of: beds, frost, soil, season or weather/],
    [["--of", "moon"], /--of moon: beds, frost, soil, season or weather/],
    [["--of", "soil", "--for", "wall"], /--for wall: phone or page/],
    [["--of", "soil", "--year", "1999"], /--year 1999: the plan is of 2027/],
  ])("for %j", async (args, message) => {
    const { exit, out, err } = await sowbell(["picture", garden(), ...args]);
    expect([exit, out]).toEqual([2, ""]);
    expect(err).toMatch(message);
  });
});
