import { env } from "cloudflare:workers";
import { beforeAll, describe, expect, test } from "vitest";
import type { Plan } from "../../../src/garden/model/plan.ts";
import { loadStoredGarden } from "../../../src/host/store/gardens.ts";
import { type Saving, savedPlan, savePlan, storeReading } from "../../../src/host/store/plans.ts";

const SAVED_AT = Date.UTC(2027, 3, 1);

function saving(over: Partial<Saving> = {}): Saving {
  return {
    garden: "quarry-lane",
    year: 2027,
    base: 0,
    text: "garden: Quarry Lane\n",
    beside: { "weather.yaml": "low: []\n" },
    file: "plans/quarry-lane/2027.yaml",
    plan: { name: "Quarry Lane", year: 2027 } as unknown as Plan,
    readBy: "code 1",
    published: null,
    first: false,
    savedAt: SAVED_AT,
    origin: "https://garden.example",
    ...over,
  };
}

async function revision(garden = "quarry-lane"): Promise<number> {
  return (await loadStoredGarden(env.DB, garden))?.stored.revision ?? 0;
}

describe("saving a plan", () => {
  beforeAll(async () => {
    expect(await savePlan(env.DB, saving())).toBe(1);
  });

  test("gives back what was saved, texts beside it included", async () => {
    const saved = await savedPlan(env.DB, "quarry-lane", 2027);
    expect(saved).toMatchObject({ version: 1, beside: { "weather.yaml": "low: []\n" } });
    expect(saved?.plan.name).toBe("Quarry Lane");
  });

  test("over the version in force gives the next and keeps the one before", async () => {
    expect(await savePlan(env.DB, saving({ base: 1, text: "second" }))).toBe(2);
    const kept = await env.DB.prepare("SELECT text FROM plans ORDER BY version").all();
    expect(kept.results).toEqual([{ text: "garden: Quarry Lane\n" }, { text: "second" }]);
  });

  test("over an older version stores nothing and raises nothing", async () => {
    const before = await revision();
    expect(await savePlan(env.DB, saving({ base: 1, text: "late" }))).toBeNull();
    expect((await savedPlan(env.DB, "quarry-lane", 2027))?.text).toBe("second");
    expect(await revision()).toBe(before);
  });

  test("from one version twice at once lets one of them through", async () => {
    const both = await Promise.all([
      savePlan(env.DB, saving({ base: 2, text: "one" })),
      savePlan(env.DB, saving({ base: 2, text: "other" })),
    ]);
    expect(both.filter((version) => version === 3)).toHaveLength(1);
    expect(both.filter((version) => version === null)).toHaveLength(1);
  });

  test("of another year stands beside it, in year order", async () => {
    await savePlan(env.DB, saving({ year: 2026, text: "the year before" }));
    const opened = await loadStoredGarden(env.DB, "quarry-lane");
    expect(opened?.stored.plans.map(({ year }) => year)).toEqual([2026, 2027]);
  });
});

describe("a garden's revision", () => {
  test("rises with every plan added, changed or taken away, however it came about", async () => {
    await savePlan(env.DB, saving({ garden: "brook" }));
    await savePlan(env.DB, saving({ garden: "brook", base: 1 }));
    const run = (sql: string) => env.DB.prepare(sql).run();
    expect(await revision("brook")).toBe(2);
    await run("UPDATE plans SET text = 'by hand' WHERE garden = 'brook' AND version = 2");
    expect(await revision("brook")).toBe(3);
    await run("DELETE FROM plans WHERE garden = 'brook' AND version = 2");
    expect(await revision("brook")).toBe(4);
  });

  test("rises when a newer code's reading is kept, and the text stays", async () => {
    await savePlan(env.DB, saving({ garden: "weir" }));
    const plan = { name: "Weir", year: 2027 } as unknown as Plan;
    await storeReading(env.DB, "weir", { year: 2027, version: 1, plan, readBy: "code 2" });
    const saved = await savedPlan(env.DB, "weir", 2027);
    expect(saved).toMatchObject({ readBy: "code 2", text: "garden: Quarry Lane\n" });
    expect(await revision("weir")).toBe(2);
  });

  test("stays where only a feed is stored", async () => {
    await savePlan(env.DB, saving({ garden: "lea" }));
    await env.DB.prepare(
      "INSERT INTO feeds VALUES ('lea', 'owner-1', 'tasks.ics', 1, '', 0, '', 0, '', 1, '', 0)",
    ).run();
    expect(await revision("lea")).toBe(1);
  });
});
