import { bedFeed } from "../links/feeds.ts";
import { pathOf } from "../links/mac.ts";
import { type Link, type Role, writeSegment } from "../links/segment.ts";
import type { Bed, Person } from "../plan/plan.ts";
import type { StoredGarden } from "../store/gardens.ts";
import type { Subscription } from "./pages.tsx";

/**
 * What links of a garden are made from: its record, the parts of the path of its revoked links, and the address
 * they begin with (`https://garden.example`).
 */
export type Giving = {
  readonly key: CryptoKey;
  readonly stored: StoredGarden;
  readonly revoked: readonly string[];
  readonly origin: string;
};

/** What a garden is called in its newest plan. */
export function nameOf({ plans }: StoredGarden): string {
  return plans.at(-1)?.plan.name ?? "Garden";
}

/** Everybody in any year's plan once, by the newest name. */
function peopleOf({ plans }: StoredGarden): readonly Person[] {
  const all = plans.flatMap(({ plan }) => plan.people);
  return [...new Map(all.map((person) => [person.key, person])).values()];
}

function bedsOf({ plans }: StoredGarden): readonly Bed[] {
  const all = plans.flatMap(({ plan }) => plan.beds);
  return [...new Map(all.map((bed) => [bed.key, bed])).values()];
}

/** The path of the link in use: the first of its serials that was not revoked. */
async function current({ key, stored, revoked }: Giving, role: Role, person: string | null) {
  let link: Link = { garden: stored.id, role, person, serial: 1 };
  while (revoked.includes(writeSegment(link))) link = { ...link, serial: link.serial + 1 };
  return pathOf(link, key);
}

/** Whom the deployment hands which link, as paths: the owner's page, the household's calendar, each person's own. */
export async function linksInUse(giving: Giving) {
  const owner = await current(giving, "owner", null);
  const people = await Promise.all(
    peopleOf(giving.stored).map(async ({ key, name }) => {
      const path = `${await current(giving, "helper", key)}sessions.ics`;
      return { key, name, path };
    }),
  );
  const { id } = giving.stored;
  const household = `${owner}household.ics`;
  return { garden: id, name: nameOf(giving.stored), owner, household, people };
}

/** The pages an owner hands on: each person's own, and one for somebody outside the household. */
export async function pagesToGive(
  giving: Giving,
): Promise<readonly { readonly name: string; readonly href: string }[]> {
  const people = await Promise.all(
    peopleOf(giving.stored).map(async (person) => ({
      name: `${person.name}'s own page`,
      href: await current(giving, "helper", person.key),
    })),
  );
  const href = await current(giving, "reader", null);
  return [...people, { name: "For a neighbour: tasks, without names", href }];
}

/** What a link's page offers to subscribe to: `first` what most people want, `more` the rest. */
export type Offer = {
  readonly first: readonly Subscription[];
  readonly more: readonly Subscription[];
};

/**
 * The offer of a link whose path is `base`. A helper's own sessions go first; an owner sees each person's, under that
 * person's own link, or the household's where the plan names nobody; a reader has tasks alone.
 */
export async function offerOf(giving: Giving, link: Link, base: string): Promise<Offer> {
  const { stored, origin } = giving;
  const at = (name: string, path: string) => ({ name, address: `${origin}${base}${path}` });
  const beds = bedsOf(stored).map((bed) => at(bed.name, bedFeed(bed.key)));
  const [tasks, warnings] = [at("All tasks", "tasks.ics"), at("Warnings alone", "warnings.ics")];
  if (link.role === "reader") {
    const quiet = at("Tasks without reminders", "quiet/tasks.ics");
    return { first: [tasks], more: [...beds, warnings, quiet] };
  }
  const household = at("The household", "household.ics");
  const own = peopleOf(stored).find((person) => person.key === link.person);
  const first = own ? [at(own.name, "sessions.ics")] : await everybody(giving, link);
  const quiet = at("The same without reminders", "quiet/sessions.ics");
  const rest = first.length > 0 ? [tasks, household] : [tasks];
  return {
    first: first.length > 0 ? first : [household],
    more: [...rest, ...beds, warnings, quiet],
  };
}

async function everybody(giving: Giving, link: Link): Promise<readonly Subscription[]> {
  if (link.role !== "owner") return [];
  const { people } = await linksInUse(giving);
  return people.map(({ name, path }) => ({ name, address: `${giving.origin}${path}` }));
}
