import { expect, test } from "vitest";
import { cropNamed } from "../../../src/crops/index.ts";
import { NICKNAMES } from "../../../src/garden/diary/nicknames.ts";

test("every nickname is of a crop that the facts know, and is none of their own names", () => {
  for (const [nickname, name] of Object.entries(NICKNAMES)) {
    expect(cropNamed(name), nickname).not.toBeNull();
    expect(nickname, nickname).toBe(nickname.toLowerCase());
  }
});
