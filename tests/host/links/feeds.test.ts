import { describe, expect, test } from "vitest";
import { bedFeed, eventPath, readEventPath, readFeed } from "../../../src/host/links/feeds.ts";
import type { Link } from "../../../src/host/links/segment.ts";

const link = (role: Link["role"], person: string | null = null): Link => ({
  garden: "quarry-lane",
  role,
  person,
  serial: 1,
});

describe("the feeds under a link", () => {
  test("a helper's sessions are their own, and the household's are everybody's", () => {
    const imre = link("helper", "imre");
    expect(readFeed(imre, "sessions.ics")?.choice).toEqual({
      of: { person: "imre" },
      kind: "sessions",
      bed: null,
      quiet: false,
      reader: false,
    });
    expect(readFeed(imre, "household.ics")?.choice).toMatchObject({
      of: "household",
      kind: "sessions",
    });
  });

  test("an owner's sessions are the household's", () => {
    expect(readFeed(link("owner"), "sessions.ics")?.choice.of).toBe("household");
  });

  test.each([
    ["tasks.ics", { kind: "tasks", bed: null, quiet: false }],
    ["warnings.ics", { kind: "warnings", bed: null, quiet: false }],
    ["bed/south-bed.ics", { kind: "tasks", bed: "south-bed", quiet: false }],
    ["bed/b~e4~ch.ics", { kind: "tasks", bed: "bäch", quiet: false }],
    ["quiet/tasks.ics", { kind: "tasks", bed: null, quiet: true }],
    ["quiet/bed/south-bed.ics", { kind: "tasks", bed: "south-bed", quiet: true }],
  ])("%s is what it says, for the household and for a reader", (path, choice) => {
    expect(readFeed(link("owner"), path)?.choice).toMatchObject({ ...choice, reader: false });
    expect(readFeed(link("reader"), path)?.choice).toMatchObject({ ...choice, reader: true });
  });

  test.each(["sessions.ics", "household.ics", "quiet/sessions.ics"])(
    "a reader has no %s, which would tell who is at home when",
    (path) => {
      expect(readFeed(link("reader"), path)).toBeNull();
    },
  );

  test.each([
    "",
    "tasks",
    "tasks.ics/",
    "TASKS.ics",
    "loud/tasks.ics",
    "quiet/quiet/tasks.ics",
    "bed/.ics",
    "bed/south bed.ics",
    "bed/~61~.ics",
    "bed/a/b.ics",
    "constructor.ics",
  ])("nothing else is a feed: %s", (path) => {
    expect(readFeed(link("owner"), path)).toBeNull();
  });

  test("the deployment's own key opens no feed", () => {
    expect(readFeed(link("admin"), "tasks.ics")).toBeNull();
    expect(readFeed(link("invitation"), "tasks.ics")).toBeNull();
  });
});

test("a bed's feed is found again by the path made for it", () => {
  expect(readFeed(link("owner"), bedFeed("süd-beet"))?.choice.bed).toBe("süd-beet");
});

describe("an event's page", () => {
  test.each(["2027/beet/thin/1", "imre/open", "zoë/2027-05-08"])("is found again: %s", (key) => {
    expect(readEventPath(eventPath(key))).toBe(key);
  });

  test.each(["", "on", "on/", "on//a", "on/a/", "at/a", "on/%61", "on/~61~"])(
    "is not found at %s",
    (path) => {
      expect(readEventPath(path)).toBeNull();
    },
  );
});
