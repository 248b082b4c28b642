-- Foods that a line names beside the one it counts, and foods that headings and method name and no line accounts for:
-- both as JSON, each with what it holds.
ALTER TABLE recipe_line ADD COLUMN named_json TEXT NOT NULL DEFAULT '[]' CHECK (json_valid(named_json));
ALTER TABLE recipe ADD COLUMN mentions_json TEXT NOT NULL DEFAULT '[]' CHECK (json_valid(mentions_json));
