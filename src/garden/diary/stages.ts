import type { ObservedStage } from "./observation.ts";

const ARE = "(?:(?:is|are|was|were|has|have|been|all|shoots|seedlings|beginning to be) )*";
const OUR = "(?:the |our |my )?";

/** How gardeners write that they saw a stage, in a whole clause of lower case; `subject` stands for the plantings' names. */
export const STAGE_PHRASES: readonly {
  readonly pattern: RegExp;
  readonly stage: ObservedStage;
}[] = [
  { pattern: /^first (?:ripe|red) (?<subject>.+?)(?: eaten| picked)?$/, stage: "first ripe" },
  {
    pattern: new RegExp(
      `^(?:picked|cut|pulled|ate|harvested|picking|cutting|pulling|eating) ${OUR}first (?:ripe )?(?<subject>.+)$`,
    ),
    stage: "first ripe",
  },
  {
    pattern: new RegExp(
      `^${OUR}first (?:ripe )?(?<subject>.+?) (?:is |are |was |were )?(?:ripe|red|picked|cut|pulled|eaten|harvested)$`,
    ),
    stage: "first ripe",
  },
  {
    pattern: new RegExp(
      `^(?<subject>.+?) ${ARE}(?:first ripe|ripe|ripening|turning red|ready(?: to (?:pick|eat|cut|pull|harvest))?)$`,
    ),
    stage: "first ripe",
  },
  { pattern: /^ripe (?<subject>.+?), the first$/, stage: "first ripe" },
  {
    pattern: /^(?:the )?first (?:flowers?|blossoms?|blooms?) (?:on|in|of) (?<subject>.+)$/,
    stage: "flower",
  },
  {
    pattern: new RegExp(
      `^(?<subject>.+?) ${ARE}(?:in (?:full )?(?:flower|bloom|blossom)|flowering|blooming|blossoming)$`,
    ),
    stage: "flower",
  },
  {
    pattern:
      /^(?:see |saw )?(?:the )?(?:first )?(?:green|spears?|shoots?) (?:in|on|over|under|among|of) (?<subject>.+)$/,
    stage: "up",
  },
  { pattern: /^(?:see |saw )(?:the )?first (?<subject>.+)$/, stage: "up" },
  {
    pattern: new RegExp(
      `^(?<subject>.+?) ${ARE}(?:(?:come |came |coming |popped |popping |poking |peeping |pushing |peeking )?(?:up|through)|peeping|showing|emerged|emerging|sprouted|sprouting|germinated|germinating|appeared|breaking (?:ground|the surface)|visible)$`,
    ),
    stage: "up",
  },
];

/** A fruit on its own, `first tomato`: ripe where the crop is eaten for its fruit. */
export const FIRST_FRUIT = /^(?:the |our |my )?(?:very )?first (?<subject>[\w' ]+)$/;
