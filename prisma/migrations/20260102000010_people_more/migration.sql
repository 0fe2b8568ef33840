-- How often somebody tried: wrong passwords, and what is counted by the hour or the day. The keys are hashes, so that
-- nobody can read from the table who tried. The application cannot touch it but through the three functions.
CREATE TABLE attempts (
  key bytea PRIMARY KEY,
  count integer NOT NULL,
  since timestamptz(3) NOT NULL,
  last_at timestamptz(3) NOT NULL,
  CONSTRAINT attempts_key_check CHECK (length(key) = 32),
  CONSTRAINT attempts_count_check CHECK (count >= 0)
);
CREATE INDEX attempts_last_at ON attempts (last_at);

-- Takes one try and gives 0, or gives the seconds to wait and takes none. The first so many are free; after that each
-- must wait twice as long as the one before, up to a longest wait. Forgotten after a quiet time. Tries that arrive
-- together are counted one after the other, because the row is held.
CREATE FUNCTION take_attempt(of_key bytea, free_count integer, longest_wait_s integer, forget_s integer)
RETURNS integer LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE
  now_at constant timestamptz := clock_timestamp();
  kept public.attempts;
  wait_s double precision;
BEGIN
  DELETE FROM public.attempts WHERE key IN (SELECT key FROM public.attempts WHERE last_at < now_at - interval '2 days' LIMIT 20 FOR UPDATE SKIP LOCKED);
  INSERT INTO public.attempts (key, count, since, last_at) VALUES (of_key, 0, now_at, now_at) ON CONFLICT (key) DO NOTHING;
  SELECT * INTO kept FROM public.attempts WHERE key = of_key FOR UPDATE;
  IF kept.last_at < now_at - forget_s * interval '1 second' THEN
    kept.count := 0;
  END IF;
  IF kept.count >= free_count THEN
    wait_s := least(longest_wait_s, 2.0 ^ least(kept.count - free_count + 1, 20)) - extract(epoch FROM now_at - kept.last_at);
    IF wait_s > 0 THEN
      RETURN ceil(wait_s)::integer;
    END IF;
  END IF;
  UPDATE public.attempts SET count = kept.count + 1, last_at = now_at WHERE key = of_key;
  RETURN 0;
END $$;

-- Takes one of so many for a stretch of time and gives 0, or gives the seconds until the next stretch and takes none.
CREATE FUNCTION take_quota(of_key bytea, at_most integer, stretch_s integer)
RETURNS integer LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE
  now_at constant timestamptz := clock_timestamp();
  kept public.attempts;
BEGIN
  INSERT INTO public.attempts (key, count, since, last_at) VALUES (of_key, 0, now_at, now_at) ON CONFLICT (key) DO NOTHING;
  SELECT * INTO kept FROM public.attempts WHERE key = of_key FOR UPDATE;
  IF kept.since <= now_at - stretch_s * interval '1 second' THEN
    kept.count := 0;
    kept.since := now_at;
  END IF;
  IF kept.count >= at_most THEN
    RETURN greatest(1, ceil(stretch_s - extract(epoch FROM now_at - kept.since))::integer);
  END IF;
  UPDATE public.attempts SET count = kept.count + 1, since = kept.since, last_at = now_at WHERE key = of_key;
  RETURN 0;
END $$;

-- The right password was given: what went before is forgotten.
CREATE FUNCTION forgive_attempts(of_key bytea)
RETURNS void LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  DELETE FROM public.attempts WHERE key = of_key
$$;

-- Whose link this is, while it is good. It is used up by use_account_token.
CREATE FUNCTION find_account_token(wanted_sha256 bytea, wanted_purpose text)
RETURNS uuid LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT account_id FROM public.account_tokens WHERE sha256 = wanted_sha256 AND purpose = wanted_purpose AND used_at IS NULL AND expires_at > now()
$$;

-- Takes mail that is due, for one sender at a time. A sender that dies gives it back after five minutes. What was sent
-- a month ago is forgotten: it holds addresses.
CREATE FUNCTION claim_mail(at_most integer)
RETURNS TABLE (id uuid, recipient text, subject text, body text, attempts integer) LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  DELETE FROM public.mail_outbox m WHERE m.id IN
    (SELECT o.id FROM public.mail_outbox o WHERE o.state <> 'queued' AND o.created_at < now() - interval '30 days' LIMIT 20 FOR UPDATE SKIP LOCKED);
  RETURN QUERY UPDATE public.mail_outbox m SET attempts = m.attempts + 1, next_attempt_at = now() + interval '5 minutes'
    WHERE m.id IN (SELECT o.id FROM public.mail_outbox o WHERE o.state = 'queued' AND o.next_attempt_at <= now()
                    ORDER BY o.next_attempt_at LIMIT at_most FOR UPDATE SKIP LOCKED)
    RETURNING m.id, m.recipient, m.subject, m.body, m.attempts;
END $$;

-- How one try ended. What will not be tried again loses its body, which may hold a code. Only the newest try may say so.
CREATE FUNCTION end_mail(of_id uuid, of_attempt integer, was_sent boolean, error text, retry_at timestamptz)
RETURNS void LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  UPDATE public.mail_outbox SET
      state = CASE WHEN was_sent THEN 'sent' WHEN retry_at IS NULL THEN 'failed' ELSE 'queued' END,
      body = CASE WHEN was_sent OR retry_at IS NULL THEN '' ELSE body END,
      sent_at = CASE WHEN was_sent THEN now() END,
      last_error = error,
      next_attempt_at = coalesce(retry_at, next_attempt_at)
   WHERE id = of_id AND attempts = of_attempt AND state = 'queued'
$$;

REVOKE ALL ON FUNCTION take_attempt(bytea, integer, integer, integer), take_quota(bytea, integer, integer), forgive_attempts(bytea),
  find_account_token(bytea, text), claim_mail(integer), end_mail(uuid, integer, boolean, text, timestamptz) FROM PUBLIC;
