import { Injectable, type StreamableFile } from '@nestjs/common';
import type { Response } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { fileAnswer } from '../../platform/files/file-answer.js';
import { fail } from '../../platform/problems/problem.js';
import type { PackedFile } from '../../platform/uploads/zip.js';
import { PrivatesRead } from '../privacy/privates.read.js';
import { must } from '../shared/change.js';
import { ContentsRepository } from './contents.repository.js';
import { PERSON_FORMAT, TRANSFER_SCHEMA_VERSION } from './garden-file.js';
import { jsonFile, pack } from './packing.js';
import { RecordsRepository } from './records.repository.js';
import { tablesOf } from './tables.js';

/** Everything that is kept of one person, over all gardens, for that person alone. */
@Injectable()
export class AccountExportService {
  constructor(
    private readonly database: Database,
    private readonly contents: ContentsRepository,
    private readonly records: RecordsRepository,
    private readonly privates: PrivatesRead,
  ) {}

  async file(actor: Actor, response: Response): Promise<StreamableFile | undefined> {
    const accountId = actor.accountId ?? fail('person-only');
    const { account, gardens } = await this.database.readSnapshot(actor, async (db) => ({
      account: must(await this.records.account(db, accountId), 'account'),
      gardens: await this.records.gardensOf(db),
    }));
    const parts: { part: object; files: PackedFile[] }[] = [];
    for (const garden of gardens) parts.push(await this.ofGarden(accountId, garden));
    const person = { schemaVersion: TRANSFER_SCHEMA_VERSION, account, gardens: parts.map(({ part }) => part) };
    const bytes = await pack(PERSON_FORMAT, { packedAt: new Date().toISOString() }, [jsonFile('person.json', person), ...parts.flatMap(({ files }) => files)]);
    return fileAnswer(response, { name: 'my-data.zip', mediaType: 'application/zip', bytes });
  }

  private ofGarden(accountId: string, { gardenId, gardenName, memberId }: { gardenId: string; gardenName: string; memberId: string }) {
    return this.database.readSnapshot({ gardenId, accountId, memberId }, async (db) => {
      const lists = await this.contents.lists(db, { ownerMemberId: memberId, exactFor: new Set() });
      const { version: _version, ...privateDetails } = await this.privates.details(db, gardenId, memberId);
      const consents = await this.privates.history(db, memberId);
      const part = { gardenId, gardenName, privateDetails, consents, ...(await this.records.ofMember(db, memberId)), ...lists };
      const files = [...tablesOf(lists), ...(await this.contents.files(db, lists))];
      return { part, files: files.map(({ name, bytes }) => ({ name: `${gardenId}/${name}`, bytes })) };
    });
  }
}
