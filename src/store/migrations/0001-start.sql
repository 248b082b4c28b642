-- Times are milliseconds since 1970 (UTC) in *_ms, calendar days are ISO text in *_on.
-- Every record table carries its household and is bound to its parents through it, so that no row can
-- hang on another household's row.

CREATE TABLE household (
  id INTEGER PRIMARY KEY,
  made_at_ms INTEGER NOT NULL
) STRICT;

CREATE TABLE chat (
  door TEXT NOT NULL CHECK (door IN ('terminal', 'telegram')),
  chat_key TEXT NOT NULL,
  household INTEGER NOT NULL REFERENCES household (id),
  is_private INTEGER NOT NULL CHECK (is_private IN (0, 1)),
  title TEXT NOT NULL,
  admitted_at_ms INTEGER NOT NULL,
  PRIMARY KEY (door, chat_key)
) STRICT;

CREATE TABLE member (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  door TEXT NOT NULL,
  person_key TEXT NOT NULL,
  name TEXT NOT NULL,
  UNIQUE (household, door, person_key),
  UNIQUE (household, id)
) STRICT;

-- Wrong admission codes, so that they cannot be tried without end.
CREATE TABLE wrong_code (
  id INTEGER PRIMARY KEY,
  door TEXT NOT NULL,
  chat_key TEXT NOT NULL,
  at_ms INTEGER NOT NULL
) STRICT;

-- Deliveries already handled: a message that comes twice changes nothing twice.
CREATE TABLE seen (
  door TEXT NOT NULL,
  delivery_key TEXT NOT NULL,
  at_ms INTEGER NOT NULL,
  PRIMARY KEY (door, delivery_key)
) STRICT, WITHOUT ROWID;

-- What was asked, so that an edited message can be told from a new one.
CREATE TABLE heard (
  door TEXT NOT NULL,
  chat_key TEXT NOT NULL,
  message_key TEXT NOT NULL,
  text TEXT NOT NULL,
  person_key TEXT NOT NULL,
  outcome TEXT NOT NULL CHECK (outcome IN ('answered', 'recorded', 'refused')),
  at_ms INTEGER NOT NULL,
  -- What it recorded; a change that was taken back may be sent again.
  entry INTEGER REFERENCES entry (id) ON DELETE SET NULL,
  PRIMARY KEY (door, chat_key, message_key)
) STRICT;
CREATE INDEX heard_from ON heard (door, chat_key, person_key, at_ms);

-- Answers on their way out. Written with the change they speak of, sent afterwards.
CREATE TABLE outbox (
  id INTEGER PRIMARY KEY,
  door TEXT NOT NULL,
  chat_key TEXT NOT NULL,
  topic_key TEXT,
  reply_to_key TEXT,
  reply_json TEXT NOT NULL CHECK (json_valid(reply_json)),
  made_at_ms INTEGER NOT NULL,
  state TEXT NOT NULL DEFAULT 'waiting' CHECK (state IN ('waiting', 'sent', 'dropped')),
  tries INTEGER NOT NULL DEFAULT 0,
  next_try_at_ms INTEGER NOT NULL DEFAULT 0,
  parts_sent INTEGER NOT NULL DEFAULT 0,
  why_dropped TEXT
) STRICT;
CREATE INDEX outbox_waiting ON outbox (door, chat_key, id) WHERE state = 'waiting';

-- A button is a request that can be pressed. Pressing one retires the others of its answer, save those that stay
-- for everybody to press.
CREATE TABLE button (
  id INTEGER PRIMARY KEY,
  outbox INTEGER NOT NULL REFERENCES outbox (id) ON DELETE CASCADE,
  for_person TEXT,
  label TEXT NOT NULL,
  request TEXT NOT NULL,
  stays INTEGER NOT NULL DEFAULT 0 CHECK (stays IN (0, 1)),
  made_at_ms INTEGER NOT NULL,
  used_at_ms INTEGER
) STRICT;
CREATE INDEX button_by_answer ON button (outbox);

-- The journal: one entry for each request that changed something, and every row it changed.
CREATE TABLE entry (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  door TEXT NOT NULL,
  chat_key TEXT NOT NULL,
  member INTEGER NOT NULL REFERENCES member (id),
  at_ms INTEGER NOT NULL,
  did TEXT NOT NULL,
  undone_at_ms INTEGER,
  undone_by INTEGER REFERENCES member (id)
) STRICT;
CREATE INDEX entry_by_household ON entry (household, id);
CREATE INDEX entry_standing ON entry (door, chat_key, id) WHERE undone_at_ms IS NULL;

CREATE TABLE row_change (
  id INTEGER PRIMARY KEY,
  entry INTEGER NOT NULL REFERENCES entry (id) ON DELETE CASCADE,
  table_name TEXT NOT NULL,
  row_id INTEGER NOT NULL,
  before_json TEXT,
  after_json TEXT
) STRICT;
CREATE INDEX row_change_by_entry ON row_change (entry);
CREATE INDEX row_change_by_row ON row_change (table_name, row_id);

-- Records -------------------------------------------------------------------------------------------

CREATE TABLE setting (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  name TEXT NOT NULL,
  value_json TEXT NOT NULL CHECK (json_valid(value_json)),
  UNIQUE (household, name)
) STRICT;

