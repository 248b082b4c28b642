-- How a meal is eaten, where somebody said so: as it is, such as fruit, or soaked. On every wording of it alike.
ALTER TABLE recipe ADD COLUMN eaten TEXT CHECK (eaten IN ('dry', 'soaked'));
