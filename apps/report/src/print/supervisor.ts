import type { Browser } from 'puppeteer-core';
import { treeResidentBytes } from './memory.js';

export interface SupervisorLimits {
  /** A browser is replaced after this many renders. */
  renders: number;
  /** And when it and its children hold more than this. */
  residentBytes: number;
}

interface Held {
  browser: Browser;
  active: number;
  renders: number;
  retired: boolean;
}

/** Keeps one browser ready, starts another when it crashes, and replaces it before it grows old. */
export class BrowserSupervisor {
  private current: Promise<Held> | null = null;
  private starts = 0;
  private closed = false;

  constructor(
    private readonly launch: () => Promise<Browser>,
    private readonly limits: SupervisorLimits,
  ) {}

  get startCount(): number {
    return this.starts;
  }

  async use<T>(work: (browser: Browser) => Promise<T>): Promise<T> {
    const held = await this.hold();
    held.active += 1;
    try {
      return await work(held.browser);
    } finally {
      held.active -= 1;
      held.renders += 1;
      this.retireIfOld(held);
      if (held.retired && held.active === 0) await held.browser.close().catch(() => undefined);
    }
  }

  async version(): Promise<string> {
    return (await this.hold()).browser.version();
  }

  async close(): Promise<void> {
    this.closed = true;
    const held = await this.current?.catch(() => null);
    this.current = null;
    await held?.browser.close().catch(() => undefined);
  }

  private async hold(): Promise<Held> {
    if (this.closed) throw new Error('the renderer is shutting down');
    this.current ??= this.start();
    try {
      return await this.current;
    } catch (error) {
      this.current = null;
      throw error;
    }
  }

  private async start(): Promise<Held> {
    this.starts += 1;
    const held: Held = { browser: await this.launch(), active: 0, renders: 0, retired: false };
    held.browser.once('disconnected', () => this.retire(held));
    return held;
  }

  private retireIfOld(held: Held): void {
    const pid = held.browser.process()?.pid;
    const resident = pid === undefined ? null : treeResidentBytes(pid);
    if (held.renders >= this.limits.renders || (resident ?? 0) > this.limits.residentBytes) this.retire(held);
  }

  private retire(held: Held): void {
    if (held.retired) return;
    held.retired = true;
    // Whoever comes next starts a new one; renders under way finish on the old one.
    this.current = null;
  }
}
