-- Jobs as everybody may watch them, the outbox of events, and where events are sent.

CREATE TABLE "jobs" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'queued',
    "progress" INTEGER NOT NULL DEFAULT 0,
    "stage" TEXT,
    "attempt" INTEGER NOT NULL DEFAULT 0,
    "problem" JSONB,
    "event_count" INTEGER NOT NULL DEFAULT 0,
    "created_by_id" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "started_at" TIMESTAMPTZ(3),
    "finished_at" TIMESTAMPTZ(3),

    CONSTRAINT "jobs_pkey" PRIMARY KEY ("garden_id","id")
);

CREATE TABLE "job_events" (
    "garden_id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "state" TEXT NOT NULL,
    "progress" INTEGER NOT NULL,
    "stage" TEXT,
    "attempt" INTEGER NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT clock_timestamp(),

    CONSTRAINT "job_events_pkey" PRIMARY KEY ("garden_id","job_id","number")
);

CREATE TABLE "hook_events" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "type" TEXT NOT NULL,
    "object_type" TEXT NOT NULL,
    "object_id" UUID NOT NULL,
    "object_version" INTEGER NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "hook_events_pkey" PRIMARY KEY ("garden_id","id")
);

CREATE TABLE "webhooks" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "url" TEXT NOT NULL,
    "description" TEXT,
    "event_types" TEXT[],
    "state" TEXT NOT NULL DEFAULT 'active',
    "failing_since" TIMESTAMPTZ(3),
    "secret_sealed" BYTEA,
    "former_secret_sealed" BYTEA,
    "former_secret_until" TIMESTAMPTZ(3),
    "created_by_id" UUID,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "removed_at" TIMESTAMPTZ(3),

    CONSTRAINT "webhooks_pkey" PRIMARY KEY ("garden_id","id")
);

CREATE TABLE "webhook_deliveries" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "webhook_id" UUID NOT NULL,
    "event_id" UUID NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'waiting',
    "next_attempt_at" TIMESTAMPTZ(3),
    "claim_count" INTEGER NOT NULL DEFAULT 0,
    "claimed_until" TIMESTAMPTZ(3),
    "attempts" JSONB NOT NULL DEFAULT '[]',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "finished_at" TIMESTAMPTZ(3),

    CONSTRAINT "webhook_deliveries_pkey" PRIMARY KEY ("garden_id","id")
);

CREATE INDEX "jobs_garden_id_state_id_idx" ON "jobs"("garden_id", "state", "id");
CREATE INDEX "hook_events_garden_id_object_id_idx" ON "hook_events"("garden_id", "object_id");
CREATE INDEX "webhook_deliveries_garden_id_webhook_id_id_idx" ON "webhook_deliveries"("garden_id", "webhook_id", "id");
CREATE INDEX "webhook_deliveries_garden_id_event_id_idx" ON "webhook_deliveries"("garden_id", "event_id");
-- What is due over all gardens, and what is being sent.
CREATE INDEX webhook_deliveries_due_idx ON webhook_deliveries (next_attempt_at) WHERE state = 'waiting';

