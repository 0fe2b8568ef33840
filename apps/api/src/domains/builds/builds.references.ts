import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { FieldFault } from '../../platform/problems/problem.js';
import { SitesRead } from '../sites/sites.read.js';
import { StructuresRead } from '../structures/structures.read.js';

/** Whether what a build points to is there. */
@Injectable()
export class BuildReferences {
  constructor(
    private readonly sites: SitesRead,
    private readonly structures: StructuresRead,
  ) {}

  async faultsOf(db: Db, build: { siteId: string; structureId: string }): Promise<FieldFault[]> {
    const found = [
      ['/siteId', 'site', await this.sites.state(db, build.siteId)],
      ['/structureId', 'structure', await this.structures.state(db, build.structureId)],
    ] as const;
    return found.flatMap(([pointer, what, state]) => {
      if (state === 'active') return [];
      const detail = state === 'missing' ? `There is no ${what} with this id in this garden.` : `The ${what} is archived.`;
      return [{ pointer, code: state === 'missing' ? 'not-found' : 'archived', detail, remedy: state === 'missing' ? 'Check the id.' : 'Restore it first.' }];
    });
  }
}
