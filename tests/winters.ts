import { readFileSync } from "node:fs";
import { join } from "node:path";
import { isoOf } from "../src/base/days/day.ts";
import { tellOf } from "./gardens.ts";

/** The text of one of the five whole gardens. */
export function wholeGarden(name: string): string {
  return readFileSync(join(import.meta.dirname, "golden/gardens", `${name}.yaml`), "utf8");
}

/** A garden's head without its beds, and with these under one bed. */
export function withCrops(garden: string, crops: readonly string[]): string {
  const [head = ""] = wholeGarden(garden).split("beds:\n");
  const lines = crops.map((crop) => `      - ${crop}\n`).join("");
  return `${head}beds:\n  A bed:\n    is: 6 x 1.2 m\n    crops:\n${lines}`;
}

/** The due days of all tasks of gardens told on a day, by id without the year: `shallot/harvest/1`. */
export function dueDays(
  texts: string | readonly string[],
  on = "2027-01-02",
): Readonly<Record<string, string>> {
  const { scheduled } = tellOf(texts, { on });
  return Object.fromEntries(
    scheduled.map(({ task }) => [task.id.replace(/^\d+\//, ""), isoOf(task.window.due)]),
  );
}

/** Those of one practice and step of a planting, or of all its steps; `-` where there is none. */
export function due(days: Readonly<Record<string, string>>, id: string): string {
  return days[id] ?? "-";
}
