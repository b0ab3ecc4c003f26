import { describe, expect, test } from "vitest";
import { QUARRY } from "../../gardens.ts";
import { folderOf, sowbell } from "./terminal.ts";

const diary = (...lines: readonly string[]) =>
  folderOf({
    "2027.yaml":
      lines.length === 0
        ? QUARRY
        : `${QUARRY}diary:\n${lines.map((line) => `  - ${line}\n`).join("")}`,
  });
const told = async (...lines: readonly string[]) =>
  (await sowbell(["diary", diary(...lines), "--on", "2027-06-05"])).out;

describe("diary", () => {
  test("shows each line and what was understood of it", async () => {
    expect(await told("24 May: carrots up", "25 May: beets thinned by Oda")).toBe(
      [
        "24 May 2027: carrots up",
        "  Carrot is up",
        "25 May 2027: beets thinned by Oda",
        "  Beet is thinned by Oda",
        "",
      ].join("\n"),
    );
  });

  test.each([
    ["carrots not up yet", "Carrot is not up yet"],
    ["beets too small to thin", "Beet is not thinned yet"],
    ["carrots failed", "Carrot came to nothing and is begun again"],
    ["second lettuce failed", "Lettuce, sowing 2, came to nothing and is begun again"],
    ["slugs ate the beets", "Beet is gone, and its place is free"],
    ["skipped thinning of beets this year", "Beet is left this year without being thinned"],
    ["moved the beets to the South bed", "Beet stands in South bed from now on"],
    ["1 in of rain", "1 in of rain fell"],
    ["beets 3 in tall", "Beet stands 3 in tall"],
    ["soil in South bed 58 °F", "The soil in South bed is at 58 °F"],
    ["low 29 °F", "The night's low was 29 °F"],
    ["undo: carrots up", "Taken back: carrot is up"],
    ["radish up", "Kept as a note, since no planting is called radish"],
    ["the cat slept in the sun", "Kept as a note"],
  ])("understands: %s", async (line, means) => {
    expect(await told(`24 May: ${line}`)).toContain(`\n  ${means}\n`);
  });

  test("tells what no longer holds, cannot be so, or lies ahead", async () => {
    expect(await told("24 May: carrots up", "26 May: carrots not up")).toContain(
      "  Carrot is up\n    no longer holds: 26 May says otherwise\n",
    );
    expect(await told("4 June: slugs ate the beets", "5 June: beets thinned")).toContain(
      "    was lost on 4 June, so it moves nothing\n",
    );
    expect(await told("9 June: carrots up")).toContain("    its day is still to come\n");
  });

  test("says so where nothing is written", async () => {
    expect(await told()).toBe("Nothing is written down yet.\n");
  });
});
