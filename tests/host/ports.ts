import type { ObjectPorts } from "../../src/host/edge/object.ts";
import { settingsOf } from "../../src/host/edge/settings.ts";
import { sqlStoreOf } from "../../src/host/store/sql.ts";

type Changeable = { -readonly [Name in keyof ObjectPorts]: ObjectPorts[Name] };

/** The ports of every object in these tests, as they are deployed but without pauses; a test changes what it wants. */
export const ports: Changeable = {
  now: Date.now,
  engine: async () => (await import("../../src/host/edge/core.ts")).engine,
  pause: async () => undefined,
  settings: settingsOf,
  sqlOf: sqlStoreOf,
  former: () => null,
};
