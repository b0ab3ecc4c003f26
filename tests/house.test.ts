import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { describe, expect, test } from "vitest";

/** The rooms, from the ground up: each may import those before it and itself; the library is what the application gives. */
const ORDER = ["base", "crops", "garden", "engine", "views", "app", "index.ts", "host"];

/** Rooms that know no clock, no chance and no file. */
const CORE = new Set(["base", "crops", "garden", "engine", "views"]);

/** Libraries that one folder owns. */
const OWNED: Readonly<Record<string, string>> = {
  "date-fns-tz": "base/days",
  yaml: "garden/plan",
  valibot: "garden/plan",
  suncalc: "engine/climate",
  "csv-parse": "garden/station",
  "ical-generator": "views/calendar",
  "ical.js": "garden/plan",
  hono: "host/web",
  uqr: "host/web",
  fflate: "host/web",
  diff: "host/web",
};

const FILES = execFileSync(
  "git",
  ["ls-files", "--cached", "--others", "--exclude-standard", "src"],
  {
    encoding: "utf8",
  },
)
  .split("\n")
  .filter((file) => /\.tsx?$/.test(file) && !file.endsWith(".d.ts") && existsSync(file));

const TEXTS = new Map(FILES.map((file) => [file, readFileSync(file, "utf8")]));

const roomOf = (file: string) => file.split("/")[1] ?? "";

const importsOf = (file: string) =>
  [...(TEXTS.get(file) ?? "").matchAll(/(?:from |import |import\()"([^"]+)"/g)].map(
    (found) => found[1] ?? "",
  );

const localsOf = (file: string) =>
  importsOf(file)
    .filter((name) => name.startsWith("."))
    .map((name) => normalize(join(dirname(file), name)));

/** Files of which more than types is imported. */
const valuesImportedBy = (file: string) =>
  [...(TEXTS.get(file) ?? "").matchAll(/^(?:import|export) ([^;]*?) from "(\.[^"]+)";/gm)]
    .filter(([, names = ""]) => !names.startsWith("type ") && !onlyTypes(names))
    .map(([, , name = ""]) => normalize(join(dirname(file), name)));

const onlyTypes = (names: string) =>
  /^\{/.test(names) &&
  names
    .replace(/[{}]/g, "")
    .split(",")
    .map((name) => name.trim())
    .every((name) => name === "" || name.startsWith("type "));

const packageOf = (name: string) =>
  name
    .split("/")
    .slice(0, name.startsWith("@") ? 2 : 1)
    .join("/");

describe("the house", () => {
  test("has files to look at, all of them in a room that stands in the order", () => {
    expect(FILES.length).toBeGreaterThan(80);
    expect(FILES.filter((file) => !ORDER.includes(roomOf(file)))).toEqual([]);
  });

  test("imports run one way, from the ground up", () => {
    const back = FILES.flatMap((file) =>
      localsOf(file)
        .filter((to) => ORDER.indexOf(roomOf(to)) > ORDER.indexOf(roomOf(file)))
        .map((to) => `${file} -> ${to}`),
    );
    expect(back).toEqual([]);
  });

  test("the host imports the application and what lies at the bottom, and nothing between", () => {
    const allowed = /^src\/(?:app|base|host)\//;
    const past = FILES.filter((file) => roomOf(file) === "host").flatMap((file) =>
      localsOf(file)
        .filter((to) => !allowed.test(to))
        .map((to) => `${file} -> ${to}`),
    );
    expect(past).toEqual([]);
  });

  test("views calculate no growth: of the engine's calculations they import types alone", () => {
    const calculations = /engine\/(?:growth|climate\/climate|beds)\//;
    const past = FILES.filter((file) => roomOf(file) === "views").flatMap((file) =>
      valuesImportedBy(file)
        .filter((to) => calculations.test(to))
        .map((to) => `${file} -> ${to}`),
    );
    expect(past).toEqual([]);
  });

  test("no files import each other in a circle", () => {
    const done = new Set<string>();
    const circle = (file: string, path: readonly string[]): readonly string[] | null => {
      if (path.includes(file)) return [...path, file];
      if (done.has(file)) return null;
      for (const to of localsOf(file)) {
        const found = circle(to, [...path, file]);
        if (found) return found;
      }
      done.add(file);
      return null;
    };
    expect(FILES.map((file) => circle(file, [])).filter((found) => found !== null)).toEqual([]);
  });

  test("a library that a room owns is imported nowhere else", () => {
    const strangers = FILES.flatMap((file) =>
      importsOf(file)
        .map(packageOf)
        .filter((name) => name in OWNED && !file.startsWith(`src/${OWNED[name]}/`))
        .map((name) => `${file} imports ${name}`),
    );
    expect(strangers).toEqual([]);
    const owned = FILES.flatMap(importsOf).map(packageOf);
    expect(Object.keys(OWNED).filter((name) => !owned.includes(name))).toEqual([]);
  });

  test("the core takes no clock, no chance, no file and no network", () => {
    const impure =
      /\bDate\.now\b|new Date\(\)|Math\.random|\bfetch\(|randomUUID|process\.|from "node:(?!crypto)/;
    const found = FILES.filter(
      (file) => CORE.has(roomOf(file)) && impure.test(TEXTS.get(file) ?? ""),
    );
    expect(found).toEqual([]);
  });

  test("every export says what it gives", () => {
    const bare = FILES.flatMap((file) => {
      const lines = (TEXTS.get(file) ?? "").split("\n");
      return lines.flatMap((line, i) => {
        const name = /^export (?:async )?(?:const|function|type|class|interface) (\w+)/.exec(
          line,
        )?.[1];
        return name && !(lines[i - 1] ?? "").trimEnd().endsWith("*/") ? [`${file}: ${name}`] : [];
      });
    });
    expect(bare).toEqual([]);
  });

  test("every file with code has its test file at the mirrored place", () => {
    const code = /^(?:export )?(?:default )?(?:async )?(?:function|const|class) /m;
    const missing = FILES.filter((file) => code.test(TEXTS.get(file) ?? "")).filter((file) => {
      const mirrored = file.replace(/^src/, "tests").replace(/\.tsx?$/, ".test");
      return !existsSync(`${mirrored}.ts`) && !existsSync(`${mirrored}.tsx`);
    });
    expect(missing).toEqual([]);
  });

  test("no file is called after nothing in particular", () => {
    expect(
      FILES.filter((file) => /utils?|lib|helpers?|common|manager|service|info\b/.test(file)),
    ).toEqual([]);
  });

  test("the top level holds what it should and nothing else", () => {
    const listed = execFileSync("git", ["ls-files"], { encoding: "utf8" })
      .split("\n")
      .filter(Boolean);
    const top = [...new Set(listed.map((file) => file.split("/")[0]))].sort();
    const allowed = [
      ".ci",
      ".gitignore",
      ".npmrc",
      "DEVELOPERS.md",
      "LICENSE",
      "README.md",
      "biome.json",
      "package-lock.json",
      "package.json",
      "plans",
      "src",
      "tests",
      "tsconfig.json",
      "wrangler.toml",
    ];
    expect(top.filter((name) => !allowed.includes(name ?? ""))).toEqual([]);
  });
});
