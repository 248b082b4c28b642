-- Anyone who eats: members, children, guests. One who left stays in the records and out of new trips.
CREATE TABLE eater (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  name TEXT NOT NULL CHECK (length(name) > 0),
  folded_name TEXT NOT NULL CHECK (length(folded_name) > 0),
  kind TEXT NOT NULL CHECK (kind IN ('adult', 'child', 'guest')),
  member INTEGER,
  age_years REAL CHECK (age_years >= 0 AND age_years < 130),
  sex TEXT CHECK (sex IN ('male', 'female')),
  activity TEXT CHECK (activity IN ('sedentary', 'moderately active', 'active')),
  portion REAL NOT NULL DEFAULT 1 CHECK (portion >= 0.1 AND portion <= 4),
  sodium_mg REAL CHECK (sodium_mg > 0),
  energy_kcal REAL CHECK (energy_kcal > 0),
  is_gone INTEGER NOT NULL DEFAULT 0 CHECK (is_gone IN (0, 1)),
  FOREIGN KEY (household, member) REFERENCES member (household, id),
  UNIQUE (household, folded_name),
  UNIQUE (household, id)
) STRICT;

-- What an eater must never be served, or does not like; kept in the words that were typed.
CREATE TABLE eater_food (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  eater INTEGER NOT NULL,
  rule TEXT NOT NULL CHECK (rule IN ('never', 'dislike')),
  words TEXT NOT NULL CHECK (length(words) > 0),
  FOREIGN KEY (household, eater) REFERENCES eater (household, id),
  UNIQUE (eater, words)
) STRICT;

CREATE TABLE trip (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  place TEXT NOT NULL CHECK (length(place) > 0),
  folded_place TEXT NOT NULL CHECK (length(folded_place) > 0),
  starts_on TEXT NOT NULL,
  ends_on TEXT NOT NULL CHECK (ends_on >= starts_on),
  altitude_m REAL,
  start_water_c REAL NOT NULL DEFAULT 10 CHECK (start_water_c >= -40 AND start_water_c < 100),
  from_snow INTEGER NOT NULL DEFAULT 0 CHECK (from_snow IN (0, 1)),
  is_over INTEGER NOT NULL DEFAULT 0 CHECK (is_over IN (0, 1)),
  made_at_ms INTEGER NOT NULL,
  UNIQUE (household, id)
) STRICT;
CREATE INDEX trip_by_start ON trip (household, starts_on);

CREATE TABLE slot (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  trip INTEGER NOT NULL,
  on_day TEXT NOT NULL,
  meal TEXT NOT NULL CHECK (meal IN ('breakfast', 'lunch', 'dinner')),
  FOREIGN KEY (household, trip) REFERENCES trip (household, id),
  UNIQUE (trip, on_day, meal),
  UNIQUE (household, id)
) STRICT;

CREATE TABLE slot_eater (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  slot INTEGER NOT NULL,
  eater INTEGER NOT NULL,
  FOREIGN KEY (household, slot) REFERENCES slot (household, id),
  FOREIGN KEY (household, eater) REFERENCES eater (household, id),
  UNIQUE (slot, eater)
) STRICT;
CREATE INDEX slot_eater_by_eater ON slot_eater (eater);

-- A wish names a meal by its folded name: it holds for every wording of the recipe.
CREATE TABLE wish (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  trip INTEGER NOT NULL,
  eater INTEGER NOT NULL,
  meal_key TEXT NOT NULL,
  slot INTEGER,
  by_member INTEGER NOT NULL,
  made_at_ms INTEGER NOT NULL,
  FOREIGN KEY (household, trip) REFERENCES trip (household, id),
  FOREIGN KEY (household, eater) REFERENCES eater (household, id),
  FOREIGN KEY (household, slot) REFERENCES slot (household, id),
  FOREIGN KEY (household, by_member) REFERENCES member (household, id)
) STRICT;
CREATE UNIQUE INDEX wish_once ON wish (trip, eater, meal_key, coalesce(slot, 0));

-- A pouch held for a trip; while `came` is empty no other trip may have it.
CREATE TABLE promise (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  trip INTEGER NOT NULL,
  slot INTEGER NOT NULL,
  pouch INTEGER NOT NULL REFERENCES pouch (id),
  eaters_json TEXT NOT NULL CHECK (json_valid(eaters_json)),
  packed INTEGER NOT NULL DEFAULT 0 CHECK (packed IN (0, 1)),
  came TEXT CHECK (came IN ('eaten', 'returned', 'lost')),
  FOREIGN KEY (household, trip) REFERENCES trip (household, id),
  FOREIGN KEY (household, slot) REFERENCES slot (household, id)
) STRICT;
CREATE UNIQUE INDEX promised_once ON promise (pouch) WHERE came IS NULL;
CREATE INDEX promise_by_trip ON promise (trip);

-- The picks last shown for a trip, so that "keep" keeps what people saw. No record: made anew at will.
CREATE TABLE shown_picks (
  trip INTEGER PRIMARY KEY REFERENCES trip (id) ON DELETE CASCADE,
  household INTEGER NOT NULL,
  made_at_ms INTEGER NOT NULL,
  picks_json TEXT NOT NULL CHECK (json_valid(picks_json))
) STRICT;

CREATE TABLE rating (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  meal_key TEXT NOT NULL,
  batch INTEGER,
  eater INTEGER,
  by_member INTEGER NOT NULL,
  at_ms INTEGER NOT NULL,
  -- Water by weight alone, what was poured by the figure of that day, and what it should have had besides.
  balance_ml REAL CHECK (balance_ml > 0),
  poured_ml REAL CHECK (poured_ml > 0),
  more_ml REAL,
  salt TEXT CHECK (salt IN ('too salty', 'not salty enough')),
  portion TEXT CHECK (portion IN ('too much', 'hungry')),
  again INTEGER CHECK (again IN (0, 1)),
  FOREIGN KEY (household, batch) REFERENCES batch (household, id),
  FOREIGN KEY (household, eater) REFERENCES eater (household, id),
  FOREIGN KEY (household, by_member) REFERENCES member (household, id)
) STRICT;
CREATE INDEX rating_by_meal ON rating (household, meal_key, at_ms);

-- A canister weighed before and after boiling a known amount of water: what the stove really burns.
CREATE TABLE stove (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  at_ms INTEGER NOT NULL,
  burnt_g REAL NOT NULL CHECK (burnt_g > 0),
  water_ml REAL NOT NULL CHECK (water_ml > 0),
  start_c REAL NOT NULL,
  boil_c REAL NOT NULL CHECK (boil_c > start_c),
  lhv_mj_per_kg REAL NOT NULL CHECK (lhv_mj_per_kg > 0)
) STRICT;

-- Requests whose long sums run beside the chat: taken up again after a restart.
CREATE TABLE unfinished (
  id INTEGER PRIMARY KEY,
  door TEXT NOT NULL,
  message_json TEXT NOT NULL CHECK (json_valid(message_json))
) STRICT;
