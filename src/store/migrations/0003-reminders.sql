-- A chat that the bot was put out of or may not write to: nothing is posted there by itself.
ALTER TABLE chat ADD COLUMN is_away INTEGER NOT NULL DEFAULT 0 CHECK (is_away IN (0, 1));
-- The topic in which people last spoke with the bot: what it posts by itself goes there.
ALTER TABLE chat ADD COLUMN topic_key TEXT;
-- The person who admitted the household; empty for one who spoke as a chat.
ALTER TABLE household ADD COLUMN admitted_by TEXT;

CREATE INDEX chat_by_household ON chat (household, door);
CREATE INDEX member_by_person ON member (door, person_key);
-- One household's rows are found without reading those of all, also where a parent row is dropped.
CREATE INDEX promise_by_household ON promise (household);
CREATE INDEX promise_by_slot ON promise (slot);
CREATE INDEX wish_by_slot ON wish (slot);
CREATE INDEX stove_by_household ON stove (household);
CREATE INDEX heard_by_entry ON heard (entry) WHERE entry IS NOT NULL;

-- When a household is to be looked at next for reminders; 0 is at once. What is due follows from the records.
CREATE TABLE watch (
  household INTEGER PRIMARY KEY REFERENCES household (id),
  next_at_ms INTEGER NOT NULL,
  -- The day on which its trips were last held against stock.
  trips_looked_on TEXT
) STRICT;
CREATE INDEX watch_next ON watch (next_at_ms);
INSERT INTO watch (household, next_at_ms) SELECT id, 0 FROM household;
CREATE TRIGGER household_watched AFTER INSERT ON household BEGIN
  INSERT INTO watch (household, next_at_ms) VALUES (NEW.id, 0);
END;
-- Every change that was recorded or taken back may bring a reminder or make one needless.
CREATE TRIGGER entry_watched AFTER UPDATE OF did, undone_at_ms ON entry BEGIN
  UPDATE watch SET next_at_ms = 0 WHERE household = NEW.household;
END;

-- What a household was reminded of, by what it was about: never twice.
CREATE TABLE reminded (
  household INTEGER NOT NULL REFERENCES household (id),
  about TEXT NOT NULL,
  at_ms INTEGER NOT NULL,
  PRIMARY KEY (household, about)
) STRICT, WITHOUT ROWID;
