import { describe, expect, it } from "vitest";
import { fahrenheit } from "../../src/base/quantities/quantity.ts";
import { BEAN, BEANS, POLE_BEAN, RUNNER_BEAN } from "../../src/crops/beans.ts";
import { isTender } from "../../src/crops/crops.ts";

describe("the beans of warm soil", () => {
  it("are tender and of the pea family", () => {
    expect(BEANS).toEqual([BEAN, POLE_BEAN, RUNNER_BEAN]);
    for (const crop of BEANS) {
      expect(isTender(crop), crop.key).toBe(true);
      expect(crop.family, crop.key).toBe("pea family");
      expect(fahrenheit(crop.outdoors?.soilMinC.value ?? 0)).toBeGreaterThan(54);
    }
  });

  it("climb poles where they are tall, and are stopped at the top", () => {
    expect(BEANS.filter(({ support }) => support)).toEqual([POLE_BEAN, RUNNER_BEAN]);
    for (const { care } of [POLE_BEAN, RUNNER_BEAN])
      expect(care.map(({ practice }) => practice)).toEqual(
        expect.arrayContaining(["stake and train", "stop the tops"]),
      );
  });

  it("bear longer on poles, later and farther apart than bush beans", () => {
    for (const pick of [
      ({ harvest }: typeof BEAN) => harvest.days.value[0],
      ({ harvest }: typeof BEAN) => harvest.bearsDays?.value[0] ?? 0,
      ({ outdoors }: typeof BEAN) => outdoors?.apartCm.value[0] ?? 0,
    ])
      expect(pick(POLE_BEAN)).toBeGreaterThan(pick(BEAN));
  });

  it("warn of eating them raw", () => {
    for (const { key, harvest } of BEANS) expect(harvest.caution, key).toMatch(/raw|boil/i);
  });
});
