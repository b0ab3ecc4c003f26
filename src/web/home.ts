import { pathOf } from "../links/mac.ts";
import { type Link, writeSegment } from "../links/segment.ts";
import { openGarden } from "../store/gardens.ts";
import { json, notFound, page } from "./answers.ts";
import { linksInUse, nameOf, offerOf, pagesToGive } from "./handing.ts";
import { comingUp, jobOf, partOf, tellNow } from "./jobs.ts";
import { answerLook } from "./looks.ts";
import { gonePage, homePage, jobPage } from "./pages.tsx";
import type { Shell } from "./shell.ts";
import { leftTaps } from "./taps.ts";

/** A visit over a good link; `origin` is the address that links begin with. */
export type Visit = { readonly link: Link; readonly origin: string };

/** The garden's own page; the one answer for nothing where the link was revoked or the garden is gone. */
export async function answerHome(shell: Shell, { link, origin }: Visit): Promise<Response> {
  const opened = await open(shell, link);
  if (opened === null) return notFound();
  const { stored, revoked, base } = opened;
  const telling = { shell, stored, link, base };
  const giving = { key: shell.key, stored, revoked, origin };
  const links = link.role === "owner" ? await pagesToGive(giving) : [];
  const offer = await offerOf(giving, link, base);
  const coming = comingUp(telling, tellNow(telling));
  return page(
    200,
    homePage({ garden: nameOf(stored), ...offer, links, coming, looks: link.role !== "reader" }),
  );
}

/**
 * An event's own page, found by its key or by a task in it, since like tasks are told together. One that is no more
 * says so, with what comes next. A reader has none.
 */
export async function answerEvent(shell: Shell, link: Link, key: string): Promise<Response> {
  const opened = await open(shell, link);
  if (opened === null) return notFound();
  const { stored, base } = opened;
  const telling = { shell, stored, link, base };
  const told = tellNow(telling);
  const event =
    told.events.find((event) => event.key === key) ??
    told.events.find(({ tasks }) => tasks.includes(key));
  const home = { name: nameOf(stored), href: base };
  if (event === undefined)
    return page(404, gonePage(home, comingUp(telling, told), leftTaps(stored.lines, key)));
  const placed = told.placed.filter(({ task }) => event.tasks.includes(task.id));
  const parts = placed.map((one) => partOf(telling, one));
  return page(200, jobPage(home, jobOf(telling, event), parts));
}

/** What the household looks at beside its jobs; nothing for a reader. */
export async function answerLooking(
  shell: Shell,
  link: Link,
  { rest, low }: { readonly rest: string; readonly low: string | null },
): Promise<Response> {
  const opened = link.role === "reader" ? null : await open(shell, link);
  if (opened === null) return notFound();
  const { stored, base } = opened;
  return answerLook({ shell, stored, link, base }, rest, low);
}

/** The links in use, for the deployment to hand out; 404 where there is no such garden. */
export async function answerLinks(shell: Shell, { link, origin }: Visit): Promise<Response> {
  const opened = await open(shell, link);
  if (opened === null) return notFound();
  const { stored, revoked } = opened;
  return json(200, await linksInUse({ key: shell.key, stored, revoked, origin }));
}

async function open({ db, key }: Shell, link: Link) {
  const opened = await openGarden(db, link.garden);
  if (opened === null || opened.revoked.includes(writeSegment(link))) return null;
  return { ...opened, base: await pathOf(link, key) };
}
