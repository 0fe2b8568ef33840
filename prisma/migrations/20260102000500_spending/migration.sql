-- Money that somebody wants to spend, and who let them. Two people, always: the database itself refuses that whoever
-- asked decides, and that whoever asked for a plan reviews it.
ALTER TABLE gardens
  ADD COLUMN coordinator_limit_minor bigint,
  ADD COLUMN treasurer_limit_minor bigint,
  ADD CONSTRAINT gardens_limits_check CHECK (coordinator_limit_minor BETWEEN 0 AND 9000000000000 AND treasurer_limit_minor BETWEEN 0 AND 9000000000000);

CREATE TABLE spend_requests (
  garden_id uuid NOT NULL REFERENCES gardens (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  id uuid NOT NULL,
  -- What it is for; null: the garden as a whole.
  build_id uuid,
  -- The plan whose prices were looked at.
  plan_id uuid,
  purpose text NOT NULL,
  amount_minor bigint NOT NULL,
  currency char(3) NOT NULL,
  state text NOT NULL DEFAULT 'submitted',
  requested_by_id uuid NOT NULL,
  owner_member_id uuid,
  decided_by_id uuid,
  decided_at timestamptz(3),
  remark text,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz(3) NOT NULL DEFAULT now(),
  PRIMARY KEY (garden_id, id),
  FOREIGN KEY (garden_id, build_id) REFERENCES builds (garden_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  FOREIGN KEY (garden_id, plan_id) REFERENCES plan_revisions (garden_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  FOREIGN KEY (garden_id, owner_member_id) REFERENCES members (garden_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT spend_requests_purpose_check CHECK (length(purpose) BETWEEN 1 AND 500),
  CONSTRAINT spend_requests_amount_check CHECK (amount_minor BETWEEN 0 AND 9000000000000),
  CONSTRAINT spend_requests_currency_check CHECK (currency ~ '^[A-Z]{3}$'),
  CONSTRAINT spend_requests_state_check CHECK (state IN ('submitted', 'approved', 'refused', 'withdrawn')),
  CONSTRAINT spend_requests_decided_check CHECK ((state IN ('approved', 'refused')) = (decided_by_id IS NOT NULL) AND (decided_by_id IS NULL) = (decided_at IS NULL)),
  CONSTRAINT spend_requests_two_people_check CHECK (decided_by_id <> requested_by_id),
  CONSTRAINT spend_requests_remark_check CHECK (length(remark) BETWEEN 1 AND 2000),
  CONSTRAINT spend_requests_version_check CHECK (version >= 1)
);
CREATE INDEX spend_requests_of_build ON spend_requests (garden_id, build_id);

ALTER TABLE spend_requests ENABLE ROW LEVEL SECURITY;
ALTER TABLE spend_requests FORCE ROW LEVEL SECURITY;
CREATE POLICY own_garden ON spend_requests
  USING (garden_id = nullif(current_setting('app.garden_id', true), '')::uuid)
  WITH CHECK (garden_id = nullif(current_setting('app.garden_id', true), '')::uuid);
CREATE POLICY own_rows_read ON spend_requests AS RESTRICTIVE FOR SELECT
  USING (nullif(current_setting('app.own_member_id', true), '') IS NULL OR owner_member_id = nullif(current_setting('app.own_member_id', true), '')::uuid);
CREATE POLICY own_rows_add ON spend_requests AS RESTRICTIVE FOR INSERT
  WITH CHECK (nullif(current_setting('app.own_member_id', true), '') IS NULL OR owner_member_id = nullif(current_setting('app.own_member_id', true), '')::uuid);

CREATE FUNCTION check_reviewer() RETURNS trigger LANGUAGE plpgsql SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF EXISTS (SELECT 1 FROM public.plan_revisions p WHERE p.garden_id = NEW.garden_id AND p.id = NEW.plan_id AND p.created_by_id = NEW.created_by_id) THEN
    RAISE EXCEPTION 'whoever asked for a plan may not review it' USING ERRCODE = 'check_violation', CONSTRAINT = 'plan_reviews_two_people';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER plan_reviews_two_people BEFORE INSERT ON plan_reviews FOR EACH ROW EXECUTE FUNCTION check_reviewer();
REVOKE ALL ON FUNCTION check_reviewer() FROM PUBLIC;
