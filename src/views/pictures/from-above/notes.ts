import { type Day, type Measures, plus, sayDay, sayWeekday } from "../../../base/index.ts";
import type { FreeSpace, FrostNeed, FrostTonight } from "../../../engine/index.ts";
import { nightBedSection } from "../../events/frost-tonight.ts";
import { freeLines } from "../../events/room.ts";
import type { BedNote, BedNotes, Mark, StandingYears } from "./sketch.ts";

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

/** A job of a day: its task's id, and what is to be done, `Thin beets`. */
export type JobInBed = { readonly task: string; readonly title: string };

/** Jobs where they are to be done; what is of the garden and of no bed is left out. */
export function jobNotes(
  jobs: readonly JobInBed[],
  { year, day }: { readonly year: StandingYears; readonly day: Day },
): BedNotes {
  const beds = bedsOfPlantings(year);
  const notes = new Map<string | null, { lines: string[]; marks: Mark[] }>();
  for (const { task, title } of jobs) {
    const place = placeOf(task, beds);
    if (place === null) continue;
    const note = notes.get(place.bed) ?? { lines: [], marks: [] };
    notes.set(place.bed, note);
    note.lines.push(`${title}.`);
    if (place.planting !== null) note.marks.push({ planting: place.planting, as: "do" });
  }
  const all = [...notes].map(([bed, note]) => ({ bed, ...note, freeCm: null }));
  return { text: `What is to be done on ${sayDay(day)}.`, beds: all, alone: true };
}

function bedsOfPlantings({ seasons }: StandingYears): ReadonlyMap<string, string | null> {
  const records = seasons.flatMap(({ plantings }) => plantings);
  return new Map(records.map(({ planting, bed }) => [planting, bed]));
}

type JobPlace = { readonly bed: string | null; readonly planting: string | null };

/** A task's id begins with its planting's key, or says which bed it is of; null for one of the whole garden. */
function placeOf(task: string, beds: ReadonlyMap<string, string | null>): JobPlace | null {
  const [year = "", name = "", own = ""] = task.split("/");
  const planting = `${year}/${name}`;
  const bed = beds.get(planting);
  if (bed !== undefined) return { bed, planting };
  return name === "bed" ? { bed: own, planting: null } : null;
}
