import type { Fault } from "./lines.ts";
import type { Component, Property } from "./tree.ts";

/** The first property of that name, or null. */
export function first(component: Component, name: string): Property | null {
  return component.properties.find((property) => property.name === name) ?? null;
}

/** A fault of a component, on its property's line where there is one. */
export function fault(code: string, at: Property | Component): Fault {
  const is = "value" in at ? `${at.name}:${at.value}` : at.name;
  return { code, line: at.line, is };
}

/**
 * Faults of number: names that must stand once and don't (`uid-missing`), names that stand twice
 * (`uid-twice`), and names that have no business there, by the codes given or `unknown-property`.
 */
export function counted(
  component: Component,
  rule: {
    readonly once: readonly string[];
    readonly maybe: readonly string[];
    readonly refused: Readonly<Record<string, string>>;
  },
): readonly Fault[] {
  const names = new Set(component.properties.map((property) => property.name));
  const missing = rule.once.filter((name) => !names.has(name));
  return [
    ...missing.map((name) => fault(`${name.toLowerCase()}-missing`, component)),
    ...component.properties.flatMap((property, index) => {
      const { name } = property;
      const refused = rule.refused[name];
      if (refused !== undefined) return [fault(refused, property)];
      if (name.startsWith("X-MICROSOFT-")) return [fault("microsoft-property", property)];
      if (!rule.once.includes(name) && !rule.maybe.includes(name)) {
        return [fault("unknown-property", property)];
      }
      const again = component.properties.findIndex((other) => other.name === name) < index;
      return again ? [fault(`${name.toLowerCase()}-twice`, property)] : [];
    }),
  ];
}
