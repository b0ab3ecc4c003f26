import { env } from "cloudflare:workers";

let file = "";

/**
 * Gives the test file that begins now gardens, cells and counts of asking of its own, whatever they are named: files share one
 * runtime, since loading the app anew for each takes longer than all their tests.
 */
export function beginFile(path: string): void {
  file = path;
}

const objects: Pick<Bindings["GARDENS"], "getByName"> = Object.getPrototypeOf(env.GARDENS);
const { getByName } = objects;
objects.getByName = function (this: Bindings["GARDENS"], name) {
  return getByName.call(this, `${file} ${name}`);
};

type Limiter = NonNullable<Bindings["STRANGERS"]>;
const limiters: Limiter = Object.getPrototypeOf(env.STRANGERS);
const { limit } = limiters;
limiters.limit = function (this: Limiter, { key }) {
  return limit.call(this, { key: `${file} ${key}` });
};
