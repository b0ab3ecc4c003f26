import type { FeedChoice } from "../calendar/choose.ts";
import { type Day, plus, sayDay, WEEKDAYS, weekdayOf } from "../days/day.ts";
import { dayAt, sayMinute, startOf } from "../days/instants.ts";
import type { Told } from "../feed.ts";
import { bedFeed, eventPath } from "../links/feeds.ts";
import { pathOf } from "../links/mac.ts";
import { type Link, type Role, writeSegment } from "../links/segment.ts";
import type { Bed, Person } from "../plan/plan.ts";
import type { Placed } from "../schedule/placed.ts";
import { openGarden, type StoredGarden } from "../store/gardens.ts";
import type { Event } from "../words/event.ts";
import { notFound, page } from "./answers.ts";
import { gonePage, homePage, type Job, jobPage, type Subscription } from "./pages.tsx";
import type { Shell } from "./shell.ts";

const MS_PER_MINUTE = 60_000;
const DAYS_SHOWN = 14;

/** A visit to a garden's pages over a good link; `origin` is the address it came to. */
export type Visit = { readonly link: Link; readonly origin: string };

/** The garden's own page; the one answer for nothing where the link was revoked or the garden is gone. */
export async function answerHome(shell: Shell, { link, origin }: Visit): Promise<Response> {
  const opened = await openGarden(shell.db, link.garden);
  if (!opened || opened.revoked.includes(writeSegment(link))) return notFound();
  const { stored, revoked } = opened;
  const at = { shell, stored, base: await pathOf(link, shell.key), link };
  const jobs = shown(at, eventsOf(at));
  const links = link.role === "owner" ? await linksToGive(shell, stored, revoked) : [];
  const { first, more } = await subscriptions(at, { origin, revoked });
  return page(200, homePage({ garden: nameOf(stored), first, more, links, jobs }));
}

/** An event's own page; one that is no more says so and shows what comes next. A reader has none. */
export async function answerEvent(
  shell: Shell,
  { link }: Visit,
  eventKey: string,
): Promise<Response> {
  const opened = await openGarden(shell.db, link.garden);
  if (!opened || opened.revoked.includes(writeSegment(link))) return notFound();
  const at = { shell, stored: opened.stored, base: await pathOf(link, shell.key), link };
  const { events, placed } = told(at);
  const event =
    events.find(({ key }) => key === eventKey) ??
    events.find(({ tasks }) => tasks.includes(eventKey));
  if (event === undefined) {
    return page(404, gonePage(nameOf(at.stored), shown(at, eventsOf(at)), at.base));
  }
  const tasks = placed.filter(({ task }) => event.tasks.includes(task.id));
  return page(
    200,
    jobPage(nameOf(at.stored), { job: jobOf(at, event), windows: tasks.map(sayWindow) }, at.base),
  );
}

/** Whom a garden's keeper hands which link: the owner's page and each person's own calendar, as paths. */
export async function answerLinks(shell: Shell, garden: string): Promise<Response | null> {
  const opened = await openGarden(shell.db, garden);
  if (opened === null) return null;
  const { stored, revoked } = opened;
  const owner = await pathOf(current(stored.id, "owner", null, revoked), shell.key);
  const people = await Promise.all(
    peopleOf(stored).map(async ({ key, name }) => {
      const path = await pathOf(current(stored.id, "helper", key, revoked), shell.key);
      return { key, name, path: `${path}sessions.ics` };
    }),
  );
  const household = `${owner}household.ics`;
  return Response.json({ garden, name: nameOf(stored), owner, household, people });
}

type At = {
  readonly shell: Shell;
  readonly stored: StoredGarden;
  readonly base: string;
  readonly link: Link;
};

function nameOf({ plans }: StoredGarden): string {
  return plans.at(-1)?.plan.name ?? "Garden";
}

/** Everybody in any year's plan once, as the newest names them. */
function peopleOf({ plans }: StoredGarden): readonly Person[] {
  const all = plans.flatMap(({ plan }) => plan.people);
  return [...new Map(all.map((person) => [person.key, person])).values()];
}

function bedsOf({ plans }: StoredGarden): readonly Bed[] {
  const all = plans.flatMap(({ plan }) => plan.beds);
  return [...new Map(all.map((bed) => [bed.key, bed])).values()];
}

/** The link in use: the first that was not revoked. */
function current(
  garden: string,
  role: Role,
  person: string | null,
  revoked: readonly string[],
): Link {
  let link: Link = { garden, role, person, serial: 1 };
  while (revoked.includes(writeSegment(link))) link = { ...link, serial: link.serial + 1 };
  return link;
}

