import { expect, test } from "vitest";
import {
  archive,
  feedHeaders,
  json,
  notAllowed,
  notFound,
  pageResponse,
  plain,
  SCRIPTED,
  SCRIPTED_WITH_DRAWING,
  tooOften,
  unavailable,
  withPages,
} from "../../../src/host/web/answers.ts";

test.each([
  ["nothing found", notFound(), 404],
  ["a wrong method", notAllowed("GET"), 405],
  ["nothing to be had now", unavailable(), 503],
  ["a line", plain(200, "ok"), 200],
])("%s is plain text that no cache keeps and no search finds", (_, answer, status) => {
  expect(answer.status).toBe(status);
  expect(answer.headers.get("content-type")).toBe("text/plain; charset=utf-8");
  expect(answer.headers.get("cache-control")).toBe("no-store");
  expect(answer.headers.get("x-robots-tag")).toBe("noindex");
  expect(answer.headers.get("referrer-policy")).toBe("no-referrer");
  expect(answer.headers.get("x-content-type-options")).toBe("nosniff");
});

test("a wrong method names the right ones, and a failure when to ask again", () => {
  expect(notAllowed("GET, HEAD").headers.get("allow")).toBe("GET, HEAD");
  expect(unavailable().headers.get("retry-after")).toBe("600");
});

test("a page may load nothing but files of ours", () => {
  const policy = pageResponse(200, "<p>").headers.get("content-security-policy");
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain("style-src 'self'");
  expect(policy).not.toContain("unsafe");
  expect(policy).toContain("script-src 'self'");
  expect(policy).not.toMatch(/https?:|\*/);
});

test("a page whose script asks may ask here and nowhere else", () => {
  const policy = pageResponse(200, "<p>", SCRIPTED).headers.get("content-security-policy");
  expect(policy).toMatch(/^default-src 'none';.*connect-src 'self'/);
  expect(policy).not.toContain("unsafe");
});

test("whoever asks too often is told for how long to wait", () => {
  const answer = tooOften(60);
  expect([answer.status, answer.headers.get("retry-after")]).toEqual([429, "60"]);
});

test("an archive is handed over to be kept, under a plain name", () => {
  const { headers } = archive(new Uint8Array([1]), 'a"\r\nb.zip');
  expect(headers.get("content-disposition")).toBe('attachment; filename="a___b.zip"');
  expect(headers.get("cache-control")).toBe("no-store");
});

test("values are JSON that ends in a line", async () => {
  const answer = json(200, { version: 1 }, { ETag: '"1"' });
  expect(answer.headers.get("content-type")).toContain("application/json");
  expect(answer.headers.get("etag")).toBe('"1"');
  expect(await answer.text()).toBe('{"version":1}\n');
});

test("the stylesheet may be kept, a feed only by whom it was sent to", () => {
  expect(withPages("css", "").headers.get("cache-control")).toContain("public");
  expect(feedHeaders()["Cache-Control"]).toMatch(/^private, max-age=\d+, stale-if-error=\d+$/);
});

test("what a page's script may do is no more than it needs", () => {
  const of = (headers: Readonly<Record<string, string>>) =>
    Object.values(headers).join(" ").split("; ");
  const plainPage = Object.fromEntries(pageResponse(200, "<p>").headers);
  expect(of(plainPage)).toContain("script-src 'self'");
  expect(of(plainPage).join(" ")).not.toMatch(/connect-src|blob:/);
  expect(of(SCRIPTED)).toContain("img-src 'self'");
  expect(of(SCRIPTED_WITH_DRAWING)).toContain("img-src 'self' blob:");
  for (const headers of [plainPage, SCRIPTED, SCRIPTED_WITH_DRAWING])
    expect(of(headers).join(" ")).not.toMatch(/unsafe|https?:|\*/);
  for (const headers of [SCRIPTED, SCRIPTED_WITH_DRAWING]) {
    const names = of(headers).map((directive) => directive.split(" ")[0]);
    expect(new Set(names).size).toBe(names.length);
  }
});
