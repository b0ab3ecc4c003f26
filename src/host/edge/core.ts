import {
  bedRoom,
  buildSchedule,
  checkPlan,
  cropNames,
  feedName,
  firstPlan,
  frostNight,
  type Garden,
  horizonAt,
  month,
  nextYear,
  picture,
  planOn,
  readPlan,
  reportDiary,
  type Schedule,
  taskCards,
  todayIn,
  writeFeed,
  yearReviewPage,
} from "../../app/index.ts";
import type { ReportedLine } from "../store/diary-report.ts";
import type { BuildInput, BuiltYear, Engine } from "./engine.ts";

function gardenOf({ id, plans, baseline }: BuildInput): Garden {
  return baseline === null ? { id, plans } : { id, plans, baseline };
}

const todayOf = (input: BuildInput) => todayIn(input, input.instant);

function scheduleOf(input: BuildInput): Schedule {
  const garden = gardenOf(input);
  return buildSchedule(garden, horizonAt(garden, input.instant), input.published);
}

function build(input: BuildInput): BuiltYear {
  const { year, events, publishedState } = scheduleOf(input);
  const { baseline, horizon } = year;
  const rest = { baseline, diary: diaryOf(input), until: horizon.until };
  return { events, publishedState, cards: taskCards(year), ...rest };
}

/** Lines that the diary's page shows. */
const SHOWN = 60;

/** The diary as it is understood, the newest day first. */
function diaryOf(input: BuildInput): readonly ReportedLine[] {
  return reportDiary(input.plans, todayOf(input))
    .toSorted((a, b) => b.line.day - a.line.day)
    .slice(0, SHOWN)
    .map(({ line, observations }) => ({
      line: line.at.file === "diary" ? line.at.line : null,
      day: line.day,
      text: line.answers ? "" : line.text,
      understood: observations.map(({ text, remarks }) => [text, ...remarks].join("; ")),
    }));
}

function review(input: BuildInput, year: number | null): string | null {
  const [garden, today] = [gardenOf(input), todayOf(input)];
  const { plans } = input;
  const plan = year === null ? planOn(plans, today) : plans.find((each) => each.year === year);
  return plan ? yearReviewPage(garden, { plan, instant: input.instant, today }) : null;
}

/** The application as a garden's object asks for it. */
export const engine: Engine = {
  checkPlan,
  readPlan: ({ text, ...at }) => readPlan(text, at).plan,
  build,
  feedName,
  writeFeed,
  frost: (input, lowC) => frostNight(scheduleOf(input).year, todayOf(input), lowC).text,
  room: (input, bed) => bedRoom(scheduleOf(input).year, bed, todayOf(input))?.text ?? null,
  draw: (input, subject) => {
    const today = todayOf(input);
    return picture(scheduleOf(input).year, subject, { plan: null, today, form: "phone" });
  },
  month: (input, asked) => month(scheduleOf(input), { ...asked, today: todayOf(input) }),
  review,
  firstPlan,
  nextYear,
  cropNames,
};
