import type { StructureInputs } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import { StructuresRepository } from './structures.repository.js';
import { shelterOf } from './structures.dto.js';

/** What other domains may ask about structures. */
@Injectable()
export class StructuresRead {
  constructor(private readonly structures: StructuresRepository) {}

  async state(db: Db, id: string): Promise<'missing' | 'archived' | 'active'> {
    const structure = await this.structures.find(db, id);
    return structure === null ? 'missing' : structure.archivedAt === null ? 'active' : 'archived';
  }

  /** The structure as a plan takes it: without its name. */
  async forPlan(db: Db, id: string): Promise<StructureInputs | null> {
    const structure = await this.structures.find(db, id);
    return structure && { structureId: structure.id, ...shelterOf(structure) };
  }
}
