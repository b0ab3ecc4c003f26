import * as v from "valibot";
import { nearest, type Problem, type TextPosition } from "../../base/index.ts";
import { type Code, diagnostic } from "./codes.ts";
import { CheckedPlanSchema, WeatherSchema } from "./shape.ts";
import { plainValueOf, type Tree, valueUnder } from "./tree.ts";

/**
 * How often the shape is checked again without the unknown keys found so far, because one check reports only the first.
 */
const MOST_UNKNOWN = 20;

type Issue = v.BaseIssue<unknown>;
type Shape = v.GenericSchema;

/**
 * What is wrong with the shape of a plan whose crops are written as keys: `unknown-key`, `missing`,
 * `wrong-type`, `out-of-range`, each at its place. Empty where nothing is.
 */
export function checkPlan(tree: Tree): readonly Problem[] {
  return [...checkShape(CheckedPlanSchema, tree), ...frostsMissing(tree)];
}

/**
 * A place without weather must give its frost dates itself; whether a weather file has them is checked where it is
 * read.
 */
function frostsMissing(tree: Tree): readonly Problem[] {
  const place = valueUnder(tree, "place");
  if (place?.kind !== "map" || valueUnder(place, "weather")) return [];
  return (["last frost", "first frost"] as const)
    .filter((key) => !valueUnder(place, key))
    .map((key) => {
      const { at } = placeOf(tree, ["place", key]);
      return diagnostic("missing", at, `${key} is missing`, adviceFor(key));
    });
}

/** The same for a weather file. */
export function checkWeather(tree: Tree): readonly Problem[] {
  return checkShape(WeatherSchema, tree);
}

function checkShape(shape: Shape, tree: Tree): readonly Problem[] {
  const problems: Problem[] = [];
  const plain = plainValueOf(tree);
  for (let round = 0; round < MOST_UNKNOWN; round++) {
    const issues = (v.safeParse(shape, plain).issues ?? []).flatMap(opened);
    const unknown = issues.filter(isUnknownKey);
    problems.push(...unknown.map((issue) => sayIssue(issue, shape, tree)));
    if (unknown.length === 0 || round === MOST_UNKNOWN - 1) {
      const others = issues.filter((issue) => !isUnknownKey(issue));
      return [...problems, ...others.map((issue) => sayIssue(issue, shape, tree))];
    }
    for (const issue of unknown) takeOut(issue);
  }
  return problems;
}

/** Where both keys and words are allowed and keys are written, what is wrong inside them is reported. */
function opened(issue: Issue): readonly Issue[] {
  if (issue.type !== "union" || typeof issue.input !== "object") return [issue];
  const inside = (issue.issues ?? []).filter(({ path }) => path !== undefined);
  if (inside.length === 0) return [issue];
  return inside.map((inner) => ({
    ...inner,
    path: [...(issue.path ?? []), ...(inner.path ?? [])] as unknown as NonNullable<Issue["path"]>,
  }));
}

const isUnknownKey = (issue: Issue) => issue.expected === "never" && issue.type === "strict_object";

function takeOut(issue: Issue): void {
  const last = issue.path?.at(-1);
  if (last?.type === "object") delete (last.input as Record<string, unknown>)[String(last.key)];
}

type NamedPosition = { readonly at: TextPosition; readonly name: string };

function sayIssue(issue: Issue, shape: Shape, tree: Tree): Problem {
  const path = (issue.path ?? []).map((item) => item.key);
  const { at, name } = placeOf(tree, path);
  if (isListForKeys(tree, path))
    return diagnostic("wrong-type", at, `${name} is a list`, "Write keys below it, without dashes");
  if (isUnknownKey(issue)) return unknownKey(issue, shape, { at, name });
  if (issue.type === "strict_object" && issue.input === undefined)
    return diagnostic(
      "missing",
      at,
      `${String(path.at(-1))} is missing`,
      adviceFor(String(path.at(-1))),
    );
  const code: Code = issue.kind === "validation" ? "out-of-range" : "wrong-type";
  return diagnostic(code, at, `${name} is ${sayInput(issue.input)}`, issue.message);
}

/** Whether a path needs a key where the file has a list. */
function isListForKeys(tree: Tree, path: readonly unknown[]): boolean {
  return path.some((step, index) => {
    const tip = path.slice(0, index).reduce<Tree | null>(stepInto, tree);
    return tip?.kind === "list" && typeof step !== "number";
  });
}

function stepInto(tree: Tree | null, step: unknown): Tree | null {
  if (tree?.kind === "list") return typeof step === "number" ? (tree.items[step] ?? null) : null;
  return tree?.kind === "map"
    ? (tree.entries.find((e) => e.key.text === step)?.value ?? null)
    : null;
}

function unknownKey(issue: Issue, shape: Shape, { at, name }: NamedPosition): Problem {
  const siblings = keysAt(shape, (issue.path ?? []).slice(0, -1)) ?? [];
  const near = nearest(name, siblings);
  const advice = near ? `Did you mean ${near}` : `Here may stand: ${siblings.join(", ")}`;
  return diagnostic("unknown-key", at, `${name} is not a key here`, advice);
}

type Loose = {
  readonly type?: string;
  readonly entries?: Readonly<Record<string, Loose>>;
  readonly wrapped?: Loose;
  readonly item?: Loose;
  readonly value?: Loose;
  readonly options?: readonly Loose[];
};

/** The keys that the definition has at the end of a path, or null where it has none. */
function keysAt(shape: unknown, path: readonly { readonly key: unknown }[]): string[] | null {
  let at: Loose | undefined = shape as Loose;
  for (const { key } of path) {
    at = unwrapped(at);
    at = at?.entries?.[String(key)] ?? at?.value ?? at?.item;
  }
  const entries = unwrapped(at)?.entries;
  return entries ? Object.keys(entries) : null;
}

function unwrapped(shape: Loose | undefined): Loose | undefined {
  let at = shape;
  while (at?.wrapped) at = at.wrapped;
  return at?.options?.find((option) => option.entries) ?? at;
}

function adviceFor(key: string): string {
  const examples: Readonly<Record<string, string>> = {
    garden: "Write garden: and its name",
    year: "Write year: and the season's year",
    place: "Write place: with its clock and frost dates below it",
    clock: "Write clock: and the time zone, such as America/Denver",
    "last frost": "Write last frost: about 6 May, or none",
    "first frost": "Write first frost: about 2 Oct, or none",
    crop: "Write crop: and its name",
    low: "Write low: and twelve monthly means",
    high: "Write high: and twelve monthly means",
  };
  return examples[key] ?? `Write ${key}:`;
}

function sayInput(input: unknown): string {
  if (input === null || input === undefined) return "empty";
  if (Array.isArray(input)) return "a list";
  if (typeof input === "object") return "a group of keys";
  return String(input).slice(0, 60);
}

/** The place of what a path leads to, or of the last thing on it that stands in the file; and its name. */
function placeOf(tree: Tree, path: readonly unknown[]): NamedPosition {
  let tip: Tree | null = tree;
  let at = tree.at;
  let name = "The plan";
  for (const step of path) {
    if (tip?.kind === "list" && typeof step === "number") {
      tip = tip.items[step] ?? null;
      at = tip?.at ?? at;
      continue;
    }
    const entry = tip?.kind === "map" ? tip.entries.find((e) => e.key.text === step) : undefined;
    if (!entry) return { at, name };
    name = entry.key.text;
    at = entry.key.at;
    tip = entry.value;
  }
  return { at, name };
}
