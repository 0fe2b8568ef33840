import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import type { Db } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import { FileStore } from '../../platform/files/file-store.js';
import { readRaw, type RawBody } from '../../platform/http/raw-body.js';
import type { Reply } from '../../platform/http/reply.js';
import { Idempotency } from '../../platform/idempotency/idempotency.js';
import { Pictures, type Picture } from '../../platform/uploads/pictures.js';
import { must } from '../shared/change.js';
import { refuse, unpack, type Unpacked } from './archive-reading.js';
import { checkContents } from './contents-check.js';
import { ContentsRepository } from './contents.repository.js';
import { LISTS, type GardenContents } from './garden-file.js';
import { mustHoldTogether, newIds, withIds } from './id-mapping.js';
import type { Dropped, ImportReport, Renamed } from './imports.dto.js';
import { droppedOf } from './left-behind.js';
import { IntakeRepository } from './intake.repository.js';

export const ARCHIVE_BODY: RawBody = { mediaTypes: ['application/zip'], limit: 64 * 1_048_576 };

/** What taking in works with. */
@Injectable()
export class IntakeTools {
  constructor(
    readonly intake: IntakeRepository,
    readonly contents: ContentsRepository,
    readonly files: FileStore,
    readonly pictures: Pictures,
  ) {}
}

/** The first name of this kind that is free; it is taken from then on. */
const freeName = (wanted: string, taken: Set<string>, longest: number): string => {
  let name = wanted;
  for (let n = 2; taken.has(name); n += 1) name = `${wanted.slice(0, longest - String(n).length - 1)}-${n}`;
  taken.add(name);
  return name;
};

interface Settled {
  contents: GardenContents;
  renamed: Renamed[];
  dropped: Dropped[];
}

@Injectable()
export class ImportsService {
  constructor(
    private readonly idempotency: Idempotency,
    private readonly tools: IntakeTools,
  ) {}

  /** Everything is checked before anything is written, and all of it is written together or nothing is. */
  async take(actor: Actor, request: Request): Promise<Reply> {
    const { bytes } = await readRaw(request, ARCHIVE_BODY);
    const unpacked = await unpack(bytes);
    const contents = checkContents(unpacked.garden);
    mustHoldTogether(contents);
    const pictures = await this.picturesOf(contents, unpacked);
    return this.idempotency.creating(actor, request, async (db) => {
      const body = await this.write(db, actor, contents, pictures, droppedOf(unpacked));
      return { status: 201, body, location: '/v1/gardens/current' };
    });
  }

  /** Each picture is drawn anew, as if somebody had sent it. */
  private async picturesOf({ photos }: GardenContents, { files }: Unpacked): Promise<Map<string, Picture>> {
    const pictures = new Map<string, Picture>();
    for (const { id, file } of photos) {
      const bytes = files.get(file);
      if (bytes) pictures.set(id, await this.tools.pictures.takeIn(bytes));
    }
    return pictures;
  }

  private async write(db: Db, actor: Actor, from: GardenContents, pictures: ReadonlyMap<string, Picture>, left: Dropped[]): Promise<ImportReport> {
    const { intake, contents: read } = this.tools;
    const garden = must(await read.settings(db, actor.gardenId), 'garden');
    if (from.garden.invented && !garden.invented) refuse('it is invented example data, and this garden is a real one');
    const gardenWasEmpty = await intake.isEmpty(db);
    const ids = newIds(from, actor.gardenId);
    const { contents, renamed, dropped } = await this.settle(db, withIds(from, ids));
    if (gardenWasEmpty) await intake.takeSettings(db, actor.gardenId, contents.garden);
    await intake.write(db, actor.gardenId, actor.principalId, contents).catch((error: unknown) => notConsistent(error));
    const newIdOf = new Map(ids.map(({ from: old, to }) => [old, to]));
    const byNewId = new Map([...pictures].map(([old, picture]) => [newIdOf.get(old) ?? '', picture]));
    const photosCount = await this.writePhotos(db, actor, contents, byNewId);
    const lost = contents.photos.length - photosCount;
    const counts = { ...Object.fromEntries(LISTS.map((what) => [what, contents[what].length])), photos: photosCount };
    const gone = new Set([...contents.photos.filter(({ id }) => !byNewId.has(id)).map(({ id }) => id)]);
    await audit(db, actor, { action: 'garden.import', objectType: 'garden', objectId: actor.gardenId, after: counts });
    const known = new Set([actor.gardenId, ...LISTS.flatMap((what) => contents[what].map(({ id }) => id))]);
    return {
      gardenId: actor.gardenId,
      gardenWasEmpty,
      taken: LISTS.map((what) => ({ what, itemsCount: Number((counts as Record<string, number>)[what] ?? 0) })),
      dropped: [...left, ...dropped, ...(lost > 0 ? [{ what: 'photos', itemsCount: lost, why: 'Their files are not in the archive.' }] : [])],
      renamed,
      ids: ids.filter(({ to }) => known.has(to) && !gone.has(to)),
    };
  }

