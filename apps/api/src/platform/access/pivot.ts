import { ROLES, type Role } from './roles.js';
import type { Scope } from './scopes.js';

/**
 * Who may call a route. `public`: anyone. `operator`: the operator token. `account`: a person who is signed in, in no
 * garden. `founder`: the operator or such a person. Everything else happens in a garden: a key needs the scope, a person
 * needs a role with a word in the table. `person`: there, and never by a key.
 */
export type Access = 'public' | 'operator' | 'account' | 'founder' | 'person' | Scope;

/** `all`: every row of the garden. `own`: the person's own rows, and those that are shared or belong to the garden. */
export type Grant = 'all' | 'own' | 'deny';

export interface PivotRow {
  access: Access;
  roles: Readonly<Record<Role, Grant>>;
}

const NOBODY = '- - - - - - -';
const LETTERS: Readonly<Record<string, Grant>> = { all: 'all', own: 'own', '-': 'deny' };

const row = (access: Access, cells = NOBODY): PivotRow => {
  const words = cells.trim().split(/\s+/);
  const grants = ROLES.map((role, i) => {
    const grant = LETTERS[words[i] ?? ''];
    if (!grant || words.length !== ROLES.length) throw new Error(`the row "${cells}" of the table of roles is not ${ROLES.length} words of all, own or -`);
    return [role, grant] as const;
  });
  return { access, roles: Object.fromEntries(grants) as Record<Role, Grant> };
};

/**
 * Role by operation: the only place where it is said who may do what. The guard, the API document and the test that
 * calls every operation as every role all read it. An operation without a row cannot be written down.
 *
 * A coordinator's `own` on a change also reaches what a member has shared and what belongs to the garden: a plan is
 * its member's until the member shares it. Nobody in this table may approve or review what they asked for or wrote
 * themselves; that is checked where it happens, because it depends on the row.
 */
