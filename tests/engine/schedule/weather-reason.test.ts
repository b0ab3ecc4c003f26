import { describe, expect, test } from "vitest";
import { withWeatherReason } from "../../../src/engine/schedule/weather-reason.ts";
import { inDays, placedOf, SATURDAY, taskOf, windowOf } from "./given.ts";

/** A job that waits for soil, due so many days later than usual. */
const job = (later: number, basis: readonly ("soil" | "seen" | "last frost")[] = ["soil"]) => ({
  ...placedOf({ task: taskOf({ basis, window: windowOf(7, 7, "later", inDays(later)) }) }),
  window: windowOf(7, 7, "later", inDays(later)),
  usual: SATURDAY,
});

const saidOf = (...given: Parameters<typeof withWeatherReason>) =>
  withWeatherReason(...given).task.say.flatMap(({ pieces }) => pieces);

describe("what the last weeks were like", () => {
  test("is said of a job that they can have moved", () => {
    expect(saidOf(job(6), -1.5)).toContain("The last weeks were colder than usual.");
    expect(saidOf(job(-6), 3)).toContain("The last weeks were much warmer than usual.");
  });

  test("is not said where it moved the other way, hardly, or by something else", () => {
    const silent = [
      withWeatherReason(job(6), 1.5),
      withWeatherReason(job(2), -3),
      withWeatherReason(job(6), -0.9),
      withWeatherReason(job(6), null),
      withWeatherReason(job(6, ["last frost"]), -3),
      withWeatherReason(job(6, ["soil", "seen"]), -3),
      withWeatherReason({ ...job(6), usual: null }, -3),
      withWeatherReason({ ...job(6), done: { day: SATURDAY, by: null } }, -3),
    ];
    for (const { task } of silent) expect(JSON.stringify(task.say)).not.toContain("The last weeks");
  });
});
