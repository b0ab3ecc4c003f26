import { expect, test } from "vitest";
import type { GardenRequest } from "../../../src/host/web/garden-request.ts";
import { answerPicture, answerSheet, answerYear } from "../../../src/host/web/reports.ts";

const plan = { year: 2027, site: { clock: "UTC" } };
const shell = { now: () => Date.UTC(2027, 4, 8), core: { horizonAt: () => null } };
const visit = {
  context: shell,
  stored: { id: "g", plans: [{ plan }], lines: [], usual: null },
} as unknown as GardenRequest;

test("a picture, a month or a year that there is none of is not found", () => {
  expect(answerPicture(visit, "constructor.svg").status).toBe(404);
  expect(answerSheet(visit, "2027-13").status).toBe(404);
  expect(answerYear(visit, "1999").status).toBe(404);
});
