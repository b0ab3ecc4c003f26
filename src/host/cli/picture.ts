import {
  bedsStanding,
  type PictureForm,
  type PictureSubject,
  type Plan,
  picture,
  planOn,
} from "../../app/index.ts";
import { type Day, joinWords } from "../../base/index.ts";
import {
  type Call,
  type Command,
  type Exit,
  type LoadedGarden,
  load,
  type Options,
  rejectExtraWords,
  today,
  WrongUsage,
  yearOn,
} from "./call.ts";

const SUBJECTS: readonly PictureSubject[] = ["frost", "soil", "season", "weather"];
const FORMS: readonly PictureForm[] = ["phone", "page"];

function run(call: Call): Exit {
  rejectExtraWords(1, call);
  const subject = oneOf(["beds", ...SUBJECTS], "of", call.options.of);
  const form = oneOf(FORMS, "for", call.options.for ?? "phone");
  const loaded = load(call);
  if (!loaded) return 1;
  const { day } = today(call, loaded);
  const plan = planIn(loaded, call.options, day);
  const year = yearOn(call, loaded);
  const drawn =
    subject === "beds"
      ? bedsStanding(year, day, form)?.svg
      : picture(year, subject, { plan, today: day, form });
  if (drawn === undefined) {
    call.terminal.err("sowbell: the plan names no beds to draw\n");
    return 1;
  }
  call.terminal.out(drawn);
  return 0;
}

function oneOf<T extends string>(all: readonly T[], option: string, value: string | undefined): T {
  const found = all.find((each) => each === value);
  if (found) return found;
  const given = value === undefined ? "" : ` ${value}`;
  throw new WrongUsage(`--${option}${given}: ${joinWords(all, "or")}`);
}

/** The plan of the year asked for, else the one whose season today lies in, of those that were named. */
function planIn({ requestedPlans }: LoadedGarden, { year }: Options, day: Day): Plan {
  if (year === undefined) return planOn(requestedPlans, day);
  const plan = requestedPlans.find((each) => String(each.year) === year);
  if (!plan)
    throw new WrongUsage(
      `--year ${year}: the plan is of ${requestedPlans.map((each) => each.year).join(", ")}`,
    );
  return plan;
}

/** `picture PLAN --of beds|frost|soil|season|weather`: a drawing of the beds or of the year as one SVG on standard output. */
export const PICTURE: Command = { takes: ["of", "year", "for", "on", "weather"], run };
