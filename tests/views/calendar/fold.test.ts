import { foldLines } from "ical-generator";
import { describe, expect, test } from "vitest";
import { foldLongLines } from "../../../src/views/calendar/fold.ts";

const letters = (count: number) => "abcdefghij".repeat(30).slice(0, count);

describe("folding lines", () => {
  test("a line of 74 stays, one of 75 goes on behind a space", () => {
    expect(foldLongLines(letters(74))).toBe(letters(74));
    expect(foldLongLines(letters(75))).toBe(`${letters(74)}\r\n ${letters(75).slice(-1)}`);
    expect(foldLongLines(`${letters(3)}\r\n${letters(75)}\r\n`)).toBe(
      `abc\r\n${letters(74)}\r\n e\r\n`,
    );
  });

  test("what is more than one octet is never cut in two", () => {
    expect(foldLongLines(`${letters(73)}é`)).toBe(`${letters(73)}\r\n é`);
    expect(foldLongLines(`${letters(70)}🥕🥕`)).toBe(`${letters(70)}🥕\r\n 🥕`);
  });

  test("it folds as the library does, whatever the length and the letters", () => {
    for (const letter of ["", "–", "é", "🥕", "\t", "\u007f"])
      for (let count = 0; count < 230; count++) {
        const line = `SUMMARY:${letters(count)}${letter}${letters(230 - count)}\r\nEND:VEVENT\r\n`;
        expect(foldLongLines(line)).toBe(foldLines(line));
        expect(foldLongLines(line.slice(0, count))).toBe(foldLines(line.slice(0, count)));
      }
  });
});
