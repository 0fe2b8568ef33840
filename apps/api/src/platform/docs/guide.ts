import { SCOPES } from '../access/scopes.js';
import { NOTICE_DAYS } from '../http/deprecation.js';
import { JSON_LIMITS } from '../http/json-guard.js';
import { html, type Html } from './html.js';

export interface Chapter {
  id: string;
  name: string;
  body: Html;
}

const operation = (domain: string, id: string, said: string): Html => html`<a href="/v1/docs/${domain}#${id}"><code>${said}</code></a>`;
const problem = (key: string): Html => html`<a href="/v1/problems/${key}"><code>${key}</code></a>`;

const START: readonly Chapter[] = [
  {
    id: 'beginning',
    name: 'A first call',
    body: html`<p>Ask with a key of your garden; the answer is JSON, and times are UTC.</p>
      <pre><code>API=http://127.0.0.1:8080
KEY=lw_...
curl "$API/v1/gardens/current" -H "Authorization: Bearer $KEY"</code></pre>
      <p>
        From there to a printed plan it is five things, each made with one request: a ${operation('sites', 'createSite', 'site')}, a
        ${operation('structures', 'createStructure', 'structure')}, a ${operation('builds', 'createBuild', 'build')} that brings them together, its
        ${operation('plans', 'createPlan', 'plan')}, and the ${operation('documents', 'createDocument', 'document')} to print. The examples on these pages
        belong to one invented garden and fit each other: sent in this order, with the ids that you were given, they work.
      </p>`,
  },
  {
    id: 'signing-in',
    name: 'Signing in',
    body: html`<p>
        A person makes an account (${operation('accounts', 'createAccount', 'POST /v1/accounts')}), confirms it with the code that comes by mail, and signs in
        with ${operation('accounts', 'createSession', 'POST /v1/sessions')}. With <code>"as": "token"</code> a program gets a token, <code>lws_...</code>, and
        sends it as <code>Authorization: Bearer lws_...</code>; without it a browser gets a cookie. Whoever has set up a second factor sends its
        <code>code</code> too, else the answer is ${problem('code-required')}. A session ends when it is not used for a while, and after some hours in any case;
        ${operation('accounts', 'endCurrentSession', 'DELETE /v1/sessions/current')} ends it at once.
      </p>
      <p>A browser page of another origin can do nothing with the cookie: changes that come from elsewhere are refused as ${problem('cross-site')}.</p>`,
  },
  {
    id: 'garden',
    name: 'Choosing the garden',
    body: html`<p>
        One account may belong to several gardens. ${operation('accounts', 'listAccountGardens', 'GET /v1/account/gardens')} lists them; name one in every
        request about its things:
      </p>
      <pre><code>Lathwork-Garden: 019a1c3e-0000-7000-8000-000000000001</code></pre>
      <p>
        Without the header the answer is ${problem('garden-required')}. A key belongs to one garden and needs none. What belongs to another garden does not
        exist: its id is answered like an id that never was, ${problem('not-found')}. What a person may do follows from the roles in the garden; each operation
        says which.
      </p>`,
  },
  {
    id: 'keys',
    name: 'Keys',
    body: html`<p>
        A program that works for one garden has a key, <code>lw_...</code>. ${operation('gardens', 'createKey', 'POST /v1/keys')} shows it once; the server
        keeps only its hash. A key has scopes, may expire, and is taken back with ${operation('gardens', 'revokeKey', 'DELETE /v1/keys/{id}')}. It never has
        more than whoever made it. An operation outside the scopes is refused as ${problem('scope-missing')}.
      </p>
      <p>Scopes: ${SCOPES.map((scope, at) => [at > 0 && ' ', html`<code>${scope}</code>`])}</p>`,
  },
];

