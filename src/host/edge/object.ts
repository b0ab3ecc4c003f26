import { DurableObject } from "cloudflare:workers";
import { dayAt, weekdayOf } from "../../base/index.ts";
import { keyFrom } from "../links/mac.ts";
import { logFailure } from "../log.ts";
import { mendDamage } from "../store/damage.ts";
import { gardenRecord } from "../store/gardens.ts";
import { bringOver } from "../store/old/bring-over.ts";
import type { Recovered } from "../store/owners.ts";
import { migrate } from "../store/schema.ts";
import { type SqlStore, sqlStoreOf } from "../store/sql.ts";
import { unavailable } from "../web/answers.ts";
import { type GardenContext, nextRing } from "../web/garden-context.ts";
import { recover } from "../web/recovery.ts";
import { answerVisit, type Visit } from "../web/visit.ts";
import { payBuild } from "./building.ts";
import { copyNightly } from "./copy-nightly.ts";
import type { Engine } from "./engine.ts";
import { answerPoll, type PollAnswer, type PollRequest } from "./poll.ts";
import { type Rebuilder, rebuilderOf } from "./rebuilder.ts";
import { refreshWeather } from "./refresh-weather.ts";
import { type Settings, settingsOf } from "./settings.ts";

/**
 * What an object takes from outside: the clock [ms since 1970 UTC], the core, loaded when it is first asked for, a pause of so
 * many ms, and what the deployment says of itself.
 */
export type ObjectPorts = {
  readonly now: () => number;
  readonly engine: () => Promise<Engine>;
  readonly pause: (ms: number) => Promise<void>;
  readonly settings: (bindings: Bindings) => Settings;
  /** The object's own database. */
  readonly sqlOf: (storage: DurableObjectStorage) => SqlStore;
  /** What asks a cell for its weather; null: there are no cells here. */
  readonly askCell: (bindings: Bindings) => GardenContext["askCell"];
  /** Where copies of gardens are kept; null: nowhere. */
  readonly copies: (bindings: Bindings) => R2Bucket | null;
  /** What asks a cell for the years behind its place; null: there are no cells here. */
  readonly askYears: (bindings: Bindings) => GardenContext["askYears"];
  /** The text of towns.txt. */
  readonly towns: GardenContext["towns"];
  /** The store that gardens are brought over from; null: none is bound. */
  readonly former: (bindings: Bindings) => D1Database | null;
};

/** The pause after a build, in which further changes gather for the next [ms]. Source: house rule; longer than a double tap. */
const GATHER_MS = 2000;

/** The ports of a deployment, whose core and towns are given as lazy imports of their own. */
export function realPorts({ engine, towns }: Pick<ObjectPorts, "engine" | "towns">): ObjectPorts {
  const pause = (ms: number) => new Promise<void>((done) => setTimeout(done, ms));
  return {
    ...{ now: Date.now, engine, towns, pause, settings: settingsOf, sqlOf: sqlStoreOf },
    askCell: ({ WEATHER }) =>
      WEATHER ? (cell, question) => WEATHER.getByName(cell).ask(question) : null,
    copies: ({ BACKUPS }) => BACKUPS ?? null,
    askYears: ({ WEATHER }) =>
      WEATHER ? (cell, place) => WEATHER.getByName(cell).years(place) : null,
    former: ({ DB }) => DB ?? null,
  };
}

/** What some work gives, or where that fails what stands in for it; the failure is logged, and never with a link. */
async function orElse<Answer>(
  garden: string,
  work: () => Promise<Answer>,
  otherwise: (number: string) => Answer,
): Promise<Answer> {
  try {
    return await work();
  } catch (error) {
    return otherwise(logFailure("a request", error, garden));
  }
}

/**
 * The class of a garden's object: the one place where the garden is read and written. It wires ports and calls functions;
 * everything it does stands in those.
 */
export function gardenObject(ports: ObjectPorts) {
  return class extends DurableObject<Bindings> {
    readonly #sql: SqlStore;
    readonly #rebuilder: Rebuilder;
    #ready: Promise<void> | null = null;
    #key: Promise<CryptoKey> | null = null;

    constructor(ctx: DurableObjectState, env: Bindings) {
      super(ctx, env);
      this.#sql = ports.sqlOf(ctx.storage);
      migrate(this.#sql);
      this.#rebuilder = rebuilderOf({
        build: async () => {
          // What has just been written goes out with its answer before a build keeps the object busy.
          await ctx.storage.sync();
          await ports.pause(0);
          return payBuild(await this.#context(gardenRecord(this.#sql)?.id ?? ""));
        },
        pause: () => ports.pause(GATHER_MS),
        behind: (work) => ctx.waitUntil(work),
      });
    }

    /** Answers a poll of one feed. */
    poll(asked: PollRequest): Promise<PollAnswer> {
      const answer = async () => answerPoll(await this.#context(asked.garden), asked);
      return orElse(asked.garden, answer, () => ({ kind: "later" }));
    }

    /** Answers whatever is no feed; null where the link opens nothing. */
    visit(visit: Visit, request: Request): Promise<Response | null> {
      const { garden } = visit.link;
      const answer = async () => answerVisit(await this.#context(garden), visit, request);
      return orElse(garden, answer, unavailable);
    }

    /** Lets an owner in again by the garden's phrase; null where it is another. */
    async recover(garden: string, phrase: string): Promise<Recovered | null> {
      return recover(await this.#context(garden), garden, phrase);
    }

    /** Waits until no build is on its way. */
    settled(): Promise<void> {
      return this.#rebuilder.settled();
    }

    /** The garden's day has turned, its weather is to be asked for, or a build is owed that no request lived to see. */
    override async alarm(): Promise<void> {
      const garden = gardenRecord(this.#sql);
      if (garden === null) return;
      const context = await this.#context(garden.id);
      await refreshWeather(context);
      // Once a week all that is stored is looked through.
      if (weekdayOf(dayAt(ports.now(), "UTC")) === 1) mendDamage(this.#sql, ports.now());
      if ((nextRing(context) ?? 0) <= ports.now()) await this.#rebuilder.now();
      await copyNightly(context);
      const next = nextRing(context);
      if (next !== null) context.ring(next);
    }

    async #context(garden: string): Promise<GardenContext> {
      await this.#bringOver(garden);
      const { code, epoch, origin } = ports.settings(this.env);
      const { engine, now } = ports;
      this.#key ??= keyFrom(this.env.SECRET ?? "");
      return {
        ...{ sql: this.#sql, key: await this.#key, now, code, epoch, origin },
        engine,
        askCell: ports.askCell(this.env),
        copies: ports.copies(this.env),
        askYears: ports.askYears(this.env),
        towns: ports.towns,
        ring: (at) => void this.ctx.storage.setAlarm(at),
        rebuild: () => this.#rebuilder.start(),
        catchUp: () => this.#rebuilder.resume(),
        buildNow: () => this.#rebuilder.now(),
      };
    }

    /** Brings the garden over from a former store, where one is bound, before anything else is done; tried again where it failed. */
    #bringOver(garden: string): Promise<void> {
      const from = { db: ports.former(this.env), garden };
      this.#ready ??= bringOver(this.#sql, from).catch((error: unknown) => {
        this.#ready = null;
        throw error;
      });
      return this.#ready;
    }
  };
}
