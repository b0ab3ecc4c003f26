import { afterAll, expect, test, vi } from "vitest";

const seen = Object.getOwnPropertyDescriptor(globalThis, "process") ?? {};

vi.mock("../../src/host/worker.ts", () => ({ default: "the worker", GardenObject: "its object" }));

afterAll(() => void vi.doUnmock("../../src/host/worker.ts"));

test("what is deployed is the worker with its object, and shows the page writer no process", async () => {
  try {
    const deployed = await import("../../src/host/deployed.ts");
    expect(globalThis.process).toBeUndefined();
    expect({ ...deployed }).toEqual({ default: "the worker", GardenObject: "its object" });
  } finally {
    Object.defineProperty(globalThis, "process", seen);
  }
});
