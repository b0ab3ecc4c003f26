import { createServer } from "node:net";

/** A port of this machine that nothing listens at just now. */
export function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, "127.0.0.1", () => {
      const at = server.address();
      server.close(() => resolve(typeof at === "object" && at ? at.port : 0));
    });
  });
}