ALTER TABLE "jobs" ADD CONSTRAINT "jobs_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "job_events" ADD CONSTRAINT "job_events_garden_id_job_id_fkey" FOREIGN KEY ("garden_id", "job_id") REFERENCES "jobs"("garden_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "hook_events" ADD CONSTRAINT "hook_events_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "webhooks" ADD CONSTRAINT "webhooks_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "webhook_deliveries" ADD CONSTRAINT "webhook_deliveries_garden_id_webhook_id_fkey" FOREIGN KEY ("garden_id", "webhook_id") REFERENCES "webhooks"("garden_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "webhook_deliveries" ADD CONSTRAINT "webhook_deliveries_garden_id_event_id_fkey" FOREIGN KEY ("garden_id", "event_id") REFERENCES "hook_events"("garden_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE jobs
  ADD CONSTRAINT jobs_kind_check CHECK (kind ~ '^[a-z]+(-[a-z]+)*$' AND length(kind) <= 60),
  ADD CONSTRAINT jobs_state_check CHECK (state IN ('queued', 'running', 'succeeded', 'failed', 'cancelled')),
  ADD CONSTRAINT jobs_end_check CHECK ((state IN ('queued', 'running')) = (finished_at IS NULL) AND (state IN ('failed', 'cancelled')) = (problem IS NOT NULL)),
  ADD CONSTRAINT jobs_progress_check CHECK (progress BETWEEN 0 AND 100 AND (state <> 'succeeded' OR progress = 100)),
  ADD CONSTRAINT jobs_stage_check CHECK (stage ~ '^[a-z][a-zA-Z]*$' AND length(stage) <= 40),
  ADD CONSTRAINT jobs_attempt_check CHECK (attempt >= 0 AND (state <> 'running' OR attempt >= 1));

ALTER TABLE job_events
  ADD CONSTRAINT job_events_number_check CHECK (number >= 1);

ALTER TABLE hook_events
  ADD CONSTRAINT hook_events_type_check CHECK (type ~ '^[a-z]+(\.[a-z]+)+$' AND length(type) <= 60),
  ADD CONSTRAINT hook_events_object_check CHECK (length(object_type) BETWEEN 1 AND 60),
  ADD CONSTRAINT hook_events_version_check CHECK (object_version >= 1);

ALTER TABLE webhooks
  ADD CONSTRAINT webhooks_url_check CHECK (length(url) BETWEEN 8 AND 2000),
  ADD CONSTRAINT webhooks_description_check CHECK (length(description) BETWEEN 1 AND 200),
  ADD CONSTRAINT webhooks_event_types_check CHECK (cardinality(event_types) BETWEEN 1 AND 50),
  ADD CONSTRAINT webhooks_state_check CHECK (state IN ('active', 'disabled')),
  -- The secret goes with the webhook.
  ADD CONSTRAINT webhooks_secret_check CHECK ((removed_at IS NULL) = (secret_sealed IS NOT NULL) AND (removed_at IS NULL OR former_secret_sealed IS NULL)),
  ADD CONSTRAINT webhooks_former_check CHECK ((former_secret_sealed IS NULL) = (former_secret_until IS NULL)),
  ADD CONSTRAINT webhooks_version_check CHECK (version >= 1);

ALTER TABLE webhook_deliveries
  ADD CONSTRAINT webhook_deliveries_state_check CHECK (state IN ('waiting', 'delivered', 'failed', 'cancelled')),
  ADD CONSTRAINT webhook_deliveries_end_check CHECK ((state = 'waiting') = (finished_at IS NULL) AND (state = 'waiting') = (next_attempt_at IS NOT NULL)),
  ADD CONSTRAINT webhook_deliveries_attempts_check CHECK (jsonb_typeof(attempts) = 'array' AND jsonb_array_length(attempts) <= 20);

DO $$
DECLARE
  tenant text;
BEGIN
  FOREACH tenant IN ARRAY ARRAY['jobs', 'job_events', 'hook_events', 'webhooks', 'webhook_deliveries']
  LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', tenant);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', tenant);
    EXECUTE format($policy$CREATE POLICY own_garden ON %I
      USING (garden_id = nullif(current_setting('app.garden_id', true), '')::uuid)
      WITH CHECK (garden_id = nullif(current_setting('app.garden_id', true), '')::uuid)$policy$, tenant);
  END LOOP;
END $$;

-- A job is as visible as the plan or document it makes; any other is its maker's. What reaches only own rows changes own
-- jobs only.
CREATE POLICY own_rows_read ON jobs AS RESTRICTIVE FOR SELECT USING (nullif(current_setting('app.own_member_id', true), '') IS NULL
  OR created_by_id = nullif(current_setting('app.own_member_id', true), '')::uuid
  OR EXISTS (SELECT 1 FROM plan_revisions p WHERE p.garden_id = jobs.garden_id AND p.id = jobs.id)
  OR EXISTS (SELECT 1 FROM documents d WHERE d.garden_id = jobs.garden_id AND d.id = jobs.id));
CREATE POLICY own_rows_change ON jobs AS RESTRICTIVE FOR UPDATE USING (nullif(current_setting('app.own_member_id', true), '') IS NULL
  OR created_by_id = nullif(current_setting('app.own_member_id', true), '')::uuid);
CREATE POLICY own_rows_read ON job_events AS RESTRICTIVE FOR SELECT USING (nullif(current_setting('app.own_member_id', true), '') IS NULL
  OR EXISTS (SELECT 1 FROM jobs j WHERE j.garden_id = job_events.garden_id AND j.id = job_events.job_id));

