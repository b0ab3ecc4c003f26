import { type Problem, slug } from "../../base/index.ts";
import { diagnostic } from "./codes.ts";
import type { Words } from "./tree.ts";

/** Slugs that keys of other things begin with, so no planting may have them. */
const RESERVED_SLUGS = ["bed", "garden"];

/**
 * A function that gives each name its slug, for one kind of thing in one year. Problems: `name-unfit` for a name
 * without letters or a reserved one, and `alike` at the second of two; both give null.
 */
export function namer(kind: string, problems: Problem[]): (name: Words) => string | null {
  const had = new Map<string, number>();
  return (name) => {
    const key = slug(name.text);
    if (key === "" || (kind === "planting" && RESERVED_SLUGS.includes(key))) {
      problems.push(
        diagnostic(
          "name-unfit",
          name.at,
          `${name.text.slice(0, 60) || "Nothing"} cannot be the name of a ${kind}`,
          "Give it another name, with a letter or a digit",
        ),
      );
      return null;
    }
    const first = had.get(key);
    had.set(key, first ?? name.at.line);
    if (first === undefined) return key;
    problems.push(
      diagnostic(
        "alike",
        name.at,
        `There is a ${kind} called ${key.replaceAll("-", " ").slice(0, 60)} in line ${first} already`,
        kind === "planting"
          ? "Give this one a name of its own, such as name: second sowing"
          : "Give this one a name of its own",
      ),
    );
    return null;
  };
}
