import { expect, test } from "vitest";
import { type CalendarPageProps, calendarPage } from "../../../../src/host/web/pages/calendar.tsx";

const FRAME = { garden: "Quarry Lane", base: "/g/l/m/", ways: [] };
const SHOWN: CalendarPageProps = {
  device: "other",
  first: { name: "Imre", address: "https://garden.example/g/l/m/sessions.ics" },
  more: [{ name: "All jobs", address: "http://127.0.0.1:8787/g/l/m/tasks.ics" }],
};

test("a subscription is one tap by webcal and an address to copy, secured or not", () => {
  const html = calendarPage(FRAME, SHOWN);
  expect(html).toContain('href="webcal://garden.example/g/l/m/sessions.ics"');
  expect(html).toContain("<code>https://garden.example/g/l/m/sessions.ics</code>");
  expect(html).toContain('href="webcal://127.0.0.1:8787/g/l/m/tasks.ics"');
});

test("headings leave out no level, whatever the device", () => {
  for (const device of ["apple", "android", "other"] as const)
    expect(calendarPage(FRAME, { ...SHOWN, device })).not.toContain("<h3>");
});

test("the device in hand comes first and open, and another gets a code for a phone's camera", () => {
  const order = (device: CalendarPageProps["device"]) => {
    const html = calendarPage(FRAME, { ...SHOWN, device });
    return ["<summary>iPhone, iPad", "<summary>Android", "<summary>Google"].map((name) =>
      html.indexOf(name),
    );
  };
  const [apple = 0, android = 0] = order("android");
  expect(android).toBeLessThan(apple);
  expect(order("apple")[0]).toBeLessThan(order("apple")[1] ?? 0);
  expect(calendarPage(FRAME, { ...SHOWN, device: "apple" }).match(/<details open/g)).toHaveLength(
    1,
  );
  expect(calendarPage(FRAME, SHOWN)).toContain('<img class="qr" src="/g/l/m/qr.svg"');
  expect(calendarPage(FRAME, { ...SHOWN, device: "apple" })).not.toContain("qr");
});

test("of each calendar it is said what becomes of reminders and how often it looks", () => {
  const html = calendarPage(FRAME, SHOWN);
  for (const name of ["Google Calendar", "Outlook", "Thunderbird", "GNOME", "Nextcloud", "Android"])
    expect(html).toContain(name);
});

test("calendars on the web have a button each, and where nothing opens there is a way on", () => {
  const html = calendarPage(FRAME, SHOWN);
  const address = encodeURIComponent("https://garden.example/g/l/m/sessions.ics");
  const webcal = encodeURIComponent("webcal://garden.example/g/l/m/sessions.ics");
  expect(html).toContain(`href="https://calendar.google.com/calendar/r?cid=${webcal}"`);
  for (const origin of ["https://outlook.live.com", "https://outlook.office.com"])
    expect(html).toContain(`href="${origin}/calendar/0/addfromweb?url=${address}&amp;name=Imre"`);
  expect(html).toContain("Nothing opens?");
  expect(html).toContain("press “Enable”");
});

test("each address has a button to copy it, which only a script shows, and a place to say so", () => {
  const html = calendarPage(FRAME, SHOWN);
  for (const address of [SHOWN.first.address, ...SHOWN.more.map((each) => each.address)])
    expect(html).toMatch(new RegExp(`<button type="button" hidden[^>]*data-copy="${address}"`));
  expect(html.match(/<\/button><span role="status">/g)).toHaveLength(2);
  expect(html).toContain('src="/share.js"');
});
