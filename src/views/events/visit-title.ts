import type { ScheduledTask } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { DONE_MARK, openOnes } from "./done.ts";
import { inBedOrder, weightiestFirst } from "./job-order.ts";
import { voiceOf } from "./sentences.ts";
import { sessionTitle } from "./titles.ts";
import { toldJobs } from "./told-jobs.ts";

/**
 * The title of a visit's jobs, the weightiest first: of those that are open, or of all with the mark where none is. What it
 * counts is what the text has paragraphs for. Not empty; `lead` stands before it.
 */
export function visitTitle(jobs: readonly ScheduledTask[], plan: Plan, lead = ""): string {
  const open = openOnes(jobs);
  const named = inBedOrder(open.length > 0 ? open : jobs, plan);
  const groups = weightiestFirst(toldJobs(named, voiceOf(plan, "household")));
  return sessionTitle(groups, lead, open.length > 0 ? "" : DONE_MARK);
}
