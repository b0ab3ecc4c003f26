import type { Child } from "hono/jsx";
import { type Frame, MORE, renderPage } from "./frame.tsx";
import { SHARE_SCRIPT } from "./ready.tsx";

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
    script: SHARE_SCRIPT,
    place: frame.ways.some(({ path }) => path === "calendar") ? "calendar" : MORE,
    children: (
      <>
        <p>
          <Add them={first} most />
        </p>
        <Copy them={first} />
        <p class="faint">
          Nothing opens? Then no program here takes subscriptions: use one of these, or copy the
          address into your calendar.
        </p>
        <p class="buttons">
          {WEB.map(({ name, addressOf }) => (
            <a class="do" href={addressOf(first)} rel="noreferrer">
              {name}
            </a>
          ))}
        </p>
        <p>
          It is a subscription: it follows the garden by itself, and nothing in it can be changed by
          mistake. Whoever has the address can read it, the keeper of your calendar too, so keep it
          to yourself.
        </p>
        <h2>What your calendar does with it</h2>
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

/** A calendar to subscribe to; `most`: the one that most people want. */
type AddProps = { readonly them: Subscription; readonly most?: boolean };

const asWebcal = (address: string) => address.replace(/^https?:/, "webcal:");

function Add({ them: { name, address }, most = false }: AddProps) {
  return (
    <a class={most ? "do fill" : "do"} href={asWebcal(address)}>
      Add to my calendar<span class="unseen">: {name}</span>
    </a>
  );
}

/** An address to mark and copy by hand, with a button that a script shows. */
function Copy({ them: { address } }: { readonly them: Subscription }) {
  return (
    <p class="faint">
      or copy <code>{address}</code>{" "}
      <button type="button" hidden data-copy={address}>
        Copy
      </button>
      <span role="status" />
    </p>
  );
}

/** A calendar on the web, and the address of it that offers to subscribe. */
type WebCalendar = { readonly name: string; readonly addressOf: (them: Subscription) => string };

/**
 * Google takes a calendar by its `webcal:` address and no other (calagator/calagator#556); it works on a computer, not in its
 * Android app. Outlook takes the address on the web (from memory, unchecked).
 */
const WEB: readonly WebCalendar[] = [
  {
    name: "Google Calendar, on a computer",
    addressOf: ({ address }) =>
      `https://calendar.google.com/calendar/r?cid=${encodeURIComponent(asWebcal(address))}`,
  },
  { name: "Outlook.com", addressOf: outlookAt("https://outlook.live.com") },
  { name: "Outlook at work", addressOf: outlookAt("https://outlook.office.com") },
];

function outlookAt(origin: string): WebCalendar["addressOf"] {
  return ({ name, address }) =>
    `${origin}/calendar/0/addfromweb?${new URLSearchParams({ url: address, name })}`;
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
        On a computer, use its button above, or choose “From URL” under “Other calendars” and paste
        the address; the phone then shows it too. It may look for news only once or twice a day, and
        may leave out our reminders: set notifications for this calendar in its settings.
      </p>
    ),
  },
  {
    device: "other",
    name: "Outlook",
    says: (
      <p>
        Use its button above, or add a calendar “from web” and paste the address that begins with
        https. Subscribed calendars may stay silent there, and news may take a day.
      </p>
    ),
  },
  {
    device: "other",
    name: "Thunderbird",
    says: (
      <p>
        New calendar, on the network, paste the address. It looks every half hour unless set
        otherwise, and its reminders ring. If it could not reach us once, it switches the calendar
        off: press “Enable” beside the calendar's name.
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
