import { type Measures, plus, sayWeekday } from "../../../base/index.ts";
import type { FreeSpace, FrostNeed, FrostTonight } from "../../../engine/index.ts";
import { nightBedSection } from "../../events/frost-tonight.ts";
import { freeLines } from "../../events/room.ts";
import type { BedNote, BedNotes, Mark } from "./sketch.ts";

/** A cold night bed by bed: what to cover, bury or pick, and what to leave alone. */
export function frostNotes(report: FrostTonight): BedNotes {
  return {
    text: `The night to ${sayWeekday(plus(report.day, 1))}.`,
    beds: report.beds.map((bed) => ({
      bed: bed.bed,
      lines: nightBedSection(bed, false).lines,
      marks: bed.plants.flatMap(({ planting, need }) => markFor(planting, need)),
      freeCm: null,
    })),
    alone: true,
  };
}

function markFor(planting: string, { kind }: FrostNeed): readonly Mark[] {
  if (kind === "leave") return [];
  return [{ planting, as: kind === "cover" ? "cover" : "do" }];
}

/** What is free in each bed, by its key, and from when. */
export function roomNotes(free: ReadonlyMap<string, FreeSpace>, measures: Measures): BedNotes {
  const beds = [...free].map(
    ([bed, space]): BedNote => ({
      bed,
      lines: freeLines(space, measures),
      marks: [],
      freeCm: space.freeCm,
    }),
  );
  return { text: "What stands, what is free, and from when.", beds, alone: false };
}
