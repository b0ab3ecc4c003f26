import { expect, test } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import type { Observation } from "../../../src/garden/diary/observation.ts";
import { isOfPart, partly } from "../../../src/garden/diary/partly.ts";
import { on, PLAN } from "../plan/canonical.ts";

const day = on(6, 1);
const line = { day, text: "some", at: { file: "f", line: 1, column: 1 } };
const part = (fact: Observation) => partly(fact, line, { plans: [PLAN], vocabulary: PRACTICES });
const done = { kind: "done", day, planting: "2027/beet", step: null, by: null } as const;

test("a job done in part stays open", () => {
  expect(part({ ...done, practice: "thin" })).toMatchObject({
    kind: "not yet",
    of: { practice: "thin", step: null },
    partly: true,
  });
});

test("each picking is a whole one", () => {
  expect(part({ ...done, practice: "harvest" })).toMatchObject({ kind: "done" });
  expect(part({ ...done, practice: "harvest", step: "last" })).toMatchObject({ step: null });
});

test("what is lost in part grows on, which its note says", () => {
  const lost = part({ kind: "lost", day, planting: "2027/beet", sowing: null, text: "" });
  expect(lost).toMatchObject({
    kind: "note",
    why: expect.stringMatching(/only some of beet is lost/),
  });
  expect(lost.kind === "note" && isOfPart(lost)).toBe(true);
});

test("a stage that some have reached is reached", () => {
  const up = { kind: "seen", day, planting: "2027/beet", stage: "up", sowing: null } as const;
  expect(part(up)).toBe(up);
});
