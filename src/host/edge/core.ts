import {
  bedRoom,
  bedsInFrost,
  bedsPlanned,
  bedsWithRoom,
  buildSchedule,
  checkFirstPlan,
  checkPlan,
  courseOf,
  cropNames,
  feedName,
  frostInShort,
  frostNight,
  type Garden,
  guessedFrosts,
  horizonAt,
  mergeWeather,
  month,
  nextYear,
  picture,
  plannedCourse,
  planOn,
  readPlan,
  readWeather,
  readYears,
  reportDiary,
  sampleMonth,
  taskCards,
  todayIn,
  writeFeed,
  YEARS_FILE,
  yearReviewPage,
  yearsWanted,
} from "../../app/index.ts";
import type { ReportedLine } from "../store/diary-report.ts";
import type { BuildInput, BuiltYear, Engine } from "./engine.ts";

function gardenOf({ id, plans, baseline, weather }: BuildInput): Garden {
  return baseline === null ? { id, plans, weather } : { id, plans, baseline, weather };
}

function build(input: BuildInput): BuiltYear {
  const garden = gardenOf(input);
  const horizon = horizonAt(garden, input.instant);
  const { year, events, publishedState } = buildSchedule(garden, horizon, input.published);
  const rest = { diary: diaryOf(input), until: horizon.until };
  return { year, events, publishedState, cards: taskCards(year), ...rest };
}

/** Lines that the diary's page shows. */
const SHOWN = 60;

/** The diary as it is understood, the newest day first. */
function diaryOf(input: BuildInput): readonly ReportedLine[] {
  return reportDiary(input.plans, todayIn(input, input.instant))
    .toSorted((a, b) => b.line.day - a.line.day)
    .slice(0, SHOWN)
    .map(({ line, observations }) => ({
      line: line.at.file === "diary" ? line.at.line : null,
      day: line.day,
      text: line.answers ? "" : line.text,
      understood: observations.map(({ text, remarks }) => [text, ...remarks].join("; ")),
    }));
}

const review: Engine["review"] = (year, { year: asked, today, planned }) => {
  const { plans } = year;
  const plan = asked === null ? planOn(plans, today) : plans.find((each) => each.year === asked);
  if (plan === undefined) return null;
  const seasons = planned(plan.year, () => plannedCourse(year, plan).seasons);
  return yearReviewPage(year, { plan, planned: { plans, observations: [], seasons }, today });
};

/** The application as a garden's object asks for it. */
export const engine: Engine = {
  checkPlan,
  readPlan: ({ text, ...at }) => readPlan(text, at).plan,
  build,
  readWeather,
  readYears,
  yearsWanted: ({ text, ...at }) => yearsWanted(text, at),
  yearsFile: YEARS_FILE,
  mergeWeather,
  feedName,
  writeFeed,
  frostInShort,
  frost: (year, today, lowC) => frostNight(year, today, lowC).text,
  room: (year, today, bed) => bedRoom(year, bed, today)?.text ?? null,
  bedsPlanned: (year, today, of) => {
    const plan = year.plans.find((each) => each.year === of);
    return plan === undefined ? null : bedsPlanned(year, { plan, today, form: "phone" });
  },
  bedsWithRoom: (year, today) => bedsWithRoom(year, today, "inset"),
  bedsInFrost,
  draw: (year, today, subject) => picture(year, subject, { plan: null, today, form: "phone" }),
  drawYear: (course, year, today) => {
    const plan = course.plans.find((each) => each.year === year) ?? null;
    return picture(course, "season", { plan, today, form: "phone" });
  },
  courseOf,
  month,
  review,
  checkFirstPlan,
  guessedFrosts,
  sampleMonth,
  nextYear,
  cropNames,
};
