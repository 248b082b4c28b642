-- A food by the panel of the packet that the household buys. A later panel of the same food is a new row, so that
-- recipes keep counting with the one they were recorded with.
CREATE TABLE own_food (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  food_key TEXT NOT NULL CHECK (length(food_key) > 0),
  called TEXT NOT NULL,
  -- The food of the table for which it stands, for its kind and its measures.
  base_ndb TEXT NOT NULL,
  per100_json TEXT NOT NULL CHECK (json_valid(per100_json)),
  least_water_g REAL NOT NULL CHECK (least_water_g >= 0),
  most_water_g REAL NOT NULL CHECK (most_water_g <= 100),
  read_by INTEGER NOT NULL,
  read_at_ms INTEGER NOT NULL,
  is_current INTEGER NOT NULL DEFAULT 1 CHECK (is_current IN (0, 1)),
  FOREIGN KEY (household, read_by) REFERENCES member (household, id),
  UNIQUE (household, id)
) STRICT;
CREATE UNIQUE INDEX own_food_of_today ON own_food (household, food_key) WHERE is_current = 1;
