import { exports } from "cloudflare:workers";
import { beforeAll, expect, test } from "vitest";
import { dayOrThrow } from "../src/base/days/day.ts";
import { keyFrom, pathOf } from "../src/host/links/mac.ts";
import type { Role } from "../src/host/links/segment.ts";
import { addWords } from "../src/host/store/diary.ts";
import { inStore } from "./host/web/garden.ts";

const SECRET = "a secret for tests, of more than 32 characters";
const GARDEN = "canary-row";

/** Made-up words in every place of a plan and its diary that tells of people, hours, absences or where the garden is. */
const PLAN = `garden: Canary Row
year: 2027
place: { clock: America/Boise, latitude: 43.61379, longitude: -116.20235, forecast: Open-Meteo, last frost: about 6 May, first frost: about 2 Oct }
people:
  Quillon: { gardens: Wed 18:17-19:13, home: weekdays from 17:41 and weekends, leave out: lifting }
  Zebedea: { gardens: Sun 10:09-12:07, home: every day but Tue }
away:
  - Zebedea, 19 to 23 Jun
  - everybody, away.ics
beds:
  Top bed: { is: 12 x 4 ft, crops: ["carrot: 3 rows, under a board", "tomato: 6 plants, for Quillon", "beet: 2 rows, sow 20 Jun"] }
diary:
  - 2 May: carrots sown by Zebedea
  - 20 May: Vrindle came to look after the hens
assume: open
`;

const AWAY = [
  "BEGIN:VCALENDAR",
  "VERSION:2.0",
  "PRODID:x",
  "BEGIN:VEVENT",
  "UID:a",
  "DTSTART;VALUE=DATE:20270703",
  "DTEND;VALUE=DATE:20270711",
  "SUMMARY:Flight to Ottershaw",
  "LOCATION:Ottershaw",
  "END:VEVENT",
  "END:VCALENDAR",
  "",
].join("\r\n");

/** What no reader may find: names, hours, places, absences, other people's links. */
const SECRETS =
  /quillon|zebedea|vrindle|ottershaw|dorwick|boise|43\.6|116\.2|18:17|19:13|17:41|10:09|12:07|lifting|(?:is|are) away|helper-|owner-|admin-|everybody|nobody|at home/i;

const addressOf = async (role: Role, person: string | null = null) =>
  `https://garden.example${await pathOf({ garden: GARDEN, role, person, serial: 1 }, await keyFrom(SECRET))}`;

const told = async (address: string) => {
  const answer = await exports.default.fetch(address);
  // When it was last modified is the hour of the test, which may be one of those looked for.
  const headers = [...answer.headers]
    .filter(([name]) => name !== "last-modified")
    .map(([name, value]) => `${name}: ${value}`)
    .join("\n");
  return {
    status: answer.status,
    text: `${headers}\n${(await answer.text()).replaceAll("\r\n ", "")}`,
  };
};

beforeAll(async () => {
  const body = JSON.stringify({
    text: PLAN,
    file: "plans/canary-row/2027.yaml",
    beside: { "away.ics": AWAY },
  });
  const made = await exports.default.fetch(`${await addressOf("admin")}plans/2027`, {
    method: "PUT",
    body,
    headers: { "if-none-match": "*" },
  });
  expect(made.status).toBe(201);
  const said = {
    day: dayOrThrow(2027, 5, 24),
    task: null,
    person: "zebedea",
    saidAt: Date.now(),
  } as const;
  await inStore(GARDEN, (sql) => {
    addWords(sql, { ...said, text: "carrots up" });
    addWords(sql, { ...said, text: "left the key with Dorwick" });
  });
});

test("what is planted in plan and diary reaches the household, so that it can be looked for", async () => {
  const { text } = await told(`${await addressOf("owner")}household.ics`);
  expect(text).toMatch(/Zebedea/);
  expect(text).toMatch(/away till/);
});

test.each([
  "",
  "tasks.ics",
  "household.ics",
  "sessions.ics",
  "warnings.ics",
  "bed/top-bed.ics",
  "quiet/tasks.ics",
  "quiet/bed/top-bed.ics",
  "on/quillon/2027-05-12",
  "on/2027/carrot/sow-outdoors/1",
  "on/2027/garden/away/2027-06-19/2027-06-23/before",
  "frost",
  "pictures",
  "season.svg",
  "sheet",
  "sheet/2027-06",
  "calendar",
  "qr.svg",
  "room",
  "room?bed=top-bed",
  "year",
  "diary",
  "plan",
  "plan/2027",
  "plan/2027/1",
  "leaving",
  "canary-row.zip",
  "plans/2027",
  "links",
  "nowhere",
])(
  "no reader's answer gives away a name, an hour, a place, an absence or a link: /%s",
  async (rest) => {
    const { status, text } = await told(`${await addressOf("reader")}${rest}`);
    expect([200, 404]).toContain(status);
    expect(text).not.toMatch(SECRETS);
  },
);

test("an absence has its page, for the household alone", async () => {
  const page = "on/2027/garden/away/2027-06-19/2027-06-23/before";
  const { status, text } = await told(`${await addressOf("helper", "zebedea")}${page}`);
  expect(status).toBe(200);
  expect(text).toContain("Before you go on 19 June");
  expect((await told(`${await addressOf("reader")}${page}`)).status).toBe(404);
});

test("nor does an answer to a link that was never given", async () => {
  const { status, text } = await told((await addressOf("reader")).replace(/[^/]{6}\/$/, "AAAAAA/"));
  expect(status).toBe(404);
  expect(text).not.toMatch(SECRETS);
});
