import { describe, expect, test } from "vitest";
import type { Schedule } from "../../src/app/build.ts";
import { chooseEvents } from "../../src/views/calendar/choose-events.ts";
import { uidOf } from "../../src/views/calendar/uid.ts";
import { drawnFor, samples } from "../depth.ts";
import { ALONE, gardenOf, QUARRY, tellOf } from "../gardens.ts";
import { once } from "../once.ts";
import { readStrictly } from "../strict.ts";
import { bytesOf, CHOICES, dawn, toldAt, write } from "./feeds.ts";

const on = "2027-01-01";
const HEAD = QUARRY.slice(0, QUARRY.indexOf("beds:\n"));
const BEDS = QUARRY.slice(HEAD.length + "beds:\n".length).split(/(?=^ {2}\S)/m);

function shuffled<T>(things: readonly T[], roll: () => number): readonly T[] {
  return things
    .map((thing) => ({ thing, at: roll() }))
    .sort((a, b) => a.at - b.at)
    .map(({ thing }) => thing);
}

/** The crops of a bed's text in another order. */
function cropsShuffled(bed: string, roll: () => number): string {
  const [head = "", ...crops] = bed.split(/(?=^ {6}- )/m);
  return [head, ...shuffled(crops, roll)].join("");
}

const idsOf = (told: Schedule) => told.scheduled.map(({ task }) => task.id).sort();
const without = (ids: readonly string[], ...keys: readonly string[]) =>
  ids.filter((id) => !keys.some((key) => id.startsWith(`2027/${key}/`)));
const idsIn = (text: string) => idsOf(tellOf(text, { on }));
const all = once(() => idsIn(QUARRY));

describe("the order of a plan's crops", () => {
  test("is of no account: same tasks, same bytes", () => {
    const roll = drawnFor(3);
    const bytes = bytesOf(QUARRY, dawn(on));
    for (let run = 0; run < samples(12, 5); run++) {
      const beds = BEDS.map((bed) => cropsShuffled(bed, roll));
      expect(bytesOf(`${HEAD}beds:\n${beds.join("")}`, dawn(on))).toBe(bytes);
    }
  });

  test("nor is the order of beds, but for the order one walks", () => {
    const roll = drawnFor(5);
    const told = tellOf(QUARRY, { on });
    for (let run = 0; run < samples(12, 5); run++) {
      const other = tellOf(`${HEAD}beds:\n${shuffled(BEDS, roll).join("")}`, { on });
      expect(JSON.stringify(other.scheduled)).toBe(JSON.stringify(told.scheduled));
      expect(other.publishedState).toEqual(told.publishedState);
    }
  });
});

describe("ids", () => {
  test("are each there once", () => {
    expect(new Set(all()).size).toBe(all().length);
  });

  test("of others stay when a planting comes", () => {
    const more = ALONE.replace(
      "      - beet: 2 rows\n",
      "      - beet: 2 rows\n      - lettuce: ruby, 1 row\n",
    );
    expect(without(idsIn(more), "lettuce-ruby")).toEqual(all());
  });

  test("of others stay when a planting goes", () => {
    const less = QUARRY.replace("      - beet: 2 rows\n", "");
    expect(idsIn(less)).toEqual(without(all(), "beet"));
  });

  test("stay when a planting moves to another bed", () => {
    const moved = QUARRY.replace("      - beet: 2 rows\n", "").replace(
      "      - lettuce: 2 rows, every 14 days, 3 times\n",
      "      - lettuce: 2 rows, every 14 days, 3 times\n      - beet: 2 rows\n",
    );
    expect(idsIn(moved)).toEqual(all());
  });

  test("stay when a planting is renamed with its first name beside", () => {
    const renamed = QUARRY.replace(
      "      - beet: 2 rows\n",
      "      - name: Red ones\n        was: beet\n        crop: beet\n        rows: 2\n",
    );
    expect(idsIn(renamed)).toEqual(all());
  });

  test("stay when a bed is renamed with its first name beside", () => {
    const renamed = QUARRY.replace("  Root bed:\n", "  Long bed:\n    was: Root bed\n");
    expect(idsIn(renamed)).toEqual(all());
  });

  test("stay when amounts, people or absences change", () => {
    expect(idsIn(QUARRY.replace("18 plants", "12 plants"))).toEqual(all());
    expect(idsIn(ALONE)).toEqual(all());
    expect(idsIn(QUARRY.replace("beds:\n", "away:\n  - Oda, 1 to 30 Jul\nbeds:\n"))).toEqual(all());
  });
});

const uidsOf = (text: string) =>
  readStrictly(new TextEncoder().encode(text)).events.map((event) => event.uid);

describe("the name of an event in calendars", () => {
  test("stays when its task moves", () => {
    const first = toldAt(gardenOf(ALONE), dawn(on));
    const moved = ALONE.replace("beet: 2 rows", "beet: 2 rows, sown 30 May");
    const next = toldAt(gardenOf(moved), dawn(on), first.publishedState);
    const sowing = "2027/beet/sow-outdoors/1";
    const [choice] = CHOICES;
    if (!choice) throw new Error("no feed");
    for (const told of [first, next]) {
      expect(told.events.find(({ tasks }) => tasks.includes(sowing))?.key).toBe(sowing);
      expect(uidsOf(write(told, choice, dawn(on)).text)).toContain(uidOf("quarry-lane", sowing));
    }
  });

  test("is one for the household and for each person, whichever set they look at", () => {
    const told = tellOf(QUARRY, { on });
    const [household, imre, oda] = (["household", "imre", "oda"] as const).map((of) =>
      chooseEvents(told.events, {
        of: of === "household" ? of : { person: of },
        kind: "sessions",
        bed: null,
        quiet: false,
        reader: false,
      }),
    );
    const all = new Set(household?.map((event) => event.key));
    for (const event of [...(imre ?? []), ...(oda ?? [])]) expect(all.has(event.key)).toBe(true);
    const shared = imre?.filter((event) => event.people.length !== 1).map((event) => event.key);
    const others = new Set(oda?.map((event) => event.key));
    expect(shared?.filter((key) => others.has(key)).length).toBeGreaterThan(5);
  });

  test("of a task names no person", () => {
    for (const event of tellOf(QUARRY, { on }).events)
      if (!["session", "open"].includes(event.kind)) expect(event.key).not.toMatch(/imre|oda/);
  });
});
