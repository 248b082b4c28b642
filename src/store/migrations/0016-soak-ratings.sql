-- How long a meal stood by the figure of that day, and how much longer it should have; below zero: shorter.
ALTER TABLE rating ADD COLUMN soaked_min REAL CHECK (soaked_min > 0);
ALTER TABLE rating ADD COLUMN soak_more_min REAL;
