-- What the application's role may do, and nothing besides. Applied at every start after the migrations, to the role
-- named by the setting lathwork.app_role; no password is ever written here. What is not granted cannot happen:
-- finished results, reviews, files and audit entries are never changed, and almost nothing is ever deleted.
DO $$
DECLARE
  app text := current_setting('lathwork.app_role');
  granted record;
BEGIN
  EXECUTE format('REVOKE ALL ON ALL TABLES IN SCHEMA public FROM %I', app);
  EXECUTE format('GRANT USAGE ON SCHEMA public TO %I', app);
  FOR granted IN SELECT * FROM (VALUES
    ('SELECT', ARRAY['climate_stations', 'seed_states']),
    ('SELECT, INSERT', ARRAY['plan_results', 'plan_reviews', 'plan_staleness', 'plan_as_builts', 'files', 'audit_entries']),
    ('SELECT, INSERT, UPDATE', ARRAY['sites', 'structures', 'stock_items', 'stock_claims', 'prices', 'exchange_rates', 'builds']),
    ('SELECT, INSERT, DELETE', ARRAY['idempotency_answers']),
    ('SELECT, UPDATE (name, locale, currency, unit_system, version, updated_at, archived_at)', ARRAY['gardens']),
    ('SELECT, INSERT, UPDATE (name, last_used_at, revoked_at, version)', ARRAY['api_keys']),
    ('SELECT, INSERT, UPDATE (state, attempt, problem, started_at, finished_at)', ARRAY['plan_revisions']),
    ('SELECT, INSERT, UPDATE (state, attempt, sha256, pages, engine_version, file_id, problem, started_at, finished_at)', ARRAY['documents'])
  ) AS list (rights, tables)
  LOOP
    EXECUTE format('GRANT %s ON %s TO %I', granted.rights, (SELECT string_agg(format('public.%I', t), ', ') FROM unnest(granted.tables) AS t), app);
  END LOOP;
  EXECUTE format('GRANT SELECT ON public._prisma_migrations TO %I', app);
  EXECUTE format('GRANT EXECUTE ON FUNCTION public.find_credential(text), public.enqueue_job(text, uuid, uuid),
    public.create_garden(uuid, text, text, text, text, boolean, uuid, text, text, bytea, text[], uuid, text) TO %I', app);
END $$;
