import {
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  parseDocument,
  type Scalar,
} from "yaml";
import type { Problem, TextPosition } from "../../base/index.ts";
import { diagnostic } from "./codes.ts";
import type { Tree, TreeEntry, Words } from "./tree.ts";
import { explainYamlFaults } from "./yaml-faults.ts";

/** The largest plan that is read [bytes of UTF-8]. Source: house rule: a hundred times a large garden's file. */
export const MAX_PLAN_BYTES = 256 * 1024;
/** The longest key or value [letters], except in the diary. Source: house rule: five lines of the file. */
export const MAX_VALUE_LETTERS = 400;
/** How deep lists and braces may be nested. Source: house rule: a plan needs six. */
export const MAX_NESTING = 30;
/** How many values aliases may add. Source: house rule: enough for every bed to share one phrase. */
export const MAX_ALIASED = 2000;

/** A text as a tree, or null with at least one problem. Never throws. The tree may come with problems of its own. */
export function treeOf(
  text: string,
  file: string,
): { readonly tree: Tree | null; readonly problems: readonly Problem[] } {
  const refused = tooMuch(text, file);
  if (refused) return { tree: null, problems: [refused] };
  const lines = new LineCounter();
  const place = (offset: number): TextPosition => {
    const { line, col } = lines.linePos(offset);
    return { file, line: Math.max(1, line), column: Math.max(1, col) };
  };
  try {
    const document = parseYaml(text, lines);
    const faults = [...document.errors, ...document.warnings];
    if (faults.length > 0) return { tree: null, problems: explainYamlFaults(faults, text, place) };
    return buildTree(document, text, place);
  } catch {
    return { tree: null, problems: [deep({ file, line: 1, column: 1 })] };
  }
}

function parseYaml(text: string, lineCounter: LineCounter): Document.Parsed {
  return parseDocument(text, {
    lineCounter,
    prettyErrors: false,
    uniqueKeys: false,
    stringKeys: true,
    logLevel: "silent",
  });
}

function tooMuch(text: string, file: string): Problem | null {
  const at = { file, line: 1, column: 1 };
  if (text.length > MAX_PLAN_BYTES || new TextEncoder().encode(text).length > MAX_PLAN_BYTES)
    return diagnostic(
      "too-long",
      at,
      "The file is larger than 256 KiB",
      "Keep one garden and one year",
    );
  return bracketsDeep(text) > MAX_NESTING * 4 ? deep(at) : null;
}

function deep(at: TextPosition): Problem {
  return diagnostic(
    "too-deep",
    at,
    "Lists or braces stand too deep in each other",
    "Write it flatter",
  );
}

/** The most opening brackets and dashes of one line, and the most open at once; quotes are ignored. */
function bracketsDeep(text: string): number {
  let open = 0;
  let most = 0;
  for (const line of text.split("\n")) {
    const dashes = /^(?:\s*[-?:]\s)+/.exec(line)?.[0].replace(/\s/g, "").length ?? 0;
    most = Math.max(most, dashes);
    for (const letter of line) {
      if (letter === "[" || letter === "{") most = Math.max(most, ++open);
      if (letter === "]" || letter === "}") open = Math.max(0, open - 1);
    }
  }
  return most;
}

/** Codes after which the tree is not read any further. */
const ENDING: readonly string[] = ["too-deep", "too-many-aliases"];

type TreeBuild = {
  readonly anchors: Map<string, Node>;
  readonly text: string;
  readonly place: (offset: number) => TextPosition;
  readonly problems: Problem[];
  aliased: number;
};

function buildTree(
  document: Document.Parsed,
  text: string,
  place: (offset: number) => TextPosition,
): { readonly tree: Tree | null; readonly problems: readonly Problem[] } {
  const build: TreeBuild = { anchors: new Map(), text, place, problems: [], aliased: 0 };
  const start = place(0);
  const tree = buildNode(document.contents, start, build, { depth: 0, inside: [] });
  const ending = build.problems.find(({ code }) => ENDING.includes(code));
  return ending ? { tree: null, problems: [ending] } : { tree, problems: build.problems };
}

type NodeNesting = { readonly depth: number; readonly inside: readonly Node[] };

