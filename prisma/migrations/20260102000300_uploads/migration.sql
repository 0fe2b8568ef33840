-- Photos of things on the pile and of builds. The bytes lie in files; a photo is never changed, only taken away.
CREATE TABLE photos (
  garden_id uuid NOT NULL REFERENCES gardens (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  id uuid NOT NULL,
  stock_item_id uuid,
  build_id uuid,
  file_id uuid NOT NULL,
  caption text,
  width_pixel_count integer NOT NULL,
  height_pixel_count integer NOT NULL,
  -- Without a release on file such a photo is seen by whoever took it in and by the coordinator alone.
  shows_people boolean NOT NULL,
  release_on_file boolean NOT NULL DEFAULT false,
  uploaded_by_id uuid NOT NULL,
  created_at timestamptz(3) NOT NULL DEFAULT now(),
  PRIMARY KEY (garden_id, id),
  FOREIGN KEY (garden_id, stock_item_id) REFERENCES stock_items (garden_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  FOREIGN KEY (garden_id, build_id) REFERENCES builds (garden_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  FOREIGN KEY (garden_id, file_id) REFERENCES files (garden_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT photos_subject_check CHECK (num_nonnulls(stock_item_id, build_id) = 1),
  CONSTRAINT photos_caption_check CHECK (length(caption) BETWEEN 1 AND 200),
  CONSTRAINT photos_width_check CHECK (width_pixel_count BETWEEN 1 AND 16384),
  CONSTRAINT photos_height_check CHECK (height_pixel_count BETWEEN 1 AND 16384)
);
CREATE INDEX photos_garden_id_stock_item_id_idx ON photos (garden_id, stock_item_id);
CREATE INDEX photos_garden_id_build_id_idx ON photos (garden_id, build_id);
CREATE INDEX photos_garden_id_file_id_idx ON photos (garden_id, file_id);

ALTER TABLE photos ENABLE ROW LEVEL SECURITY;
ALTER TABLE photos FORCE ROW LEVEL SECURITY;
CREATE POLICY own_garden ON photos
  USING (garden_id = nullif(current_setting('app.garden_id', true), '')::uuid)
  WITH CHECK (garden_id = nullif(current_setting('app.garden_id', true), '')::uuid);

-- A photo of a build is as visible as the build; whoever may change the build may add to its photos and take them away.
CREATE POLICY own_rows_read ON photos AS RESTRICTIVE FOR SELECT USING (nullif(current_setting('app.own_member_id', true), '') IS NULL
  OR build_id IS NULL OR EXISTS (SELECT 1 FROM builds b WHERE b.garden_id = photos.garden_id AND b.id = photos.build_id));
CREATE POLICY own_rows_add ON photos AS RESTRICTIVE FOR INSERT WITH CHECK (nullif(current_setting('app.own_member_id', true), '') IS NULL
  OR build_id IS NULL OR build_is_writable(garden_id, build_id));
CREATE POLICY own_rows_remove ON photos AS RESTRICTIVE FOR DELETE USING (nullif(current_setting('app.own_member_id', true), '') IS NULL
  OR build_id IS NULL OR build_is_writable(garden_id, build_id));
