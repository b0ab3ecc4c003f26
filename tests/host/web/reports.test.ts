import { expect, test } from "vitest";
import type { GardenRequest } from "../../../src/host/web/garden-request.ts";
import { answerPicture, answerSheet, answerYear } from "../../../src/host/web/reports.ts";

const engine = { review: (_: unknown, year: number | null) => (year === null ? "<p>" : null) };
const request = {
  context: {
    now: () => Date.UTC(2027, 4, 8),
    sql: { rows: () => [] },
    engine: async () => engine,
  },
  stored: { id: "g", plans: [] },
} as unknown as GardenRequest;

test("a picture, a month or a year that there is none of is not found", async () => {
  expect((await answerPicture(request, "constructor.svg")).status).toBe(404);
  expect((await answerSheet(request, "2027-13")).status).toBe(404);
  expect((await answerYear(request, "1999")).status).toBe(404);
  expect((await answerYear(request)).status).toBe(200);
});
