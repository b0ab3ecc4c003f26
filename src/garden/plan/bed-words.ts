import { type Problem, suggestion } from "../../base/index.ts";
import { diagnostic } from "./codes.ts";
import type { Words } from "./tree.ts";

/** Words for a bed or what it is that are misspelt. */
const WORDS = ["greenhouse", "glasshouse", "tunnel", "polytunnel", "cold frame", "unheated"];

/** What is said of a part of `is:` that no bed can be. Problem: `unknown-word`. */
export function notOfABed(words: Words): Problem {
  return diagnostic(
    "unknown-word",
    words.at,
    `${words.text.slice(0, 60) || "Nothing"} is not understood of a bed`,
    suggestion(
      words.text,
      WORDS,
      "Write 12 x 4 ft, or 6 grow bags of 10 gal, or greenhouse, 8 x 6 ft, unheated",
    ),
  );
}
