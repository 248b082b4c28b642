-- What things cost, as the household told it: food by the kg, electricity by the kWh, pouches and absorbers by the piece.
CREATE TABLE price (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  thing_key TEXT NOT NULL CHECK (length(thing_key) > 0),
  called TEXT NOT NULL CHECK (length(called) > 0),
  per TEXT NOT NULL CHECK (per IN ('kg', 'kWh', 'piece')),
  amount REAL NOT NULL CHECK (amount >= 0),
  currency TEXT NOT NULL,
  told_at_ms INTEGER NOT NULL,
  UNIQUE (household, thing_key)
) STRICT;
-- The meter of the dryer's electricity, as somebody read it.
CREATE TABLE meter_reading (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  at_ms INTEGER NOT NULL,
  kwh REAL NOT NULL CHECK (kwh >= 0)
) STRICT;
CREATE INDEX meter_reading_by_household ON meter_reading (household, at_ms);
