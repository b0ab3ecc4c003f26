import { buildBaseline, buildSchedule, horizonAt } from "../app/build.ts";
import { readPlanWithDoubts } from "../app/read-plan.ts";
import { chooseEvents } from "../views/calendar/choose-events.ts";
import { writeCalendar } from "../views/calendar/write.ts";
import { unavailable } from "./web/answers.ts";
import { app } from "./web/app.ts";
import { appContextOf } from "./web/app-context.ts";
import { renderWaiting } from "./web/render.ts";

const core = {
  readPlan: readPlanWithDoubts,
  horizonAt,
  usualOf: buildBaseline,
  tell: buildSchedule,
  choose: chooseEvents,
  writeCalendar,
};

/** The edge entry: the real clock, the platform's bindings and the pure core, put together. */
export default {
  async fetch(request: Request, bindings: Bindings, behind: Behind): Promise<Response> {
    try {
      return await app.fetch(request, await appContextOf(bindings, core, Date.now), behind);
    } catch (error) {
      console.error("nothing can be answered:", error);
      return unavailable();
    }
  },
  async scheduled(_: unknown, bindings: Bindings): Promise<void> {
    await renderWaiting(await appContextOf(bindings, core, Date.now));
  },
};
