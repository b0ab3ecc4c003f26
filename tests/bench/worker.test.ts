import { expect, test } from "vitest";
import worker from "./worker.ts";

test("a job runs as often as it is asked to, and one that is not there is not found", async () => {
  const statusOf = (path: string) => worker.fetch(new Request(`http://jobs/${path}`)).status;
  expect(statusOf("writer/6?times=2")).toBe(200);
  expect(statusOf("nothing/6?times=1")).toBe(404);
});
