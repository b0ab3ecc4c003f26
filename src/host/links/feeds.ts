import type { FeedChoice } from "../../app/records.ts";
import { decodePathPart, encodePathPart, type Link, type Role } from "./segment.ts";

/** A feed under a link: `path` is what follows the link, `quiet/bed/south-bed.ics`. */
export type Feed = { readonly path: string; readonly choice: FeedChoice };

/** Roles that read a garden's calendars; an admin and an invitation have none. */
const READING: readonly Role[] = ["owner", "helper", "reader"];

/**
 * The feed that the rest of a path names under a link, or null where that link has no such feed. A helper's
 * `sessions.ics` is their own, an owner's the household's. A reader has the tasks set and the warnings alone.
 * Whether the garden has the bed is for the plans to say.
 */
export function readFeed(link: Link, path: string): Feed | null {
  const found = /^(quiet\/)?(?:(sessions|tasks|household|warnings)|bed\/([^/]+))\.ics$/.exec(path);
  if (!found || !READING.includes(link.role)) return null;
  const bed = found[3] === undefined ? null : decodePathPart(found[3]);
  const named = found[2] ?? "bed";
  if (named === "bed" && bed === null) return null;
  if (link.role === "reader" && (named === "sessions" || named === "household")) return null;
  return { path, choice: choiceOf(link, named, { bed, quiet: found[1] !== undefined }) };
}

function choiceOf(
  link: Link,
  named: string,
  rest: { readonly bed: string | null; readonly quiet: boolean },
): FeedChoice {
  const own = named === "sessions" && link.person !== null;
  return {
    of: own && link.person !== null ? { person: link.person } : "household",
    kind: kindOf(named),
    ...rest,
    reader: link.role === "reader",
  };
}

function kindOf(named: string): FeedChoice["kind"] {
  if (named === "warnings") return "warnings";
  return named === "sessions" || named === "household" ? "sessions" : "tasks";
}

/** A bed's feed, `bed/south-bed.ics`. */
export function bedFeed(bed: string): string {
  return `bed/${encodePathPart(bed)}.ics`;
}

/** Where an event's page stands under a link: `on/2027/beet/thin/1`. */
export function eventPath(eventKey: string): string {
  return `on/${eventKey.split("/").map(encodePathPart).join("/")}`;
}

/** The event's key in such a path; null where it is not the one spelling of a key. */
export function readEventPath(path: string): string | null {
  if (!path.startsWith("on/")) return null;
  const parts = path.slice("on/".length).split("/").map(decodePathPart);
  return parts.some((part) => part === null) ? null : parts.join("/");
}
