import { pageResponse } from "./answers.ts";
import { frameOf, type GardenRequest } from "./garden-request.ts";
import { type MoreLink, morePage } from "./pages/more.tsx";

const CALENDAR: MoreLink = {
  ...{ name: "In your calendar", path: "calendar" },
  says: "So that the phone itself says what is to be done.",
};

const HOUSEHOLD: readonly MoreLink[] = [
  {
    ...{ name: "The season in pictures", path: "pictures" },
    says: "What grows when in each bed, frost, and how warm the soil is.",
  },
  {
    ...{ name: "This month on paper", path: "sheet" },
    says: "To print, and to hang on the shed door.",
  },
  { name: "How the year went", path: "year", says: "What was planned, and what was done when." },
];

const OWNER: readonly MoreLink[] = [
  { name: "The plan", path: "plan", says: "Beds, crops and people, to change." },
  {
    ...{ name: "Links to hand on", path: "links" },
    says: "Each person's own way in, and a neighbour's.",
  },
  {
    ...{ name: "Download or delete", path: "leaving" },
    says: "Everything as files, or the end of this garden.",
  },
];

/** Everything a link leads to that has no place in the bar. An owner's link belongs in no calendar. */
export function answerMore(gardenRequest: GardenRequest): Response {
  const owner = gardenRequest.link.role === "owner";
  const links = [...(owner ? OWNER : [CALENDAR]), ...HOUSEHOLD];
  return pageResponse(200, morePage(frameOf(gardenRequest), links));
}
