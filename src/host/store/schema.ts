import { firstRow, type SqlStore } from "./sql.ts";

/**
 * The tables of one garden's own database, in the steps they were made; a step that was ever deployed is never changed.
 * Instants are milliseconds since 1970 UTC, days ISO in plans and diary and the core's whole days in what is built from
 * them; revisions and versions only rise. Nothing stored in one value comes near the platform's 2 MB: what may grow long lies
 * in `pieces`.
 */
export const STEPS: readonly string[] = [
  `CREATE TABLE garden (
    only INTEGER PRIMARY KEY CHECK (only = 1),
    -- An object that its alarm has woken does not know its name.
    id TEXT NOT NULL,
    -- Raised by triggers whenever a plan or the diary changes, so that no code path can forget.
    revision INTEGER NOT NULL DEFAULT 0,
    changed_at INTEGER NOT NULL,
    -- The address the garden was last published at; links in events lead there.
    origin TEXT NOT NULL,
    -- The one serial that opens as the owner, and one shown to take its place.
    owner INTEGER NOT NULL DEFAULT 1,
    owner_next INTEGER
  ) STRICT;

  -- A garden deleted for good: nothing else is kept, so that none of its links ever opens another.
  CREATE TABLE gone (at INTEGER NOT NULL) STRICT;

  -- The newest version of a year is the one in force; earlier ones are kept. What was read of it lies in pieces.
  CREATE TABLE plans (
    year INTEGER NOT NULL,
    version INTEGER NOT NULL,
    text TEXT NOT NULL,
    beside TEXT NOT NULL,
    file TEXT NOT NULL,
    -- What pages show of it, as JSON, and the code that read it.
    summary TEXT NOT NULL,
    read_by TEXT NOT NULL,
    -- Print of the file it was published from; null where it was written elsewhere.
    published TEXT,
    saved_at INTEGER NOT NULL,
    PRIMARY KEY (year, version)
  ) STRICT;

  -- Keys of everybody whom any version of a plan ever named.
  CREATE TABLE people (key TEXT PRIMARY KEY) STRICT, WITHOUT ROWID;

  CREATE TABLE diary (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    day TEXT NOT NULL,
    text TEXT NOT NULL,
    task TEXT,
    person TEXT,
    said_at INTEGER NOT NULL
  ) STRICT;
  CREATE INDEX diary_of_task ON diary (task, id) WHERE task IS NOT NULL;

  CREATE TABLE revoked (link TEXT PRIMARY KEY, at INTEGER NOT NULL) STRICT, WITHOUT ROWID;

  -- Long texts and bytes by name, cut small.
  CREATE TABLE pieces (
    name TEXT NOT NULL,
    part INTEGER NOT NULL,
    bytes BLOB NOT NULL,
    PRIMARY KEY (name, part)
  ) STRICT, WITHOUT ROWID;

  -- What the year was built from, and what became of the last tries to build it.
  CREATE TABLE build (
    only INTEGER PRIMARY KEY CHECK (only = 1),
    -- Counts builds; 0: there was none.
    number INTEGER NOT NULL,
    revision INTEGER NOT NULL,
    code TEXT NOT NULL,
    until INTEGER NOT NULL,
    -- The last line of the diary that it knows.
    line INTEGER NOT NULL,
    -- The readings of plans that the baseline was calculated from.
    baseline_of TEXT,
    failures INTEGER NOT NULL,
    retry_at INTEGER NOT NULL
  ) STRICT;

  -- Every task of the year: what its page shows, how it was last published, and its due day in a mean year.
  CREATE TABLE tasks (
    id TEXT PRIMARY KEY,
    -- Key of the event it stands in; null where it stands in none any more.
    event TEXT,
    card TEXT,
    published TEXT,
    baseline INTEGER
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE events (
    key TEXT NOT NULL,
    in_set TEXT NOT NULL,
    day INTEGER NOT NULL,
    json TEXT NOT NULL,
    -- A key is unique within its set of events.
    PRIMARY KEY (key, in_set)
  ) STRICT, WITHOUT ROWID;
  CREATE INDEX events_by_day ON events (day);

  -- Tasks that an event had before it changed, for phones that still show it so.
  CREATE TABLE former (event TEXT PRIMARY KEY, tasks TEXT NOT NULL, at INTEGER NOT NULL) STRICT, WITHOUT ROWID;

  -- What moved with the build that first knew a line of the diary.
  CREATE TABLE moved (line INTEGER PRIMARY KEY, changes TEXT NOT NULL) STRICT;

  -- What a feed answers with, and the build it shows. Its body lies in pieces.
  CREATE TABLE feeds (
    link TEXT NOT NULL,
    feed TEXT NOT NULL,
    build INTEGER NOT NULL,
    code TEXT NOT NULL,
    until INTEGER NOT NULL,
    size INTEGER NOT NULL,
    print TEXT NOT NULL,
    last_modified INTEGER NOT NULL,
    PRIMARY KEY (link, feed)
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE ledger (
    link TEXT NOT NULL,
    feed TEXT NOT NULL,
    event TEXT NOT NULL,
    print TEXT NOT NULL,
    sequence INTEGER NOT NULL,
    stamp INTEGER NOT NULL,
    days TEXT NOT NULL,
    text TEXT,
    PRIMARY KEY (link, feed, event)
  ) STRICT, WITHOUT ROWID;

  -- How often each link, and the garden, was written to in the minute that began then.
  CREATE TABLE writes (who TEXT PRIMARY KEY, since INTEGER NOT NULL, count INTEGER NOT NULL) STRICT, WITHOUT ROWID;

  CREATE TRIGGER plan_added AFTER INSERT ON plans BEGIN
    UPDATE garden SET revision = revision + 1, changed_at = max(changed_at, NEW.saved_at);
  END;
  CREATE TRIGGER plan_changed AFTER UPDATE OF text, beside, summary, read_by ON plans BEGIN
    UPDATE garden SET revision = revision + 1, changed_at = max(changed_at, NEW.saved_at);
  END;
  CREATE TRIGGER plan_removed AFTER DELETE ON plans BEGIN
    UPDATE garden SET revision = revision + 1;
  END;
  CREATE TRIGGER diary_added AFTER INSERT ON diary BEGIN
    UPDATE garden SET revision = revision + 1, changed_at = max(changed_at, NEW.said_at);
  END;
  CREATE TRIGGER diary_never_replaced BEFORE INSERT ON diary
  WHEN EXISTS (SELECT 1 FROM diary WHERE id = NEW.id) BEGIN
    SELECT RAISE(ABORT, 'the diary is only ever added to');
  END;
  CREATE TRIGGER diary_never_changed BEFORE UPDATE ON diary BEGIN
    SELECT RAISE(ABORT, 'the diary is only ever added to');
  END;
  -- It goes only with its garden.
  CREATE TRIGGER diary_never_removed BEFORE DELETE ON diary
  WHEN NOT EXISTS (SELECT 1 FROM gone) BEGIN
    SELECT RAISE(ABORT, 'the diary is only ever added to');
  END;`,
  `-- Of some texts in pieces, what each says, so that one that has not changed is not written again.
  CREATE TABLE fingerprints (name TEXT PRIMARY KEY, fingerprint TEXT NOT NULL) STRICT, WITHOUT ROWID;`,
  `-- When the garden last asked for its weather, of which cell, and when it asks again; what is known lies in pieces.
  CREATE TABLE weather (
    only INTEGER PRIMARY KEY CHECK (only = 1),
    cell TEXT NOT NULL,
    fetched_at INTEGER,
    next_at INTEGER NOT NULL,
    fault TEXT,
    -- How often what is known became another.
    changes INTEGER NOT NULL,
    changed_at INTEGER NOT NULL
  ) STRICT;
  CREATE TRIGGER weather_added AFTER INSERT ON weather WHEN NEW.changes > 0 BEGIN
    UPDATE garden SET revision = revision + 1, changed_at = max(changed_at, NEW.changed_at);
  END;
  CREATE TRIGGER weather_changed AFTER UPDATE OF changes ON weather WHEN NEW.changes > OLD.changes BEGIN
    UPDATE garden SET revision = revision + 1, changed_at = max(changed_at, NEW.changed_at);
  END;`,
  `-- Lines of one person that the owner took back in one go, by their numbers, and what is left to be read.
  CREATE TABLE taken_back (
    person TEXT,
    first INTEGER NOT NULL,
    last INTEGER NOT NULL,
    at INTEGER NOT NULL
  ) STRICT;
  CREATE VIEW said AS SELECT * FROM diary WHERE NOT EXISTS (
    SELECT 1 FROM taken_back AS t WHERE t.person IS diary.person AND diary.id BETWEEN t.first AND t.last
  );
  CREATE TRIGGER lines_taken_back AFTER INSERT ON taken_back BEGIN
    UPDATE garden SET revision = revision + 1, changed_at = max(changed_at, NEW.at);
  END;
  CREATE TRIGGER lines_had_back AFTER DELETE ON taken_back BEGIN
    UPDATE garden SET revision = revision + 1;
  END;`,
  `-- What pages show of each year's newest version, apart from its text and from all that were before it.
  CREATE TABLE in_force (
    year INTEGER PRIMARY KEY,
    version INTEGER NOT NULL,
    file TEXT NOT NULL,
    summary TEXT NOT NULL,
    read_by TEXT NOT NULL,
    published TEXT,
    saved_at INTEGER NOT NULL
  ) STRICT;
  INSERT INTO in_force (year, version, file, summary, read_by, published, saved_at)
    SELECT year, version, file, summary, read_by, published, saved_at FROM plans AS p
    WHERE version = (SELECT max(version) FROM plans WHERE year = p.year);
  CREATE TRIGGER comes_into_force AFTER INSERT ON plans
  WHEN NEW.version >= coalesce((SELECT version FROM in_force WHERE year = NEW.year), 0) BEGIN
    INSERT OR REPLACE INTO in_force (year, version, file, summary, read_by, published, saved_at)
      VALUES (NEW.year, NEW.version, NEW.file, NEW.summary, NEW.read_by, NEW.published, NEW.saved_at);
  END;
  CREATE TRIGGER changes_in_force AFTER UPDATE ON plans BEGIN
    UPDATE in_force SET file = NEW.file, summary = NEW.summary, read_by = NEW.read_by,
      published = NEW.published, saved_at = NEW.saved_at
      WHERE year = NEW.year AND version = NEW.version;
  END;
  CREATE TRIGGER goes_out_of_force AFTER DELETE ON plans
  WHEN EXISTS (SELECT 1 FROM in_force WHERE year = OLD.year AND version = OLD.version) BEGIN
    DELETE FROM in_force WHERE year = OLD.year;
    INSERT INTO in_force (year, version, file, summary, read_by, published, saved_at)
      SELECT year, version, file, summary, read_by, published, saved_at FROM plans
      WHERE year = OLD.year ORDER BY version DESC LIMIT 1;
  END;`,
  `-- The id that UIDs are made from, where it is that of the garden which this one was restored from; null: its own.
  ALTER TABLE garden ADD COLUMN uids TEXT;
  -- The last copy of the garden that was stored elsewhere, and when it is tried again after one that failed.
  CREATE TABLE copies (
    only INTEGER PRIMARY KEY CHECK (only = 1),
    copied_at INTEGER,
    retry_at INTEGER NOT NULL,
    failures INTEGER NOT NULL
  ) STRICT;`,
  `-- Serials shown to take the place of the owner's, each open till one of them closes the others; garden.owner_next is no longer used.
  CREATE TABLE next_owners (serial INTEGER PRIMARY KEY, shown_at INTEGER NOT NULL) STRICT;
  INSERT INTO next_owners (serial, shown_at) SELECT owner_next, changed_at FROM garden WHERE owner_next IS NOT NULL;
  -- What is stored of the phrase that lets a shut-out owner in.
  CREATE TABLE recovery (
    only INTEGER PRIMARY KEY CHECK (only = 1),
    fingerprint TEXT NOT NULL,
    made_at INTEGER NOT NULL
  ) STRICT;`,
  `-- Check sums over a row's other values (store/sealed.ts); null in rows from before. What decides who may come is stored twice.
  ALTER TABLE plans ADD COLUMN sum INTEGER;
  ALTER TABLE plans ADD COLUMN place TEXT;
  ALTER TABLE diary ADD COLUMN sum INTEGER;
  ALTER TABLE ledger ADD COLUMN sum INTEGER;
  ALTER TABLE feeds ADD COLUMN sum INTEGER;
  ALTER TABLE feeds ADD COLUMN body_sum INTEGER;
  ALTER TABLE garden ADD COLUMN copy TEXT;
  ALTER TABLE revoked ADD COLUMN copy TEXT;
  CREATE INDEX revoked_copies ON revoked (copy);
  -- Before a line has its number it counts as -1 here, and a damaged one may have that.
  DROP TRIGGER diary_never_replaced;
  CREATE TRIGGER diary_never_replaced BEFORE INSERT ON diary
  WHEN NEW.id > 0 AND EXISTS (SELECT 1 FROM diary WHERE id = NEW.id) BEGIN
    SELECT RAISE(ABORT, 'the diary is only ever added to');
  END;
  -- What was found to be damaged, in words for the owner, and when.
  CREATE TABLE damage (what TEXT PRIMARY KEY, found_at INTEGER NOT NULL) STRICT, WITHOUT ROWID;`,
];

/** Brings a garden's tables up to the newest step, each step whole or not at all. */
export function migrate(sql: SqlStore, steps: readonly string[] = STEPS): void {
  sql.rows("CREATE TABLE IF NOT EXISTS schema (version INTEGER NOT NULL) STRICT");
  // Counted by rows, of which every step has one: a number in them may be damaged.
  type Row = { readonly done: number };
  const done = firstRow<Row>(sql, "SELECT count(*) AS done FROM schema")?.done ?? 0;
  for (const [at, step] of steps.entries()) {
    if (at < done) continue;
    sql.transaction(() => {
      sql.rows(step);
      sql.rows("INSERT INTO schema (version) VALUES (?1)", at + 1);
    });
  }
}
