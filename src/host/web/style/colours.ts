/** The paper that pages lie on, by daylight and by lamplight: what a phone draws round them has the same colour. */
export const PAPER = { light: "#fffefb", dark: "#1a1813" } as const;

/**
 * The colours of the pages, by daylight and by lamplight, as properties that every rule uses: `paper` and `ink`; `faint` ink
 * for days and remarks; `rule` for thin lines; `wash` for what stands apart on a ground of its own; `link` the one accent, the
 * red of a cut beet, for what can be pressed; `on` the ink on a button filled with it; `warn` and `mild` the ink and the
 * ground of a warning, which is quiet and never red.
 * Source: house rule; the accent is the pictures' own ink for fruit, darkened. The test beside checks every contrast.
 */
export const COLOURS = `
:root {
  color-scheme: light dark; accent-color: var(--link);
  --paper: ${PAPER.light}; --ink: #1f1b14; --faint: #564e40; --rule: #cdc4b0; --wash: #f4efe3;
  --link: #6e1c3f; --on: #fffefb; --warn: #6b4300; --mild: #fbeccb;
}
@media (prefers-color-scheme: dark) {
  :root {
    --paper: ${PAPER.dark}; --ink: #f4ecdb; --faint: #c0b59f; --rule: #4c4536; --wash: #28241c;
    --link: #f0aec6; --on: #2a0a18; --warn: #f3cd80; --mild: #3b2e12;
  }
}
`;
