-- The public name by which others may mean a member.
ALTER TABLE member ADD COLUMN alias TEXT;
