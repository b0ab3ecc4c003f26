import { expect, test } from "vitest";
import type { GardenRequest } from "../../../src/host/web/garden-request.ts";
import { answerPicture, answerSheet } from "../../../src/host/web/reports.ts";

const request = {
  context: {
    now: () => Date.UTC(2027, 4, 8),
    sql: { rows: () => [] },
  },
  stored: { id: "g", plans: [] },
} as unknown as GardenRequest;

test("a picture or a month that there is none of is not found", async () => {
  expect((await answerPicture(request, "constructor.svg")).status).toBe(404);
  expect((await answerSheet(request, "2027-13")).status).toBe(404);
});
