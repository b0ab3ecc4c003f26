/** The pages' one stylesheet: a sheet of paper, dark ink on light or light on dark, big enough to read in the sun. */
export const STYLESHEET = `
:root {
  color-scheme: light dark; accent-color: var(--link);
  --paper: #fdfbf5; --ink: #1d1b16; --faint: #5c574b; --rule: #d8d2c2; --link: #1c4f2e;
}
@media (prefers-color-scheme: dark) {
  :root { --paper: #1a1916; --ink: #ece7da; --faint: #a9a291; --rule: #3c3932; --link: #a8d3b0; }
}
body {
  margin: 0 auto; padding: 1.5rem 1.25rem 4rem; max-width: 36rem;
  background: var(--paper); color: var(--ink);
  font: 1.125rem/1.55 Charter, "Bitstream Charter", Georgia, serif;
}
h1 { font-size: 1.6rem; line-height: 1.2; margin: 0 0 1.5rem; }
h2 { font-size: 1.2rem; margin: 2.5rem 0 0.75rem; }
h3, details h2 { font-size: 1.125rem; margin: 1.5rem 0 0; }
p { margin: 0.25rem 0 0.75rem; overflow-wrap: anywhere; }
.text { white-space: pre-line; }
.faint { color: var(--faint); }
a { color: var(--link); text-underline-offset: 0.15em; }
a:focus-visible, summary:focus-visible { outline: 3px solid var(--link); outline-offset: 3px; }
dl { margin: 0; }
dt { font-weight: 600; margin-top: 1rem; }
dd { margin: 0; overflow-wrap: anywhere; }
dd a { display: inline-block; padding: 0.5rem 0; }
code { font: 0.85rem/1.4 ui-monospace, monospace; user-select: all; }
summary { padding: 0.6rem 0; cursor: pointer; }
form { display: flex; flex-wrap: wrap; gap: 0.5rem; margin: 1rem 0; }
form p { flex-basis: 100%; margin: 0; }
button, .do {
  font: inherit; color: var(--link); background: none; border: 2px solid var(--link); border-radius: 0.3rem;
  padding: 0.6rem 1rem; min-height: 3rem; box-sizing: border-box; cursor: pointer;
}
.do { display: inline-block; text-decoration: none; }
:is(button, .do, input, select, textarea, pre):focus-visible { outline: 3px solid var(--link); outline-offset: 3px; }
label { flex-basis: 100%; }
input, select, textarea {
  font: inherit; color: var(--ink); background: var(--paper); border: 2px solid var(--faint); border-radius: 0.3rem;
  padding: 0.6rem 0.75rem; box-sizing: border-box; max-width: 100%;
}
input { width: 8rem; }
input:is([type="checkbox"], [type="radio"]) { width: 1.4rem; height: 1.4rem; vertical-align: -0.25rem; }
input[type="date"] { width: auto; }
.wide, textarea { width: 100%; }
textarea { display: block; }
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
textarea[name="text"], .gutter { font: 0.9rem/1.5 ui-monospace, monospace; }
textarea[name="text"] { overflow: auto; white-space: pre; }
.scripted { display: grid; grid-template-columns: auto 1fr; column-gap: 0.5rem; }
.scripted > :not(.gutter):not(textarea) { grid-column: 1 / -1; justify-self: start; }
.gutter {
  overflow: hidden; height: 0; min-height: 100%; white-space: pre; text-align: right; color: var(--faint);
  padding: 0.7rem 0; box-sizing: border-box;
}
#checked { max-width: 100%; }
#checked ul { list-style: none; padding: 0; }
#checked li { padding: 0.3rem 0; }
#checked button { padding: 0.2rem 0.6rem; min-height: 0; }
pre { overflow-x: auto; font: 0.85rem/1.5 ui-monospace, monospace; }
.qr { display: block; width: 16rem; max-width: 100%; height: auto; margin: 1rem 0; }
.unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
nav { margin-top: 3rem; border-top: 1px solid var(--rule); padding-top: 1rem; }
nav ul { list-style: none; margin: 0; padding: 0; columns: 14rem; }
nav a { display: inline-block; padding: 0.45rem 0; }
h3 a { display: inline-block; padding: 0.2rem 0; }
img { display: block; width: 100%; height: auto; }
a:has(> img) { display: block; }
details { margin-top: 1.25rem; border-top: 1px solid var(--rule); }
@media (min-width: 62rem) {
  .plan { --wide: min(60rem, 92vw); width: var(--wide); margin-left: calc((36rem - var(--wide)) / 2); }
}
@media print {
  nav, form, .do { display: none; }
  body { max-width: none; padding: 0; font-size: 11pt; }
}
`;

/** The pages' icon: a seedling's two leaves over the ground. */
export const ICON_SVG = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><path d="M16 28V15" stroke="#3f7d4e" stroke-width="3"/><path d="M16 16C6 16 4 9 4 5c8 0 12 4 12 11zM16 16c10 0 12-7 12-11-8 0-12 4-12 11z" fill="#3f7d4e"/><path d="M3 28h26" stroke="#6b4f2c" stroke-width="3"/></svg>`;
