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
      `^(?:picked|cut|pulled|ate|harvested|dug|lifted|had|gathered|picking|cutting|pulling|digging|lifting|eating) ${OUR}(?:very )?first(?: few| of)? (?:ripe )?(?<subject>.+)$`,
    ),
    stage: "first ripe",
  },
  {
    pattern: new RegExp(
      `^${OUR}first (?:harvest|picking|pick|handful|bowl|bowlful|bunch|meal|taste|cut|cutting|pulling|kilo|pound|punnet|basket|bucket|dish|trug|feed)(?: of)? ${OUR}(?<subject>.+)$`,
    ),
    stage: "first ripe",
  },
  {
    pattern: new RegExp(
      `^(?<subject>.+?),? ${OUR}first (?:harvest|picking|pick|handful|bowl|bowlful|bunch|meal|cut|cutting|kilo|pound|punnet|basket|bucket|dish|ones?|fruits?|pods?|heads?|spears?)$`,
    ),
    stage: "first ripe",
  },
  {
    pattern: new RegExp(
      `^${OUR}first (?:ripe )?(?<subject>.+?) (?:is |are |was |were )?(?:ripe|red|picked|cut|pulled|eaten|harvested|dug|lifted)$`,
    ),
    stage: "first ripe",
  },
  {
    pattern: new RegExp(
      `^(?<subject>.+?) ${ARE}(?:first ripe|ripe|ripening|reddening|hearted(?: up)?|sounds? hollow|sounding hollow|silks (?:are )?(?:brown|browning|dry)|colouring(?: up)?|coloring(?: up)?|turning (?:red|orange|yellow|colour|color)|ready(?: to (?:pick|eat|cut|pull|harvest))?)$`,
    ),
    stage: "first ripe",
  },
  { pattern: /^ripe (?<subject>.+?), the first$/, stage: "first ripe" },
  {
    pattern: /^(?:flowers?|blossoms?|blooms?) (?:open )?on (?<subject>.+)$/,
    stage: "flower",
  },
  {
    pattern:
      /^(?:the )?first (?:open )?(?:flowers?|blossoms?|blooms?) (?:open )?(?:on|in|of) (?<subject>.+)$/,
    stage: "flower",
  },
  {
    pattern:
      /^(?<subject>.+?),? (?:(?:has|have|with) )?(?:its |their |the )?first (?:open )?(?:flowers?|blossoms?|blooms?)(?: open| out)?$/,
    stage: "flower",
  },
  {
    pattern: new RegExp(
      `^(?<subject>.+?) ${ARE}(?:in (?:full )?(?:flower|bloom|blossom)|flowering|flowered|blooming|blossoming|tasselling|tasseling|in tassel|silking|tassels?|anthesis)$`,
    ),
    stage: "flower",
  },
  {
    pattern:
      /^(?<subject>.+?) (?:(?:is|are|first|give|gives|giving|making) )*(?:(?:truss|trusses|flowers?|blooms?|blossoms?)(?: 1| one)? (?:is |are )?(?:open|out|opening)|(?:give|gives|giving|making) (?:its |their )?flowers?)$/,
    stage: "flower",
  },
  {
    pattern:
      /^(?:see |saw )?(?:the )?(?:first )?(?:green|spears?|shoots?) (?:in|on|over|under|among|of) (?<subject>.+)$/,
    stage: "up",
  },
  { pattern: /^(?:see |saw )(?:the )?first (?<subject>.+)$/, stage: "up" },
  {
    pattern:
      /^(?:of )?\d+ (?:sown )?(?<subject>.+?) (?:cells |seeds |modules |pots )?\d+ (?:germinated|up|came up|through|emerged|sprouted)$/,
    stage: "up",
  },
  {
    pattern:
      /^(?<subject>.+?) (?:emergence|germination) (?:observed|seen|noted|started|begun|complete|completed)$/,
    stage: "up",
  },
  { pattern: /^(?:emergence|germination) (?:of|in) (?<subject>.+)$/, stage: "up" },
  {
    pattern: new RegExp(
      `^(?<subject>.+?) ${ARE}(?:(?:come |came |coming |popped |popping |poking |poked |peeping |pushing |peeking |breaking |broken |nosing |shoving |pushed |peeped )?(?:up|through)|peeping|showing|crooks visible|loops visible|hooks visible|emerged|emerging|sprouted|sprouting|germinated|germinating|appeared|(?:breaking|broken|cracking) (?:ground|the surface|the soil|the crust)|visible)$`,
    ),
    stage: "up",
  },
];

/** Tops that fall over, which is the sign of ripe bulbs. */
export const TOPS_FALL =
  /^(?<subject>.+?) (?:(?:is|are|have|has|starting to|started|tops|necks|all|going|half) )*(?:keeling over|keel over|falling over|fallen over|flopping(?: over)?|flopped(?: over)?|bending over|bent over|toppling|toppled|gone over|necks down|tops down|neck down)$/;

/** A fruit on its own, `first tomato`: ripe where the crop is eaten for its fruit. */
export const FIRST_FRUIT = /^(?:the |our |my )?(?:very )?first (?<subject>[\w' ]+)$/;
