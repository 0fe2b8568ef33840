import { ANCHOR_KINDS, FILM_KINDS, STRUCTURE_KINDS, StructureInputsSchema, WALLS, type StructureInputs } from '@lathwork/model';
import { PartialType } from '@nestjs/swagger';
import { QuantitiesField, QuantityField } from '../../platform/http/quantity-field.js';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import { BooleanField, ChoiceField, IntegerField, ListField, ObjectField, PatternField, Shape, TextField } from '../shared/fields.js';
import { AS_TYPED, fieldsOf, KEPT, keptOf, OWNED, ownedOf } from '../shared/resource.js';
import type { StructureRecord } from './structures.repository.js';

@Shape('OpeningRequest')
export class OpeningDto {
  @PatternField(/^[DWV][0-9]{1,2}$/, 3, 'D1') openingId!: string;
  @ChoiceField(['door', 'window', 'vent']) kind!: 'door' | 'window' | 'vent';
  @ChoiceField(WALLS) wall!: (typeof WALLS)[number];
  @QuantityField('m', { min: 0, max: 100, description: "From the wall's left end as seen from outside" }) offsetM!: number;
  @QuantityField('m', { min: 0, max: 6, description: 'Lower edge above the ground line' }) bottomM!: number;
  @QuantityField('m', { min: 0.1, max: 6 }) widthM!: number;
  @QuantityField('m', { min: 0.1, max: 6 }) heightM!: number;
  @ChoiceField(['left', 'right', 'top', 'none']) hinge!: 'left' | 'right' | 'top' | 'none';
  @QuantityField('1', { min: 0, max: 1, description: 'Share of the opening that is free when it stands open' }) freeOpenFrac!: number;
  @ChoiceField(['none', 'tempered', 'laminated', 'annealed', 'wired', 'plastic', 'unknown'])
  glazing!: 'none' | 'tempered' | 'laminated' | 'annealed' | 'wired' | 'plastic' | 'unknown';
  @QuantityField('m2', { min: 0, max: 10, unknown: true }) largestPaneM2!: number | 'unknown';
  @TextField(20, { nullable: true, description: 'Tag of the salvaged thing that goes in, or null: to be bought or made' }) stockTag!: string | null;
}

@Shape('TubeRequest')
export class TubeDto {
  @ChoiceField(['round', 'square']) shape!: 'round' | 'square';
  @QuantityField('mm', { min: 8, max: 200, unknown: true }) outsideMm!: number | 'unknown';
  @QuantityField('mm', { min: 0.3, max: 12, unknown: true }) wallMm!: number | 'unknown';
  @ChoiceField(['none', 'surface', 'pitted', 'unknown']) rust!: 'none' | 'surface' | 'pitted' | 'unknown';
}

@Shape('CoverRequest')
export class CoverDto {
  @ChoiceField(FILM_KINDS) film!: (typeof FILM_KINDS)[number];
  @QuantityField('mm', { min: 0.03, max: 1 }) thicknessMm!: number;
  @QuantityField('a', { min: 0, max: 30, unknown: true }) ageY!: number | 'unknown';
  @QuantityField('m', { min: 0.5, max: 20 }) rollWidthM!: number;
  @QuantityField('m', { min: 0, max: 1.5, description: 'Extra film at each edge to roll round a batten' }) wrapM!: number;
  @BooleanField() secondFilm!: boolean;
  @BooleanField({ description: 'A row cover over the crop on cold nights' }) innerCover!: boolean;
  @QuantityField('1', { min: 0, max: 0.95 }) shadeFrac!: number;
}

@Shape('AnchorRequest')
export class AnchorDto {
  @ChoiceField(ANCHOR_KINDS) kind!: (typeof ANCHOR_KINDS)[number];
  @IntegerField({ min: 0, max: 4 }) perPostCount!: number;
  @QuantityField('m', { min: 0, max: 3, unknown: true }) depthM!: number | 'unknown';
  @QuantityField('m', { min: 0, max: 1.5, unknown: true }) diameterM!: number | 'unknown';
  @QuantityField('N.m', { min: 0, max: 20_000, unknown: true }) installTorqueNm!: number | 'unknown';
  @QuantityField('N', { min: 0, max: 100_000, unknown: true, description: 'Measured by a pull check on this ground' }) pulledToN!: number | 'unknown';
  @QuantityField('kg', { min: 0, max: 5000, unknown: true }) ballastKg!: number | 'unknown';
  @BooleanField() ballastIsWater!: boolean;
}

@Shape('WaterStoreRequest')
export class WaterStoreDto {
  @TextField(20, { nullable: true }) stockTag!: string | null;
  @QuantityField('L', { min: 1, max: 5000 }) volumeL!: number;
  @IntegerField({ min: 1, max: 200 }) count!: number;
  @ChoiceField(['dark', 'mid', 'light']) colour!: 'dark' | 'mid' | 'light';
}

@Shape('MeasuredRaftersRequest')
export class MeasuredRaftersDto {
  @QuantityField('m', { min: 0.1, max: 12 }) leftM!: number;
  @QuantityField('m', { min: 0.1, max: 12 }) rightM!: number;
}

