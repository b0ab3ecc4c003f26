import { type Care, houseRule } from "../../crops/index.ts";

/** What is looked for under glass, in place of what a crop suffers from in the open. Source: common practice. */
export const GLASS_LOOK = {
  how: "Look under the leaves. Rinse greenfly off with water, hang up yellow sticky cards, and wet the floor at noon in hot weather.",
  sign: "Pale specks, fine webs, sticky leaves, or small white flies when you brush past.",
  why: "Whitefly and spider mites breed fast in warm, dry air; caught early, they are few.",
  caution: "Sprays: read the label first, and follow it.",
  needs: ["yellow sticky cards"],
} as const satisfies Partial<Care>;

/** Growing tips under glass are taken out by the end of August where days are short by November: fruit takes two months then. Source: common practice. */
export const GLASS_STOP = {
  days: houseRule([-75, -63], "two months and more before the days are too short to ripen"),
} as const satisfies Partial<Care>;