  private async writePhotos(db: Db, actor: Actor, { photos }: GardenContents, pictures: ReadonlyMap<string, Picture>): Promise<number> {
    let count = 0;
    for (const photo of photos) {
      const picture = pictures.get(photo.id);
      if (!picture) continue;
      const stored = await this.tools.files.put(db, actor.gardenId, { name: `photo-${newId()}.jpg`, mediaType: picture.mediaType, content: picture.bytes });
      const { widthPixelCount, heightPixelCount } = picture;
      await this.tools.intake.writePhoto(db, actor.gardenId, actor.principalId, photo, { id: stored.id, widthPixelCount, heightPixelCount });
      count += 1;
    }
    return count;
  }

  /** Names that are taken here are changed, rates that are here already are left out, and unknown stations become the nearest. */
  private async settle(db: Db, from: GardenContents): Promise<Settled> {
    const { intake } = this.tools;
    const taken = await intake.takenNames(db);
    const stations = await intake.knownStations(
      db,
      from.sites.flatMap(({ stationId }) => stationId ?? []),
    );
    const renamed: Renamed[] = [];
    const rename = (what: Renamed['what'], wanted: string, names: Set<string>, longest: number): string => {
      const name = freeName(wanted, names, longest);
      if (name !== wanted) renamed.push({ what, from: wanted, to: name });
      return name;
    };
    const tags = new Map<string, string>();
    const stock = from.stock.map((item) => ({ ...item, tag: rename('stockItem', item.tag, taken.tags, 20) }));
    from.stock.forEach(({ tag }, i) => tags.set(tag, stock[i]?.tag ?? tag));
    const tagNow = (tag: string | null): string | null => (tag === null ? null : (tags.get(tag) ?? tag));
    const structures = from.structures.map((item) => ({
      ...item,
      name: rename('structure', item.name, taken.structures, 120),
      frameStockTag: tagNow(item.frameStockTag),
      openings: item.openings.map((opening) => ({ ...opening, stockTag: tagNow(opening.stockTag) })),
      waterStores: item.waterStores.map((store) => ({ ...store, stockTag: tagNow(store.stockTag) })),
    }));
    const unknown = from.sites.filter(({ stationId }) => stationId !== null && !stations.has(stationId)).length;
    const sites = from.sites.map((item) => ({
      ...item,
      name: rename('site', item.name, taken.sites, 200),
      stationId: item.stationId !== null && stations.has(item.stationId) ? item.stationId : null,
    }));
    const exchangeRates = from.exchangeRates.filter(({ from: source, to, readOn }) => !taken.rates.has(`${source} ${to} ${readOn}`));
    const doubled = from.exchangeRates.length - exchangeRates.length;
    return {
      contents: { ...from, sites, structures, stock, exchangeRates },
      renamed,
      dropped: [
        ...(doubled > 0 ? [{ what: 'exchangeRates', itemsCount: doubled, why: 'A rate of the same currencies and day is here already.' }] : []),
        ...(unknown > 0 ? [{ what: 'climateStations', itemsCount: unknown, why: 'This server does not know the chosen station; the nearest is taken.' }] : []),
      ],
    };
  }
}

/** What the database refuses of a checked archive is the archive's fault: rows that contradict each other. */
const notConsistent = (error: unknown): never => {
  const { code, name } = (error ?? {}) as { code?: unknown; name?: unknown };
  const isConstraint =
    typeof name === 'string' && name.startsWith('PrismaClient') && code !== 'P2028' && code !== 'P2024' && code !== 'P1001' && code !== 'P1017';
  if (isConstraint) return refuse('some of its rows contradict each other');
  throw error;
};
