import type { components, paths } from './generated/types.js';

/** Every named shape of the API: `Schemas['Plan']`, `Schemas['SiteRequest']`, ... */
export type Schemas = components['schemas'];

export type Plan = Schemas['Plan'];
export type PlanDocument = Schemas['PlanDocument'];
export type Problem = Schemas['Problem'];
export type FieldFault = Schemas['FieldFault'];

/** Every address of the API with its operations, for those who write helpers of their own. */
export type Paths = paths;
