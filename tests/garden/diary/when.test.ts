import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { dayAhead, withOwnDay } from "../../../src/garden/diary/when.ts";
import { on } from "../plan/canonical.ts";

/** Sunday 10 October 2027. */
const DAY = on(10, 10);
const own = (text: string) => {
  const said = withOwnDay(text, DAY);
  return `${said.text} ${isoOf(said.day)}`;
};

test("a clause is on the day that it names", () => {
  expect(own("carrots came up yesterday")).toBe("carrots came up 2027-10-09");
  expect(own("corn up on Friday".toLowerCase())).toBe("corn up 2027-10-08");
  expect(own("corn up on the 9th")).toBe("corn up 2027-10-09");
  expect(own("corn up on the 28th")).toBe("corn up 2027-09-28");
  expect(own("corn up on 8 october")).toBe("corn up 2027-10-08");
  expect(own("corn up on sunday")).toBe("corn up 2027-10-10");
});

test("and on its line's where it names none, or one that lies ahead or far behind", () => {
  expect(own("corn up")).toBe("corn up 2027-10-10");
  expect(own("corn up on 12 october")).toBe("corn up on 12 october 2027-10-10");
  expect(own("corn up on 2 march")).toBe("corn up on 2 march 2027-10-10");
  expect(own("fleece on the carrots")).toBe("fleece on the carrots 2027-10-10");
});

describe("the day until which something waits", () => {
  const ahead = (text: string) => {
    const day = dayAhead(text, on(5, 13));
    return day === null ? null : isoOf(day);
  };
  test("is a date, a weekday, a month's first, or some days on", () => {
    expect(ahead("5 june")).toBe("2027-06-05");
    expect(ahead("june 4")).toBe("2027-06-04");
    expect(ahead("the 20th of june")).toBe("2027-06-20");
    expect(ahead("the 20th")).toBe("2027-05-20");
    expect(ahead("june")).toBe("2027-06-01");
    expect(ahead("saturday")).toBe("2027-05-15");
    expect(ahead("next week")).toBe("2027-05-20");
    expect(ahead("2 weeks")).toBe("2027-05-27");
  });

  test("is none that is past, next year's or no day", () => {
    for (const text of ["1 may", "4 march", "later", "the moon", "31 june"])
      expect(ahead(text), text).toBeNull();
  });

  test("may lie over New Year", () => {
    expect(dayAhead("6 january", on(12, 20))).toBe(on(12, 20) + 17);
  });
});
