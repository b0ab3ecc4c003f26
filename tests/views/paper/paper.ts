import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { parseDiary } from "../../../src/garden/diary/parse.ts";
import { type MonthInput, type MonthSheet, monthSheet } from "../../../src/views/paper/month.ts";
import { gardenOf, isoDay, planOf, tellOf } from "../../gardens.ts";
import { parse, type Tag } from "../pictures/xml.ts";

/** A page read back strictly, its first line left out, which is HTML's own. */
export function readPage(html: string): Tag {
  const [first, ...rest] = html.split("\n");
  if (first !== "<!doctype html>") throw new SyntaxError(`begins with ${first}`);
  return parse(rest.join("\n"));
}

/** All elements that look so, in order. */
export function looking(tag: Tag, look: string): readonly Tag[] {
  return tag.children.flatMap((child) => {
    if (typeof child === "string") return [];
    const own = (child.attributes.class ?? "").split(" ").includes(look);
    return [...(own ? [child] : []), ...looking(child, look)];
  });
}

/** What the sheet of a text's month (`2027-05`) is made from, as of a day. */
export function askedOf(
  text: string,
  month: string,
  { on = `${month}-01`, person = null as string | null } = {},
): MonthInput {
  const { scheduled: placed, events } = tellOf(text, { on });
  return {
    plans: gardenOf(text).plans,
    scheduled: placed,
    events,
    month: isoDay(`${month}-01`),
    today: isoDay(on),
    person,
  };
}

/** The same as a sheet. */
export const sheetOf = (...args: Parameters<typeof askedOf>): MonthSheet =>
  monthSheet(askedOf(...args));

/** A text's diary as facts. */
export function factsOf(text: string) {
  const plan = planOf(text);
  return parseDiary(plan.diary, [plan], PRACTICES);
}

/** A garden whose every name tries to break out of the page. */
export const HOSTILE = `garden: "</title><script>alert(1)</script> & 'x' \\"y\\""
year: 2027
place:
  clock: America/Denver
  last frost: about 6 May
  first frost: about 2 Oct
people:
  "<b>Imre & Co</b>": { gardens: Sat 9-12 }
beds:
  "Bed <i> ]]> & \\u202e\\u0001":
    is: 12 x 4 ft
    crops:
      - name: "<img src=x onerror=alert(1)>"
        crop: carrot
      - name: "${"long".repeat(60)}"
        crop: beet
diary:
  - "3 May: <script>alert(2)</script> & so on"
`;
