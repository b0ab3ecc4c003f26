import { inject } from "vitest";
import { run } from "../../src/host/cli/cli.ts";

/** A fresh invitation's address, as `sowbell invite` prints it. */
export async function invitation(): Promise<string> {
  const { server, secret } = inject("sowbell");
  const printed: string[] = [];
  process.env.SECRET = secret;
  const exit = await run(["invite", "--server", server], {
    out: (text) => printed.push(text),
    err: () => undefined,
    now: Date.now,
    fetch,
  });
  if (exit !== 0) throw new Error("no invitation");
  return printed.join("").trim();
}
