-- What a household says of one meal of a trip by hand: a meal that is not to be there, a pouch that is to be opened there.
CREATE TABLE slot_ban (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  slot INTEGER NOT NULL,
  meal_key TEXT NOT NULL CHECK (length(meal_key) > 0),
  FOREIGN KEY (household, slot) REFERENCES slot (household, id),
  UNIQUE (slot, meal_key)
) STRICT;
CREATE TABLE slot_pin (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  slot INTEGER NOT NULL,
  pouch INTEGER NOT NULL REFERENCES pouch (id),
  FOREIGN KEY (household, slot) REFERENCES slot (household, id),
  UNIQUE (pouch)
) STRICT;
CREATE INDEX slot_pin_by_slot ON slot_pin (slot);
