-- What else than the scale was said of a batch: a hygrometer in a closed jar with the food, or a member's word. Neither
-- is ever overwritten.
CREATE TABLE witness (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  batch INTEGER NOT NULL,
  at_ms INTEGER NOT NULL,
  member INTEGER NOT NULL,
  humidity_percent REAL CHECK (humidity_percent BETWEEN 0 AND 100),
  words TEXT CHECK (length(words) > 0),
  FOREIGN KEY (household, batch) REFERENCES batch (household, id),
  FOREIGN KEY (household, member) REFERENCES member (household, id),
  CHECK ((humidity_percent IS NULL) <> (words IS NULL))
) STRICT;
CREATE INDEX witness_by_batch ON witness (batch, at_ms);
CREATE INDEX witness_by_household ON witness (household);

-- What became of the part of a batch that is not sealed: weighed again before more of it is sealed, eaten, thrown away.
CREATE TABLE rest (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  batch INTEGER NOT NULL,
  at_ms INTEGER NOT NULL,
  what TEXT NOT NULL CHECK (what IN ('weighed', 'used', 'discarded')),
  net_g REAL NOT NULL CHECK (net_g > 0),
  why TEXT,
  FOREIGN KEY (household, batch) REFERENCES batch (household, id)
) STRICT;
CREATE INDEX rest_by_batch ON rest (batch, at_ms);
CREATE INDEX rest_by_household ON rest (household);
