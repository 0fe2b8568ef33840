-- Tables, keys and indexes, as prisma/schema.prisma declares them. What a table may hold, who sees it and who may
-- change it follow in the next migrations.

-- CreateTable
CREATE TABLE "gardens" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "locale" TEXT NOT NULL,
    "currency" CHAR(3) NOT NULL,
    "unit_system" TEXT NOT NULL,
    "invented" BOOLEAN NOT NULL DEFAULT false,
    "file_quota_byte_count" BIGINT NOT NULL DEFAULT 268435456,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "archived_at" TIMESTAMPTZ(3),

    CONSTRAINT "gardens_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "api_keys" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "prefix" TEXT NOT NULL,
    "sha256" BYTEA NOT NULL,
    "scopes" TEXT[],
    "expires_at" TIMESTAMPTZ(3),
    "last_used_at" TIMESTAMPTZ(3),
    "revoked_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "api_keys_pkey" PRIMARY KEY ("garden_id","id")
);

-- CreateTable
CREATE TABLE "climate_stations" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "country" TEXT NOT NULL,
    "latitude_deg" DOUBLE PRECISION NOT NULL,
    "longitude_deg" DOUBLE PRECISION NOT NULL,
    "elevation_m" DOUBLE PRECISION NOT NULL,
    "period" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "credit" TEXT NOT NULL,
    "annual_extreme_min_c" DOUBLE PRECISION,
    "annual_extreme_min_years_count" INTEGER,
    "months" JSONB NOT NULL,

    CONSTRAINT "climate_stations_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "seed_states" (
    "name" TEXT NOT NULL,
    "sha256" TEXT NOT NULL,
    "loaded_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "seed_states_pkey" PRIMARY KEY ("name")
);

-- CreateTable
CREATE TABLE "sites" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "latitude_deg" DOUBLE PRECISION NOT NULL,
    "longitude_deg" DOUBLE PRECISION NOT NULL,
    "elevation_m" DOUBLE PRECISION NOT NULL,
    "time_zone" TEXT NOT NULL,
    "station_id" TEXT,
    "details" JSONB NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "archived_at" TIMESTAMPTZ(3),

    CONSTRAINT "sites_pkey" PRIMARY KEY ("garden_id","id")
);

-- CreateTable
CREATE TABLE "structures" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "details" JSONB NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "archived_at" TIMESTAMPTZ(3),

    CONSTRAINT "structures_pkey" PRIMARY KEY ("garden_id","id")
);

-- CreateTable
CREATE TABLE "stock_items" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "tag" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "material" TEXT NOT NULL,
    "grade" TEXT NOT NULL,
    "hazards" TEXT[],
    "count" INTEGER NOT NULL DEFAULT 1,
    "unit_item" BOOLEAN NOT NULL DEFAULT true,
    "details" JSONB NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "archived_at" TIMESTAMPTZ(3),

    CONSTRAINT "stock_items_pkey" PRIMARY KEY ("garden_id","id")
);

-- CreateTable
CREATE TABLE "stock_claims" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "stock_item_id" UUID NOT NULL,
    "unit_item" BOOLEAN NOT NULL,
    "build_id" UUID NOT NULL,
    "count" INTEGER NOT NULL DEFAULT 1,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "released_at" TIMESTAMPTZ(3),

    CONSTRAINT "stock_claims_pkey" PRIMARY KEY ("garden_id","id")
);

-- CreateTable
CREATE TABLE "prices" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "material" TEXT NOT NULL,
    "unit" TEXT NOT NULL,
    "pack_amount" DOUBLE PRECISION NOT NULL,
    "pack_price_minor" BIGINT NOT NULL,
    "currency" CHAR(3) NOT NULL,
    "piece_width_m" DOUBLE PRECISION,
    "piece_length_m" DOUBLE PRECISION,
    "read_on" DATE,
    "supplier" TEXT NOT NULL,
    "as_typed" JSONB,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "archived_at" TIMESTAMPTZ(3),

    CONSTRAINT "prices_pkey" PRIMARY KEY ("garden_id","id")
);

-- CreateTable
CREATE TABLE "exchange_rates" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "from_currency" CHAR(3) NOT NULL,
    "to_currency" CHAR(3) NOT NULL,
    "rate" DOUBLE PRECISION NOT NULL,
    "read_on" DATE NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "archived_at" TIMESTAMPTZ(3),

    CONSTRAINT "exchange_rates_pkey" PRIMARY KEY ("garden_id","id")
);

-- CreateTable
CREATE TABLE "builds" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "site_id" UUID NOT NULL,
    "structure_id" UUID NOT NULL,
    "wishes" JSONB NOT NULL,
    "crew" JSONB NOT NULL,
    "budget" JSONB NOT NULL,
    "variant_of_id" UUID,
    "variant_label" TEXT,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "archived_at" TIMESTAMPTZ(3),

    CONSTRAINT "builds_pkey" PRIMARY KEY ("garden_id","id")
);

