import { beforeAll, describe, expect, test } from "vitest";
import { engine } from "../../../src/host/edge/core.ts";
import { savedPlan } from "../../../src/host/store/plans.ts";
import { typed } from "./forms.ts";
import { ask, inStore, linkTo, ORIGIN, type Shell, shellWith } from "./garden.ts";

let shell: Shell;

beforeAll(async () => {
  shell = shellWith({ engine });
});

const send = async (garden: string, form: URLSearchParams) =>
  ask(shell, await linkTo(garden, "invitation"), {
    method: "POST",
    body: form.toString(),
    headers: { "content-type": "application/x-www-form-urlencoded" },
  });

const saving = (over: Readonly<Record<string, string>> = {}) =>
  typed({ at: "look", step: "next", ...over });

describe("a first plan that is saved", () => {
  test("makes the garden, and shows each person's link and the owner's", async () => {
    const made = await send("saved-one", saving());
    expect(made.status).toBe(200);
    expect(made.headers.get("cache-control")).toBe("no-store");
    expect(made.headers.get("content-security-policy")).toMatch(/script-src 'self';(?!.*unsafe)/);
    const html = await made.text();
    for (const [role, person] of [
      ["owner", null],
      ["helper", "ada"],
      ["helper", "bo"],
    ] as const)
      expect(html).toContain(`<code>${ORIGIN}${await linkTo("saved-one", role, person)}</code>`);
    expect(html).not.toContain(await linkTo("saved-one", "helper"));
    const saved = await inStore("saved-one", (sql) => savedPlan(sql, 2027));
    expect(saved?.text).toContain("carrot: 3 rows");
    expect(saved?.version).toBe(1);
  });

  test("shows the same again where the answer was lost, and makes no second version", async () => {
    const again = await send("saved-one", saving());
    expect(again.status).toBe(200);
    expect(await again.text()).toContain("/helper-ada-1/");
    expect((await inStore("saved-one", (sql) => savedPlan(sql, 2027)))?.version).toBe(1);
    expect((await send("saved-one", saving({ garden: "Another" }))).status).toBe(404);
  });

  test("has one link for everybody where it names nobody", async () => {
    const nobody = { "people.0.name": "", "people.0.gardens": "", "people.1.name": "" };
    const html = await (await send("saved-none", saving(nobody))).text();
    expect(html).toContain(`<code>${ORIGIN}${await linkTo("saved-none", "helper")}</code>`);
    expect(html).toContain("For everybody");
  });

  test("with something wrong in it is not saved, and its page is shown", async () => {
    const answer = await send("saved-not", saving({ lastFrost: "mid May" }));
    expect(answer.status).toBe(422);
    expect(await answer.text()).toContain("When does it freeze?");
    expect(await inStore("saved-not", (sql) => savedPlan(sql, 2027))).toBeNull();
  });
});
