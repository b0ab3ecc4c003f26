/** A plan and its pictures: one under the other on a phone, side by side where there is room, the pictures in sight while one scrolls. */
export const PLAN_STYLE = `
.side-by-side form:not(.scripted) { display: block; }
.gutter { padding-bottom: 1.6rem; }
#pictures > p { font-size: 0.9375rem; margin-bottom: 0.4rem; }
#pictures > img + img { margin-top: 1rem; }
[aria-busy="true"] { cursor: progress; }
[data-line] button { padding: 0.2rem 0.6rem; min-height: 2.75rem; }
@media (min-width: 62rem) {
  main:has(.side-by-side) { max-width: min(72rem, 92vw); }
  .side-by-side { display: grid; grid-template-columns: minmax(0, 1fr) 26rem; column-gap: 2.5rem; align-items: start; }
  #pictures { position: sticky; top: 1rem; max-height: calc(100vh - 7rem); overflow: auto; margin-top: 0.5rem; }
}
`;
