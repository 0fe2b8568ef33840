-- A person may be called May, Clay or Door. Such a name is taken out of what people wrote, as a whole word and as it is
-- written; inside of JSON, where the same word may be a key or a choice that a plan is calculated with, only names of
-- several words and addresses are.
CREATE OR REPLACE FUNCTION without_names(old_text text, names text[]) RETURNS text LANGUAGE plpgsql IMMUTABLE SET search_path = pg_catalog, pg_temp AS $$
DECLARE
  name text;
BEGIN
  FOREACH name IN ARRAY names LOOP
    IF name ~ '^\w' AND name ~ '\w$' THEN
      old_text := regexp_replace(old_text, '\m' || regexp_replace(name, '([^\w\s])', '\\\1', 'g') || '\M', 'former member', CASE WHEN name ~ '@' THEN 'gi' ELSE 'g' END);
    ELSE
      old_text := replace(old_text, name, 'former member');
    END IF;
  END LOOP;
  RETURN old_text;
END $$;

CREATE OR REPLACE FUNCTION json_without_names(old_json jsonb, names text[]) RETURNS jsonb LANGUAGE sql IMMUTABLE SET search_path = pg_catalog, pg_temp AS $$
  SELECT public.without_names(old_json::text, ARRAY(SELECT substring(to_jsonb(n)::text FROM 2 FOR length(to_jsonb(n)::text) - 2) FROM unnest(names) AS n
    WHERE n ~ '\S\s+\S' OR n ~ '@'))::jsonb
$$;
