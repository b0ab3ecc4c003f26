import { describe, expect, it } from "vitest";
import {
  BRASSICAS,
  BROCCOLI,
  BRUSSELS_SPROUTS,
  CAULIFLOWER,
  COLLARDS,
  KALE,
} from "../../src/crops/brassicas.ts";
import { CABBAGE } from "../../src/crops/cabbages.ts";

describe("the cabbages with heads, sprouts and stems", () => {
  it("are of the cabbage family and go under a net the hour they are planted", () => {
    for (const { family, covers, key } of BRASSICAS) {
      expect(family, key).toBe("cabbage family");
      expect(covers[0], key).toMatchObject({ against: "cabbage pests", on: "in place" });
    }
  });

  it("get a collar and a net in the hour they are set out", () => {
    for (const { settingOut } of BRASSICAS)
      expect(settingOut?.things.join()).toMatch(/collars.*net/);
  });

  it("are fed and looked over like the cabbages that make heads", () => {
    const practices = CABBAGE.care.map(({ practice }) => practice);
    expect(practices).toEqual(expect.arrayContaining(["feed", "scout", "cure and store"]));
  });

  it("are fed for heads only where they have heads", () => {
    for (const { care } of [KALE, COLLARDS]) {
      const [fed, looked] = care;
      expect(fed?.practice).toBe("feed");
      expect(fed?.why).not.toContain("head");
      expect(looked?.practice).toBe("scout");
    }
  });

  it("have a broccoli that goes on after its head, and a cauliflower that does not", () => {
    expect(BROCCOLI.harvest.kind).toBe("again and again");
    expect(CAULIFLOWER.harvest.kind).toBe("once");
    expect(CAULIFLOWER.care.map(({ practice }) => practice)).toContain("fill in and blanch");
  });

  it("have sprouts that are staked and topped", () => {
    const care = BRUSSELS_SPROUTS.care.map(({ practice }) => practice);
    expect(care).toEqual(expect.arrayContaining(["stake and train", "stop the tops"]));
  });
});
