import { expect, test } from "vitest";
import { picture } from "../../src/app/picture.ts";
import { SPRING, TODAY } from "./reports.ts";

test("a picture is of the season of today where none is asked for", () => {
  const [plan] = SPRING.year.plans;
  if (!plan) throw new Error("no plan");
  const asked = { today: TODAY, form: "phone" } as const;
  const drawn = picture(SPRING.year, "season", { plan: null, ...asked });
  expect(drawn).toContain("The season in Quarry Lane, 2027");
  expect(picture(SPRING.year, "season", { plan, ...asked })).toBe(drawn);
});
