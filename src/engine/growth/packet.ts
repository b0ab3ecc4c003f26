import { clockOf } from "./clock.ts";
import { ownWarmth } from "./own-warmth.ts";
import { anchorOf, type SowingContext } from "./sowing-context.ts";
import { packetWarmth } from "./warmth.ts";

/** Days that a packet gives, and those that the planting took here, in the packet's own days. */
export type PacketComparison = { readonly packet: number; readonly took: number };

/**
 * The garden's own days of a first sowing whose first ripe day is in the diary, as ownWarmth will use them for a
 * planting of the same name next year. Null for a crop that does not grow by warmth, and where the days are not
 * plausible.
 */
export function comparePacket(context: SowingContext): PacketComparison | null {
  const { plan, planting, crop } = context;
  if (!crop.warmth || anchorOf(context, "first ripe")?.from !== "diary") return null;
  const clock = clockOf(context);
  if ("none" in clock) return null;
  const year = plan.year + 1;
  const next: SowingContext = {
    ...context,
    plan: { ...plan, year },
    planting: { ...planting, key: planting.key.replace(/^\d+/, String(year)) },
  };
  const own = ownWarmth(next, clock.days);
  if (own?.year !== plan.year) return null;
  const took = Math.round(own.warmth / packetWarmth(1, crop.warmth));
  return { packet: Math.round(clock.days), took };
}
