import { expect, test } from "vitest";
import { answerPicture, answerSheet, answerYear } from "../../../src/host/web/looks.ts";
import type { Visit } from "../../../src/host/web/visit.ts";

const plan = { year: 2027, site: { clock: "UTC" } };
const shell = { now: () => Date.UTC(2027, 4, 8), core: { horizonAt: () => null } };
const visit = {
  shell,
  stored: { id: "g", plans: [{ plan }], lines: [], usual: null },
} as unknown as Visit;

test("a picture, a month or a year that there is none of is not found", () => {
  expect(answerPicture(visit, "constructor.svg").status).toBe(404);
  expect(answerSheet(visit, "2027-13").status).toBe(404);
  expect(answerYear(visit, "1999").status).toBe(404);
});
