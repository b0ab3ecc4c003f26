import { beforeAll, describe, expect, test, vi } from "vitest";

import { ROUTES, routeAt } from "../../../src/host/web/routes.ts";
import {
  ask,
  DOWN,
  inStore,
  linkTo,
  MORNING,
  ORIGIN,
  publish,
  type Shell,
  shellWith,
} from "./garden.ts";

let shell: Shell;

beforeAll(async () => {
  shell = shellWith();
  await publish(shell, "quarry-lane");
});

const HOUSEHOLD = [
  "calendar",
  "frost",
  "room",
  "pictures",
  "sheet",
  "sheet/2027-05",
  "year",
  "diary",
];
const OWNERS = [
  "plan",
  "plan/2027",
  "plan/2027/1",
  "links",
  "leaving",
  "quarry-lane.zip",
  "plans/2027",
];

describe("who is let in where", () => {
  test.each(OWNERS)("%s is the owner's alone", async (rest) => {
    for (const role of ["helper", "reader"] as const) {
      const link = await linkTo("quarry-lane", role, role === "helper" ? "imre" : null);
      const answer = await ask(shell, `${link}${rest}`);
      expect([role, answer.status]).toEqual([role, 404]);
      expect(answer.headers.get("content-type")).toBe("text/plain; charset=utf-8");
    }
    const owner = await ask(shell, `${await linkTo("quarry-lane", "owner")}${rest}`);
    expect([200, 303]).toContain(owner.status);
  });

  test.each(HOUSEHOLD.slice(1))("%s is no reader's", async (rest) => {
    const reader = await linkTo("quarry-lane", "reader");
    expect((await ask(shell, `${reader}${rest}`)).status).toBe(404);
  });

  test("an admin and an invitation have no page of a garden", async () => {
    for (const role of ["admin", "invitation"] as const)
      for (const rest of ["", "plan", "links/x", "diary"])
        expect((await ask(shell, `${await linkTo("quarry-lane", role)}${rest}`)).status).not.toBe(
          200,
        );
  });

  test("every place names who may come, and no path leads to two", () => {
    for (const rest of [
      "",
      ...HOUSEHOLD,
      ...OWNERS,
      "on/2027/beet/thin/1",
      "season.svg",
      "beds.svg",
    ])
      expect(
        ROUTES.filter(({ path }) => path.test(rest)),
        rest,
      ).toHaveLength(1);
    expect(routeAt("nowhere")).toBeNull();
    expect(routeAt("plan/2027/check")?.route.methods).toEqual(["POST"]);
  });
});

describe("what opens nothing looks alike", () => {
  const seen = async (path: string) => {
    const answer = await ask(shell, path);
    return { status: answer.status, headers: [...answer.headers], body: await answer.text() };
  };

  test("forged, cut, re-spelt, never given, revoked, and of a garden deleted or never there", async () => {
    const good = await linkTo("quarry-lane", "helper", "oda");
    const forged = good.replace(/[^/]{43}/, "A".repeat(43));
    const expected = await seen(forged);
    expect(expected.status).toBe(404);
    await publish(shell, "gone");
    const owner = await linkTo("gone", "owner");
    const form = { "content-type": "application/x-www-form-urlencoded" };
    const ended = await ask(shell, `${owner}leaving`, {
      method: "POST",
      body: "name=Quarry+Lane",
      headers: form,
    });
    expect(ended.status).toBe(200);
    const quarry = await linkTo("quarry-lane", "owner");
    await ask(shell, `${quarry}links/reader-1`, { method: "DELETE" });
    const paths = [
      ...[good.slice(0, -3), good.toUpperCase(), good.replace("helper-oda", "helper-~6f~da")],
      ...[await linkTo("quarry-lane", "reader"), owner, await linkTo("nowhere", "owner")],
      ...[await linkTo("gone", "invitation"), await linkTo("quarry-lane", "invitation")],
    ];
    for (const path of paths)
      for (const rest of ["", "tasks.ics", "diary", "plan"])
        expect(await seen(`${path}${rest}`), `${path}${rest}`).toEqual(expected);
  });
});

describe("limits", () => {
  const none = { limit: async () => ({ success: false }) };

  test("never hold back a good link that reads", async () => {
    const imre = await linkTo("quarry-lane", "helper", "imre");
    for (const rest of ["", "sessions.ics", "calendar", "on/imre/2027-05-08", "nowhere", "on/x/y"])
      expect((await ask({ ...shell, unauthorized: none }, `${imre}${rest}`)).status, rest).not.toBe(
        429,
      );
  });

  test("hold back strangers, and whoever writes too often for a minute", async () => {
    const forged = `/quarry-lane/owner-1/${"A".repeat(43)}/`;
    expect((await ask({ ...shell, unauthorized: none }, forged)).status).toBe(429);
    const write = async (person: string, now = MORNING) => {
      const path = `${await linkTo("quarry-lane", "helper", person)}diary`;
      const init = { method: "POST", body: "say=x" };
      return (await ask({ ...shell, now: () => now }, path, init)).status;
    };
    expect(await write("imre")).toBe(400);
    await inStore("quarry-lane", (sql) => sql.rows("UPDATE writes SET count = 300"));
    expect([await write("imre"), await write("oda")]).toEqual([429, 400]);
    expect(await write("imre", MORNING + 60_000)).toBe(400);
  });
});

test("nothing that writes is taken from another site, whichever place it is sent to", async () => {
  const owner = await linkTo("quarry-lane", "owner");
  const evil = {
    "sec-fetch-site": "cross-site",
    "content-type": "application/x-www-form-urlencoded",
  };
  for (const rest of [
    "diary",
    "links",
    "leaving",
    "plan/2027",
    "plan/2027/check",
    "on/2027/beet/thin/1",
  ]) {
    const answer = await ask(shell, `${owner}${rest}`, {
      method: "POST",
      body: "a=b",
      headers: evil,
    });
    expect([rest, answer.status]).toEqual([rest, 403]);
  }
  const away = await ask(shell, `${owner}links/reader-1`, {
    method: "DELETE",
    headers: { origin: "https://evil.example" },
  });
  expect(away.status).toBe(403);
  expect(ORIGIN).not.toContain("evil");
});

test("with its object down a page is a short 503 whichever it is, and the log has no link", async () => {
  const said = vi.spyOn(console, "error").mockReturnValue();
  const owner = await linkTo("quarry-lane", "owner");
  const mac = owner.split("/")[3] ?? "";
  for (const rest of ["", ...HOUSEHOLD, ...OWNERS, "on/2027/beet/thin/1", "tasks.ics"]) {
    const answer = await ask({ ...shell, gardenOf: DOWN }, `${owner}${rest}`);
    expect([rest, answer.status]).toEqual([rest, 503]);
    expect(answer.headers.get("content-type")).toBe("text/plain; charset=utf-8");
  }
  expect(said.mock.calls.length).toBeGreaterThan(10);
  const logged = said.mock.calls.flat().map((word) => (word instanceof Error ? word.stack : word));
  expect(logged.join("\n")).not.toContain(mac);
  said.mockRestore();
});
