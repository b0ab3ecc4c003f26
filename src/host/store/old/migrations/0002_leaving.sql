-- Gardens deleted for good: nothing of them is kept but the name, so that none of their links ever opens another.
CREATE TABLE gone (
  garden TEXT PRIMARY KEY,
  gone_at INTEGER NOT NULL
) STRICT;

-- Gardens whose plans or diary changed since their feeds were last written, for the cron to find without reading them all.
CREATE TABLE waiting (
  garden TEXT PRIMARY KEY REFERENCES gardens (id) ON DELETE CASCADE
) STRICT;

CREATE TRIGGER garden_changed AFTER UPDATE OF revision ON gardens BEGIN
  INSERT INTO waiting (garden) VALUES (NEW.id) ON CONFLICT DO NOTHING;
END;

CREATE INDEX feeds_due ON feeds (code, until);

-- The one serial that opens as the owner, and one shown to take its place; no other owner's link is good.
ALTER TABLE gardens ADD COLUMN owner INTEGER NOT NULL DEFAULT 1;
ALTER TABLE gardens ADD COLUMN owner_next INTEGER;

-- Which tasks an event was told with before it changed, as JSON, for phones that still show it so.
ALTER TABLE gardens ADD COLUMN before TEXT;
