import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { describe, expect, test } from "vitest";

/** The rooms, from the ground up: each may import those before it and itself; the library is what the application gives. */
const ORDER = ["base", "crops", "garden", "engine", "views", "app", "index.ts", "host"];

/**
 * The doors of each room: what others may import stands in one of these files, and nowhere else. A second door loads
 * little, for what must start before the engine is there. The top room has none.
 */
const DOORS = [
  "src/base/index.ts",
  "src/crops/index.ts",
  "src/garden/index.ts",
  "src/garden/model/index.ts",
  "src/engine/index.ts",
  "src/views/index.ts",
  "src/views/records.ts",
  "src/app/index.ts",
  "src/app/records.ts",
];

/** The doors that the worker may load before it has been asked for anything: none leads to the engine or to a big library. */
const STARTS_WITH = [
  "src/base/index.ts",
  "src/garden/model/index.ts",
  "src/views/records.ts",
  "src/app/records.ts",
];

/** Files in a row, each importing the next for more than its types, that a room may have at the most. */
const LONGEST_CHAIN = 15;

/** Rooms that know no clock, no chance and no file. */
const CORE = new Set(["base", "crops", "garden", "engine", "views"]);

/** Libraries, and parts of one, with the folders that own them; a part has owners of its own. */
const OWNED: Readonly<Record<string, readonly string[]>> = {
  "date-fns-tz": ["base/days"],
  yaml: ["garden/plan"],
  valibot: ["garden/plan", "garden/forecast", "host/backup"],
  suncalc: ["engine/climate"],
  "csv-parse": ["garden/station"],
  "ical-generator": ["views/calendar"],
  "ical.js": ["garden/plan"],
  // Of hono, pages are written with its JSX; its router stays outside.
  hono: [],
  "hono/jsx": ["host/web", "views/paper"],
  "hono/html": ["host/web", "views/paper"],
  uqr: ["host/web"],
  fflate: ["host/backup"],
  diff: ["host/web"],
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

/** A name that a file imports or passes on, whether only as a type, and the file it comes from. */
type Binding = { readonly name: string; readonly type: boolean; readonly from: string };

/** What a file imports from other files by name, and passes on from them. */
const bindingsOf = (file: string): readonly Binding[] =>
  [
    ...(TEXTS.get(file) ?? "").matchAll(/^(?:im|ex)port (type )?\{([^}]*)\} from "(\.[^"]+)";/gm),
  ].flatMap(([, type, names = "", path = ""]) =>
    names
      .split(",")
      .map((name) => name.trim())
      .filter(Boolean)
      .map((name) => ({
        name: name.replace(/^type /, "").replace(/ as .*/, ""),
        type: type !== undefined || name.startsWith("type "),
        from: normalize(join(dirname(file), path)),
      })),
  );

const BINDINGS = new Map(FILES.map((file) => [file, bindingsOf(file)]));

/** The file in which a name stands that may come through doors. */
function sourceOf({ name, from }: Binding): string {
  const passedOn = BINDINGS.get(from)?.find((each) => each.name === name);
  return DOORS.includes(from) && passedOn ? sourceOf(passedOn) : from;
}

const crossesRooms = (file: string, to: string) => roomOf(file) !== roomOf(to);

/** The longest row of files of a room, each importing the next for more than its types. */
function longestChain(room: string): readonly string[] {
  const found = new Map<string, readonly string[]>();
  const from = (file: string): readonly string[] => {
    const known = found.get(file);
    if (known) return known;
    const next = (BINDINGS.get(file) ?? [])
      .filter(({ type, from: to }) => !type && !crossesRooms(file, to))
      .map((binding) => from(binding.from));
    const longest = next.reduce((best, row) => (row.length > best.length ? row : best), []);
    found.set(file, [file, ...longest]);
    return [file, ...longest];
  };
  const rows = FILES.filter((file) => roomOf(file) === room && !DOORS.includes(file)).map(from);
  return rows.reduce((best, row) => (row.length > best.length ? row : best), []);
}

const filesIn = (folder: string) => FILES.filter((file) => file.startsWith(`src/${folder}/`));

