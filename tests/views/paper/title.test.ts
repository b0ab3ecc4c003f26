import { expect, test } from "vitest";
import { sheetPlaceText } from "../../../src/views/paper/title.ts";
import { planOf, QUARRY, tellOf } from "../../gardens.ts";

const { scheduled: placed } = tellOf(QUARRY, { on: "2027-04-01" });
const plan = planOf(QUARRY);
const the = (...ids: readonly string[]) =>
  ids.map((id) => {
    const found = placed.find(({ task }) => task.id === `2027/${id}`);
    if (!found) throw new Error(`no task ${id}`);
    return found;
  });

test("one of several is named by crop and bed", () => {
  expect(the("beet/thin/1").map((each) => sheetPlaceText(each, plan))).toEqual(["Beets, Root bed"]);
});
