import { describe, expect, it } from "vitest";
import { dayOrThrow, sayDay } from "../../../src/base/days/day.ts";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import type { Observation } from "../../../src/garden/diary/observation.ts";
import { parseDiary } from "../../../src/garden/diary/parse.ts";
import type { Plan } from "../../../src/garden/model/plan.ts";
import { least, PLAN, planOf } from "../plan/canonical.ts";

const at = { file: "f", line: 1, column: 1 };
const facts = (text: string, plans: readonly Plan[] = [PLAN], day = dayOrThrow(2027, 6, 1)) =>
  parseDiary([{ day, text, at }], plans, PRACTICES);

/** A fact as short as it can be said. */
function say(fact: Observation): string {
  switch (fact.kind) {
    case "done":
      return `${fact.planting} ${fact.practice} ${fact.step} by ${fact.by}`;
    case "seen":
      return `${fact.planting} ${fact.stage} ${fact.sowing}`;
    case "measured":
      return `${fact.what} ${fact.what === "height" ? fact.planting : fact.bed} ${Math.round(fact.value.si * 10) / 10}`;
    case "not yet":
      return `not yet ${fact.planting} ${"stage" in fact.of ? fact.of.stage : `${fact.of.practice} ${fact.of.step}`} ${fact.sowing}${fact.until === undefined ? "" : ` until ${sayDay(fact.until)}`}`;
    case "left":
      return `left ${fact.planting} ${fact.practice}`;
    case "failed":
    case "lost":
      return `${fact.kind} ${fact.planting} ${fact.sowing}`;
    case "moved":
      return `moved ${fact.planting} to ${fact.bed}`;
    case "bought":
      return `bought ${fact.planting}`;
    case "undone":
      return `undone: ${say(fact.what)}`;
    case "note":
      return `note: ${fact.why}`;
  }
}

const said = (text: string) => facts(text).map(say).join(" | ");

describe("what was done", () => {
  const DONE: Readonly<Record<string, string>> = {
    "carrots sown": "2027/carrot sow outdoors null",
    "sowed the carrots": "2027/carrot sow outdoors null",
    "tomatoes sown": "2027/tomato sow indoors null",
    "tomatoes planted out": "2027/tomato set out null",
    "set out tomatoes": "2027/tomato set out null",
    "set the tomatoes out": "2027/tomato set out null",
    "tomatoes planted": "2027/tomato set out null",
    "potatoes planted": "2027/potato-early-red plant null",
    "beets planted": "2027/beet sow outdoors null",
    "thinned the beets": "2027/beet thin null",
    "carrots thinned again": "2027/carrot thin 2",
    "weeded the carrots": "2027/carrot weed null",
    "board off": "2027/carrot board off",
    "boards off the carrots": "2027/carrot board off",
    "took the board off": "2027/carrot board off",
    "hilled potatoes": "2027/potato-early-red hill null",
    "earthed up the spuds": "2027/potato-early-red hill null",
    "garlic planted": "2027/second-garlic overwinter plant",
    "mulched the second garlic": "2027/second-garlic overwinter mulch",
    "garlic lifted": "2027/garlic harvest null",
    "lettuce cut": "2027/lettuce harvest null",
    "covered beets": "2027/beet cover on",
    "beets uncovered": "2027/beet cover off",
    "net off the beetroot": "2027/beet cover off",
    "potted on the tomatoes": "2027/tomato pot on null",
    "fed the tomatoes": "2027/tomato feed null",
    "tomatoes staked": "2027/tomato stake and train null",
    "tied up the tomatoes": "2027/tomato stake and train null",
    "tomatoes tied up": "2027/tomato stake and train null",
    "put up supports for tomatoes": "2027/tomato stake and train support",
    "pinched out the tomatoes": "2027/tomato stop the tops null",
    "checked the potatoes": "2027/potato-early-red scout null",
    "potatoes stored": "2027/potato-early-red cure and store null",
    "second lettuce sown": "2027/lettuce repeat 2",
    "sowed lettuce again": "2027/lettuce repeat null",
  };
  for (const [line, means] of Object.entries(DONE))
    it(`is understood from "${line}"`, () => {
      expect(said(line)).toBe(`${means} by null`);
    });

  it("is by whom the line names, before, behind or as its subject", () => {
    for (const line of [
      "thinned the beets by Oda",
      "Oda: thinned the beets",
      "Oda thinned the beets",
      "Beets thinned (Oda).",
      "beets thinned, oda",
    ])
      expect(said(line), line).toBe("2027/beet thin null by oda");
    expect(said("I thinned the beets")).toBe("2027/beet thin null by null");
  });

  it("can be several plantings, or several deeds", () => {
    expect(said("thinned the beets and carrots")).toBe(
      "2027/beet thin null by null | 2027/carrot thin null by null",
    );
    expect(said("carrots up, beets thinned")).toBe(
      "2027/carrot up null | 2027/beet thin null by null",
    );
  });
});

describe("what was seen", () => {
  const SEEN: Readonly<Record<string, string>> = {
    "carrots up": "2027/carrot up null",
    "Carrots are up!": "2027/carrot up null",
    "I see green in the carrots": "2027/carrot up null",
    "spuds have come up": "2027/potato-early-red up null",
    "early red up": "2027/potato-early-red up null",
    "lettuce 2 up": "2027/lettuce up 2",
    "second lettuce up": "2027/lettuce up 2",
    "third sowing of lettuce up": "2027/lettuce up 3",
    "second garlic up": "2027/second-garlic up null",
    "first ripe tomato": "2027/tomato first ripe null",
    "first tomato ripe": "2027/tomato first ripe null",
    "potatoes in flower": "2027/potato-early-red flower null",
    "first flowers on the potatoes": "2027/potato-early-red flower null",
  };
  for (const [line, means] of Object.entries(SEEN))
    it(`is understood from "${line}"`, () => {
      expect(said(line)).toBe(means);
    });
});

