/** The script of every page under a link, which each can do without: it keeps the last week seen for when there is no network. */
export const PAGE_JS = `"use strict";
const base = document.currentScript.dataset.base;
if ("serviceWorker" in navigator) navigator.serviceWorker.register(base + "worker.js", { scope: base }).catch(() => {});
`;
