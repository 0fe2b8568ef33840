import { PartialType } from '@nestjs/swagger';
import type { NewKey } from '../../platform/access/key.js';
import { SCOPES, type Scope } from '../../platform/access/scopes.js';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import { BooleanField, ChoiceField, ChoicesField, CurrencyField, DayField, IntegerField, PatternField, Shape, TextField } from '../shared/fields.js';
import { KEPT, keptOf } from '../shared/resource.js';
import type { GardenFields, GardenRecord, GardenSettings, KeyRecord } from './gardens.repository.js';

@Shape('GardenSettingsRequest')
export class GardenSettingsDto {
  @TextField(200) name!: string;
  @PatternField(/^[a-z]{2,3}(-[A-Z]{2})?$/, 6, 'en-GB', { description: 'Language and region of the garden' }) locale!: string;
  @CurrencyField() currency!: string;
  @ChoiceField(['metric', 'us']) unitSystem!: 'metric' | 'us';
  @IntegerField(
    { min: 0, max: 9_000_000_000_000 },
    { optional: true, description: 'What a coordinator may approve alone, in minor units of the currency; left out or null: no limit' },
  )
  coordinatorLimitMinor?: number | null;
  @IntegerField({ min: 0, max: 9_000_000_000_000 }, { optional: true, description: 'What a treasurer may approve alone; left out or null: no limit' })
  treasurerLimitMinor?: number | null;
}

@Shape('GardenRequest')
export class GardenDto extends GardenSettingsDto {
  @BooleanField({ optional: true, description: 'Invented example data: every page that is printed says so. It cannot be taken away later.' }) invented?:
    boolean | null;
  @TextField(120, { optional: true, description: 'Who uses the first key; it is printed on plans made with it. Left out: coordinator’s key' }) keyName?:
    string | null;
}

@Shape('GardenPatch', 'Merge patch (RFC 7396): only the fields to change; the result is checked as a whole.')
export class GardenPatchDto extends PartialType(GardenSettingsDto) {}

@Shape('KeyRequest')
export class KeyDto {
  @TextField(120, { description: 'Who or what uses the key; it is printed on plans made with it' }) name!: string;
  @ChoicesField(SCOPES, SCOPES.length, { minItems: 1 }) scopes!: Scope[];
  @DayField({ optional: true, description: 'The key ends with the beginning of this day (UTC)' }) expiresOn?: string | null;
}

export type KeyResponse = KeyRecord;

const KEY = {
  id: S.id(),
  name: S.text(200),
  prefix: S.text(11),
  scopes: S.list(S.choice(...SCOPES), 40),
  expiresAt: S.orNull(S.moment()),
  lastUsedAt: S.orNull(S.moment()),
  revokedAt: S.orNull(S.moment()),
  createdAt: S.moment(),
};
const SECRET = { ...S.text(80), description: 'The key itself. It is shown this once and stored nowhere.' };

export const GardenSchema = namedSchema(
  'Garden',
  S.object({
    ...KEPT,
    name: S.text(200),
    locale: S.text(10),
    currency: S.text(3),
    unitSystem: S.choice('metric', 'us'),
    coordinatorLimitMinor: S.orNull(S.whole(0, 9_000_000_000_000)),
    treasurerLimitMinor: S.orNull(S.whole(0, 9_000_000_000_000)),
    invented: S.flag(),
  }),
);
export const KeySchema = namedSchema('Key', S.object(KEY));
export const NewKeySchema = namedSchema('NewKey', S.object({ ...KEY, key: SECRET }));
export const NewGardenSchema = namedSchema('NewGarden', S.object({ garden: GardenSchema, key: S.orNull(NewKeySchema) }));

export const toSettings = (from: GardenSettingsDto): GardenSettings => ({
  name: from.name,
  locale: from.locale,
  currency: from.currency,
  unitSystem: from.unitSystem,
  coordinatorLimitMinor: from.coordinatorLimitMinor ?? null,
  treasurerLimitMinor: from.treasurerLimitMinor ?? null,
});

/** The first key of a garden as it is shown the one time. */
export const toNewKey = (id: string, name: string, key: NewKey, createdAt: string): KeyResponse & { key: string } => ({
  id,
  name,
  prefix: key.prefix,
  scopes: [...SCOPES],
  expiresAt: null,
  lastUsedAt: null,
  revokedAt: null,
  createdAt,
  key: key.key,
});

export const toFields = (from: GardenDto): GardenFields => ({ ...toSettings(from), invented: from.invented ?? false });

export const toResponse = (garden: GardenRecord): GardenRecord => ({ ...keptOf(garden), ...toSettings(garden), invented: garden.invented });

export const toKeyResponse = (key: KeyRecord): KeyRecord => ({
  id: key.id,
  name: key.name,
  prefix: key.prefix,
  scopes: key.scopes,
  expiresAt: key.expiresAt,
  lastUsedAt: key.lastUsedAt,
  revokedAt: key.revokedAt,
  createdAt: key.createdAt,
});
