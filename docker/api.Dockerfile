# The API: the only process that speaks HTTP to users and SQL to Postgres. Build from the project's root:
#   docker build -f docker/api.Dockerfile -t lathwork-api .
FROM node:20.20-bookworm-slim AS build
WORKDIR /app
COPY package.json package-lock.json .npmrc nx.json tsconfig.base.json prisma.config.ts ./
COPY apps/api/package.json apps/api/package.json
COPY apps/report/package.json apps/report/package.json
COPY libs/units/package.json libs/units/package.json
COPY libs/model/package.json libs/model/package.json
COPY libs/formats/package.json libs/formats/package.json
COPY libs/calc/package.json libs/calc/package.json
COPY libs/drawing/package.json libs/drawing/package.json
COPY libs/client/package.json libs/client/package.json
COPY tools/client-types/package.json tools/client-types/package.json
RUN npm ci --no-audit --no-fund
COPY . .
RUN node tools/setup.mjs && npm prune --omit=dev --no-audit --no-fund

FROM node:20.20-bookworm-slim
ENV NODE_ENV=production
WORKDIR /app
COPY --from=build --chown=node:node /app /app
RUN mkdir /mail && chown node:node /mail
USER node
ENV HOST=0.0.0.0 PORT=8080
EXPOSE 8080
CMD ["node", "apps/api/dist/main.js"]
