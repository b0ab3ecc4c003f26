import { describe, expect, test } from "vitest";
import {
  codingFor,
  conditionsOf,
  etagOf,
  heldBy,
  isNotModified,
  lastModifiedAt,
} from "../../../src/host/web/validators.ts";

const lastModified = Date.UTC(2027, 4, 8, 6, 0, 0);
const etag = '"print.0"';

describe("the coding", () => {
  test.each([
    [null, "identity"],
    ["", "identity"],
    ["gzip", "gzip"],
    ["br, gzip", "gzip"],
    ["GZIP;q=0.5", "gzip"],
    ["x-gzip", "gzip"],
    ["*", "gzip"],
    ["br", "identity"],
    ["identity", "identity"],
    ["gzip;q=0", "identity"],
    ["gzip; q=0.0, *", "identity"],
    ["gzip;q=nonsense", "identity"],
    [";;,,", "identity"],
  ])("for %s is %s", (accepted, coding) => {
    expect(codingFor(accepted)).toBe(coding);
  });
});

describe("the entity tag", () => {
  test("is strong and differs by bytes, epoch and coding", () => {
    const tags = [
      etagOf("print", "0", "identity"),
      etagOf("print", "0", "gzip"),
      etagOf("print", "1", "identity"),
      etagOf("other", "0", "identity"),
    ];
    expect(new Set(tags).size).toBe(4);
    expect(tags[0]).toBe(etag);
  });
});

describe("what a client holds is still good", () => {
  const held = (headers: Record<string, string>) =>
    isNotModified(conditionsOf(new Headers(headers)), {
      etag,
      lastModified,
      now: lastModified + 60_000,
    });

  test.each([
    ["the tag itself", { "if-none-match": etag }],
    ["the tag as a weak one", { "if-none-match": `W/${etag}` }],
    ["the tag among others", { "if-none-match": `"old", W/"older" ,${etag}` }],
    ["any tag", { "if-none-match": " * " }],
    ["the date alone", { "if-modified-since": "Sat, 08 May 2027 06:00:00 GMT" }],
    ["a later date", { "if-modified-since": "Sun, 09 May 2027 06:00:00 GMT" }],
    [
      "the tag with an older date",
      { "if-none-match": etag, "if-modified-since": "Fri, 07 May 2027 06:00:00 GMT" },
    ],
  ])("by %s", (_, headers) => {
    expect(held(headers)).toBe(true);
  });

  test.each([
    ["another tag", { "if-none-match": '"other"' }],
    ["a date years ahead", { "if-modified-since": "Fri, 08 May 2037 06:00:00 GMT" }],
    ["the tag within a longer one", { "if-none-match": '"print.01"' }],
    ["the tag without quotes", { "if-none-match": "print.0" }],
    ["an empty list", { "if-none-match": "" }],
    ["an older date", { "if-modified-since": "Sat, 08 May 2027 05:59:59 GMT" }],
    ["no date at all", { "if-modified-since": "yesterday" }],
    [
      "another tag, though the date fits",
      { "if-none-match": '"other"', "if-modified-since": "Sat, 08 May 2027 06:00:00 GMT" },
    ],
    ["nothing", {}],
  ])("not by %s", (_, headers) => {
    expect(held(headers)).toBe(false);
  });

  test("is settled quickly for a list of ten thousand tags", () => {
    const many = Array.from({ length: 10_000 }, (_, at) => `W/"${at}"`).join(", ");
    expect(held({ "if-none-match": `${many}, ${etag}` })).toBe(true);
    expect(held({ "if-none-match": `"${"x".repeat(60_000)}` })).toBe(false);
  });
});

describe("what a client says it holds", () => {
  test.each([
    [{ "if-none-match": '"a"' }, { any: true, etag: '"a"' }],
    [{ "if-none-match": '"a", "b"' }, { any: true, etag: null }],
    [{ "if-none-match": "*" }, { any: true, etag: null }],
    [{ "if-modified-since": "Sat, 08 May 2027 06:00:00 GMT" }, { any: true, etag: null }],
    [{}, { any: false, etag: null }],
  ])("%j", (headers, held) => {
    expect(heldBy(new Headers(headers as Record<string, string>))).toEqual(held);
  });
});

describe("the instant of the last change", () => {
  test("is now to the whole second for the first bytes", () => {
    expect(lastModifiedAt(lastModified + 999, null)).toBe(lastModified);
  });

  test("rises by a second at least, even if the clock stands or goes back", () => {
    expect(lastModifiedAt(lastModified + 5, lastModified)).toBe(lastModified + 1000);
    expect(lastModifiedAt(lastModified - 60_000, lastModified)).toBe(lastModified + 1000);
    expect(lastModifiedAt(lastModified + 90_000, lastModified)).toBe(lastModified + 90_000);
  });

  test("comes back to now behind a clock that ran ahead", () => {
    const years = 4000 * 86_400_000;
    expect(lastModifiedAt(lastModified, lastModified + years)).toBe(lastModified);
  });
});
