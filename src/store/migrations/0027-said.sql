-- What a chat was told lately is looked for before it is told again.
CREATE INDEX outbox_said ON outbox (door, chat_key, made_at_ms);
