// The few parts of the platform that the host touches, where the DOM's types don't have them.

/** What a column gives back; a Uint8Array may be written and comes back as an ArrayBuffer. */
type StoredValue = string | number | null | ArrayBuffer;

interface SqlCursor<Row> extends Iterable<Row> {
  toArray(): Row[];
  readonly rowsRead: number;
  readonly rowsWritten: number;
}
interface SqlStorage {
  exec<Row = Record<string, StoredValue>>(
    query: string,
    ...bound: readonly (StoredValue | Uint8Array)[]
  ): SqlCursor<Row>;
  readonly databaseSize: number;
}
interface DurableObjectStorage {
  readonly sql: SqlStorage;
  transactionSync<T>(work: () => T): T;
  setAlarm(at: number): Promise<void>;
  getAlarm(): Promise<number | null>;
  deleteAlarm(): Promise<void>;
  sync(): Promise<void>;
}
interface DurableObjectState {
  readonly storage: DurableObjectStorage;
  waitUntil(work: Promise<unknown>): void;
}

/** An object's public methods as a caller sees them: each answers with a promise. */
type DurableObjectStub<Held> = {
  readonly [Name in keyof Held as Name extends "alarm" | "fetch"
    ? never
    : Held[Name] extends (...said: never[]) => unknown
      ? Name
      : never]: Held[Name] extends (...said: infer Said) => infer Answer
    ? (...said: Said) => Promise<Awaited<Answer>>
    : never;
} & { fetch(request: Request): Promise<Response> };
interface DurableObjectNamespace<Held> {
  getByName(name: string): DurableObjectStub<Held>;
}

/** A store of the form before each garden had an object of its own; only read, to bring gardens over. */
interface D1Result<Row = unknown> {
  readonly results: Row[];
}
interface D1PreparedStatement {
  bind(...values: readonly (string | number | null)[]): D1PreparedStatement;
  run(): Promise<D1Result>;
  all<Row>(): Promise<D1Result<Row>>;
}
interface D1Database {
  prepare(query: string): D1PreparedStatement;
  batch<Row>(statements: readonly D1PreparedStatement[]): Promise<D1Result<Row>[]>;
}

/** Object storage, as far as copies of gardens are kept there. */
interface R2Object {
  readonly key: string;
}
interface R2Bucket {
  put(key: string, value: Uint8Array): Promise<R2Object>;
  head(key: string): Promise<R2Object | null>;
  get(key: string): Promise<(R2Object & { arrayBuffer(): Promise<ArrayBuffer> }) | null>;
  list(of: { readonly prefix: string }): Promise<{ readonly objects: readonly R2Object[] }>;
  delete(keys: readonly string[]): Promise<void>;
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
  /** Every garden's object, by the garden's id. */
  readonly GARDENS: DurableObjectNamespace<import("./worker.ts").GardenObject>;
  /** What asks weather services, one for each cell of a tenth of a degree; without it nobody is asked. */
  readonly WEATHER?: DurableObjectNamespace<import("./worker.ts").WeatherCell>;
  /** A store of the former kind, whose gardens are brought over as they are asked for. */
  readonly DB?: D1Database;
  /** Where each garden is copied to every night; without it no copies are made. */
  readonly BACKUPS?: R2Bucket;
  /** How often somebody without a good link may ask; without it nobody is limited. */
  readonly STRANGERS?: RateLimiter;
  readonly VERSION: { readonly id: string };
  /** Makes and checks every link: 32 characters or more. */
  readonly SECRET?: string;
  /** Where links in events lead; without it, the address the garden was last published at. */
  readonly ORIGIN?: string;
  /** How weather services can reach who runs this, as they ask for: an address of a page or of mail. */
  readonly CONTACT?: string;
  /** Raised by hand to make every client fetch anew. */
  readonly EPOCH?: string;
}

/** What the runtime hands to every handler. */
interface ExecutionContext {
  waitUntil(work: Promise<unknown>): void;
  passThroughOnException(): void;
  readonly props: unknown;
}

/** A text that lies beside the worker and is no part of its script. */
declare module "*.txt" {
  const text: string;
  export default text;
}

declare module "cloudflare:workers" {
  export const env: Bindings & { readonly MIGRATIONS: readonly D1Migration[] };
  export const exports: {
    readonly default: { fetch(input: Request | string, init?: RequestInit): Promise<Response> };
  };
  export abstract class DurableObject<Env> {
    protected readonly ctx: DurableObjectState;
    protected readonly env: Env;
    constructor(ctx: DurableObjectState, env: Env);
    fetch?(request: Request): Response | Promise<Response>;
    alarm?(): void | Promise<void>;
  }
}

interface D1Migration {
  readonly name: string;
  readonly queries: string[];
}

declare module "cloudflare:test" {
  export function createExecutionContext(): ExecutionContext;
  export function waitOnExecutionContext(context: ExecutionContext): Promise<void>;
  export function runInDurableObject<Held, Result>(
    stub: { fetch(request: Request): Promise<Response> },
    work: (held: Held, state: DurableObjectState) => Result | Promise<Result>,
  ): Promise<Result>;
  export function runDurableObjectAlarm(stub: {
    fetch(request: Request): Promise<Response>;
  }): Promise<boolean>;
  export function abortAllDurableObjects(): Promise<void>;
}