describe("what was measured", () => {
  it("is a soil temperature, of a bed or of none", () => {
    for (const line of [
      "soil in South bed 58 °F",
      "soil in the south bed is 58F",
      "South bed soil 58 °F",
      "soil in south: 58 °F",
    ])
      expect(said(line), line).toBe("soil south-bed 14.4");
    expect(said("soil 12 °C")).toBe("soil null 12");
  });

  it("is a night's low", () => {
    for (const line of ["low 29 °F", "low of 29F", "29 °F last night", "night's low was 29 °F"])
      expect(said(line), line).toBe("low null -1.7");
    expect(said("low -2 °C")).toBe("low null -2");
  });

  it("is a note where no bed is called so", () => {
    expect(said("soil in North bed 58 °F")).toBe("note: no bed is called north bed");
  });
});

describe("what is not so, or no more", () => {
  const SAID: Readonly<Record<string, string>> = {
    "carrots not up yet": "not yet 2027/carrot up null",
    "carrots are still not up": "not yet 2027/carrot up null",
    "no sign of the carrots": "not yet 2027/carrot up null",
    "nothing showing in the carrots": "not yet 2027/carrot up null",
    "tomatoes not ripe yet": "not yet 2027/tomato first ripe null",
    "haven't thinned the beets yet": "not yet 2027/beet thin null null",
    "beets not thinned yet": "not yet 2027/beet thin null null",
    "beets too small to thin": "not yet 2027/beet thin null null",
    "beets are not tall enough to be thinned": "not yet 2027/beet thin null null",
    "skipped thinning of beets this year": "left 2027/beet thin",
    "left the thinning of the beets this year": "left 2027/beet thin",
    "carrots failed": "failed 2027/carrot null",
    "carrots never came up": "failed 2027/carrot null",
    "nothing came of the carrots": "failed 2027/carrot null",
    "second lettuce failed": "failed 2027/lettuce 2",
    "lost all the beets to slugs": "lost 2027/beet null",
    "slugs ate the beets": "lost 2027/beet null",
    "beets were eaten by deer": "lost 2027/beet null",
    "moved the beets to the South bed": "moved 2027/beet to south-bed",
    "undo: carrots up": "undone: 2027/carrot up null",
  };
  for (const [line, means] of Object.entries(SAID))
    it(`is understood from "${line}"`, () => {
      expect(said(line)).toBe(means);
    });

  it("is a note where it names nothing, or no bed", () => {
    expect(said("no rain yet")).toBe("note: null");
    expect(said("undo: the whole day")).toBe("note: there is nothing to undo in the whole day");
    expect(said("moved the beets to the moon")).toBe("note: no bed is called moon");
  });
});

describe("what was measured of rain and height", () => {
  it("is rain, however it is put", () => {
    for (const line of ["rain 1 in", "1 in of rain", "1 inch of rain last night", "rained 1 in"])
      expect(said(line), line).toBe("rain null 2.5");
    expect(said("rain: 12 mm")).toBe("rain null 1.2");
  });

  it("is how tall a planting stands", () => {
    expect(said("potatoes 7 in tall")).toBe("height 2027/potato-early-red 17.8");
    expect(said("the beets stand 5 cm high")).toBe("height 2027/beet 5");
  });
});

describe("everything else", () => {
  it("stays a note, as it was written", () => {
    for (const text of [
      "the cat slept in the carrots",
      "Rain at last!",
      "sow the carrots",
      "beets should be thinned",
      "",
      "x".repeat(5000),
    ])
      expect(facts(text)).toEqual([{ kind: "note", day: dayOrThrow(2027, 6, 1), text, why: null }]);
  });

  it("is told why where it nearly fitted", () => {
    expect(said("radish up")).toBe("note: no planting is called radish");
    expect(said("potatoes sown")).toBe("note: early red potato is begun from tubers in the plan");
    expect(said("beets and radish thinned")).toBe("note: no planting is called radish");
  });

  it("moves neither of two plantings that a line fits", () => {
    const plan = planOf(least("crops:\n  - tomato: red, 1 plants\n  - tomato: gold, 1 plants"));
    expect(facts("tomatoes planted out", [plan]).map(say)).toEqual([
      "note: tomatoes fits red tomato and gold tomato",
    ]);
    expect(facts("gold tomato planted out", [plan]).map(say)).toEqual([
      "2027/tomato-gold set out null by null",
    ]);
    const boards = planOf(least("crops:\n  - carrot: under a board\n  - beet: under a board"));
    expect(facts("board off", [boards]).map(say)).toEqual(["note: it fits carrot and beet"]);
  });

  it("loses no line", () => {
    const lines = ["carrots up", "rain", "beets thinned"].map((text) => ({
      day: dayOrThrow(2027, 6, 1),
      text,
      at,
    }));
    expect(parseDiary(lines, [PLAN], PRACTICES).map(({ kind }) => kind)).toEqual([
      "seen",
      "note",
      "done",
    ]);
    expect(parseDiary([], [PLAN], PRACTICES)).toEqual([]);
    expect(parseDiary(lines, [], PRACTICES).map(({ kind }) => kind)).toEqual([
      "note",
      "note",
      "note",
    ]);
  });
});