const TALKING: readonly Chapter[] = [
  {
    id: 'quantities',
    name: 'Quantities',
    body: html`<p>
      The name of a number ends with its unit: <code>widthM</code>, <code>thicknessMm</code>, <code>nightTargetC</code>, <code>loadPa</code>. In a request it is
      a number in that unit, or text with a unit of its own: <code>"10 ft"</code>, <code>"6' 4-1/2\\""</code>, <code>"105 mph"</code>, <code>"28 degF"</code>.
      Text without a unit is refused, because a bare 10 may be feet or metres. Answers give the number, and in <code>asTyped</code> what was typed. Money is
      <code>{"minor": 1250, "currency": "EUR"}</code>, in whole minor units. <code>"unknown"</code> and <code>null</code> are honest values and never turn into
      a guess.
    </p>`,
  },
  {
    id: 'paging',
    name: 'Lists, page by page',
    body: html`<p>
      A list answers <code>{"items": [...], "next": "..."}</code>. <code>limit</code> says how many, 1 to 100, 20 when left out. Send <code>next</code> back as
      <code>cursor</code> for the page after; <code>null</code> means that there is no more. The header <code>Link</code> has the same addresses ready to use. A
      cursor fits its own list and filters only, else it is ${problem('cursor-invalid')}.
    </p>`,
  },
  {
    id: 'etags',
    name: 'Changing without losing',
    body: html`<p>One thing comes with an <code>ETag</code>, the tag of its version. Send it with a change:</p>
      <pre><code>PATCH /v1/sites/019a...
If-Match: "3"
Content-Type: application/merge-patch+json

{"frostDepthM": "40 in", "note": null}</code></pre>
      <p>
        Objects are merged, lists are replaced whole, <code>null</code> takes a value away, and the result is checked as a whole. Without
        <code>If-Match</code> the answer is ${problem('if-match-required')}; if somebody was quicker it is ${problem('version-stale')} and nothing has changed:
        read it again and decide again. <code>If-None-Match</code> on reading answers 304 when you have the current version.
      </p>`,
  },
  {
    id: 'idempotency',
    name: 'Sending again',
    body: html`<p>
      When a connection breaks you cannot know whether something was made. Give each creating <code>POST</code> an <code>Idempotency-Key</code>, a UUID say, and
      send it again with the same key and body: within 24 hours you get the same answer to the byte, with <code>Idempotency-Replayed: true</code>, and nothing
      is made twice. The same key with another body is ${problem('idempotency-conflict')}; while the first request is still being worked on,
      ${problem('idempotency-running')}.
    </p>`,
  },
  {
    id: 'refusals',
    name: 'Refusals',
    body: html`<p>
        Every refusal is <code>application/problem+json</code> (RFC 9457): <code>type</code>, <code>title</code>, <code>status</code>, <code>detail</code>,
        <code>remedy</code>, and <code>requestId</code>, which is also in the header <code>X-Request-Id</code>: say it when you ask for help. The
        <code>type</code> leads to a page of the <a href="/v1/problems">list of all problems</a>. Decide by <code>type</code>, never by the wording. Faults in a
        body come all at once:
      </p>
      <pre><code>{
  "type": "/v1/problems/validation-failed",
  "status": 400,
  "errors": [
    { "pointer": "/widthM", "code": "no-unit", "detail": "...", "unit": "m", "remedy": "..." }
  ],
  ...
}</code></pre>`,
  },
  {
    id: 'limits',
    name: 'Limits',
    body: html`<p>
        Requests are counted by address, by key or person, and by garden; costly ones (plans, documents, exports, pictures) once more. Every counted answer says
        how it stands:
      </p>
      <pre><code>RateLimit-Policy: "credential";q=1500;w=60
RateLimit: "credential";r=1490;t=61</code></pre>
      <p>
        <code>q</code> requests in <code>w</code> seconds, <code>r</code> left, the first of them back after <code>t</code>. Beyond that the answer is
        ${problem('rate-limited')} with <code>Retry-After</code>. A body may have ${JSON_LIMITS.bytes / 1_048_576} MiB, ${JSON_LIMITS.depth} levels and
        ${JSON_LIMITS.keys} keys in one object.
      </p>`,
  },
];

const LATER: readonly Chapter[] = [
  {
    id: 'jobs',
    name: 'Long work',
    body: html`<p>
      Plans, documents and exports take longer than a request. The answer is 202 with <code>Location</code> (what is being made), <code>Retry-After</code>, and
      <code>Link: &lt;/v1/jobs/...&gt;; rel="monitor"</code>. Ask at ${operation('jobs', 'getJob', 'GET /v1/jobs/{id}')} for state and progress, or listen to
      ${operation('jobs', 'streamJobEvents', 'its events')} (server-sent events; come back with <code>Last-Event-ID</code> after a cut).
      <code>Prefer: wait=10</code> holds the first answer back for up to ten seconds until the work is done.
      ${operation('jobs', 'cancelJob', 'POST /v1/jobs/{id}/cancel')} calls it off. A garden with too many waiting gets ${problem('jobs-full')}.
    </p>`,
  },
  {
    id: 'webhooks',
    name: 'Webhooks',
    body: html`<p>
      Instead of asking, be told: a ${operation('webhooks', 'createWebhook', 'webhook')} has events sent to an https address of yours when a plan is ready or
      stale, a document is ready, something of the pile is claimed. Events follow the Standard Webhooks specification: <code>webhook-id</code>,
      <code>webhook-timestamp</code> and <code>webhook-signature</code>, an HMAC-SHA-256 over <code>id.timestamp.body</code> with the secret that was shown once
      when the webhook was made. Check the signature over the bytes as they came. Answer 2xx within 15 seconds; anything else is tried again over three days.
      Events may come twice and in any order: they say which thing has which version, never what is in it.
    </p>`,
  },
  {
    id: 'deprecation',
    name: 'How something goes away',
    body: html`<p>
      Nothing disappears without warning. An operation that will go answers with <code>Deprecation</code> (since when), <code>Sunset</code> (when it goes, at
      least ${NOTICE_DAYS} days later) and a <code>Link</code> with <code>rel="deprecation"</code> to what to use instead; these pages and the description mark
      it too.
    </p>`,
  },
];

/** What holds everywhere, in the order in which somebody who builds on the API meets it. */
export const GUIDE: readonly Chapter[] = [...START, ...TALKING, ...LATER];
