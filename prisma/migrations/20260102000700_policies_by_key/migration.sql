-- Where a row is as visible as another one, that one is looked up along its key, row by row. Without OFFSET 0 the planner
-- may instead gather all rows of the garden that could be meant before it looks at the first: a page of a hundred plans
-- then costs what the garden has of builds, and a page of documents what it has of plans. What is visible stays the same.
DO $$
DECLARE
  everyone constant text := $x$nullif(current_setting('app.own_member_id', true), '') IS NULL$x$;
  mine constant text := $x$owner_member_id = nullif(current_setting('app.own_member_id', true), '')::uuid$x$;
  owned text;
  paper text;
BEGIN
  FOREACH owned IN ARRAY ARRAY['site', 'structure']
  LOOP
    EXECUTE format('ALTER POLICY own_rows_read ON %1$Is USING (%2$s OR %3$s OR owner_member_id IS NULL OR shared
      OR EXISTS (SELECT 1 FROM builds b WHERE b.garden_id = %1$Is.garden_id AND b.%1$I_id = %1$Is.id OFFSET 0))', owned, everyone, mine);
  END LOOP;
  EXECUTE format('ALTER POLICY own_rows_read ON plan_revisions USING (%s
    OR EXISTS (SELECT 1 FROM builds b WHERE b.garden_id = plan_revisions.garden_id AND b.id = plan_revisions.build_id OFFSET 0))', everyone);
  FOREACH paper IN ARRAY ARRAY['plan_results', 'plan_reviews', 'plan_staleness', 'plan_as_builts', 'documents']
  LOOP
    EXECUTE format('ALTER POLICY own_rows_read ON %1$I USING (%2$s
      OR EXISTS (SELECT 1 FROM plan_revisions p WHERE p.garden_id = %1$I.garden_id AND p.id = %1$I.plan_id OFFSET 0))', paper, everyone);
  END LOOP;
  EXECUTE format('ALTER POLICY own_rows_read ON photos USING (%s OR build_id IS NULL
    OR EXISTS (SELECT 1 FROM builds b WHERE b.garden_id = photos.garden_id AND b.id = photos.build_id OFFSET 0))', everyone);
END $$;
