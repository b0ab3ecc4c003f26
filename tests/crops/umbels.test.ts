import { describe, expect, it } from "vitest";
import { CELERIAC, CELERY, CILANTRO, DILL, UMBELS } from "../../src/crops/umbels.ts";

describe("celery and its kin, and the herbs of the carrot family", () => {
  it("are of one family", () => {
    for (const { family } of UMBELS) expect(family).toBe("carrot family");
  });

  it("raise celery ten weeks and keep it from cold while young", () => {
    expect(CELERY.indoors?.weeksToSettingOut.value[0]).toBe(10);
    expect(CELERY.limits.coldYoung).not.toBeNull();
    expect(CELERIAC.eaten).toBe("root");
  });

  it("have cilantro that bolts in long warm days, and dill that may", () => {
    expect(CILANTRO.limits.longDays).not.toBeNull();
    expect(DILL.key).toBe("dill");
    expect(DILL.alsoCalled).not.toContain("coriander");
  });
});
