-- What the application's role may do, and nothing besides. Applied at every start after the migrations, to the role
-- named by the setting lathwork.app_role; no password is ever written here. What is not granted cannot happen:
-- finished results, reviews, files and audit entries are never changed, and little but files is ever deleted.
DO $$
DECLARE
  app text := current_setting('lathwork.app_role');
  granted record;
BEGIN
  EXECUTE format('REVOKE ALL ON ALL TABLES IN SCHEMA public FROM %I', app);
  EXECUTE format('GRANT USAGE ON SCHEMA public TO %I', app);
  FOR granted IN SELECT * FROM (VALUES
    ('SELECT', ARRAY['climate_stations', 'seed_states', 'audit_links']),
    ('SELECT, INSERT', ARRAY['plan_results', 'plan_reviews', 'plan_staleness', 'plan_as_builts', 'audit_entries', 'account_events', 'job_events', 'hook_events', 'consents']),
    ('INSERT', ARRAY['mail_outbox']),
    ('SELECT, INSERT, UPDATE', ARRAY['sites', 'structures', 'stock_items', 'stock_claims', 'prices', 'exchange_rates', 'builds', 'accounts', 'members', 'invitations']),
    ('SELECT, INSERT, UPDATE (last_seen_at, revoked_at)', ARRAY['account_sessions']),
    ('SELECT, INSERT, UPDATE (used_at)', ARRAY['account_tokens']),
    ('SELECT, INSERT, UPDATE, DELETE', ARRAY['account_factors', 'member_privates']),
    ('SELECT, INSERT, DELETE', ARRAY['idempotency_answers', 'photos', 'files']),
    ('SELECT, UPDATE (name, locale, currency, unit_system, coordinator_limit_minor, treasurer_limit_minor, version, updated_at, archived_at)', ARRAY['gardens']),
    ('SELECT, INSERT, UPDATE (name, last_used_at, revoked_at, version)', ARRAY['api_keys']),
    ('SELECT, INSERT, UPDATE (state, progress, stage, attempt, problem, event_count, started_at, finished_at)', ARRAY['jobs']),
    ('SELECT, INSERT, UPDATE (url, description, event_types, state, failing_since, secret_sealed, former_secret_sealed, former_secret_until, version, updated_at, removed_at)', ARRAY['webhooks']),
    ('SELECT, INSERT, UPDATE (state, next_attempt_at, claimed_until, attempts, finished_at)', ARRAY['webhook_deliveries']),
    ('SELECT, INSERT, UPDATE (state, decided_by_id, decided_at, remark, version)', ARRAY['spend_requests']),
    ('SELECT, INSERT, UPDATE (state, attempt, file_id, sha256, byte_count, problem, started_at, finished_at, expires_at)', ARRAY['garden_exports']),
    ('SELECT, INSERT, UPDATE (state, attempt, problem, started_at, finished_at)', ARRAY['plan_revisions']),
    ('SELECT, INSERT, UPDATE (state, attempt, sha256, pages, engine_version, file_id, problem, started_at, finished_at)', ARRAY['documents'])
  ) AS list (rights, tables)
  LOOP
    EXECUTE format('GRANT %s ON %s TO %I', granted.rights, (SELECT string_agg(format('public.%I', t), ', ') FROM unnest(granted.tables) AS t), app);
  END LOOP;
  EXECUTE format('GRANT SELECT ON public._prisma_migrations TO %I', app);
  EXECUTE format('GRANT EXECUTE ON FUNCTION public.find_credential(text), public.enqueue_job(text, uuid, uuid), public.enqueue_in_turn(text, uuid, uuid, integer, integer),
    public.queue_state(), public.take_permits(bytea[], integer[], integer[], integer[], integer[], bigint[], boolean), public.find_session(bytea, uuid),
    public.touch_session(bytea), public.find_account(text), public.use_account_token(bytea, text), public.find_invitation(bytea),
    public.gardens_of_account(), public.erase_account(boolean), public.build_is_writable(uuid, uuid), public.claim_deliveries(timestamptz, timestamptz, integer), public.create_garden(uuid, text, text, text, text, boolean, uuid, text) TO %I', app);
  EXECUTE format('GRANT EXECUTE ON FUNCTION public.take_attempt(bytea, integer, integer, integer), public.take_quota(bytea, integer, integer),
    public.forgive_attempts(bytea), public.find_account_token(bytea, text), public.claim_mail(integer),
    public.end_mail(uuid, integer, boolean, text, timestamptz) TO %I', app);
END $$;
