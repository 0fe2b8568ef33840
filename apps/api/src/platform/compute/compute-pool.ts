import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Inject, Injectable, type OnApplicationShutdown } from '@nestjs/common';
import type { PlanInputs, PlanResult, RoomName } from '@lathwork/model';
import { Piscina } from 'piscina';
import { CONFIG, type Config } from '../config/config.js';
import { Metrics } from '../metrics/metrics.js';
import { Problem } from '../problems/problem.js';
import { ENGINE_VERSION } from './engine.js';
import { inputsFaults } from './inputs-check.js';
import type { RoomBegun } from './worker.js';

export interface Computed {
  result: PlanResult;
  timingsMs: Partial<Record<RoomName, number>>;
}

/** A thread runs compiled code only; under a test runner this file is still TypeScript. */
const workerFile = (): string => {
  const here = dirname(fileURLToPath(import.meta.url));
  return join(import.meta.url.endsWith('.ts') ? here.replace(/([\\/])src([\\/])/, '$1dist$2') : here, 'worker.js');
};

/** Computes plans on threads of their own, so that a long one never holds up a request. */
@Injectable()
export class ComputePool implements OnApplicationShutdown {
  private pool: Piscina<PlanInputs, Computed> | null = null;
  /** Who wants to hear how far a plan has come, by its id. */
  private readonly listeners = new Map<string, (begun: RoomBegun) => void>();

  constructor(
    @Inject(CONFIG) private readonly config: Config,
    private readonly metrics: Metrics,
  ) {}

  async compute(inputs: PlanInputs, signal?: AbortSignal, onRoom?: (begun: RoomBegun) => void): Promise<Computed> {
    const faults = inputsFaults(inputs);
    if (faults.length > 0) throw new Problem('plan-failed', { reason: 'the inputs do not have the form that the calculation takes' }, faults);
    const limit = AbortSignal.timeout(this.config.computeTimeoutMs);
    if (onRoom) this.listeners.set(inputs.planId, onRoom);
    const ended = this.metrics.computes.startTimer();
    try {
      const computed = await this.threads().run(inputs, { signal: signal ? AbortSignal.any([signal, limit]) : limit });
      ended({ outcome: 'computed' });
      return computed;
    } catch (error) {
      ended({ outcome: limit.aborted ? 'timed-out' : signal?.aborted ? 'called-off' : 'failed' });
      if (limit.aborted) throw new Problem('timed-out', { what: 'The calculation' });
      throw error;
    } finally {
      if (onRoom) this.listeners.delete(inputs.planId);
    }
  }

  private threads(): Piscina<PlanInputs, Computed> {
    this.pool ??= this.open();
    return this.pool;
  }

  private open(): Piscina<PlanInputs, Computed> {
    const pool = new Piscina<PlanInputs, Computed>({
      filename: workerFile(),
      name: 'compute',
      minThreads: 1,
      maxThreads: this.config.computeThreads,
      maxQueue: 'auto',
      idleTimeout: 60_000,
      workerData: { engineVersion: ENGINE_VERSION },
      resourceLimits: { maxOldGenerationSizeMb: 512 },
    });
    pool.on('message', (begun: RoomBegun) => this.listeners.get(begun.planId)?.(begun));
    return pool;
  }

  async onApplicationShutdown(): Promise<void> {
    await this.pool?.destroy();
    this.pool = null;
  }
}
