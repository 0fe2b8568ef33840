-- What is private of a member, what each has agreed to, exports of a garden, and how a person is erased.

-- Who agreed to what, in which words. Added to, never changed: the newest row of a purpose is what holds.
CREATE TABLE consents (
  garden_id uuid NOT NULL REFERENCES gardens (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  id uuid NOT NULL,
  member_id uuid NOT NULL,
  purpose text NOT NULL,
  -- false: taken back
  given boolean NOT NULL,
  wording_version integer NOT NULL,
  -- The very words that were agreed to.
  wording text NOT NULL,
  request_id text,
  created_at timestamptz(3) NOT NULL DEFAULT now(),
  PRIMARY KEY (garden_id, id),
  FOREIGN KEY (garden_id, member_id) REFERENCES members (garden_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT consents_purpose_check CHECK (purpose IN ('exactLocation', 'photoRelease', 'contactSharing', 'healthToLeader', 'shareWithExtension', 'nameOnPrint')),
  CONSTRAINT consents_wording_version_check CHECK (wording_version >= 1),
  CONSTRAINT consents_wording_check CHECK (length(wording) BETWEEN 1 AND 2000)
);
CREATE INDEX consents_newest ON consents (garden_id, member_id, purpose, id DESC);

-- Sealed with the secret of the server, bound to the member: a copy of the database alone tells nothing.
CREATE TABLE member_privates (
  garden_id uuid NOT NULL REFERENCES gardens (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  member_id uuid NOT NULL,
  details_sealed bytea NOT NULL,
  -- Apart, because with consent somebody else reads this and nothing of the rest.
  health_sealed bytea,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz(3) NOT NULL DEFAULT now(),
  updated_at timestamptz(3) NOT NULL DEFAULT now(),
  PRIMARY KEY (garden_id, member_id),
  FOREIGN KEY (garden_id, member_id) REFERENCES members (garden_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT member_privates_details_check CHECK (length(details_sealed) BETWEEN 29 AND 40000),
  CONSTRAINT member_privates_health_check CHECK (length(health_sealed) BETWEEN 29 AND 20000),
  CONSTRAINT member_privates_version_check CHECK (version >= 1)
);

-- A whole garden packed for taking elsewhere. The bytes go after a day.
CREATE TABLE garden_exports (
  garden_id uuid NOT NULL REFERENCES gardens (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  id uuid NOT NULL,
  -- queued, packing, ready or failed
  state text NOT NULL DEFAULT 'queued',
  with_files boolean NOT NULL,
  attempt integer NOT NULL DEFAULT 0,
  file_id uuid,
  sha256 text,
  byte_count integer,
  problem jsonb,
  created_by_id uuid,
  created_at timestamptz(3) NOT NULL DEFAULT now(),
  started_at timestamptz(3),
  finished_at timestamptz(3),
  expires_at timestamptz(3),
  PRIMARY KEY (garden_id, id),
  FOREIGN KEY (garden_id, file_id) REFERENCES files (garden_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT garden_exports_state_check CHECK (state IN ('queued', 'packing', 'ready', 'failed')),
  CONSTRAINT garden_exports_end_check CHECK ((state IN ('queued', 'packing')) = (finished_at IS NULL) AND (state = 'failed') = (problem IS NOT NULL)),
  CONSTRAINT garden_exports_ready_check CHECK ((state = 'ready') = (expires_at IS NOT NULL) AND (file_id IS NULL OR state = 'ready')),
  CONSTRAINT garden_exports_sha256_check CHECK (sha256 ~ '^[0-9a-f]{64}$'),
  CONSTRAINT garden_exports_byte_count_check CHECK (byte_count BETWEEN 1 AND 67108864),
  CONSTRAINT garden_exports_attempt_check CHECK (attempt >= 0)
);
CREATE INDEX garden_exports_file ON garden_exports (garden_id, file_id);

DO $$
DECLARE
  tenant text;
BEGIN
  FOREACH tenant IN ARRAY ARRAY['consents', 'member_privates', 'garden_exports']
  LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', tenant);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', tenant);
    EXECUTE format($policy$CREATE POLICY own_garden ON %I
      USING (garden_id = nullif(current_setting('app.garden_id', true), '')::uuid)
      WITH CHECK (garden_id = nullif(current_setting('app.garden_id', true), '')::uuid)$policy$, tenant);
  END LOOP;
END $$;

-- Where an operation reaches only a person's own rows, nobody else's private details exist, and nobody agrees for
-- another. Whether somebody has agreed may be asked by all: it is what their wishes are kept by.
CREATE POLICY own_rows ON member_privates AS RESTRICTIVE
  USING (nullif(current_setting('app.own_member_id', true), '') IS NULL OR member_id = nullif(current_setting('app.own_member_id', true), '')::uuid);
CREATE POLICY own_rows_add ON consents AS RESTRICTIVE FOR INSERT
  WITH CHECK (nullif(current_setting('app.own_member_id', true), '') IS NULL OR member_id = nullif(current_setting('app.own_member_id', true), '')::uuid);

-- A text without the names and addresses of a person. Whole words where a name is made of them.
CREATE FUNCTION without_names(old_text text, names text[]) RETURNS text LANGUAGE plpgsql IMMUTABLE SET search_path = pg_catalog, pg_temp AS $$
DECLARE
  name text;
BEGIN
  FOREACH name IN ARRAY names LOOP
    IF name ~ '^\w' AND name ~ '\w$' THEN
      old_text := regexp_replace(old_text, '\m' || regexp_replace(name, '([^\w\s])', '\\\1', 'g') || '\M', 'former member', 'gi');
    ELSE
      old_text := replace(old_text, name, 'former member');
    END IF;
  END LOOP;
  RETURN old_text;
END $$;

-- The same for JSON. In there a name is written with its quotes and backslashes escaped.
CREATE FUNCTION json_without_names(old_json jsonb, names text[]) RETURNS jsonb LANGUAGE sql IMMUTABLE SET search_path = pg_catalog, pg_temp AS $$
  SELECT public.without_names(old_json::text, ARRAY(SELECT substring(to_jsonb(n)::text FROM 2 FOR length(to_jsonb(n)::text) - 2) FROM unnest(names) AS n))::jsonb
$$;

-- What one garden keeps of a member who is erased: money and safety records, without names and without the place.
CREATE FUNCTION erase_member(of_garden uuid, of_member uuid, names text[]) RETURNS void LANGUAGE plpgsql SET search_path = pg_catalog, pg_temp AS $$
DECLARE
  former constant text := 'former member';
  overtaken constant jsonb := jsonb_build_object('type', '/v1/problems/job-cancelled', 'title', 'Called off', 'status', 409,
    'detail', 'A member was erased while it ran.', 'remedy', 'Ask for it again.');
  keys uuid[];
  own_sites uuid[];
  own_structures uuid[];
  own_builds uuid[];
  papers uuid[];
  pictures uuid[];
BEGIN
  PERFORM set_config('app.garden_id', of_garden::text, true);
  keys := ARRAY(SELECT id FROM public.api_keys WHERE garden_id = of_garden AND created_by_member_id = of_member);
  -- Also what they made and left behind unshared when they left the garden.
  own_sites := ARRAY(SELECT s.id FROM public.sites s WHERE s.garden_id = of_garden AND (s.owner_member_id = of_member
    OR (s.owner_member_id IS NULL AND NOT s.shared AND EXISTS (SELECT 1 FROM public.audit_entries e
      WHERE e.garden_id = of_garden AND e.object_type = 'site' AND e.object_id = s.id AND e.action = 'site.create' AND e.member_id = of_member))));
  own_structures := ARRAY(SELECT s.id FROM public.structures s WHERE s.garden_id = of_garden AND (s.owner_member_id = of_member
    OR (s.owner_member_id IS NULL AND NOT s.shared AND EXISTS (SELECT 1 FROM public.audit_entries e
      WHERE e.garden_id = of_garden AND e.object_type = 'structure' AND e.object_id = s.id AND e.action = 'structure.create' AND e.member_id = of_member))));
  own_builds := ARRAY(SELECT b.id FROM public.builds b WHERE b.garden_id = of_garden AND (b.owner_member_id = of_member
    OR (b.owner_member_id IS NULL AND NOT b.shared AND EXISTS (SELECT 1 FROM public.audit_entries e
      WHERE e.garden_id = of_garden AND e.object_type = 'build' AND e.object_id = b.id AND e.action = 'build.create' AND e.member_id = of_member))));

  -- Printed pages carry names and places and can be printed again; packed gardens too.
  papers := ARRAY(SELECT d.id FROM public.documents d JOIN public.plan_revisions p ON p.garden_id = d.garden_id AND p.id = d.plan_id
    JOIN public.builds b ON b.garden_id = p.garden_id AND b.id = p.build_id
    WHERE d.garden_id = of_garden AND (d.created_by_id = of_member OR p.created_by_id = of_member OR b.id = ANY (own_builds) OR b.site_id = ANY (own_sites)
      OR EXISTS (SELECT 1 FROM public.plan_reviews r WHERE r.garden_id = of_garden AND r.plan_id = p.id AND r.created_by_id = of_member)));
  pictures := ARRAY(SELECT file_id FROM public.documents WHERE garden_id = of_garden AND id = ANY (papers) AND file_id IS NOT NULL
    UNION SELECT file_id FROM public.garden_exports WHERE garden_id = of_garden AND file_id IS NOT NULL
    UNION SELECT file_id FROM public.photos WHERE garden_id = of_garden AND shows_people AND uploaded_by_id = of_member);
  DELETE FROM public.documents WHERE garden_id = of_garden AND id = ANY (papers);
  UPDATE public.garden_exports SET file_id = NULL WHERE garden_id = of_garden AND file_id IS NOT NULL;
  -- What is being made at this moment was begun with the names: its worker finds the row finished or gone and writes nothing.
  UPDATE public.jobs j SET state = 'cancelled', problem = overtaken, finished_at = now() WHERE j.garden_id = of_garden AND j.finished_at IS NULL
    AND (j.id = ANY (papers) OR EXISTS (SELECT 1 FROM public.garden_exports x WHERE x.garden_id = of_garden AND x.id = j.id));
  UPDATE public.garden_exports SET state = 'failed', problem = overtaken, finished_at = now(), attempt = attempt + 1 WHERE garden_id = of_garden AND finished_at IS NULL;
  DELETE FROM public.photos WHERE garden_id = of_garden AND file_id = ANY (pictures);
  DELETE FROM public.files f WHERE f.garden_id = of_garden AND f.id = ANY (pictures)
    AND NOT EXISTS (SELECT 1 FROM public.documents d WHERE d.garden_id = of_garden AND d.file_id = f.id);

  -- What was held for a build of theirs alone goes back to the pile.
  UPDATE public.stock_claims c SET released_at = now(), version = version + 1 WHERE c.garden_id = of_garden AND c.released_at IS NULL
    AND EXISTS (SELECT 1 FROM public.builds b WHERE b.garden_id = of_garden AND b.id = c.build_id AND b.id = ANY (own_builds) AND NOT b.shared);
  UPDATE public.sites SET name = former || '’s place ' || right(id::text, 12), owner_member_id = NULL,
      latitude_deg = round(latitude_deg::numeric, 2), longitude_deg = round(longitude_deg::numeric, 2),
      details = public.json_without_names(((details #- '{asTyped,/latitudeDeg}') #- '{asTyped,/longitudeDeg}') || '{"outline": null}', names),
      archived_at = coalesce(archived_at, CASE WHEN NOT shared THEN now() END), version = version + 1, updated_at = now()
    WHERE garden_id = of_garden AND id = ANY (own_sites);
  UPDATE public.structures SET name = former || '’s shelter ' || right(id::text, 12), owner_member_id = NULL,
      archived_at = coalesce(archived_at, CASE WHEN NOT shared THEN now() END), version = version + 1, updated_at = now()
    WHERE garden_id = of_garden AND id = ANY (own_structures);
  UPDATE public.builds SET name = former || '’s build ' || right(id::text, 12), owner_member_id = NULL,
      variant_label = CASE WHEN variant_label IS NOT NULL THEN 'variant' END,
      archived_at = coalesce(archived_at, CASE WHEN NOT shared THEN now() END), version = version + 1, updated_at = now()
    WHERE garden_id = of_garden AND id = ANY (own_builds);

  -- Their own words of themselves, and what others wrote of them.
  UPDATE public.plan_reviews SET reviewer = former WHERE garden_id = of_garden AND created_by_id = of_member;
  UPDATE public.plan_reviews SET reviewer = public.without_names(reviewer, names), comment = public.without_names(comment, names)
    WHERE garden_id = of_garden AND (reviewer, comment) IS DISTINCT FROM (public.without_names(reviewer, names), public.without_names(comment, names));
  UPDATE public.plan_as_builts SET details = public.json_without_names(details, names)
    WHERE garden_id = of_garden AND details <> public.json_without_names(details, names);
  UPDATE public.plan_revisions SET inputs = public.json_without_names(inputs, names)
    WHERE garden_id = of_garden AND inputs <> public.json_without_names(inputs, names);
  UPDATE public.plan_results SET result = public.json_without_names(result, names)
    WHERE garden_id = of_garden AND result <> public.json_without_names(result, names);
  UPDATE public.photos SET caption = public.without_names(caption, names) WHERE garden_id = of_garden AND caption <> public.without_names(caption, names);
  UPDATE public.spend_requests SET purpose = public.without_names(purpose, names), remark = public.without_names(remark, names)
    WHERE garden_id = of_garden AND (purpose, remark) IS DISTINCT FROM (public.without_names(purpose, names), public.without_names(remark, names));
  UPDATE public.builds SET name = public.without_names(name, names), variant_label = left(public.without_names(variant_label, names), 80),
      budget = public.json_without_names(budget, names)
    WHERE garden_id = of_garden AND (name, variant_label, budget) IS DISTINCT FROM
      (public.without_names(name, names), public.without_names(variant_label, names), public.json_without_names(budget, names));
  UPDATE public.structures SET name = left(public.without_names(name, names), 200), details = public.json_without_names(details, names)
    WHERE garden_id = of_garden AND (name, details) IS DISTINCT FROM (public.without_names(name, names), public.json_without_names(details, names));
  UPDATE public.sites SET name = left(public.without_names(name, names) || ' ' || right(id::text, 12), 200), details = public.json_without_names(details, names)
    WHERE garden_id = of_garden AND (name, details) IS DISTINCT FROM (public.without_names(name, names), public.json_without_names(details, names));

  UPDATE public.api_keys SET name = former || '’s key', revoked_at = coalesce(revoked_at, now()), version = version + 1 WHERE garden_id = of_garden AND id = ANY (keys);
  DELETE FROM public.member_privates WHERE garden_id = of_garden AND member_id = of_member;
  DELETE FROM public.idempotency_answers i WHERE i.garden_id = of_garden AND (i.credential_id = ANY (keys) OR i.body <> public.without_names(i.body, names));
  UPDATE public.members SET name = former, left_at = coalesce(left_at, now()), roles = ARRAY['member'], version = version + 1, updated_at = now()
    WHERE garden_id = of_garden AND id = of_member;
END $$;

-- Erases the person that the transaction has named, everywhere, or tells in which garden something stands in the way and
-- changes nothing. Gives the gardens in which something was changed, for the history of each.
CREATE FUNCTION erase_account(close_empty boolean)
RETURNS TABLE (garden_id uuid, member_id uuid, hindrance text) LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE
  person constant uuid := nullif(current_setting('app.account_id', true), '')::uuid;
  caller_garden constant text := current_setting('app.garden_id', true);
  kept public.accounts;
  names text[];
  sessions uuid[];
  one record;
BEGIN
  SELECT a.* INTO kept FROM public.accounts a WHERE a.id = person AND a.erased_at IS NULL FOR UPDATE;
  IF NOT FOUND THEN
    RETURN;
  END IF;
  FOR one IN SELECT m.garden_id FROM public.members m WHERE m.account_id = person ORDER BY 1 LOOP
    PERFORM pg_advisory_xact_lock(hashtextextended('members of ' || one.garden_id::text, 11));
  END LOOP;

  RETURN QUERY SELECT m.garden_id, m.id, CASE WHEN others.n > 0 THEN 'last-coordinator' ELSE 'last-member' END
    FROM public.members m JOIN public.gardens g ON g.id = m.garden_id,
      LATERAL (SELECT count(*) AS n, count(*) FILTER (WHERE 'coordinator' = ANY (o.roles)) AS coordinators
                 FROM public.members o WHERE o.garden_id = m.garden_id AND o.id <> m.id AND o.left_at IS NULL) others
    WHERE m.account_id = person AND m.left_at IS NULL AND g.archived_at IS NULL AND 'coordinator' = ANY (m.roles) AND others.coordinators = 0
      AND (others.n > 0 OR NOT close_empty);
  IF FOUND THEN
    RETURN;
  END IF;

  sessions := ARRAY(SELECT s.id FROM public.account_sessions s WHERE s.account_id = person);
  names := ARRAY(SELECT DISTINCT n FROM (SELECT kept.name UNION ALL SELECT kept.email UNION ALL SELECT m.name FROM public.members m WHERE m.account_id = person) AS every (n)
    WHERE length(n) >= 3 AND n <> 'former member');
  FOR one IN SELECT m.garden_id AS garden, m.id AS member, m.left_at IS NULL AND 'coordinator' = ANY (m.roles) AND NOT EXISTS
      (SELECT 1 FROM public.members o WHERE o.garden_id = m.garden_id AND o.id <> m.id AND o.left_at IS NULL) AS alone
    FROM public.members m WHERE m.account_id = person ORDER BY 1 LOOP
    PERFORM public.erase_member(one.garden, one.member, names);
    DELETE FROM public.idempotency_answers i WHERE i.garden_id = one.garden AND i.credential_id = ANY (sessions);
    IF one.alone THEN
      UPDATE public.gardens g SET archived_at = coalesce(g.archived_at, now()), version = g.version + 1 WHERE g.id = one.garden;
    END IF;
    garden_id := one.garden;
    member_id := one.member;
    hindrance := NULL;
    RETURN NEXT;
  END LOOP;

  -- Invitations to gardens that they may never have joined.
  FOR one IN SELECT DISTINCT i.garden_id AS garden FROM public.invitations i WHERE i.email = kept.email LOOP
    PERFORM set_config('app.garden_id', one.garden::text, true);
    UPDATE public.invitations i SET email = NULL, version = i.version + 1, revoked_at = coalesce(i.revoked_at, CASE WHEN i.accepted_at IS NULL THEN now() END)
      WHERE i.garden_id = one.garden AND i.email = kept.email;
    DELETE FROM public.idempotency_answers i WHERE i.garden_id = one.garden AND i.body <> public.without_names(i.body, names);
  END LOOP;
  PERFORM set_config('app.garden_id', '00000000-0000-0000-0000-000000000000', true);
  DELETE FROM public.idempotency_answers i WHERE i.credential_id = ANY (sessions);
  PERFORM set_config('app.garden_id', coalesce(caller_garden, ''), true);

  DELETE FROM public.mail_outbox o WHERE o.recipient = kept.email;
  DELETE FROM public.account_events e WHERE e.account_id = person;
  DELETE FROM public.account_factors f WHERE f.account_id = person;
  DELETE FROM public.account_tokens t WHERE t.account_id = person;
  DELETE FROM public.account_sessions s WHERE s.account_id = person;
  UPDATE public.accounts a SET email = NULL, email_confirmed_at = NULL, name = 'former member', locale = 'en', password_phc = NULL, password_changed_at = NULL,
    erased_at = now(), version = a.version + 1, updated_at = now() WHERE a.id = person;
END $$;


REVOKE ALL ON FUNCTION without_names(text, text[]), json_without_names(jsonb, text[]), erase_member(uuid, uuid, text[]), erase_account(boolean) FROM PUBLIC;
