/**
 * Where a figure comes from. `published` names author, year, title and the table or page; `derived` says from which
 * published figures it was calculated and how; `common practice` is a rule of thumb of the trade without a source;
 * `house rule` is ours, with its reason; `memory` was not looked up and may be wrong.
 */
export type Source =
  | { readonly kind: "published"; readonly cite: string }
  | { readonly kind: "derived"; readonly cite: string; readonly how: string }
  | { readonly kind: "common practice" }
  | { readonly kind: "house rule"; readonly why: string }
  | { readonly kind: "memory"; readonly of: string };

/** A figure and its source; the unit is in the name of its field. */
export type Figure<T> = { readonly value: T; readonly source: Source };

/** Least and most, both inclusive. */
export type NumberRange = readonly [least: number, most: number];

/**
 * How much frost a crop survives: very hardy (hard frosts for short periods), frost tolerant (light frosts), tender
 * (killed by frost), warm loving (no cold at all).
 * Source: the classes of Purdue University Extension HO-203, Vegetables: frost resistance.
 */
export type FrostClass = "very hardy" | "frost tolerant" | "tender" | "warm loving";

/**
 * How a planting begins in this garden. `winter-sown` is seed in vented containers that stand outdoors through the end
 * of winter; `plants` are bought or given, ready to go out, slips and runners among them; `crowns` are roots with buds.
 */
export type Start =
  | "seed indoors"
  | "winter-sown"
  | "seed outdoors"
  | "plants"
  | "tubers"
  | "cloves"
  | "sets"
  | "crowns";

/** The botanical family in the trade's words; pests and rotations go by it. */
export type Family =
  | "nightshade family"
  | "carrot family"
  | "daisy family"
  | "beet family"
  | "onion family"
  | "cabbage family"
  | "pea family"
  | "gourd family"
  | "grass family"
  | "mint family"
  | "mallow family"
  | "bindweed family"
  | "asparagus family"
  | "knotweed family"
  | "rose family"
  | "honeysuckle family"
  | "nasturtium family"
  | "gooseberry family"
  | "heather family"
  | "grape family"
  | "borage family";

/** How seed comes up: a row of the days table, its own or that of a crop that comes up like it. */
export type FromSeed = {
  readonly kind: "table";
  readonly row: string;
  readonly standsIn: Figure<string> | null;
};

/** How a tuber or clove comes up: days after planting, whatever the soil, or in soil that warm [°C] and later in colder. */
export type FromTuber = {
  readonly kind: "days";
  readonly days: Figure<NumberRange>;
  readonly inSoilC?: Figure<number>;
};

/** One thinning. `daysAfterUp` sets the day; the height is the sign the gardener looks for. */
export type Thinning = {
  readonly step: string;
  readonly daysAfterUp: Figure<NumberRange>;
  readonly heightCm: Figure<NumberRange>;
  readonly apartCm: Figure<NumberRange>;
  /** A full sentence on how, or on what to use the thinnings for. */
  readonly how: MeasuredText;
};

/** Raising plants under cover, counted back from the day they go out. */
export type Indoors = {
  readonly weeksToSettingOut: Figure<NumberRange>;
  readonly soilTempC: Figure<number>;
  readonly depthCm: Figure<NumberRange>;
  /** Days after up to a bigger pot; null where plants stay in their cells. */
  readonly potOnDaysAfterUp: Figure<NumberRange> | null;
  readonly hardenDays: Figure<number>;
  /** Outdoors at night only where it stays above this [°C]. */
  readonly nightFloorC: Figure<number>;
};

/** Sowing or planting where the crop is to grow. */
export type Outdoors = {
  readonly depthCm: Figure<NumberRange>;
  readonly apartCm: Figure<NumberRange>;
  readonly rowsCm: Figure<number>;
  /** The least soil temperature at planting depth [°C]; in colder soil it rots. */
  readonly soilMinC: Figure<number>;
  /**
   * The earliest week, counted from the last frost at the risk for seed, negative before it; null: frost does not
   * matter.
   */
  readonly weeksFromLastFrost: Figure<number> | null;
  /** Above this soil temperature [°C] the seed goes dormant; null where none is known. */
  readonly soilMaxC: Figure<number> | null;
  /** Hours that seed is soaked before it goes in; null: sown dry. */
  readonly soakHours: Figure<NumberRange> | null;
  /** A full sentence on what matters in sowing or planting it (`Sow in a block, not in one long row.`), or null. */
  readonly how: string | null;
};

