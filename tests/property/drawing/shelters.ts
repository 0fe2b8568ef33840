import fc from 'fast-check';
import type { Opening, StructureInputs } from '@lathwork/model';
import { computeGeometry } from '@lathwork/calc';
import type { Shelter } from '@lathwork/drawing';
import { inlandCanopy } from '../../support/gardens.js';

const mm = (min: number, max: number) => fc.integer({ min, max }).map((v) => v / 1000);

const anOpening = (kind: Opening['kind'], number: number) =>
  fc
    .record({
      wall: fc.constantFrom('front' as const, 'back' as const, 'left' as const, 'right' as const),
      offset: fc.double({ min: 0.02, max: 0.85, noNaN: true }),
      bottomM: kind === 'door' ? fc.constant(0) : mm(100, 1600),
      widthM: mm(300, 1300),
      heightM: kind === 'door' ? mm(1700, 2200) : mm(250, 1200),
      hinge: fc.constantFrom('left' as const, 'right' as const, 'top' as const, 'none' as const),
      tagged: fc.boolean(),
    })
    .map((r) => ({ ...r, kind, number }));

/** Random shelters of all three kinds, small sheds to long tunnels, with up to six openings where they fit. */
export const shelters = fc
  .record({
    kind: fc.constantFrom('gableCanopy' as const, 'roundArch' as const, 'leanTo' as const),
    widthM: mm(1200, 7500),
    lengthM: mm(1500, 24000),
    eaveM: mm(1300, 2400),
    riseM: mm(250, 2200),
    spacingM: mm(700, 2600),
    frontFacesDeg: fc.integer({ min: 0, max: 359 }),
    outsideMm: fc.oneof(fc.integer({ min: 19, max: 60 }), fc.constant('unknown' as const)),
    braced: fc.constantFrom('none' as const, 'endBays' as const, 'everyBay' as const),
    bedsFrac: fc.double({ min: 0, max: 0.7, noNaN: true }),
    openings: fc.tuple(
      anOpening('door', 1),
      anOpening('door', 2),
      anOpening('window', 1),
      anOpening('window', 2),
      anOpening('window', 3),
      anOpening('vent', 1),
    ),
    drawn: fc.integer({ min: 0, max: 6 }),
  })
  .map((r): Shelter => {
    const bays = Math.max(1, Math.round(r.lengthM / r.spacingM));
    const openings = r.openings.slice(0, r.drawn).map((o): Opening => {
      const wallM = o.wall === 'front' || o.wall === 'back' ? r.widthM : r.lengthM;
      const letter = { door: 'D', window: 'W', vent: 'V' }[o.kind];
      return {
        openingId: `${letter}${o.number}`,
        kind: o.kind,
        wall: o.wall,
        offsetM: Math.round(wallM * o.offset * 1000) / 1000,
        bottomM: o.bottomM,
        widthM: o.widthM,
        heightM: o.heightM,
        hinge: o.hinge,
        freeOpenFrac: 0.5,
        glazing: 'none',
        largestPaneM2: 0,
        stockTag: o.tagged ? 'XX-001' : null,
      };
    });
    const structure: StructureInputs = {
      ...inlandCanopy.structure,
      kind: r.kind,
      widthM: r.widthM,
      lengthM: r.lengthM,
      eaveM: r.kind === 'roundArch' ? Math.round(r.eaveM * 300) / 1000 : r.eaveM,
      ridgeM: Math.round((r.kind === 'roundArch' ? r.eaveM * 0.3 + Math.max(r.riseM, 1.2) : r.eaveM + r.riseM) * 1000) / 1000,
      frontFacesDeg: r.frontFacesDeg,
      bowsAtM: Array.from({ length: bays + 1 }, (_, i) => Math.round((r.lengthM * i * 1000) / bays) / 1000),
      measuredRaftersM: null,
      tube: { ...inlandCanopy.structure.tube, outsideMm: r.outsideMm },
      braced: r.braced,
      bedsM2: r.widthM * r.lengthM * r.bedsFrac,
      openings,
      hostWall: r.kind === 'leanTo' ? { material: 'masonry', heightM: 4, roofShedsOntoIt: 'no' } : null,
    };
    return { structure, geometry: computeGeometry({ structure }).result };
  });
