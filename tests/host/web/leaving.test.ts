import { strFromU8, strToU8, unzipSync } from "fflate";
import { beforeAll, describe, expect, test } from "vitest";

import { faultsOf } from "../../strict.ts";
import { ask, linkTo, PLAN, publish, put, type Shell, shellWith } from "./garden.ts";

let shell: Shell;
let owner: string;

beforeAll(async () => {
  shell = shellWith();
  await publish(shell, "quarry-lane");
  await publish(shell, "quarry-lane", `${PLAN}doubt\n`, 1);
  owner = await linkTo("quarry-lane", "owner");
  const words = '=sum(1), and "carrots" up';
  await post("diary", { say: words, day: "2027-05-05" });
  await post("on/2027/thin-beets/do/1", { task: "2027/thin-beets/do/1", say: "done" });
});

const post = (rest: string, form: Record<string, string>) =>
  ask(shell, `${owner}${rest}`, {
    method: "POST",
    body: new URLSearchParams(form).toString(),
    headers: { "content-type": "application/x-www-form-urlencoded" },
  });

describe("everything as files", () => {
  const files = async () => {
    const answer = await ask(shell, `${owner}quarry-lane.zip`);
    expect(answer.headers.get("content-type")).toBe("application/zip");
    const entries = Object.entries(unzipSync(new Uint8Array(await answer.arrayBuffer())));
    return new Map(entries.map(([name, bytes]) => [name, strFromU8(bytes)]));
  };

  test("is plans with all their versions, the diary and the calendars", async () => {
    const found = await files();
    expect([...found.keys()].sort()).toEqual(
      [
        "quarry-lane/2027.yaml",
        "quarry-lane/SHA256SUMS",
        "quarry-lane/diary.csv",
        "quarry-lane/garden.json",
        ...["bed-south-bed", "household", "person-imre", "person-oda", "tasks"].map(
          (name) => `quarry-lane/calendars/${name}.ics`,
        ),
        "quarry-lane/versions/2027-1.yaml",
        "quarry-lane/versions/2027-2.yaml",
      ].sort(),
    );
    expect(found.get("quarry-lane/2027.yaml")).toBe(`${PLAN}doubt\n`);
    expect(found.get("quarry-lane/versions/2027-1.yaml")).toBe(PLAN);
  });

  test("is a diary that a table program reads as text", async () => {
    expect((await files()).get("quarry-lane/diary.csv")).toBe(
      [
        "day,person,said,job,written on",
        `2027-05-05,,"'=sum(1), and ""carrots"" up",,2027-05-07`,
        "2027-05-07,,done,2027/thin-beets/do/1,2027-05-07",
        "",
      ].join("\r\n"),
    );
  });

  test("is whole calendars, and no link is anywhere in it", async () => {
    for (const [name, text] of await files()) {
      expect(text, name).not.toMatch(/https?:|owner-|helper-|reader-/);
      if (name.endsWith(".ics")) expect(faultsOf(strToU8(text)), name).toEqual([]);
    }
  });
});

test("files of one name that two years have apart are both in it, and no file takes a plan's place", async () => {
  const admin = await linkTo("two-years", "admin");
  for (const year of [2027, 2028]) {
    const text = `name Two Years\nyear ${year}\n`;
    const beside = { "weather.yaml": `of ${year}`, "2027.yaml": "no plan", "../out.yaml": "out" };
    await ask(shell, `${admin}plans/${year}`, put({ text, file: "x", beside }, 0));
  }
  const answer = await ask(shell, `${await linkTo("two-years", "owner")}two-years.zip`);
  const entries = Object.entries(unzipSync(new Uint8Array(await answer.arrayBuffer())));
  const files = new Map(entries.map(([name, bytes]) => [name, strFromU8(bytes)]));
  expect(files.get("two-years/2027.yaml")).toBe("name Two Years\nyear 2027\n");
  expect(files.get("two-years/weather.yaml")).toBe("of 2028");
  expect(files.get("two-years/2027/weather.yaml")).toBe("of 2027");
  expect(files.get("two-years/2028/2027.yaml")).toBe("no plan");
  expect([...files.keys()].filter((name) => name.includes(".."))).toEqual([]);
});

describe("a garden's end", () => {
  test("wants the garden's name, and says so where it was another", async () => {
    const answer = await post("leaving", { name: "Quarry" });
    expect(answer.status).toBe(400);
    expect(await answer.text()).toContain("Nothing was deleted");
    expect((await ask(shell, owner)).status).toBe(200);
  });

  test("is for good: no link opens, no plan can be published, nothing is left to read", async () => {
    const imre = await linkTo("quarry-lane", "helper", "imre");
    expect((await ask(shell, `${imre}sessions.ics`)).status).toBe(200);
    const answer = await post("leaving", { name: " quarry  LANE " });
    expect(await answer.text()).toContain("is deleted");
    for (const path of [owner, imre, `${imre}sessions.ics`, `${owner}quarry-lane.zip`])
      expect((await ask(shell, path)).status, path).toBe(404);
    const again = await publish(shell, "quarry-lane");
    expect([again.status, await again.text()]).toEqual([
      410,
      expect.stringContaining("another name"),
    ]);
  });
});
