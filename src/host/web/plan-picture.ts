import type { YearCourse } from "../../app/index.ts";
import { otherPlans } from "../store/gardens.ts";
import { notFound, pictureResponse, plain } from "./answers.ts";
import { formOf } from "./body.ts";
import { type GardenRequest, todayIn } from "./garden-request.ts";
import { keptCourse } from "./kept-year.ts";
import { planIn, startingAt } from "./plan-page.ts";
import { MOST_CARRIED } from "./saving.ts";

/**
 * The season or the beds of a year's plan, drawn: as it is saved, or of the text that is sent, of which nothing is stored. 404 for a
 * year that has no plan and begins none, and for the beds of a plan without any; 422 for a text with something wrong in it.
 */
export async function answerPlanPicture(
  gardenRequest: GardenRequest,
  said: string,
  subject: string,
): Promise<Response> {
  const { context, link, stored, request } = gardenRequest;
  const at = await startingAt(gardenRequest, Number(said));
  if (at === null) return notFound();
  const engine = await context.engine();
  const today = todayIn(gardenRequest);
  const drawn = (course: YearCourse, year: number) => {
    if (subject === "season") return pictureResponse(engine.drawYear(course, year, today));
    const beds = engine.bedsPlanned(course, today, year);
    return beds === null ? notFound() : pictureResponse(beds.svg);
  };
  if (request.method !== "POST" && at.version > 0) return drawn(await keptCourse(context), at.year);
  const sent = request.method === "POST" ? planIn(await formOf(request, MOST_CARRIED)) : at;
  if (sent === null) return plain(400, "That is no plan.\n");
  const { year, file, beside } = at;
  const plan = engine.readPlan({ text: sent.text, garden: link.garden, file, beside });
  if (plan?.year !== year) return plain(422, "There is something wrong in it.\n");
  const others = otherPlans(context.sql, stored, year);
  const plans = [...others, plan].sort((a, b) => a.year - b.year);
  return drawn(engine.courseOf(plans, context.now()), year);
}
