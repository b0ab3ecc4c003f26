import { type Day, sayDay } from "../../../base/index.ts";
import type { BedNotes, Mark, StandingYears } from "./sketch.ts";

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