-- A recipe is never overwritten: a batch keeps the wording it was cooked from. The latest row of a
-- name is the recipe of today.
CREATE TABLE recipe (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  name TEXT NOT NULL CHECK (length(name) > 0),
  folded_name TEXT NOT NULL CHECK (length(folded_name) > 0),
  servings REAL NOT NULL CHECK (servings > 0),
  pot_g REAL CHECK (pot_g > 0),
  method TEXT NOT NULL DEFAULT '',
  made_at_ms INTEGER NOT NULL,
  is_current INTEGER NOT NULL DEFAULT 1 CHECK (is_current IN (0, 1)),
  UNIQUE (household, id)
) STRICT;
CREATE UNIQUE INDEX recipe_of_today ON recipe (household, folded_name) WHERE is_current = 1;

CREATE TABLE recipe_line (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  recipe INTEGER NOT NULL,
  position INTEGER NOT NULL,
  typed TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('weighed', 'uncounted', 'asked')),
  called TEXT NOT NULL,
  ndb TEXT,
  grams REAL CHECK (grams >= 0),
  contents_json TEXT CHECK (json_valid(contents_json)),
  remarks_json TEXT NOT NULL DEFAULT '[]' CHECK (json_valid(remarks_json)),
  question TEXT,
  FOREIGN KEY (household, recipe) REFERENCES recipe (household, id),
  UNIQUE (recipe, position)
) STRICT;

CREATE TABLE batch (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  no INTEGER NOT NULL CHECK (no > 0),
  recipe INTEGER NOT NULL,
  factor REAL NOT NULL CHECK (factor > 0),
  pot_g REAL CHECK (pot_g > 0),
  loaded_at_ms INTEGER NOT NULL,
  -- Dried uncooked: freeze-drying kills no germs, so its pouches must be cooked before eating.
  is_raw INTEGER NOT NULL DEFAULT 0 CHECK (is_raw IN (0, 1)),
  FOREIGN KEY (household, recipe) REFERENCES recipe (household, id),
  UNIQUE (household, no),
  UNIQUE (household, id)
) STRICT;
CREATE INDEX batch_by_recipe ON batch (recipe);

CREATE TABLE tray (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  batch INTEGER NOT NULL,
  no INTEGER NOT NULL CHECK (no > 0),
  tare_g REAL NOT NULL DEFAULT 0 CHECK (tare_g >= 0),
  wet_g REAL NOT NULL CHECK (wet_g > 0),
  FOREIGN KEY (household, batch) REFERENCES batch (household, id),
  UNIQUE (batch, no)
) STRICT;

-- One row a tray; tray_no 0 is the whole batch weighed together.
CREATE TABLE weighing (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  batch INTEGER NOT NULL,
  tray_no INTEGER NOT NULL CHECK (tray_no >= 0),
  at_ms INTEGER NOT NULL,
  net_g REAL NOT NULL CHECK (net_g > 0),
  FOREIGN KEY (household, batch) REFERENCES batch (household, id)
) STRICT;
CREATE INDEX weighing_by_batch ON weighing (batch, at_ms);

CREATE TABLE pouch (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  batch INTEGER NOT NULL,
  no INTEGER NOT NULL CHECK (no > 0),
  dry_g REAL NOT NULL CHECK (dry_g > 0),
  sealed_at_ms INTEGER NOT NULL,
  checked INTEGER NOT NULL CHECK (checked IN (0, 1)),
  volume_ml REAL CHECK (volume_ml > 0),
  absorber_ml REAL CHECK (absorber_ml > 0),
  absorber_count INTEGER CHECK (absorber_count > 0),
  best_by_on TEXT,
  -- The weighing that the dry weight rests on: it cannot be taken back under a sealed pouch.
  weighing INTEGER NOT NULL REFERENCES weighing (id),
  state TEXT NOT NULL DEFAULT 'stock' CHECK (state IN ('stock', 'used', 'discarded')),
  gone_at_ms INTEGER,
  gone_why TEXT,
  FOREIGN KEY (household, batch) REFERENCES batch (household, id),
  UNIQUE (batch, no),
  CHECK (checked = 1 OR (best_by_on IS NULL AND absorber_ml IS NULL)),
  CHECK ((state = 'stock') = (gone_at_ms IS NULL))
) STRICT;
CREATE INDEX pouch_in_stock ON pouch (household, best_by_on) WHERE state = 'stock';

-- What a household taught: "our tin of tomatoes is 390 g", "by mince we mean 90 % lean".
CREATE TABLE learnt_food (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  words TEXT NOT NULL,
  -- A name that the kitchen knows: its row of the food table and what it contains follow from it.
  means TEXT NOT NULL,
  UNIQUE (household, words)
) STRICT;
CREATE TABLE learnt_measure (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  unit TEXT NOT NULL,
  food_words TEXT,
  grams REAL CHECK (grams > 0),
  ml REAL CHECK (ml > 0),
  CHECK ((grams IS NULL) <> (ml IS NULL))
) STRICT;
CREATE UNIQUE INDEX learnt_measure_once ON learnt_measure (household, unit, coalesce(food_words, ''));
-- "By curry we mean lentil curry": another name for a meal, kept by the meal's folded name.
CREATE TABLE meal_alias (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL REFERENCES household (id),
  words TEXT NOT NULL CHECK (length(words) > 0),
  meal_key TEXT NOT NULL,
  UNIQUE (household, words)
) STRICT;
