/**
 * Safety: the hazards of this build, each said exactly when its condition holds, before the task it concerns.
 *
 * Gives: notes only. A rule is data: condition, weight, task, source.
 * Model: rules of glazing codes, lead, treated wood, digging, ladders, lifting, heat and snow clearing (see safety-rules).
 * Assumes: unknown glass is annealed glass; unknown contents of a barrel are poison; unknown anchors hold nothing.
 * Validity: a list of known hazards, never a finding that nothing else is dangerous.
 * Fields: as in the notes' parameters.
 * References: CFR-1201, IRC-R308, EPA-RRP, EPA-CCA, EUOSHA-ASBESTOS, LOCATE-811, OSHA-LADDER, OSHA-HEAT, NIOSH-LIFT,
 *   NEC-210, OSU-AEX790, FEMA-P85, IRC-R105, SNOW-CLEARING, COVER-DAY.
 */
import type { Note } from '@lathwork/model';
import { BIBLIOGRAPHY } from '../sources/bibliography.js';
import type { RoomModel, RoomOutput } from './room.js';
import { SAFETY_RULES, type SafetyInput } from './safety-rules.js';

export const SAFETY_MODEL = {
  room: 'safety',
  title: 'Known hazards as rules, each with its source',
  ranges: {},
  sources: SAFETY_RULES.map((r) => r.sourceId),
} as const satisfies RoomModel;

export interface SafetyResult {
  rulesCount: number;
  heldCount: number;
}

export const computeSafety = (input: SafetyInput): RoomOutput<SafetyResult> => {
  const held = SAFETY_RULES.map((rule) => ({ rule, findings: rule.when(input) })).filter((h) => h.findings.length > 0);
  const notes = held.flatMap(({ rule, findings }) =>
    findings.map((f): Note => {
      const { year } = BIBLIOGRAPHY[rule.sourceId];
      return {
        code: rule.code,
        severity: f.severity ?? rule.severity,
        room: 'safety',
        ...(f.subject === undefined ? {} : { subject: f.subject }),
        beforeTask: rule.beforeTask,
        params: { ...f.params, sourceId: rule.sourceId, ...(year === null ? {} : { sourceYear: year }) },
      };
    }),
  );
  return { result: { rulesCount: SAFETY_RULES.length, heldCount: held.length }, notes, sources: [...new Set(held.map((h) => h.rule.sourceId))] };
};
