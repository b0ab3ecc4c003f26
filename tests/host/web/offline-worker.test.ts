import { runInNewContext } from "node:vm";
import { describe, expect, test } from "vitest";
import { offlineWorker } from "../../../src/host/web/offline-worker.ts";

const HOME = "https://garden.example/g/l/m/";
const DAY_MS = 86_400_000;

/** Caches as a browser keeps them: by name, by path. */
function cachesOf(kept: Map<string, Map<string, Response>>) {
  const pathOf = (asked: string) => new URL(asked, HOME).pathname;
  return {
    open: async (name: string) => {
      const cache = kept.get(name) ?? new Map<string, Response>();
      kept.set(name, cache);
      return {
        match: async (asked: string) => cache.get(pathOf(asked))?.clone(),
        put: async (asked: string, answer: Response) => void cache.set(pathOf(asked), answer),
        delete: async (asked: string) => cache.delete(pathOf(asked)),
        addAll: async () => {},
      };
    },
    delete: async (name: string) => kept.delete(name),
  };
}

/** The worker of a link, what it keeps, and a network that answers as it is told; null: there is none. */
function workerWith(answers: (path: string) => Response | null, now = () => Date.UTC(2027, 4, 8)) {
  const kept = new Map<string, Map<string, Response>>();
  const listeners = new Map<string, (event: object) => void>();
  const known = { gone: false };
  const scope = {
    registration: {
      scope: HOME,
      unregister: async () => {
        known.gone = true;
      },
    },
    addEventListener: (kind: string, then: (event: object) => void) => listeners.set(kind, then),
    skipWaiting: () => {},
    clients: { claim: async () => {} },
  };
  const fetch = async (asked: string | { url: string }) => {
    const url = new URL(typeof asked === "string" ? asked : asked.url, HOME);
    const answer = answers(url.pathname);
    if (answer === null) throw new TypeError("no network");
    return answer;
  };
  class Clock extends Date {
    static override now = () => now();
  }
  const browser = {
    fetch,
    caches: cachesOf(kept),
    Response,
    Headers,
    URL,
    Date: Clock,
    location: new URL(HOME),
  };
  runInNewContext(offlineWorker("<p>No </script> network.</p>"), { self: scope, ...browser });
  const open = async (path: string, { mode = "navigate", method = "GET" } = {}) => {
    const behind: Promise<unknown>[] = [];
    let answered: Promise<Response> | null = null;
    listeners.get("fetch")?.({
      request: { url: new URL(path, HOME).href, mode, method },
      respondWith: (answer: Promise<Response>) => {
        answered = answer;
      },
      waitUntil: (work: Promise<unknown>) => behind.push(work),
    });
    const answer = await (answered as Promise<Response> | null);
    await Promise.all(behind);
    return answer;
  };
  return { open, kept, known };
}

const week = () =>
  new Response("<body><main><h1>Quarry Lane</h1></main></body>", {
    headers: { "Content-Type": "text/html" },
  });

describe("a link's worker", () => {
  test("shows the last week seen where there is no network, and says of when it is", async () => {
    let network = true;
    const { open } = workerWith(() => (network ? week() : null));
    expect(await (await open(HOME))?.text()).not.toContain("No network");
    network = false;
    const text = await (await open(HOME))?.text();
    expect(text).toContain("<h1>Quarry Lane</h1>");
    expect(text).toMatch(
      /<main><p class="note" role="status">No network\. This is the garden as it was on \w+/,
    );
  });

  test("shows it too while the garden can't answer", async () => {
    let down = false;
    const { open } = workerWith(() => (down ? new Response("later", { status: 503 }) : week()));
    await open(HOME);
    down = true;
    expect(await (await open(HOME))?.text()).toContain("Quarry Lane");
  });

  test("says of any other page, and of what was sent, that there is no network", async () => {
    let network = true;
    const { open } = workerWith(() => (network ? week() : null));
    await open(HOME);
    network = false;
    for (const [path, method] of [
      [`${HOME}diary`, "GET"],
      [HOME, "POST"],
    ] as const) {
      const answer = await open(path, { method });
      expect([answer?.status, await answer?.text()]).toEqual([503, "<p>No </script> network.</p>"]);
    }
  });

  test("keeps only the garden's own page and what it looks like, under the link's own name", async () => {
    const { open, kept } = workerWith(() => week());
    await open(HOME);
    await open(`${HOME}diary`);
    await open("/paper.css", { mode: "no-cors" });
    expect([...kept.keys()]).toEqual(["sowbell /g/l/m/"]);
    expect([...(kept.get("sowbell /g/l/m/")?.keys() ?? [])].sort()).toEqual([
      "/g/l/m/",
      "/paper.css",
    ]);
  });

  test("forgets everything and ends once its link opens nothing, whichever page says so", async () => {
    let revoked = false;
    const { open, kept, known } = workerWith(() =>
      revoked ? new Response("", { status: 404 }) : week(),
    );
    await open(HOME);
    revoked = true;
    expect((await open(`${HOME}diary`))?.status).toBe(404);
    expect([kept.size, known.gone]).toEqual([0, true]);
  });

  test("forgets nothing for a page that is not there under a link that opens", async () => {
    const { open, kept } = workerWith((path) =>
      path === "/g/l/m/" ? week() : new Response("", { status: 404 }),
    );
    await open(HOME);
    await open(`${HOME}on/gone`);
    expect(kept.size).toBe(1);
  });

  test("shows no week that is older than two weeks, and lets it go", async () => {
    let [network, now] = [true, Date.UTC(2027, 4, 8)];
    const { open, kept } = workerWith(
      () => (network ? week() : null),
      () => now,
    );
    await open(HOME);
    network = false;
    now += 14 * DAY_MS;
    expect((await open(HOME))?.status).toBe(503);
    expect(kept.get("sowbell /g/l/m/")?.has("/g/l/m/")).toBe(false);
  });

  test("leaves other addresses alone", async () => {
    const { open } = workerWith(() => week());
    expect(await open("https://elsewhere.example/")).toBeNull();
    expect(await open(`${HOME}qr.svg`, { mode: "no-cors" })).toBeNull();
  });
});

test("what stands in the page can't end the script", () => {
  expect(offlineWorker("</script><script>")).not.toContain("</script>");
});
