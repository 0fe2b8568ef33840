-- Limits that hold for all processes together, and what must be known of the queue from outside it.

-- How many permits a bucket gave out lately, slice by slice. Nothing here is worth keeping: the table is not logged, so
-- that a permit costs no flush, and is empty after a crash. A bucket is the hash of a policy and of whom it counts: no
-- address and no id of anybody stands here. The application has no right on the table, only on the function below.
CREATE UNLOGGED TABLE permit_counts (
  bucket bytea NOT NULL PRIMARY KEY CHECK (octet_length(bucket) = 16),
  slice bigint NOT NULL,
  counts integer[] NOT NULL,
  ends_at timestamptz NOT NULL
) WITH (fillfactor = 50, autovacuum_vacuum_scale_factor = 0.05, autovacuum_vacuum_threshold = 1000);

-- Takes permits from any number of buckets in one round trip. Per bucket: its quota in a window, how many are wanted,
-- and how many of an earlier lease come back unused, with the slice they were taken in. A window has 50 slices; what was
-- given in the newest 52 never exceeds the quota. A permit may be used until one slice after it was given, so no window,
-- wherever it begins, sees more uses than the quota. Times are the database's: the clocks of the processes do not matter.
-- Gives per bucket, in the order asked: how many it got, how many are left, the slice they were taken in, and the
-- milliseconds until the oldest permits return. Rows are locked in the order of their names, so that two callers never
-- wait for each other in a circle.
CREATE FUNCTION take_permits(buckets bytea[], quotas integer[], windows_ms integer[], wanted integer[], unused integer[], unused_slices bigint[], sweep boolean)
RETURNS TABLE (place integer, granted integer, remaining integer, in_slice bigint, returns_ms integer)
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
#variable_conflict use_column
DECLARE
  kept CONSTANT integer := 52;
  per_window CONSTANT integer := 50;
  now_ms bigint;
  slice_ms bigint;
  shift bigint;
  ring integer[];
  newest bigint;
  used integer;
  at integer;
  i integer;
BEGIN
  -- Nothing waits for the disk here.
  SET LOCAL synchronous_commit = off;
  IF sweep THEN
    DELETE FROM public.permit_counts WHERE bucket IN (
      SELECT p.bucket FROM public.permit_counts p WHERE p.ends_at < clock_timestamp() ORDER BY p.bucket LIMIT 5000 FOR UPDATE SKIP LOCKED);
  END IF;
  FOR i IN SELECT o.place FROM unnest(buckets) WITH ORDINALITY AS o(bucket, place) ORDER BY o.bucket LOOP
    INSERT INTO public.permit_counts (bucket, slice, counts, ends_at)
      VALUES (buckets[i], 0, array_fill(0, ARRAY[kept]), clock_timestamp() + make_interval(secs => windows_ms[i] / 1000.0 * 2)) ON CONFLICT (bucket) DO NOTHING;
    SELECT p.slice, p.counts INTO newest, ring FROM public.permit_counts p WHERE p.bucket = buckets[i] FOR UPDATE;
    -- Read after the row is held: who waited for it must not count in a slice that is over.
    slice_ms := greatest(1, windows_ms[i] / per_window);
    now_ms := floor(extract(epoch FROM clock_timestamp()) * 1000);
    shift := now_ms / slice_ms - newest;
    IF newest IS NULL OR abs(shift) >= kept THEN
      -- Long unused, swept a moment ago, or the clock of the database was set.
      ring := array_fill(0, ARRAY[kept]);
      newest := now_ms / slice_ms;
    ELSIF shift > 0 THEN
      ring := ring[shift + 1 : kept] || array_fill(0, ARRAY[shift::integer]);
      newest := newest + shift;
    END IF;
    IF unused[i] > 0 AND newest - unused_slices[i] BETWEEN 0 AND kept - 1 THEN
      at := kept - (newest - unused_slices[i]);
      ring[at] := greatest(0, ring[at] - unused[i]);
    END IF;
    used := (SELECT coalesce(sum(c), 0) FROM unnest(ring) AS c);
    granted := least(wanted[i], greatest(0, quotas[i] - used));
    ring[kept] := ring[kept] + granted;
    place := i;
    in_slice := newest;
    remaining := greatest(0, quotas[i] - used - granted);
    returns_ms := coalesce((SELECT min((newest + o.n) * slice_ms - now_ms) FROM unnest(ring) WITH ORDINALITY AS o(c, n) WHERE o.c > 0), 0);
    UPDATE public.permit_counts p SET slice = newest, counts = ring,
      ends_at = clock_timestamp() + make_interval(secs => windows_ms[i] / 1000.0 * 2) WHERE p.bucket = buckets[i];
    IF NOT FOUND THEN
      INSERT INTO public.permit_counts (bucket, slice, counts, ends_at)
        VALUES (buckets[i], newest, ring, clock_timestamp() + make_interval(secs => windows_ms[i] / 1000.0 * 2)) ON CONFLICT (bucket) DO NOTHING;
    END IF;
    RETURN NEXT;
  END LOOP;
