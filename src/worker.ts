import { choose } from "./calendar/choose.ts";
import { writeCalendar } from "./calendar/write.ts";
import { horizonAt, tell, usualOf } from "./feed.ts";
import { readInSeason } from "./growth/doubts.ts";
import { unavailable } from "./web/answers.ts";
import { app } from "./web/app.ts";
import { renderWaiting } from "./web/render.ts";
import { shellOf } from "./web/shell.ts";

const core = { readPlan: readInSeason, horizonAt, usualOf, tell, choose, writeCalendar };

/** The edge entry: the real clock, the platform's bindings and the pure core, put together. */
export default {
  async fetch(request: Request, bindings: Bindings, behind: Behind): Promise<Response> {
    try {
      return await app.fetch(request, await shellOf(bindings, core, Date.now), behind);
    } catch (error) {
      console.error("nothing can be answered:", error);
      return unavailable();
    }
  },
  async scheduled(_: unknown, bindings: Bindings): Promise<void> {
    await renderWaiting(await shellOf(bindings, core, Date.now));
  },
};
