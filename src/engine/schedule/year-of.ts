import type { Plan } from "../../garden/model/index.ts";

/** The plan whose year a task's id begins with, else the newest. */
export function planOfTask(id: string, plans: readonly Plan[]): Plan {
  const plan = plans.find(({ year }) => id.startsWith(`${year}/`)) ?? plans[plans.length - 1];
  if (!plan) throw new RangeError("a garden has a plan");
  return plan;
}

/** The id of the same task in the year before. */
export function yearBefore(id: string): string {
  const slash = id.indexOf("/");
  return `${Number(id.slice(0, slash)) - 1}${id.slice(slash)}`;
}
