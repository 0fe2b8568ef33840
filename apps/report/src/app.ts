import type { Server } from 'node:http';
import type { ReportConfig } from './config.js';
import { createReportServer, type LogEvent } from './http/server.js';
import { findBrowser } from './print/chromium.js';
import { launchBrowser } from './print/launch.js';
import { BoundedQueue } from './print/queue.js';
import { Renderer } from './print/renderer.js';
import { BrowserSupervisor } from './print/supervisor.js';

const RENDERS_PER_BROWSER = 60;
const RESIDENT_LIMIT_BYTES = 1_200_000_000;

export interface ReportApp {
  server: Server;
  renderer: Renderer;
  /** Stops taking requests, lets running ones finish, closes the browser. */
  stop: () => Promise<void>;
}

export function createApp(config: ReportConfig, log: LogEvent): ReportApp {
  const supervisor = new BrowserSupervisor(async () => launchBrowser(await findBrowser(config.browserPath, config.cacheFolder)), {
    renders: RENDERS_PER_BROWSER,
    residentBytes: RESIDENT_LIMIT_BYTES,
  });
  const queue = new BoundedQueue(config.concurrency, config.queueLimit);
  const renderer = new Renderer(supervisor, queue, config.timeoutMs, () => performance.now());
  const isReady = (): Promise<boolean> =>
    supervisor.version().then(
      () => true,
      () => false,
    );
  const server = createReportServer({
    secret: config.secret,
    bodyLimitBytes: config.bodyLimitBytes,
    render: (request) => renderer.render(request),
    isReady,
    log,
  });
  const stop = async (): Promise<void> => {
    const closed = new Promise<void>((resolve) => server.close(() => resolve()));
    server.closeIdleConnections();
    await renderer.drained();
    await closed;
    await supervisor.close();
  };
  return { server, renderer, stop };
}
