-- The heading that a line stands under; and whether it is added when the portion is eaten, never in the pot: told for
-- the whole recipe or for each serving. The grams are of the whole recipe either way.
ALTER TABLE recipe_line ADD COLUMN section TEXT;
ALTER TABLE recipe_line ADD COLUMN camp TEXT CHECK (camp IN ('all', 'each'));
