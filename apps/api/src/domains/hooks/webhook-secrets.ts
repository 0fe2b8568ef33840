import { Injectable } from '@nestjs/common';
import { Sealer } from '../../platform/sealing/sealer.js';
import type { SealedSecrets } from './webhooks.repository.js';

const PURPOSE = 'webhook secret';

/** Secrets are needed again and again to sign, so they cannot be hashed; what the database keeps of them is sealed. */
@Injectable()
export class WebhookSecrets {
  constructor(private readonly sealer: Sealer) {}

  seal(webhookId: string, secret: string): Uint8Array {
    return this.sealer.seal(PURPOSE, webhookId, secret);
  }

  /** The secrets that sign at a moment, the newest first. */
  signing(webhookId: string, sealed: SealedSecrets, at: Date): string[] {
    const all = [sealed.current, ...(sealed.former && sealed.former.until > at ? [sealed.former.sealed] : [])];
    return all.map((one) => this.sealer.open(PURPOSE, webhookId, one));
  }
}
