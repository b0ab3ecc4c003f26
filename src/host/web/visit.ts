import type { Schedule } from "../../app/feed.ts";
import type { Day } from "../../base/days/day.ts";
import { dayAt } from "../../base/days/instants.ts";
import { pathOf } from "../links/mac.ts";
import { type Link, writeSegment } from "../links/segment.ts";
import { gardenIn, openGarden, type StoredGarden, zoneOf } from "../store/gardens.ts";
import { nameOf } from "./handing.ts";
import type { Frame, Way } from "./pages/frame.tsx";
import type { Shell } from "./shell.ts";

/** A garden as a page tells it to the holder of a link, whose path is `base`. */
export type Telling = {
  readonly shell: Shell;
  readonly stored: StoredGarden;
  readonly link: Link;
  readonly base: string;
};

/**
 * A visit over a good link to a garden that is there: with the parts of the path of its revoked links, the address that
 * links begin with (`https://garden.example`), what was asked, and a way to go on working behind the answer.
 */
export type Visit = Telling & {
  readonly revoked: readonly string[];
  readonly origin: string;
  readonly request: Request;
  readonly behind: (work: Promise<unknown>) => void;
};

/** What is known of a request before its garden is opened. */
export type Knock = Pick<Visit, "shell" | "link" | "origin" | "request" | "behind">;

/** Opens the garden of a link; null where it was revoked or the garden is not there, which tell nobody apart. */
export async function openVisit(knock: Knock): Promise<Visit | null> {
  const { shell, link } = knock;
  const opened = await openGarden(shell.db, link.garden);
  if (opened === null || opened.revoked.includes(writeSegment(link))) return null;
  if (link.role === "owner" && !opens(opened.stored, link.serial)) return null;
  return { ...knock, ...opened, base: await pathOf(link, shell.key) };
}

/** Whether an owner's link of that serial opens: the one in force, or the one shown to take its place. */
function opens({ owner, ownerNext }: StoredGarden, serial: number): boolean {
  return serial === owner || serial === ownerNext;
}

/** What a garden is told from at an instant. */
export type Now = Pick<Telling, "shell" | "stored">;

/** The garden as it is told at this instant; nothing of it is kept. */
export function tellNow({ shell, stored }: Now): Schedule {
  const garden = gardenIn(stored);
  return shell.core.tell(garden, shell.core.horizonAt(garden, shell.now()), stored.standing);
}

/** Today by the garden's own clock. */
export function todayIn({ shell, stored }: Now): Day {
  return dayAt(shell.now(), zoneOf(stored));
}

const HOUSEHOLD: readonly Way[] = [
  { name: "Frost tonight", path: "frost" },
  { name: "Room in the beds", path: "room" },
  { name: "The season in pictures", path: "pictures" },
  { name: "This month on paper", path: "sheet" },
  { name: "The year looked back on", path: "year" },
  { name: "The diary", path: "diary" },
];

const OWNER: readonly Way[] = [
  { name: "The plan", path: "plan" },
  { name: "Links to hand on", path: "links" },
  { name: "Take it with you, or end it", path: "leaving" },
];

/** What stands at the foot of a page under a link: the garden and wherever else this link leads. */
export function frameOf({ stored, link, base }: Telling): Frame {
  const own = link.role === "owner" ? [] : [{ name: "In your calendar", path: "calendar" }];
  const household = link.role === "reader" ? [] : HOUSEHOLD;
  const owner = link.role === "owner" ? OWNER : [];
  return { garden: nameOf(stored), base, ways: [...own, ...household, ...owner] };
}
