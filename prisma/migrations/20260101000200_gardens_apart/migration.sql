-- One garden never sees another's rows. The setting app.garden_id lives for one transaction; outside of one it is
-- missing or empty, both of which nullif turns into null, and null equals nothing: no rows.
-- FORCE makes the rule bind the owner of the tables too.
DO $$
DECLARE
  tenant text;
BEGIN
  FOREACH tenant IN ARRAY ARRAY['api_keys', 'sites', 'structures', 'stock_items', 'stock_claims', 'prices', 'exchange_rates', 'builds',
    'plan_revisions', 'plan_results', 'plan_reviews', 'plan_staleness', 'plan_as_builts', 'documents', 'files', 'idempotency_answers', 'audit_entries']
  LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', tenant);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', tenant);
    EXECUTE format($policy$CREATE POLICY own_garden ON %I
      USING (garden_id = nullif(current_setting('app.garden_id', true), '')::uuid)
      WITH CHECK (garden_id = nullif(current_setting('app.garden_id', true), '')::uuid)$policy$, tenant);
  END LOOP;
END $$;

ALTER TABLE gardens ENABLE ROW LEVEL SECURITY;
ALTER TABLE gardens FORCE ROW LEVEL SECURITY;
CREATE POLICY own_garden ON gardens
  USING (id = nullif(current_setting('app.garden_id', true), '')::uuid)
  WITH CHECK (id = nullif(current_setting('app.garden_id', true), '')::uuid);

-- A key is looked up before its garden is known. Only the owner of the tables may read across gardens, only these
-- two tables, and only find_credential (next migration) runs as the owner.
CREATE POLICY credential_lookup ON api_keys FOR SELECT TO CURRENT_USER USING (true);
CREATE POLICY credential_lookup ON gardens FOR SELECT TO CURRENT_USER USING (true);
