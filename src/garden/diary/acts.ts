import type { Planting } from "../model/plan.ts";
import { isRaised } from "../model/plantings.ts";
import type { ObservedStage } from "./observation.ts";

/** What a line says of a planting: work done, by practice and step, or a stage seen. */
export type PhraseMeaning =
  | { readonly kind: "done"; readonly act: DiaryAct; readonly step: string | null }
  | { readonly kind: "seen"; readonly stage: ObservedStage };

/** Work as a gardener speaks of it; which practice it is, is for the planting to say. */
export type DiaryAct =
  | "sow"
  | "sow again"
  | "plant"
  | "set out"
  | "pot on"
  | "harden off"
  | "thin"
  | "weed"
  | "hill"
  | "board"
  | "cover"
  | "mulch"
  | "stalks"
  | "feed"
  | "stake and train"
  | "stop the tops"
  | "fill in and blanch"
  | "scout"
  | "cure and store"
  | "harvest";

/**
 * How a line may be put: `subject` stands for the plantings' names. The first that fits wins. Only what is past
 * or seen: `sow the carrots` is a wish and stays a note.
 */
type DiaryPhrase = {
  readonly pattern: RegExp;
  readonly meaning: PhraseMeaning;
  readonly nameOptional?: boolean;
};

const done = (act: DiaryAct, step: string | null = null): PhraseMeaning => ({
  kind: "done",
  act,
  step,
});
const seen = (stage: ObservedStage): PhraseMeaning => ({ kind: "seen", stage });

/** Verb before or after the names: `sowed the carrots`, `carrots sown`. */
function verb(
  before: string,
  after: string,
  meaning: PhraseMeaning,
  needless = false,
): readonly DiaryPhrase[] {
  const tail = "(?: today| this morning| this evening| yesterday)?";
  return [
    { pattern: new RegExp(`^(?:${before}) (?<subject>.+?)${tail}$`), meaning },
    {
      pattern: new RegExp(
        `^(?<subject>.+?) (?:(?:is|are|was|were|all|now|have been|has been) )*(?:${after})${tail}$`,
      ),
      meaning,
    },
    ...(needless
      ? [{ pattern: new RegExp(`^(?:${after})${tail}$`), meaning, nameOptional: needless }]
      : []),
  ];
}

const COVER = "net|nets|netting|cover|covers|fabric|fleece|row cover";

const SUPPORTED = done("stake and train", "support");

