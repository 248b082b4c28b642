-- Who tried a wrong admission code: it slows them, and nobody else.
ALTER TABLE wrong_code ADD COLUMN person_key TEXT;
CREATE INDEX wrong_code_by_person ON wrong_code (door, person_key, at_ms);
-- When a chat was last told that pictures and the like change nothing.
ALTER TABLE chat ADD COLUMN hinted_at_ms INTEGER;
