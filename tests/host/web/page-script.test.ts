import { runInNewContext } from "node:vm";
import { expect, test } from "vitest";
import { PAGE_JS } from "../../../src/host/web/page-script.ts";

const document = { currentScript: { dataset: { base: "/g/l/m/" } } };

test("registers the link's own worker, for what lies under the link", () => {
  const registered: unknown[] = [];
  const register = async (...given: unknown[]) => registered.push(...given);
  runInNewContext(PAGE_JS, { document, navigator: { serviceWorker: { register } } });
  expect(JSON.parse(JSON.stringify(registered))).toEqual([
    "/g/l/m/worker.js",
    { scope: "/g/l/m/" },
  ]);
});

test("does nothing where a browser has no workers", () => {
  expect(() => runInNewContext(PAGE_JS, { document, navigator: {} })).not.toThrow();
});
