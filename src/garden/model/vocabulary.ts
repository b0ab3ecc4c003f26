import type { PlantCoverName } from "../../crops/index.ts";
import type { Planting } from "./plan.ts";

/** Which plantings a deed can be said of; what is left out does not matter. */
export type PlantingCondition = {
  /** How it begins in the plan. */
  readonly begun?: readonly Planting["start"][];
  /** Whether its crop is planted in autumn to stand the winter. */
  readonly overwinters?: boolean;
  /** What the plan sows more than once. */
  readonly repeated?: true;
  /** The line numbers a sowing after the first (`lettuce 2`), and its number is the step. */
  readonly laterSowing?: true;
  /** Not what the plan has in the ground since another year. */
  readonly isNew?: true;
  /** The line is of the days from which raised plants can be outdoors, and not of the months in which they are seed. */
  readonly whenOut?: true;
  /** Whether the plants are out for hours, or for good. */
  readonly forHours?: boolean;
  /** What the plan puts over it. */
  readonly under?: PlantCoverName;
};

/**
 * A way gardeners write that a job was done. `patterns` read a whole clause in lower case; the group `subject` is the name
 * of what it was done to, and a pattern without that group names nothing.
 */
export type Deed = {
  readonly patterns: readonly RegExp[];
  /** What is named, and whose task it is: a planting's, a bed's, or the garden's, which nothing names. */
  readonly about: "planting" | "bed" | "garden";
  /** The step that was done; null: the one that is due. */
  readonly step: string | null;
  readonly of: PlantingCondition;
};

/** A practice as a plan and a diary name it. */
export type PracticeWords = {
  readonly name: string;
  /** What else it is called, in lower case: `weeding`, `hoeing`. */
  readonly words: readonly string[];
  /** Whether it puts a crop into soil: `once`, or `again`, as another sowing of it; null where it does not. */
  readonly begins: "once" | "again" | null;
  readonly deeds: readonly Deed[];
};

/** The words in which a garden's plans and diaries speak of work, in the order in which a season meets it. */
export type Vocabulary = readonly PracticeWords[];
