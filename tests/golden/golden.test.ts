import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { gardenOf, QUARRY } from "../gardens.ts";
import { once } from "../once.ts";
import { CHOICES, dawn, toldAt, write } from "../properties/feeds.ts";
import { faultsOf, readStrictly, type StrictEvent } from "../strict.ts";

/**
 * The household's tasks as they stood when they were last looked over. Where what is told changes on purpose,
 * `GOLDEN=write npx vitest run --config tests/vitest.config.ts tests/golden` writes them anew; read the
 * difference before it is kept.
 */
const writing = process.env.GOLDEN === "write";
const at = (name: string) => join(import.meta.dirname, name);
const bytesOf = (text: string) => new TextEncoder().encode(text);

const PAIRS: readonly (readonly [name: string, plan: string])[] = [
  ["potato.ics", readFileSync(at("potato.yaml"), "utf8")],
  ["garden.ics", QUARRY],
  ["twelve.ics", readFileSync(at("twelve.yaml"), "utf8")],
];

function feedOf(plan: string): string {
  const [tasks] = CHOICES;
  if (!tasks) throw new Error("no feed");
  const now = dawn("2027-01-01");
  return write(toldAt(gardenOf(plan), now), tasks, now).text;
}

/** An event as one line, as our reader takes it and as ical.js does. */
function ours({ uid, summary, description, start, alarm }: StrictEvent): string {
  const when = start.kind === "date" ? start.day * 86_400_000 : start.at;
  return JSON.stringify([uid, summary, description, new Date(when).toISOString(), alarm]);
}

function theirs(component: InstanceType<typeof ICAL.Component>): string {
  const { uid, summary, description, startDate } = new ICAL.Event(component);
  const day = `${startDate.toString().slice(0, 10)}T00:00:00.000Z`;
  const when = startDate.isDate ? day : startDate.toJSDate().toISOString();
  const trigger = component.getFirstSubcomponent("valarm")?.getFirstPropertyValue("trigger");
  const before = trigger instanceof ICAL.Duration ? -trigger.toSeconds() : null;
  return JSON.stringify([uid, summary, description, when, before]);
}

describe.each(PAIRS)("%s", (name, plan) => {
  const text = once(() => feedOf(plan));

  test("is what its plan gives, byte for byte", () => {
    if (writing) writeFileSync(at(name), text());
    expect(text()).toBe(readFileSync(at(name), "utf8"));
  });

  test("has no fault", () => {
    expect(faultsOf(bytesOf(text()))).toEqual([]);
  });

  test("is read alike by a parser that is not ours: names, words, days and reminders", () => {
    const read = new ICAL.Component(ICAL.parse(text())).getAllSubcomponents("vevent").map(theirs);
    expect(read).toEqual(readStrictly(bytesOf(text())).events.map(ours));
    expect(read.length).toBeGreaterThan(5);
  });
});