END $$;

-- Puts one job on the queue, in the caller's transaction. It carries the ids of its row, only of the garden the caller is
-- in, and where the request came from: the trace and the request that asked for it, as far as the transaction knows them.
CREATE OR REPLACE FUNCTION enqueue_job(task text, for_garden uuid, for_id uuid)
RETURNS void LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF for_garden IS DISTINCT FROM nullif(current_setting('app.garden_id', true), '')::uuid THEN
    RAISE EXCEPTION 'a job may be queued for the own garden only' USING ERRCODE = 'insufficient_privilege';
  END IF;
  IF task !~ '^[a-z]+(-[a-z]+)*$' OR length(task) > 60 THEN
    RAISE EXCEPTION 'not the name of a task: %', task USING ERRCODE = 'invalid_parameter_value';
  END IF;
  PERFORM graphile_worker.add_job(identifier => task, payload => json_strip_nulls(json_build_object('gardenId', for_garden, 'id', for_id,
    'traceparent', nullif(current_setting('app.traceparent', true), ''), 'requestId', nullif(current_setting('app.request_id', true), ''))), max_attempts => 3);
END $$;

-- The same for a costly job: a garden has so many turns at once and so many jobs that wait; false when there is no room.
-- Each turn is a named queue, and the jobs of one queue run one after the other, in whatever process.
CREATE FUNCTION enqueue_in_turn(task text, for_garden uuid, for_id uuid, turns integer, most_waiting integer)
RETURNS boolean LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE
  standing integer;
  chosen text;
  own_member text := current_setting('app.own_member_id', true);
BEGIN
  IF for_garden IS DISTINCT FROM nullif(current_setting('app.garden_id', true), '')::uuid THEN
    RAISE EXCEPTION 'a job may be queued for the own garden only' USING ERRCODE = 'insufficient_privilege';
  END IF;
  IF task !~ '^[a-z]+(-[a-z]+)*$' OR length(task) > 60 OR turns < 1 THEN
    RAISE EXCEPTION 'not the name of a task: %', task USING ERRCODE = 'invalid_parameter_value';
  END IF;
  -- One after the other, so that two who ask at once do not both get the last place.
  PERFORM pg_advisory_xact_lock(hashtextextended('turns ' || for_garden::text, 11));
  -- All jobs of the garden count, also those the caller may not see; one that was called off leaves the queue only when
  -- its turn comes, and takes no room until then.
  PERFORM set_config('app.own_member_id', '', true);
  SELECT coalesce(sum(t.jobs), 0), (array_agg(t.name ORDER BY t.jobs, t.name))[1] INTO standing, chosen FROM (
    SELECT n.name, count(j.id)::integer AS jobs
      FROM (SELECT 'garden ' || for_garden::text || ' turn ' || s FROM generate_series(1, turns) AS s) AS n(name)
      LEFT JOIN graphile_worker._private_job_queues q ON q.queue_name = n.name
      LEFT JOIN graphile_worker._private_jobs j ON j.job_queue_id = q.id AND (j.locked_at IS NOT NULL OR j.attempts < j.max_attempts)
       AND NOT EXISTS (SELECT 1 FROM public.jobs r WHERE r.garden_id = for_garden AND r.id = (j.payload ->> 'id')::uuid AND r.finished_at IS NOT NULL)
     GROUP BY n.name) AS t;
  PERFORM set_config('app.own_member_id', coalesce(own_member, ''), true);
  IF standing >= turns + most_waiting THEN
    RETURN false;
  END IF;
  PERFORM graphile_worker.add_job(identifier => task, queue_name => chosen, payload => json_strip_nulls(json_build_object('gardenId', for_garden, 'id', for_id,
    'traceparent', nullif(current_setting('app.traceparent', true), ''), 'requestId', nullif(current_setting('app.request_id', true), ''))), max_attempts => 3);
  RETURN true;
END $$;

-- How the queue stands, as numbers: nothing of any job gets out.
CREATE FUNCTION queue_state()
RETURNS TABLE (waiting integer, running integer, oldest_s double precision)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  RETURN QUERY SELECT (count(*) FILTER (WHERE j.locked_at IS NULL AND j.run_at <= now()))::integer, (count(*) FILTER (WHERE j.locked_at IS NOT NULL))::integer,
      coalesce(extract(epoch FROM now() - min(j.run_at) FILTER (WHERE j.locked_at IS NULL AND j.run_at <= now())), 0)::double precision
    FROM graphile_worker._private_jobs j WHERE j.locked_at IS NOT NULL OR j.attempts < j.max_attempts;
END $$;

REVOKE ALL ON FUNCTION take_permits(bytea[], integer[], integer[], integer[], integer[], bigint[], boolean),
  enqueue_in_turn(text, uuid, uuid, integer, integer), queue_state() FROM PUBLIC;
