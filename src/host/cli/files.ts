import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import {
  type Garden,
  type Plan,
  type PlanText,
  type Problem,
  readGarden,
} from "../../app/index.ts";

/** A year's file: four digits and .yaml. */
const YEAR_FILE = /^\d{4}\.ya?ml$/;

/** A plan's text with the texts of the files it may name, as reading and publishing want them. */
export type PlanFile = Required<PlanText> & { readonly year: number };

/** A garden read from its files, null with a problem in any; `requested` are the plans of the file or folder that was named. */
export type FilesReading = {
  readonly garden: Garden | null;
  readonly requested: readonly Plan[];
  readonly problems: readonly Problem[];
};

/** The year files of a garden's folder in year order, with every other YAML file and every calendar there beside them. Throws where there is no such folder. */
export function planFiles(folder: string): readonly PlanFile[] {
  const names = readdirSync(folder).filter((name) => /\.(?:ya?ml|ics)$/i.test(name));
  const beside = Object.fromEntries(
    names
      .filter((name) => !YEAR_FILE.test(name))
      .map((name) => [name, readFileSync(join(folder, name), "utf8")]),
  );
  return names
    .filter((name) => YEAR_FILE.test(name))
    .sort()
    .map((name) => ({
      garden: basename(resolve(folder)),
      file: join(folder, name),
      year: Number(name.slice(0, 4)),
      text: readFileSync(join(folder, name), "utf8"),
      beside,
    }));
}

function missingGarden(path: string, is: string): FilesReading {
  const at = { file: path, line: 1, column: 1 };
  const shouldBe = "name a year's file like plans/quarry-lane/2027.yaml, or its folder";
  return {
    garden: null,
    requested: [],
    problems: [{ code: "no-plan", weight: "problem", at, is, shouldBe }],
  };
}

/** The garden of a year's file or of a folder: its neighbouring years are read for what runs over from one to the next. */
export function readFiles(path: string): FilesReading {
  if (!existsSync(path)) return missingGarden(path, "there is no such file or folder");
  const folder = statSync(path).isDirectory();
  const files = folder ? planFiles(path) : withSiblingFiles(path);
  if (files.length === 0) return missingGarden(path, "there is no year's file in it");
  const { garden, plans, problems } = readGarden(files);
  const requested = folder ? plans : plans.filter((plan) => resolve(plan.file) === resolve(path));
  return { garden, requested, problems };
}

/** A plan's own file, whatever its name, and the year files beside it. */
function withSiblingFiles(path: string): readonly PlanFile[] {
  const all = planFiles(dirname(path));
  if (all.some(({ file }) => resolve(file) === resolve(path))) return all;
  const garden = basename(dirname(resolve(path)));
  const beside = all[0]?.beside ?? {};
  return [{ garden, file: path, year: 0, text: readFileSync(path, "utf8"), beside }];
}
