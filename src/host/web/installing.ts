import { withinLink } from "./answers.ts";
import { frameOf, type GardenRequest } from "./garden-request.ts";
import { gardenNameOf } from "./link-offers.ts";
import { offlineWorker } from "./offline-worker.ts";
import { offlinePage } from "./pages/offline.tsx";
import { PAPER } from "./style/colours.ts";

/** What a home screen needs to show a link's garden as an app of its own: it begins at the link and stays under it. */
export function answerManifest({ stored, base }: GardenRequest): Response {
  const icon = (size: number) => ({
    src: `/icon-${size}.png`,
    sizes: `${size}x${size}`,
    type: "image/png",
    purpose: "any maskable",
  });
  const manifest = {
    ...{ name: gardenNameOf(stored), lang: "en", display: "standalone" },
    ...{ id: base, start_url: base, scope: base },
    ...{ background_color: PAPER.light, theme_color: PAPER.light },
    icons: [icon(192), icon(512)],
  };
  return withinLink("application/manifest+json", JSON.stringify(manifest));
}

/** The worker that keeps the link's last week for when there is no network. */
export function answerWorker(gardenRequest: GardenRequest): Response {
  return withinLink("text/javascript", offlineWorker(offlinePage(frameOf(gardenRequest))));
}
