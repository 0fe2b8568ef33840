# The report app: takes a finished plan, gives a PDF. No database, no way out to a network. Build from the root:
#   docker build -f docker/report.Dockerfile -t lathwork-report .
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
USER node
ENV REPORT_HOST=0.0.0.0 REPORT_PORT=8081
EXPOSE 8081
CMD ["node", "apps/report/dist/main.js"]
