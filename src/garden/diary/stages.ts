import type { ObservedStage } from "./observation.ts";

/** How gardeners write that they saw a stage, in a whole clause of lower case; `subject` stands for the plantings' names. */
export const STAGE_PHRASES: readonly {
  readonly pattern: RegExp;
  readonly stage: ObservedStage;
}[] = [
  {
    pattern:
      /^first (?:ripe|red) (?<subject>.+?)(?: today| this morning| this evening| yesterday)?$/,
    stage: "first ripe",
  },
  {
    pattern:
      /^(?<subject>.+?) (?:(?:is|are|was|were|all|now|have been|has been) )*first ripe(?: today| this morning| this evening| yesterday)?$/,
    stage: "first ripe",
  },
  { pattern: /^first (?<subject>.+?) (?:is |are )?(?:ripe|red)$/, stage: "first ripe" },
  {
    pattern: /^(?<subject>.+?) (?:is |are )?(?:ripe|ripening|turning red)$/,
    stage: "first ripe",
  },
  { pattern: /^first flowers? (?:on|in|of) (?<subject>.+)$/, stage: "flower" },
  {
    pattern: /^(?<subject>.+?) (?:is |are )?(?:in flower|flowering|in bloom|blooming)$/,
    stage: "flower",
  },
  {
    pattern: /^(?:see |saw )?(?:first )?green (?:in|on|over|under|among) (?<subject>.+)$/,
    stage: "up",
  },
  { pattern: /^(?:see |saw )(?:the )?first (?<subject>.+)$/, stage: "up" },
  {
    pattern:
      /^(?<subject>.+?) (?:(?:is|are|have|has|all|just|shoots) )*(?:up|come up|came up|showing|emerged|sprouted|through)$/,
    stage: "up",
  },
];
