-- Gardens deleted for good: nothing of them is kept but the name, so that none of their links ever opens another.
CREATE TABLE gone (
  garden TEXT PRIMARY KEY,
  gone_at INTEGER NOT NULL
) STRICT;

-- Which tasks an event was told with before it changed, as JSON, for phones that still show it so.
ALTER TABLE gardens ADD COLUMN before TEXT;
