import type { Child } from "hono/jsx";
import type { NightTold } from "../words/frost-tonight.ts";
import type { Taps } from "./taps.ts";

/** An address to subscribe to: what it is called and its address on the web (`https://…/sessions.ics`). */
export type Subscription = { readonly name: string; readonly address: string };

/** One event as a page tells it: `when` in words, `href` to its own page where there is one. */
export type Job = {
  readonly title: string;
  readonly when: string;
  readonly text: string;
  readonly href: string | null;
};

/** What a garden's own page shows; `links` lead to other people's pages and are an owner's alone. */
export type Home = {
  readonly garden: string;
  readonly first: readonly Subscription[];
  readonly more: readonly Subscription[];
  readonly links: readonly { readonly name: string; readonly href: string }[];
  readonly coming: Coming;
  /** Whether there is more to look at: frost tonight, the year in pictures, the month on paper. */
  readonly looks: boolean;
};

/** What comes next: the jobs of the next two weeks, or, with `soon` false, the first one after them. */
export type Coming = { readonly soon: boolean; readonly jobs: readonly Job[] };

/** A garden's own page, as other pages lead back to it. */
export type Back = { readonly name: string; readonly href: string };

/** The front page: what this is, and no garden's name. */
export function frontPage(): string {
  return sheet(
    "Sowbell",
    <p>
      Sowbell rings for the garden: it turns a garden's plan into a calendar that says what to do
      next, and moves when the season does. Each garden has its own private links; whoever keeps the
      plan can give you yours.
    </p>,
  );
}

/** A garden's own page: what to subscribe to, and the next two weeks as they are told today. */
export function homePage({ garden, first, more, links, coming, looks }: Home): string {
  return sheet(
    garden,
    <>
      <h2>In your calendar</h2>
      <p>One tap adds it to your calendar, which then keeps itself up to date.</p>
      <Subscriptions them={first} />
      <details>
        <summary>More calendars</summary>
        <Subscriptions them={more} />
      </details>
      {links.length > 0 && (
        <details>
          <summary>Links to hand on</summary>
          {links.map(({ name, href }) => (
            <p>
              <a href={href}>{name}</a>
            </p>
          ))}
        </details>
      )}
      <h2>The next two weeks</h2>
      <Jobs coming={coming} />
      {looks && (
        <>
          <h2>To look at</h2>
          <p>
            <a href="frost">Frost tonight: what to cover</a>
          </p>
          <p>
            <a href="pictures">The year in pictures</a>
          </p>
          <p>
            <a href="sheet">This month on paper, for the shed door</a>
          </p>
        </>
      )}
    </>,
  );
}

/** What the frost page shows: the household's unit, what was typed in, whether that was no temperature, and the night told. */
export type Frost = {
  readonly unit: string;
  readonly said: string;
  readonly wrong: boolean;
  readonly told: NightTold | null;
};

/** Tonight's low typed in, and bed by bed what to do about it. */
export function frostPage(home: Back, { unit, said, wrong, told }: Frost): string {
  return sheet(
    "Frost tonight",
    <>
      <form method="get">
        <label for="low">Tonight's low by the forecast, {unit}</label>
        <input id="low" name="low" value={said} inputmode="text" autocomplete="off" required />
        <button type="submit">What to cover</button>
      </form>
      {wrong && <p>That is no temperature. Write it like 29, 29 °F or -2 °C.</p>}
      {told && (
        <>
          <p class="text">{told.head.join("\n")}</p>
          {told.sections.map(({ name, lines }) => (
            <>
              <h2>{name}</h2>
              <p class="text">{lines.join("\n")}</p>
            </>
          ))}
          <p class="text">{told.foot.join("\n")}</p>
        </>
      )}
      <WayBack home={home} />
    </>,
  );
}

const DRAWN: Readonly<Record<string, string>> = {
  "season.svg": "What grows when in each bed",
  "frost.svg": "When frost is still likely",
  "soil.svg": "How warm the soil is, and what waits for it",
};

/** The year's drawings, one under another; each is read out in words by its own description. */
export function picturesPage(home: Back, files: readonly string[]): string {
  return sheet(
    "The year in pictures",
    <>
      {files.map((file) => (
        <>
          <h2>{DRAWN[file] ?? file}</h2>
          <a href={file}>
            <img src={file} alt={DRAWN[file] ?? file} />
          </a>
        </>
      ))}
      <WayBack home={home} />
    </>,
  );
}

/** One task of an event: its title, the days that do no harm (empty for what is done), and why then, a sentence each. */
export type TaskPart = {
  readonly title: string;
  readonly window: string;
  readonly why: readonly string[];
  /** What can be answered to it; null where nothing can. */
  readonly taps: Taps | null;
};

/** One event's page, with each task in it; a task alone needs no title of its own. */
export function jobPage(home: Back, job: Job, tasks: readonly TaskPart[]): string {
  return sheet(
    job.title,
    <>
      <p class="faint">{job.when}</p>
      <p class="text">{job.text}</p>
      {tasks.map(({ title, window, why, taps }) => (
        <>
          {tasks.length > 1 && <h2>{title}</h2>}
          {taps && <Answers to={taps} />}
          {window !== "" && <p>{window}</p>}
          {why.length > 0 && <p class="text">{["Why then:", ...why].join("\n")}</p>}
        </>
      ))}
      <WayBack home={home} />
    </>,
  );
}

/** A button an answer; without script, each sends itself and leads back here. */
function Answers({ to: { task, said, taps } }: { readonly to: Taps }) {
  return (
    <form method="post">
      {said !== null && <p>{said}</p>}
      <input type="hidden" name="task" value={task} />
      {taps.map(({ words, says }) => (
        <button type="submit" name="say" value={says}>
          {words}
        </button>
      ))}
    </form>
  );
}

/** The page of an event that is no more, with what comes next, and where it was left this year the way to have it back. */
export function gonePage(home: Back, coming: Coming, left: Taps | null = null): string {
  return sheet(
    "This one is off the list",
    <>
      {left && <Answers to={left} />}
      <p>
        It was done, has moved into another visit, or the plan no longer needs it. Your calendar
        will catch up by itself.
      </p>
      <h2>What comes next</h2>
      <Jobs coming={coming} />
      <WayBack home={home} />
    </>,
  );
}

function Subscriptions({ them }: { readonly them: readonly Subscription[] }) {
  return (
    <dl>
      {them.map(({ name, address }) => (
        <>
          <dt>{name}</dt>
          <dd>
            <a href={address.replace(/^https?:/, "webcal:")}>Add to my calendar</a>
          </dd>
          <dd class="faint">
            or copy <code>{address}</code>
          </dd>
        </>
      ))}
    </dl>
  );
}

function WayBack({ home }: { readonly home: Back }) {
  return (
    <p>
      <a href={home.href}>{home.name}</a>
    </p>
  );
}

function Jobs({ coming }: { readonly coming: Coming }) {
  return (
    <>
      {!coming.soon && <p>Nothing is due in the next two weeks.</p>}
      {!coming.soon && coming.jobs.length > 0 && <p>After that:</p>}
      {coming.jobs.map(({ title, when, text, href }) => (
        <>
          <h3>{href === null ? title : <a href={href}>{title}</a>}</h3>
          <p class="faint">{when}</p>
          <p class="text">{text}</p>
        </>
      ))}
    </>
  );
}

function sheet(title: string, children: Child): string {
  const page = (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>{title}</title>
        <link rel="stylesheet" href="/paper.css" />
      </head>
      <body>
        <main>
          <h1>{title}</h1>
          {children}
        </main>
      </body>
    </html>
  );
  return `<!doctype html>${page}`;
}