/** Setting raised plants out. */
export type SettingOut = {
  /** Weeks from the last frost at the risk for raised plants, negative before it. */
  readonly weeksFromLastFrost: Figure<number>;
  readonly soilMinC: Figure<number> | null;
  readonly apartCm: Figure<number>;
  readonly rowsCm: Figure<number>;
  /** What must be at hand then. */
  readonly things: readonly string[];
  readonly how: MeasuredText;
};

/** Earthing up a row, or filling a bag. Shoots and tops are heights above the soil. */
export type Hilling = {
  readonly firstDaysAfterPlanting: Figure<NumberRange>;
  readonly daysBetween: Figure<NumberRange>;
  readonly shootCm: Figure<NumberRange>;
  readonly topsLeftCm: Figure<NumberRange>;
  readonly bagStartCm: Figure<NumberRange>;
  readonly bagCoverCm: Figure<NumberRange>;
  readonly bagRimCm: Figure<NumberRange>;
  readonly rowTotalCm: Figure<NumberRange>;
};

/** What a cover keeps off. Crops of one bed with the same among them share a cover. */
export type Pest =
  | "birds"
  | "leaf miners"
  | "cabbage pests"
  | "flea beetles"
  | "carrot fly"
  | "cucumber beetles"
  | "onion fly";

/**
 * A cover that goes on and comes off by the plant's stage. `on`: the day it is sown or set out, or the day it is up.
 * `off`: so many days after it is up, after its first flower (0: as it opens), after its first harvest (0: as it
 * begins) or after the usual first frost. What bees must reach comes off at the flower at the latest.
 */
export type CoverFacts = {
  readonly against: Pest;
  /** Regions in which the pest is so common that gardeners cover against it; left out: all. */
  readonly in?: readonly Region[];
  readonly with: "net" | "fabric";
  readonly on: "in place" | "up";
  readonly off: "up" | "flower" | "first harvest" | "first frost";
  readonly offDays: Figure<NumberRange>;
  /** The plant's sign that the cover may come off; a full sentence. */
  readonly offSign: string;
  /** Why it comes off then; a full sentence, left out where the plant has outgrown what it was for. */
  readonly offWhy?: string;
};

/** When it flowers, counted back from the first harvest, and whether bees must reach the flowers for a harvest. */
export type Flowers = {
  readonly daysBeforeHarvest: Figure<NumberRange>;
  readonly forBees: boolean;
};

/** Something to climb, put up on the day it is sown or set out. */
export type Support = {
  /** As a list is read: `a trellis 6 ft high`. */
  readonly things: readonly string[];
  readonly how: string;
  /** A full sentence on what comes before raised plants go in beside it; null where nothing has to. */
  readonly first: string | null;
};

/** Parts of the world that differ in their pests and animals. */
export type Region =
  | "north america"
  | "alaska"
  | "british isles"
  | "nordic countries"
  | "mainland europe"
  | "australia"
  | "new zealand"
  | "elsewhere";

/** Words that differ by region; `otherwise` where it has none of its own. */
export type RegionalWords = Readonly<Partial<Record<Region, string>>> & {
  readonly otherwise: string;
};

/** Text with lengths [cm] and temperatures [°C] in it, which are written later in the household's units, and words that differ by region. */
export type MeasuredText =
  | string
  | readonly (
      | string
      | { readonly cm: NumberRange }
      | { readonly tempC: number }
      | { readonly regional: RegionalWords }
    )[];

/** The practices whose tasks come from a crop's own list of what it needs as it grows. */
export type CarePractice =
  | "feed"
  | "stake and train"
  | "stop the tops"
  | "fill in and blanch"
  | "scout"
  | "cure and store"
  | "yearly";

/**
 * Something a crop needs once at a stage: so many days, least and most, from a stage of its own or from the usual frost
 * nearest to its growing, negative before it. `yearly` is what a perennial needs every year.
 */
