import type { GenericSchema } from "valibot";
import { WrittenPlanSchema } from "./shape.ts";

/** What an editor shows of the schema as a whole. */
export const SCHEMA_TITLE = "A garden's plan for a year";

/**
 * The definitions of a plan file as it may be written, for the JSON Schema in plans/plan.schema.json that editors
 * complete from. That file is written by tests/garden/plan/schema.test.ts, which fails where the two differ.
 */
export const PLAN_FILE_SCHEMA: GenericSchema = WrittenPlanSchema;
