import type { Source } from "./facts.ts";

/** Days from sowing to emergence at one soil temperature: a number, or little or no germination, or never tested. */
export type EmergenceDays = number | "none" | "untested";

/** The soil temperatures [°F] of the table's columns, rising. */
export const COLUMNS_F = [32, 41, 50, 59, 68, 77, 86, 95, 104] as const;

/** The source of every row of the table. */
export const EMERGENCE_SOURCE: Source = {
  kind: "published",
  cite: "Harrington and Minges, Vegetable Seed Germination, University of California, 1954; reprinted in UC Santa Cruz, Teaching Organic Farming and Gardening, Unit 1.3, Appendix 4",
};

/**
 * Days from sowing half an inch deep to emergence, one row a crop, one column a constant soil temperature in
 * the order of COLUMNS_F.
 * Source: EMERGENCE_SOURCE.
 */
export const EMERGENCE_DAYS: Readonly<Record<string, readonly EmergenceDays[]>> = {
  asparagus: ["none", "none", 53, 24, 15, 10, 12, 20, 28],
  bean_lima: ["untested", "untested", "none", 31, 18, 7, 7, "none", "untested"],
  bean_snap: ["none", "none", "none", 16, 11, 8, 6, 6, "none"],
  beet: ["untested", 42, 17, 10, 6, 5, 5, 5, "untested"],
  cabbage: ["untested", "untested", 15, 9, 6, 5, 4, "untested", "untested"],
  cauliflower: ["untested", "untested", 20, 10, 6, 5, 5, "untested", "untested"],
  celery: ["none", 41, 16, 12, 7, "none", "none", "none", "untested"],
  corn_sweet: ["none", "none", 22, 12, 7, 4, 4, 3, "none"],
  cucumber: ["none", "none", "none", 13, 6, 4, 3, 3, "untested"],
  eggplant: ["untested", "untested", "untested", "untested", 13, 8, 5, "untested", "untested"],
  lettuce: [49, 15, 7, 4, 3, 2, 3, "none", "none"],
  muskmelon: ["untested", "untested", "untested", "untested", 8, 4, 3, "untested", "untested"],
  parsley: ["untested", "untested", 29, 17, 14, 13, 12, "untested", "untested"],
  parsnip: [172, 57, 27, 19, 14, 15, 32, "none", "none"],
  pea: ["untested", 36, 14, 9, 8, 6, 6, "untested", "untested"],
  radish: ["none", 29, 11, 6, 4, 4, 3, "untested", "untested"],
  tomato: ["none", "none", 43, 14, 8, 6, 6, 9, "none"],
  watermelon: ["untested", "none", "untested", "untested", 12, 5, 4, 3, "untested"],
};

/**
 * Rows of the same table that the reprint leaves out, in the order of COLUMNS_F. Each has days just where the table of
 * normal seedlings of the same experiments has some come up, and none where it has none.
 * Source: from memory, unchecked: Harrington and Minges, 1954, as in Knott's Handbook for Vegetable Growers.
 */
export const REMEMBERED_DAYS: Readonly<Record<string, readonly EmergenceDays[]>> = {
  carrot: ["none", 51, 17, 10, 7, 6, 6, 9, "none"],
  okra: ["none", "none", "none", 27, 17, 13, 7, 6, 7],
  onion: [136, 31, 13, 7, 5, 4, 4, 13, "none"],
  pepper: ["none", "none", "none", 25, 13, 8, 8, 9, "none"],
  spinach: [63, 23, 12, 7, 6, 5, 6, "none", "none"],
  turnip: ["none", "none", 5, 3, 2, 1, 1, 1, 3],
};

/** Every row, published and remembered, by its name. */
export const EMERGENCE_ROWS: typeof EMERGENCE_DAYS = { ...EMERGENCE_DAYS, ...REMEMBERED_DAYS };
