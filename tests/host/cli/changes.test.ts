import { describe, expect, test } from "vitest";
import { QUARRY } from "../../gardens.ts";
import { folderOf, sowbell } from "./terminal.ts";

const changes = async (lines: readonly string[], since = "2027-05-20", on = "2027-06-06") => {
  const diary = lines.map((line) => `  - ${line}\n`).join("");
  const folder = folderOf({ "2027.yaml": `${QUARRY}diary:\n${diary}` });
  return sowbell(["changes", folder, "--since", since, "--on", on]);
};

describe("changes", () => {
  test("tells what moved, by how much, and the line behind it", async () => {
    const { exit, out } = await changes(["2 May: carrots sown", "5 June: carrots up"]);
    expect(exit).toBe(0);
    expect(out).toMatch(
      /^Thin carrots, Root bed: \d+ (?:June|July), was \d+ June \(\d+ days later\)\n {4}5 June: carrots up$/m,
    );
    expect(out).not.toContain("Thin beets");
  });

  test("tells what was done, came new and fell away", async () => {
    const done = await changes(["22 May: beets sown"]);
    expect(done.out).toContain("Sow beets, Root bed: done 22 May\n");
    const lost = await changes(["22 May: slugs ate the beets"]);
    expect(lost.out).toMatch(
      /Thin beets, Root bed: no longer, was \d+ June\n {4}22 May: slugs ate the beets/,
    );
  });

  test("says nothing of lines before that day, nor of those to come", async () => {
    expect((await changes(["18 May: carrots up"])).out).toBe("Nothing has moved since 20 May.\n");
    expect((await changes(["9 June: carrots up"])).out).toBe("Nothing has moved since 20 May.\n");
  });

  test("goes by what was measured in its bed where nothing else is behind it", async () => {
    const { out } = await changes(["16 Apr: soil in Root bed 36 °F"], "2027-04-15", "2027-04-17");
    expect(out).toMatch(/^Sow carrots, Root bed: .* later\)\n {4}16 Apr: soil in Root bed 36 °F$/m);
    expect(out).not.toContain("Sow lettuce");
  });

  test("wants a day, and none after today", async () => {
    const folder = folderOf({ "2027.yaml": QUARRY });
    expect((await sowbell(["changes", folder])).exit).toBe(2);
    expect((await sowbell(["changes", folder, "--since", "2027-06-01"])).exit).toBe(2);
  });
});
