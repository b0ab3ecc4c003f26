import { BROCCOLI } from "./brassicas.ts";
import { CABBAGE } from "./cabbages.ts";
import type { Crop, Indoors, NumberRange } from "./facts.ts";
import { commonPractice } from "./figures.ts";
import { winterLife } from "./winter-life.ts";

/** Raised for six weeks or so and set out for the winter, so many weeks after the last frost. */
const forWinter = (crop: Crop, weeks: number, harvestDays: NumberRange): Partial<Crop> => ({
  indoors:
    crop.indoors &&
    ({ ...crop.indoors, weeksToSettingOut: commonPractice([5, 7]) } satisfies Indoors),
  settingOut: crop.settingOut && { ...crop.settingOut, weeksFromLastFrost: commonPractice(weeks) },
  frost: commonPractice("very hardy"),
  outdoors: null,
  thinnings: [],
  starts: ["seed indoors", "plants"],
  warmth: null,
  harvest: { ...crop.harvest, from: "sowing", days: commonPractice(harvestDays) },
});

/** Sprouting broccoli: raised in spring, it stands the winter and is picked shoot by shoot from its end on. */
export const SPROUTING_BROCCOLI: Crop = {
  ...BROCCOLI,
  ...forWinter(BROCCOLI, 5, [270, 310]),
  winter: winterLife(-10, "after it", { weeks: [8, 30] }),
  key: "sprouting-broccoli",
  one: "sprouting broccoli",
  many: "sprouting broccoli",
  alsoCalled: ["purple sprouting broccoli", "white sprouting broccoli", "purple sprouting", "psb"],
  harvest: {
    ...BROCCOLI.harvest,
    from: "sowing",
    days: commonPractice([270, 310]),
    kind: "again and again",
    cuts: null,
    bearsDays: commonPractice([35, 56]),
    holdsDays: commonPractice(5),
    verb: "Cut",
    sign: "Shoots are as long as a hand, their buds coloured and shut.",
    how: "Cut the middle shoot first, then side shoots every few days, before the buds open.",
  },
};

/** Spring cabbage: sown in summer, set out in early autumn, cut in spring as greens or small heads. */
export const SPRING_CABBAGE: Crop = {
  ...CABBAGE,
  ...forWinter(CABBAGE, 21, [240, 275]),
  winter: winterLife(-8, "after it", { weeks: [2, 16] }),
  key: "spring-cabbage",
  kinds: [],
  one: "spring cabbage",
  many: "spring cabbages",
  alsoCalled: ["spring greens", "overwintering cabbage", "overwintering cabbages"],
  care: [],
  harvest: {
    ...CABBAGE.harvest,
    from: "sowing",
    days: commonPractice([240, 275]),
    holdsDays: commonPractice(21),
    sign: "Hearts are pointed and firm; loose ones are cut as greens.",
    how: "Cut every second one early as greens, and leave the rest to heart up.",
  },
};

/** Cabbages that stand the winter and are cut in spring. */
export const OVER_WINTER: readonly Crop[] = [SPROUTING_BROCCOLI, SPRING_CABBAGE];
