import { SANS } from "./type.ts";

/** Buttons, and fields to fill in; of the forms with more of a look of their own, the crops to tick and the plan as text. */
export const FORM_STYLE = `
form { display: flex; flex-wrap: wrap; gap: 0.6rem; margin: 1rem 0; }
form p { flex-basis: 100%; margin: 0; }
button, .do {
  font: 600 1.0625rem/1.2 ${SANS}; color: var(--link); background: var(--paper); border: 2px solid var(--link); border-radius: 0.4rem;
  padding: 0.6rem 1rem; min-height: 3rem; min-width: 3rem; cursor: pointer; touch-action: manipulation;
}
.do { display: inline-flex; align-items: center; text-decoration: none; }
.buttons { display: flex; flex-wrap: wrap; gap: 0.6rem; }
.fill { color: var(--on); background: var(--link); }
.end { color: var(--warn); border-color: var(--warn); background: var(--mild); }
.ask { border: 1.5px solid var(--warn); border-radius: 0.4rem; padding: 0 1rem; margin: 0.75rem 0; color: var(--warn); }
.ask > summary { font: 600 1.0625rem/1.2 ${SANS}; }
.ask > summary::before { border-color: var(--warn); }
.ask[open] { background: var(--mild); padding-bottom: 1rem; }
label { flex-basis: 100%; }
input, select, textarea {
  font: inherit; color: var(--ink); background: var(--paper); border: 2px solid var(--faint); border-radius: 0.4rem;
  padding: 0.6rem 0.75rem; max-width: 100%; min-height: 3rem;
}
input { width: 8rem; }
input:is([type="checkbox"], [type="radio"]) { width: 1.5rem; height: 1.5rem; min-height: 0; vertical-align: -0.3rem; }
input[type="date"] { width: auto; }
[aria-invalid="true"] { border-color: var(--warn); background: var(--mild); }
.wide, textarea { width: 100%; }
textarea { display: block; }
[hidden] { display: none !important; }
.rows { display: block; }
.rows > label { display: block; font-weight: 600; margin-top: 1.25rem; }
fieldset { border: 0; margin: 1.25rem 0 0; padding: 0; }
legend { padding: 0; font-weight: 600; }
fieldset label { display: block; padding: 0.4rem 0; }
.rows > .faint { margin-top: 0.35rem; }
.rows > button { margin-top: 1.5rem; }
.crops { list-style: none; padding: 0; columns: 15rem; }
.crops li { break-inside: avoid; display: flex; flex-wrap: wrap; gap: 0.25rem 0.75rem; align-items: center; padding: 0.35rem 0; }
.crops label { flex: 1 1 8rem; }
.crops select { flex: 0 1 7rem; min-width: 0; padding: 0.35rem; }
textarea[name="text"], .gutter { font: 0.9375rem/1.5 ui-monospace, monospace; }
textarea[name="text"] { overflow: auto; white-space: pre; }
.scripted { display: grid; grid-template-columns: auto 1fr; column-gap: 0.5rem; }
.scripted > :not(.gutter):not(textarea) { grid-column: 1 / -1; justify-self: start; }
.gutter {
  overflow: hidden; height: 0; min-height: 100%; white-space: pre; text-align: right; color: var(--faint);
  padding: 0.7rem 0;
}
#checked { max-width: 100%; }
#checked ul { list-style: none; padding: 0; }
#checked li { padding: 0.3rem 0; }
#checked button { padding: 0.2rem 0.6rem; min-height: 2.75rem; }
`;
