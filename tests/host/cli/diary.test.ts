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
        "  seen: carrot up",
        "25 May 2027: beets thinned by Oda",
        "  done: thin, beet, by Oda",
        "",
      ].join("\n"),
    );
  });

  test.each([
    ["carrots not up yet", "not yet: carrot, up"],
    ["beets too small to thin", "not yet: beet, thin"],
    ["carrots failed", "failed, to be begun again: carrot"],
    ["second lettuce failed", "failed, to be begun again: lettuce, sowing 2"],
    ["slugs ate the beets", "lost: beet"],
    ["skipped thinning of beets this year", "left this year: thin, beet"],
    ["moved the beets to the South bed", "moved: beet to South bed"],
    ["1 in of rain", "measured: rain 1 in"],
    ["beets 3 in tall", "measured: beet 3 in tall"],
    ["soil in South bed 58 °F", "measured: soil in South bed 58 °F"],
    ["low 29 °F", "measured: low 29 °F"],
    ["undo: carrots up", "taken back: seen: carrot up"],
    ["radish up", "kept as a note, since no planting is called radish"],
    ["the cat slept in the sun", "kept as a note"],
  ])("understands: %s", async (line, means) => {
    expect(await told(`24 May: ${line}`)).toContain(`\n  ${means}\n`);
  });

  test("tells what no longer holds, cannot be so, or lies ahead", async () => {
    expect(await told("24 May: carrots up", "26 May: carrots not up")).toContain(
      "  seen: carrot up\n    no longer holds: 26 May says otherwise\n",
    );
    expect(await told("4 June: slugs ate the beets", "5 June: beets thinned")).toContain(
      "    was lost on 4 June, so it moves nothing\n",
    );
    expect(await told("9 June: carrots up")).toContain("    is dated a day still to come\n");
  });

  test("says so where nothing is written", async () => {
    expect(await told()).toBe("Nothing is written down yet.\n");
  });
});