@Shape('HostWallRequest')
export class HostWallDto {
  @ChoiceField(['masonry', 'timber', 'unknown']) material!: 'masonry' | 'timber' | 'unknown';
  @QuantityField('m', { min: 1, max: 30 }) heightM!: number;
  @ChoiceField(['yes', 'no', 'unknown']) roofShedsOntoIt!: 'yes' | 'no' | 'unknown';
}

@Shape('StructureRequest', 'A shelter: its frame, openings, cover, anchors. Lengths are metres, or typed with their own unit ("10 ft").')
export class StructureDto {
  @TextField(120, { optional: true, description: 'What people call it; a label is made when it is left out' }) name?: string | null;
  @ChoiceField(STRUCTURE_KINDS) kind!: (typeof STRUCTURE_KINDS)[number];
  @QuantityField('m', { min: 0.9, max: 12 }) widthM!: number;
  @QuantityField('m', { min: 0.9, max: 60 }) lengthM!: number;
  @QuantityField('m', { min: 0, max: 4 }) eaveM!: number;
  @QuantityField('m', { min: 0.9, max: 7 }) ridgeM!: number;
  @QuantityField('deg', { min: 0, max: 360, description: 'True bearing that the front end wall faces, clockwise from north' }) frontFacesDeg!: number;
  @QuantitiesField('m', { min: 0, max: 60, minItems: 2, maxItems: 60, description: 'Stations of the bows or posts along the length' }) bowsAtM!: number[];
  @ObjectField(() => MeasuredRaftersDto, { nullable: true }) measuredRaftersM!: MeasuredRaftersDto | null;
  @ObjectField(() => TubeDto) tube!: TubeDto;
  @QuantityField('kg', { min: 1, max: 5000, unknown: true }) frameMassKg!: number | 'unknown';
  @TextField(20, { nullable: true }) frameStockTag!: string | null;
  @ChoiceField(['none', 'endBays', 'everyBay', 'unknown']) braced!: 'none' | 'endBays' | 'everyBay' | 'unknown';
  @ListField(() => OpeningDto, { max: 40 }) openings!: OpeningDto[];
  @ObjectField(() => CoverDto) cover!: CoverDto;
  @ChoiceField(['soil', 'mulch', 'gravel', 'brick', 'decking']) floor!: 'soil' | 'mulch' | 'gravel' | 'brick' | 'decking';
  @BooleanField() floorMoist!: boolean;
  @QuantityField('m2', { min: 0, max: 700 }) bedsM2!: number;
  @ChoiceField(['sealed', 'ordinary', 'gappy']) airLeaks!: 'sealed' | 'ordinary' | 'gappy';
  @ListField(() => WaterStoreDto, { max: 20 }) waterStores!: WaterStoreDto[];
  @ObjectField(() => AnchorDto) anchor!: AnchorDto;
  @ObjectField(() => HostWallDto, { nullable: true }) hostWall!: HostWallDto | null;
  @BooleanField({ optional: true, description: 'Whether the other members see it and a coordinator may change it; left out: no' }) shared?: boolean | null;
}

@Shape('StructurePatch', 'Merge patch (RFC 7396): only the fields to change; the result is checked as a whole.')
export class StructurePatchDto extends PartialType(StructureDto) {}

export type StructureResponse = StructureRecord;

export const StructureSchema = namedSchema(
  'Structure',
  S.object({ ...KEPT, ...OWNED, name: S.text(120), ...fieldsOf(StructureInputsSchema, 'structureId'), asTyped: AS_TYPED }),
);

type Shelter = Omit<StructureInputs, 'structureId'>;

/** The shelter alone, without its name and bookkeeping: each field is listed, so that nothing else can slip through. */
export const shelterOf = (from: Shelter): Shelter => ({
  kind: from.kind,
  widthM: from.widthM,
  lengthM: from.lengthM,
  eaveM: from.eaveM,
  ridgeM: from.ridgeM,
  frontFacesDeg: from.frontFacesDeg,
  bowsAtM: from.bowsAtM,
  measuredRaftersM: from.measuredRaftersM,
  tube: from.tube,
  frameMassKg: from.frameMassKg,
  frameStockTag: from.frameStockTag,
  braced: from.braced,
  openings: from.openings,
  cover: from.cover,
  floor: from.floor,
  floorMoist: from.floorMoist,
  bedsM2: from.bedsM2,
  airLeaks: from.airLeaks,
  waterStores: from.waterStores,
  anchor: from.anchor,
  hostWall: from.hostWall,
});

/** The record in the shape of the request, for a merge patch to work on. */
export const toRequest = (structure: StructureRecord): StructureDto => ({
  name: structure.name,
  shared: structure.shared,
  ...shelterOf(structure),
});

export const toResponse = (structure: StructureRecord): StructureResponse => ({
  ...keptOf(structure),
  ...ownedOf(structure),
  name: structure.name,
  ...shelterOf(structure),
  asTyped: structure.asTyped,
});
