import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import { BuildsRead } from '../builds/builds.read.js';
import { StockRead } from '../stock/stock.read.js';
import type { PhotoSubject } from './photos.repository.js';

/** Asks the domain of what is shown whether it is there. */
@Injectable()
export class PhotoSubjects {
  constructor(
    private readonly stock: StockRead,
    private readonly builds: BuildsRead,
  ) {}

  async mustExist(db: Db, { kind, id }: PhotoSubject): Promise<void> {
    await (kind === 'build' ? this.builds.mustExist(db, id) : this.stock.mustExist(db, id));
  }

  async mustBeActive(db: Db, { kind, id }: PhotoSubject): Promise<void> {
    await (kind === 'build' ? this.builds.mustBeActive(db, id) : this.stock.mustBeActive(db, id));
  }
}
