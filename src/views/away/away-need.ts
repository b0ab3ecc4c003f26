import type { Day } from "../../base/index.ts";
import type { BedWater } from "../../engine/index.ts";

/**
 * The water a bed needs in the driest week of the days [litres]; null where its size or its need is not known. `bed`
 * null: plants in no bed.
 */
export type AwayWaterNeed = {
  readonly kind: "water";
  readonly bed: string | null;
  readonly litresAWeek: number | null;
  /** How its drip lines give that; null where it has none. */
  readonly runs: BedWater["runs"];
};

/** Raised plants that are not in their bed yet, as titles call them. */
export type TrayCareNeed = {
  readonly kind: "trays";
  readonly plants: readonly string[];
  /** Nights colder than this are too cold for the tenderest of them [°C], where their days outdoors have begun; null: still indoors. */
  readonly hardeningFloorC: number | null;
};

/** A greenhouse with something in it: air on sunny days. */
export type VentNeed = { readonly kind: "vents" };

/** A planting that bears in these days, from its first picking on. `task`: the id of its first harvest. */
export type PickingNeed = {
  readonly kind: "pick";
  readonly task: string;
  readonly bed: string | null;
  readonly from: Day;
  /**
   * What happens if it is left: it spoils or stops bearing within days; it is worth picking; or its leaves just grow
   * on.
   */
  readonly left: "grows out" | "ripens" | "stands";
};

/** Seed that is likely to come up on `day`, one of these; nothing by `late`: look. */
export type EmergenceNeed = {
  readonly kind: "up";
  readonly plants: string;
  readonly bed: string | null;
  readonly day: Day;
  readonly late: Day;
  readonly board: boolean;
};

/** What a garden needs day by day, beside its tasks. */
export type AwayNeed = AwayWaterNeed | TrayCareNeed | VentNeed | PickingNeed | EmergenceNeed;