export type Care = {
  readonly practice: CarePractice;
  /** A word or a number, unique in its practice and crop; never changed, because ids are made of it. */
  readonly step: string;
  readonly from: "in place" | "up" | "flower" | "first harvest" | "last frost" | "first frost";
  readonly days: Figure<NumberRange>;
  /** As a title begins: `Feed`, `Tie in`; the crop follows it. */
  readonly verb: string;
  /** Full sentences. */
  readonly how: MeasuredText;
  readonly sign: MeasuredText | null;
  readonly why: MeasuredText;
  readonly caution: MeasuredText | null;
  readonly harm: "this week" | "when you can";
  readonly minutes: number;
  /** Things to take along, as a list is read. */
  readonly needs: readonly string[];
  /** Regions in which it is told, where its pest does not live everywhere. */
  readonly regions?: readonly Region[];
  /** Told only while it still stands: not more than so many days after it was ripe, and with nothing sown in its place. */
  readonly standsDays?: Figure<number>;
  /** `bearing`: only in summers in which it is harvested; `frozen ground`: only where winters freeze the ground; `hot summer`: only where summer rests and winter grows. */
  readonly only?: readonly ("bearing" | "frozen ground" | "hot summer")[];
};

/** A crop that grows for years, and is cut in spring for some weeks or picked in its season. */
export type Perennial = {
  /** The summer after planting in which it is first harvested: 1 is the year it was planted in. */
  readonly firstHarvestYear: Figure<number>;
  /** The first harvest, in days from the usual last frost, negative before it. */
  readonly harvestDaysAfterLastFrost: Figure<NumberRange>;
  /** How long it may be cut or picked each year. */
  readonly harvestWeeks: Figure<NumberRange>;
  readonly standsYears: Figure<NumberRange>;
  /** What the end of its season is: the plant's rest, the last fruit to be cleared, or nothing that is told. */
  readonly ends: "rest" | "clear" | null;
};

/** Planted in autumn to live through the winter. */
export type Overwinter = {
  readonly plantDaysAfterKillingFrost: Figure<NumberRange>;
  readonly mulchCm: Figure<NumberRange>;
  readonly mulchDaysAfterKillingFrost: Figure<NumberRange>;
  /** Days after the last frost in spring. */
  readonly harvestDaysAfterLastFrost: Figure<NumberRange>;
  readonly cutStalksDaysAfterLastFrost: Figure<NumberRange>;
  readonly cureWeeks: Figure<NumberRange>;
};

/**
 * How a crop that no frost of autumn ends lives through the winter in the open, where that is no colder than it survives.
 */
export type WinterLife = {
  /** It dies, or what is to be harvested spoils, in a night colder than this [°C]. */
  readonly survivesC: Figure<number>;
  /** Whether it is harvested through the winter, only if it was sown for it, or not before it is over. */
  readonly picked: "through it" | "through it if sown for it" | "after it";
  /** Whether it is not worth eating before the first frost has made it sweet. */
  readonly sweetened: boolean;
  /**
   * Weeks before the usual killing frost in which it is sown, planted or set out to live through the winter young and be
   * ready after it: least, most. Null: it has to be grown by then.
   */
  readonly sownWeeksBefore: Figure<NumberRange> | null;
  /**
   * Weeks before the usual first frost in which it goes into its place where it is picked till spring; null: as early as
   * it may, since it is worth picking all summer or needs the time.
   */
  readonly inPlaceWeeksBefore: Figure<number> | null;
  /** Of what lived through it young: not ready before so many days from when spring begins; null: by warmth alone. */
  readonly daysAfterSpring: Figure<number> | null;
};

/**
 * How warmth drives its growth: each day counts how far its low and high are above the base, up to the ceiling. The
 * packet's days are assumed to be for days with the mean `packetC`, because no packet says for which.
 */
export type Warmth = {
  readonly baseC: Figure<number>;
  readonly ceilingC: Figure<number> | null;
  readonly packetC: Figure<number>;
};

/**
 * What makes it bolt or ends it; null where none is known. `heatC`: a mean air above which it turns bitter, bolts or
 * stops bearing. `longDays`: bolts where days are longer than so many hours and the mean air is above that.
 * `coldYoung`: bolts after that many days of a mean air below that in its first weeks.
 */
