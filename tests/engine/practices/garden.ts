import type { ScheduledTask } from "../../../src/engine/schedule/scheduled-task.ts";
import { tellOf } from "../../gardens.ts";

/** The canonical place with other crops in one bed of 12 by 4 ft; `bed` are more lines of that bed. */
export const planWith = (crops: readonly string[], bed = ""): string => `garden: Quarry Lane
year: 2027
measures: inches and °F
place:
  clock: America/Denver
  latitude: 46.6
  last frost: 20 Apr, 6 May, 21 May
  first frost: about 2 Oct
  greenhouse: 20 trays, kept above 45 °F
  weather:
    low: [11, 14, 21, 28, 36, 43, 48, 46, 38, 29, 20, 12]
    high: [30, 35, 45, 55, 64, 73, 83, 81, 71, 57, 41, 31]
beds:
  Long bed:
    is: 12 x 4 ft
${bed}    crops:
${crops.map((crop) => `      - ${crop}`).join("\n")}
`;

/** All that is told of such a garden. */
export const toldWith = (crops: readonly string[], bed = ""): readonly ScheduledTask[] =>
  tellOf(planWith(crops, bed), { on: "2027-01-01" }).scheduled;

/** The task whose id ends so; throws where there is none. */
export function ending(placed: readonly ScheduledTask[], end: string): ScheduledTask {
  const found = placed.find(({ task }) => task.id.endsWith(end));
  if (!found) throw new Error(`no ${end} among ${placed.map(({ task }) => task.id).join(" ")}`);
  return found;
}

/** The plain words of a task. */
export const wordsOf = ({ task }: ScheduledTask): string =>
  task.say
    .flatMap(({ pieces }) => pieces.map((piece) => (typeof piece === "string" ? piece : "…")))
    .join("");
