-- Meals of a trip that stay as they are planned, and meals taken along to spare.
CREATE TABLE slot_mark (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  slot INTEGER NOT NULL,
  mark TEXT NOT NULL CHECK (mark IN ('kept', 'spare')),
  FOREIGN KEY (household, slot) REFERENCES slot (household, id),
  UNIQUE (slot, mark)
) STRICT;
