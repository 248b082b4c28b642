-- Food for trips that was not dried here, 'S6': a batch of no parts whose pieces are its pouches; it shares their numbers.
ALTER TABLE batch ADD COLUMN is_bought INTEGER NOT NULL DEFAULT 0 CHECK (is_bought IN (0, 1));
-- What its packet says of one piece: water to pour on, and the figures of 100 g where they were told.
CREATE TABLE bought (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  batch INTEGER NOT NULL UNIQUE,
  water_ml REAL NOT NULL DEFAULT 0 CHECK (water_ml >= 0),
  per100_json TEXT CHECK (json_valid(per100_json)),
  FOREIGN KEY (household, batch) REFERENCES batch (household, id)
) STRICT;
CREATE INDEX bought_by_household ON bought (household);
