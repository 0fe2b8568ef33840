-- The whole list of functions that run with the owner's rights. Each has a fixed search path, so that no object of a
-- caller can stand in for ours, and nobody may call one who was not told to (prisma/grants.sql).

-- What is needed to check one key, and nothing else of the garden.
CREATE FUNCTION find_credential(wanted_prefix text)
RETURNS TABLE (garden_id uuid, key_id uuid, sha256 bytea, scopes text[], expires_at timestamptz, revoked_at timestamptz, last_used_at timestamptz)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT k.garden_id, k.id, k.sha256, k.scopes, k.expires_at, coalesce(k.revoked_at, g.archived_at), k.last_used_at
    FROM public.api_keys k JOIN public.gardens g ON g.id = k.garden_id
   WHERE k.prefix = wanted_prefix
$$;

-- A garden with its first key, made by the operator, who belongs to no garden. The caller's own setting comes back.
CREATE FUNCTION create_garden(
  new_id uuid, new_name text, new_locale text, new_currency text, new_unit_system text, new_invented boolean,
  first_key_id uuid, first_key_name text, first_key_prefix text, first_key_sha256 bytea, first_key_scopes text[],
  audit_id uuid, audit_request_id text)
RETURNS void LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE
  former text := current_setting('app.garden_id', true);
BEGIN
  PERFORM set_config('app.garden_id', new_id::text, true);
  INSERT INTO public.gardens (id, name, locale, currency, unit_system, invented)
    VALUES (new_id, new_name, new_locale, new_currency, new_unit_system, new_invented);
  INSERT INTO public.api_keys (garden_id, id, name, prefix, sha256, scopes)
    VALUES (new_id, first_key_id, first_key_name, first_key_prefix, first_key_sha256, first_key_scopes);
  INSERT INTO public.audit_entries (garden_id, id, action, object_type, object_id, request_id)
    VALUES (new_id, audit_id, 'garden.create', 'garden', new_id, audit_request_id);
  PERFORM set_config('app.garden_id', coalesce(former, ''), true);
END $$;

-- Puts one job on the queue, in the caller's transaction. It carries ids only, and only of the garden the caller is in.
CREATE FUNCTION enqueue_job(task text, for_garden uuid, for_id uuid)
RETURNS void LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF for_garden IS DISTINCT FROM nullif(current_setting('app.garden_id', true), '')::uuid THEN
    RAISE EXCEPTION 'a job may be queued for the own garden only' USING ERRCODE = 'insufficient_privilege';
  END IF;
  IF task !~ '^[a-z]+(-[a-z]+)*$' OR length(task) > 60 THEN
    RAISE EXCEPTION 'not the name of a task: %', task USING ERRCODE = 'invalid_parameter_value';
  END IF;
  PERFORM graphile_worker.add_job(identifier => task, payload => json_build_object('gardenId', for_garden, 'id', for_id), max_attempts => 3);
END $$;

REVOKE ALL ON FUNCTION find_credential(text), enqueue_job(text, uuid, uuid),
  create_garden(uuid, text, text, text, text, boolean, uuid, text, text, bytea, text[], uuid, text) FROM PUBLIC;