/** The owned libraries that a file imports, each as its closest part; a file of JSX imports what makes JSX. */
const ownedImportsOf = (file: string) =>
  [...importsOf(file), ...(file.endsWith(".tsx") ? ["hono/jsx"] : [])].flatMap((name) => {
    const within = Object.keys(OWNED).filter((key) => name === key || name.startsWith(`${key}/`));
    return within.sort((a, b) => b.length - a.length).slice(0, 1);
  });

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

  test("rooms are entered by their doors", () => {
    const past = FILES.flatMap((file) =>
      localsOf(file)
        .filter((to) => crossesRooms(file, to) && !DOORS.includes(to))
        .map((to) => `${file} -> ${to}`),
    );
    expect(past).toEqual([]);
  });

  test("a door opens for others: what it passes on is imported, and never from inside", () => {
    const used = new Set(
      FILES.flatMap((file) =>
        (BINDINGS.get(file) ?? [])
          .filter(({ from }) => crossesRooms(file, from))
          .map(({ name, from }) => `${from} ${name}`),
      ),
    );
    const idle = DOORS.flatMap((door) =>
      (BINDINGS.get(door) ?? [])
        .map(({ name }) => `${door} ${name}`)
        .filter((each) => !used.has(each)),
    );
    expect(idle).toEqual([]);
    const inside = FILES.filter((file) =>
      localsOf(file).some((to) => !crossesRooms(file, to) && DOORS.includes(to)),
    );
    expect(inside).toEqual([]);
  });

  test("views calculate no growth: of the engine's calculations they import types alone", () => {
    const calculations = /engine\/(?:growth|climate\/climate|beds)\//;
    const past = FILES.filter((file) => roomOf(file) === "views").flatMap((file) =>
      (BINDINGS.get(file) ?? [])
        .filter((binding) => !binding.type && calculations.test(sourceOf(binding)))
        .map(({ name }) => `${file} imports ${name}`),
    );
    expect(past).toEqual([]);
  });

  test("the worker starts without what it loads only when it is needed", () => {
    const reached = new Set<string>();
    const follow = (file: string) => {
      if (reached.has(file)) return;
      reached.add(file);
      for (const { type, from } of BINDINGS.get(file) ?? []) if (!type) follow(from);
    };
    follow("src/host/deployed.ts");
    const late = DOORS.filter((door) => !STARTS_WITH.includes(door));
    expect(late.filter((door) => reached.has(door))).toEqual([]);
  });

  test.each(ORDER)("the longest chain of imports in %s can still be followed", async (room) => {
    const chain = longestChain(room);
    expect(chain.length, chain.join("\n")).toBeLessThanOrEqual(LONGEST_CHAIN);
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
      ownedImportsOf(file)
        .filter((name) => !OWNED[name]?.some((owner) => file.startsWith(`src/${owner}/`)))
        .map((name) => `${file} imports ${name}`),
    );
    expect(strangers).toEqual([]);
  });

  test("every owner imports its library", () => {
    const idle = Object.entries(OWNED).flatMap(([name, owners]) =>
      owners
        .filter((owner) => !filesIn(owner).some((file) => ownedImportsOf(file).includes(name)))
        .map((owner) => `${owner} does not import ${name}`),
    );
    expect(idle).toEqual([]);
  });

  test("markup of the core brings its own JSX, whatever settings it is run or built with", () => {
    const pragma = "/** @jsxRuntime automatic @jsxImportSource hono/jsx */\n";
    const bare = FILES.filter((file) => CORE.has(roomOf(file)) && file.endsWith(".tsx")).filter(
      (file) => !TEXTS.get(file)?.startsWith(pragma),
    );
    expect(bare).toEqual([]);
  });

  test("the core takes no clock, no chance, no file and no network", () => {
    const impure =
      /\bDate\.now\b|new Date\(\)|Math\.random|\bfetch\(|randomUUID|process\.|from "node:(?!crypto)/;
    const found = FILES.filter(
      (file) => CORE.has(roomOf(file)) && impure.test(TEXTS.get(file) ?? ""),
    );
    expect(found).toEqual([]);
  });

  test("a type's name is defined once", () => {
    const names = FILES.flatMap((file) =>
      [...(TEXTS.get(file) ?? "").matchAll(/^(?:export )?type (\w+)/gm)].map((found) => found[1]),
    );
    expect(names.length).toBeGreaterThan(300);
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
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
