/**
 * The script of every page under a link, which each can do without: it keeps the last week seen for when there is no network,
 * and copies an address, saying that it did.
 */
export const PAGE_JS = `"use strict";
const base = document.currentScript.dataset.base;
if ("serviceWorker" in navigator) navigator.serviceWorker.register(base + "worker.js", { scope: base }).catch(() => {});

async function copy(button) {
  const text = button.dataset.copy;
  const told = button.nextElementSibling;
  try {
    await navigator.clipboard.writeText(text);
    told.textContent = "Copied";
  } catch {
    getSelection().selectAllChildren(document.getElementById(button.dataset.of));
    told.textContent = document.execCommand("copy") ? "Copied" : "Marked: copy it from here";
  }
}

for (const button of document.querySelectorAll("[data-copy]")) {
  button.hidden = false;
  button.addEventListener("click", () => copy(button));
}
`;