-- A job moves one way only, whoever writes it: an end is an end, progress never falls, and each change gets a number.
CREATE FUNCTION number_job_change() RETURNS trigger LANGUAGE plpgsql SET search_path = pg_catalog, public AS $$
BEGIN
  IF TG_OP = 'INSERT' THEN
    NEW.event_count := 1;
    RETURN NEW;
  END IF;
  IF OLD.finished_at IS NOT NULL THEN
    RAISE EXCEPTION 'job % is % already', OLD.id, OLD.state USING ERRCODE = 'check_violation', CONSTRAINT = 'jobs_end_is_final';
  END IF;
  IF NEW.progress < OLD.progress OR NEW.attempt < OLD.attempt THEN
    RAISE EXCEPTION 'job % cannot fall back', OLD.id USING ERRCODE = 'check_violation', CONSTRAINT = 'jobs_never_fall';
  END IF;
  IF (NEW.state, NEW.progress, NEW.stage, NEW.attempt) IS DISTINCT FROM (OLD.state, OLD.progress, OLD.stage, OLD.attempt) THEN
    NEW.event_count := OLD.event_count + 1;
  END IF;
  RETURN NEW;
END $$;

-- The row of a job is held until its transaction ends, so the events of one job are committed in the order of their numbers.
CREATE FUNCTION keep_job_event() RETURNS trigger LANGUAGE plpgsql SET search_path = pg_catalog, public AS $$
BEGIN
  IF TG_OP = 'INSERT' OR NEW.event_count <> OLD.event_count THEN
    INSERT INTO job_events (garden_id, job_id, number, state, progress, stage, attempt)
      VALUES (NEW.garden_id, NEW.id, NEW.event_count, NEW.state, NEW.progress, NEW.stage, NEW.attempt);
    PERFORM pg_notify('lathwork_jobs', NEW.id || ' ' || NEW.state);
  END IF;
  RETURN NULL;
END $$;

CREATE TRIGGER jobs_number_change BEFORE INSERT OR UPDATE ON jobs FOR EACH ROW EXECUTE FUNCTION number_job_change();
CREATE TRIGGER jobs_keep_event AFTER INSERT OR UPDATE ON jobs FOR EACH ROW EXECUTE FUNCTION keep_job_event();

-- Deliveries fall due in all gardens. The owner of the tables sees them only while the function below runs; it gives
-- out nothing but the ids of what was claimed.
CREATE POLICY deliverer ON webhook_deliveries TO CURRENT_USER
  USING (current_setting('app.claims_deliveries', true) = 'yes')
  WITH CHECK (current_setting('app.claims_deliveries', true) = 'yes');

-- Takes deliveries that are due, each for one sender: two senders never get the same one, none waits for the other, and
-- a sender that dies gives its own back when its time is over. One slow address holds at most four senders.
CREATE FUNCTION claim_deliveries(due_at timestamptz, claim_until timestamptz, at_most integer)
RETURNS TABLE (garden_id uuid, id uuid, claim_count integer) LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE
  former text := current_setting('app.claims_deliveries', true);
BEGIN
  PERFORM set_config('app.claims_deliveries', 'yes', true);
  RETURN QUERY
    WITH busy AS (
      SELECT d.garden_id, d.webhook_id, count(*) AS n FROM public.webhook_deliveries d
       WHERE d.state = 'waiting' AND d.claimed_until > due_at GROUP BY 1, 2
    ), due AS (
      SELECT d.garden_id, d.id, d.next_attempt_at,
             row_number() OVER (PARTITION BY d.garden_id, d.webhook_id ORDER BY d.next_attempt_at, d.id) + coalesce(b.n, 0) AS place
        FROM public.webhook_deliveries d LEFT JOIN busy b ON b.garden_id = d.garden_id AND b.webhook_id = d.webhook_id
       WHERE d.state = 'waiting' AND d.next_attempt_at <= due_at AND (d.claimed_until IS NULL OR d.claimed_until <= due_at)
    ), picked AS (
      SELECT d.garden_id, d.id FROM public.webhook_deliveries d JOIN due ON due.garden_id = d.garden_id AND due.id = d.id
       WHERE due.place <= 4 AND d.state = 'waiting' AND (d.claimed_until IS NULL OR d.claimed_until <= due_at)
       ORDER BY due.next_attempt_at, due.id LIMIT at_most FOR UPDATE OF d SKIP LOCKED
    )
    UPDATE public.webhook_deliveries d SET claim_count = d.claim_count + 1, claimed_until = claim_until
      FROM picked WHERE d.garden_id = picked.garden_id AND d.id = picked.id
    RETURNING d.garden_id, d.id, d.claim_count;
  PERFORM set_config('app.claims_deliveries', coalesce(former, ''), true);
END $$;

REVOKE ALL ON FUNCTION claim_deliveries(timestamptz, timestamptz, integer), number_job_change(), keep_job_event() FROM PUBLIC;
