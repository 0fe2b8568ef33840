import { Injectable, type OnModuleInit } from '@nestjs/common';
import { Database, type Db } from '../../platform/database/database.js';
import { FileStore } from '../../platform/files/file-store.js';
import { claimAttempt, finish, giveUp } from '../../platform/jobs/fence.js';
import { Tasks, type Job, type Task, type TellProgress } from '../../platform/jobs/jobs.js';
import { fail, type ProblemBody } from '../../platform/problems/problem.js';
import { ConsentsRead } from '../privacy/consents.read.js';
import { must } from '../shared/change.js';
import { ContentsRepository } from './contents.repository.js';
import { GARDEN_FORMAT, TRANSFER_SCHEMA_VERSION, type GardenContents } from './garden-file.js';
import { EXPORT_GARDEN } from './garden-exports.service.js';
import { GardenExportsRepository } from './garden-exports.repository.js';
import { jsonFile, MOST_BYTES, pack } from './packing.js';
import { RecordsRepository } from './records.repository.js';
import { tablesOf } from './tables.js';

const KEPT_MS = 24 * 3_600_000;

/** Reads a garden as it is packed. What is private of its members is not among it. */
@Injectable()
export class GardenPacker {
  constructor(
    private readonly contents: ContentsRepository,
    private readonly records: RecordsRepository,
    private readonly consents: ConsentsRead,
  ) {}

  async pack(db: Db, gardenId: string, withFiles: boolean): Promise<Buffer> {
    if (withFiles && (await this.contents.weigh(db)) > MOST_BYTES) fail('archive-too-large', { limit: MOST_BYTES });
    const exactFor = await this.consents.givenBy(db, { roles: [] }, await this.contents.owners(db), 'exactLocation');
    const garden = must(await this.contents.settings(db, gardenId), 'garden');
    const lists = await this.contents.lists(db, { ownerMemberId: null, exactFor });
    const whole: GardenContents = { schemaVersion: TRANSFER_SCHEMA_VERSION, garden, ...lists };
    const records = await this.records.ofGarden(db);
    const files = withFiles ? await this.contents.files(db, lists) : [];
    const about = { packedAt: new Date().toISOString(), gardenId, gardenName: garden.name, withFiles };
    return pack(GARDEN_FORMAT, about, [jsonFile('garden.json', whole), jsonFile('records.json', records), ...tablesOf(lists), ...files]);
  }
}

/** What the task works with, so that its constructor stays short. */
@Injectable()
export class ExportTools {
  constructor(
    readonly exports: GardenExportsRepository,
    readonly packer: GardenPacker,
    readonly files: FileStore,
  ) {}
}

/** Packs a garden. Bytes and the end of the row are written together, by the worker that holds the newest attempt. */
@Injectable()
export class ExportGardenTask implements Task, OnModuleInit {
  constructor(
    private readonly database: Database,
    private readonly tools: ExportTools,
    private readonly tasks: Tasks,
  ) {}

  onModuleInit(): void {
    this.tasks.register(EXPORT_GARDEN, this);
  }

  async run(job: Job, _signal: AbortSignal, tell: TellProgress): Promise<void> {
    const { exports, packer, files } = this.tools;
    const attempt = await this.database.inTransaction(job, (db) => claimAttempt(db, 'gardenExport', job.id, { state: 'packing' }));
    if (attempt === null) return;
    tell(attempt, 5, 'collecting');
    const content = await this.database.readSnapshot(job, async (db) => {
      const record = must(await exports.find(db, job.id), 'export');
      return packer.pack(db, job.gardenId, record.withFiles);
    });
    tell(attempt, 90, 'storing');
    await this.database.inTransaction(job, async (db) => {
      for (const fileId of await exports.releaseOld(db, new Date())) await files.remove(db, fileId);
      const file = await files.put(db, job.gardenId, { name: `garden-${job.id}.zip`, mediaType: 'application/zip', content });
      await finish(db, 'gardenExport', job.id, attempt, {
        state: 'ready',
        fileId: file.id,
        sha256: file.sha256,
        byteCount: file.byteCount,
        expiresAt: new Date(Date.now() + KEPT_MS),
      });
    });
  }

  async failed(job: Job, problem: ProblemBody): Promise<void> {
    await this.database.inTransaction(job, (db) => this.cancel(db, job, problem));
  }

  async cancel(db: Db, job: Job, problem: ProblemBody): Promise<void> {
    await giveUp(db, 'gardenExport', job.id, problem);
  }
}
