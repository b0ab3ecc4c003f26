import { haveBack, type LineRange, takeBack } from "../store/taken-back.ts";
import { plain } from "./answers.ts";
import { formOf } from "./body.ts";
import { writeAndRebuild } from "./garden-context.ts";
import type { GardenRequest } from "./garden-request.ts";

/** Bytes of the form. */
const MOST_BYTES = 2000;

/** Takes back all that one person said within a day, or has it back; what follows from it is built behind. */
export async function answerTakeBack({ context, request, base }: GardenRequest): Promise<Response> {
  const form = await formOf(request, MOST_BYTES);
  const range = rangeIn(form);
  const wanted = form?.get("do");
  if (range === null || (wanted !== "take back" && wanted !== "have back"))
    return plain(400, "Those are no lines of the diary.\n");
  const change = () =>
    wanted === "take back"
      ? takeBack(context.sql, range, context.now())
      : haveBack(context.sql, range);
  writeAndRebuild(context, change, () => true);
  return plain(303, "Done.\n", { Location: `${base}diary` });
}

function rangeIn(form: URLSearchParams | null): LineRange | null {
  const found = /^([1-9]\d{0,8})-([1-9]\d{0,8})$/.exec(form?.get("lines") ?? "");
  if (!found) return null;
  const [first, last] = [Number(found[1]), Number(found[2])];
  return first <= last ? { person: form?.get("person") || null, first, last } : null;
}
