import { reset } from "cloudflare:test";
import { beforeAll, vi } from "vitest";
import { deployedPorts, ports } from "./ports.ts";

// Files share one runtime and what it has loaded; each begins with empty stores, and with nothing that another changed.
beforeAll(async () => {
  vi.restoreAllMocks();
  Object.assign(ports, deployedPorts);
  await reset();
});
