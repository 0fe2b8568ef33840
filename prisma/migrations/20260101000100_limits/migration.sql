-- Ranges a value cannot leave, whatever program writes it. The wider rules of a request are checked before it gets here.
ALTER TABLE gardens
  ADD CONSTRAINT gardens_name_check CHECK (length(name) BETWEEN 1 AND 200),
  ADD CONSTRAINT gardens_locale_check CHECK (locale ~ '^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$'),
  ADD CONSTRAINT gardens_currency_check CHECK (currency ~ '^[A-Z]{3}$'),
  ADD CONSTRAINT gardens_unit_system_check CHECK (unit_system IN ('metric', 'us')),
  ADD CONSTRAINT gardens_file_quota_check CHECK (file_quota_byte_count BETWEEN 0 AND 1099511627776),
  ADD CONSTRAINT gardens_version_check CHECK (version >= 1);

ALTER TABLE api_keys
  ADD CONSTRAINT api_keys_name_check CHECK (length(name) BETWEEN 1 AND 200),
  ADD CONSTRAINT api_keys_prefix_check CHECK (prefix ~ '^lw_[0-9A-Za-z]{8}$'),
  ADD CONSTRAINT api_keys_sha256_check CHECK (length(sha256) = 32),
  ADD CONSTRAINT api_keys_scopes_check CHECK (cardinality(scopes) BETWEEN 1 AND 40),
  ADD CONSTRAINT api_keys_version_check CHECK (version >= 1);

ALTER TABLE climate_stations
  ADD CONSTRAINT climate_stations_latitude_check CHECK (latitude_deg BETWEEN -90 AND 90),
  ADD CONSTRAINT climate_stations_longitude_check CHECK (longitude_deg BETWEEN -180 AND 180),
  ADD CONSTRAINT climate_stations_elevation_check CHECK (elevation_m BETWEEN -430 AND 9000),
  ADD CONSTRAINT climate_stations_kind_check CHECK (kind IN ('means', 'normals')),
  ADD CONSTRAINT climate_stations_extreme_check CHECK (annual_extreme_min_c BETWEEN -90 AND 50),
  ADD CONSTRAINT climate_stations_extreme_years_check CHECK (annual_extreme_min_years_count BETWEEN 1 AND 300),
  ADD CONSTRAINT climate_stations_months_check CHECK (jsonb_typeof(months) = 'array' AND jsonb_array_length(months) = 12);

ALTER TABLE sites
  ADD CONSTRAINT sites_name_check CHECK (length(name) BETWEEN 1 AND 200),
  ADD CONSTRAINT sites_latitude_check CHECK (latitude_deg BETWEEN -90 AND 90),
  ADD CONSTRAINT sites_longitude_check CHECK (longitude_deg BETWEEN -180 AND 180),
  -- Ground below sea level is valid.
  ADD CONSTRAINT sites_elevation_check CHECK (elevation_m BETWEEN -430 AND 9000),
  ADD CONSTRAINT sites_time_zone_check CHECK (length(time_zone) BETWEEN 1 AND 60),
  ADD CONSTRAINT sites_details_check CHECK (jsonb_typeof(details) = 'object'),
  ADD CONSTRAINT sites_version_check CHECK (version >= 1);

ALTER TABLE structures
  ADD CONSTRAINT structures_name_check CHECK (length(name) BETWEEN 1 AND 200),
  ADD CONSTRAINT structures_kind_check CHECK (kind IN ('gableCanopy', 'roundArch', 'leanTo')),
  ADD CONSTRAINT structures_details_check CHECK (jsonb_typeof(details) = 'object'),
  ADD CONSTRAINT structures_version_check CHECK (version >= 1);

