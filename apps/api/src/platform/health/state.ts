import { Injectable } from '@nestjs/common';

/** Whether the process is on its way out. Readiness says so at once; running requests still finish. */
@Injectable()
export class ServingState {
  draining = false;
  queueRunning = false;
}
