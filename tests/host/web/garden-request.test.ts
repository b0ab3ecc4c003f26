import { expect, test } from "vitest";
import type { Role } from "../../../src/host/links/segment.ts";
import { frameOf, type GardenView } from "../../../src/host/web/garden-request.ts";

const ways = (role: Role) => {
  const stored = { plans: [{ summary: { name: "Quarry Lane" } }] };
  const telling = { stored, link: { role }, base: "/g/l/m/" } as unknown as GardenView;
  return frameOf(telling).ways.map(({ path }) => path);
};

test("the bar has five places at the most, and none that the link does not open", () => {
  expect(ways("reader")).toEqual(["", "calendar"]);
  for (const role of ["helper", "owner"] as const)
    expect(ways(role)).toEqual(["", "room", "frost", "diary", "more"]);
});
