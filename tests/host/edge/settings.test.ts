import { expect, test } from "vitest";
import { settingsOf } from "../../../src/host/edge/settings.ts";

const VERSION = { id: "version 1" };

test("what is not bound has its plain meaning: no address of its own, the first epoch", () => {
  expect(settingsOf({ VERSION })).toEqual({
    ...{ code: "version 1", epoch: "0", origin: null, contact: null },
  });
});

test("an address is cut to its origin, and another address is other code, since links change", () => {
  const settings = settingsOf({ VERSION, ORIGIN: "https://garden.example/x", EPOCH: "3" });
  expect(settings).toEqual({
    code: "version 1 https://garden.example",
    epoch: "3",
    origin: "https://garden.example",
    contact: "https://garden.example",
  });
});

test("who runs this is reached as they say, else at their address", () => {
  const settings = settingsOf({
    ...{ VERSION, ORIGIN: "https://garden.example", CONTACT: "lane@garden.example" },
  });
  expect(settings.contact).toBe("lane@garden.example");
});