ALTER TABLE stock_items
  ADD CONSTRAINT stock_items_tag_check CHECK (length(tag) BETWEEN 1 AND 20),
  ADD CONSTRAINT stock_items_grade_check CHECK (grade IN ('A', 'B', 'C', 'X')),
  ADD CONSTRAINT stock_items_hazards_check CHECK (cardinality(hazards) <= 12),
  ADD CONSTRAINT stock_items_count_check CHECK (count BETWEEN 1 AND 10000),
  ADD CONSTRAINT stock_items_unit_check CHECK (NOT unit_item OR count = 1),
  ADD CONSTRAINT stock_items_details_check CHECK (jsonb_typeof(details) = 'object'),
  ADD CONSTRAINT stock_items_version_check CHECK (version >= 1);

ALTER TABLE stock_claims
  ADD CONSTRAINT stock_claims_count_check CHECK (count BETWEEN 1 AND 10000),
  ADD CONSTRAINT stock_claims_unit_check CHECK (NOT unit_item OR count = 1),
  ADD CONSTRAINT stock_claims_released_check CHECK (released_at IS NULL OR released_at >= created_at),
  ADD CONSTRAINT stock_claims_version_check CHECK (version >= 1),
  -- A single thing cannot be in two builds at once.
  ADD CONSTRAINT stock_claims_one_active EXCLUDE USING btree (garden_id WITH =, stock_item_id WITH =) WHERE (unit_item AND released_at IS NULL);

-- A lot is shared out by count: the active claims together never exceed it. The item row is locked first, so that
-- two claims that arrive together are counted one after the other.
CREATE FUNCTION check_lot_claims() RETURNS trigger LANGUAGE plpgsql SET search_path = pg_catalog, public AS $$
DECLARE
  available integer;
  claimed bigint;
BEGIN
  IF NEW.unit_item OR NEW.released_at IS NOT NULL THEN
    RETURN NEW;
  END IF;
  SELECT count INTO available FROM stock_items WHERE garden_id = NEW.garden_id AND id = NEW.stock_item_id FOR NO KEY UPDATE;
  SELECT coalesce(sum(count), 0) INTO claimed FROM stock_claims
   WHERE garden_id = NEW.garden_id AND stock_item_id = NEW.stock_item_id AND released_at IS NULL AND id <> NEW.id;
  IF claimed + NEW.count > available THEN
    RAISE EXCEPTION 'lot has % left, % wanted', available - claimed, NEW.count USING ERRCODE = 'exclusion_violation', CONSTRAINT = 'stock_claims_lot_count';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER stock_claims_lot_count BEFORE INSERT OR UPDATE ON stock_claims FOR EACH ROW EXECUTE FUNCTION check_lot_claims();

ALTER TABLE prices
  ADD CONSTRAINT prices_pack_amount_check CHECK (pack_amount > 0 AND pack_amount <= 100000),
  ADD CONSTRAINT prices_pack_price_check CHECK (pack_price_minor BETWEEN 0 AND 9000000000000),
  ADD CONSTRAINT prices_currency_check CHECK (currency ~ '^[A-Z]{3}$'),
  ADD CONSTRAINT prices_piece_width_check CHECK (piece_width_m BETWEEN 0.001 AND 100),
  ADD CONSTRAINT prices_piece_length_check CHECK (piece_length_m BETWEEN 0.01 AND 1000),
  ADD CONSTRAINT prices_supplier_check CHECK (length(supplier) BETWEEN 1 AND 80),
  ADD CONSTRAINT prices_version_check CHECK (version >= 1);

ALTER TABLE exchange_rates
  ADD CONSTRAINT exchange_rates_rate_check CHECK (rate > 0 AND rate <= 1e9),
  ADD CONSTRAINT exchange_rates_from_check CHECK (from_currency ~ '^[A-Z]{3}$'),
  ADD CONSTRAINT exchange_rates_to_check CHECK (to_currency ~ '^[A-Z]{3}$' AND to_currency <> from_currency),
  ADD CONSTRAINT exchange_rates_version_check CHECK (version >= 1);

ALTER TABLE builds
  ADD CONSTRAINT builds_name_check CHECK (length(name) BETWEEN 1 AND 200),
  ADD CONSTRAINT builds_variant_check CHECK ((variant_of_id IS NULL) = (variant_label IS NULL) AND variant_of_id <> id),
  ADD CONSTRAINT builds_variant_label_check CHECK (length(variant_label) BETWEEN 1 AND 80),
  ADD CONSTRAINT builds_payload_check CHECK (jsonb_typeof(wishes) = 'object' AND jsonb_typeof(crew) = 'object' AND jsonb_typeof(budget) = 'object'),
  ADD CONSTRAINT builds_version_check CHECK (version >= 1);

