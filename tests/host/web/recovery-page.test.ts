import { beforeAll, expect, test } from "vitest";
import { ask, linkTo, publish, type Shell, shellWith } from "./garden.ts";

let shell: Shell;
beforeAll(() => {
  shell = shellWith();
});

const post = (path: string, form: Record<string, string>, over: Partial<Shell> = {}) =>
  ask({ ...shell, ...over }, path, {
    method: "POST",
    body: new URLSearchParams(form).toString(),
    headers: { "content-type": "application/x-www-form-urlencoded" },
  });

const phraseIn = (html: string) => /(?:[a-z2-7]{4} ){5}[a-z2-7]{4}/.exec(html)?.[0] ?? "";
/** The phrase that an owner makes on the page of links. */
async function madeBy(owner: string): Promise<string> {
  const made = await post(`${owner}links`, { do: "phrase" });
  expect(made.headers.get("cache-control")).toBe("no-store");
  return phraseIn(await made.text());
}

test("a phrase that is wrong, of another garden, or of none looks the same, and reaches no garden's object", async () => {
  await publish(shell, "weir");
  const phrase = await madeBy(await linkTo("weir", "owner"));
  await publish(shell, "ford");
  const asked: string[] = [];
  const gardenOf: Shell["gardenOf"] = (garden) => {
    asked.push(garden);
    return shell.gardenOf(garden);
  };
  const seen = new Set<string>();
  for (const form of [
    ...[
      { garden: "ford", phrase },
      { garden: "nowhere", phrase },
      { garden: "", phrase },
    ],
    ...[{ garden: "weir", phrase: "a".repeat(24) }, { garden: "weir", phrase: "" }, {}],
  ] as Record<string, string>[]) {
    const answer = await post("/recover", form, { gardenOf });
    seen.add(`${answer.status} ${await answer.text()}`);
  }
  expect(seen.size).toBe(1);
  expect([...seen][0]).toMatch(/^403 .*opens nothing/s);
  expect(asked).toEqual([]);
  const none = { limit: async () => ({ success: false }) };
  expect((await post("/recover", {}, { unauthorized: none })).status).toBe(429);
  expect((await ask({ ...shell, unauthorized: none }, "/recover")).status).toBe(200);
});
