import { askLive } from "./ask.ts";

/*
 * Asks the real services, where there is a network; `npm run weather:live` prints what they answered. CONTACT says who asks, as MET
 * Norway wants it.
 */
const { lines, good } = await askLive((url, init) => fetch(url, init), {
  now: Date.now(),
  contact: process.env.CONTACT ?? null,
});
for (const line of lines) console.log(line);
if (good === 0) {
  console.error("No service answered: this needs a network that reaches them. Nothing was tested.");
  process.exitCode = 1;
}
