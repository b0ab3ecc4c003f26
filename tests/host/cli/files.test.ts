import { mkdirSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, test } from "vitest";
import { planFiles, readFiles } from "../../../src/host/cli/files.ts";
import { folderOf } from "./terminal.ts";

const year = (number: number, crops = "  - carrot\n") =>
  `garden: Small\nyear: ${number}\nplace:\n  clock: America/Denver\n  last frost: about 6 May\n  first frost: about 2 Oct\ncrops:\n${crops}`;
const codes = (read: ReturnType<typeof readFiles>) => read.problems.map(({ code }) => code);

describe("the files of a garden's folder", () => {
  const folder = () =>
    folderOf({
      "2028.yaml": year(2028),
      "2027.yml": year(2027),
      "weather.yaml": "low: []",
      "notes.txt": "rain",
    });

  test("are its years in order, whatever their ending", () => {
    expect(planFiles(folder()).map((file) => file.year)).toEqual([2027, 2028]);
  });

  test("bear the folder's name as the garden's id", () => {
    const at = folder();
    expect(planFiles(at)[0]).toMatchObject({ garden: basename(at), text: year(2027) });
  });

  test("come with what lies beside them, years and other files left out", () => {
    expect(planFiles(folder())[0]?.beside).toEqual({ "weather.yaml": "low: []" });
  });

  test("are a programmer's mistake where there is no folder", () => {
    expect(() => planFiles(join(folder(), "nowhere"))).toThrow();
  });
});

describe("a garden read from a folder", () => {
  test("has every year's plan, and all of them were asked for", () => {
    const {
      garden,
      requested: asked,
      problems,
    } = readFiles(folderOf({ "2027.yaml": year(2027), "2028.yaml": year(2028) }));
    expect(problems).toEqual([]);
    expect(garden?.plans.map((plan) => plan.year)).toEqual([2027, 2028]);
    expect(asked).toEqual(garden?.plans);
  });

  test("is none where one year has a problem, which is told with its file", () => {
    const read = readFiles(
      folderOf({ "2027.yaml": year(2027), "2028.yaml": year(2028, "  - carrot: 3 rose\n") }),
    );
    expect(read.garden).toBeNull();
    expect(read.problems[0]?.at.file).toMatch(/2028\.yaml$/);
  });

  test("is none where the folder holds no year", () => {
    expect(codes(readFiles(folderOf({ "weather.yaml": "" })))).toEqual(["no-plan"]);
  });
});

describe("a garden read from one year's file", () => {
  test("has the neighbouring years too, and only that one was asked for", () => {
    const folder = folderOf({ "2027.yaml": year(2027), "2028.yaml": year(2028) });
    const { garden, requested: asked } = readFiles(join(folder, "2028.yaml"));
    expect(garden?.plans.map((plan) => plan.year)).toEqual([2027, 2028]);
    expect(asked.map((plan) => plan.year)).toEqual([2028]);
  });

  test("stands alone under any other name", () => {
    const folder = folderOf({ "2027.yaml": year(2027) });
    mkdirSync(join(folder, "tries"));
    writeFileSync(join(folder, "tries", "what-if.yaml"), year(2027, "  - beet\n"));
    const { garden, requested: asked } = readFiles(join(folder, "tries", "what-if.yaml"));
    expect(garden?.id).toBe("tries");
    expect(asked[0]?.plantings[0]?.crop).toBe("beet");
  });

  test("is none where there is no such file", () => {
    expect(codes(readFiles(join(folderOf({}), "2027.yaml")))).toEqual(["no-plan"]);
  });
});
