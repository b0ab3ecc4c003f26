import { Script } from "node:vm";
import { expect, test } from "vitest";
import { SHARE_JS } from "../../../src/host/web/share-script.ts";

/** A button as the script sees one, with what is said beside it. */
function buttonFor(address: string) {
  const said = { textContent: "" };
  const clicks: (() => Promise<void>)[] = [];
  const button = {
    hidden: true,
    dataset: { copy: address, share: address },
    parentElement: { querySelector: () => said },
    addEventListener: (_: string, click: () => Promise<void>) => clicks.push(click),
  };
  return { button, said, click: () => clicks[0]?.() };
}

function run(navigator: object) {
  const [copy, share] = [buttonFor("https://a"), buttonFor("https://a")];
  const document = {
    querySelectorAll: (kind: string) => [kind.includes("copy") ? copy.button : share.button],
  };
  new Script(SHARE_JS).runInNewContext({ document, navigator });
  return { copy, share };
}

test("the script can be read, builds no markup and reaches nobody", () => {
  expect(SHARE_JS).not.toMatch(
    /innerHTML|insertAdjacentHTML|document\.write|eval\(|https?:|fetch|localStorage|cookie/,
  );
});

test("shows a button only where the device can do it", () => {
  const { copy, share } = run({ clipboard: {} });
  expect([copy.button.hidden, share.button.hidden]).toEqual([false, true]);
  const none = run({});
  expect([none.copy.button.hidden, none.share.button.hidden]).toEqual([true, true]);
});

test("copies the address and says so, or says that it did not work", async () => {
  const copied: string[] = [];
  const { copy } = run({ clipboard: { writeText: async (text: string) => copied.push(text) } });
  await copy.click();
  expect([copied, copy.said.textContent]).toEqual([["https://a"], "Copied."]);
  const refused = run({ clipboard: { writeText: () => Promise.reject(new Error("no")) } });
  await refused.copy.click();
  expect(refused.copy.said.textContent).toContain("did not work");
});

test("hands the address on, and takes it for no fault when that is closed again", async () => {
  const shared: object[] = [];
  const { share } = run({ share: async (what: object) => void shared.push(what) });
  await share.click();
  expect(JSON.stringify(shared)).toBe('[{"url":"https://a"}]');
  const closed = run({
    share: () => Promise.reject(Object.assign(new Error(), { name: "AbortError" })),
  });
  await closed.share.click();
  expect(closed.share.said.textContent).toBe("");
});
