import { describe, expect, test } from "vitest";
import { QUARRY } from "../../gardens.ts";
import { once } from "../../once.ts";
import { awayOf, LUSH, linesOf, unnamed, withAway } from "./given.ts";

const summer = once(() => awayOf(withAway(LUSH, "Oda, 19 to 23 Jun", "everybody, 1 to 7 Aug")));

describe("with one at home", () => {
  test("what passes to them is said, and no neighbour is asked", () => {
    expect(summer().texts[0]?.map(({ list }) => list)).toEqual(["before", "home", "back"]);
    const lines = linesOf(summer(), "home");
    expect(lines[0]).toBe("Imre has:");
    expect(lines).toContain("Monday 21 June: Water the beds this week. Fine till Sunday 27 June.");
  });

  test("what nobody in particular has falls to all who are there", () => {
    const away = awayOf(withAway(LUSH, "Oda, 10 to 20 Sep"));
    expect(linesOf(away, "home").join("\n")).toMatch(/Imre has:\n(.*\n)*.*first frost/);
  });
});

describe("with nobody at home", () => {
  test("titles say which text it is, and for which days", () => {
    expect(summer().texts[1]?.map(({ title }) => title)).toEqual([
      "Before you go on 1 Aug",
      "For the neighbour, 1 to 7 Aug",
      "This waits until you're back",
      "When you're back, after 7 Aug",
    ]);
  });

  test("the neighbour waters, by can and by drip, and is thanked", () => {
    const lines = linesOf(summer(), "neighbour", 1);
    expect(lines[0]).toMatch(/^Every other day, water: Bags /);
    expect(lines[1]).toMatch(/^Every third day, water: .*South bed \d+ cans/);
    expect(lines.at(-1)).toBe("All else can be left. Thank you!");
  });

  test("what bears is picked before, by the neighbour, and first of all after", () => {
    const away = awayOf(withAway(LUSH, "everybody, 25 Aug to 1 Sep"));
    expect(linesOf(away, "before")).toContain(
      "10 min: Pick bush beans, Bean bed: all that would grow out, small ones too.",
    );
    expect(linesOf(away, "neighbour").join("\n")).toMatch(
      /Pick and eat, when:\nBean bed, bush beans/,
    );
    expect(linesOf(away, "back")[0]).toMatch(/^Pick bush beans/);
  });

  test("a long list names what the neighbour may pick, and leaves nothing out", () => {
    const crops = ["kale: 4 plants", "chard: 1 row", "courgette: 2 plants", "pea: 2 rows"];
    const beds = ["Leaf", "Long", "Upper", "Lower", "Middle", "Garden wall"].map(
      (name, i) =>
        `  ${name} bed:\n    is: 12 x 4 ft\n    crops:\n      - ${crops[i] ?? `sunflower ${i}: 4 plants`}\n`,
    );
    const away = awayOf(withAway(LUSH + beds.join(""), "everybody, 25 Aug to 1 Sep"));
    const text = linesOf(away, "neighbour").join("\n");
    expect(text).toMatch(/^Pick every other day, even what you can't use: .*bush beans/m);
    expect(text).toMatch(/^Pick and eat what is ripe: .*chard/m);
    expect(text).not.toMatch(/And \d+ more/);
  });

  test("a day away asks for nothing that can wait", () => {
    const day = awayOf(withAway(QUARRY, "everybody, 2 Jul"));
    expect(linesOf(day, "before")).toEqual(["Nothing has to be done before."]);
    expect(linesOf(day, "neighbour")).toEqual(["Nothing needs a neighbour."]);
    expect(linesOf(day, "back")).toEqual(["Nothing presses; walk round once and look."]);
  });

  test("what waits is told with its last good day", () => {
    for (const line of linesOf(summer(), "waits", 1))
      expect(line).toMatch(/Fine till \w+ \d+ \w+\.$/);
    expect(linesOf(summer(), "waits", 1).length).toBeGreaterThan(0);
  });

  test("once they have gone, nothing is told to be done before", () => {
    const away = awayOf(withAway(LUSH, "everybody, 1 to 7 Aug"), { on: "2027-08-02" });
    expect(away.texts[0]?.map(({ list }) => list)).not.toContain("before");
  });
});

describe("every text", () => {
  const ALL = [
    ...summer().texts,
    ...["everybody, 24 Apr to 2 Jun", "everybody, 1 May to 31 Aug", "everybody, 4 Sep to 3 Oct"]
      .flatMap((line) => [awayOf(withAway(LUSH, line)), awayOf(withAway(unnamed(LUSH), line))])
      .flatMap(({ texts }) => texts),
  ].flat();

  test("is under 900 characters, its title under 50, its lines not empty", () => {
    expect(ALL.length).toBeGreaterThan(20);
    for (const { title, text } of ALL) {
      expect(text.length).toBeLessThan(900);
      expect(title.length).toBeLessThan(50);
      expect(text).not.toMatch(/\n\n|^\n|\n$| {2}|\.\./);
    }
  });

  test("knows no machinery, and nothing is ever overdue", () => {
    const machinery = /emergence|window|rung|threshold|degree.day|milestone|anchor|overdue/i;
    expect(ALL.filter(({ title, text }) => machinery.test(`${title} ${text}`))).toEqual([]);
  });

  test("for the neighbour names nobody, no hour and no link", () => {
    const theirs = ALL.filter(({ list }) => list === "neighbour");
    expect(theirs.length).toBeGreaterThan(5);
    for (const { title, text } of theirs)
      expect(`${title}\n${text}`).not.toMatch(/Imre|Oda|\d:\d\d|http|is away/);
  });
});
