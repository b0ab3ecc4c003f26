import { runInNewContext } from "node:vm";
import { expect, test } from "vitest";
import { PAGE_JS } from "../../../src/host/web/page-script.ts";

type Told = { textContent: string };
type Button = {
  hidden: boolean;
  dataset: { copy: string; of: string };
  nextElementSibling: Told;
  addEventListener: (kind: string, then: () => void) => void;
};

/** The script on a page with one button, in a browser that can do what is given; the button's own press. */
function onPage(navigator: object, execCommand = () => false) {
  const told: Told = { textContent: "" };
  let press = () => {};
  const button: Button = {
    hidden: true,
    dataset: { copy: "https://garden.example/a.ics", of: "address" },
    nextElementSibling: told,
    addEventListener: (_, then) => {
      press = then;
    },
  };
  const marked: string[] = [];
  const document = {
    currentScript: { dataset: { base: "/g/l/m/" } },
    querySelectorAll: () => [button],
    getElementById: (id: string) => id,
    execCommand,
  };
  const getSelection = () => ({ selectAllChildren: (id: string) => marked.push(id) });
  runInNewContext(PAGE_JS, { navigator, document, getSelection });
  return { button, told, marked, press: () => press() };
}

const settled = () => new Promise((done) => setTimeout(done));

test("shows its button, copies the address, and says so", async () => {
  const copied: string[] = [];
  const page = onPage({ clipboard: { writeText: async (text: string) => copied.push(text) } });
  expect(page.button.hidden).toBe(false);
  page.press();
  await settled();
  expect([copied, page.told.textContent]).toEqual([["https://garden.example/a.ics"], "Copied"]);
});

test("where a browser lets nothing be copied, marks the address and says that", async () => {
  const page = onPage({});
  page.press();
  await settled();
  expect([page.marked, page.told.textContent]).toEqual([["address"], "Marked: copy it from here"]);
  const older = onPage({}, () => true);
  older.press();
  await settled();
  expect(older.told.textContent).toBe("Copied");
});

test("registers the link's own worker, for what lies under the link", () => {
  const registered: unknown[] = [];
  const register = async (...given: unknown[]) => registered.push(...given);
  onPage({ serviceWorker: { register } });
  expect(JSON.parse(JSON.stringify(registered))).toEqual([
    "/g/l/m/worker.js",
    { scope: "/g/l/m/" },
  ]);
});
