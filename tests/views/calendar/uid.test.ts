import { expect, test } from "vitest";
import { uidOf } from "../../../src/views/calendar/uid.ts";

test("a UID is a lower-case UUID of version 8", () => {
  for (const key of ["2027/beet/thin/1", "imre/2027-05-08", "imre/open", "\r\n"]) {
    expect(uidOf("quarry-lane", key)).toMatch(
      /^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/,
    );
  }
});

test("it hangs on garden and key alone and stays the same for ever", () => {
  expect(uidOf("quarry-lane", "2027/beet/thin/1")).toBe("6d6b40e8-d134-8ee3-9bb7-32668bdde9ee");
});

test("another garden's like event has another UID, and no pair can be read two ways", () => {
  const uids = [uidOf("a", "b"), uidOf("b", "a"), uidOf("a", "bc"), uidOf("ab", "c")];
  expect(new Set(uids).size).toBe(4);
});
