import { expect, test } from "vitest";
import { Quiet, type QuietTime } from "../../../../src/host/web/pages/quiet.tsx";

const NOTHING: QuietTime = { next: [], orders: [], amounts: "", years: [], picture: null };
const quiet = (over: Partial<QuietTime>) =>
  String(<Quiet quiet={{ ...NOTHING, ...over }} to="/g/said" />);

test("has a part for each thing there is to look at, and none for what there is not", () => {
  expect(quiet({})).not.toContain("<h2>");
  const day = { weekday: "Sat", date: "23 Jan", jobs: [] };
  const html = quiet({
    next: [day],
    years: [{ year: 2026, href: "/g/year/2026" }],
    picture: { src: "/g/season.svg", href: "/g/pictures" },
  });
  expect([...html.matchAll(/<h2>([^<]*)/g)].map(([, name]) => name)).toEqual([
    ...["What comes next", "The season to come", "Looking back"],
  ]);
  expect(html).toContain('<a href="/g/year/2026">How 2026 went</a>');
  expect(html).toMatch(
    /<a href="\/g\/pictures"><img src="\/g\/season\.svg" alt="[^"]+" width="390" height="\d+"/,
  );
});

test("orders stand with the way to how much of each, where it is told", () => {
  const taps = { tasks: ["a"], done: { words: "Got it", says: "done" }, others: [] };
  const orders = [{ at: "job-a", name: "Seed: beets", ticked: false, taps }];
  expect(quiet({ orders, amounts: "/g/on/a" })).toContain('<a href="/g/on/a">How much of each</a>');
  expect(quiet({ orders })).not.toContain("How much");
});
