-- What a pouch's planning date rests on, as it was sealed; null for pouches from before this was kept.
ALTER TABLE pouch ADD COLUMN kept_json TEXT CHECK (json_valid(kept_json));
-- Where pouches were kept, from when on, as the household told it. The first row is of all time before.
CREATE TABLE storage_spell (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  from_ms INTEGER NOT NULL,
  temp_c REAL NOT NULL
) STRICT;
CREATE INDEX storage_spell_by_household ON storage_spell (household, from_ms);
