import { SANS, SERIF } from "./type.ts";

/**
 * How every page is set: a column of 40rem of type in a scale of five (15, 18, 20, 24 and 34 px), a double rule under the
 * head as on a sheet, and forms and buttons for a thumb. Classes for any page:
 * - `lead` the one sentence under a heading; `faint` what may be overlooked; `text` text whose lines stay lines;
 * - `fill` on the one button of a form that is wanted most, `do` on a link that looks like a button, `buttons` round several, `end` on a button that
 *   takes something away;
 * - `note` what was just done or has to be known, `warning` the same where it should be seen first;
 * - `ask` a fold that asks once more before something is taken away (see `AskFirst`);
 * - `list` places or things one under another with a thin line between; `entries` days with what was said on each; `places` a list of names, each with its lines; `facts` a list of short facts on one line; `who` whose a job is;
 * - `desk` a part that may be as wide as a desk's screen.
 */
export const PAGE_STYLE = `
*, ::before, ::after { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; }
body {
  margin: 0; padding: 1.25rem 1.25rem 0; background: var(--paper); color: var(--ink);
  font: 1.125rem/1.5 ${SERIF}; font-variant-numeric: lining-nums; overflow-wrap: break-word;
}
main { max-width: 40rem; margin: 0 auto; }
.top { border-bottom: 3px solid var(--ink); padding-bottom: 0.6rem; margin-bottom: 1.25rem; }
.top p { margin: 0; font: 600 0.9375rem/1.4 ${SANS}; color: var(--faint); }
h1 { font-size: 2.125rem; line-height: 1.1; font-weight: 600; letter-spacing: -0.01em; margin: 0; text-wrap: balance; }
.top.own h1 { font: 600 0.9375rem/1.4 ${SANS}; letter-spacing: 0; color: var(--faint); }
.top.own p { font: 600 2.125rem/1.1 ${SERIF}; letter-spacing: -0.01em; color: var(--ink); }
h2 { font-size: 1.5rem; line-height: 1.2; font-weight: 600; margin: 2.5rem 0 0.75rem; padding-bottom: 0.25rem; border-bottom: 1.5px solid var(--ink); }
h3, details h2 { font-size: 1.25rem; line-height: 1.25; font-weight: 600; margin: 1.5rem 0 0.25rem; padding: 0; border: 0; }
p { margin: 0 0 0.75rem; }
ul, ol { margin: 0 0 0.75rem; padding-left: 1.25rem; }
.lead { font-size: 1.25rem; line-height: 1.4; }
.text { white-space: pre-line; }
.faint { color: var(--faint); }
small, .small { font-size: 0.9375rem; line-height: 1.4; }
a { color: var(--link); text-underline-offset: 0.15em; text-decoration-thickness: 1px; }
p > a, li > a { padding: 0.3rem 0; }
:is(a, button, summary, .do, input, select, textarea, pre):focus-visible { outline: 3px solid var(--link); outline-offset: 3px; }
dl { margin: 0 0 0.75rem; }
dt { font-weight: 600; margin-top: 1rem; }
dd { margin: 0; overflow-wrap: anywhere; }
dd a { display: inline-block; padding: 0.5rem 0; }
code { font: 0.9375rem/1.4 ui-monospace, monospace; user-select: all; overflow-wrap: anywhere; }
pre { overflow-x: auto; font: 0.9375rem/1.5 ui-monospace, monospace; }
summary { display: flex; align-items: center; gap: 0.75rem; min-height: 3rem; padding: 0.4rem 0; cursor: pointer; list-style: none; }
summary::-webkit-details-marker { display: none; }
summary::before {
  content: ""; flex: none; width: 0.5em; height: 0.5em; border: solid var(--link); border-width: 0 2px 2px 0;
  transform: translateX(-0.1em) rotate(-45deg);
}
[open] > summary::before { transform: translateY(-0.15em) rotate(45deg); }
.list { list-style: none; padding: 0; }
.list > li { border-bottom: 1px solid var(--rule); padding: 0.6rem 0; }
.list > li > a { display: inline-block; font-size: 1.25rem; font-weight: 600; padding: 0.4rem 0; }
.list > li > p { margin: 0; }
.places > div { border-top: 1px solid var(--rule); padding: 0.5rem 0; }
.places dt { margin: 0; }
.entries dt { border-bottom: 1.5px solid var(--ink); margin-top: 1.5rem; }
.entries dd { border-bottom: 1px solid var(--rule); padding: 0.4rem 0; }
.entries p { margin: 0; }
.facts { font: 400 0.9375rem/1.4 ${SANS}; color: var(--faint); margin: 0; }
.who { font: 600 0.9375rem/1.3 ${SANS}; border: 1.5px solid currentColor; border-radius: 1rem; padding: 0.05rem 0.6rem; white-space: nowrap; }
.note { border: 1.5px solid var(--rule); background: var(--wash); border-radius: 0.3rem; padding: 0.75rem 1rem; margin: 0 0 1rem; }
.warning { border: 1.5px solid var(--warn); background: var(--mild); color: var(--warn); border-radius: 0.3rem; padding: 0.75rem 1rem; margin: 0 0 1rem; }
:is(.note, .warning) > :last-child { margin-bottom: 0; }
.warning a { color: inherit; }
img { display: block; width: 100%; height: auto; }
a:has(> img) { display: block; }
.qr { display: block; width: 16rem; max-width: 100%; height: auto; margin: 1rem 0; }
.unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
@media (min-width: 40rem) { .places > div { display: grid; grid-template-columns: 10rem minmax(0, 1fr); } }
@media (min-width: 62rem) {
  body { padding-top: 2rem; }
  .desk, .plan { --wide: min(72rem, 92vw); width: var(--wide); margin-left: calc((40rem - var(--wide)) / 2); }
}
@media print {
  form:not(.ticks form), .do { display: none !important; }
  details::details-content { content-visibility: visible; block-size: auto; }
  main { max-width: none; }
  body { padding: 0; font-size: 11pt; }
}
`;
