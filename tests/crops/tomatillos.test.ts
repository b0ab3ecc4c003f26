import { expect, it } from "vitest";
import { TOMATILLO } from "../../src/crops/tomatillos.ts";

it("tomatillos are tender, caged, planted by twos, and wanted by bees", () => {
  expect(TOMATILLO.frost.value).toBe("tender");
  expect(TOMATILLO.support?.things).toEqual(["a cage for each plant"]);
  expect(TOMATILLO.settingOut?.how).toContain("two");
  expect(TOMATILLO.flowers?.forBees).toBe(true);
});
