import { toJsonSchema } from "@valibot/to-json-schema";
import { describe, expect, it } from "vitest";
import { PLAN_FILE_SCHEMA, SCHEMA_TITLE } from "../../../src/garden/plan/schema.ts";
import { PLANTING_KEY_NAMES } from "../../../src/garden/plan/shape.ts";

const schema = { title: SCHEMA_TITLE, ...toJsonSchema(PLAN_FILE_SCHEMA, { errorMode: "ignore" }) };

describe("the schema for editors", () => {
  it("is what plans/plan.schema.json holds (write it again with vitest -u)", async () => {
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