/** Every way to say that something was done or seen, the more particular first. */
export const DIARY_PHRASES: readonly DiaryPhrase[] = [
  ...verb("first (?:ripe|red)", "first ripe", seen("first ripe")),
  { pattern: /^first (?<subject>.+?) (?:is |are )?(?:ripe|red)$/, meaning: seen("first ripe") },
  {
    pattern: /^(?<subject>.+?) (?:is |are )?(?:ripe|ripening|turning red)$/,
    meaning: seen("first ripe"),
  },
  { pattern: /^first flowers? (?:on|in|of) (?<subject>.+)$/, meaning: seen("flower") },
  {
    pattern: /^(?<subject>.+?) (?:is |are )?(?:in flower|flowering|in bloom|blooming)$/,
    meaning: seen("flower"),
  },
  {
    pattern: /^(?:see |saw )?(?:first )?green (?:in|on|over|under|among) (?<subject>.+)$/,
    meaning: seen("up"),
  },
  { pattern: /^(?:see |saw )(?:the )?first (?<subject>.+)$/, meaning: seen("up") },
  {
    pattern:
      /^(?<subject>.+?) (?:(?:is|are|have|has|all|just|shoots) )*(?:up|come up|came up|showing|emerged|sprouted|through)$/,
    meaning: seen("up"),
  },
  {
    pattern: /^(?:boards?|the boards?) (?:off|up from|away from) (?<subject>.+)$/,
    meaning: done("board", "off"),
  },
  ...verb(
    "took (?:the )?boards? off",
    "(?:took )?(?:the )?boards? off",
    done("board", "off"),
    true,
  ),
  { pattern: /^(?:the )?boards? (?:on|over) (?<subject>.+)$/, meaning: done("board", "on") },
  ...verb("put (?:the |a )?boards? (?:on|over)", "boards? on", done("board", "on"), true),
  {
    pattern: new RegExp(`^(?:took (?:the )?)?(?:${COVER}) off (?<subject>.+)$`),
    meaning: done("cover", "off"),
  },
  ...verb("uncovered", `uncovered|(?:${COVER}) off`, done("cover", "off")),
  {
    pattern: new RegExp(`^(?:put )?(?:the |a )?(?:${COVER}) (?:on|over) (?<subject>.+)$`),
    meaning: done("cover", "on"),
  },
  ...verb("covered|netted", `covered|netted|(?:${COVER}) on`, done("cover", "on")),
  ...verb(
    "(?:set|planted|put) out|transplanted",
    "(?:set|planted|put) out|transplanted|out",
    done("set out"),
  ),
  { pattern: /^(?:set|planted|put) (?<subject>.+?) out$/, meaning: done("set out") },
  ...verb("sowed again|sowed more|resowed", "sown again|sowed again|resown", done("sow again")),
  { pattern: /^(?:sowed|sown) (?<subject>.+?) again$/, meaning: done("sow again") },
  ...verb(
    "(?:sowed|sown|seeded|started)(?: indoors| outdoors)?",
    "(?:sown|sowed|seeded|started)(?: indoors| outdoors| in trays| in the greenhouse)?",
    done("sow"),
  ),
  ...verb("potted (?:on|up)", "potted (?:on|up)", done("pot on")),
  ...verb("hardened off", "hardened off", done("harden off", "last")),
  ...verb("planted", "planted|in the ground", done("plant")),
  ...verb("thinned(?: out)?", "thinned(?: out)?", done("thin")),
  {
    pattern: /^(?<subject>.+?) thinned again$|^thinned (?<again>.+?) again$/,
    meaning: done("thin", "2"),
  },
  ...verb("weeded|hoed", "weeded|hoed", done("weed")),
  ...verb("hilled(?: up)?|earthed up", "hilled(?: up)?|earthed up", done("hill")),
  ...verb("mulched", "mulched", done("mulch")),
  ...verb(
    "cut (?:the )?(?:stalks|scapes) (?:off|of|from)",
    "(?:stalks|scapes) (?:cut|off)",
    done("stalks"),
  ),
  ...verb(
    "fed|fertilized|fertilised|side-dressed|top-dressed",
    "fed|fertilized|fertilised|side-dressed|top-dressed",
    done("feed"),
  ),
  ...verb("put up (?:the )?(?:supports|stakes|trellis|netting) for", "supported", SUPPORTED),
  ...verb("staked|caged|trellised", "staked|caged|trellised", done("stake and train")),
  ...verb(
    "tied(?: in| up)?|trained|led up",
    "tied(?: in| up)?|trained|led up",
    done("stake and train"),
  ),
  ...verb(
    "stopped|topped|pinched(?: out)?",
    "stopped|topped|pinched(?: out)?",
    done("stop the tops"),
  ),
  ...verb("blanched|filled in", "blanched|filled in", done("fill in and blanch")),
  ...verb("scouted|checked|looked over", "scouted|checked|looked over", done("scout")),
  ...verb("cured|stored", "cured|stored", done("cure and store")),
  ...verb(
    "cut|picked|pulled|lifted|dug|dug up|harvested",
    "cut|picked|pulled|lifted|dug|dug up|harvested",
    done("harvest"),
  ),
];

/** Practice and step of an act for a planting, as its tasks carry them; null where it has no such work. */
export function practiceFor(
  act: DiaryAct,
  step: string | null,
  planting: Planting,
  overwinters: boolean,
): { readonly practice: string; readonly step: string | null } | null {
  switch (act) {
    case "sow":
      if (planting.start === "seed indoors") return { practice: "sow indoors", step };
      if (planting.start === "winter-sown") return { practice: "winter-sow", step };
      return planting.start === "seed outdoors" ? { practice: "sow outdoors", step } : null;
    case "sow again":
      return planting.repeat ? { practice: "repeat", step } : null;
    case "plant":
      if (overwinters) return { practice: "overwinter", step: "plant" };
      if (isRaised(planting.start)) return { practice: "set out", step };
      return { practice: planting.start === "seed outdoors" ? "sow outdoors" : "plant", step };
    case "set out":
      return isRaised(planting.start) ? { practice: "set out", step } : null;
    case "harden off":
      return isRaised(planting.start) ? { practice: "harden off", step: null } : null;
    case "mulch":
    case "stalks":
      return overwinters ? { practice: "overwinter", step: act } : null;
    default:
      return { practice: act, step };
  }
}
