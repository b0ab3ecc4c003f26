import { beforeAll, describe, expect, test } from "vitest";
import type { TaskCard } from "../../../src/app/answers.ts";
import { type Day, plus } from "../../../src/base/days/day.ts";

import { ask, engine, linkTo, MORNING, PLAN, publish, type Shell, shellWith } from "./garden.ts";

let shell: Shell;

beforeAll(async () => {
  shell = shellWith();
  await publish(shell, "quarry-lane");
});

async function pageOf(path: string, over: Partial<Shell> = {}): Promise<string> {
  const answer = await ask({ ...shell, ...over }, path);
  expect(answer.headers.get("content-type")).toBe("text/html; charset=utf-8");
  return answer.text();
}

const THIN: TaskCard = {
  ...{ id: "2027/thin-beets/do/1", title: "Thin beets", fullTitle: "Thin beets", bedRank: 0 },
  ...{ day: 20950 as Day, earliest: 20950 as Day, latest: 20960 as Day, why: [], done: null },
  ...{ bed: "", text: "", people: ["imre"], needs: [], minutes: 20 },
  answers: [{ words: "Thinned today", says: "done" }],
};

/** Publishes a plan with an engine that gives its first task that card. */
function published(garden: string, card: TaskCard, text = PLAN, base = 0) {
  const build: typeof engine.build = (input) => {
    const built = engine.build(input);
    return { ...built, cards: [card] };
  };
  return publish({ ...shell, engine: { ...engine, build } }, garden, text, base);
}

describe("an event's page", () => {
  test("tells what the event tells, on its day", async () => {
    const imre = await linkTo("quarry-lane", "helper", "imre");
    const html = await pageOf(`${imre}on/imre/2027-05-08`);
    expect(html).toContain("<h1>Thin beets</h1>");
    expect(html).toContain("Saturday 8 May, 09:00 to 10:00");
    expect(html).toContain("Thin beets. The household reads this.");
    expect(html).toContain(`href="${imre}"`);
    expect(html).not.toContain("<button");
  });

  test("tells from when to when it is right for each task in it", async () => {
    const today = Math.floor(MORNING / 86_400_000) as Day;
    await published("ford", { ...THIN, earliest: today, latest: plus(today, 9) });
    const path = `${await linkTo("ford", "owner")}on/2027/thin-beets/do/1`;
    expect(await pageOf(path)).toContain("Right from 7 May to 16 May.");
  });

  test("of a task that is now told within another event is that event's", async () => {
    const build: typeof engine.build = (input) => {
      const built = engine.build(input);
      const events = built.events
        .filter(({ key }) => !key.startsWith("2027/hill"))
        .map((event) =>
          event.key === "2027/thin-beets/do/1"
            ? { ...event, tasks: [...event.tasks, "2027/hill-potatoes/do/1"] }
            : event,
        )
        .filter(({ set }) => set === "tasks");
      return { ...built, events };
    };
    await publish({ ...shell, engine: { ...engine, build } }, "lea");
    const path = `${await linkTo("lea", "owner")}on/2027/hill-potatoes/do/1`;
    expect(await pageOf(path)).toContain("<h1>Thin beets</h1>");
  });

  test("of an event that is no more says so and tells what comes next", async () => {
    const imre = await linkTo("quarry-lane", "helper", "imre");
    const answer = await ask(shell, `${imre}on/2027/long-gone/do/1`);
    expect(answer.status).toBe(404);
    const html = await answer.text();
    expect(html).toContain("off the list");
    expect(html).toContain("Thin beets");
  });

  test("that has lost jobs since a phone last looked still has them, each with its day", async () => {
    await publish(shell, "dell");
    const imre = await linkTo("dell", "helper", "imre");
    await ask(shell, `${imre}sessions.ics`);
    const later = PLAN.replace("2027-05-08 Thin beets", "2027-05-15 Thin beets");
    await published("dell", { ...THIN, day: 20953 as Day }, later, 1);
    const html = await pageOf(`${imre}on/imre/2027-05-08`);
    expect(html).toContain("<h1>Thin beets</h1>");
    expect(html).toContain("now on Saturday 15 May");
    expect(html).toContain('value="done"');
  });

  test("is not a reader's, and not there over a revoked link", async () => {
    const reader = await linkTo("quarry-lane", "reader");
    expect((await ask(shell, `${reader}on/imre/2027-05-08`)).status).toBe(404);
    const owner = await linkTo("quarry-lane", "owner");
    await ask(shell, `${owner}links/helper-oda-1`, { method: "DELETE" });
    const oda = await linkTo("quarry-lane", "helper", "oda");
    const answer = await ask(shell, `${oda}on/imre/2027-05-08`);
    expect(answer.headers.get("content-type")).toBe("text/plain; charset=utf-8");
  });
});
