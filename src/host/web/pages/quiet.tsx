import type { Child } from "hono/jsx";
import { type DayAhead, Days } from "./days.tsx";
import { type TickLine, TickList } from "./tick-list.tsx";

/** What a garden has to look at while nothing is to be done in it. */
export type QuietTime = {
  /** The days to come that have something. */
  readonly next: readonly DayAhead[];
  /** What is to be ordered, to be ticked, and where it stands how much of each; empty where it stands nowhere. */
  readonly orders: readonly TickLine[];
  readonly amounts: string;
  /** Years that can be looked back on. */
  readonly years: readonly { readonly year: number; readonly href: string }[];
  /** Where the season's picture lies, and the page of pictures; null for whoever may not see them. */
  readonly picture: { readonly src: string; readonly href: string } | null;
};

/** Winter, or a garden at rest: what comes next, what to order, the season to come and the years that were. */
export function Quiet({ quiet, to }: { readonly quiet: QuietTime; readonly to: string }) {
  const { next, orders, amounts, years, picture } = quiet;
  return (
    <div class="quiet">
      {next.length > 0 && (
        <Part name="What comes next">
          <Days days={next} />
        </Part>
      )}
      {orders.length > 0 && (
        <Part name="To order">
          <TickList lines={orders} to={to} />
          {amounts !== "" && (
            <p>
              <a href={amounts}>How much of each</a>
            </p>
          )}
        </Part>
      )}
      {picture && (
        <Part name="The season to come">
          <a href={picture.href}>
            <img
              src={picture.src}
              alt="What grows when in each bed"
              width={390}
              height={4200}
              loading="lazy"
            />
          </a>
        </Part>
      )}
      {years.length > 0 && (
        <Part name="Looking back">
          <ul class="list">
            {years.map(({ year, href }) => (
              <li>
                <a href={href}>How {year} went</a>
              </li>
            ))}
          </ul>
        </Part>
      )}
    </div>
  );
}

function Part({ name, children }: { readonly name: string; readonly children: Child }) {
  return (
    <section>
      <h2>{name}</h2>
      {children}
    </section>
  );
}
