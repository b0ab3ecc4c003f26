import { bedFeed } from "../links/feeds.ts";
import { pathOf } from "../links/mac.ts";
import { type Link, type Role, writeSegment } from "../links/segment.ts";
import type { StoredGarden } from "../store/gardens.ts";
import type { Named } from "../store/plans.ts";
import type { Subscription } from "./pages/calendar.tsx";

/**
 * What links of a garden are made from: its record, the parts of the path of its revoked links, and the address
 * they begin with (`https://garden.example`).
 */
export type LinkSource = {
  readonly key: CryptoKey;
  readonly stored: StoredGarden;
  readonly revoked: readonly string[];
  readonly origin: string;
};

/** What a garden is called in its newest plan. */
export function gardenNameOf({ plans }: StoredGarden): string {
  return plans.at(-1)?.summary.name || "Garden";
}

/** Everybody in any year's plan once, by the newest name. */
export function householdOf({ plans }: Pick<StoredGarden, "plans">): readonly Named[] {
  const all = plans.flatMap(({ summary }) => summary.people);
  return [...new Map(all.map((person) => [person.key, person])).values()];
}

/** Somebody by the newest name that a plan has for their key; null: whoever uses a link that is nobody's own. */
export function sayPerson(garden: StoredGarden, person: string | null): string {
  if (person === null) return "a link of the household";
  return householdOf(garden).find(({ key }) => key === person)?.name ?? person;
}

/** Every bed of any year's plan once, by the newest name, in the order they were first written. */
export function bedsOf({ plans }: StoredGarden): readonly Named[] {
  const all = plans.flatMap(({ summary }) => summary.beds);
  return [...new Map(all.map((bed) => [bed.key, bed])).values()];
}

/** The link in use: an owner's by the garden's record, any other the first of its serials that was not revoked. */
function current({ stored, revoked }: LinkSource, role: Role, person: string | null): Link {
  if (role === "owner") return { garden: stored.id, role, person, serial: stored.owner };
  let link: Link = { garden: stored.id, role, person, serial: 1 };
  while (revoked.includes(writeSegment(link))) link = { ...link, serial: link.serial + 1 };
  return link;
}

/** Whom the deployment hands which link, as paths: the owner's page, the household's calendar, each person's own. */
export async function linksInUse(linkSource: LinkSource) {
  const { key, stored } = linkSource;
  const path = (role: Role, person: string | null) =>
    pathOf(current(linkSource, role, person), key);
  const people = await Promise.all(
    householdOf(stored).map(async (person) => {
      const own = await path("helper", person.key);
      return { key: person.key, name: person.name, path: `${own}sessions.ics` };
    }),
  );
  const household = `${await path("helper", null)}household.ics`;
  const owner = await path("owner", null);
  return { garden: stored.id, name: gardenNameOf(stored), owner, household, people };
}

/** A link that an owner may hand on: whose it is, and itself. */
export type HandoutLink = { readonly name: string; readonly link: Link };

/** The links in use that an owner hands on: each person's own, the household's, and one for somebody outside it. Never an owner's. */
export function handoutLinks(linkSource: LinkSource): readonly HandoutLink[] {
  const people = householdOf(linkSource.stored).map((person) => ({
    name: person.name,
    link: current(linkSource, "helper", person.key),
  }));
  return [
    ...people,
    { name: "The household", link: current(linkSource, "helper", null) },
    { name: "A neighbour: jobs, without names", link: current(linkSource, "reader", null) },
  ];
}

/** The links in use of those whom no plan names any more, by their keys; each still opens till it is revoked. */
export function linksOfFormerPeople(
  linkSource: LinkSource,
  everybody: readonly string[],
): readonly HandoutLink[] {
  const known = householdOf(linkSource.stored).map(({ key }) => key);
  return everybody
    .filter((key) => !known.includes(key))
    .map((key) => ({ name: key, link: current(linkSource, "helper", key) }));
}

/** What a link's page offers to subscribe to: `first` what most people want, `more` the rest. */
export type Offer = {
  readonly first: Subscription;
  readonly more: readonly Subscription[];
};

/**
 * The offer of a link whose path is `base`, not an owner's: what opens everything belongs in no calendar. A helper's own
 * sessions go first, or the household's; a reader has tasks alone.
 */
export function offerOf({ stored, origin }: LinkSource, link: Link, base: string): Offer {
  const at = (name: string, path: string) => ({ name, address: `${origin}${base}${path}` });
  const beds = bedsOf(stored).map((bed) => at(bed.name, bedFeed(bed.key)));
  const [tasks, warnings] = [
    at("All jobs, each all day", "tasks.ics"),
    at("Warnings alone", "warnings.ics"),
  ];
  if (link.role === "reader") {
    const quiet = at("The same without reminders", "quiet/tasks.ics");
    return { first: tasks, more: [...beds, warnings, quiet] };
  }
  const household = at("The household", "household.ics");
  const own = householdOf(stored).find((person) => person.key === link.person);
  const quiet = at(
    "The same without reminders",
    own ? "quiet/sessions.ics" : "quiet/household.ics",
  );
  return own
    ? { first: at(own.name, "sessions.ics"), more: [tasks, household, ...beds, warnings, quiet] }
    : { first: household, more: [tasks, ...beds, warnings, quiet] };
}
