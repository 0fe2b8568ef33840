-- People. An account belongs to a person and to no garden; what the person is in a garden stands in members.
CREATE TABLE accounts (
  id uuid PRIMARY KEY,
  -- Lower case, as it is looked up. Null once the person has been erased.
  email text,
  email_confirmed_at timestamptz(3),
  name text NOT NULL,
  locale text NOT NULL DEFAULT 'en',
  password_phc text,
  password_changed_at timestamptz(3),
  blocked_at timestamptz(3),
  erased_at timestamptz(3),
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz(3) NOT NULL DEFAULT now(),
  updated_at timestamptz(3) NOT NULL DEFAULT now(),
  CONSTRAINT accounts_email_check CHECK (email = lower(email) AND length(email) BETWEEN 3 AND 254),
  CONSTRAINT accounts_name_check CHECK (length(name) BETWEEN 1 AND 200),
  CONSTRAINT accounts_erased_check CHECK (erased_at IS NULL OR (email IS NULL AND password_phc IS NULL)),
  CONSTRAINT accounts_version_check CHECK (version >= 1)
);
CREATE UNIQUE INDEX accounts_email_key ON accounts (email);

CREATE TABLE account_sessions (
  account_id uuid NOT NULL REFERENCES accounts (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  id uuid NOT NULL,
  token_sha256 bytea NOT NULL,
  -- What the browser or program called itself, cut short.
  label text NOT NULL,
  created_at timestamptz(3) NOT NULL DEFAULT now(),
  last_seen_at timestamptz(3) NOT NULL DEFAULT now(),
  expires_at timestamptz(3) NOT NULL,
  revoked_at timestamptz(3),
  PRIMARY KEY (account_id, id),
  CONSTRAINT account_sessions_sha256_check CHECK (length(token_sha256) = 32),
  CONSTRAINT account_sessions_label_check CHECK (length(label) <= 200)
);
CREATE UNIQUE INDEX account_sessions_token_key ON account_sessions (token_sha256);

-- Links that come by mail, each good once.
CREATE TABLE account_tokens (
  account_id uuid NOT NULL REFERENCES accounts (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  id uuid NOT NULL,
  purpose text NOT NULL,
  sha256 bytea NOT NULL,
  expires_at timestamptz(3) NOT NULL,
  used_at timestamptz(3),
  created_at timestamptz(3) NOT NULL DEFAULT now(),
  PRIMARY KEY (account_id, id),
  CONSTRAINT account_tokens_purpose_check CHECK (purpose IN ('confirm', 'reset')),
  CONSTRAINT account_tokens_sha256_check CHECK (length(sha256) = 32)
);
CREATE UNIQUE INDEX account_tokens_sha256_key ON account_tokens (sha256);

-- A second factor by the clock, at most one for an account.
CREATE TABLE account_factors (
  account_id uuid PRIMARY KEY REFERENCES accounts (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  secret_sealed bytea NOT NULL,
  confirmed_at timestamptz(3),
  -- The last step of the clock whose code was taken: a code is good once.
  last_step bigint,
  recovery_sha256 bytea[] NOT NULL DEFAULT '{}',
  created_at timestamptz(3) NOT NULL DEFAULT now()
);

-- What happened to an account: sign-ins, refusals, changes. Added to, never changed.
CREATE TABLE account_events (
  account_id uuid NOT NULL REFERENCES accounts (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  id uuid NOT NULL,
  action text NOT NULL,
  request_id text,
  created_at timestamptz(3) NOT NULL DEFAULT now(),
  PRIMARY KEY (account_id, id),
  CONSTRAINT account_events_action_check CHECK (length(action) BETWEEN 1 AND 80)
);

-- Mail that is to go out, written in the transaction that causes it. The application adds, the sender reads.
CREATE TABLE mail_outbox (
  id uuid PRIMARY KEY,
  recipient text NOT NULL,
  subject text NOT NULL,
  body text NOT NULL,
  state text NOT NULL DEFAULT 'queued',
  attempts integer NOT NULL DEFAULT 0,
  next_attempt_at timestamptz(3) NOT NULL DEFAULT now(),
  last_error text,
  created_at timestamptz(3) NOT NULL DEFAULT now(),
  sent_at timestamptz(3),
  CONSTRAINT mail_outbox_state_check CHECK (state IN ('queued', 'sent', 'failed')),
  CONSTRAINT mail_outbox_recipient_check CHECK (length(recipient) BETWEEN 3 AND 254 AND recipient !~ '[\r\n]'),
  CONSTRAINT mail_outbox_subject_check CHECK (length(subject) BETWEEN 1 AND 200 AND subject !~ '[\r\n]'),
  CONSTRAINT mail_outbox_body_check CHECK (length(body) <= 20000)
);
CREATE INDEX mail_outbox_waiting ON mail_outbox (next_attempt_at) WHERE state = 'queued';

CREATE TABLE members (
  garden_id uuid NOT NULL REFERENCES gardens (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  id uuid NOT NULL,
  account_id uuid NOT NULL REFERENCES accounts (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  -- What the garden calls the person; "former member" once they have left and asked for it.
  name text NOT NULL,
  roles text[] NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz(3) NOT NULL DEFAULT now(),
  updated_at timestamptz(3) NOT NULL DEFAULT now(),
  left_at timestamptz(3),
  PRIMARY KEY (garden_id, id),
  CONSTRAINT members_name_check CHECK (length(name) BETWEEN 1 AND 200),
  CONSTRAINT members_roles_check CHECK (cardinality(roles) BETWEEN 1 AND 7
    AND roles <@ ARRAY['member', 'coordinator', 'treasurer', 'storekeeper', 'safetyLead', 'extensionVolunteer', 'funder']),
  CONSTRAINT members_version_check CHECK (version >= 1)
);
CREATE UNIQUE INDEX members_account_key ON members (garden_id, account_id);
CREATE INDEX members_of_account ON members (account_id);

CREATE TABLE invitations (
  garden_id uuid NOT NULL REFERENCES gardens (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  id uuid NOT NULL,
  -- Null once used or taken back and tidied up.
  email text,
  roles text[] NOT NULL,
  token_sha256 bytea NOT NULL,
  invited_by_id uuid NOT NULL,
  expires_at timestamptz(3) NOT NULL,
  accepted_at timestamptz(3),
  accepted_member_id uuid,
  revoked_at timestamptz(3),
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz(3) NOT NULL DEFAULT now(),
  PRIMARY KEY (garden_id, id),
  FOREIGN KEY (garden_id, accepted_member_id) REFERENCES members (garden_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT invitations_email_check CHECK (email = lower(email) AND length(email) BETWEEN 3 AND 254),
  CONSTRAINT invitations_roles_check CHECK (cardinality(roles) BETWEEN 1 AND 7
    AND roles <@ ARRAY['member', 'coordinator', 'treasurer', 'storekeeper', 'safetyLead', 'extensionVolunteer', 'funder']),
  CONSTRAINT invitations_sha256_check CHECK (length(token_sha256) = 32),
  CONSTRAINT invitations_version_check CHECK (version >= 1)
);
-- Unique over all gardens, because it is what finds the garden.
CREATE UNIQUE INDEX invitations_token_key ON invitations (token_sha256);

-- Whose a row is. Nobody's: the garden's own.
ALTER TABLE sites ADD COLUMN owner_member_id uuid, ADD COLUMN shared boolean NOT NULL DEFAULT false,
  ADD FOREIGN KEY (garden_id, owner_member_id) REFERENCES members (garden_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE structures ADD COLUMN owner_member_id uuid, ADD COLUMN shared boolean NOT NULL DEFAULT false,
  ADD FOREIGN KEY (garden_id, owner_member_id) REFERENCES members (garden_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE builds ADD COLUMN owner_member_id uuid, ADD COLUMN shared boolean NOT NULL DEFAULT false,
  ADD FOREIGN KEY (garden_id, owner_member_id) REFERENCES members (garden_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

-- Who did it: a member, or a key that no member made.
ALTER TABLE plan_revisions RENAME COLUMN created_by_key_id TO created_by_id;
ALTER TABLE plan_reviews RENAME COLUMN created_by_key_id TO created_by_id;
ALTER TABLE plan_as_builts RENAME COLUMN created_by_key_id TO created_by_id;
ALTER TABLE documents RENAME COLUMN created_by_key_id TO created_by_id;
ALTER TABLE idempotency_answers RENAME COLUMN key_id TO credential_id;
ALTER TABLE audit_entries ADD COLUMN member_id uuid;
ALTER TABLE api_keys ADD COLUMN created_by_member_id uuid,
  ADD FOREIGN KEY (garden_id, created_by_member_id) REFERENCES members (garden_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

-- Gardens apart, for the new tables as for the old.
DO $$
DECLARE
  tenant text;
BEGIN
  FOREACH tenant IN ARRAY ARRAY['members', 'invitations']
  LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', tenant);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', tenant);
    EXECUTE format($policy$CREATE POLICY own_garden ON %I
      USING (garden_id = nullif(current_setting('app.garden_id', true), '')::uuid)
      WITH CHECK (garden_id = nullif(current_setting('app.garden_id', true), '')::uuid)$policy$, tenant);
  END LOOP;
END $$;

-- Accounts apart: a transaction sees one account, the one it has named.
ALTER TABLE accounts ENABLE ROW LEVEL SECURITY;
ALTER TABLE accounts FORCE ROW LEVEL SECURITY;
CREATE POLICY own_account ON accounts
  USING (id = nullif(current_setting('app.account_id', true), '')::uuid)
  WITH CHECK (id = nullif(current_setting('app.account_id', true), '')::uuid);
DO $$
DECLARE
  private text;
BEGIN
  FOREACH private IN ARRAY ARRAY['account_sessions', 'account_tokens', 'account_factors', 'account_events']
  LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', private);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', private);
    EXECUTE format($policy$CREATE POLICY own_account ON %I
      USING (account_id = nullif(current_setting('app.account_id', true), '')::uuid)
      WITH CHECK (account_id = nullif(current_setting('app.account_id', true), '')::uuid)$policy$, private);
  END LOOP;
END $$;

-- The outbox holds links that open accounts: the application may add and never read.
ALTER TABLE mail_outbox ENABLE ROW LEVEL SECURITY;
ALTER TABLE mail_outbox FORCE ROW LEVEL SECURITY;
CREATE POLICY add_only ON mail_outbox FOR INSERT WITH CHECK (true);
CREATE POLICY sender ON mail_outbox TO CURRENT_USER USING (true) WITH CHECK (true);

-- Members apart. Where an operation reaches only a person's own rows, the application names the member, and rows of
-- others do not exist unless they are shared or the garden's. Only own rows change; for a coordinator (writes_shared)
-- also those that are shared or the garden's.
DO $$
DECLARE
  owned text;
  carries text;
  nobody constant text := $x$nullif(current_setting('app.own_member_id', true), '') IS NULL$x$;
  mine constant text := $x$owner_member_id = nullif(current_setting('app.own_member_id', true), '')::uuid$x$;
  open_to_all constant text := 'owner_member_id IS NULL OR shared';
  arbiter constant text := $x$current_setting('app.writes_shared', true) = 'on'$x$;
BEGIN
  FOREACH owned IN ARRAY ARRAY['sites', 'structures', 'builds']
  LOOP
    -- Whoever sees a build sees the ground it stands on and its shelter.
    carries := CASE owned WHEN 'sites' THEN 'EXISTS (SELECT 1 FROM builds b WHERE b.garden_id = sites.garden_id AND b.site_id = sites.id)'
      WHEN 'structures' THEN 'EXISTS (SELECT 1 FROM builds b WHERE b.garden_id = structures.garden_id AND b.structure_id = structures.id)' ELSE 'false' END;
    EXECUTE format('CREATE POLICY own_rows_read ON %I AS RESTRICTIVE FOR SELECT USING (%s OR %s OR %s OR %s)', owned, nobody, mine, open_to_all, carries);
    EXECUTE format('CREATE POLICY own_rows_add ON %I AS RESTRICTIVE FOR INSERT WITH CHECK (%s OR %s)', owned, nobody, mine);
    EXECUTE format('CREATE POLICY own_rows_change ON %I AS RESTRICTIVE FOR UPDATE USING (%s OR %s OR (%s AND (%s)))', owned, nobody, mine, arbiter, open_to_all);
  END LOOP;
END $$;

-- A plan is as visible as its build, and its papers as visible as the plan: the inner tables' own policies decide.
CREATE FUNCTION build_is_writable(of_garden uuid, of_build uuid) RETURNS boolean LANGUAGE sql STABLE SET search_path = pg_catalog, pg_temp AS $$
  SELECT EXISTS (SELECT 1 FROM public.builds b WHERE b.garden_id = of_garden AND b.id = of_build
    AND (b.owner_member_id = nullif(current_setting('app.own_member_id', true), '')::uuid
      OR (current_setting('app.writes_shared', true) = 'on' AND (b.owner_member_id IS NULL OR b.shared))))
$$;
CREATE POLICY own_rows_read ON plan_revisions AS RESTRICTIVE FOR SELECT USING (nullif(current_setting('app.own_member_id', true), '') IS NULL
  OR EXISTS (SELECT 1 FROM builds b WHERE b.garden_id = plan_revisions.garden_id AND b.id = plan_revisions.build_id));
CREATE POLICY own_rows_add ON plan_revisions AS RESTRICTIVE FOR INSERT WITH CHECK (nullif(current_setting('app.own_member_id', true), '') IS NULL
  OR build_is_writable(garden_id, build_id));
CREATE POLICY own_rows_add ON stock_claims AS RESTRICTIVE FOR INSERT WITH CHECK (nullif(current_setting('app.own_member_id', true), '') IS NULL
  OR build_is_writable(garden_id, build_id));
CREATE POLICY own_rows_change ON stock_claims AS RESTRICTIVE FOR UPDATE USING (nullif(current_setting('app.own_member_id', true), '') IS NULL
  OR build_is_writable(garden_id, build_id));
DO $$
DECLARE
  paper text;
BEGIN
  FOREACH paper IN ARRAY ARRAY['plan_results', 'plan_reviews', 'plan_staleness', 'plan_as_builts', 'documents']
  LOOP
    EXECUTE format($policy$CREATE POLICY own_rows_read ON %1$I AS RESTRICTIVE FOR SELECT USING (nullif(current_setting('app.own_member_id', true), '') IS NULL
      OR EXISTS (SELECT 1 FROM plan_revisions p WHERE p.garden_id = %1$I.garden_id AND p.id = %1$I.plan_id))$policy$, paper);
  END LOOP;
END $$;

-- Lookups before the garden or the account is known. Each answers one narrow question.
CREATE POLICY lookup ON accounts FOR SELECT TO CURRENT_USER USING (true);
CREATE POLICY lookup ON account_sessions TO CURRENT_USER USING (true) WITH CHECK (true);
CREATE POLICY lookup ON account_tokens TO CURRENT_USER USING (true) WITH CHECK (true);
CREATE POLICY lookup ON members FOR SELECT TO CURRENT_USER USING (true);
CREATE POLICY lookup ON invitations FOR SELECT TO CURRENT_USER USING (true);

DROP FUNCTION find_credential(text);
CREATE FUNCTION find_credential(wanted_prefix text)
RETURNS TABLE (garden_id uuid, key_id uuid, sha256 bytea, scopes text[], expires_at timestamptz, revoked_at timestamptz, last_used_at timestamptz, created_by_member_id uuid)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT k.garden_id, k.id, k.sha256, k.scopes, k.expires_at, coalesce(k.revoked_at, g.archived_at), k.last_used_at, k.created_by_member_id
    FROM public.api_keys k JOIN public.gardens g ON g.id = k.garden_id
   WHERE k.prefix = wanted_prefix
$$;

-- The person behind a session, and what they are in one garden that is not archived.
CREATE FUNCTION find_session(wanted_sha256 bytea, wanted_garden uuid)
RETURNS TABLE (session_id uuid, account_id uuid, last_seen_at timestamptz, expires_at timestamptz, ended boolean, member_id uuid, roles text[])
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT s.id, s.account_id, s.last_seen_at, s.expires_at,
         s.revoked_at IS NOT NULL OR a.blocked_at IS NOT NULL OR a.erased_at IS NOT NULL, m.id, m.roles
    FROM public.account_sessions s
    JOIN public.accounts a ON a.id = s.account_id
    LEFT JOIN public.members m ON m.garden_id = wanted_garden AND m.account_id = s.account_id AND m.left_at IS NULL
         AND EXISTS (SELECT 1 FROM public.gardens g WHERE g.id = wanted_garden AND g.archived_at IS NULL)
   WHERE s.token_sha256 = wanted_sha256
$$;

-- Notes that a session is in use, at most once a minute.
CREATE FUNCTION touch_session(wanted_sha256 bytea)
RETURNS void LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  UPDATE public.account_sessions SET last_seen_at = now()
   WHERE token_sha256 = wanted_sha256 AND revoked_at IS NULL AND last_seen_at < now() - interval '1 minute'
$$;

-- For signing in and for asking for a link: is there such an account, and what does its password hash to.
CREATE FUNCTION find_account(wanted_email text)
RETURNS TABLE (account_id uuid, password_phc text, confirmed boolean, blocked boolean)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT a.id, a.password_phc, a.email_confirmed_at IS NOT NULL, a.blocked_at IS NOT NULL FROM public.accounts a WHERE a.email = lower(wanted_email)
$$;

-- Uses a link up: of two that arrive together one gets the account, the other nothing.
CREATE FUNCTION use_account_token(wanted_sha256 bytea, wanted_purpose text)
RETURNS uuid LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  UPDATE public.account_tokens SET used_at = now()
   WHERE sha256 = wanted_sha256 AND purpose = wanted_purpose AND used_at IS NULL AND expires_at > now()
  RETURNING account_id
$$;

CREATE FUNCTION find_invitation(wanted_sha256 bytea)
RETURNS TABLE (garden_id uuid, invitation_id uuid)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT i.garden_id, i.id FROM public.invitations i JOIN public.gardens g ON g.id = i.garden_id
   WHERE i.token_sha256 = wanted_sha256 AND i.accepted_at IS NULL AND i.revoked_at IS NULL AND i.expires_at > now() AND g.archived_at IS NULL
$$;

-- The gardens of the account that the transaction has named, and of no other.
CREATE FUNCTION gardens_of_account()
RETURNS TABLE (garden_id uuid, garden_name text, member_id uuid, roles text[], joined_at timestamptz, archived boolean)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT g.id, g.name, m.id, m.roles, m.created_at, g.archived_at IS NOT NULL
    FROM public.members m JOIN public.gardens g ON g.id = m.garden_id
   WHERE m.account_id = nullif(current_setting('app.account_id', true), '')::uuid AND m.left_at IS NULL
   ORDER BY g.id
$$;

-- A garden alone. Its first key or its first member is added by the caller in the same transaction.
DROP FUNCTION create_garden(uuid, text, text, text, text, boolean, uuid, text, text, bytea, text[], uuid, text);
CREATE FUNCTION create_garden(new_id uuid, new_name text, new_locale text, new_currency text, new_unit_system text, new_invented boolean,
  audit_id uuid, audit_request_id text)
RETURNS void LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE
  former text := current_setting('app.garden_id', true);
BEGIN
  PERFORM set_config('app.garden_id', new_id::text, true);
  INSERT INTO public.gardens (id, name, locale, currency, unit_system, invented)
    VALUES (new_id, new_name, new_locale, new_currency, new_unit_system, new_invented);
  INSERT INTO public.audit_entries (garden_id, id, action, object_type, object_id, request_id)
    VALUES (new_id, audit_id, 'garden.create', 'garden', new_id, audit_request_id);
  PERFORM set_config('app.garden_id', coalesce(former, ''), true);
END $$;

REVOKE ALL ON FUNCTION find_credential(text), find_session(bytea, uuid), touch_session(bytea), find_account(text), use_account_token(bytea, text),
  find_invitation(bytea), gardens_of_account(), create_garden(uuid, text, text, text, text, boolean, uuid, text), build_is_writable(uuid, uuid) FROM PUBLIC;
