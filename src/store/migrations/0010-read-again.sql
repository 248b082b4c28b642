-- Which reader a line was read by. Lines of the readers before this one let words go that name food: they are read
-- again once, when the bot starts.
ALTER TABLE recipe_line ADD COLUMN reader INTEGER NOT NULL DEFAULT 0 CHECK (reader >= 0);
CREATE INDEX recipe_line_by_reader ON recipe_line (reader);
