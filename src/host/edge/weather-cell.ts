import { DurableObject } from "cloudflare:workers";
import type { WeatherService } from "../../app/index.ts";
import { sqlStoreOf } from "../store/sql.ts";
import {
  answerCell,
  type CellAnswer,
  type CellContext,
  type CellQuestion,
} from "../weather/cell.ts";
import { type CellYears, yearsOfCell } from "../weather/cell-years.ts";
import type { Fetch } from "../weather/fetch-answer.ts";
import { networkSource } from "../weather/network-source.ts";
import type { WeatherPlace } from "../weather/terms.ts";
import type { Engine } from "./engine.ts";
import { settingsOf } from "./settings.ts";

/** What a cell's object takes from outside: the clock [ms since 1970 UTC], the core, and how requests go out. */
export type CellPorts = {
  readonly now: () => number;
  readonly engine: () => Promise<Engine>;
  readonly fetch: Fetch;
};

/**
 * The class of a cell's object, which asks a weather service for every garden that lies in the cell. It never asks the same twice at
 * once: whoever comes while an answer is on its way waits for that one.
 */
export function weatherCell(ports: CellPorts) {
  return class extends DurableObject<Bindings> {
    #asking: Promise<CellAnswer> | null = null;
    #askingYears: Promise<CellYears> | null = null;

    /** The weather of these months. */
    ask(question: CellQuestion): Promise<CellAnswer> {
      this.#asking ??= this.#with(question.source, (context) =>
        answerCell(context, question),
      ).finally(() => {
        this.#asking = null;
      });
      return this.#asking;
    }

    /** The years behind the place. */
    years(place: WeatherPlace): Promise<CellYears> {
      this.#askingYears ??= this.#with("Open-Meteo", (context) =>
        yearsOfCell(context, place),
      ).finally(() => {
        this.#askingYears = null;
      });
      return this.#askingYears;
    }

    async #with<Answer>(
      service: WeatherService,
      work: (context: CellContext) => Promise<Answer>,
    ): Promise<Answer> {
      const { readWeather, readYears } = await ports.engine();
      const { contact } = settingsOf(this.env);
      const [now, fetch] = [ports.now(), ports.fetch];
      const source = networkSource(service, { fetch, now, contact, readWeather, readYears });
      return work({ sql: sqlStoreOf(this.ctx.storage), now, source });
    }
  };
}
