import { expect, test } from "vitest";
import { folderOf, PLAN, sowbell } from "./terminal.ts";

const room = (bed: string, ...more: readonly string[]) =>
  sowbell(["room", folderOf({ "2027.yaml": PLAN }), "--bed", bed, "--on", "2027-05-20", ...more]);

test("room tells what stands in the bed and what may still be begun, whatever the case of its name", async () => {
  const { exit, out } = await room("long bed");
  expect(exit).toBe(0);
  expect(out).toMatch(/^Long bed, 20 May\n {2}Here now: /);
  expect(out).toMatch(/\n\nSafe\n {2}\w/);
});

test("an unknown bed is said so with the nearest, exit 1; none at all is wrong usage", async () => {
  expect(await room("Longer bed")).toMatchObject({
    exit: 1,
    err: "--bed Longer bed: no such bed. Did you mean Long bed.\n",
  });
  expect(await sowbell(["room", folderOf({ "2027.yaml": PLAN })])).toMatchObject({ exit: 2 });
});

test("as JSON its days are ISO dates", async () => {
  const { out } = await room("Long bed", "--json");
  const told = JSON.parse(out);
  expect(told.day).toBe("2027-05-20");
  expect(told.fits.find((fit: { chance: string }) => fit.chance === "safe").ready.late).toMatch(
    /^2027-\d\d-\d\d$/,
  );
});
