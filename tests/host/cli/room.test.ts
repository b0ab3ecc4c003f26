import { expect, test } from "vitest";
import { folderOf, PLAN, sowbell } from "./terminal.ts";

const room = (...args: readonly string[]) =>
  sowbell(["room", folderOf({ "2027.yaml": PLAN }), ...args]);

test("room tells what can be started in a bed on a day, in lines that fit a terminal", async () => {
  const { exit, out, err } = await room("--bed", "long bed", "--on", "2027-06-01");
  expect([exit, err]).toEqual([0, ""]);
  expect(out).toMatch(/^Long bed on 1 June 2027\n/);
  expect(out).toMatch(/^Safe, .*:\n {2}\w/m);
  expect(out).toContain("Not yet:\n");
  for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(96);
});

test("as JSON it has its days in ISO 8601", async () => {
  const { out } = await room("--bed", "long-bed", "--on", "2027-06-01", "--json");
  const told = JSON.parse(out);
  expect(told).toMatchObject({ bed: "long-bed", day: "2027-06-01" });
  expect(told.crops[0].ripe.usual).toMatch(/^2027-\d\d-\d\d$/);
});

test("a bed that is not there is told with the nearest name, exit 1; none named is wrong usage", async () => {
  const wrong = await room("--bed", "Lon bed");
  expect(wrong).toMatchObject({ exit: 1, out: "" });
  expect(wrong.err).toBe("sowbell: there is no bed called Lon bed. Did you mean Long bed?\n");
  expect((await room("--bed", "Xyzzy")).err).toContain("The plan has Long bed.");
  expect(await room()).toMatchObject({ exit: 2, out: "" });
});
