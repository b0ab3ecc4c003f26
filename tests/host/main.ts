import { gardenObject } from "../../src/host/edge/object.ts";
import { weatherCell } from "../../src/host/edge/weather-cell.ts";
import { ports } from "./ports.ts";

/** A garden's object whose ports a test may change. */
export class GardenObject extends gardenObject({
  now: () => ports.now(),
  engine: () => ports.engine(),
  towns: () => ports.towns(),
  pause: (ms) => ports.pause(ms),
  settings: (bindings) => ports.settings(bindings),
  sqlOf: (storage) => ports.sqlOf(storage),
  askCell: (bindings) => ports.askCell(bindings),
  copies: (bindings) => ports.copies(bindings),
  askYears: (bindings) => ports.askYears(bindings),
  former: (bindings) => ports.former(bindings),
}) {}

/** A cell's object whose ports a test may change. */
export class WeatherCell extends weatherCell({
  now: () => ports.now(),
  engine: () => ports.engine(),
  fetch: (url, init) => ports.fetch(url, init),
}) {}

export { default } from "../../src/host/worker.ts";
