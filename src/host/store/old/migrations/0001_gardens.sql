-- Instants are milliseconds since 1970 UTC; revisions and versions only rise.

CREATE TABLE gardens (
  id TEXT PRIMARY KEY,
  -- Raised by triggers whenever a plan or the diary changes, so that no code path can forget.
  revision INTEGER NOT NULL DEFAULT 0,
  changed_at INTEGER NOT NULL,
  -- The address the garden was last published at; links in events lead there.
  origin TEXT NOT NULL,
  -- What each task was last told as.
  standing TEXT NOT NULL DEFAULT '{}',
  standing_version INTEGER NOT NULL DEFAULT 0,
  -- Each task's usual day, and the readings of plans it was reckoned from.
  usual TEXT,
  usual_of TEXT,
  -- The events last told as JSON, and what they were made from; every feed filters them.
  events TEXT,
  events_revision INTEGER,
  events_code TEXT,
  events_until INTEGER
) STRICT;

-- The newest version of a year is the one in force; earlier ones are kept.
CREATE TABLE plans (
  garden TEXT NOT NULL REFERENCES gardens (id) ON DELETE CASCADE,
  year INTEGER NOT NULL,
  version INTEGER NOT NULL,
  text TEXT NOT NULL,
  beside TEXT NOT NULL,
  file TEXT NOT NULL,
  -- The checked plan as JSON, and the code that read it.
  plan TEXT NOT NULL,
  read_by TEXT NOT NULL,
  -- Print of the file it was published from; null where it was written elsewhere.
  published TEXT,
  saved_at INTEGER NOT NULL,
  PRIMARY KEY (garden, year, version)
) STRICT;

CREATE TABLE diary (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  garden TEXT NOT NULL REFERENCES gardens (id) ON DELETE CASCADE,
  day TEXT NOT NULL,
  text TEXT NOT NULL,
  task TEXT,
  person TEXT,
  said_at INTEGER NOT NULL
) STRICT;

CREATE INDEX diary_of_garden ON diary (garden, id);

CREATE TABLE revoked (
  garden TEXT NOT NULL,
  link TEXT NOT NULL,
  revoked_at INTEGER NOT NULL,
  PRIMARY KEY (garden, link)
) STRICT;

-- The bytes a feed answers with, and what they were made from.
CREATE TABLE feeds (
  garden TEXT NOT NULL REFERENCES gardens (id) ON DELETE CASCADE,
  link TEXT NOT NULL,
  feed TEXT NOT NULL,
  version INTEGER NOT NULL,
  -- Gzipped, as base64 text.
  body TEXT NOT NULL,
  size INTEGER NOT NULL,
  print TEXT NOT NULL,
  last_modified INTEGER NOT NULL,
  ledger TEXT NOT NULL,
  revision INTEGER NOT NULL,
  code TEXT NOT NULL,
  until INTEGER NOT NULL,
  PRIMARY KEY (garden, link, feed)
) STRICT;

CREATE TRIGGER plan_added AFTER INSERT ON plans BEGIN
  UPDATE gardens SET revision = revision + 1, changed_at = max(changed_at, NEW.saved_at) WHERE id = NEW.garden;
END;

CREATE TRIGGER plan_changed AFTER UPDATE ON plans BEGIN
  UPDATE gardens SET revision = revision + 1, changed_at = max(changed_at, NEW.saved_at)
  WHERE id IN (OLD.garden, NEW.garden);
END;

CREATE TRIGGER plan_removed AFTER DELETE ON plans BEGIN
  UPDATE gardens
  SET revision = revision + 1, changed_at = max(changed_at, CAST(unixepoch('subsec') * 1000 AS INTEGER))
  WHERE id = OLD.garden;
END;

CREATE TRIGGER diary_added AFTER INSERT ON diary BEGIN
  UPDATE gardens SET revision = revision + 1, changed_at = max(changed_at, NEW.said_at) WHERE id = NEW.garden;
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
WHEN EXISTS (SELECT 1 FROM gardens WHERE id = OLD.garden) BEGIN
  SELECT RAISE(ABORT, 'the diary is only ever added to');
END;
