-- The number that the platform gave to the message an answer became; null until it arrived, and where a door gives none.
ALTER TABLE outbox ADD COLUMN message_key TEXT;
-- An answer that takes the place of an earlier one, in that one's message where it can still be edited.
ALTER TABLE outbox ADD COLUMN instead_of INTEGER REFERENCES outbox (id) ON DELETE SET NULL;
CREATE INDEX outbox_replaced ON outbox (instead_of) WHERE instead_of IS NOT NULL;
CREATE INDEX outbox_answering ON outbox (door, chat_key, reply_to_key) WHERE reply_to_key IS NOT NULL;

-- Messages that follow the records: a pack list, a trip, a load. What they show is made from the records when it is
-- sent, so only whether they lag behind is kept.
CREATE TABLE live (
  id INTEGER PRIMARY KEY,
  outbox INTEGER NOT NULL UNIQUE REFERENCES outbox (id) ON DELETE CASCADE,
  household INTEGER NOT NULL REFERENCES household (id),
  door TEXT NOT NULL,
  chat_key TEXT NOT NULL,
  -- The request whose list it is, and the trip or batch it is of.
  kind TEXT NOT NULL,
  of_id INTEGER NOT NULL,
  page INTEGER NOT NULL DEFAULT 1 CHECK (page > 0),
  -- Counts: it lags behind while more changed than was shown.
  changed INTEGER NOT NULL DEFAULT 0,
  shown INTEGER NOT NULL DEFAULT 0,
  -- Whether it is to be at the top of the chat.
  pin TEXT NOT NULL DEFAULT 'no' CHECK (pin IN ('no', 'wanted', 'done', 'refused', 'unwanted')),
  -- A newer message shows the same.
  is_over INTEGER NOT NULL DEFAULT 0 CHECK (is_over IN (0, 1))
) STRICT;
CREATE INDEX live_by_household ON live (household);
CREATE INDEX live_in_chat ON live (door, chat_key, kind, of_id);
CREATE INDEX live_behind ON live (door, chat_key, id) WHERE changed > shown;
