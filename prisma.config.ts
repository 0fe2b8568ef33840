import { defineConfig } from 'prisma/config';

// The owner's URL, because migrations make tables; the application itself never reads this file.
export default defineConfig({
  schema: 'prisma/schema.prisma',
  migrations: { path: 'prisma/migrations' },
  datasource: { url: process.env['DATABASE_OWNER_URL'] ?? process.env['DATABASE_URL'] ?? '' },
});
