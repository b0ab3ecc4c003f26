import { PICTURE_STYLE } from "../../../app/records.ts";

/** Drawings that stand in a page: the pictures' own style, and how wide they are at the most, so that their words stay the page's. */
export const PICTURES_STYLE = `
${PICTURE_STYLE}
.beds { margin: 1rem 0 1.5rem; max-width: 30rem; }
.beds figcaption { font-weight: 600; margin-bottom: 0.5rem; }
.beds svg { display: block; width: 100%; height: auto; overflow: visible; }
.beds dl { margin-top: 0; }
.beds dt { margin-top: 0.6rem; }
`;
