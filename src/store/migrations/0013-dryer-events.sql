-- What happened to a batch in the dryer beside its weighings: it stood still, ran on, was moved to another one.
CREATE TABLE dryer_event (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  batch INTEGER NOT NULL,
  at_ms INTEGER NOT NULL,
  what TEXT NOT NULL CHECK (what IN ('stopped', 'resumed', 'moved')),
  note TEXT CHECK (length(note) > 0),
  FOREIGN KEY (household, batch) REFERENCES batch (household, id)
) STRICT;
CREATE INDEX dryer_event_by_batch ON dryer_event (batch, at_ms);
CREATE INDEX dryer_event_by_household ON dryer_event (household);
