import { expect, test } from "vitest";
import type { GardenRequest } from "../../../src/host/web/garden-request.ts";
import { answerMore } from "../../../src/host/web/more.ts";
import { ROUTES } from "../../../src/host/web/routes.ts";

async function ledTo(role: "owner" | "helper"): Promise<readonly string[]> {
  const stored = { plans: [{ summary: { name: "Quarry Lane" } }] };
  const request = { stored, link: { role }, base: "/g/l/m/" } as unknown as GardenRequest;
  const html = await answerMore(request).text();
  return [...html.matchAll(/<a href="\/g\/l\/m\/([^"]*)"/g)].map(([, path = ""]) => path);
}

test("with the bar it leads to every page that the link opens", async () => {
  expect(await ledTo("helper")).toEqual([
    ...["calendar", "pictures", "sheet", "year"],
    ...["", "room", "frost", "diary", "more"],
  ]);
  expect(await ledTo("owner")).toEqual([
    ...["plan", "links", "leaving", "pictures", "sheet", "year"],
    ...["", "room", "frost", "diary", "more"],
  ]);
});

test("every path it names is answered for whoever sees it", async () => {
  for (const role of ["owner", "helper"] as const)
    for (const path of await ledTo(role))
      expect(ROUTES.find((route) => route.path.test(path))?.who, path).toContain(role);
});
