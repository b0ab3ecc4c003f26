/** Rows that statements have read and written so far, as the platform counts them, index entries among the written. */
export type Rows = { readonly read: number; readonly written: number };

type Meta = {
  readonly rows_read?: number;
  readonly rows_written?: number;
  readonly size_after?: number;
};

/** A store that counts: the same, what it has counted, and how large it was after its last statement [bytes]. */
export type Counting = {
  readonly db: D1Database;
  readonly rows: () => Rows;
  readonly bytes: () => number;
};

/** The store with every statement's rows counted. */
export function counting(db: D1Database): Counting {
  const sum = { read: 0, written: 0, bytes: 0 };
  const inner = new WeakMap<D1PreparedStatement, D1PreparedStatement>();
  const count = <Row>(result: D1Result<Row>): D1Result<Row> => {
    const meta = result.meta as unknown as Meta;
    sum.read += meta.rows_read ?? 0;
    sum.written += meta.rows_written ?? 0;
    sum.bytes = meta.size_after ?? sum.bytes;
    return result;
  };
  const wrap = (statement: D1PreparedStatement): D1PreparedStatement => {
    const wrapped: D1PreparedStatement = {
      bind: (...values) => wrap(statement.bind(...values)),
      first: async <Row>() => count(await statement.all<Row>()).results[0] ?? null,
      run: async () => count(await statement.run()),
      all: async <Row>() => count(await statement.all<Row>()),
    };
    inner.set(wrapped, statement);
    return wrapped;
  };
  const batch = async <Row>(statements: readonly D1PreparedStatement[]) => {
    const bare = statements.map((statement) => inner.get(statement) ?? statement);
    return (await db.batch<Row>(bare)).map(count);
  };
  return {
    db: { prepare: (query) => wrap(db.prepare(query)), batch },
    rows: () => ({ read: sum.read, written: sum.written }),
    bytes: () => sum.bytes,
  };
}
