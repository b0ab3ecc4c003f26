/** A deployment's databases by their number; 1 is the one every deployment has. */
export type Databases = ReadonlyMap<number, D1Database>;

/** How a garden's id says which database it lies in: `k7…--2`. One that says nothing lies in the first. */
const SAID = /--([1-9][0-9]{0,3})$/;

/**
 * The database a garden lies in, by its id alone, so that no garden ever moves when another database is added; null where the
 * deployment has no database of that number.
 */
export function databaseFor(databases: Databases, garden: string): D1Database | null {
  return databases.get(Number(SAID.exec(garden)?.[1] ?? 1)) ?? null;
}

/** The bindings `DB`, `DB_2`, `DB_3` and so on, by their numbers. */
export function databasesIn(bindings: object): Databases {
  const found = Object.entries(bindings).flatMap(([name, bound]) => {
    const number = /^DB(?:_([1-9][0-9]{0,3}))?$/.exec(name);
    return number ? [[Number(number[1] ?? 1), bound as D1Database] as const] : [];
  });
  return new Map(found);
}
