import { describe, expect, test } from "vitest";
import { tableOf } from "../../../src/garden/station/table.ts";

const cells = (text: string) => {
  const table = tableOf(text, "s.csv");
  return "head" in table ? [table.head, ...table.rows].map((row) => row.cells) : table.problem.code;
};

describe("a file of cells", () => {
  test("has a head and rows, quoted cells, and more or fewer cells than its head", () => {
    expect(cells('a,b\n"x, y","say ""so"""\n1\n1,2,3\n')).toEqual([
      ["a", "b"],
      ["x, y", 'say "so"'],
      ["1"],
      ["1", "2", "3"],
    ]);
  });

  test("may be separated by semicolons or tabs, begin with a mark, and end its lines as Windows does", () => {
    for (const text of ["a;b\r\n1;2\r\n", "a\tb\n1\t2", "\uFEFFa,b\n1,2"])
      expect(cells(text)).toEqual([
        ["a", "b"],
        ["1", "2"],
      ]);
  });

  test("passes over empty lines and lines after a #", () => {
    expect(cells("# from a shed\n\na,b\n\n1,2\n# the end\n")).toEqual([
      ["a", "b"],
      ["1", "2"],
    ]);
  });

  test("knows the place of each cell by line and column", () => {
    const table = tableOf('# one\na,b,c\n\n"x, y",2,33\n', "s.csv");
    if (!("head" in table)) throw new Error("unread");
    const [row] = table.rows;
    expect(table.head.at(1)).toEqual({ file: "s.csv", line: 2, column: 3 });
    expect([0, 1, 2, 9].map((i) => row?.at(i))).toEqual(
      [1, 8, 10, 11].map((column) => ({ file: "s.csv", line: 4, column })),
    );
  });

  test("is a problem where it holds signs that no text has", () => {
    for (const text of ["a,b\n1,\u0000\n", "\u001b[31ma,b\n1,2\n", "a,b\n1,\u009b2\n"]) {
      const table = tableOf(text, "s.csv");
      expect("problem" in table && [table.problem.code, table.problem.is]).toEqual([
        "station-unreadable",
        "This is no text",
      ]);
    }
    expect(cells("a,b\n1,Montréal \u{1f33f}\n")).toEqual([
      ["a", "b"],
      ["1", "Montréal \u{1f33f}"],
    ]);
  });

  test("is a problem where a quote is never closed, or there are no rows", () => {
    expect(cells('a,b\n"1,2\n')).toBe("station-unreadable");
    for (const text of ["", "\n\n", "a,b\n", "# nothing"])
      expect(cells(text)).toBe("station-unreadable");
  });
});
