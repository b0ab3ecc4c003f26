import { html } from "hono/html";
import type { TapsOffered } from "./job-row.tsx";

/** Something to tick off: what, where on the page, whether it is ticked, and what a tap says, which takes back what is ticked. */
export type TickLine = {
  readonly at: string;
  readonly name: string;
  readonly ticked: boolean;
  readonly taps: TapsOffered;
};

/**
 * A list to tick, a line a button; `to` is where each is sent. Written as text, as the buttons of jobs are.
 */
export function TickList({
  lines,
  to,
}: {
  readonly lines: readonly TickLine[];
  readonly to: string;
}) {
  return (
    <ul class="ticks">
      {lines.map(
        ({ at, name, ticked, taps: { tasks, done } }) =>
          html`<li id="${at}"><form method="post" action="${to}">${tasks.map(
            (task) => html`<input type="hidden" name="task" value="${task}"/>`,
          )}<button type="submit" class="${ticked ? "tick ticked" : "tick"}" name="say" value="${done?.says}">${name}<span class="unseen">: ${done?.words}</span></button></form></li>`,
      )}
    </ul>
  );
}
