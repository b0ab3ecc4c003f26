import type { Child } from "hono/jsx";
import { type Frame, MORE, renderPage } from "./frame.tsx";

/** An address to subscribe to: what it is called and its address on the web (`https://…/sessions.ics`). */
export type Subscription = { readonly name: string; readonly address: string };

/** What kind of device asks, as far as it says. */
export type Device = "apple" | "android" | "other";

/** Where under a link the code of its page of calendars is drawn. */
export const CALENDAR_CODE = "qr.svg";

/** What the page of calendars shows. */
export type CalendarPageProps = {
  readonly device: Device;
  readonly first: Subscription;
  readonly more: readonly Subscription[];
};

/** How to get the link's calendar into the device in hand first, then into others, and what each does with reminders. */
export function calendarPage(frame: Frame, { device, first, more }: CalendarPageProps): string {
  const ways = [...WAYS].sort((a, b) => Number(b.device === device) - Number(a.device === device));
  return renderPage({
    title: "In your calendar",
    frame,
    place: frame.ways.some(({ path }) => path === "calendar") ? "calendar" : MORE,
    children: (
      <>
        <p>
          <Add them={first} />
        </p>
        <Copy them={first} />
        <p>
          It is a subscription: it follows the garden by itself, and nothing in it can be changed by
          mistake. Whoever has the address can read it, so keep it to yourself.
        </p>
        {ways.map((way) => (
          <details open={device !== "other" && way.device === device}>
            <summary>{way.name}</summary>
            {way.says}
          </details>
        ))}
        {device === "other" && (
          <>
            <h2>On your phone</h2>
            <p>Point the phone's camera at this; it opens this page there.</p>
            <img
              class="qr"
              src={`${frame.base}${CALENDAR_CODE}`}
              alt="This page's address as a code for a camera"
              width={240}
              height={240}
            />
          </>
        )}
        <details>
          <summary>More calendars</summary>
          <p>One is enough for most people. These show the same garden in other ways.</p>
          {more.map((each) => (
            <>
              <h2>{each.name}</h2>
              <p>
                <Add them={each} />
              </p>
              <Copy them={each} />
            </>
          ))}
        </details>
      </>
    ),
  });
}

function Add({ them: { name, address } }: { readonly them: Subscription }) {
  return (
    <a class="do" href={address.replace(/^https?:/, "webcal:")}>
      Add to my calendar<span class="unseen">: {name}</span>
    </a>
  );
}

function Copy({ them: { address } }: { readonly them: Subscription }) {
  return (
    <p class="faint">
      or copy <code>{address}</code>
    </p>
  );
}

/** What is said of each calendar is what its makers document or what was seen when it ran; the rest is "may". */
const WAYS: readonly { readonly device: Device; readonly name: string; readonly says: Child }[] = [
  {
    device: "apple",
    name: "iPhone, iPad and Mac",
    says: (
      <p>
        Tap “Add to my calendar” and confirm. It may offer to remove alerts: leave that off, or no
        reminder comes. How often it looks for news is a setting of its own, and it may be hours.
      </p>
    ),
  },
  {
    device: "android",
    name: "Android",
    says: (
      <p>
        Android's own calendars show subscriptions that another program brings in. ICSx⁵ is one: tap
        “Add to my calendar” and choose it, or paste the address there. It keeps reminders unless
        told to ignore them, and looks as often as you set.
      </p>
    ),
  },
  {
    device: "other",
    name: "Google Calendar",
    says: (
      <p>
        On a computer, under “Other calendars”, choose “From URL” and paste the address. It may look
        for news only once or twice a day, and may leave out our reminders: set notifications for
        this calendar in its settings.
      </p>
    ),
  },
  {
    device: "other",
    name: "Outlook",
    says: (
      <p>
        Add a calendar “from web” and paste the address that begins with https. Subscribed calendars
        may stay silent there, and news may take a day.
      </p>
    ),
  },
  {
    device: "other",
    name: "Thunderbird",
    says: (
      <p>
        New calendar, on the network, paste the address. It looks every half hour unless set
        otherwise, and its reminders ring.
      </p>
    ),
  },
  {
    device: "other",
    name: "GNOME Calendar and Evolution",
    says: (
      <p>
        Add a calendar from the web and paste the address. It looks every hour unless set otherwise,
        and its reminders ring.
      </p>
    ),
  },
  {
    device: "other",
    name: "Nextcloud",
    says: (
      <p>
        New subscription from link. It looks as often as we ask, every four hours, and takes
        reminders away unless its keeper has set it otherwise.
      </p>
    ),
  },
];