function buildNode(
  node: Node | null,
  otherwise: TextPosition,
  g: TreeBuild,
  nesting: NodeNesting,
): Tree {
  const at = node?.range ? g.place(node.range[0]) : otherwise;
  if (ENDING.includes(g.problems.at(-1)?.code ?? "")) return { kind: "nothing", at };
  if (nesting.depth > MAX_NESTING) {
    g.problems.push(deep(at));
    return { kind: "nothing", at };
  }
  if (nesting.inside.length > 0 && ++g.aliased > MAX_ALIASED) return tooMany(at, g);
  const next = { ...nesting, depth: nesting.depth + 1 };
  if (isAlias(node)) {
    const source = g.anchors.get(node.source);
    if (source === undefined) return nothingCalled(node.source, at, g);
    if (nesting.inside.includes(source) || ++g.aliased > MAX_ALIASED) return tooMany(at, g);
    return buildNode(source, at, g, { ...next, inside: [...nesting.inside, source] });
  }
  if (node?.anchor) g.anchors.set(node.anchor, node);
  if (isMap(node)) return { kind: "map", at, entries: entries(node.items, at, g, next) };
  if (isSeq(node)) {
    return {
      kind: "list",
      at,
      items: node.items.map((item) => buildNode(asNode(item), at, g, next)),
    };
  }
  if (!isScalar(node) || node.value === null || node.value === undefined)
    return { kind: "nothing", at: otherwise };
  return scalar(node, at, g);
}

function tooMany(at: TextPosition, g: TreeBuild): Tree {
  g.problems.push(
    diagnostic("too-many-aliases", at, "Aliases (*) stand for too much here", "Write it out"),
  );
  return { kind: "nothing", at };
}

function nothingCalled(name: string, at: TextPosition, g: TreeBuild): Tree {
  const is = `*${name.slice(0, 60)} stands for something that is not there`;
  g.problems.push(diagnostic("unreadable", at, is, "Put words that begin with * in quotes"));
  return { kind: "nothing", at };
}

const asNode = (item: unknown): Node | null => (item ?? null) as Node | null;

function entries(
  pairs: readonly { readonly key: unknown; readonly value: unknown }[],
  at: TextPosition,
  g: TreeBuild,
  nesting: NodeNesting,
): readonly TreeEntry[] {
  const had = new Set<string>();
  const unique: TreeEntry[] = [];
  for (const { key, value } of pairs) {
    const node = asNode(key);
    const named = isAlias(node) ? (g.anchors.get(node.source) ?? null) : node;
    if (isScalar(named) && named.anchor) g.anchors.set(named.anchor, named);
    if (!isScalar(named)) continue;
    const words = wordsOf(named, named.range ? g.place(named.range[0]) : at, g);
    if (had.has(words.text)) {
      g.problems.push(
        diagnostic(
          "said-twice",
          words.at,
          `${words.text} stands here a second time`,
          "Keep one of them",
        ),
      );
      const first = unique.findIndex((entry) => entry.key.text === words.text);
      if (unique[first]?.value.kind !== "nothing") continue;
      unique.splice(first, 1);
    }
    had.add(words.text);
    unique.push({ key: words, value: buildNode(asNode(value), words.at, g, nesting) });
  }
  return unique;
}

function scalar(node: Scalar, at: TextPosition, g: TreeBuild): Tree {
  const words = wordsOf(node, at, g);
  const { value } = node;
  if (typeof value === "string" && value.trim() === "") return { kind: "nothing", at };
  const plain = typeof value === "number" || typeof value === "boolean" ? value : words.text;
  return { kind: "words", at, value: plain, words };
}

function wordsOf(node: Scalar, at: TextPosition, g: TreeBuild): Words {
  const [start, end] = node.range ?? [0, 0];
  const source = g.text.slice(start, end);
  const whole = typeof node.value === "string" ? node.value : source;
  const text = whole.trim().replace(/\s+/g, " ");
  if (text.length > MAX_VALUE_LETTERS)
    g.problems.push(
      diagnostic("too-long", at, "These words are too long", "Write them in 400 letters"),
    );
  return {
    text: text.slice(0, MAX_VALUE_LETTERS),
    at,
    where: (offset) => g.place(start + offsetIn(source, text, offset)),
  };
}

/** The offset in the source of a letter of the parsed text: both have the same letters, but not the same spaces. */
function offsetIn(source: string, text: string, offset: number): number {
  const quoted = /^["']/.test(source) ? 1 : 0;
  if (source.startsWith(text, quoted)) return quoted + offset;
  let letters = text.slice(0, offset).replace(/\s/g, "").length;
  let at = /^[|>]/.test(source) ? source.indexOf("\n") + 1 : quoted;
  while (at < source.length && (letters > 0 || /\s/.test(source[at] ?? ""))) {
    if (!/\s/.test(source[at] ?? "")) letters -= 1;
    at += 1;
  }
  return Math.min(at, source.length);
}
