import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, onTestFinished, test } from "vitest";
import { readPage } from "../../views/paper/paper.ts";
import { textIn, under } from "../../views/pictures/xml.ts";
import { folderOf, PLAN, sowbell } from "./terminal.ts";

const garden = () => folderOf({ "2027.yaml": PLAN });
const titleOf = (html: string) => under(readPage(html), "title").map(textIn)[0];

describe("sheet", () => {
  test("writes the month asked for, else today's, for whom it was asked", async () => {
    const titled = async (...args: readonly string[]) =>
      titleOf((await sowbell(["sheet", garden(), ...args])).out);
    expect(await titled()).toBe("Back Step, March 2027");
    expect(await titled("--month", "2027-05")).toBe("Back Step, May 2027");
    expect(await titled("--on", "2027-06-09")).toBe("Back Step, June 2027");
    expect(await titled("--for", "ada")).toBe("Back Step, March 2027, Ada");
  });

  test("writes to a file, and says where it cannot", async () => {
    const folder = mkdtempSync(join(tmpdir(), "sowbell-"));
    onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
    const file = join(folder, "may.html");
    const { exit, out } = await sowbell(["sheet", garden(), "--month", "2027-05", "--to", file]);
    expect([exit, out]).toEqual([0, ""]);
    expect(titleOf(readFileSync(file, "utf8"))).toBe("Back Step, May 2027");
    const failed = await sowbell(["sheet", garden(), "--to", join(folder, "none", "may.html")]);
    expect(failed.exit).toBe(1);
    expect(failed.err).toMatch(/may\.html cannot be written/);
  });

  test.each([
    [["--month", "May"], /--month May: a month like 2027-05/],
    [["--month", "2027-13"], /--month 2027-13/],
    [["--for", "Nobody"], /--for Nobody: the plan names no such person/],
  ])("tells wrong usage: %j", async (args, message) => {
    const { exit, err } = await sowbell(["sheet", garden(), ...args]);
    expect(exit).toBe(2);
    expect(err).toMatch(message);
  });
});
