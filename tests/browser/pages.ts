import type { Role } from "../../src/host/links/segment.ts";
import { YEAR } from "./gardens.ts";
import { invitation } from "./invite.ts";
import { jobPageOf, linkOf } from "./links.ts";

/** A page of Sowbell: a name to know it by, and where it is. */
export type Shown = { readonly name: string; readonly address: string };

/** What stands under every link of the household: names, and what follows the link. */
const HOUSEHOLD = {
  garden: "",
  frost: "frost",
  "frost-told": "frost?low=29",
  "frost-wrong": "frost?low=cold",
  room: "room",
  "room-told": "room?bed=root-bed",
  more: "more",
  pictures: "pictures",
  diary: "diary",
} as const;

const OWNER = { links: "links", leaving: "leaving", plan: `plan/${YEAR}` } as const;

const PICTURES = {
  "beds-drawn": "beds.svg",
  season: "season.svg",
  "frost-drawn": "frost.svg",
  soil: "soil.svg",
} as const;

const SHEETS = { sheet: `sheet/${YEAR}-05`, "sheet-idle": "sheet", year: `year/${YEAR}` } as const;

type Paths = Readonly<Record<string, string>>;

async function under(role: Role, paths: Paths, garden = "quarry-lane"): Promise<readonly Shown[]> {
  const base = await linkOf(garden, role);
  return Object.entries(paths).map(([name, path]) => ({
    name: `${role}-${name}`,
    address: `${base}${path}`,
  }));
}

/** The pages of every role that are looked at and written in, sheets and drawings apart. */
export async function everyPage(): Promise<readonly Shown[]> {
  const { origin } = new URL(await linkOf("quarry-lane", "owner"));
  const week = [
    ...(await under("helper", { week: "" }, "this-week")),
    ...(await under("helper", { today: "" }, "today")),
  ];
  return [
    { name: "front", address: `${origin}/` },
    { name: "invitation", address: await invitation() },
    ...(await under("owner", { ...HOUSEHOLD, ...OWNER })),
    ...(await under("owner", { "next-plan": `plan/${YEAR + 1}` })),
    ...(await under("helper", { ...HOUSEHOLD, calendar: "calendar" })),
    ...(await under("reader", { garden: "", calendar: "calendar" })),
    ...(await under("reader", { week: "" }, "this-week")),
    ...week,
    ...(await jobPages()),
  ];
}

/** Pages of jobs: one task, several in a visit, and one that is no more. */
async function jobPages(): Promise<readonly Shown[]> {
  const base = await linkOf("quarry-lane", "helper");
  const feed = `${base}sessions.ics`;
  return [
    { name: "job", address: await jobPageOf(feed, "Feed asparagus") },
    { name: "job-visit", address: await jobPageOf(feed, "Thin") },
    { name: "job-gone", address: `${base}on/${YEAR}/nothing/thin/1` },
  ];
}

/** The sheets to be printed, one HTML document each. */
export const everySheet = () => under("helper", SHEETS);

/** The drawings, one SVG document each. */
export const everyPicture = () => under("helper", PICTURES);
