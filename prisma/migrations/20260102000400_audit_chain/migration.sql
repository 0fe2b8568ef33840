-- The history of each garden is a chain: every entry is hashed together with the hash before it. Whoever changes,
-- removes or slips in an entry breaks the chain from there on, and the verifier says where.
CREATE TABLE audit_links (
  garden_id uuid NOT NULL REFERENCES gardens (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  seq bigint NOT NULL,
  entry_id uuid NOT NULL,
  sha256 text NOT NULL,
  PRIMARY KEY (garden_id, seq),
  FOREIGN KEY (garden_id, entry_id) REFERENCES audit_entries (garden_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT audit_links_seq_check CHECK (seq >= 1),
  CONSTRAINT audit_links_sha256_check CHECK (sha256 ~ '^[0-9a-f]{64}$')
);
CREATE UNIQUE INDEX audit_links_entry_key ON audit_links (garden_id, entry_id);

ALTER TABLE audit_links ENABLE ROW LEVEL SECURITY;
ALTER TABLE audit_links FORCE ROW LEVEL SECURITY;
CREATE POLICY own_garden ON audit_links
  USING (garden_id = nullif(current_setting('app.garden_id', true), '')::uuid)
  WITH CHECK (garden_id = nullif(current_setting('app.garden_id', true), '')::uuid);

-- What is hashed: the hash before, the place in the chain and every field of the entry, one a line, absent ones as "-".
-- The same text is built by the verifier from what is stored (apps/api/src/platform/database/audit-chain.ts).
CREATE FUNCTION audit_sha256(former text, seq bigint, e audit_entries) RETURNS text LANGUAGE sql IMMUTABLE SET search_path = pg_catalog, pg_temp AS $$
  SELECT encode(sha256(convert_to(concat_ws(E'\n', former, seq, e.garden_id, e.id, to_char(e.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'),
    coalesce(e.key_id::text, '-'), coalesce(e.member_id::text, '-'), e.action, e.object_type, e.object_id,
    coalesce(e.before_sha256, '-'), coalesce(e.after_sha256, '-'), coalesce(e.request_id, '-')), 'UTF8')), 'hex')
$$;

-- Links an entry at the end of its transaction, so that the lock on the chain is held for the moment of the commit only
-- and nothing is waited for while it is held. The history stays with whoever owns it: the application may read links
-- and add none of its own.
CREATE FUNCTION link_audit_entry() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE
  former public.audit_links;
  caller text := current_setting('app.garden_id', true);
BEGIN
  PERFORM pg_advisory_xact_lock(hashtextextended('history of ' || NEW.garden_id::text, 13));
  -- The transaction may have left the garden that it wrote in (making one) before it ends.
  PERFORM set_config('app.garden_id', NEW.garden_id::text, true);
  SELECT * INTO former FROM public.audit_links WHERE garden_id = NEW.garden_id ORDER BY seq DESC LIMIT 1;
  INSERT INTO public.audit_links (garden_id, seq, entry_id, sha256)
    VALUES (NEW.garden_id, coalesce(former.seq, 0) + 1, NEW.id, public.audit_sha256(coalesce(former.sha256, repeat('0', 64)), coalesce(former.seq, 0) + 1, NEW));
  PERFORM set_config('app.garden_id', coalesce(caller, ''), true);
  RETURN NULL;
END $$;
REVOKE ALL ON FUNCTION link_audit_entry(), audit_sha256(text, bigint, audit_entries) FROM PUBLIC;

CREATE CONSTRAINT TRIGGER audit_entries_link AFTER INSERT ON audit_entries DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW EXECUTE FUNCTION link_audit_entry();

-- Entries from before the chain are linked in the order of their ids, which is the order of their making.
DO $$
DECLARE
  garden uuid;
  e public.audit_entries;
  former text;
  place bigint;
BEGIN
  FOR garden IN SELECT id FROM public.gardens LOOP
    PERFORM set_config('app.garden_id', garden::text, true);
    former := repeat('0', 64);
    place := 0;
    FOR e IN SELECT * FROM public.audit_entries WHERE garden_id = garden ORDER BY id LOOP
      place := place + 1;
      former := public.audit_sha256(former, place, e);
      INSERT INTO public.audit_links (garden_id, seq, entry_id, sha256) VALUES (garden, place, e.id, former);
    END LOOP;
  END LOOP;
  PERFORM set_config('app.garden_id', '', true);
END $$;

CREATE INDEX audit_entries_in_time ON audit_entries (garden_id, at);
