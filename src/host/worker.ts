import { gardenObject, realPorts } from "./edge/object.ts";
import { weatherCell } from "./edge/weather-cell.ts";
import { logFailure } from "./log.ts";
import { unavailable } from "./web/answers.ts";
import { answerRequest } from "./web/app.ts";
import { appContextOf } from "./web/app-context.ts";

const engine = async () => (await import("./edge/core.ts")).engine;
const towns = async () => (await import("./towns/towns.txt")).default;

/** A garden's object, with the real clock and the core, which is loaded when a garden is first built. */
export class GardenObject extends gardenObject(realPorts({ engine, towns })) {}

/** A cell's object, which asks the services themselves. */
export class WeatherCell extends weatherCell({
  ...{ now: Date.now, engine },
  fetch: (url, init) => fetch(url, init),
}) {}

/** The edge entry: links are checked here, and whatever a good link asks is passed on to its garden's object. */
export default {
  async fetch(request: Request, bindings: Bindings): Promise<Response> {
    try {
      return await answerRequest(request, await appContextOf(bindings));
    } catch (error) {
      return unavailable(logFailure("an answer", error));
    }
  },
};
