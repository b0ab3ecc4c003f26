import { expect, test } from "vitest";
import { EVENING_BEFORE } from "../../../src/views/events/event.ts";

test("an event of a whole day rings at six the evening before", () => {
  expect(24 - EVENING_BEFORE / 60).toBe(18);
});