-- CreateTable
CREATE TABLE "plan_revisions" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "build_id" UUID NOT NULL,
    "revision" INTEGER NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'computing',
    "as_of" DATE NOT NULL,
    "inputs" JSONB NOT NULL,
    "inputs_sha256" TEXT NOT NULL,
    "seed" BIGINT NOT NULL,
    "attempt" INTEGER NOT NULL DEFAULT 0,
    "problem" JSONB,
    "created_by_key_id" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "started_at" TIMESTAMPTZ(3),
    "finished_at" TIMESTAMPTZ(3),

    CONSTRAINT "plan_revisions_pkey" PRIMARY KEY ("garden_id","id")
);

-- CreateTable
CREATE TABLE "plan_results" (
    "garden_id" UUID NOT NULL,
    "plan_id" UUID NOT NULL,
    "schema_version" INTEGER NOT NULL,
    "engine_version" TEXT NOT NULL,
    "result" JSONB NOT NULL,
    "timings" JSONB NOT NULL,
    "attempt" INTEGER NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "plan_results_pkey" PRIMARY KEY ("garden_id","plan_id")
);

-- CreateTable
CREATE TABLE "plan_reviews" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "plan_id" UUID NOT NULL,
    "decision" TEXT NOT NULL,
    "reviewer" TEXT NOT NULL,
    "comment" TEXT,
    "created_by_key_id" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "plan_reviews_pkey" PRIMARY KEY ("garden_id","id")
);

-- CreateTable
CREATE TABLE "plan_staleness" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "plan_id" UUID NOT NULL,
    "reason" TEXT NOT NULL,
    "subject" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "plan_staleness_pkey" PRIMARY KEY ("garden_id","id")
);

-- CreateTable
CREATE TABLE "plan_as_builts" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "plan_id" UUID NOT NULL,
    "observed_on" DATE NOT NULL,
    "details" JSONB NOT NULL,
    "created_by_key_id" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "plan_as_builts_pkey" PRIMARY KEY ("garden_id","id")
);

-- CreateTable
CREATE TABLE "documents" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "plan_id" UUID NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'queued',
    "options" JSONB NOT NULL,
    "attempt" INTEGER NOT NULL DEFAULT 0,
    "sha256" TEXT,
    "pages" INTEGER,
    "engine_version" TEXT,
    "file_id" UUID,
    "problem" JSONB,
    "created_by_key_id" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "started_at" TIMESTAMPTZ(3),
    "finished_at" TIMESTAMPTZ(3),

    CONSTRAINT "documents_pkey" PRIMARY KEY ("garden_id","id")
);

-- CreateTable
CREATE TABLE "files" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "media_type" TEXT NOT NULL,
    "byte_count" INTEGER NOT NULL,
    "sha256" TEXT NOT NULL,
    "content" BYTEA NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "files_pkey" PRIMARY KEY ("garden_id","id")
);

-- CreateTable
CREATE TABLE "idempotency_answers" (
    "garden_id" UUID NOT NULL,
    "key_id" UUID NOT NULL,
    "route" TEXT NOT NULL,
    "idempotency_key" TEXT NOT NULL,
    "request_sha256" TEXT NOT NULL,
    "status" INTEGER NOT NULL,
    "body" TEXT NOT NULL,
    "encrypted" BOOLEAN NOT NULL DEFAULT false,
    "location" TEXT,
    "etag" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "idempotency_answers_pkey" PRIMARY KEY ("garden_id","key_id","route","idempotency_key")
);

-- CreateTable
CREATE TABLE "audit_entries" (
    "garden_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "key_id" UUID,
    "action" TEXT NOT NULL,
    "object_type" TEXT NOT NULL,
    "object_id" UUID NOT NULL,
    "before_sha256" TEXT,
    "after_sha256" TEXT,
    "request_id" TEXT,

    CONSTRAINT "audit_entries_pkey" PRIMARY KEY ("garden_id","id")
);

-- CreateIndex
CREATE UNIQUE INDEX "api_keys_prefix_key" ON "api_keys"("prefix");

-- CreateIndex
CREATE INDEX "climate_stations_latitude_deg_longitude_deg_idx" ON "climate_stations"("latitude_deg", "longitude_deg");

-- CreateIndex
CREATE UNIQUE INDEX "sites_garden_id_name_key" ON "sites"("garden_id", "name");

-- CreateIndex
CREATE UNIQUE INDEX "structures_garden_id_name_key" ON "structures"("garden_id", "name");

-- CreateIndex
CREATE UNIQUE INDEX "stock_items_garden_id_tag_key" ON "stock_items"("garden_id", "tag");

-- CreateIndex
CREATE UNIQUE INDEX "stock_items_garden_id_id_unit_item_key" ON "stock_items"("garden_id", "id", "unit_item");

-- CreateIndex
CREATE INDEX "stock_claims_garden_id_stock_item_id_idx" ON "stock_claims"("garden_id", "stock_item_id");

-- CreateIndex
CREATE INDEX "stock_claims_garden_id_build_id_idx" ON "stock_claims"("garden_id", "build_id");

-- CreateIndex
CREATE INDEX "prices_garden_id_material_idx" ON "prices"("garden_id", "material");

-- CreateIndex
CREATE UNIQUE INDEX "exchange_rates_garden_id_from_currency_to_currency_read_on_key" ON "exchange_rates"("garden_id", "from_currency", "to_currency", "read_on");

