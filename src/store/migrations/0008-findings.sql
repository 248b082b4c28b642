-- What pouches were found to be after they were sealed. The last one that speaks of the seal holds; none is overwritten.
CREATE TABLE finding (
  id INTEGER PRIMARY KEY,
  household INTEGER NOT NULL,
  pouch INTEGER NOT NULL REFERENCES pouch (id),
  at_ms INTEGER NOT NULL,
  what TEXT NOT NULL CHECK (what IN ('tight', 'loose', 'drying', 'resealed', 'opened', 'swollen', 'smells')),
  -- Weighed when it was resealed; eaten when it was opened.
  net_g REAL CHECK (net_g > 0),
  CHECK (what <> 'resealed' OR net_g IS NOT NULL),
  FOREIGN KEY (household) REFERENCES household (id)
) STRICT;
CREATE INDEX finding_by_pouch ON finding (pouch, at_ms);
CREATE INDEX finding_by_household ON finding (household, at_ms);
