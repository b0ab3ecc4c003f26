import { toJsonSchema } from "@valibot/to-json-schema";
import { describe, expect, it } from "vitest";
import {
  PLANTING_KEY_NAMES,
  SCHEMA_TITLE,
  WrittenPlanSchema,
} from "../../../src/garden/plan/shape.ts";

const schema = { title: SCHEMA_TITLE, ...toJsonSchema(WrittenPlanSchema, { errorMode: "ignore" }) };

describe("the schema for editors", () => {
  it("is what is in plans/plan.schema.json (write it again with vitest -u)", async () => {
    const text = `${JSON.stringify(schema, null, 2)}\n`;
    await expect(text).toMatchFileSnapshot("../../../plans/plan.schema.json");
  });

  it("asks for garden, year and place and knows every key of a planting", () => {
    const text = JSON.stringify(schema);
    expect(schema.required).toEqual(["garden", "year", "place"]);
    for (const key of PLANTING_KEY_NAMES) expect(text).toContain(`"${key}":`);
  });

  it("lets a crop be a word, a phrase or keys", () => {
    const crops = (schema.properties?.crops ?? {}) as { items?: { anyOf?: unknown[] } };
    expect(crops.items?.anyOf).toHaveLength(3);
  });
});
