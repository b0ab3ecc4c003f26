// The few parts of the platform that the shell touches, where the DOM's types don't have them.

interface D1Meta {
  readonly changes: number;
}
interface D1Result<Row = unknown> {
  readonly results: Row[];
  readonly meta: D1Meta;
}
interface D1PreparedStatement {
  bind(...values: readonly (string | number | null)[]): D1PreparedStatement;
  first<Row>(): Promise<Row | null>;
  run(): Promise<D1Result>;
  all<Row>(): Promise<D1Result<Row>>;
}
interface D1Database {
  prepare(query: string): D1PreparedStatement;
  batch<Row>(statements: readonly D1PreparedStatement[]): Promise<D1Result<Row>[]>;
}

/** What the platform knows of a request: the codings its client takes, and the zone it seems to be in. */
interface RequestFacts {
  readonly clientAcceptEncoding?: string;
  readonly timezone?: string;
}
interface Request {
  readonly cf?: RequestFacts;
}
interface RequestInit {
  cf?: RequestFacts;
}
interface ResponseInit {
  encodeBody?: "automatic" | "manual";
}

/** Counts how often a key has been seen of late; says false where that is too often. */
interface RateLimiter {
  limit(of: { readonly key: string }): Promise<{ readonly success: boolean }>;
}

/** What wrangler.toml and .dev.vars bind. */
interface Bindings {
  readonly DB: D1Database;
  /** More databases, `DB_2` and so on; a garden's id says which it lies in. */
  readonly [more: `DB_${number}`]: D1Database;
  /** How often one link may write, and one stranger knock; without them nobody is held back. */
  readonly WRITES?: RateLimiter;
  readonly STRANGERS?: RateLimiter;
  readonly VERSION: { readonly id: string };
  /** Makes and checks every link: 32 characters or more. */
  readonly SECRET?: string;
  /** Where links in events lead; without it, the address the garden was last published at. */
  readonly ORIGIN?: string;
  /** Gardens that a run of the cron takes on; three, within the free plan, where nothing is said. */
  readonly GARDENS_A_RUN?: string;
  /** Raised by hand to make every client fetch anew. */
  readonly EPOCH?: string;
}

/** What the runtime hands to every handler to keep work going behind an answer. */
interface Behind {
  waitUntil(work: Promise<unknown>): void;
  passThroughOnException(): void;
  readonly props: unknown;
}

declare module "cloudflare:workers" {
  export const env: Bindings & { readonly MIGRATIONS: readonly D1Migration[] };
  export const exports: {
    readonly default: { fetch(input: Request | string, init?: RequestInit): Promise<Response> };
  };
}

interface D1Migration {
  readonly name: string;
  readonly queries: string[];
}

declare module "cloudflare:test" {
  export function createExecutionContext(): Behind;
  export function waitOnExecutionContext(context: Behind): Promise<void>;
  export function applyD1Migrations(
    db: D1Database,
    migrations: readonly D1Migration[],
  ): Promise<void>;
}