-- CreateIndex
CREATE INDEX "builds_garden_id_site_id_idx" ON "builds"("garden_id", "site_id");

-- CreateIndex
CREATE INDEX "builds_garden_id_structure_id_idx" ON "builds"("garden_id", "structure_id");

-- CreateIndex
CREATE INDEX "builds_garden_id_variant_of_id_idx" ON "builds"("garden_id", "variant_of_id");

-- CreateIndex
CREATE UNIQUE INDEX "plan_revisions_garden_id_build_id_revision_key" ON "plan_revisions"("garden_id", "build_id", "revision");

-- CreateIndex
CREATE INDEX "plan_reviews_garden_id_plan_id_idx" ON "plan_reviews"("garden_id", "plan_id");

-- CreateIndex
CREATE INDEX "plan_staleness_garden_id_plan_id_idx" ON "plan_staleness"("garden_id", "plan_id");

-- CreateIndex
CREATE INDEX "plan_as_builts_garden_id_plan_id_idx" ON "plan_as_builts"("garden_id", "plan_id");

-- CreateIndex
CREATE INDEX "documents_garden_id_plan_id_idx" ON "documents"("garden_id", "plan_id");

-- CreateIndex
CREATE INDEX "idempotency_answers_garden_id_expires_at_idx" ON "idempotency_answers"("garden_id", "expires_at");

-- CreateIndex
CREATE INDEX "audit_entries_garden_id_object_type_object_id_idx" ON "audit_entries"("garden_id", "object_type", "object_id");

-- AddForeignKey
ALTER TABLE "api_keys" ADD CONSTRAINT "api_keys_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sites" ADD CONSTRAINT "sites_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sites" ADD CONSTRAINT "sites_station_id_fkey" FOREIGN KEY ("station_id") REFERENCES "climate_stations"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "structures" ADD CONSTRAINT "structures_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock_items" ADD CONSTRAINT "stock_items_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock_claims" ADD CONSTRAINT "stock_claims_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock_claims" ADD CONSTRAINT "stock_claims_garden_id_stock_item_id_unit_item_fkey" FOREIGN KEY ("garden_id", "stock_item_id", "unit_item") REFERENCES "stock_items"("garden_id", "id", "unit_item") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock_claims" ADD CONSTRAINT "stock_claims_garden_id_build_id_fkey" FOREIGN KEY ("garden_id", "build_id") REFERENCES "builds"("garden_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "prices" ADD CONSTRAINT "prices_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "exchange_rates" ADD CONSTRAINT "exchange_rates_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "builds" ADD CONSTRAINT "builds_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "builds" ADD CONSTRAINT "builds_garden_id_site_id_fkey" FOREIGN KEY ("garden_id", "site_id") REFERENCES "sites"("garden_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "builds" ADD CONSTRAINT "builds_garden_id_structure_id_fkey" FOREIGN KEY ("garden_id", "structure_id") REFERENCES "structures"("garden_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "builds" ADD CONSTRAINT "builds_garden_id_variant_of_id_fkey" FOREIGN KEY ("garden_id", "variant_of_id") REFERENCES "builds"("garden_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_revisions" ADD CONSTRAINT "plan_revisions_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_revisions" ADD CONSTRAINT "plan_revisions_garden_id_build_id_fkey" FOREIGN KEY ("garden_id", "build_id") REFERENCES "builds"("garden_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_results" ADD CONSTRAINT "plan_results_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_results" ADD CONSTRAINT "plan_results_garden_id_plan_id_fkey" FOREIGN KEY ("garden_id", "plan_id") REFERENCES "plan_revisions"("garden_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_reviews" ADD CONSTRAINT "plan_reviews_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_reviews" ADD CONSTRAINT "plan_reviews_garden_id_plan_id_fkey" FOREIGN KEY ("garden_id", "plan_id") REFERENCES "plan_revisions"("garden_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_staleness" ADD CONSTRAINT "plan_staleness_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_staleness" ADD CONSTRAINT "plan_staleness_garden_id_plan_id_fkey" FOREIGN KEY ("garden_id", "plan_id") REFERENCES "plan_revisions"("garden_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_as_builts" ADD CONSTRAINT "plan_as_builts_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_as_builts" ADD CONSTRAINT "plan_as_builts_garden_id_plan_id_fkey" FOREIGN KEY ("garden_id", "plan_id") REFERENCES "plan_revisions"("garden_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "documents" ADD CONSTRAINT "documents_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "documents" ADD CONSTRAINT "documents_garden_id_plan_id_fkey" FOREIGN KEY ("garden_id", "plan_id") REFERENCES "plan_revisions"("garden_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "documents" ADD CONSTRAINT "documents_garden_id_file_id_fkey" FOREIGN KEY ("garden_id", "file_id") REFERENCES "files"("garden_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "files" ADD CONSTRAINT "files_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "audit_entries" ADD CONSTRAINT "audit_entries_garden_id_fkey" FOREIGN KEY ("garden_id") REFERENCES "gardens"("id") ON DELETE RESTRICT ON UPDATE CASCADE;


