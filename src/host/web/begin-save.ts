import type { Problem } from "../../base/index.ts";
import { pathOf } from "../links/mac.ts";
import { loadGarden, type StoredGarden } from "../store/gardens.ts";
import { opensAsOwner } from "../store/owners.ts";
import { planVersion } from "../store/plans.ts";
import { pageResponse } from "./answers.ts";
import type { LinkRequest } from "./garden-request.ts";
import { gardenNameOf, linksInUse } from "./link-offers.ts";
import { readyPage } from "./pages/ready.tsx";
import { sayYears, withYears } from "./place-years.ts";
import { giveRecovery } from "./recovery.ts";
import { saveText } from "./saving.ts";

/** A first plan's text and the files beside it. */
type FirstText = {
  readonly text: string;
  readonly beside: Readonly<Record<string, string>>;
};

/**
 * Makes the garden by its first plan and shows its links, or shows them again where this very plan made it. Its problems where
 * something is wrong in it and nothing was stored; null where the invitation makes no garden any more.
 */
export async function saveFirst(
  linkRequest: LinkRequest,
  { text, beside }: FirstText,
  open: boolean,
): Promise<Response | readonly Problem[] | null> {
  const { context, link, origin } = linkRequest;
  const { garden } = link;
  const { checkPlan } = await context.engine();
  const { file, fault } = await withYears(context, { text, garden, file: "plan", beside });
  const { plan, problems } = checkPlan(file, [], []);
  if (plan === null) return open ? sayYears(problems, fault) : null;
  const { year } = plan;
  if (open) {
    const as = { file: `plans/${garden}/${year}.yaml`, beside: file.beside ?? {}, published: null };
    const outcome = await saveText(context, { garden, year, text, ...as, ...FIRST, origin });
    if (outcome.kind === "problems") return outcome.problems;
    if (outcome.kind === "too long") return problems;
  }
  const first = planVersion(context.sql, { year, version: 1 });
  const stored = loadGarden(context.sql);
  if (first?.text !== text || stored === null) return null;
  if (!opensAsOwner(context.sql, FIRST_OWNER)) return null;
  return pageResponse(200, await ready(linkRequest, stored, text), {
    "Cache-Control": "no-store",
  });
}

const FIRST = { base: 0, first: true } as const;

/** The serial of a new garden's owner. */
const FIRST_OWNER = 1;

/** Each person's link, or the household's where the plan names nobody; and the owner's with the phrase that leads back to it. */
async function ready(
  { context, origin, link }: LinkRequest,
  stored: StoredGarden,
  text: string,
): Promise<string> {
  const { key } = context;
  const { garden } = link;
  const { people } = await linksInUse({ key, stored, revoked: [], origin });
  const helper = (person: string | null) =>
    pathOf({ garden, role: "helper", person, serial: 1 }, key);
  const links = await Promise.all(
    people.map(async ({ key: person, name }) => ({
      name,
      address: `${origin}${await helper(person)}`,
    })),
  );
  const all = [{ name: "For everybody", address: `${origin}${await helper(null)}` }];
  const owner = { garden, role: "owner", person: null, serial: FIRST_OWNER } as const;
  return readyPage({
    garden: gardenNameOf(stored),
    owner: `${origin}${await pathOf(owner, key)}`,
    recovery: { garden, phrase: await giveRecovery(context, garden) },
    links: links.length > 0 ? links : all,
    text,
  });
}
