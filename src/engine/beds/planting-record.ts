import type { Day } from "../../base/index.ts";
import type { PlantCoverName } from "../../crops/index.ts";
import type { Anchor, AnchorAct } from "../growth/anchors.ts";
import type { PacketComparison } from "../growth/packet.ts";

/** When a sowing is full grown, whether that is a harvest, and when it goes: full ≤ ends < gone. */
export type FullAndEnd = {
  /** Full height, and first harvest where it is ready. */
  readonly full: Day;
  /** False where its end comes before any harvest. */
  readonly ready: boolean;
  /** It begins to go on `ends` and is gone by `gone`; what is between is not certain. */
  readonly ends: Day;
  readonly gone: Day;
};

/** One sowing from the day it goes in to the day the last of it is gone; days in that order. */
export type Life = FullAndEnd & {
  /** 1 for the first sowing. */
  readonly sowing: number;
  /** Sown, planted, or set out where it was bought. */
  readonly starts: Day;
  /** When it is set out; null where it grows in its place from the start. */
  readonly out: Day | null;
  /** The day by which it is usually up. */
  readonly up: Day;
};

/** The day of an act or a stage, and whether the diary, the plan or the schedule gives it. */
export type ActDay = Pick<Anchor, "day" | "from">;

/** A sowing's life with the days of its acts and stages as far as they are known, and when it is to come up. */
export type SowingRecord = Life & {
  /** The day from which it stands in its bed; null where it is raised and never set out. */
  readonly placed: Day | null;
  readonly acts: Readonly<Partial<Record<AnchorAct, ActDay>>>;
  /** The usual day and the last likely one; null where it was seen, never comes up, or was raised elsewhere. */
  readonly emergence: { readonly day: Day; readonly late: Day } | null;
};

/**
 * A scheduled step of hardening off that takes a planting's trays out, by day or for the night too: for that day alone, or
 * `stays`, from then on.
 */
export type HardeningStep = {
  readonly day: Day;
  readonly out: "out by day" | "out overnight";
  readonly stays: boolean;
};

/** A cover over a planting from the day it goes on to the day it comes off; `to` null where no day is known. */
export type CoverSpan = {
  readonly thing: PlantCoverName;
  readonly from: Day;
  readonly to: Day | null;
};

/** How near plants stand to each other in the row, and rows to each other, once grown [cm]. */
export type Spacing = { readonly apartCm: number; readonly rowCm: number };

/** The course of a planting, by its key. */
export type PlantingRecord = {
  readonly planting: string;
  /** As a sentence says it: `beets`, `second garlic`. */
  readonly name: string;
  /** Null where the facts have none. */
  readonly spacing: Spacing | null;
  /** Key of its bed, the new one where the diary has moved it; null where it has none. */
  readonly bed: string | null;
  /** In order; none where nothing is known of the crop's days, or it has none this season. */
  readonly sowings: readonly SowingRecord[];
  /** What lies over it, and when, as scheduled or done. */
  readonly covers: readonly CoverSpan[];
  /** In the order of its tasks; none where it is not raised in trays. */
  readonly hardening: readonly HardeningStep[];
  /** Its days in this garden compared with its packet's; null where the diary has no plausible first ripe day. */
  readonly packet: PacketComparison | null;
};
