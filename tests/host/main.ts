import { gardenObject } from "../../src/host/edge/object.ts";
import { ports } from "./ports.ts";

/** A garden's object whose ports a test may change. */
export class GardenObject extends gardenObject({
  now: () => ports.now(),
  engine: () => ports.engine(),
  pause: (ms) => ports.pause(ms),
  settings: (bindings) => ports.settings(bindings),
  sqlOf: (storage) => ports.sqlOf(storage),
  former: (bindings) => ports.former(bindings),
}) {}

export { default } from "../../src/host/worker.ts";
