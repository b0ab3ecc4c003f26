import type { Fault, Line } from "./lines.ts";

/** A property: name in capitals, parameters by name in capitals, quotes gone; the value as it stands. */
export type Property = {
  readonly name: string;
  readonly params: Readonly<Record<string, string>>;
  readonly value: string;
  readonly line: number;
};

/** A component with its properties and its parts, each in order. */
export type Component = {
  readonly name: string;
  readonly line: number;
  readonly properties: Property[];
  readonly parts: Component[];
};

const PARAM = ';([A-Za-z0-9-]+)=("[^"]*"|[^";:,]*)((?:,(?:"[^"]*"|[^";:,]*))*)';
const CONTENT = new RegExp(`^([A-Za-z0-9-]+)((?:${PARAM})*):(.*)$`, "s");

/**
 * The one VCALENDAR of a feed, or null where there is none, and every fault of nesting and of lines that
 * are none.
 * Source: RFC 5545, sections 3.1, 3.4, 3.6 and 3.6.1 (properties stand before components).
 */
export function treeOf(lines: readonly Line[]): {
  readonly calendar: Component | null;
  readonly faults: readonly Fault[];
} {
  const faults: Fault[] = [];
  const root: Component = { name: "", line: 0, properties: [], parts: [] };
  const open: Component[] = [root];
  for (const line of lines) {
    const property = propertyOf(line);
    if (property === null)
      faults.push({ code: "not-a-content-line", line: line.line, is: line.text });
    else faults.push(...placed(property, open));
  }
  for (const { name, line } of open.slice(1)) {
    faults.push({ code: "unclosed-component", line, is: name });
  }
  return { calendar: root.parts[0] ?? null, faults: [...faults, ...aroundOne(root)] };
}

function propertyOf({ line, text }: Line): Property | null {
  const found = CONTENT.exec(text);
  if (found === null) return null;
  const [, name = "", given = ""] = found;
  const params = [...given.matchAll(new RegExp(PARAM, "g"))].map(([, key = "", value = ""]) => [
    key.toUpperCase(),
    value.replace(/^"|"$/g, ""),
  ]);
  const value = text.slice(name.length + given.length + 1);
  return { name, params: Object.fromEntries(params), value, line };
}

function placed(property: Property, open: Component[]): readonly Fault[] {
  const { name, value, line } = property;
  const top = open.at(-1);
  if (top === undefined) return [];
  const fault = (code: string, is = `${name}:${value}`) => [{ code, line, is }];
  if (name !== name.toUpperCase()) return fault("lower-case-name");
  if (name === "BEGIN") {
    const part = { name: value, line, properties: [], parts: [] };
    top.parts.push(part);
    open.push(part);
    return [];
  }
  if (name === "END") return ended(value, open) ? [] : fault("end-mismatch");
  top.properties.push(property);
  return top.name !== "" && top.parts.length > 0 ? fault("property-after-component") : [];
}

/** Closes the innermost component; false where its name is another. The outermost stays. */
function ended(name: string, open: Component[]): boolean {
  if (open.length === 1) return false;
  return open.pop()?.name === name;
}

function aroundOne(root: Component): readonly Fault[] {
  const [first, second] = root.parts;
  const [stray] = root.properties;
  if (first === undefined) return [{ code: "no-calendar", line: 1, is: "no VCALENDAR" }];
  if (first.name !== "VCALENDAR")
    return [{ code: "no-calendar", line: first.line, is: first.name }];
  if (second !== undefined)
    return [{ code: "second-calendar", line: second.line, is: second.name }];
  if (stray !== undefined) return [{ code: "outside-calendar", line: stray.line, is: stray.name }];
  return [];
}
