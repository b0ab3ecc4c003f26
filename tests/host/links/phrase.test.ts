import { expect, test } from "vitest";
import { keyFrom } from "../../../src/host/links/mac.ts";
import { fingerprintOf, makePhrase, readPhrase } from "../../../src/host/links/phrase.ts";

const key = await keyFrom("a secret for tests, of more than 32 characters");

test("a phrase is six groups of four letters, another each time, and is read however it was typed", async () => {
  const phrase = await makePhrase("lane", key);
  expect(phrase).toMatch(/^(?:[a-z2-7]{4} ){5}[a-z2-7]{4}$/);
  expect(await makePhrase("lane", key)).not.toBe(phrase);
  const alike = phrase.replaceAll("o", "0").replaceAll("b", "8");
  for (const typed of [phrase, phrase.toUpperCase(), phrase.replaceAll(" ", "-"), ` ${alike}\n`])
    expect(await readPhrase("lane", typed, key), typed).toBe(phrase);
});

test("a phrase is of one garden and one deployment, and no letter of it may differ", async () => {
  const phrase = await makePhrase("lane", key);
  const other = await keyFrom("another secret for tests, of more than 32 characters");
  expect(await readPhrase("mill", phrase, key)).toBeNull();
  expect(await readPhrase("lane", phrase, other)).toBeNull();
  for (let at = 0; at < phrase.length; at += 5) {
    const wrong = phrase.slice(0, at) + (phrase[at] === "a" ? "c" : "a") + phrase.slice(at + 1);
    expect(await readPhrase("lane", wrong, key)).toBeNull();
  }
  for (const typed of ["", "x", `${phrase} a`, "a".repeat(24), "ä".repeat(24)])
    expect(await readPhrase("lane", typed, key)).toBeNull();
});

test("what is stored of it does not have it", async () => {
  const phrase = await makePhrase("lane", key);
  expect(fingerprintOf(phrase)).toMatch(/^[\w-]{43}$/);
  expect(fingerprintOf(phrase)).not.toContain(phrase.slice(0, 4));
  expect(fingerprintOf(phrase)).toBe(fingerprintOf(phrase));
});
