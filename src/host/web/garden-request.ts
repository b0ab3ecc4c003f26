import type { Schedule } from "../../app/build.ts";
import type { Day } from "../../base/days/day.ts";
import { dayAt } from "../../base/days/instants.ts";
import { pathOf } from "../links/mac.ts";
import { type Link, writeSegment } from "../links/segment.ts";
import { gardenIn, loadStoredGarden, type StoredGarden, zoneOf } from "../store/gardens.ts";
import type { AppContext } from "./app-context.ts";
import { gardenNameOf } from "./link-offers.ts";
import type { Frame, NavLink } from "./pages/frame.tsx";

/** A garden as a page tells it to the holder of a link, whose path is `base`. */
export type GardenView = {
  readonly context: AppContext;
  readonly stored: StoredGarden;
  readonly link: Link;
  readonly base: string;
};

/**
 * A visit over a good link to a garden that is there: with the parts of the path of its revoked links, the address that
 * links begin with (`https://garden.example`), what was asked, and a way to go on working behind the answer.
 */
export type GardenRequest = GardenView & {
  readonly revoked: readonly string[];
  readonly origin: string;
  readonly request: Request;
  readonly behind: (work: Promise<unknown>) => void;
};

/** What is known of a request before its garden is opened. */
export type LinkRequest = Pick<GardenRequest, "context" | "link" | "origin" | "request" | "behind">;

/** Opens the garden of a link; null where it was revoked or the garden is not there, which tell nobody apart. */
export async function openGarden(linkRequest: LinkRequest): Promise<GardenRequest | null> {
  const { context, link } = linkRequest;
  const opened = await loadStoredGarden(context.db, link.garden);
  if (opened === null || opened.revoked.includes(writeSegment(link))) return null;
  if (link.role === "owner" && !opens(opened.stored, link.serial)) return null;
  return { ...linkRequest, ...opened, base: await pathOf(link, context.key) };
}

/** Whether an owner's link of that serial opens: the one in force, or the one shown to take its place. */
function opens({ owner, ownerNext }: StoredGarden, serial: number): boolean {
  return serial === owner || serial === ownerNext;
}

/** What a garden is told from at an instant. */
export type Now = Pick<GardenView, "context" | "stored">;

/** The garden as it is told at this instant; nothing of it is kept. */
export function buildScheduleNow({ context, stored }: Now): Schedule {
  const garden = gardenIn(stored);
  return context.core.tell(garden, context.core.horizonAt(garden, context.now()), stored.standing);
}

/** Today by the garden's own clock. */
export function todayIn({ context, stored }: Now): Day {
  return dayAt(context.now(), zoneOf(stored));
}

const HOUSEHOLD: readonly NavLink[] = [
  { name: "Frost tonight", path: "frost" },
  { name: "Room in the beds", path: "room" },
  { name: "The season in pictures", path: "pictures" },
  { name: "This month on paper", path: "sheet" },
  { name: "The year looked back on", path: "year" },
  { name: "The diary", path: "diary" },
];

const OWNER: readonly NavLink[] = [
  { name: "The plan", path: "plan" },
  { name: "Links to hand on", path: "links" },
  { name: "Take it with you, or end it", path: "leaving" },
];

/** What stands at the foot of a page under a link: the garden and wherever else this link leads. */
export function frameOf({ stored, link, base }: GardenView): Frame {
  const own = link.role === "owner" ? [] : [{ name: "In your calendar", path: "calendar" }];
  const household = link.role === "reader" ? [] : HOUSEHOLD;
  const owner = link.role === "owner" ? OWNER : [];
  return { garden: gardenNameOf(stored), base, ways: [...own, ...household, ...owner] };
}
