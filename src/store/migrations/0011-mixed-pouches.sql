-- A batch that was not dried but filled from others, 'M5': it shares their numbers. Its recipe has the lines of what
-- came from the cupboard, for one pouch.
ALTER TABLE batch ADD COLUMN is_mixed INTEGER NOT NULL DEFAULT 0 CHECK (is_mixed IN (0, 1));
-- What one pouch of a mixture holds of a batch, and the weighing that its dry weight rests on.
CREATE TABLE mix_part (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  mix INTEGER NOT NULL,
  batch INTEGER NOT NULL,
  each_g REAL NOT NULL CHECK (each_g > 0),
  weighing INTEGER NOT NULL REFERENCES weighing (id),
  FOREIGN KEY (household, mix) REFERENCES batch (household, id),
  FOREIGN KEY (household, batch) REFERENCES batch (household, id),
  UNIQUE (mix, batch)
) STRICT;
CREATE INDEX mix_part_by_batch ON mix_part (batch);
