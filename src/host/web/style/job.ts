import { SANS, SERIF } from "./type.ts";

/**
 * Jobs on a page: `jobs` a list of them; in each `job` a `line` of what, facts and how long it keeps, with the wanted answer
 * `at-side`, under the thumb. `answered` is one that was answered; its undoing stands at the other side, so that a double tap
 * takes nothing back. `week` is seven days, as
 * rows on a phone and as columns on a desk; `today` is the page's two columns there.
 */
export const JOB_STYLE = `
.jobs { list-style: none; margin: 0 0 1rem; padding: 0; }
.job {
  display: grid; grid-template-columns: minmax(0, 1fr) 7.5rem; column-gap: 0.75rem; align-items: start;
  border-bottom: 1px solid var(--rule); padding: 0.5rem 0; scroll-margin-top: 30vh;
}
.job > :first-child { grid-column: 1 / -1; grid-row: 1; }
.job summary { padding-right: 8.25rem; min-height: 3.5rem; align-items: flex-start; }
.job:not(:has(> .at-side)) summary { padding-right: 0; }
.job summary { gap: 0.5rem; }
.job summary::before { margin-top: 0.55rem; }
.line { display: block; }
.what { display: block; font: 600 1.25rem/1.25 ${SERIF}; }
s.what { color: var(--faint); text-decoration-thickness: 1.5px; }
.line .facts { display: block; margin-top: 0.15rem; }
.keeps { vertical-align: -0.05em; stroke: var(--rule); stroke-width: 10; stroke-dasharray: 4 2; }
.keeps .left { stroke: var(--link); }
.at-side { grid-column: 2; grid-row: 1; margin: 0.4rem 0 0; display: block; }
.at-side button { width: 100%; min-height: 3.25rem; padding: 0.4rem 0.5rem; }
.job details > :not(summary) { margin-left: 1.1rem; }
.job details[open] { padding-bottom: 0.5rem; }
.each { list-style: none; padding: 0; }
.each > li { border-top: 1px solid var(--rule); padding: 0.5rem 0; }
.each p { margin: 0; }
.each form { margin: 0.5rem 0; }
.answered { background: var(--wash); grid-template-columns: 5rem minmax(0, 1fr); }
.answered > div:first-child { grid-column: 2; padding-top: 0.4rem; padding-right: 0.5rem; min-height: 3.75rem; }
.answered .small { margin: 0; }
.answered details.small > summary { min-height: 2.75rem; padding-right: 0; }
.answered .at-side { grid-column: 1; margin-left: 0.5rem; }
:target { box-shadow: -0.625rem 0 0 var(--paper), -0.875rem 0 0 var(--link); }
.week { list-style: none; margin: 0; padding: 0; }
.week > li { display: grid; grid-template-columns: 6.25rem minmax(0, 1fr); border-bottom: 1px solid var(--rule); padding: 0.2rem 0; }
.week .day { font: 600 0.9375rem/1.7 ${SANS}; margin: 0; padding: 0.25rem 0; white-space: nowrap; }
.week .day span { font-weight: 400; color: var(--faint); }
.week ul { list-style: none; margin: 0; padding: 0; }
.week ul li { padding: 0.25rem 0; line-height: 1.35; }
.week ul a { display: inline-block; padding: 0.15rem 0; }
.week ul .facts { display: block; }
.week .free { color: var(--faint); margin: 0; padding: 0.25rem 0; line-height: 1.35; }
.ticks { list-style: none; margin: 0 0 1rem; padding: 0; }
.ticks li { border-bottom: 1px solid var(--rule); scroll-margin-top: 30vh; }
.ticks form { margin: 0; }
.tick {
  display: flex; align-items: center; gap: 0.75rem; width: 100%; padding: 0.4rem 0; border: 0; background: none; color: var(--ink);
  font: 1.125rem/1.3 ${SERIF}; text-align: left;
}
.tick::before { content: ""; flex: none; width: 1.4rem; height: 1.4rem; border: 2px solid var(--link); background: var(--paper); }
.tick.ticked { color: var(--faint); text-decoration: line-through; }
.tick.ticked::before { border-width: 0.5rem; border-color: var(--link); }
@media (min-width: 62rem) {
  main:has(> :is(.today, .week)) { max-width: min(72rem, 92vw); }
  .today { display: grid; grid-template-columns: minmax(0, 40rem) minmax(0, 1fr); column-gap: 4rem; align-items: start; }
  main > .week { display: grid; grid-template-columns: repeat(7, minmax(0, 1fr)); border-top: 1px solid var(--rule); }
  main > .week > li { display: block; border-left: 1px solid var(--rule); padding: 0.5rem; min-height: 9rem; }
  main > .week > li:first-child { border-left: 0; padding-left: 0; }
  main > .week ul li { font-size: 1rem; }
}
`;
