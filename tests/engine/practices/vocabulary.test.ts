import { describe, expect, test } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import type { Observation } from "../../../src/garden/diary/observation.ts";
import { parseDiary } from "../../../src/garden/diary/parse.ts";
import { overwinters } from "../../../src/garden/diary/subjects.ts";
import type { Planting } from "../../../src/garden/model/plan.ts";
import type { Deed } from "../../../src/garden/model/vocabulary.ts";
import { namedPractice } from "../../../src/garden/plan/practices.ts";
import { ALONE, isoDay, planOf } from "../../gardens.ts";
import { sentencesOf } from "./sentences-of.ts";

/** One bed, and in it a planting that begins in each of the ways there are. */
const PLAN = planOf(`${ALONE.slice(0, ALONE.indexOf("beds:"))}beds:
  Root bed:
    is: 12 x 4 ft
    crops:
      - carrot: 3 rows, under a board
      - lettuce: 2 rows, every 14 days, 3 times
      - tomato: 6 plants, from seed indoors
      - potato: 18 plants
      - calendula: 4 plants, winter-sown
      - garlic: 60 cloves, plant this October
`);

const at = { file: "f", line: 1, column: 1 };

const heard = (text: string): readonly Observation[] =>
  parseDiary([{ day: isoDay("2027-06-01"), text, at }], [PLAN], PRACTICES);

function suits(planting: Planting, { begun, repeated, under, ...of }: Deed["of"]): boolean {
  if (begun && !begun.includes(planting.start)) return false;
  if (of.overwinters !== undefined && of.overwinters !== overwinters(planting)) return false;
  return (!repeated || planting.repeat !== null) && (!under || planting.under.includes(under));
}

/** What a deed can be said of: its key, and its name as the line has it. */
function subjectFor({ about, of }: Deed): { readonly key: string; readonly name: string } | null {
  if (about === "garden") return { key: "2027/garden", name: "" };
  if (about === "bed") return { key: "2027/bed/root-bed", name: "the root bed" };
  const planting = PLAN.plantings.find((each) => suits(each, of));
  if (!planting) return null;
  return { key: planting.key, name: of.laterSowing ? "lettuce 2" : `the ${planting.written}` };
}

describe("every practice", () => {
  test("goes by its name and by each of its words", () => {
    for (const { name, words } of PRACTICES) {
      expect(words.length, name).toBeGreaterThan(0);
      for (const word of [name, ...words]) expect(namedPractice(word, PRACTICES), word).toBe(name);
    }
  });

  test("that is work has deeds, and the diary understands each way of putting them", () => {
    const mute = PRACTICES.filter(({ deeds }) => deeds.length === 0).map(({ name }) => name);
    expect(mute).toEqual(["not yet"]);
    let sentences = 0;
    for (const { name, deeds } of PRACTICES)
      for (const deed of deeds) {
        const subject = subjectFor(deed);
        expect(subject, `${name}: nothing to say it of`).not.toBeNull();
        for (const pattern of deed.patterns)
          for (const text of sentencesOf(pattern, subject?.name ?? "")) {
            const [found, ...more] = heard(text);
            expect(more, text).toEqual([]);
            expect(found, `${name}: ${text}`).toMatchObject({
              kind: "done",
              planting: subject?.key,
              practice: name,
              step: deed.of.laterSowing ? "2" : deed.step,
            });
            sentences += 1;
          }
      }
    expect(sentences).toBeGreaterThan(1000);
  });
});
