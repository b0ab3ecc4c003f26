import type { Day } from "../base/days/day.ts";
import { type BedSpace, roomIn } from "../engine/beds/room.ts";
import type { Year } from "../engine/year.ts";
import { newestPlan } from "../garden/model/garden.ts";
import { type RoomText, roomText } from "../views/events/room.ts";

export type { BedSpace } from "../engine/beds/room.ts";
export type { RoomText } from "../views/events/room.ts";

/** What is in a bed and what still fits, and the same in words. */
export type BedRoom = { readonly space: BedSpace; readonly text: RoomText };

/** The room in a bed, by its key, on a day; null for a bed that no plan has. */
export function bedRoom(year: Year, bed: string, day: Day): BedRoom | null {
  const space = roomIn(year, bed, day);
  return space && { space, text: roomText(space, newestPlan(year.plans).measures) };
}
