-- What a household read on the packet of a food, who and when: it holds for that food from then on.
CREATE TABLE packet (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  food_key TEXT NOT NULL CHECK (length(food_key) > 0),
  called TEXT NOT NULL,
  reading_json TEXT NOT NULL CHECK (json_valid(reading_json)),
  read_by INTEGER NOT NULL,
  read_at_ms INTEGER NOT NULL,
  FOREIGN KEY (household, read_by) REFERENCES member (household, id),
  UNIQUE (household, food_key)
) STRICT;
