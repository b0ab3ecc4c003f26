import type { Day } from "../base/index.ts";
import { type BedSpace, roomIn, type YearCourse } from "../engine/index.ts";
import { newestPlan } from "../garden/model/index.ts";
import { type RoomText, roomText } from "../views/index.ts";

export type { BedSpace } from "../engine/index.ts";
export type { RoomText } from "../views/index.ts";

/** What is in a bed and what still fits, and the same in words. */
export type BedRoom = { readonly space: BedSpace; readonly text: RoomText };

/** The room in a bed, by its key, on a day; null for a bed that no plan has. */
export function bedRoom(year: YearCourse, bed: string, day: Day): BedRoom | null {
  const space = roomIn(year, bed, day);
  return space && { space, text: roomText(space, newestPlan(year.plans).measures) };
}