export type CropLimits = {
  readonly heatC: Figure<number> | null;
  readonly longDays: Figure<{ readonly hours: number; readonly aboveC: number }> | null;
  readonly coldYoung: Figure<{ readonly belowC: number; readonly days: number }> | null;
};

/** A kind of onion, by the length of day that makes it form bulbs. */
export type BulbKind = "short-day" | "intermediate" | "long-day";

/** Hours of day from which each kind forms bulbs. */
export type BulbKinds = Readonly<Record<BulbKind, Figure<number>>>;

/** How a crop is brought in. */
export type Harvest = {
  readonly from: "sowing" | "setting out" | "planting";
  /** Days to the first harvest; the plan's own days replace it. */
  readonly days: Figure<NumberRange>;
  readonly kind: "once" | "again and again" | "cut and come again";
  readonly cuts: {
    readonly everyDays: Figure<NumberRange>;
    readonly times: Figure<NumberRange>;
  } | null;
  /** Days it goes on bearing from the first harvest; null: once, or until frost. */
  readonly bearsDays: Figure<NumberRange> | null;
  /** How long it may stay in the bed once ready before it spoils [days]. */
  readonly holdsDays: Figure<number>;
  readonly verb: string;
  /** The plant's sign that it is ready; a full sentence. */
  readonly sign: string;
  readonly how: string;
  readonly caution: string | null;
};

/** Everything that is known of a crop. What a crop does not need is null or empty. */
export type Crop = {
  readonly key: string;
  /** Singular and plural as in a title: `beet`, `beets`. */
  readonly one: string;
  readonly many: string;
  /** Other names of the trade, singular and plural, lower case. */
  readonly alsoCalled: readonly string[];
  /**
   * Kinds that go by a name of their own and are grown like the crop, lower case: `gherkin`, `early potatoes`. A planting
   * of one has that name for its key, so that a kind may be added without renaming anything in a garden.
   */
  readonly kinds: readonly string[];
  readonly family: Family;
  readonly frost: Figure<FrostClass>;
  /** Ways it can begin, the usual one first. */
  readonly starts: readonly Start[];
  readonly comesUp: FromSeed | FromTuber;
  /** Whether it comes up so slowly that weeds are there first. */
  readonly slow: boolean;
  readonly indoors: Indoors | null;
  readonly settingOut: SettingOut | null;
  readonly outdoors: Outdoors | null;
  readonly thinnings: readonly Thinning[];
  readonly hilling: Hilling | null;
  readonly covers: readonly CoverFacts[];
  /** Null where no task depends on the flower. */
  readonly flowers: Flowers | null;
  readonly support: Support | null;
  readonly care: readonly Care[];
  readonly perennial: Perennial | null;
  readonly repeatEveryDays: Figure<NumberRange> | null;
  readonly overwinter: Overwinter | null;
  /** For bulbs: the kinds by the hours of day from which each makes them; else null. */
  readonly bulbs: BulbKinds | null;
  /** For what feeds the soil: days from cutting it down till the next crop may go in; else null. */
  readonly digInDays: Figure<NumberRange> | null;
  /** Null where the cold of autumn ends it at the latest. */
  readonly winter: WinterLife | null;
  /** Null where its days depend on the time of year and not on warmth: crops that live through the winter. */
  readonly warmth: Warmth | null;
  readonly limits: CropLimits;
  /** Hotter days or nights than these [°C] drop its flowers, and nothing sets; left out where that is not known. */
  readonly setsBelow?: Figure<{ readonly dayC: number; readonly nightC: number }>;
  readonly harvest: Harvest;
  /** Whether it is grown for autumn: where its spring sowing would bolt, it goes in after the long days. */
  readonly forAutumn?: true;
  /** Whether late blight takes its leaves in mild, wet weather. */
  readonly lateBlight?: true;
  /** The part that is eaten, or looked at; pictures draw it. */
  readonly eaten: "leaf" | "root" | "fruit";
  /** What differs where it begins in another way than usual, such as onions from sets. */
  readonly whenBegun: Readonly<Partial<Record<Start, Partial<Omit<Crop, "key" | "whenBegun">>>>>;
  /** What differs where it is in since an earlier year, because it may stand for years; null for what does not. */
  readonly whenOld: Partial<Omit<Crop, "key" | "whenBegun" | "whenOld">> | null;
};
