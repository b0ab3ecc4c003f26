/** The pages' one stylesheet: a sheet of paper, dark ink on light or light on dark, big enough to read in the sun. */
export const PAPER = `
:root {
  color-scheme: light dark;
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
h3 { font-size: 1.125rem; margin: 1.5rem 0 0; }
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
button {
  font: inherit; color: var(--link); background: none; border: 2px solid var(--link); border-radius: 0.3rem;
  padding: 0.6rem 1rem; min-height: 3rem; cursor: pointer;
}
button:focus-visible { outline: 3px solid var(--link); outline-offset: 3px; }
label { flex-basis: 100%; }
input {
  font: inherit; color: var(--ink); background: none; border: 2px solid var(--faint); border-radius: 0.3rem;
  padding: 0.6rem 0.75rem; width: 8rem;
}
input:focus-visible { outline: 3px solid var(--link); outline-offset: 2px; }
img { width: 100%; height: auto; }
details { margin-top: 1.25rem; border-top: 1px solid var(--rule); }
`;
