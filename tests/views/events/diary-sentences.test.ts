import { expect, test } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { parseDiary } from "../../../src/garden/diary/parse.ts";
import { sayObservation } from "../../../src/views/events/diary-sentences.ts";
import { on, PLAN } from "../../garden/plan/canonical.ts";

const at = { file: "f", line: 1, column: 1 };
const said = (text: string) =>
  parseDiary([{ day: on(6, 4), text, at }], [PLAN], PRACTICES).map((each) =>
    sayObservation(each, [PLAN]),
  );

test("a line is told back as a gardener would say it", () => {
  const SAID: Readonly<Record<string, readonly string[]>> = {
    "put off the beets until 20 June": ["Beet is not sown yet and put off until 20 June"],
    "sowed half the beets": ["Beet is sown in part, and the rest stays open"],
    "no beets yet": ["Beet is not ready yet"],
    "no rain for two weeks": ["No rain fell in 14 days"],
    "bought 6 tomato plants": ["Tomato was bought as plants, so none is raised"],
    "took the board off": ["Carrot is out from under its board"],
    "lost half the beets": [
      "Kept as a note, since only some of beet is lost, and the rest keeps its dates",
    ],
    "beets thinned, something about the carrots": [
      "Beet is thinned",
      "Kept as a note, since “something about the carrots” is not understood",
    ],
  };
  for (const [text, sentences] of Object.entries(SAID)) expect(said(text), text).toEqual(sentences);
});

test("every practice whose work can be told has words for it done", () => {
  const mute = PRACTICES.filter(({ deeds, past }) => deeds.length > 0 && past.whole === "done");
  expect(mute.map(({ name }) => name)).toEqual([]);
  for (const { name, deeds, past } of PRACTICES)
    for (const step of Object.keys(past).filter((each) => each !== "whole"))
      expect(
        deeds.some((deed) => deed.step === step),
        `${name}: ${step}`,
      ).toBe(true);
});
