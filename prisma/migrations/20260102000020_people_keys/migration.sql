-- A key never opens more than whoever made it: what the maker is now comes with it, and it ends when the maker leaves.
DROP FUNCTION find_credential(text);
CREATE FUNCTION find_credential(wanted_prefix text)
RETURNS TABLE (garden_id uuid, key_id uuid, sha256 bytea, scopes text[], expires_at timestamptz, revoked_at timestamptz, last_used_at timestamptz,
  created_by_member_id uuid, maker_roles text[])
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT k.garden_id, k.id, k.sha256, k.scopes, k.expires_at, coalesce(k.revoked_at, g.archived_at, m.left_at), k.last_used_at, k.created_by_member_id, m.roles
    FROM public.api_keys k JOIN public.gardens g ON g.id = k.garden_id
    LEFT JOIN public.members m ON m.garden_id = k.garden_id AND m.id = k.created_by_member_id
   WHERE k.prefix = wanted_prefix
$$;
REVOKE ALL ON FUNCTION find_credential(text) FROM PUBLIC;
