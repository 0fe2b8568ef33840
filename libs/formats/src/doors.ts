import { clino } from './clino.js';
import { epw } from './epw.js';
import { metOffice } from './metoffice.js';
import { nasaPowerCsv } from './nasa-power-csv.js';
import { nasaPowerJson } from './nasa-power-json.js';
import { nceiAnnual, nceiMonthly } from './ncei.js';
import { ownHours } from './own-hours.js';
import { ownMonths } from './own-months.js';
import type { FormatDoor } from './parser.js';
import { tmy3 } from './tmy3.js';

/** Every format that is read. No first lines fit two of them. */
export const FORMAT_DOORS: readonly FormatDoor[] = [ownMonths, ownHours, nceiMonthly, nceiAnnual, clino, metOffice, epw, tmy3, nasaPowerCsv, nasaPowerJson];
