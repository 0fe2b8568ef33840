import { describe, expect, test } from '@jest/globals';
import { computeGeometry } from '@lathwork/calc';
import type { StructureInputs } from '@lathwork/model';
import { notFinite } from '../../support/finite.js';
import { inlandCanopy, inlandTunnel, maritimeLeanTo, southernCanopy } from '../../support/gardens.js';
import { opening, referenceCanopy, structureWith } from '../../support/structures.js';

const codes = (structure: StructureInputs) => computeGeometry({ structure }).notes.map((n) => n.code);
const noteOf = (structure: StructureInputs, code: string) => {
  const note = computeGeometry({ structure }).notes.find((n) => n.code === code);
  if (!note) throw new Error(`no note ${code} among ${codes(structure).join(', ')}`);
  return note;
};

describe('openings', () => {
  test('a door taller than the eave of a side wall stops with the shortfall and the remedies, and is not drawn', () => {
    const structure = structureWith({
      openings: [
        opening({ openingId: 'D1', kind: 'door', wall: 'left', offsetM: 1, bottomM: 0, widthM: 0.85, heightM: 2.08, glazing: 'none', freeOpenFrac: 1 }),
      ],
    });
    const note = noteOf(structure, 'geometry.opening-too-tall');
    expect(note.severity).toBe('stop');
    expect(note.params['shortfallM']).toBeCloseTo(2.08 - 1.981, 6);
    expect(note.params['remedies']).toEqual(['moveUnderRidge', 'lowerThreshold', 'trimIfSolidWood', 'otherTag']);
    // Under the ridge, 0.85 m wide: the lower corner is 0.425 m off the middle, where the roof stands at 2.743 - 0.425 / 1.524 * 0.762.
    expect(note.params['tallestInEndWallM']).toBeCloseTo(2.743 - (0.425 / 1.524) * 0.762, 3);
    const { result } = computeGeometry({ structure });
    expect(result.openings[0]).toMatchObject({ fits: false, corners: [], freeAreaM2: 0 });
    expect(result.faces.map((f) => f.openingsM2)).toEqual([0, 0, 0, 0, 0, 0]);
    expect(result.members.filter((m) => m.memberId.startsWith('D1'))).toEqual([]);
  });

  test('headroom is measured at the lower outer corner under a sloping roof', () => {
    const { result } = computeGeometry({ structure: structureWith({ openings: [opening({ offsetM: 0.2, bottomM: 1, widthM: 0.5, heightM: 1 })] }) });
    expect(result.openings[0]?.headroomM).toBeCloseTo(1.981 + (0.2 / 1.524) * 0.762 - 2, 6);
    expect(result.openings[0]?.fits).toBe(true);
  });

  test('the corners of no fitting opening stand above the roof line', () => {
    for (const { structure } of [inlandCanopy, inlandTunnel, maritimeLeanTo, southernCanopy]) {
      const { result } = computeGeometry({ structure });
      const highest = Math.max(...result.bowProfile.map((q) => q.zM));
      expect(result.openings.every((o) => o.fits && o.corners.length === 4 && o.corners.every((c) => c.zM <= highest))).toBe(true);
    }
  });

  test('a back opening counts its offset from the left end as seen from outside', () => {
    const { result } = computeGeometry({ structure: structureWith({ openings: [opening({ wall: 'back', offsetM: 0.5, widthM: 0.6 })] }) });
    expect(result.openings[0]?.corners.map((c) => c.xM)).toEqual([expect.closeTo(2.548), expect.closeTo(1.948), expect.closeTo(1.948), expect.closeTo(2.548)]);
  });

  test('overlapping openings, one off the wall, one in a wall that is not there', () => {
    expect(codes(structureWith({ openings: [opening({}), opening({ openingId: 'W2', offsetM: 1.0 })] }))).toEqual(['geometry.openings-overlap']);
    expect(codes(structureWith({ openings: [opening({}), opening({ openingId: 'W2', offsetM: 1.1 })] }))).toEqual([]);
    expect(noteOf(structureWith({ openings: [opening({ wall: 'left', offsetM: 5.8 })] }), 'geometry.opening-off-the-wall').params['overhangM']).toBeCloseTo(
      0.304,
      6,
    );
    expect(codes({ ...maritimeLeanTo.structure, openings: [opening({ wall: 'right' })] })).toContain('geometry.opening-has-no-wall');
    expect(codes({ ...inlandTunnel.structure, eaveM: 0, ridgeM: 1.8, openings: [opening({ wall: 'left' })] })).toContain('geometry.opening-has-no-wall');
  });
});

