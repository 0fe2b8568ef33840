export { createClient, type Change, type ClientOptions, type Credentials, type LathworkClient } from './client.js';
export type { Answer, BodyOf, FilePath, ItemOf, JsonPath, PagedPath, PageOf, PatchPath, PathParams, PathsWith } from './call-types.js';
export { ConnectionError, FailedError, NotReadyError, ProblemError, type Asked } from './errors.js';
export type { JobEvent } from './events.js';
export type { FieldFault, Paths, Plan, PlanDocument, Problem, Schemas } from './schemas.js';
export type { RetryRules, Surroundings } from './send.js';
export type { WaitOptions } from './wait.js';