export const PIVOT = {
  //                                             member coordinator treasurer storekeeper safetyLead extensionVolunteer funder
  // platform
  livez: row('public'),
  readyz: row('public'),
  getOpenApi: row('public'),
  getDocs: row('public'),
  listProblems: row('public'),
  getProblem: row('public'),

  // people
  createAccount: row('public'),
  confirmAccount: row('public'),
  createPasswordReset: row('public'),
  redeemPasswordReset: row('public'),
  createSession: row('public'),
  getAccount: row('account'),
  updateAccount: row('account'),
  changePassword: row('account'),
  listAccountEvents: row('account'),
  listAccountGardens: row('account'),
  listSessions: row('account'),
  endSession: row('account'),
  endCurrentSession: row('account'),
  endOtherSessions: row('account'),
  getFactor: row('account'),
  beginFactor: row('account'),
  confirmFactor: row('account'),
  renewRecoveryCodes: row('account'),
  removeFactor: row('account'),
  redeemInvitation: row('account'),
  listMembers: row('members:read', 'all all all all all own own'),
  getMember: row('members:read', 'all all all all all own own'),
  updateMember: row('members:write', '- all - - - - -'),
  removeMember: row('members:write', 'own all own own own own own'),
  createInvitation: row('members:write', '- all - - - - -'),
  listInvitations: row('members:write', '- all - - - - -'),
  getInvitation: row('members:write', '- all - - - - -'),
  revokeInvitation: row('members:write', '- all - - - - -'),

  // privacy: each person's own, and nobody's key
  listConsents: row('person', 'own own own own own own own'),
  giveConsent: row('person', 'own own own own own own own'),
  withdrawConsent: row('person', 'own own own own own own own'),
  listConsentHistory: row('person', 'own own own own own own own'),
  getPrivateDetails: row('person', 'own own own own own own own'),
  updatePrivateDetails: row('person', 'own own own own own own own'),
  removePrivateDetails: row('person', 'own own own own own own own'),
  eraseAccount: row('account'),
  exportAccount: row('account'),
  getSharedDetails: row('person', 'all all all all all all -'),

  // gardens
  createGarden: row('founder'),
  getGarden: row('garden:read', 'all all all all all all all'),
  updateGarden: row('garden:admin', '- all - - - - -'),
  createKey: row('garden:admin', '- all - - - - -'),
  listKeys: row('garden:admin', '- all - - - - -'),
  getKey: row('garden:admin', '- all - - - - -'),
  revokeKey: row('garden:admin', '- all - - - - -'),

  // sites
  createSite: row('sites:write', 'own all - - - - -'),
  listSites: row('sites:read', 'own all - - all own -'),
  getSite: row('sites:read', 'own all - - all own -'),
  getSiteClimate: row('sites:read', 'own all - - all own -'),
  updateSite: row('sites:write', 'own own - - - - -'),
  archiveSite: row('sites:write', 'own own - - - - -'),
  restoreSite: row('sites:write', 'own own - - - - -'),
  exportSites: row('sites:read', 'own all - - all own -'),

  // climate
  listClimateStations: row('sites:read', 'all all all all all all all'),
  getClimateStation: row('sites:read', 'all all all all all all all'),

  // structures
  createStructure: row('structures:write', 'own all - - - - -'),
  listStructures: row('structures:read', 'own all - - all own -'),
  getStructure: row('structures:read', 'own all - - all own -'),
  updateStructure: row('structures:write', 'own own - - - - -'),
  archiveStructure: row('structures:write', 'own own - - - - -'),
  restoreStructure: row('structures:write', 'own own - - - - -'),

  // stock
  createStockItem: row('stock:write', '- all - all - - -'),
  createStockIntake: row('stock:write', '- all - all - - -'),
  listStock: row('stock:read', 'all all - all all - -'),
  getStockItem: row('stock:read', 'all all - all all - -'),
  updateStockItem: row('stock:write', '- all - all - - -'),
  archiveStockItem: row('stock:write', '- all - all - - -'),
  restoreStockItem: row('stock:write', '- all - all - - -'),
  createClaim: row('stock:write', 'own all - all - - -'),
  listClaims: row('stock:read', 'own all - all all - -'),
  getClaim: row('stock:read', 'own all - all all - -'),
  releaseClaim: row('stock:write', 'own all - all - - -'),

  createStockPhoto: row('stock:write', '- all - all - - -'),
  listStockPhotos: row('stock:read', 'all all - all all - -'),
  getStockPhoto: row('stock:read', 'all all - all all - -'),
  getStockPhotoFile: row('stock:read', 'all all - all all - -'),
  removeStockPhoto: row('stock:write', '- all - all - - -'),
  exportStock: row('stock:read', 'all all - all all - -'),

  // prices
  createPrice: row('prices:write', '- all all - - - -'),
  listPrices: row('prices:read', 'all all all - - - -'),
  getPrice: row('prices:read', 'all all all - - - -'),
  updatePrice: row('prices:write', '- all all - - - -'),
  archivePrice: row('prices:write', '- all all - - - -'),
  restorePrice: row('prices:write', '- all all - - - -'),
  createExchangeRate: row('prices:write', '- all all - - - -'),
  listExchangeRates: row('prices:read', 'all all all - - - -'),
  getExchangeRate: row('prices:read', 'all all all - - - -'),
  exportPrices: row('prices:read', 'all all all - - - -'),

  // builds
  createBuild: row('builds:write', 'own all - - - - -'),
  listBuilds: row('builds:read', 'own all - - all own -'),
  getBuild: row('builds:read', 'own all - - all own -'),
  updateBuild: row('builds:write', 'own own - - - - -'),
  archiveBuild: row('builds:write', 'own own - - - - -'),
  restoreBuild: row('builds:write', 'own own - - - - -'),
  createBuildPhoto: row('builds:write', 'own own - - - - -'),
  listBuildPhotos: row('builds:read', 'own all - - all own -'),
  getBuildPhoto: row('builds:read', 'own all - - all own -'),
  getBuildPhotoFile: row('builds:read', 'own all - - all own -'),
  removeBuildPhoto: row('builds:write', 'own own - - - - -'),

  // plans
  createPlan: row('plans:write', 'own own - - - - -'),
  listPlans: row('plans:read', 'own all - - all own -'),
  getPlan: row('plans:read', 'own all - - all own -'),
  getPlanInputs: row('plans:read', 'own all - - all own -'),
  getPlanResult: row('plans:read', 'own all - - all own -'),
  createReview: row('plans:review', '- all - - all own -'),
  createAsBuilt: row('plans:write', 'own own - - all - -'),
  listAsBuilt: row('plans:read', 'own all - - all own -'),
  exportMaterials: row('plans:read', 'own all - - all own -'),
  exportCalendar: row('plans:read', 'own all - - all own -'),

  // overview: what of another member's build is for all, for the store, for the treasury, for safety, for a funder
  listBuildSummaries: row('builds:read', 'all all all all all all -'),
  getBuildNeeds: row('plans:read', 'own all - all - own -'),
  getBuildHazards: row('plans:read', 'own all - - all own -'),
  getBuildTotals: row('plans:read', 'own all all - - - -'),
  getGardenTotals: row('plans:read', '- all all - - - all'),

  // spending: a key may ask and look; only a person decides
  createSpendRequest: row('spending:write', 'own own own - - - -'),
  listSpendRequests: row('spending:read', 'own all all - - - -'),
  getSpendRequest: row('spending:read', 'own all all - - - -'),
  withdrawSpendRequest: row('spending:write', 'own own own - - - -'),
  decideSpendRequest: row('person', '- all all - - - -'),

  // transfer
  exportGarden: row('exports:write', '- all - - - - -'),
  listGardenExports: row('exports:write', '- all - - - - -'),
  getGardenExport: row('exports:write', '- all - - - - -'),
  getGardenExportFile: row('exports:write', '- all - - - - -'),
  importGarden: row('imports:write', '- all - - - - -'),

  // history
  listHistory: row('garden:admin', '- all - - - - -'),
  getBuildHistory: row('plans:read', 'own all - - all own -'),

  // documents
  createDocument: row('documents:write', 'own all - - all own -'),
  listDocuments: row('documents:read', 'own all - - all own -'),
  getDocument: row('documents:read', 'own all - - all own -'),
  getDocumentFile: row('documents:read', 'own all - - all own -'),

  // jobs: as visible as the plan or document they make
  listJobs: row('plans:read', 'own all - - all own -'),
  getJob: row('plans:read', 'own all - - all own -'),
  streamJobEvents: row('plans:read', 'own all - - all own -'),
  cancelJob: row('plans:write', 'own all - - own own -'),

  // webhooks
  createWebhook: row('webhooks:write', '- all - - - - -'),
  listWebhooks: row('webhooks:read', '- all - - - - -'),
  getWebhook: row('webhooks:read', '- all - - - - -'),
  updateWebhook: row('webhooks:write', '- all - - - - -'),
  removeWebhook: row('webhooks:write', '- all - - - - -'),
  rotateWebhookSecret: row('webhooks:write', '- all - - - - -'),
  testWebhook: row('webhooks:write', '- all - - - - -'),
  listDeliveries: row('webhooks:read', '- all - - - - -'),
  getDelivery: row('webhooks:read', '- all - - - - -'),
  redeliver: row('webhooks:write', '- all - - - - -'),
} as const satisfies Record<string, PivotRow>;

export type OperationId = keyof typeof PIVOT;

export const isOperationId = (text: string): text is OperationId => Object.hasOwn(PIVOT, text);

/** How far the roles of a person reach together: the widest of them. */
export const grantOf = (row: PivotRow, roles: readonly Role[]): Grant => {
  const grants = roles.map((role) => row.roles[role]);
  return grants.includes('all') ? 'all' : grants.includes('own') ? 'own' : 'deny';
};
