import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { fetchAnswer } from "../../../src/host/weather/fetch-answer.ts";

const NOW = Date.UTC(2027, 4, 10, 12);
const EXPIRES = "Mon, 10 May 2027 13:00:00 GMT";
const seen: Record<string, string | string[] | undefined>[] = [];

/** A server on this machine that answers as services do, well and badly. */
let server: Server;
beforeAll(async () => {
  server = createServer((request, response) => {
    seen.push(request.headers);
    const path = request.url ?? "";
    if (path === "/good")
      response
        .writeHead(200, { Expires: EXPIRES, "Last-Modified": "Mon, 10 May 2027 11:00:00 GMT" })
        .end('{"ok":1}');
    else if (path === "/unchanged") response.writeHead(304, { Expires: EXPIRES }).end();
    else if (path === "/busy") response.writeHead(429, { "Retry-After": "7200" }).end("later");
    else if (path === "/later")
      response.writeHead(503, { "Retry-After": "Mon, 10 May 2027 20:00:00 GMT" }).end();
    else if (path === "/elsewhere") response.writeHead(302, { Location: "/good" }).end();
    else if (path === "/long") response.writeHead(200).end("x".repeat(5 * 1024 * 1024));
    else if (path === "/cut") {
      response.writeHead(200, { "Content-Length": "100" });
      response.write("{");
      setTimeout(() => response.destroy(), 20);
    } else response.writeHead(500).end("<html>");
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
});
afterAll(() => void server.close());

const ask = (path: string, knownSince: string | null = null) => {
  const { port } = server.address() as AddressInfo;
  const request = { url: `http://127.0.0.1:${port}${path}`, userAgent: "Sowbell/0.1 test" };
  return fetchAnswer({ ...request, knownSince }, { fetch, now: NOW });
};

describe("a service is asked", () => {
  test("by name, and gives its text and till when it holds", async () => {
    expect(await ask("/good")).toEqual({
      kind: "text",
      text: '{"ok":1}',
      lastModified: "Mon, 10 May 2027 11:00:00 GMT",
      expiresAt: NOW + 3_600_000,
      retryAt: null,
    });
    expect(seen.at(-1)?.["user-agent"]).toBe("Sowbell/0.1 test");
  });

  test("only for what is newer than what is known", async () => {
    const since = "Mon, 10 May 2027 11:00:00 GMT";
    expect(await ask("/unchanged", since)).toMatchObject({ kind: "unchanged" });
    expect(seen.at(-1)?.["if-modified-since"]).toBe(since);
  });

  test.each([
    ["/busy", "answered 429", NOW + 7_200_000],
    ["/later", "answered 503", NOW + 8 * 3_600_000],
    ["/broken", "answered 500", null],
    ["/elsewhere", "answered 302", null],
    ["/long", "too long", null],
    ["/cut", "not reached", null],
  ])(
    "and where it answers %s that is said, with when to come again",
    async (path, fault, retryAt) => {
      expect(await ask(path)).toMatchObject({ kind: "failed", fault, retryAt });
    },
  );

  test("and is not waited for without end", async () => {
    const silent = () => Promise.reject(Object.assign(new Error("late"), { name: "TimeoutError" }));
    const request = { url: "http://x", userAgent: "x", knownSince: null };
    expect(await fetchAnswer(request, { fetch: silent, now: NOW })).toMatchObject({
      kind: "failed",
      fault: "no answer in time",
    });
  });
});
