import { type Day, dayAt } from "../../base/index.ts";
import { pathOf } from "../links/mac.ts";
import { type Link, writeSegment } from "../links/segment.ts";
import { buildRecord } from "../store/build.ts";
import { loadGarden, type StoredGarden, zoneOf } from "../store/gardens.ts";
import { revokedLinks } from "../store/links.ts";
import { opensAsOwner } from "../store/owners.ts";
import type { GardenContext } from "./garden-context.ts";
import { gardenNameOf } from "./link-offers.ts";
import { type Frame, MORE, type NavLink } from "./pages/frame.tsx";

/** A garden as a page tells it to the holder of a link, whose path is `base`. */
export type GardenView = {
  readonly context: GardenContext;
  readonly stored: StoredGarden;
  readonly link: Link;
  readonly base: string;
};

/**
 * A request over a good link to a garden that is there: with the parts of the path of its revoked links, the address that
 * links begin with (`https://garden.example`), what was asked, and the zone that its client seems to be in; null: not known.
 */
export type GardenRequest = GardenView & {
  readonly revoked: readonly string[];
  readonly origin: string;
  readonly request: Request;
  readonly zone: string | null;
};

/** What is known of a request before its garden is opened. */
export type LinkRequest = Pick<GardenRequest, "context" | "link" | "origin" | "request" | "zone">;

/** Opens the garden of a link; null where it was revoked or the garden is not there, which look alike from outside. */
export async function openGarden(linkRequest: LinkRequest): Promise<GardenRequest | null> {
  const { context, link } = linkRequest;
  const stored = loadGarden(context.sql);
  const revoked = revokedLinks(context.sql);
  if (stored === null || revoked.includes(writeSegment(link))) return null;
  if (link.role === "owner" && !opensAsOwner(context.sql, link.serial)) return null;
  return { ...linkRequest, stored, revoked, base: await pathOf(link, context.key) };
}

/** Sees to it that there is a year to show, built now where there never was one. Throws where that can't be done. */
export async function withYear({ context }: GardenView): Promise<void> {
  if (buildRecord(context.sql).number > 0) return;
  if (!(await context.buildNow())) throw new Error("there is no year to show");
}

/** Today by the garden's own clock. */
export function todayIn({ context, stored }: Pick<GardenView, "context" | "stored">): Day {
  return dayAt(context.now(), zoneOf(stored));
}

const TODAY: NavLink = { name: "Today", path: "" };

const HOUSEHOLD: readonly NavLink[] = [
  TODAY,
  { name: "Beds", path: "room" },
  { name: "Frost", path: "frost" },
  { name: "Diary", path: "diary" },
  { name: "More", path: MORE },
];

const READER: readonly NavLink[] = [TODAY, { name: "In your calendar", path: "calendar" }];

/** The bar at the foot of a page under a link. */
export function frameOf({ stored, link, base }: GardenView): Frame {
  return { garden: gardenNameOf(stored), base, ways: link.role === "reader" ? READER : HOUSEHOLD };
}
