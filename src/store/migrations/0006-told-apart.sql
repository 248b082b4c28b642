-- A food that must not even be near somebody: nobody at the same meal eats it either.
ALTER TABLE eater_food ADD COLUMN is_apart INTEGER NOT NULL DEFAULT 0 CHECK (is_apart IN (0, 1));
-- The food alone is meant, though it stands for more: butter and no other milk.
ALTER TABLE eater_food ADD COLUMN is_exact INTEGER NOT NULL DEFAULT 0 CHECK (is_exact IN (0, 1));
