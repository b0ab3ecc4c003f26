import type { ObjectPorts } from "../../src/host/edge/object.ts";
import { settingsOf } from "../../src/host/edge/settings.ts";
import { sqlStoreOf } from "../../src/host/store/sql.ts";

type Changeable = { -readonly [Name in keyof ObjectPorts]: ObjectPorts[Name] };

/** The ports of a deployed object, but without pauses and without a former store. */
export const deployedPorts: ObjectPorts = {
  now: Date.now,
  engine: async () => (await import("../../src/host/edge/core.ts")).engine,
  pause: async () => undefined,
  settings: settingsOf,
  sqlOf: sqlStoreOf,
  former: () => null,
};

/** The ports of every object in these tests; a test changes what it wants, and each file begins with the deployed ones. */
export const ports: Changeable = { ...deployedPorts };
