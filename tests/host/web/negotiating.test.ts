import { describe, expect, test } from "vitest";
import { notFound, pageResponse, plain, unavailable } from "../../../src/host/web/answers.ts";
import { asksForPage, forPerson, withTag } from "../../../src/host/web/negotiating.ts";

/** What browsers say they take of what one opens in them, as Firefox, Safari and Chromium do. */
const BROWSERS = [
  "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8",
  "text/html,application/xhtml+xml,application/xml;q=0.9,image/avif,image/webp,image/apng,*/*;q=0.8",
];

/** What programs that fetch calendars say: Thunderbird, libraries that say anything goes, Java's own, and nothing. */
const PROGRAMS = [
  "text/calendar,text/plain;q=0.8,*/*;q=0.5",
  "*/*",
  "text/html, image/gif, image/jpeg, *; q=.2, */*; q=.2",
  "text/calendar, text/html, application/xhtml+xml",
  null,
];

const asking = (accept: string | null, more: Record<string, string> = {}) =>
  new Request("https://garden.example/", {
    headers: { ...(accept === null ? {} : { accept }), ...more },
  });
const PERSON = asking(BROWSERS[0] ?? "");

describe("whether a person looks through a browser", () => {
  test.each(BROWSERS)("one that says %s", (accept) => {
    expect(asksForPage(asking(accept).headers)).toBe(true);
  });

  test.each(PROGRAMS)("not one that says %s", (accept) => {
    expect(asksForPage(asking(accept).headers)).toBe(false);
  });

  test("nor whoever holds a copy already, as who follows a calendar does", () => {
    const [accept = ""] = BROWSERS;
    for (const name of ["if-none-match", "if-modified-since"])
      expect(asksForPage(asking(accept, { [name]: '"x"' }).headers)).toBe(false);
  });
});

describe("an error", () => {
  test("is a page for a person, the same bytes and headers for the same line, never kept", async () => {
    const [one, other] = await Promise.all(
      [notFound(), notFound()].map((e) => forPerson(e, PERSON)),
    );
    expect([one?.status, one?.headers.get("content-type")]).toEqual([
      404,
      "text/html; charset=utf-8",
    ]);
    expect(one?.headers.get("cache-control")).toBe("no-store");
    expect([...(other?.headers ?? [])]).toEqual([...(one?.headers ?? [])]);
    expect(await other?.text()).toBe(await one?.text());
  });

  test("keeps what its line said and when to ask again", async () => {
    const answer = await forPerson(unavailable("K7"), PERSON);
    expect([answer.status, answer.headers.get("retry-after")]).toEqual([503, "600"]);
    expect(await answer.text()).toContain("K7");
  });

  test("stays a line for programs, and for a person what is no error or a page already", async () => {
    const line = notFound();
    expect(await forPerson(line, asking("*/*"))).toBe(line);
    const [fine, page] = [plain(200, "ok\n"), pageResponse(404, "<p>gone</p>")];
    expect(await forPerson(fine, PERSON)).toBe(fine);
    expect(await forPerson(page, PERSON)).toBe(page);
  });
});

describe("a page's tag", () => {
  const tagOf = async (html: string, epoch = "0") =>
    (await withTag(pageResponse(200, html), PERSON, epoch)).headers.get("etag") ?? "";

  test("is of its bytes and the epoch", async () => {
    expect(await tagOf("<p>a</p>")).toMatch(/^"[0-9a-f]{32}\.0"$/);
    expect(await tagOf("<p>a</p>")).toBe(await tagOf("<p>a</p>"));
    expect(await tagOf("<p>b</p>")).not.toBe(await tagOf("<p>a</p>"));
    expect(await tagOf("<p>a</p>", "1")).not.toBe(await tagOf("<p>a</p>"));
  });

  test("sent back, also weak, is answered without a body, with the headers of the whole", async () => {
    const etag = await tagOf("<p>a</p>");
    for (const tags of [etag, `W/${etag}`, `"x", ${etag}`, "*"]) {
      const again = asking(BROWSERS[0] ?? "", { "if-none-match": tags });
      const answer = await withTag(pageResponse(200, "<p>a</p>"), again, "0");
      expect([answer.status, await answer.text()]).toEqual([304, ""]);
      expect(answer.headers.get("etag")).toBe(etag);
      expect(answer.headers.get("cache-control")).toBe("private, no-cache");
    }
  });

  test("is none where nothing is to be kept, where it has one, or was no reading", async () => {
    const post = new Request("https://garden.example/", { method: "POST" });
    const error = pageResponse(404, "<p>a</p>");
    const [secret, own] = [plain(200, "x"), pageResponse(200, "x", { ETag: '"own"' })];
    expect(await withTag(secret, PERSON, "0")).toBe(secret);
    expect(await withTag(own, PERSON, "0")).toBe(own);
    expect(await withTag(error, PERSON, "0")).toBe(error);
    const answered = pageResponse(200, "x");
    expect(await withTag(answered, post, "0")).toBe(answered);
  });
});
