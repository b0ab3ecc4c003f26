import { describe, expect, test } from "vitest";
import { COVER } from "../../src/practices/cover.ts";
import { QUARRY } from "../gardens.ts";
import { growingOf } from "../growth/growing.ts";
import { said, stepOf, titles, windowsOf } from "./told.ts";

const beets = growingOf(QUARRY, "beet", { acts: { start: "2027-05-03", up: "2027-05-20" } });

describe("a net over beets seen up on 20 May", () => {
  test("goes on at once and comes off when they stand a hand high", () => {
    expect(windowsOf(COVER, beets)).toEqual(["on 05-19 05-20 05-24", "off 06-11 06-15 06-29"]);
    expect(titles(COVER.tasks(beets))).toEqual(["Net over beets [bed]", "Net off beets [bed]"]);
  });

  test("goes on this week and comes off when there is time", () => {
    expect(COVER.tasks(beets).map(({ harm }) => harm)).toEqual(["this week", "when you can"]);
  });

  test("says what it is against, and what to bring", () => {
    expect(said(stepOf(COVER, beets, "on"))).toContain("Flies lay on the first leaves.");
    expect(stepOf(COVER, beets, "on")?.needs).toEqual(["a net, hoops and pegs"]);
  });

  test("has the plants' own sign for coming off", () => {
    expect(said(stepOf(COVER, beets, "off"))).toContain("sign: The plants have five or six leaves");
  });

  test("says why it may come off", () => {
    expect(said(stepOf(COVER, beets, "off"))).toContain("why: They have outgrown");
  });

  test("never comes off before it went on", () => {
    expect(stepOf(COVER, beets, "off")?.after).toEqual(["2027/beet/cover/on"]);
  });
});

describe("a cover that the plan asks for", () => {
  const acts = { start: "2027-05-03", "set out": "2027-05-21" };
  const tomatoes = growingOf(QUARRY, "tomato", { acts, planting: { under: ["fabric"] } });

  test("goes on the day they go into their place, over a crop that needs none", () => {
    expect(windowsOf(COVER, tomatoes)).toEqual(["on 05-21 05-21 05-24"]);
    expect(titles(COVER.tasks(tomatoes))).toEqual(["Fabric over tomatoes [bed]"]);
  });

  test("is none where nobody asks, or before they are in", () => {
    expect(COVER.tasks(growingOf(QUARRY, "tomato", { acts }))).toEqual([]);
    expect(COVER.tasks(growingOf(QUARRY, "tomato", { planting: { under: ["net"] } }))).toEqual([]);
  });
});

describe("a net over several sowings", () => {
  const again = growingOf(QUARRY, "beet", {
    acts: { start: "2027-05-03", up: "2027-05-20" },
    planting: { repeat: { everyDays: 21, times: 2 } },
  });
  const { anchors } = growingOf(QUARRY, "beet", { acts: { up: "2027-06-10" } });
  const second = [...anchors].map(([key, anchor]) => [key.replace("|1|", "|2|"), anchor] as const);
  const both = { ...again, anchors: new Map([...again.anchors, ...second]) };

  test("goes on over the first and comes off when the last stands a hand high", () => {
    expect(windowsOf(COVER, both)).toEqual(["on 05-19 05-20 05-24", "off 07-02 07-06 07-20"]);
  });

  test("comes off by the first where no later one has a day yet", () => {
    expect(windowsOf(COVER, again)[1]).toBe("off 06-11 06-15 06-29");
  });
});

describe("no net", () => {
  test("is told for carrots", () => {
    const carrots = growingOf(QUARRY, "carrot", { acts: { start: "2027-05-03" } });
    expect(windowsOf(COVER, carrots)).toEqual([]);
  });

  test("is told again for a second sowing under the same one", () => {
    const second = {
      ...growingOf(QUARRY, "lettuce", { acts: { start: "2027-05-03" } }),
      sowing: 2,
    };
    expect(windowsOf(COVER, second)).toEqual([]);
  });

  test("is told for seedlings of lettuce that was raised indoors, only for its young plants", () => {
    const raised = growingOf(QUARRY, "lettuce", {
      acts: { start: "2027-04-03" },
      planting: { start: "seed indoors" },
    });
    const birds = COVER.tasks(raised).map(({ step }) => step);
    expect(birds).toEqual(["on", "off"]);
  });

  test("is told before they are sown", () => {
    expect(windowsOf(COVER, growingOf(QUARRY, "beet"))).toEqual([]);
  });
});
