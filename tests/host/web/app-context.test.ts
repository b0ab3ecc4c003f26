import { expect, test } from "vitest";
import { appContextOf } from "../../../src/host/web/app-context.ts";

const bindings = {
  GARDENS: { getByName: (name: string) => ({ name }) } as unknown as Bindings["GARDENS"],
  VERSION: { id: "version 1" },
  SECRET: "a secret for tests, of more than 32 characters",
};

test("what is not bound has its plain meaning: no address of its own, and nobody is limited", async () => {
  expect(await appContextOf(bindings)).toMatchObject({ origin: null, unauthorized: null });
});

test("an address is cut to its origin", async () => {
  const { origin } = await appContextOf({ ...bindings, ORIGIN: "https://garden.example/x" });
  expect(origin).toBe("https://garden.example");
});

test("a garden's object is found by the garden's id", async () => {
  const { gardenOf } = await appContextOf(bindings);
  expect(gardenOf("quarry-lane")).toEqual({ name: "quarry-lane" });
});

test("the context is made once an isolate", async () => {
  expect(await appContextOf(bindings)).toBe(await appContextOf(bindings));
});

test("without a secret nothing is served", async () => {
  const { SECRET, ...rest } = bindings;
  expect(SECRET).toBeDefined();
  await expect(appContextOf(rest)).rejects.toThrow("32 characters");
});
