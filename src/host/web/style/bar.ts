import { SANS } from "./type.ts";

/**
 * The bar at the foot of every page and sheet: a strip of soil in which the place one is at stands like a label. It brings its
 * own colours, so that it is the same by day, in the dark and under a sheet, and is left out in print. What stands on a page
 * ends above it.
 * Source: house rule; 3.5rem are more than the 44 px a thumb asks for (WCAG 2.2, 2.5.5).
 */
export const BAR_STYLE = `
html { scroll-padding-bottom: 5rem; }
body { padding-bottom: calc(6rem + env(safe-area-inset-bottom)) !important; }
.bar {
  position: fixed; z-index: 2; inset: auto 0 0; padding: 0 0.25rem env(safe-area-inset-bottom);
  background: #2b2419; border-top: 1px solid #6b5d47; text-align: left;
}
.bar ul { display: flex; justify-content: center; list-style: none; margin: 0 auto; padding: 0; max-width: 40rem; }
.bar li { flex: 1 1 0; margin: 0; padding: 0; }
.bar a {
  display: flex; align-items: center; justify-content: center; box-sizing: border-box; min-height: 3.5rem; padding: 0 0.15rem;
  font: 600 16px/1.1 ${SANS}; color: #f7f0e0; text-decoration: none;
}
.bar a[aria-current] { margin: -0.4rem 0.3rem 0.55rem; color: #2b2419; background: #f7f0e0; border-radius: 0.25rem 0.25rem 0.9rem 0.9rem; }
.bar a:focus-visible { outline: 3px solid #f7f0e0; outline-offset: -5px; }
.bar a[aria-current]:focus-visible { outline-color: #2b2419; }
@media print {
  body { padding-bottom: 0 !important; }
  .bar { display: none; }
}
`;
