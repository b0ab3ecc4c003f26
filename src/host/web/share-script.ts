/**
 * Copies an address, or hands it to the device's own way of sharing, where either is there; the buttons are hidden without. Says
 * what was done beside them. Nothing is stored or sent by it.
 */
export const SHARE_JS = `"use strict";
function offer(kind, isThere, act) {
  for (const button of document.querySelectorAll("[data-" + kind + "]")) {
    if (!isThere) continue;
    button.hidden = false;
    button.addEventListener("click", async () => {
      const said = button.parentElement.querySelector("[role=status]");
      try {
        said.textContent = (await act(button.dataset[kind])) ?? "";
      } catch (error) {
        // Who closes the sharing has not failed at it.
        if (error.name !== "AbortError") said.textContent = "That did not work. The address stands above.";
      }
    });
  }
}
offer("copy", navigator.clipboard !== undefined, async (address) => {
  await navigator.clipboard.writeText(address);
  return "Copied.";
});
offer("share", navigator.share !== undefined, (url) => navigator.share({ url }));
`;
