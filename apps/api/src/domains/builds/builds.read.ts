import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import { must, mustNotBeArchived } from '../shared/change.js';
import { BuildsRepository, type BuildRecord } from './builds.repository.js';

/** What other domains may ask about builds. */
@Injectable()
export class BuildsRead {
  constructor(private readonly builds: BuildsRepository) {}

  async mustExist(db: Db, id: string): Promise<BuildRecord> {
    return must(await this.builds.find(db, id), 'build');
  }

  async mustBeActive(db: Db, id: string): Promise<BuildRecord> {
    const build = await this.mustExist(db, id);
    mustNotBeArchived(build, 'build');
    return build;
  }

  async exists(db: Db, id: string): Promise<boolean> {
    return (await this.builds.find(db, id)) !== null;
  }

  async name(db: Db, id: string): Promise<string | null> {
    return (await this.builds.find(db, id))?.name ?? null;
  }
}
