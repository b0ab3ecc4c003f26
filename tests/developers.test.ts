import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { sayDay } from "../src/base/days/day.ts";
import { CROPS } from "../src/crops/crops.ts";
import { PRACTICES } from "../src/engine/practices/all.ts";
import { chooseEvents } from "../src/views/calendar/choose-events.ts";
import { writeCalendar } from "../src/views/calendar/write.ts";
import { gardenOf, tellOf } from "./gardens.ts";

const NOTES = readFileSync("DEVELOPERS.md", "utf8");
const README = readFileSync("README.md", "utf8");
const walk = /## The potato's walk\n(?<text>[\s\S]*?)\n## /.exec(NOTES)?.groups?.text ?? "";
const flat = walk.replace(/\s+/g, " ");

const POTATO = readFileSync(join(import.meta.dirname, "golden", "potato.yaml"), "utf8");

describe("the potato's walk in the notes", () => {
  const garden = gardenOf(POTATO);
  const told = tellOf(POTATO, { on: "2027-01-01" });
  const of = (id: string) => {
    const found = told.scheduled.find(({ task }) => task.id === `2027/potato-early-red/${id}`);
    if (!found) throw new Error(`no task ${id}`);
    return found;
  };
  const [plant, hill, again, dig] = ["plant/1", "hill/1", "hill/2", "harvest/1"].map(of);
  if (!plant || !hill || !again || !dig) throw new Error("the potato has other tasks");

  test("names the days the code gives", () => {
    for (const said of [
      `best ${sayDay(plant.window.due)}, fine till ${sayDay(plant.window.latest)}`,
      `so ${sayDay(plant.day)}.`,
      `tubers about ${sayDay(dig.window.due)}`,
      `${sayDay(hill.day)}, the second ${sayDay(again.day)}`,
      plant.task.id,
    ])
      expect(flat).toContain(said);
  });

  test("gives the basis, the soil and the frost of the reckoning", () => {
    expect(plant.task.basis).toEqual(["soil", "last frost"]);
    const days = plant.task.because.flatMap((pieces) =>
      pieces.flatMap((piece) =>
        typeof piece === "object" && "day" in piece ? [sayDay(piece.day)] : [],
      ),
    );
    const [soil, warm = "", cold = ""] = days;
    expect(soil).toBe("24 Apr");
    expect(days).toContain("22 Apr");
    expect(flat).toContain(`a warm spring ${warm}, a cold one ${cold}`);
    expect(flat).toContain("soil at 45 °F from 24 Apr");
    expect(flat).toContain("22 Apr");
  });

  test("quotes the event and the lines that are written", () => {
    const event = told.events.find(
      ({ set, tasks }) => set === "tasks" && tasks[0] === hill.task.id,
    );
    expect(flat).toContain(`\`${event?.title}\``);
    const [first] = event?.text.split(" Leave ") ?? [];
    expect(flat).toContain(`"${first}"`);
    const choice = {
      of: "household",
      kind: "tasks",
      bed: null,
      quiet: false,
      reader: false,
    } as const;
    const { text } = writeCalendar({
      garden: garden.id,
      name: "Quarry Lane",
      events: chooseEvents(told.events, choice),
      quiet: false,
      reader: false,
      link: null,
      clock: "America/Denver",
      cause: 0,
      now: 0,
      ledger: null,
    });
    for (const line of ["DTSTART;VALUE=DATE:20270522", "TRIGGER:-PT6H"]) {
      expect(flat).toContain(line);
      expect(text).toContain(line);
    }
  });
});

describe("the notes", () => {
  test("list every room and file at the top of src, and none that is not there", () => {
    const table =
      /## The rooms\n[\s\S]*?\n\n(?<rows>\| room[\s\S]*?)\n\n/.exec(NOTES)?.groups?.rows ?? "";
    const listed = table
      .split("\n")
      .slice(2)
      .flatMap((row) => (row.split("|")[1] ?? "").trim().split(", "));
    const there = readdirSync("src").filter((name) => !name.endsWith(".d.ts"));
    expect([...listed].sort()).toEqual([...there].sort());
  });

  test("and the README name no practice by another word than the code, and as many crops", () => {
    const names = new Set<string>(PRACTICES.map((practice) => practice.name));
    for (const said of ["harden off", "thin", "hill"]) expect(names.has(said)).toBe(true);
    expect(README).toContain(`\n${CROPS.length} crops: `);
    expect(README).toContain("npm ci && npm start");
    expect(README).toContain("npm ci && npm test");
  });
});
