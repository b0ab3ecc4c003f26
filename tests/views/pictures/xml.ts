/** An element read back: its name, its attributes, and what it holds. */
export type Tag = {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (Tag | string)[];
};

const ENTITIES: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  "#39": "'",
};
const NAME = /[A-Za-z_][\w:.-]*/y;
const ALLOWED = /^[\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]*$/u;

function plain(text: string): string {
  if (/[<"]/.test(text)) throw new SyntaxError(`not escaped: ${text}`);
  return text.replace(/&(#?\w*);?/g, (whole, name) => {
    const letter = ENTITIES[name];
    if (letter === undefined || !whole.endsWith(";")) throw new SyntaxError(`what is ${whole}?`);
    return letter;
  });
}

/** One element, strictly: every tag closed, every attribute quoted and once, no entity but five, only XML's characters. */
export function parse(text: string): Tag {
  if (!ALLOWED.test(text)) throw new SyntaxError("a character that XML does not allow");
  let at = 0;
  const eat = (pattern: RegExp): string => {
    pattern.lastIndex = at;
    const found = pattern.exec(text);
    if (!found) throw new SyntaxError(`unexpected: ${text.slice(at, at + 40)}`);
    at = pattern.lastIndex;
    return found[0];
  };
  const attributes = (): Record<string, string> => {
    const all: Record<string, string> = {};
    while (/\s/.test(text[at] ?? "")) {
      eat(/\s+/y);
      const name = eat(NAME);
      if (name in all) throw new SyntaxError(`${name} twice`);
      all[name] = plain(eat(/="[^"]*"/y).slice(2, -1));
    }
    return all;
  };
  const tag = (): Tag => {
    eat(/</y);
    const name = eat(NAME);
    const given = attributes();
    if (text.startsWith("/>", at)) {
      at += 2;
      return { name, attributes: given, children: [] };
    }
    eat(/>/y);
    const children: (Tag | string)[] = [];
    while (!text.startsWith("</", at)) children.push(text[at] === "<" ? tag() : plainText());
    eat(/<\//y);
    if (eat(NAME) !== name) throw new SyntaxError(`${name} is closed by another`);
    eat(/>/y);
    return { name, attributes: given, children };
  };
  const plainText = () => plain(eat(/[^<]+/y));
  const root = tag();
  if (text.slice(at).trim() !== "") throw new SyntaxError("something behind the end");
  return root;
}

/** All elements of a name under one, in order. */
export function under(tag: Tag, name: string): readonly Tag[] {
  return tag.children.flatMap((child) =>
    typeof child === "string"
      ? []
      : [...(child.name === name ? [child] : []), ...under(child, name)],
  );
}

/** All elements under one, in order. */
export function everyTag(tag: Tag): readonly Tag[] {
  return [
    tag,
    ...tag.children.flatMap((child) => (typeof child === "string" ? [] : everyTag(child))),
  ];
}

/** The one element with that id; throws where there is none. */
export function byId(tag: Tag, id: string): Tag {
  const found = everyTag(tag).find((each) => each.attributes.id === id);
  if (!found) throw new RangeError(`nothing is called ${id}`);
  return found;
}

/** All text in an element. */
export function textIn(tag: Tag): string {
  return tag.children.map((child) => (typeof child === "string" ? child : textIn(child))).join("");
}
