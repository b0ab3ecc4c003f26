import { describe, expect, it } from "vitest";
import { fahrenheit } from "../../src/base/quantities/quantity.ts";
import { RUNNER_BEAN } from "../../src/crops/beans.ts";
import { isTender } from "../../src/crops/crops.ts";
import { COWPEA, DRY_BEAN, EDAMAME, LIMA_BEAN, SHELL_BEANS } from "../../src/crops/shell-beans.ts";

describe("beans that are grown for their seed", () => {
  it("are tender, of the pea family, and want warm soil", () => {
    expect(SHELL_BEANS).toEqual([COWPEA, DRY_BEAN, EDAMAME, LIMA_BEAN]);
    for (const crop of SHELL_BEANS) {
      expect(isTender(crop), crop.key).toBe(true);
      expect(crop.family, crop.key).toBe("pea family");
      expect(fahrenheit(crop.outdoors?.soilMinC.value ?? 0)).toBeGreaterThan(54);
    }
  });

  it("warn of eating them raw", () => {
    for (const { key, harvest } of SHELL_BEANS) expect(harvest.caution, key).toMatch(/raw|boil/i);
  });

  it("are gathered at one go where they are edamame or dried", () => {
    for (const { harvest } of [EDAMAME, DRY_BEAN])
      expect(harvest).toMatchObject({ kind: "once", bearsDays: null });
    expect(RUNNER_BEAN.harvest.kind).toBe("again and again");
  });

  it("are stored once they are dry, with the caution of kidney beans", () => {
    const dried = DRY_BEAN.care.find(({ practice }) => practice === "cure and store");
    expect(dried?.caution).toContain("ten minutes");
    expect(dried?.days.value[0]).toBeGreaterThan(0);
  });

  it("have limas come up by their own row", () => {
    expect(LIMA_BEAN.comesUp).toEqual({ kind: "table", row: "bean_lima", standsIn: null });
    expect(LIMA_BEAN.frost.value).toBe("warm loving");
  });
});
