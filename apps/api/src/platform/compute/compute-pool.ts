import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Inject, Injectable, type OnApplicationShutdown } from '@nestjs/common';
import type { PlanInputs, PlanResult, RoomName } from '@lathwork/model';
import { Piscina } from 'piscina';
import { CONFIG, type Config } from '../config/config.js';
import { Problem } from '../problems/problem.js';
import { ENGINE_VERSION } from './engine.js';
import { inputsFaults } from './inputs-check.js';

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

  constructor(@Inject(CONFIG) private readonly config: Config) {}

  async compute(inputs: PlanInputs, signal?: AbortSignal): Promise<Computed> {
    const faults = inputsFaults(inputs);
    if (faults.length > 0) throw new Problem('plan-failed', { reason: 'the inputs do not have the form that the calculation takes' }, faults);
    const limit = AbortSignal.timeout(this.config.computeTimeoutMs);
    try {
      return await this.threads().run(inputs, { signal: signal ? AbortSignal.any([signal, limit]) : limit });
    } catch (error) {
      if (limit.aborted) throw new Problem('timed-out', { what: 'The calculation' });
      throw error;
    }
  }

  private threads(): Piscina<PlanInputs, Computed> {
    this.pool ??= new Piscina({
      filename: workerFile(),
      name: 'compute',
      minThreads: 1,
      maxThreads: this.config.computeThreads,
      maxQueue: 'auto',
      idleTimeout: 60_000,
      workerData: { engineVersion: ENGINE_VERSION },
      resourceLimits: { maxOldGenerationSizeMb: 512 },
    });
    return this.pool;
  }

  async onApplicationShutdown(): Promise<void> {
    await this.pool?.destroy();
    this.pool = null;
  }
}
