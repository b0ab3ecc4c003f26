import { SANS } from "./type.ts";

/**
 * What the pages that make a garden need beside the style of all forms: rows set apart, fields that hang on a choice and need no
 * script to follow it, and errors at their fields.
 */
export const FIRST_FORM_STYLE = `
.row { border-top: 1.5px solid var(--rule); padding: 0.25rem 0 0; margin: 1.75rem 0 0; }
.row > legend { font-size: 1.25rem; padding-right: 0.6rem; }
.rows :is(.when, .row, .pair) label:not(:has(input)) { display: block; font-weight: 600; margin-top: 0.9rem; padding: 0; }
.rows label:has(input) { display: flex; gap: 0.6rem; padding: 0.4rem 0; }
.rows label input { flex: none; }
.rows select { width: 100%; }
.rows .faint { margin-top: 0.35rem; }
.pair { display: grid; grid-template-columns: 1fr 1fr; column-gap: 0.9rem; align-items: start; }
form:has([name="way"][value="dates"]:checked) .when:not(.when-dates) { display: none; }
form:has([name="way"][value="place"]:checked) .when { display: none; }
form:has([name="way"][value="numbers"]:checked) .when:not(.when-numbers) { display: none; }
.row:has(option:is([value="bags"], [value="pots"]):checked) .when-sides { display: none; }
.row:not(:has(option:is([value="bags"], [value="pots"]):checked)) .when-many { display: none; }
.wrong { color: var(--warn); font-weight: 600; margin: 0.35rem 0 0; }
.errors h2 { margin: 0 0 0.5rem; border: 0; padding: 0; }
.errors ul { list-style: none; padding: 0; }
.errors a { display: inline-block; padding: 0.35rem 0; }
.rows .crops { columns: 9rem; }
.onward { display: flex; flex-wrap: wrap; gap: 0.6rem; margin-top: 2rem; align-items: center; }
.said > div { display: grid; grid-template-columns: 1fr auto; gap: 0 1rem; align-items: start; border-bottom: 1px solid var(--rule); padding: 0.6rem 0; }
.said dt { margin: 0; grid-column: 1 / -1; }
.said ul { margin: 0; padding: 0; list-style: none; }
.said .onward { margin: 0; justify-content: end; }
.month { width: 100%; border-collapse: collapse; margin: 0 0 0.75rem; }
.month :is(th, td) { padding: 0.4rem 0.75rem 0.4rem 0; border-bottom: 1px solid var(--rule); vertical-align: top; text-align: left; }
.month th { font: 400 0.9375rem/1.6 ${SANS}; color: var(--faint); white-space: nowrap; width: 6.5rem; }
`;
