import type { Plan } from "../plan/plan.ts";

/** The plan whose year a task's id begins with, else the newest. */
export function planOfTask(id: string, plans: readonly Plan[]): Plan {
  const plan = plans.find(({ year }) => id.startsWith(`${year}/`)) ?? plans[plans.length - 1];
  if (!plan) throw new RangeError("a garden has a plan");
  return plan;
}
