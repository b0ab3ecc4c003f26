import { DurableObject } from "cloudflare:workers";
import { sqlStoreOf } from "../store/sql.ts";
import { answerCell, type CellAnswer, type CellQuestion } from "../weather/cell.ts";
import type { Fetch } from "../weather/fetch-answer.ts";
import type { Engine } from "./engine.ts";
import { settingsOf } from "./settings.ts";

/** What a cell's object takes from outside: the clock [ms since 1970 UTC], the core, and how requests go out. */
export type CellPorts = {
  readonly now: () => number;
  readonly engine: () => Promise<Engine>;
  readonly fetch: Fetch;
};

/**
 * The class of a cell's object, which asks a weather service for every garden that lies in the cell. It never asks twice at once:
 * whoever comes while an answer is on its way waits for that one.
 */
export function weatherCell(ports: CellPorts) {
  return class extends DurableObject<Bindings> {
    #asking: Promise<CellAnswer> | null = null;

    ask(question: CellQuestion): Promise<CellAnswer> {
      this.#asking ??= this.#answer(question).finally(() => {
        this.#asking = null;
      });
      return this.#asking;
    }

    async #answer(question: CellQuestion): Promise<CellAnswer> {
      const { readWeather } = await ports.engine();
      const { contact } = settingsOf(this.env);
      const now = ports.now();
      const sql = sqlStoreOf(this.ctx.storage);
      return answerCell({ sql, now, fetch: ports.fetch, contact, read: readWeather }, question);
    }
  };
}
