import type { PollAnswer, PollRequest } from "../edge/poll.ts";
import { keyFrom } from "../links/mac.ts";
import type { Recovered } from "../store/owners.ts";
import type { Visit } from "./visit.ts";

/** A garden's object as it is called from outside. */
export type GardenStub = {
  poll(asked: PollRequest): Promise<PollAnswer>;
  visit(visit: Visit, request: Request): Promise<Response | null>;
  recover(garden: string, phrase: string): Promise<Recovered | null>;
};

/** What a request works with before its garden's object has it. */
export type AppContext = {
  /** The object of a garden, by the garden's id. */
  readonly gardenOf: (garden: string) => GardenStub;
  /** Limits whoever comes with no good link; null: nothing does. */
  readonly unauthorized: RateLimiter | null;
  readonly key: CryptoKey;
  /** Where links lead; null: to the address that was asked. */
  readonly origin: string | null;
  /** Part of every tag of a page, as of a calendar. */
  readonly epoch: string;
};

const appContexts = new WeakMap<Bindings, AppContext>();

/** The context from the platform's bindings, made once an isolate. Throws without a secret, since every link could then be forged. */
export async function appContextOf(bindings: Bindings): Promise<AppContext> {
  const known = appContexts.get(bindings);
  if (known) return known;
  const context = await appContextFrom(bindings);
  appContexts.set(bindings, context);
  return context;
}

async function appContextFrom({
  GARDENS,
  SECRET,
  ORIGIN,
  STRANGERS,
  EPOCH,
}: Bindings): Promise<AppContext> {
  return {
    gardenOf: (garden) => GARDENS.getByName(garden),
    unauthorized: STRANGERS ?? null,
    key: await keyFrom(SECRET ?? ""),
    origin: ORIGIN ? new URL(ORIGIN).origin : null,
    epoch: EPOCH ?? "0",
  };
}
