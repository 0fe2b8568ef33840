/** Thrown at once when too many are waiting: better an honest "come back" than a line nobody gets through. */
export class QueueFullError extends Error {
  constructor(readonly waiting: number) {
    super('the print queue is full');
  }
}

/** At most `concurrency` jobs run and at most `waitingLimit` wait, first come first served. */
export class BoundedQueue {
  private running = 0;
  private readonly waiting: (() => void)[] = [];
  private idle: (() => void)[] = [];

  constructor(
    private readonly concurrency: number,
    private readonly waitingLimit: number,
  ) {}

  get load(): { running: number; waiting: number } {
    return { running: this.running, waiting: this.waiting.length };
  }

  async run<T>(work: () => Promise<T>): Promise<T> {
    if (this.running >= this.concurrency) {
      if (this.waiting.length >= this.waitingLimit) throw new QueueFullError(this.waiting.length);
      // The one that leaves hands its place over, so `running` is not counted up again here.
      await new Promise<void>((resolve) => this.waiting.push(resolve));
    } else this.running += 1;
    try {
      return await work();
    } finally {
      const next = this.waiting.shift();
      if (next !== undefined) next();
      else {
        this.running -= 1;
        if (this.running === 0) for (const done of this.idle.splice(0)) done();
      }
    }
  }

  /** Resolves when nothing runs and nothing waits. */
  async drained(): Promise<void> {
    if (this.running === 0) return;
    await new Promise<void>((resolve) => this.idle.push(resolve));
  }
}