describe('frame', () => {
  test('rafters that differ by three inches are not averaged: residual, off-centre ridge and remedies', () => {
    const note = noteOf(structureWith({ measuredRaftersM: { leftM: 1.704, rightM: 1.78 } }), 'geometry.rafters-do-not-close');
    expect(note.params['residualM']).toBeCloseTo(0.076, 6);
    // Triangle with sides 1.704, 1.780 and base 3.048, by the cosine rule.
    expect(note.params['ridgeOffCentreM']).toBeCloseTo((1.704 ** 2 - 1.78 ** 2) / (2 * 3.048), 6);
    expect(note.params['remedies']).toEqual(['ridgeOffCentre', 'cutLonger', 'packShorter']);
  });

  test('rafters shorter than the span cannot meet', () => {
    expect(noteOf(structureWith({ measuredRaftersM: { leftM: 1.4, rightM: 1.5 } }), 'geometry.rafters-cannot-meet')).toMatchObject({
      severity: 'stop',
      params: { residualM: expect.closeTo(0.148, 6) },
    });
  });

  test('rafters that close within half an inch say nothing', () => {
    expect(codes(inlandCanopy.structure)).toEqual([]);
    expect(computeGeometry({ structure: inlandCanopy.structure }).result.closureResidualM).toBeCloseTo(0.002, 6);
  });

  test('bows short of the length, bows beyond it, one bow only', () => {
    expect(noteOf(structureWith({ bowsAtM: [0, 5] }), 'geometry.bows-do-not-cover-length').params['missingM']).toBeCloseTo(1.096, 6);
    expect(codes(structureWith({ bowsAtM: [0, 6.096, 7] }))).toEqual(expect.arrayContaining(['geometry.bow-outside-length']));
    expect(codes(structureWith({ bowsAtM: [0, 0] }))).toEqual(expect.arrayContaining(['geometry.too-few-legs', 'geometry.bows-do-not-cover-length']));
  });

  test('posts of both rows carry the whole length between them', () => {
    const { posts } = computeGeometry({ structure: inlandCanopy.structure }).result;
    expect(posts.map((q) => q.postId)).toEqual(['A1', 'A2', 'A3', 'A4', 'B1', 'B2', 'B3', 'B4']);
    for (const row of ['A', 'B']) expect(posts.filter((q) => q.row === row).reduce((sum, q) => sum + q.tributaryM, 0)).toBeCloseTo(6.096, 9);
  });

  test('a ridge at or under the eave stops and gives no NaN', () => {
    for (const kind of ['gableCanopy', 'roundArch', 'leanTo'] as const) {
      const out = computeGeometry({ structure: structureWith({ kind, eaveM: 2, ridgeM: 1.9 }) });
      expect(out.notes.map((n) => n.code)).toContain('geometry.ridge-not-above-eave');
      expect(notFinite(out.result)).toEqual([]);
    }
  });

  test('an arch of more than a half circle says how far it bulges', () => {
    // Width 3, rise 2: R = (2.25 + 4) / 4 = 1.5625, so it bulges 0.0625 beyond the feet.
    expect(noteOf(structureWith({ kind: 'roundArch', widthM: 3, eaveM: 0, ridgeM: 2 }), 'geometry.arch-wider-than-feet').params['bulgeM']).toBeCloseTo(
      0.0625,
      9,
    );
  });
});

describe('faces', () => {
  test('bearings run clockwise from the front, tilt follows the roof, and nothing hangs on the host wall of a lean-to', () => {
    const { faces } = computeGeometry({ structure: { ...maritimeLeanTo.structure, frontFacesDeg: 300 } }).result;
    expect(faces.map((f) => [f.faceId, f.azimuthDeg])).toEqual([
      ['front', 300],
      ['back', 120],
      ['left', 30],
      ['roofLeft', 30],
    ]);
    expect(faces[3]?.tiltDeg).toBeCloseTo((Math.atan2(0.6, 2) * 180) / Math.PI, 9);
  });
});

describe('film', () => {
  test('a roll narrower than the girth gives lapped strips and both remedies, never only a wider roll', () => {
    const structure = southernCanopy.structure;
    const { result } = computeGeometry({ structure });
    const over = result.filmSheets.find((f) => f.covers === 'overTheTop');
    if (!over) throw new Error('no sheet over the top');
    expect(over.strips).toBeGreaterThan(1);
    expect(over.seamLapM).toBeGreaterThanOrEqual(0.3);
    // What the strips cover once lapped is at least what is wanted.
    expect(over.strips * 4.0 - over.seams * over.seamLapM).toBeGreaterThanOrEqual(over.widthM);
    expect((over.strips - 1) * 4.0 - (over.seams - 1) * over.seamLapM).toBeLessThan(over.widthM);
    expect(noteOf(structure, 'geometry.roll-narrower-than-girth').params['remedies']).toEqual(['lappedSeamOnRigidMember', 'roofAndWallsSeparate']);
  });

  test('a roll as wide as girth and wrap needs no seam', () => {
    const { result, notes } = computeGeometry({ structure: referenceCanopy });
    expect(result.filmSheets.map((f) => f.seams)).toEqual([0, 0, 0]);
    expect(notes).toEqual([]);
  });
});
