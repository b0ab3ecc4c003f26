import type { Day } from "../../base/days/day.ts";
import type { Anchor, AnchorAct } from "../growth/anchors.ts";
import type { PacketComparison } from "../growth/packet.ts";

/** When a sowing is full grown, whether that is a harvest, and when it goes: full ≤ ends < gone. */
export type FullAndEnd = {
  /** Full height, and first harvest where it is ready. */
  readonly full: Day;
  /** False where its end comes before any harvest. */
  readonly ready: boolean;
  /** From then on it goes, and by then it is gone: what lies between is not certain. */
  readonly ends: Day;
  readonly gone: Day;
};

/** One sowing from the day it goes in to the day the last of it is gone; days in that order. */
export type Life = FullAndEnd & {
  /** 1 for the first sowing. */
  readonly sowing: number;
  /** Sown, planted, or set out where it was bought. */
  readonly starts: Day;
  /** When it left the house or the greenhouse; null where it grows in its place from the start. */
  readonly out: Day | null;
  /** Usually shows above the soil by then. */
  readonly up: Day;
};

/** The day of an act or a stage, and whether the diary, the plan or the schedule gives it. */
export type ActDay = Pick<Anchor, "day" | "from">;

/** A sowing's life with the days of its acts and stages as far as they are known, and when it is to come up. */
export type SowingRecord = Life & {
  readonly acts: Readonly<Partial<Record<AnchorAct, ActDay>>>;
  /** Its usual day and its last likely one; null where it was seen, never comes up, or was raised elsewhere. */
  readonly emergence: { readonly day: Day; readonly late: Day } | null;
};

/** What becomes of a planting, found by its key. */
export type PlantingRecord = {
  readonly planting: string;
  /** Key of the bed it stands in: where the diary has moved it, the new one; null where it stands in none. */
  readonly bed: string | null;
  /** In order; none where nothing is known of the crop's days, or it has none this season. */
  readonly sowings: readonly SowingRecord[];
  /** What it took here beside its packet; null where the diary has no first ripe day that can be believed. */
  readonly packet: PacketComparison | null;
};
