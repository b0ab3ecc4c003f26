import { existsSync } from "node:fs";

const USUAL = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

/** The program to drive: the one that CHROMIUM names, else the first of the usual ones; null where there is none. */
export const CHROMIUM = [process.env.CHROMIUM ?? USUAL].flat().find(existsSync) ?? null;

/** What to say where there is no Chromium. */
export const NO_CHROMIUM = `No Chromium, so every test is skipped. Looked for ${process.env.CHROMIUM ?? USUAL.join(", ")}; CHROMIUM=/path/to/chromium names another.`;