async function linksToGive(
  { key }: Shell,
  stored: StoredGarden,
  revoked: readonly string[],
): Promise<readonly { readonly name: string; readonly href: string }[]> {
  const toGive = peopleOf(stored).map((person) => ({
    name: `${person.name}'s own page`,
    link: current(stored.id, "helper", person.key, revoked),
  }));
  const reader = current(stored.id, "reader", null, revoked);
  const all = [...toGive, { name: "For a neighbour: tasks, without names", link: reader }];
  return Promise.all(all.map(async ({ name, link }) => ({ name, href: await pathOf(link, key) })));
}

async function subscriptions(
  { shell, stored, base, link }: At,
  { origin, revoked }: { readonly origin: string; readonly revoked: readonly string[] },
): Promise<{ readonly first: readonly Subscription[]; readonly more: readonly Subscription[] }> {
  const at = (name: string, path: string) => ({ name, address: `${origin}${base}${path}` });
  const people = link.role === "owner" ? peopleOf(stored) : [];
  const theirs = await Promise.all(
    people.map(async (person) => {
      const own = current(stored.id, "helper", person.key, revoked);
      const path = await pathOf(own, shell.key);
      return { name: person.name, address: `${origin}${path}sessions.ics` };
    }),
  );
  const beds = bedsOf(stored).map((bed) => at(bed.name, bedFeed(bed.key)));
  const tasks = at("All tasks", "tasks.ics");
  const warnings = at("Warnings alone", "warnings.ics");
  const household = at("The household", "household.ics");
  if (link.role === "reader") {
    return {
      first: [tasks],
      more: [warnings, ...beds, at("Without reminders", "quiet/tasks.ics")],
    };
  }
  const own = peopleOf(stored).find((person) => person.key === link.person);
  const first = own ? [at(own.name, "sessions.ics")] : theirs.length > 0 ? theirs : [household];
  const quiet = at("Without reminders", "quiet/sessions.ics");
  return { first, more: [tasks, household, ...beds, warnings, quiet] };
}

/** The garden's events as they are told at this instant; nothing is kept. */
function told({ shell, stored }: At): Told {
  const garden = { id: stored.id, plans: stored.plans.map(({ plan }) => plan) };
  const horizon = shell.core.horizonAt(garden, shell.now());
  return shell.core.tell(garden, horizon, stored.standing);
}

function eventsOf(at: At): readonly Event[] {
  return at.shell.core.choose(told(at).events, choiceOf(at.link));
}

function choiceOf({ role, person }: Link): FeedChoice {
  const rest = { bed: null, quiet: false, reader: role === "reader" };
  if (role === "reader") return { of: "household", kind: "tasks", ...rest };
  return { of: person === null ? "household" : { person }, kind: "sessions", ...rest };
}

/** The next two weeks of them, in order of day. */
function shown(at: At, events: readonly Event[]): readonly Job[] {
  const today = dayAt(at.shell.now(), clockOf(at));
  return events
    .map((event) => ({ event, day: dayOf(at, event) }))
    .filter(({ day }) => day >= today && day < plus(today, DAYS_SHOWN))
    .sort((a, b) => a.day - b.day)
    .map(({ event }) => jobOf(at, event));
}

function clockOf({ stored }: At): string {
  return stored.plans.at(-1)?.plan.site.clock ?? "UTC";
}

function dayOf(at: At, { when }: Event): Day {
  return when.kind === "all day" ? when.day : dayAt(when.from, clockOf(at));
}

function jobOf(at: At, event: Event): Job {
  const reader = at.link.role === "reader";
  return {
    title: event.title,
    when: sayWhen(at, event),
    text: reader ? event.readerText : event.text,
    href: reader ? null : `${at.base}${eventPath(event.key)}`,
  };
}

function sayWhen(at: At, event: Event): string {
  const day = dayOf(at, event);
  const said = `${WEEKDAYS[weekdayOf(day) - 1]} ${sayDay(day)}`;
  if (event.when.kind === "all day") return said;
  const midnight = startOf(day, clockOf(at));
  const minute = (instant: number) => sayMinute((instant - midnight) / MS_PER_MINUTE);
  return `${said}, ${minute(event.when.from)} to ${minute(event.when.to)}`;
}

function sayWindow({ task: { title }, window: { earliest, latest } }: Placed): string {
  const days =
    earliest === latest ? `on ${sayDay(latest)}` : `${sayDay(earliest)} to ${sayDay(latest)}`;
  return `${title.verb} ${title.object}: ${days} does no harm`;
}
