import { expect, test } from "vitest";
import type { Role } from "../../../src/host/links/segment.ts";
import { frameOf, type GardenView } from "../../../src/host/web/garden-request.ts";

const ways = (role: Role) => {
  const stored = { plans: [{ summary: { name: "Quarry Lane" } }] };
  const telling = { stored, link: { role }, base: "/g/l/m/" } as unknown as GardenView;
  return frameOf(telling).ways.map(({ path }) => path);
};

test("a page leads on to what its link opens and to nothing else", () => {
  expect(ways("reader")).toEqual(["calendar"]);
  expect(ways("helper")).toEqual([
    "calendar",
    "frost",
    "room",
    "pictures",
    "sheet",
    "year",
    "diary",
  ]);
  expect(ways("owner")).toEqual([
    ...["frost", "room", "pictures", "sheet", "year", "diary"],
    ...["plan", "links", "leaving"],
  ]);
});
