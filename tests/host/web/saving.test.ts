import { expect, test } from "vitest";
import type { GardenContext } from "../../../src/host/web/garden-context.ts";
import { saveText } from "../../../src/host/web/saving.ts";

const WANTED = {
  ...{ garden: "g", year: 2027, file: "g/2027.yaml", beside: {}, published: null, first: false },
  ...{ base: 0, origin: "https://garden.example" },
};

/** A context whose store must not be touched. */
const context = {
  sql: { rows: () => [] },
  engine: async () => ({
    yearsWanted: () => null,
    checkPlan: () => ({ plan: { year: 2026 }, problems: [] }),
  }),
} as unknown as GardenContext;

test("a plan too long, with the files beside it or without, is not even read", async () => {
  const long = "x".repeat(256 * 1024 + 1);
  expect((await saveText(context, { ...WANTED, text: long })).kind).toBe("too long");
  const beside = { "weather.yaml": long };
  expect((await saveText(context, { ...WANTED, text: "", beside })).kind).toBe("too long");
});

test("a plan of another year is a problem of its first line", async () => {
  const outcome = await saveText(context, { ...WANTED, text: "year: 2026" });
  expect(outcome).toMatchObject({
    kind: "problems",
    problems: [{ code: "wrong-year", at: { line: 1 }, is: "this plan is for 2026" }],
  });
});

test("more files beside a plan than are kept, or one with a name without end, is told in numbers", async () => {
  const many = Object.fromEntries(Array.from({ length: 41 }, (_, i) => [`${i}.yaml`, ""]));
  const outcome = await saveText(context, { ...WANTED, text: "", beside: many });
  expect(outcome).toMatchObject({
    problems: [{ is: "41 files lie beside this plan", shouldBe: "Keep at most 40" }],
  });
  const long = { [`${"x".repeat(101)}.yaml`]: "" };
  expect(await saveText(context, { ...WANTED, text: "", beside: long })).toMatchObject({
    problems: [{ code: "too-many-files", shouldBe: "Name it with at most 100 letters" }],
  });
});
