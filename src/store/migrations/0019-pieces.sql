-- What pieces that were broken open were like inside: cold or soft means ice. Never overwritten.
CREATE TABLE opened_pieces (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  batch INTEGER NOT NULL,
  at_ms INTEGER NOT NULL,
  member INTEGER NOT NULL,
  is_cold INTEGER NOT NULL CHECK (is_cold IN (0, 1)),
  FOREIGN KEY (household, batch) REFERENCES batch (household, id),
  FOREIGN KEY (household, member) REFERENCES member (household, id)
) STRICT;
CREATE INDEX opened_pieces_by_batch ON opened_pieces (batch, at_ms);
CREATE INDEX opened_pieces_by_household ON opened_pieces (household);
