import { isoDay, QUARRY, tellOf } from "../gardens.ts";

/** The canonical garden with an absence, built in spring, and the day it is looked at on. */
export const SPRING = tellOf(
  QUARRY.replace("beds:\n", "away:\n  - everybody, 1 Aug to 8 Aug\n  - Oda, 1 to 9 Sep\nbeds:\n"),
  { on: "2027-05-08" },
);

/** The day of it. */
export const TODAY = isoDay("2027-05-08");
