-- The absorbers in a pouch where they are of several sizes, such as [{"sizeMl":500,"count":1},{"sizeMl":300,"count":1}];
-- null: absorber_ml and absorber_count tell them.
ALTER TABLE pouch ADD COLUMN absorbers_json TEXT CHECK (json_valid(absorbers_json));
CREATE INDEX pouch_with_absorber ON pouch (household, sealed_at_ms) WHERE absorber_ml IS NOT NULL;
-- Pouches whose room was measured in water.
CREATE INDEX pouch_measured ON pouch (household) WHERE json_extract(kept_json, '$.measuredMlPerG') IS NOT NULL;
