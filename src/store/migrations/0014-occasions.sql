-- What a meal is for, as the household said: a meal by its folded name, occasions as a JSON list. A meal without a row
-- is guessed from its name and ingredients.
CREATE TABLE meal_use (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  meal_key TEXT NOT NULL CHECK (length(meal_key) > 0),
  uses_json TEXT NOT NULL CHECK (json_valid(uses_json)),
  UNIQUE (household, meal_key)
) STRICT;
-- How hard a day of a trip is; a day without a row is walked.
CREATE TABLE trip_day (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  trip INTEGER NOT NULL,
  on_day TEXT NOT NULL,
  effort TEXT NOT NULL CHECK (effort IN ('rest', 'walk', 'hard')),
  FOREIGN KEY (household, trip) REFERENCES trip (household, id),
  UNIQUE (trip, on_day)
) STRICT;
