#!/bin/sh
# Runs once, when the Postgres volume is empty: the role that owns the tables, the role that serves, and their database.
set -eu
psql -v ON_ERROR_STOP=1 --username postgres --set owner_password="$LATHWORK_OWNER_PASSWORD" --set app_password="$LATHWORK_APP_PASSWORD" <<'SQL'
CREATE ROLE lathwork_owner LOGIN PASSWORD :'owner_password' NOSUPERUSER NOCREATEROLE NOBYPASSRLS;
CREATE ROLE lathwork_app LOGIN PASSWORD :'app_password' NOSUPERUSER NOCREATEROLE NOBYPASSRLS;
CREATE DATABASE lathwork OWNER lathwork_owner;
SQL