ALTER TABLE plan_revisions
  ADD CONSTRAINT plan_revisions_revision_check CHECK (revision BETWEEN 1 AND 100000),
  ADD CONSTRAINT plan_revisions_state_check CHECK (state IN ('computing', 'ready', 'failed')),
  ADD CONSTRAINT plan_revisions_end_check CHECK ((state = 'computing') = (finished_at IS NULL) AND (state = 'failed') = (problem IS NOT NULL)),
  ADD CONSTRAINT plan_revisions_seed_check CHECK (seed BETWEEN 0 AND 4294967295),
  ADD CONSTRAINT plan_revisions_attempt_check CHECK (attempt >= 0),
  ADD CONSTRAINT plan_revisions_sha256_check CHECK (inputs_sha256 ~ '^[0-9a-f]{64}$');

ALTER TABLE plan_results
  ADD CONSTRAINT plan_results_schema_version_check CHECK (schema_version >= 1),
  ADD CONSTRAINT plan_results_attempt_check CHECK (attempt >= 1);

ALTER TABLE plan_reviews
  ADD CONSTRAINT plan_reviews_decision_check CHECK (decision IN ('reviewed', 'changesWanted')),
  ADD CONSTRAINT plan_reviews_reviewer_check CHECK (length(reviewer) BETWEEN 1 AND 200),
  ADD CONSTRAINT plan_reviews_comment_check CHECK (length(comment) BETWEEN 1 AND 2000);

ALTER TABLE plan_staleness
  ADD CONSTRAINT plan_staleness_reason_check CHECK (length(reason) BETWEEN 1 AND 80),
  ADD CONSTRAINT plan_staleness_subject_check CHECK (length(subject) BETWEEN 1 AND 200);

ALTER TABLE plan_as_builts
  ADD CONSTRAINT plan_as_builts_details_check CHECK (jsonb_typeof(details) = 'object');

ALTER TABLE documents
  ADD CONSTRAINT documents_state_check CHECK (state IN ('queued', 'rendering', 'ready', 'failed')),
  ADD CONSTRAINT documents_end_check CHECK ((state IN ('queued', 'rendering')) = (finished_at IS NULL) AND (state = 'failed') = (problem IS NOT NULL)),
  ADD CONSTRAINT documents_ready_check CHECK ((state = 'ready') = (file_id IS NOT NULL)
    AND (state <> 'ready' OR (sha256 IS NOT NULL AND pages IS NOT NULL AND engine_version IS NOT NULL))),
  ADD CONSTRAINT documents_pages_check CHECK (pages BETWEEN 1 AND 2000),
  ADD CONSTRAINT documents_sha256_check CHECK (sha256 ~ '^[0-9a-f]{64}$'),
  ADD CONSTRAINT documents_attempt_check CHECK (attempt >= 0);

ALTER TABLE files
  ADD CONSTRAINT files_name_check CHECK (length(name) BETWEEN 1 AND 200),
  ADD CONSTRAINT files_byte_count_check CHECK (byte_count BETWEEN 1 AND 67108864 AND byte_count = length(content)),
  ADD CONSTRAINT files_sha256_check CHECK (sha256 = encode(sha256(content), 'hex'));

ALTER TABLE idempotency_answers
  ADD CONSTRAINT idempotency_answers_key_check CHECK (length(idempotency_key) BETWEEN 1 AND 255),
  ADD CONSTRAINT idempotency_answers_status_check CHECK (status BETWEEN 200 AND 299);

ALTER TABLE audit_entries
  ADD CONSTRAINT audit_entries_action_check CHECK (length(action) BETWEEN 1 AND 80),
  ADD CONSTRAINT audit_entries_object_check CHECK (length(object_type) BETWEEN 1 AND 80);
