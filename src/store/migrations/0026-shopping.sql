-- A shopping list as it was made: what for, what of each food, what of it is at home, and what is in the basket.
CREATE TABLE shopping (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  made_at_ms INTEGER NOT NULL,
  made_for TEXT NOT NULL,
  is_current INTEGER NOT NULL DEFAULT 1 CHECK (is_current IN (0, 1)),
  UNIQUE (household, id)
) STRICT;
CREATE INDEX shopping_current ON shopping (household, is_current);
CREATE TABLE shop_item (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  shopping INTEGER NOT NULL,
  position INTEGER NOT NULL CHECK (position > 0),
  food_key TEXT NOT NULL,
  called TEXT NOT NULL,
  kind TEXT NOT NULL,
  need_g REAL CHECK (need_g >= 0),
  -- What a shop sells it in: 'tin', '' for pieces; null by weight. What one of them gives, and what stands on it.
  unit TEXT,
  unit_g REAL CHECK (unit_g > 0),
  size TEXT,
  home_g REAL NOT NULL DEFAULT 0 CHECK (home_g >= 0),
  is_got INTEGER NOT NULL DEFAULT 0 CHECK (is_got IN (0, 1)),
  FOREIGN KEY (household, shopping) REFERENCES shopping (household, id),
  UNIQUE (shopping, position)
) STRICT;
