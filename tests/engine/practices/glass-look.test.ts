import { expect, test } from "vitest";
import { SCOUT } from "../../../src/engine/practices/care.ts";
import { GLASS_LOOK } from "../../../src/engine/practices/glass-look.ts";
import { QUARRY } from "../../gardens.ts";
import { growingOf } from "../growth/growing.ts";
import { said, tasksIn } from "./told.ts";

const GLASS = QUARRY.replace(
  "South bed:\n    is: 12 x 4 ft",
  "South bed:\n    is: greenhouse, 12 x 4 ft",
);
const acts = { start: "2027-03-20", "set out": "2027-05-28" };

test("under glass one looks for what breeds there, and not for the beetles and caterpillars of the open", () => {
  const [look] = tasksIn(SCOUT, growingOf(GLASS, "tomato", { acts }));
  expect(said(look)).toContain(GLASS_LOOK.how);
  expect(said(look)).not.toContain("caterpillars");
  const [open] = tasksIn(SCOUT, growingOf(QUARRY, "tomato", { acts }));
  expect(said(open)).toContain("caterpillars");
  expect(open?.id).toBe(look?.id);
});
