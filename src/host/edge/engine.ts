import type {
  Baseline,
  BedsDrawing,
  CropName,
  DiaryLine,
  FeedInput,
  FeedNames,
  FirstAnswers,
  FirstCheck,
  FirstCheckRequest,
  FrostTonightText,
  FrostWords,
  KnownWeather,
  Ledger,
  MonthJobs,
  PictureSubject,
  Plan,
  PlanCheck,
  PlanText,
  PublishedState,
  ReviewedYear,
  RoomText,
  SampleMonth,
  Schedule,
  WeatherQuestion,
  WeatherReading,
  WeatherService,
  Year,
  YearCourse,
  YearsPlace,
  YearsReading,
} from "../../app/index.ts";
import type { FeedChoice, TaskCard } from "../../app/records.ts";
import type { Day } from "../../base/index.ts";
import type { ReportedLine } from "../store/diary-report.ts";

/**
 * What a year is built from: the garden's id, its plans in year order with the diary in the newest, the instant [ms since 1970
 * UTC], how each task was last published, the baseline where it is still that of these plans, and what is known
 * of the weather.
 */
export type BuildInput = {
  readonly id: string;
  readonly plans: readonly Plan[];
  readonly instant: number;
  readonly published: PublishedState;
  readonly baseline: Baseline | null;
  readonly weather: KnownWeather | null;
};

/**
 * A year built, and what is stored of it for quick answers: its events, a card for each task, how tasks are published, the
 * diary as it was understood, and the instant [ms] at which its day turns.
 */
export type BuiltYear = Pick<Schedule, "events" | "publishedState"> & {
  readonly cards: readonly TaskCard[];
  readonly year: Year;
  readonly diary: readonly ReportedLine[];
  readonly until: number;
};

/** What is asked of a month on paper: the month by its first day, whose jobs, by key (null: everybody's), and the day it is printed. */
export type MonthAsked = {
  readonly month: Day;
  readonly person: string | null;
  readonly today: Day;
};

/** Gives what was planned for a year: its seasons as they are stored, else as they are then built. */
export type PlannedSeasons = (year: number, build: () => Year["seasons"]) => Year["seasons"];

/** What is asked of a year looked back on: which, null for the season of today, and where what was planned for it is kept. */
export type ReviewAsked = {
  readonly year: number | null;
  readonly today: Day;
  readonly planned: PlannedSeasons;
};

/** Everything of the application that a garden's object asks for. It is loaded only when something of it is wanted. */
export type Engine = {
  /** One year's text checked among the other years of its garden, and the answers given to its jobs. */
  checkPlan(file: PlanText, others: readonly Plan[], answered: readonly DiaryLine[]): PlanCheck;
  /** One year's text read; null where it has a problem. */
  readPlan(file: PlanText): Plan | null;
  build(input: BuildInput): BuiltYear;
  /** A weather service's answer as what is known of the weather. */
  readWeather(source: WeatherService, text: string, question: WeatherQuestion): WeatherReading;
  /** The years behind a place as a weather file, from the answer of a service's archive. */
  readYears(
    text: string,
    place: Pick<YearsPlace, "latitude" | "longitude">,
    fetched: Day,
  ): YearsReading;
  /** The place whose years a plan's text asks for and has not beside it; null: none. */
  yearsWanted(file: PlanText): YearsPlace | null;
  /** The name under which those years lie beside a plan. */
  readonly yearsFile: string;
  /** What is known after a new answer. */
  mergeWeather(before: KnownWeather | null, answer: KnownWeather): KnownWeather;
  /** The name that a calendar shows. */
  feedName(newestFirst: FeedNames, choice: FeedChoice): string;
  writeFeed(feed: FeedInput): { readonly text: string; readonly ledger: Ledger };
  /** Frost in the night after a day, at a low [°C], in words. */
  frost(year: YearCourse, today: Day, lowC: number): FrostTonightText;
  /** What a night asks something for at a low [°C], bed by bed in one line; empty where nothing. */
  frostInShort(year: YearCourse, day: Day, lowC: number): string;
  /** What stands in a bed on a day and still fits in it; null for a bed that no plan has. */
  room(year: YearCourse, today: Day, bed: string): RoomText | null;
  /** The beds of a year's plan, as a file; null for a year without a plan, and for one without beds. */
  bedsPlanned(year: YearCourse, today: Day, of: number): BedsDrawing | null;
  /** The beds with what is free in them, for a page. */
  bedsWithRoom(year: YearCourse, today: Day): BedsDrawing | null;
  /** The beds in the night after a day, at a low [°C], for a page; null where nothing stands in any. */
  bedsInFrost(year: YearCourse, today: Day, lowC: number): BedsDrawing | null;
  /** A picture of a day's season as SVG. */
  draw(year: YearCourse, today: Day, subject: PictureSubject): string;
  /** The season of one of a garden's plans as SVG, the plan by its year. */
  drawYear(course: YearCourse, year: number, today: Day): string;
  /** What those plans come to as they are planned, in year order and at an instant [ms since 1970 UTC]. */
  courseOf(plans: readonly Plan[], instant: number): YearCourse;
  /** A month on paper as HTML. */
  month(jobs: MonthJobs, asked: MonthAsked): string;
  /** A year looked back on as HTML; null for a year without a plan. */
  review(year: ReviewedYear & Pick<Year, "baseline">, asked: ReviewAsked): string | null;
  /** The first plan that the answers of a form come to, and what is wrong in them. */
  checkFirstPlan(answers: FirstAnswers, request: FirstCheckRequest): FirstCheck;
  /** Frost dates guessed from the two temperatures among the answers; null where those are none. */
  guessedFrosts(answers: FirstAnswers, south: boolean): FrostWords | null;
  /** The fullest month of a plan's season; null where nothing is to be done. */
  sampleMonth(plan: Plan, instant: number): SampleMonth | null;
  /** A plan's text as the next year's begins. */
  nextYear(text: string, year: number): string;
  /** Every crop there is, in the order of their names. */
  cropNames(): readonly CropName[];
};
