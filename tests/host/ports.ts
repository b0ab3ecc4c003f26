import type { ObjectPorts } from "../../src/host/edge/object.ts";
import { settingsOf } from "../../src/host/edge/settings.ts";
import type { CellPorts } from "../../src/host/edge/weather-cell.ts";
import { sqlStoreOf } from "../../src/host/store/sql.ts";

type Ports = ObjectPorts & Pick<CellPorts, "fetch">;
type Changeable = { -readonly [Name in keyof Ports]: Ports[Name] };

/** As they are deployed, but without pauses. */
const AS_DEPLOYED: Ports = {
  now: Date.now,
  engine: async () => (await import("../../src/host/edge/core.ts")).engine,
  towns: async () => "# Towns\nhelena;;US;MT;46.6;-112.0\n",
  pause: async () => undefined,
  settings: settingsOf,
  sqlOf: sqlStoreOf,
  askCell: ({ WEATHER }) =>
    WEATHER ? (cell, question) => WEATHER.getByName(cell).ask(question) : null,
  askYears: ({ WEATHER }) =>
    WEATHER ? (cell, place) => WEATHER.getByName(cell).years(place) : null,
  // Nothing leaves the machine.
  fetch: () => Promise.reject(new TypeError("not reached")),
  copies: () => null,
  former: () => null,
};

/** The ports of every object in these tests; a test changes what it wants. */
export const ports: Changeable = { ...AS_DEPLOYED };

/** Undoes whatever tests changed. */
export function restorePorts(): void {
  Object.assign(ports, AS_DEPLOYED);
}
