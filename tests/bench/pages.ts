import type { Role } from "../../src/host/links/segment.ts";
import { textOf } from "../rough/calls.ts";
import type { BoundName } from "./bounds.ts";
import { answered, linkPath, looking, YEAR } from "./site.ts";

/** Something that is looked at under a link: a page or a picture. */
export type Page = {
  readonly name: string;
  readonly role: Role;
  readonly rest: string;
  readonly bound: BoundName;
};

/** The job's page stands for the path that the week's page leads to. */
export const A_JOB = "(a job)";

const page = (name: string, role: Role, rest: string): Page => {
  return { name, role, rest, bound: "page" };
};

/** The pages of every day, which must be cheap in a fresh isolate too. */
export const DAILY: readonly Page[] = [
  page("home, an owner's", "owner", ""),
  page("week, a person's", "helper", ""),
  page("a job", "helper", A_JOB),
  page("links", "owner", "links"),
  page("diary", "helper", "diary"),
  page("calendar page", "helper", "calendar"),
];

/** What is looked at now and then. */
export const OCCASIONAL: readonly Page[] = [
  { name: "picture of the frost", role: "helper", rest: "frost.svg", bound: "picture" },
  { name: "picture of the soil", role: "helper", rest: "soil.svg", bound: "picture" },
  { name: "picture of the season", role: "helper", rest: "season.svg", bound: "picture" },
  { name: "a month on paper", role: "helper", rest: `sheet/${YEAR}-06`, bound: "paper" },
  { name: "a year on paper", role: "helper", rest: `year/${YEAR}`, bound: "paper" },
  { name: "frost tonight", role: "helper", rest: "frost?low=29", bound: "oneCall" },
  { name: "room in a bed", role: "helper", rest: "room?bed=bed-0", bound: "oneCall" },
  { name: "the pictures' page", role: "helper", rest: "pictures", bound: "oneCall" },
  { name: "the plan's page", role: "owner", rest: `plan/${YEAR}`, bound: "oneCall" },
  { name: "the page of leaving", role: "owner", rest: "leaving", bound: "oneCall" },
  { name: "the archive", role: "owner", rest: "garden.zip", bound: "oneCall" },
];

/** The path of a page of a garden, without the address of the worker that is asked. `warm` is one that may be asked for a job. */
export async function pagePath(
  warm: string,
  garden: string,
  { role, rest }: Page,
): Promise<string> {
  const link = await linkPath(garden, role);
  return rest === A_JOB ? firstJob(warm, link) : `${link}${rest}`;
}

/** The path of the first job on a link's own page; a session's before a task's, since it has more to show. Throws where there is none. */
export async function firstJob(address: string, link: string): Promise<string> {
  const page = textOf(await answered(looking(`${address}${link}`)));
  const jobs = [...page.matchAll(/href="\/([^"]*\/on\/[^"]+)"/g)].map(([, path = ""]) => path);
  const job = jobs.find((path) => path.includes("/on/imre/")) ?? jobs[0];
  if (job === undefined) throw new Error("the week's page has no job");
  return job;
}
