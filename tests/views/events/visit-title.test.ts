import { expect, test } from "vitest";
import { visitTitle } from "../../../src/views/events/visit-title.ts";
import { placedOf, SATURDAY } from "../../engine/schedule/given.ts";
import { planOf, QUARRY } from "../../gardens.ts";

const PLAN = planOf(QUARRY);
const job = (verb: string, task: Parameters<typeof placedOf>[1] = {}, given = {}) =>
  placedOf(given, { id: verb, title: { verb, object: "beets", where: "bed" }, ...task });
const done = { day: SATURDAY, by: null };

test("names the weightiest job first, whatever the way through the beds", () => {
  const jobs = [job("Net over", { bed: "bags" }), job("Thin", { minutes: 60 })];
  expect(visitTitle(jobs, PLAN)).toBe("Thin beets; net over beets");
});

test("counts jobs told together as the one paragraph they are", () => {
  const feed = (object: string) =>
    job("Feed", { id: object, title: { verb: "Feed", object, where: "bed" } });
  const long = job("Get", {
    minutes: 60,
    title: { verb: "Tuck straw under", object: "strawberries and all", where: null },
  });
  expect(visitTitle([long, feed("kale"), feed("leeks"), feed("beets")], PLAN)).toBe(
    "Tuck straw under strawberries and all; 1 more job",
  );
});

test("names what is open, and all with the mark where all is done", () => {
  expect(visitTitle([job("Thin", {}, { done }), job("Hill")], PLAN)).toBe("Hill beets");
  expect(visitTitle([job("Thin", {}, { done })], PLAN)).toBe("✓ Thin beets");
});
