import { expect, test } from "vitest";
import { forecastOf } from "../../../src/host/web/forecast.ts";
import type { GardenRequest } from "../../../src/host/web/garden-request.ts";

test("a garden that asks nobody has no forecast to show, and its store is not looked at", () => {
  const request = {
    context: { now: () => 0 },
    stored: { plans: [{ summary: { clock: "UTC", measures: "metric" } }] },
  } as unknown as GardenRequest;
  expect(forecastOf(request, () => "")).toBeNull();
});
