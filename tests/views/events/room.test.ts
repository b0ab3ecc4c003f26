import { describe, expect, test } from "vitest";
import { roomIn } from "../../../src/engine/beds/room.ts";
import { roomText } from "../../../src/views/events/room.ts";
import { bedOf, yearOf } from "../../engine/beds/gardens.ts";
import { isoDay, QUARRY } from "../../gardens.ts";

const LANE = yearOf(QUARRY);
function told(on: string, bed = "salad-bed", season = LANE) {
  const room = roomIn(season, bed, isoDay(on));
  if (!room) throw new Error("no such bed");
  return roomText(room, "us");
}

const section = (on: string, name: string) =>
  told(on)
    .sections.find((each) => each.name.startsWith(name))
    ?.lines.join("\n") ?? "";

describe("a bed's room in words", () => {
  test("begins with what stands there and what is free", () => {
    expect(told("2027-03-01").head.slice(0, 3)).toEqual([
      "Salad bed on 1 Mar 2027",
      "Nothing stands in it.",
      "From 24 Apr it is wanted for lettuce.",
    ]);
    const [, stands = "", free = ""] = told("2027-07-20").head;
    expect(stands).toMatch(/^Lettuce till about \d+ \w+ to \d+ \w+\.$/);
    expect(free).toMatch(/^Free: about [\d.]+ (in|ft) across now, all of it about \d+ \w+\.$/);
    expect(told("2027-07-20").head.at(-1)).toBe(
      "About 2 Oct frost takes the tender and about 30 Oct the hardy should be in.",
    );
  });

  test("groups crops by what they come to, a line a crop where it is in time", () => {
    expect(section("2027-05-20", "Safe")).toMatch(/^beets +seed, ready \d+ July to \d+ Aug$/m);
    expect(section("2027-07-20", "A gamble")).toMatch(
      /^carrots +seed, ready about \d+ Oct unless it is cold$/m,
    );
    expect(section("2027-03-01", "Not yet")).toMatch(/^From 24 Apr: beets \(seed\)/m);
    expect(section("2027-08-30", "Too late")).toMatch(/^It would not be ready: /m);
  });

  test("says what a crop waits for beside spring", () => {
    expect(section("2027-05-20", "Not yet")).toMatch(
      /^Wait, since till then it would bolt in the long days: .*fennel \(plants\) from \d+ June/m,
    );
    expect(section("2027-05-20", "Not yet").match(/long days/g)).toHaveLength(1);
  });

  test("has what is a gamble behind what is safe from the same day on", () => {
    expect(section("2027-05-20", "Not yet")).toMatch(/^From \d+ May: [^;]+; a gamble: [^;]+$/m);
  });

  test("says of bags how much is free, and what is better not there", () => {
    const is = "6 grow bags, 16 in across, 14 in high";
    const bags = yearOf(bedOf(["potato: 12 plants"], { is }));
    expect(told("2027-08-01", "long-bed", bags).head).toContainEqual(
      expect.stringContaining("half of it"),
    );
    const years = yearOf(
      bedOf(["potato: 9 plants"], { year: 2026 }),
      bedOf(["moonflower: 3 plants"]),
    );
    expect(told("2027-06-01", "long-bed", years).head).toEqual(
      expect.arrayContaining([
        "It had potato in 2026: better nothing of the nightshade family this year.",
        "When moonflower will stand there is not known.",
      ]),
    );
  });

  test("has no word of the machinery and no code", () => {
    for (const on of ["2027-03-01", "2027-05-20", "2027-07-20", "2027-10-20", "2028-02-01"]) {
      const { head, sections } = told(on);
      const text = [...head, ...sections.flatMap(({ name, lines }) => [name, ...lines])].join("\n");
      expect(text).not.toMatch(
        /window|milestone|threshold|degree day|emergence|null|undefined|NaN/i,
      );
    }
  });

  test("has what feeds the soil apart from what is harvested", () => {
    expect(section("2027-05-20", "To feed the soil")).toMatch(
      /^To be dug in this year: phacelia \(seed\), .*from \d+ \w+: buckwheat/s,
    );
    expect(section("2027-05-20", "Safe")).not.toContain("phacelia");
  });

  test("stands on one screen", () => {
    const { head, sections } = told("2027-05-20");
    expect(head.length + sections.flatMap(({ lines }) => lines).length).toBeLessThan(64);
  });
});
