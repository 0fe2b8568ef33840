// Written from docs/api/openapi.json by tools/client-types/generate.mjs. Do not edit: change the API and write it again.

export interface paths {
    "/livez": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Whether the process runs
         * @description Needs no credentials.
         */
        get: operations["livez"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/readyz": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Whether requests can be answered: database, migrations, queue, disk
         * @description The age of the queue and the report app are told too; they do not make the answer 503, because reading and planning go on without them. Needs no credentials.
         */
        get: operations["readyz"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/account": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show your account
         * @description Whoever is signed in may call it. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getAccount"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Change your name or language
         * @description Whoever is signed in may call it. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        patch: operations["updateAccount"];
        trace?: never;
    };
    "/v1/account/erasure": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Erase yourself: account, memberships and all that names you
         * @description Whoever is signed in may call it.
         */
        post: operations["eraseAccount"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/account/events": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What happened to your account, newest first
         * @description Whoever is signed in may call it. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listAccountEvents"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/account/export": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Everything that is kept of you, as one archive: JSON, tables and files
         * @description Whoever is signed in may call it. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["exportAccount"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/account/factor": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Whether a second factor is set
         * @description Whoever is signed in may call it.
         */
        get: operations["getFactor"];
        put?: never;
        /**
         * Begin to set a second factor
         * @description Whoever is signed in may call it.
         */
        post: operations["beginFactor"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/account/factor/confirm": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Set the second factor with its first code; the session is replaced
         * @description Whoever is signed in may call it.
         */
        post: operations["confirmFactor"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/account/factor/recovery-codes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Get new recovery codes; the old ones open nothing any more
         * @description Whoever is signed in may call it.
         */
        post: operations["renewRecoveryCodes"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/account/factor/removal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Remove the second factor; the session is replaced
         * @description Whoever is signed in may call it.
         */
        post: operations["removeFactor"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/account/gardens": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The gardens you are a member of
         * @description Whoever is signed in may call it. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listAccountGardens"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/account/password": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Change your password; all other sessions end and yours is replaced
         * @description Whoever is signed in may call it.
         */
        post: operations["changePassword"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/accounts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Make an account; a code comes by mail
         * @description Needs no credentials.
         */
        post: operations["createAccount"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/accounts/confirm": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Confirm the mail address of a new account
         * @description Needs no credentials.
         */
        post: operations["confirmAccount"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/builds": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the builds of the garden
         * @description A key needs the scope `builds:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listBuilds"];
        put?: never;
        /**
         * Make a build
         * @description A key needs the scope `builds:write`. Roles: coordinator. For what is their own or shared: member. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["createBuild"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/builds/{buildId}/claims": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List what is held for a build
         * @description A key needs the scope `stock:read`. Roles: coordinator, storekeeper and safety lead. For what is their own or shared: member. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listClaims"];
        put?: never;
        /**
         * Hold a thing of the pile for a build
         * @description A key needs the scope `stock:write`. Roles: coordinator and storekeeper. For what is their own or shared: member. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["createClaim"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/builds/{buildId}/claims/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show one claim that is not released
         * @description A key needs the scope `stock:read`. Roles: coordinator, storekeeper and safety lead. For what is their own or shared: member. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getClaim"];
        put?: never;
        post?: never;
        /**
         * Give a held thing back to the pile
         * @description A key needs the scope `stock:write`. Roles: coordinator and storekeeper. For what is their own or shared: member.
         */
        delete: operations["releaseClaim"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/builds/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show one build
         * @description A key needs the scope `builds:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getBuild"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Change a build
         * @description A key needs the scope `builds:write`. For what is their own or shared: member and coordinator. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        patch: operations["updateBuild"];
        trace?: never;
    };
    "/v1/builds/{id}/archive": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Put a build away without losing it
         * @description A key needs the scope `builds:write`. For what is their own or shared: member and coordinator. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        post: operations["archiveBuild"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/builds/{id}/hazards": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show the warnings of the newest plan of a build
         * @description A key needs the scope `plans:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer.
         */
        get: operations["getBuildHazards"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/builds/{id}/history": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show who changed what between two revisions of the plan of a build
         * @description A key needs the scope `plans:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer.
         */
        get: operations["getBuildHistory"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/builds/{id}/needs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show what a build needs, without what it costs
         * @description A key needs the scope `plans:read`. Roles: coordinator and storekeeper. For what is their own or shared: member and extension volunteer.
         */
        get: operations["getBuildNeeds"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/builds/{id}/photos": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the photos of a build
         * @description A key needs the scope `builds:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listBuildPhotos"];
        put?: never;
        /**
         * Add a photo of a build: the picture itself is the body
         * @description A key needs the scope `builds:write`. For what is their own or shared: member and coordinator. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["createBuildPhoto"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/builds/{id}/photos/{photoId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show what is known of one photo
         * @description A key needs the scope `builds:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getBuildPhoto"];
        put?: never;
        post?: never;
        /**
         * Take a photo away for good
         * @description A key needs the scope `builds:write`. For what is their own or shared: member and coordinator.
         */
        delete: operations["removeBuildPhoto"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/builds/{id}/photos/{photoId}/file": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Fetch the picture
         * @description A key needs the scope `builds:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getBuildPhotoFile"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/builds/{id}/restore": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Bring an archived build back
         * @description A key needs the scope `builds:write`. For what is their own or shared: member and coordinator. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        post: operations["restoreBuild"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/builds/{id}/totals": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show what a build costs, without what it is
         * @description A key needs the scope `plans:read`. Roles: coordinator and treasurer. For what is their own or shared: member.
         */
        get: operations["getBuildTotals"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/climate/stations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Find the stations nearest to a place
         * @description A key needs the scope `sites:read`. Roles: member, coordinator, treasurer, storekeeper, safety lead, extension volunteer and funder.
         */
        get: operations["listClimateStations"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/climate/stations/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show one station's climate
         * @description A key needs the scope `sites:read`. Roles: member, coordinator, treasurer, storekeeper, safety lead, extension volunteer and funder. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getClimateStation"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/documents": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List documents, oldest first
         * @description A key needs the scope `documents:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listDocuments"];
        put?: never;
        /**
         * Have a finished plan set for printing
         * @description A key needs the scope `documents:write`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Send an `Idempotency-Key`, and a repeat makes nothing twice. Answers 202 with the address to ask at, or the finished thing when it is done within the wait that `Prefer` asks for.
         */
        post: operations["createDocument"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/documents/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show the state of one document
         * @description A key needs the scope `documents:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getDocument"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/documents/{id}/file": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Fetch the PDF
         * @description A key needs the scope `documents:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getDocumentFile"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/exchange-rates": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the rates of the garden
         * @description A key needs the scope `prices:read`. Roles: member, coordinator and treasurer. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listExchangeRates"];
        put?: never;
        /**
         * Note a rate between two currencies
         * @description A key needs the scope `prices:write`. Roles: coordinator and treasurer. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["createExchangeRate"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/exchange-rates/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show one rate
         * @description A key needs the scope `prices:read`. Roles: member, coordinator and treasurer. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getExchangeRate"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/exports": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List exports, oldest first
         * @description A key needs the scope `exports:write`. Roles: coordinator. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listGardenExports"];
        put?: never;
        /**
         * Have the whole garden packed for taking elsewhere
         * @description A key needs the scope `exports:write`. Roles: coordinator. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["exportGarden"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/exports/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show the state of one export
         * @description A key needs the scope `exports:write`. Roles: coordinator. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getGardenExport"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/exports/{id}/file": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Fetch the archive, within a day of its making
         * @description A key needs the scope `exports:write`. Roles: coordinator. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getGardenExportFile"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/gardens": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Make a garden: the operator with a first key, which is shown this once; a signed-in person as its coordinator
         * @description The operator token opens it. Whoever is signed in may call it. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["createGarden"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/gardens/current": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show the garden of this key
         * @description A key needs the scope `garden:read`. Roles: member, coordinator, treasurer, storekeeper, safety lead, extension volunteer and funder. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getGarden"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Change the garden of this key
         * @description A key needs the scope `garden:admin`. Roles: coordinator. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        patch: operations["updateGarden"];
        trace?: never;
    };
    "/v1/history": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List who changed what in the garden, oldest first
         * @description A key needs the scope `garden:admin`. Roles: coordinator. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listHistory"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/imports": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Take a packed garden into this one: the archive itself is the body
         * @description A key needs the scope `imports:write`. Roles: coordinator. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["importGarden"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/invitations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the invitations of the garden
         * @description A key needs the scope `members:write`. Roles: coordinator. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listInvitations"];
        put?: never;
        /**
         * Invite somebody by mail; open for seven days
         * @description A key needs the scope `members:write`. Roles: coordinator. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["createInvitation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/invitations/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show one invitation
         * @description A key needs the scope `members:write`. Roles: coordinator. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getInvitation"];
        put?: never;
        post?: never;
        /**
         * Take an invitation back
         * @description A key needs the scope `members:write`. Roles: coordinator.
         */
        delete: operations["revokeInvitation"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/invitations/redeem": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Join the garden that you were invited to
         * @description Whoever is signed in may call it.
         */
        post: operations["redeemInvitation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List jobs, oldest first
         * @description A key needs the scope `plans:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listJobs"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show how far a job is
         * @description A key needs the scope `plans:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getJob"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{id}/cancel": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Call a job off; once it has ended this changes nothing
         * @description A key needs the scope `plans:write`. Roles: coordinator. For what is their own or shared: member, safety lead and extension volunteer.
         */
        post: operations["cancelJob"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{id}/events": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Follow a job by server-sent events: "progress" at each change, "end" at last
         * @description A key needs the scope `plans:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer.
         */
        get: operations["streamJobEvents"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/keys": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the keys of the garden, without the keys themselves
         * @description A key needs the scope `garden:admin`. Roles: coordinator. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listKeys"];
        put?: never;
        /**
         * Make a key, which is shown this once
         * @description A key needs the scope `garden:admin`. Roles: coordinator. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["createKey"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/keys/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show one key, without the key itself
         * @description A key needs the scope `garden:admin`. Roles: coordinator. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getKey"];
        put?: never;
        post?: never;
        /**
         * Take a key back at once
         * @description A key needs the scope `garden:admin`. Roles: coordinator.
         */
        delete: operations["revokeKey"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/members": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the members of the garden
         * @description A key needs the scope `members:read`. Roles: member, coordinator, treasurer, storekeeper and safety lead. For what is their own or shared: extension volunteer and funder. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listMembers"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/members/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show one member
         * @description A key needs the scope `members:read`. Roles: member, coordinator, treasurer, storekeeper and safety lead. For what is their own or shared: extension volunteer and funder. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getMember"];
        put?: never;
        post?: never;
        /**
         * Leave the garden, or remove a member
         * @description A key needs the scope `members:write`. Roles: coordinator. For what is their own or shared: member, treasurer, storekeeper, safety lead, extension volunteer and funder.
         */
        delete: operations["removeMember"];
        options?: never;
        head?: never;
        /**
         * Change what a member is called and is
         * @description A key needs the scope `members:write`. Roles: coordinator. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        patch: operations["updateMember"];
        trace?: never;
    };
    "/v1/members/{id}/shared-details": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What a member has agreed to share with you
         * @description Roles: member, coordinator, treasurer, storekeeper, safety lead and extension volunteer. Whoever is signed in may call it.
         */
        get: operations["getSharedDetails"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/members/me/consents": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What you have agreed to in this garden, and in which words
         * @description For what is their own or shared: member, coordinator, treasurer, storekeeper, safety lead, extension volunteer and funder. Whoever is signed in may call it.
         */
        get: operations["listConsents"];
        put?: never;
        /**
         * Agree to one purpose
         * @description For what is their own or shared: member, coordinator, treasurer, storekeeper, safety lead, extension volunteer and funder. Whoever is signed in may call it.
         */
        post: operations["giveConsent"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/members/me/consents/history": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Everything you agreed to and took back, oldest first
         * @description For what is their own or shared: member, coordinator, treasurer, storekeeper, safety lead, extension volunteer and funder. Whoever is signed in may call it. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listConsentHistory"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/members/me/consents/withdrawals": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Take back what you agreed to
         * @description For what is their own or shared: member, coordinator, treasurer, storekeeper, safety lead, extension volunteer and funder. Whoever is signed in may call it.
         */
        post: operations["withdrawConsent"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/members/me/private-details": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show your private details in this garden
         * @description For what is their own or shared: member, coordinator, treasurer, storekeeper, safety lead, extension volunteer and funder. Whoever is signed in may call it. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getPrivateDetails"];
        put?: never;
        post?: never;
        /**
         * Take your private details away for good
         * @description For what is their own or shared: member, coordinator, treasurer, storekeeper, safety lead, extension volunteer and funder. Whoever is signed in may call it.
         */
        delete: operations["removePrivateDetails"];
        options?: never;
        head?: never;
        /**
         * Change your private details; kept sealed, seen by you alone unless you agree to more
         * @description For what is their own or shared: member, coordinator, treasurer, storekeeper, safety lead, extension volunteer and funder. Whoever is signed in may call it. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        patch: operations["updatePrivateDetails"];
        trace?: never;
    };
    "/v1/openapi.json": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * This description, as OpenAPI 3.1
         * @description Needs no credentials.
         */
        get: operations["getOpenApi"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/overview/builds": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List every build of the garden in a few words: name, kind, state
         * @description A key needs the scope `builds:read`. Roles: member, coordinator, treasurer, storekeeper, safety lead and extension volunteer. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listBuildSummaries"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/overview/totals": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show sums over the garden that name nobody
         * @description A key needs the scope `plans:read`. Roles: coordinator, treasurer and funder.
         */
        get: operations["getGardenTotals"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/password-resets": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Ask for a mail that lets you set a new password
         * @description Needs no credentials.
         */
        post: operations["createPasswordReset"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/password-resets/redeem": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Set a new password with the code of the mail; all sessions end
         * @description Needs no credentials.
         */
        post: operations["redeemPasswordReset"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plans": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List revisions, oldest first
         * @description A key needs the scope `plans:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listPlans"];
        put?: never;
        /**
         * Ask for a new revision of the plan of a build
         * @description A key needs the scope `plans:write`. For what is their own or shared: member and coordinator. Send an `Idempotency-Key`, and a repeat makes nothing twice. Answers 202 with the address to ask at, or the finished thing when it is done within the wait that `Prefer` asks for.
         */
        post: operations["createPlan"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plans/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show one revision: its state, and what has gathered beside it
         * @description A key needs the scope `plans:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getPlan"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plans/{id}/as-built": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List what was really built
         * @description A key needs the scope `plans:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listAsBuilt"];
        put?: never;
        /**
         * Note what was really built
         * @description A key needs the scope `plans:write`. Roles: safety lead. For what is their own or shared: member and coordinator. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["createAsBuilt"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plans/{id}/calendar.ics": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The work days of a plan as a calendar
         * @description A key needs the scope `plans:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["exportCalendar"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plans/{id}/inputs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show what a revision was computed from
         * @description A key needs the scope `plans:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getPlanInputs"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plans/{id}/materials.csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What a plan needs, takes from the pile and buys, as CSV
         * @description A key needs the scope `plans:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["exportMaterials"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plans/{id}/result": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show the finished plan
         * @description A key needs the scope `plans:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getPlanResult"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plans/{id}/reviews": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Say that a plan was looked at
         * @description A key needs the scope `plans:review`. Roles: coordinator and safety lead. For what is their own or shared: extension volunteer. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["createReview"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/prices": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the prices of the garden
         * @description A key needs the scope `prices:read`. Roles: member, coordinator and treasurer. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listPrices"];
        put?: never;
        /**
         * Make a price
         * @description A key needs the scope `prices:write`. Roles: coordinator and treasurer. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["createPrice"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/prices.csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * All prices as CSV
         * @description A key needs the scope `prices:read`. Roles: member, coordinator and treasurer. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["exportPrices"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/prices/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show one price
         * @description A key needs the scope `prices:read`. Roles: member, coordinator and treasurer. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getPrice"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Change a price
         * @description A key needs the scope `prices:write`. Roles: coordinator and treasurer. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        patch: operations["updatePrice"];
        trace?: never;
    };
    "/v1/prices/{id}/archive": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Put a price away without losing it
         * @description A key needs the scope `prices:write`. Roles: coordinator and treasurer. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        post: operations["archivePrice"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/prices/{id}/restore": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Bring an archived price back
         * @description A key needs the scope `prices:write`. Roles: coordinator and treasurer. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        post: operations["restorePrice"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/problems": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Every problem this API can answer with
         * @description Needs no credentials.
         */
        get: operations["listProblems"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/problems/{key}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What one problem means and what can be done about it
         * @description Needs no credentials.
         */
        get: operations["getProblem"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/sessions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List your open sessions
         * @description Whoever is signed in may call it. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listSessions"];
        put?: never;
        /**
         * Sign in
         * @description Needs no credentials.
         */
        post: operations["createSession"];
        /**
         * Sign out everywhere else
         * @description Whoever is signed in may call it.
         */
        delete: operations["endOtherSessions"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/sessions/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * End one of your sessions
         * @description Whoever is signed in may call it.
         */
        delete: operations["endSession"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/sessions/current": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * Sign out
         * @description Whoever is signed in may call it.
         */
        delete: operations["endCurrentSession"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/sites": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the sites of the garden
         * @description A key needs the scope `sites:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listSites"];
        put?: never;
        /**
         * Make a site
         * @description A key needs the scope `sites:write`. Roles: coordinator. For what is their own or shared: member. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["createSite"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/sites.geojson": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The sites as GeoJSON
         * @description A key needs the scope `sites:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["exportSites"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/sites/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show one site
         * @description A key needs the scope `sites:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getSite"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Change a site
         * @description A key needs the scope `sites:write`. For what is their own or shared: member and coordinator. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        patch: operations["updateSite"];
        trace?: never;
    };
    "/v1/sites/{id}/archive": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Put a site away without losing it
         * @description A key needs the scope `sites:write`. For what is their own or shared: member and coordinator. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        post: operations["archiveSite"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/sites/{id}/climate": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show the climate at a site: months, design night, frost dates, sun, each with its basis, doubt and sources
         * @description A key needs the scope `sites:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer.
         */
        get: operations["getSiteClimate"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/sites/{id}/restore": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Bring an archived site back
         * @description A key needs the scope `sites:write`. For what is their own or shared: member and coordinator. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        post: operations["restoreSite"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/spending": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List what was asked for, and what was decided
         * @description A key needs the scope `spending:read`. Roles: coordinator and treasurer. For what is their own or shared: member. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listSpendRequests"];
        put?: never;
        /**
         * Ask to spend money
         * @description A key needs the scope `spending:write`. For what is their own or shared: member, coordinator and treasurer. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["createSpendRequest"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/spending/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show one request
         * @description A key needs the scope `spending:read`. Roles: coordinator and treasurer. For what is their own or shared: member. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getSpendRequest"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/spending/{id}/decision": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Approve or refuse what somebody else asked for, up to the limit of one’s role
         * @description Roles: coordinator and treasurer. Whoever is signed in may call it. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        post: operations["decideSpendRequest"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/spending/{id}/withdrawal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Take back what one asked for
         * @description A key needs the scope `spending:write`. For what is their own or shared: member, coordinator and treasurer. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        post: operations["withdrawSpendRequest"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/stock": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List what lies on the pile
         * @description A key needs the scope `stock:read`. Roles: member, coordinator, storekeeper and safety lead. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listStock"];
        put?: never;
        /**
         * Take one thing into the pile
         * @description A key needs the scope `stock:write`. Roles: coordinator and storekeeper. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["createStockItem"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/stock.csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The whole pile as CSV
         * @description A key needs the scope `stock:read`. Roles: member, coordinator, storekeeper and safety lead. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["exportStock"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/stock/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show one thing
         * @description A key needs the scope `stock:read`. Roles: member, coordinator, storekeeper and safety lead. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getStockItem"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Change a thing
         * @description A key needs the scope `stock:write`. Roles: coordinator and storekeeper. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        patch: operations["updateStockItem"];
        trace?: never;
    };
    "/v1/stock/{id}/archive": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Put a thing away without losing it
         * @description A key needs the scope `stock:write`. Roles: coordinator and storekeeper. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        post: operations["archiveStockItem"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/stock/{id}/photos": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the photos of a thing on the pile
         * @description A key needs the scope `stock:read`. Roles: member, coordinator, storekeeper and safety lead. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listStockPhotos"];
        put?: never;
        /**
         * Add a photo of a thing on the pile: the picture itself is the body
         * @description A key needs the scope `stock:write`. Roles: coordinator and storekeeper. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["createStockPhoto"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/stock/{id}/photos/{photoId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show what is known of one photo
         * @description A key needs the scope `stock:read`. Roles: member, coordinator, storekeeper and safety lead. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getStockPhoto"];
        put?: never;
        post?: never;
        /**
         * Take a photo away for good
         * @description A key needs the scope `stock:write`. Roles: coordinator and storekeeper.
         */
        delete: operations["removeStockPhoto"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/stock/{id}/photos/{photoId}/file": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Fetch the picture
         * @description A key needs the scope `stock:read`. Roles: member, coordinator, storekeeper and safety lead. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getStockPhotoFile"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/stock/{id}/restore": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Bring an archived thing back
         * @description A key needs the scope `stock:write`. Roles: coordinator and storekeeper. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        post: operations["restoreStockItem"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/stock/intakes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Take up to 200 things into the pile together
         * @description A key needs the scope `stock:write`. Roles: coordinator and storekeeper. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["createStockIntake"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/structures": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the structures of the garden
         * @description A key needs the scope `structures:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listStructures"];
        put?: never;
        /**
         * Make a structure
         * @description A key needs the scope `structures:write`. Roles: coordinator. For what is their own or shared: member. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["createStructure"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/structures/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show one structure
         * @description A key needs the scope `structures:read`. Roles: coordinator and safety lead. For what is their own or shared: member and extension volunteer. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getStructure"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Change a structure
         * @description A key needs the scope `structures:write`. For what is their own or shared: member and coordinator. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        patch: operations["updateStructure"];
        trace?: never;
    };
    "/v1/structures/{id}/archive": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Put a structure away without losing it
         * @description A key needs the scope `structures:write`. For what is their own or shared: member and coordinator. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        post: operations["archiveStructure"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/structures/{id}/restore": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Bring an archived structure back
         * @description A key needs the scope `structures:write`. For what is their own or shared: member and coordinator. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        post: operations["restoreStructure"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhooks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List webhooks, oldest first
         * @description A key needs the scope `webhooks:read`. Roles: coordinator. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listWebhooks"];
        put?: never;
        /**
         * Have events sent to an address; shows its secret once
         * @description A key needs the scope `webhooks:write`. Roles: coordinator. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["createWebhook"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhooks/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show one webhook
         * @description A key needs the scope `webhooks:read`. Roles: coordinator. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getWebhook"];
        put?: never;
        post?: never;
        /**
         * Remove a webhook and its secrets
         * @description A key needs the scope `webhooks:write`. Roles: coordinator.
         */
        delete: operations["removeWebhook"];
        options?: never;
        head?: never;
        /**
         * Change a webhook, switch it off or on
         * @description A key needs the scope `webhooks:write`. Roles: coordinator. Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.
         */
        patch: operations["updateWebhook"];
        trace?: never;
    };
    "/v1/webhooks/{id}/secret-rotations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Give a webhook a new secret; for 24 hours the former one signs too
         * @description A key needs the scope `webhooks:write`. Roles: coordinator. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["rotateWebhookSecret"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhooks/{webhookId}/deliveries": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List what was sent and what came of it, newest first
         * @description A key needs the scope `webhooks:read`. Roles: coordinator. Gives one page; follow `next` or the `Link` header for more.
         */
        get: operations["listDeliveries"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhooks/{webhookId}/deliveries/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show one delivery and its tries
         * @description A key needs the scope `webhooks:read`. Roles: coordinator. Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.
         */
        get: operations["getDelivery"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhooks/{webhookId}/deliveries/{id}/redeliver": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Send an event once more, under the same id
         * @description A key needs the scope `webhooks:write`. Roles: coordinator. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["redeliver"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhooks/{webhookId}/test": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Send the event webhook.test to this address alone
         * @description A key needs the scope `webhooks:write`. Roles: coordinator. Send an `Idempotency-Key`, and a repeat makes nothing twice.
         */
        post: operations["testWebhook"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        Account: {
            /** Format: date-time */
            createdAt: string;
            email: string;
            emailConfirmed: boolean;
            /** Format: uuid */
            id: string;
            locale: string;
            name: string;
            secondFactor: boolean;
            /** Format: date-time */
            updatedAt: string;
            /** Format: int32 */
            version: number;
        };
        AccountEvent: {
            /** @description For example session.create or password.change */
            action: string;
            /** Format: date-time */
            at: string;
            /** Format: uuid */
            id: string;
            requestId: string | null;
        };
        AccountGarden: {
            archived: boolean;
            /** Format: uuid */
            gardenId: string;
            gardenName: string;
            /** Format: date-time */
            joinedAt: string;
            /** Format: uuid */
            memberId: string;
            roles: string[];
        };
        /** @description Merge patch (RFC 7396): only the fields to change. */
        AccountPatch: {
            /**
             * @description Language of mail and pages
             * @example en-GB
             */
            locale?: string;
            /** @description What others call you */
            name?: string;
        };
        AnchorPatch: {
            ballastIsWater?: boolean;
            ballastKg?: number | string | "unknown";
            depthM?: number | string | "unknown";
            diameterM?: number | string | "unknown";
            installTorqueNm?: number | string | "unknown";
            /** @enum {string} */
            kind?: "none" | "drivenPipe" | "auger" | "concretePier" | "ballast" | "groundPost";
            /** Format: int32 */
            perPostCount?: number;
            /** @description Measured by a pull check on this ground */
            pulledToN?: number | string | "unknown";
        };
        AnchorRequest: {
            ballastIsWater: boolean;
            ballastKg: number | string | "unknown";
            depthM: number | string | "unknown";
            diameterM: number | string | "unknown";
            installTorqueNm: number | string | "unknown";
            /** @enum {string} */
            kind: "none" | "drivenPipe" | "auger" | "concretePier" | "ballast" | "groundPost";
            /** Format: int32 */
            perPostCount: number;
            /** @description Measured by a pull check on this ground */
            pulledToN: number | string | "unknown";
        };
        AsBuilt: {
            /** @description Texts as they were typed where a number is kept, by JSON Pointer */
            asTyped: {
                [key: string]: string;
            };
            /** Format: date-time */
            createdAt: string;
            /** Format: uuid */
            id: string;
            measures: {
                lengthM: number | null;
                pulledToN: number | null;
                remark: string | null;
                subject: string;
            }[];
            /** Format: date */
            observedOn: string;
            remark: string | null;
        };
        AsBuiltMeasureRequest: {
            lengthM: number | string | null;
            /** @description A pull check on an anchor */
            pulledToN: number | string | null;
            remark: string | null;
            /** @description What was measured: a part, a mark, an opening */
            subject: string;
        };
        /** @description What was really built, kept beside the revision and never in place of it. */
        AsBuiltRequest: {
            measures: components["schemas"]["AsBuiltMeasureRequest"][];
            /** Format: date */
            observedOn: string;
            remark?: string | null;
        };
        BegunSecondFactor: {
            /** @description Shared secret in base 32, to be typed by hand. Shown this once. */
            secret: string;
            /** @description The same for an authenticator app, to be shown as a QR code */
            uri: string;
        };
        /** @description The cap may be zero: an all-reclaimed build can keep it. Null means that no cap is set. */
        BudgetPatch: {
            capMinor?: number | null;
            /** @description Share of bought materials; null takes the default */
            consumablesFrac?: number | string | null;
            consumablesReason?: string | null;
            contingencyFrac?: number | string | null;
            contingencyReason?: string | null;
            /**
             * @description ISO 4217 code
             * @example EUR
             */
            currency?: string;
            /** @description Rates for this build alone, beside the garden's own */
            exchangeRates?: components["schemas"]["ExchangeRateRequest"][] | null;
            inKind?: components["schemas"]["InKindRequest"][];
        };
        /** @description The cap may be zero: an all-reclaimed build can keep it. Null means that no cap is set. */
        BudgetRequest: {
            capMinor: number | null;
            /** @description Share of bought materials; null takes the default */
            consumablesFrac: number | string | null;
            consumablesReason: string | null;
            contingencyFrac: number | string | null;
            contingencyReason: string | null;
            /**
             * @description ISO 4217 code
             * @example EUR
             */
            currency: string;
            /** @description Rates for this build alone, beside the garden's own */
            exchangeRates?: components["schemas"]["ExchangeRateRequest"][] | null;
            inKind: components["schemas"]["InKindRequest"][];
        };
        Build: {
            archivedAt: string | null;
            /** @description Texts as they were typed where a number is kept, by JSON Pointer */
            asTyped: {
                [key: string]: string;
            };
            budget: {
                capMinor: number | null;
                consumablesFrac: number | null;
                consumablesReason: string | null;
                contingencyFrac: number | null;
                contingencyReason: string | null;
                currency: string;
                exchangeRates: {
                    from: string;
                    /** @description units of `to` for one unit of `from` */
                    rate: number;
                    /** Format: date */
                    readOn: string;
                    to: string;
                }[];
                inKind: {
                    label: string;
                    value: {
                        currency: string;
                        /** Format: int64 */
                        minor: number;
                    };
                }[];
            };
            /** Format: date-time */
            createdAt: string;
            crew: {
                /** @enum {string} */
                experience: "novice" | "mixed" | "skilled";
                /** Format: int32 */
                people: number;
                startOn: string | null;
            };
            /** Format: uuid */
            id: string;
            name: string;
            ownerMemberId: string | null;
            shared: boolean;
            /** Format: uuid */
            siteId: string;
            /** Format: uuid */
            structureId: string;
            /** Format: date-time */
            updatedAt: string;
            variantLabel: string | null;
            variantOf: string | null;
            /** Format: int32 */
            version: number;
            wishes: {
                crops: ("lettuce" | "spinach" | "kale" | "pea" | "radish" | "carrot" | "onion" | "broccoli" | "potato" | "tomato" | "pepper" | "cucumber" | "bean" | "basil")[];
                nightTargetC: number | null;
                /** @enum {string} */
                purpose: "seedStarting" | "overwintering" | "longerSeason" | "rainShelter" | "teaching";
                /** @enum {string} */
                ventsOpenedBy: "nobody" | "someoneAtNine" | "someoneAllDay";
            };
        };
        BuildHazards: {
            /** Format: uuid */
            buildId: string;
            notes: {
                beforeTask?: string;
                code: string;
                params: {
                    [key: string]: number | string | boolean | string[];
                };
                /** @enum {string} */
                room: "geometry" | "climate" | "thermal" | "wind" | "snow" | "anchorage" | "fastening" | "cutting" | "takeoff" | "budget" | "schedule" | "safety";
                /** @enum {string} */
                severity: "stop" | "care" | "ask" | "note";
                subject?: string;
            }[];
            /** Format: uuid */
            planId: string;
            reviewBlocked: boolean;
            /** Format: int32 */
            revision: number;
        };
        BuildHistory: {
            changes: {
                /** @description The value of the later revision; null where there is none */
                after: unknown;
                /** @description The value of the earlier revision; null where there was none */
                before: unknown;
                /** @description JSON Pointer into the inputs of the plan; members of a list are named by their id or tag */
                pointer: string;
            }[];
            entries: components["schemas"]["HistoryEntry"][];
            from: {
                by: string | null;
                /** Format: date-time */
                createdAt: string;
                /** Format: uuid */
                planId: string;
                /** Format: int32 */
                revision: number;
            };
            more: boolean;
            to: {
                by: string | null;
                /** Format: date-time */
                createdAt: string;
                /** Format: uuid */
                planId: string;
                /** Format: int32 */
                revision: number;
            };
        };
        BuildNeeds: {
            /** Format: uuid */
            buildId: string;
            needs: {
                /** @enum {string} */
                group: "frame" | "film" | "timber" | "openings" | "anchors" | "fixings" | "ground" | "water" | "sundries";
                lineId: string;
                mark: string | null;
                /** @enum {string} */
                material: "frame.tubeSet" | "film.greenhouse" | "film.utility" | "film.innerCover" | "batten.19x38" | "board.38x89" | "board.38x140" | "sill.89x140" | "screw.batten" | "screw.tube" | "screw.framing" | "strap.tube" | "anchor.auger" | "anchor.pipe" | "anchor.concreteBag" | "anchor.sandbag" | "brace.cable" | "tape.contact" | "paint.white" | "door" | "door.hardware" | "window" | "window.hardware" | "vent.panel" | "seal.strip" | "mesh.rodent" | "gravel" | "fabric.ground" | "barrel.water" | "rope" | "thermometer.minMax" | "shade.cloth" | "consumables" | "contingency";
                /** @description net amount, in `unit` */
                need: number;
                tags: string[];
                toBuy: number;
                /** @enum {string} */
                unit: "each" | "m" | "m2" | "m3" | "L" | "kg" | "set" | "lump";
                /** @description need with waste, in `unit` */
                wanted: number;
            }[];
            /** Format: uuid */
            planId: string;
            /** Format: int32 */
            revision: number;
        };
        /** @description Merge patch (RFC 7396): only the fields to change; the result is checked as a whole. */
        BuildPatch: {
            budget?: components["schemas"]["BudgetPatch"];
            crew?: components["schemas"]["CrewPatch"];
            name?: string;
            /** @description Whether the other members see it and a coordinator may change it; left out: no */
            shared?: boolean | null;
            /** Format: uuid */
            siteId?: string;
            /** Format: uuid */
            structureId?: string;
            /** @description How this variant differs, in a few words */
            variantLabel?: string | null;
            /** @description The build that this one is a variant of */
            variantOf?: string | null;
            wishes?: components["schemas"]["WishesPatch"];
        };
        /** @description A member’s build: a site, a structure, wishes, a crew and a budget. Variants of a build stand side by side. */
        BuildRequest: {
            budget: components["schemas"]["BudgetRequest"];
            crew: components["schemas"]["CrewRequest"];
            name: string;
            /** @description Whether the other members see it and a coordinator may change it; left out: no */
            shared?: boolean | null;
            /** Format: uuid */
            siteId: string;
            /** Format: uuid */
            structureId: string;
            /** @description How this variant differs, in a few words */
            variantLabel?: string | null;
            /** @description The build that this one is a variant of */
            variantOf?: string | null;
            wishes: components["schemas"]["WishesRequest"];
        };
        BuildSummary: {
            /** Format: uuid */
            id: string;
            kind: string;
            name: string;
            ownerMemberId: string | null;
            revision: number | null;
            shared: boolean;
            stale: boolean;
            /** @enum {string} */
            state: "unplanned" | "computing" | "failed" | "planned" | "reviewed";
        };
        BuildTotals: {
            /** Format: uuid */
            buildId: string;
            capMinor: number | null;
            /** Format: int64 */
            cashMinor: number;
            currency: string;
            /** Format: int64 */
            inKindMinor: number;
            /** Format: int64 */
            overCapMinor: number;
            /** Format: uuid */
            planId: string;
            /** Format: int64 */
            reclaimedMinor: number;
            /** Format: int32 */
            revision: number;
            /** Format: int32 */
            unpricedCount: number;
        };
        Claim: {
            /** Format: uuid */
            buildId: string;
            /** Format: int32 */
            count: number;
            /** Format: date-time */
            createdAt: string;
            /** Format: uuid */
            id: string;
            /** Format: uuid */
            stockId: string;
            tag: string;
        };
        ClaimProblem: components["schemas"]["Problem"] & {
            /** @description Free things of the same kind, nearest in size first */
            alternatives?: {
                /** Format: int32 */
                freeCount: number;
                /** @enum {string} */
                grade: "A" | "B" | "C" | "X";
                heightMm: number | null;
                lengthMm: number | null;
                tag: string;
                widthMm: number | null;
            }[];
            /**
             * Format: int32
             * @description How many pieces of it nobody holds
             */
            freeCount?: number;
            /** @description The builds that hold it, oldest claim first */
            holders?: {
                /** Format: uuid */
                buildId: string;
                /** Format: int32 */
                count: number;
                /** Format: date-time */
                since: string;
            }[];
        };
        /** @description Holds a thing from the pile for a build. */
        ClaimRequest: {
            /** @description How many pieces of a lot; all that are free when left out */
            count?: number | null;
            tag: string;
        };
        /** @description The code of the mail and the password of the sign-up: who reads the mail is who chose the password. */
        ConfirmRequest: {
            /**
             * @description Code that came by mail
             * @example q3Xb0nYl1o7V5c2Jm8Rk4sTf6uWzA9eDgHiKpLxNvBw
             */
            code: string;
            /** @description The password of the sign-up */
            password: string;
        };
        Consent: {
            /** @description The words that were agreed to, which may be older */
            agreedWording: {
                text: string;
                /** Format: int32 */
                version: number;
            } | null;
            given: boolean;
            /** @enum {string} */
            purpose: "exactLocation" | "photoRelease" | "contactSharing" | "healthToLeader" | "shareWithExtension" | "nameOnPrint";
            since: string | null;
            /** @description The words of today */
            wording: {
                text: string;
                /** Format: int32 */
                version: number;
            };
        };
        ConsentEntry: {
            /** Format: date-time */
            at: string;
            given: boolean;
            /** Format: uuid */
            id: string;
            /** @enum {string} */
            purpose: "exactLocation" | "photoRelease" | "contactSharing" | "healthToLeader" | "shareWithExtension" | "nameOnPrint";
            wording: {
                text: string;
                /** Format: int32 */
                version: number;
            };
        };
        /** @description Says yes to one purpose, in the words that the list shows. */
        ConsentRequest: {
            /** @enum {string} */
            purpose: "exactLocation" | "photoRelease" | "contactSharing" | "healthToLeader" | "shareWithExtension" | "nameOnPrint";
            /**
             * Format: int32
             * @description Number of the wording that was read
             */
            wordingVersion: number;
        };
        Consents: {
            items: components["schemas"]["Consent"][];
        };
        ConsentWithdrawal: {
            /** @enum {string} */
            purpose: "exactLocation" | "photoRelease" | "contactSharing" | "healthToLeader" | "shareWithExtension" | "nameOnPrint";
        };
        CoverPatch: {
            ageY?: number | string | "unknown";
            /** @enum {string} */
            film?: "polyethylene" | "polyethyleneInfrared" | "utility" | "found";
            /** @description A row cover over the crop on cold nights */
            innerCover?: boolean;
            rollWidthM?: number | string;
            secondFilm?: boolean;
            shadeFrac?: number | string;
            thicknessMm?: number | string;
            /** @description Extra film at each edge to roll round a batten */
            wrapM?: number | string;
        };
        CoverRequest: {
            ageY: number | string | "unknown";
            /** @enum {string} */
            film: "polyethylene" | "polyethyleneInfrared" | "utility" | "found";
            /** @description A row cover over the crop on cold nights */
            innerCover: boolean;
            rollWidthM: number | string;
            secondFilm: boolean;
            shadeFrac: number | string;
            thicknessMm: number | string;
            /** @description Extra film at each edge to roll round a batten */
            wrapM: number | string;
        };
        CrewPatch: {
            /** @enum {string} */
            experience?: "novice" | "mixed" | "skilled";
            /** Format: int32 */
            people?: number;
            startOn?: string | null;
        };
        CrewRequest: {
            /** @enum {string} */
            experience: "novice" | "mixed" | "skilled";
            /** Format: int32 */
            people: number;
            startOn: string | null;
        };
        /** @description Who gave the thing. Kept sealed; shown to coordinator, treasurer and storekeeper only. */
        DonorPatch: {
            name?: string;
            /** @description What the gift is worth to a funder, where somebody said so */
            value?: components["schemas"]["MoneyPatch"] | null;
            /** @description Whether the donor wishes to be named in public */
            wishesToBeNamed?: boolean;
        };
        /** @description Who gave the thing. Kept sealed; shown to coordinator, treasurer and storekeeper only. */
        DonorRequest: {
            name: string;
            /** @description What the gift is worth to a funder, where somebody said so */
            value: components["schemas"]["MoneyRequest"] | null;
            /** @description Whether the donor wishes to be named in public */
            wishesToBeNamed: boolean;
        };
        /** @description Erases you for good. There is no way back. */
        ErasureRequest: {
            /** @description Closes the gardens of which you are the last member; left out, they stand in the way */
            closeEmptyGardens?: boolean | null;
            /** @description Six digits of the second factor, or a recovery code */
            code?: string | null;
            /** @description The present password */
            password: string;
        };
        ExchangeRate: {
            /** Format: date-time */
            createdAt: string;
            from: string;
            /** Format: uuid */
            id: string;
            /** @description units of `to` for one unit of `from` */
            rate: number;
            /** Format: date */
            readOn: string;
            to: string;
        };
        /** @description A rate somebody read on a day. Nothing is converted without one. */
        ExchangeRateRequest: {
            /**
             * @description ISO 4217 code
             * @example EUR
             */
            from: string;
            /** @description Units of `to` for one unit of `from` */
            rate: number;
            /** Format: date */
            readOn: string;
            /**
             * @description ISO 4217 code
             * @example EUR
             */
            to: string;
        };
        FieldFault: {
            allowed?: string;
            code: string;
            detail: string;
            /** @enum {string} */
            in?: "query" | "path" | "header";
            /** @description JSON Pointer into the body, or the parameter */
            pointer: string;
            remedy?: string;
            unit?: string;
        };
        Garden: {
            archivedAt: string | null;
            coordinatorLimitMinor: number | null;
            /** Format: date-time */
            createdAt: string;
            currency: string;
            /** Format: uuid */
            id: string;
            invented: boolean;
            locale: string;
            name: string;
            treasurerLimitMinor: number | null;
            /** @enum {string} */
            unitSystem: "metric" | "us";
            /** Format: date-time */
            updatedAt: string;
            /** Format: int32 */
            version: number;
        };
        GardenExport: {
            byteCount: number | null;
            /** Format: date-time */
            createdAt: string;
            /** @description When the file goes */
            expiresAt: string | null;
            finishedAt: string | null;
            /** Format: uuid */
            id: string;
            links: {
                file: string | null;
                self: string;
            };
            problem: components["schemas"]["Problem"] | null;
            sha256: string | null;
            startedAt: string | null;
            /** @enum {string} */
            state: "queued" | "packing" | "ready" | "failed";
            withFiles: boolean;
        };
        /** @description Packs the whole garden: JSON with a schema version, tables, and where wanted the photos and printed plans. */
        GardenExportRequest: {
            /** @description Whether photos and PDFs come along */
            withFiles: boolean;
        };
        /** @description Merge patch (RFC 7396): only the fields to change; the result is checked as a whole. */
        GardenPatch: {
            /** @description What a coordinator may approve alone, in minor units of the currency; left out or null: no limit */
            coordinatorLimitMinor?: number | null;
            /**
             * @description ISO 4217 code
             * @example EUR
             */
            currency?: string;
            /**
             * @description Language and region of the garden
             * @example en-GB
             */
            locale?: string;
            name?: string;
            /** @description What a treasurer may approve alone; left out or null: no limit */
            treasurerLimitMinor?: number | null;
            /** @enum {string} */
            unitSystem?: "metric" | "us";
        };
        GardenRequest: {
            /** @description What a coordinator may approve alone, in minor units of the currency; left out or null: no limit */
            coordinatorLimitMinor?: number | null;
            /**
             * @description ISO 4217 code
             * @example EUR
             */
            currency: string;
            /** @description Invented example data: every page that is printed says so. It cannot be taken away later. */
            invented?: boolean | null;
            /** @description Who uses the first key; it is printed on plans made with it. Left out: coordinator’s key */
            keyName?: string | null;
            /**
             * @description Language and region of the garden
             * @example en-GB
             */
            locale: string;
            name: string;
            /** @description What a treasurer may approve alone; left out or null: no limit */
            treasurerLimitMinor?: number | null;
            /** @enum {string} */
            unitSystem: "metric" | "us";
        };
        GardenTotals: {
            builds: {
                /** Format: int32 */
                computingCount: number;
                /** Format: int32 */
                failedCount: number;
                /** Format: int32 */
                plannedCount: number;
                /** Format: int32 */
                reviewedCount: number;
                /** Format: int32 */
                unplannedCount: number;
            };
            hours: {
                highH: number;
                likelyH: number;
                lowH: number;
            };
            money: {
                /** Format: int32 */
                buildCount: number;
                /** Format: int64 */
                cashMinor: number;
                currency: string;
                /** Format: int64 */
                inKindMinor: number;
                /** Format: int64 */
                reclaimedMinor: number;
            }[];
        };
        HistoryEntry: {
            action: string;
            /** Format: date-time */
            at: string;
            by: string | null;
            /** Format: uuid */
            id: string;
            keyId: string | null;
            memberId: string | null;
            /** Format: uuid */
            objectId: string;
            objectType: string;
        };
        HostWallPatch: {
            heightM?: number | string;
            /** @enum {string} */
            material?: "masonry" | "timber" | "unknown";
            /** @enum {string} */
            roofShedsOntoIt?: "yes" | "no" | "unknown";
        };
        HostWallRequest: {
            heightM: number | string;
            /** @enum {string} */
            material: "masonry" | "timber" | "unknown";
            /** @enum {string} */
            roofShedsOntoIt: "yes" | "no" | "unknown";
        };
        ImportReport: {
            /** @description What did not come along, and why */
            dropped: {
                /** Format: int32 */
                itemsCount: number;
                what: string;
                why: string;
            }[];
            /** Format: uuid */
            gardenId: string;
            /** @description An empty garden also takes over name, language, currency and units */
            gardenWasEmpty: boolean;
            /** @description What has which id now */
            ids: {
                from: string;
                /** Format: uuid */
                to: string;
                /** @enum {string} */
                what: "garden" | "sites" | "structures" | "stock" | "prices" | "exchangeRates" | "builds" | "claims" | "plans" | "photos";
            }[];
            /** @description Names that were taken already */
            renamed: {
                from: string;
                to: string;
                /** @enum {string} */
                what: "site" | "structure" | "stockItem";
            }[];
            taken: {
                /** Format: int32 */
                itemsCount: number;
                /** @enum {string} */
                what: "sites" | "structures" | "stock" | "prices" | "exchangeRates" | "builds" | "claims" | "plans" | "photos";
            }[];
        };
        InKindRequest: {
            label: string;
            value: components["schemas"]["MoneyRequest"];
        };
        Invitation: {
            acceptedMemberId: string | null;
            /** Format: date-time */
            createdAt: string;
            /** @description Null once the invitation is over */
            email: string | null;
            /** Format: date-time */
            expiresAt: string;
            /** Format: uuid */
            id: string;
            /** Format: uuid */
            invitedById: string;
            roles: ("member" | "coordinator" | "treasurer" | "storekeeper" | "safetyLead" | "extensionVolunteer" | "funder")[];
            /** @enum {string} */
            state: "open" | "accepted" | "revoked" | "expired";
        };
        InvitationRedemption: {
            /**
             * @description Code that came by mail
             * @example q3Xb0nYl1o7V5c2Jm8Rk4sTf6uWzA9eDgHiKpLxNvBw
             */
            code: string;
        };
        InvitationRequest: {
            /**
             * @description Mail address, without a name
             * @example sorrel@example.org
             */
            email: string;
            /** @description What the invited person will be in the garden: one role or more */
            roles: ("member" | "coordinator" | "treasurer" | "storekeeper" | "safetyLead" | "extensionVolunteer" | "funder")[];
        };
        Job: {
            /** Format: int32 */
            attemptCount: number;
            /** Format: date-time */
            createdAt: string;
            finishedAt: string | null;
            /** Format: uuid */
            id: string;
            /** @description What is done, such as compute-plan or render-document; more kinds will come */
            kind: string;
            links: {
                events: string;
                result: string | null;
                self: string;
                subject: string | null;
            };
            problem: components["schemas"]["Problem"] | null;
            /**
             * Format: int32
             * @description Hundredths of the way; never falls
             */
            progress: number;
            stage: string | null;
            startedAt: string | null;
            /** @enum {string} */
            state: "queued" | "running" | "succeeded" | "failed" | "cancelled";
            subject: {
                /** Format: uuid */
                id: string;
                type: string;
            } | null;
        };
        JoinedGarden: {
            /** Format: uuid */
            gardenId: string;
            /** Format: uuid */
            memberId: string;
            roles: ("member" | "coordinator" | "treasurer" | "storekeeper" | "safetyLead" | "extensionVolunteer" | "funder")[];
        };
        Key: {
            /** Format: date-time */
            createdAt: string;
            expiresAt: string | null;
            /** Format: uuid */
            id: string;
            lastUsedAt: string | null;
            name: string;
            prefix: string;
            revokedAt: string | null;
            scopes: ("garden:read" | "garden:admin" | "members:read" | "members:write" | "sites:read" | "sites:write" | "sites:exact" | "structures:read" | "structures:write" | "stock:read" | "stock:write" | "prices:read" | "prices:write" | "builds:read" | "builds:write" | "plans:read" | "plans:write" | "plans:review" | "spending:read" | "spending:write" | "documents:read" | "documents:write" | "webhooks:read" | "webhooks:write" | "exports:write" | "imports:write")[];
        };
        KeyRequest: {
            /** @description The key ends with the beginning of this day (UTC) */
            expiresOn?: string | null;
            /** @description Who or what uses the key; it is printed on plans made with it */
            name: string;
            scopes: ("garden:read" | "garden:admin" | "members:read" | "members:write" | "sites:read" | "sites:write" | "sites:exact" | "structures:read" | "structures:write" | "stock:read" | "stock:write" | "prices:read" | "prices:write" | "builds:read" | "builds:write" | "plans:read" | "plans:write" | "plans:review" | "spending:read" | "spending:write" | "documents:read" | "documents:write" | "webhooks:read" | "webhooks:write" | "exports:write" | "imports:write")[];
        };
        MeasuredRaftersPatch: {
            leftM?: number | string;
            rightM?: number | string;
        };
        MeasuredRaftersRequest: {
            leftM: number | string;
            rightM: number | string;
        };
        Member: {
            /** Format: date-time */
            createdAt: string;
            /** Format: uuid */
            id: string;
            leftAt: string | null;
            name: string;
            roles: ("member" | "coordinator" | "treasurer" | "storekeeper" | "safetyLead" | "extensionVolunteer" | "funder")[];
            /** Format: date-time */
            updatedAt: string;
            /** Format: int32 */
            version: number;
        };
        /** @description Merge patch (RFC 7396): only the fields to change. */
        MemberPatch: {
            /** @description What the garden calls the member */
            name?: string;
            /** @description What the member is in the garden: one role or more */
            roles?: ("member" | "coordinator" | "treasurer" | "storekeeper" | "safetyLead" | "extensionVolunteer" | "funder")[];
        };
        /** @description Whole minor units (cents, pence) of one ISO 4217 currency. */
        MoneyPatch: {
            /**
             * @description ISO 4217 code
             * @example EUR
             */
            currency?: string;
            /** Format: int64 */
            minor?: number;
        };
        /** @description Whole minor units (cents, pence) of one ISO 4217 currency. */
        MoneyRequest: {
            /**
             * @description ISO 4217 code
             * @example EUR
             */
            currency: string;
            /** Format: int64 */
            minor: number;
        };
        NearStations: {
            items: {
                country: string;
                distanceM: number;
                elevationM: number;
                heightDifferenceM: number | null;
                latitudeDeg: number;
                longitudeDeg: number;
                period: string;
                stationId: string;
                stationName: string;
            }[];
        };
        NewGarden: {
            garden: components["schemas"]["Garden"];
            key: components["schemas"]["NewKey"] | null;
        };
        NewKey: {
            /** Format: date-time */
            createdAt: string;
            expiresAt: string | null;
            /** Format: uuid */
            id: string;
            /** @description The key itself. It is shown this once and stored nowhere. */
            key: string;
            lastUsedAt: string | null;
            name: string;
            prefix: string;
            revokedAt: string | null;
            scopes: ("garden:read" | "garden:admin" | "members:read" | "members:write" | "sites:read" | "sites:write" | "sites:exact" | "structures:read" | "structures:write" | "stock:read" | "stock:write" | "prices:read" | "prices:write" | "builds:read" | "builds:write" | "plans:read" | "plans:write" | "plans:review" | "spending:read" | "spending:write" | "documents:read" | "documents:write" | "webhooks:read" | "webhooks:write" | "exports:write" | "imports:write")[];
        };
        NewSession: {
            /** Format: date-time */
            createdAt: string;
            /** Format: date-time */
            expiresAt: string;
            /** Format: uuid */
            id: string;
            /** @description What the browser or program called itself */
            label: string;
            /** Format: date-time */
            lastSeenAt: string;
            /** @description Only where a token was asked for; null beside a cookie. Shown this once. */
            token: string | null;
        };
        NewWebhook: {
            /** Format: date-time */
            createdAt: string;
            description: string | null;
            eventTypes: string[];
            failingSince: string | null;
            formerSecretUntil: string | null;
            /** Format: uuid */
            id: string;
            /** @description Shown this once: signs what is sent (Standard Webhooks) */
            secret: string;
            /** @enum {string} */
            state: "active" | "disabled";
            /** Format: date-time */
            updatedAt: string;
            url: string;
            /** Format: int32 */
            version: number;
        };
        /** @description Something that shades the plot: a wall, a tree, a hill, as seen from the plot. */
        ObstacleRequest: {
            /** @description From the plot to its middle, clockwise from north */
            bearingDeg: number | string;
            distanceM: number | string;
            /** @description Above the ground of the plot */
            heightM: number | string;
            widthM: number | string;
        };
        OpeningRequest: {
            /** @description Lower edge above the ground line */
            bottomM: number | string;
            /** @description Share of the opening that is free when it stands open */
            freeOpenFrac: number | string;
            /** @enum {string} */
            glazing: "none" | "tempered" | "laminated" | "annealed" | "wired" | "plastic" | "unknown";
            heightM: number | string;
            /** @enum {string} */
            hinge: "left" | "right" | "top" | "none";
            /** @enum {string} */
            kind: "door" | "window" | "vent";
            largestPaneM2: number | string | "unknown";
            /** @description From the wall's left end as seen from outside */
            offsetM: number | string;
            /** @example D1 */
            openingId: string;
            /** @description Tag of the salvaged thing that goes in, or null: to be bought or made */
            stockTag: string | null;
            /** @enum {string} */
            wall: "front" | "back" | "left" | "right";
            widthM: number | string;
        };
        PasswordChangeRequest: {
            /** @description Six digits of the second factor, or a recovery code */
            code?: string | null;
            /** @description 8 to 256 characters, 15 or more advised; taken exactly as it is sent. Common passwords and your own name are refused. */
            newPassword: string;
            /** @description The present password */
            password: string;
        };
        PasswordResetRedemption: {
            /**
             * @description Code that came by mail
             * @example q3Xb0nYl1o7V5c2Jm8Rk4sTf6uWzA9eDgHiKpLxNvBw
             */
            code: string;
            /** @description 8 to 256 characters, 15 or more advised; taken exactly as it is sent. Common passwords and your own name are refused. */
            password: string;
        };
        PasswordResetRequest: {
            /**
             * @description Mail address, without a name
             * @example sorrel@example.org
             */
            email: string;
        };
        Photo: {
            /** Format: int32 */
            byteCount: number;
            caption: string | null;
            /** Format: date-time */
            createdAt: string;
            /** Format: int32 */
            heightPixelCount: number;
            /** Format: uuid */
            id: string;
            links: {
                file: string;
                self: string;
            };
            /** @enum {string} */
            mediaType: "image/jpeg";
            releaseOnFile: boolean;
            showsPeople: boolean;
            /** Format: int32 */
            widthPixelCount: number;
        };
        Plan: {
            /** Format: int32 */
            asBuiltCount: number;
            /** Format: date */
            asOf: string;
            /** Format: uuid */
            buildId: string;
            /** Format: date-time */
            createdAt: string;
            finishedAt: string | null;
            /** Format: uuid */
            id: string;
            links: {
                build: string;
                result: string | null;
                self: string;
            };
            problem: components["schemas"]["Problem"] | null;
            reviewBlocked: boolean | null;
            reviews: components["schemas"]["Review"][];
            /** Format: int32 */
            revision: number;
            stale: {
                reason: string;
                /** Format: date-time */
                since: string;
                subject: string | null;
            }[];
            startedAt: string | null;
            /** @enum {string} */
            state: "computing" | "ready" | "failed";
        };
        PlanDocument: {
            /** Format: date-time */
            createdAt: string;
            engineVersion: string | null;
            finishedAt: string | null;
            /** Format: uuid */
            id: string;
            /** @enum {string} */
            kind: "planBook";
            /** @enum {string} */
            language: "en";
            links: {
                file: string | null;
                plan: string;
                self: string;
            };
            pages: number | null;
            /** @enum {string} */
            paper: "a4" | "letter";
            /** Format: uuid */
            planId: string;
            problem: components["schemas"]["Problem"] | null;
            sha256: string | null;
            startedAt: string | null;
            /** @enum {string} */
            state: "queued" | "rendering" | "ready" | "failed";
            /** @enum {string} */
            units: "metric" | "us";
        };
        /** @description A document has its own language, paper and units, whatever those of the garden are. */
        PlanDocumentRequest: {
            /** @enum {string} */
            kind: "planBook";
            /** @enum {string} */
            language: "en";
            /** @enum {string} */
            paper: "a4" | "letter";
            /** Format: uuid */
            planId: string;
            /** @enum {string} */
            units: "metric" | "us";
        };
        PlanInputs: {
            /** Format: date */
            asOf: string;
            budget: {
                capMinor: number | null;
                consumablesFrac: number | null;
                consumablesReason: string | null;
                contingencyFrac: number | null;
                contingencyReason: string | null;
                currency: string;
                exchangeRates: {
                    from: string;
                    /** @description units of `to` for one unit of `from` */
                    rate: number;
                    /** Format: date */
                    readOn: string;
                    to: string;
                }[];
                inKind: {
                    label: string;
                    value: {
                        currency: string;
                        /** Format: int64 */
                        minor: number;
                    };
                }[];
            };
            /** Format: uuid */
            buildId: string;
            climate: {
                annualExtremeMinC: number | null;
                annualExtremeMinYearsCount: number | null;
                country: string;
                credit: string;
                distanceM: number;
                frostDates?: {
                    firstDayD: {
                        p10: number | null;
                        p50: number | null;
                        p90: number | null;
                    };
                    lastDayD: {
                        p10: number | null;
                        p50: number | null;
                        p90: number | null;
                    };
                    publisher: string;
                    thresholdC: number;
                } | null;
                hourlyLow?: {
                    coldShareFrac: number;
                    /** Format: int32 */
                    hoursCount: number;
                    lowC: number;
                    /** @enum {string} */
                    years: "typical" | "real";
                } | null;
                /** @enum {string} */
                kind: "means" | "normals";
                /** @description January to December */
                months: {
                    absoluteMinMeanC: number | null;
                    nightDeviationK?: number | null;
                    precipitationMm: number | null;
                    radiationMJPerM2?: number | null;
                    relativeHumidityFrac?: number | null;
                    sunshineH: number | null;
                    tMaxC: number | null;
                    tMinC: number | null;
                    vapourPressurePa: number | null;
                }[];
                period: string;
                stationElevationM: number;
                stationId: string;
                stationLatitudeDeg: number;
                stationLongitudeDeg: number;
                stationName: string;
            };
            crew: {
                /** @enum {string} */
                experience: "novice" | "mixed" | "skilled";
                /** Format: int32 */
                people: number;
                startOn: string | null;
            };
            /** Format: uuid */
            gardenId: string;
            /** Format: uuid */
            planId: string;
            prices: {
                /** @enum {string} */
                material: "frame.tubeSet" | "film.greenhouse" | "film.utility" | "film.innerCover" | "batten.19x38" | "board.38x89" | "board.38x140" | "sill.89x140" | "screw.batten" | "screw.tube" | "screw.framing" | "strap.tube" | "anchor.auger" | "anchor.pipe" | "anchor.concreteBag" | "anchor.sandbag" | "brace.cable" | "tape.contact" | "paint.white" | "door" | "door.hardware" | "window" | "window.hardware" | "vent.panel" | "seal.strip" | "mesh.rodent" | "gravel" | "fabric.ground" | "barrel.water" | "rope" | "thermometer.minMax" | "shade.cloth" | "consumables" | "contingency";
                packAmount: number;
                packPrice: {
                    currency: string;
                    /** Format: int64 */
                    minor: number;
                };
                pieceLengthM: number | null;
                pieceWidthM: number | null;
                /** Format: uuid */
                priceId: string;
                readOn: string | null;
                supplier: string;
                /** @enum {string} */
                unit: "each" | "m" | "m2" | "m3" | "L" | "kg" | "set" | "lump";
            }[];
            /** Format: int32 */
            revision: number;
            /** @constant */
            schemaVersion: 1;
            /** Format: int64 */
            seed: number;
            site: {
                elevationM: number;
                /** @enum {string} */
                exposure: "B" | "C" | "D";
                fallAcrossM: number | "unknown";
                fallAlongM: number | "unknown";
                frostDepthM: number | "unknown";
                /** @enum {string} */
                glassRule: "allowed" | "forbidden" | "unknown";
                latitudeDeg: number;
                longitudeDeg: number;
                /** @enum {string} */
                nearHilltop: "no" | "yes" | "unknown";
                obstacles?: {
                    /** @description from the plot to its middle, clockwise from north */
                    bearingDeg: number;
                    distanceM: number;
                    /** @description above the ground of the plot */
                    heightM: number;
                    widthM: number;
                }[];
                /** @enum {string} */
                permanentAnchors: "allowed" | "forbidden" | "unknown";
                /** @description share of direct sun lost to neighbours and trees over the year */
                shadedFrac: number;
                /** Format: uuid */
                siteId: string;
                snow: {
                    codeEdition: string;
                    /** @enum {string} */
                    level: "ultimate" | "service";
                    loadPa: number;
                    /** Format: date */
                    readOn: string;
                    source: string;
                    /** @enum {string} */
                    surface: "ground" | "roof";
                } | "unknown";
                soilClass: ("1" | "2" | "3" | "4A" | "4B" | "5") | "unknown";
                stormWindFromDeg: number | "unknown";
                timeZone: string;
                wind: {
                    /** @enum {string} */
                    averaging: "gust3s" | "mean10min" | "fastestMile";
                    codeEdition: string;
                    /** @enum {string} */
                    level: "ultimate" | "service";
                    /** Format: date */
                    readOn: string;
                    /** @enum {string} */
                    riskCategory: "I" | "II" | "III" | "IV" | "none";
                    source: string;
                    speedMPerS: number;
                } | "unknown";
            };
            stock: {
                ageY: (number | "unknown") | null;
                /** Format: int32 */
                count: number;
                /** @enum {string} */
                grade: "A" | "B" | "C" | "X";
                hazards: ("leadPaintAssumed" | "leadPaintFound" | "treatedWoodOld" | "treatedWoodCopper" | "creosote" | "glassUnknown" | "glassAnnealed" | "barrelContentsUnknown" | "mould" | "asbestosPuttyPossible" | "nails" | "pvcContact")[];
                heightMm: number | null;
                /** @enum {string} */
                kind: "door" | "window" | "barrel" | "frame" | "tube" | "board" | "batten" | "sheet" | "film" | "anchor" | "hardware" | "other";
                lengthMm: number | null;
                /** @enum {string} */
                material: "frame.tubeSet" | "film.greenhouse" | "film.utility" | "film.innerCover" | "batten.19x38" | "board.38x89" | "board.38x140" | "sill.89x140" | "screw.batten" | "screw.tube" | "screw.framing" | "strap.tube" | "anchor.auger" | "anchor.pipe" | "anchor.concreteBag" | "anchor.sandbag" | "brace.cable" | "tape.contact" | "paint.white" | "door" | "door.hardware" | "window" | "window.hardware" | "vent.panel" | "seal.strip" | "mesh.rodent" | "gravel" | "fabric.ground" | "barrel.water" | "rope" | "thermometer.minMax" | "shade.cloth" | "consumables" | "contingency";
                replacement: {
                    currency: string;
                    /** Format: int64 */
                    minor: number;
                } | null;
                /** Format: uuid */
                stockId: string;
                tag: string;
                thicknessMm: number | null;
                usableLengthMm: number | null;
                volumeL: number | null;
                widthMm: number | null;
            }[];
            structure: {
                /** @enum {string} */
                airLeaks: "sealed" | "ordinary" | "gappy";
                anchor: {
                    ballastIsWater: boolean;
                    ballastKg: number | "unknown";
                    depthM: number | "unknown";
                    diameterM: number | "unknown";
                    installTorqueNm: number | "unknown";
                    /** @enum {string} */
                    kind: "none" | "drivenPipe" | "auger" | "concretePier" | "ballast" | "groundPost";
                    /** Format: int32 */
                    perPostCount: number;
                    pulledToN: number | "unknown";
                };
                bedsM2: number;
                bowsAtM: number[];
                /** @enum {string} */
                braced: "none" | "endBays" | "everyBay" | "unknown";
                cover: {
                    ageY: number | "unknown";
                    /** @enum {string} */
                    film: "polyethylene" | "polyethyleneInfrared" | "utility" | "found";
                    /** @description a row cover over the crop on cold nights */
                    innerCover: boolean;
                    rollWidthM: number;
                    secondFilm: boolean;
                    shadeFrac: number;
                    thicknessMm: number;
                    /** @description extra film at each edge to roll round a batten */
                    wrapM: number;
                };
                eaveM: number;
                /** @enum {string} */
                floor: "soil" | "mulch" | "gravel" | "brick" | "decking";
                floorMoist: boolean;
                frameMassKg: number | "unknown";
                frameStockTag: string | null;
                frontFacesDeg: number;
                hostWall: {
                    heightM: number;
                    /** @enum {string} */
                    material: "masonry" | "timber" | "unknown";
                    /** @enum {string} */
                    roofShedsOntoIt: "yes" | "no" | "unknown";
                } | null;
                /** @enum {string} */
                kind: "gableCanopy" | "roundArch" | "leanTo";
                lengthM: number;
                measuredRaftersM: {
                    leftM: number;
                    rightM: number;
                } | null;
                openings: {
                    /** @description lower edge above the ground line */
                    bottomM: number;
                    freeOpenFrac: number;
                    /** @enum {string} */
                    glazing: "none" | "tempered" | "laminated" | "annealed" | "wired" | "plastic" | "unknown";
                    heightM: number;
                    /** @enum {string} */
                    hinge: "left" | "right" | "top" | "none";
                    /** @enum {string} */
                    kind: "door" | "window" | "vent";
                    largestPaneM2: number | "unknown";
                    offsetM: number;
                    openingId: string;
                    stockTag: string | null;
                    /** @enum {string} */
                    wall: "front" | "back" | "left" | "right";
                    widthM: number;
                }[];
                ridgeM: number;
                /** Format: uuid */
                structureId: string;
                tube: {
                    outsideMm: number | "unknown";
                    /** @enum {string} */
                    rust: "none" | "surface" | "pitted" | "unknown";
                    /** @enum {string} */
                    shape: "round" | "square";
                    wallMm: number | "unknown";
                };
                waterStores: {
                    /** @enum {string} */
                    colour: "dark" | "mid" | "light";
                    /** Format: int32 */
                    count: number;
                    stockTag: string | null;
                    volumeL: number;
                }[];
                widthM: number;
            };
            wishes: {
                crops: ("lettuce" | "spinach" | "kale" | "pea" | "radish" | "carrot" | "onion" | "broccoli" | "potato" | "tomato" | "pepper" | "cucumber" | "bean" | "basil")[];
                nightTargetC: number | null;
                /** @enum {string} */
                purpose: "seedStarting" | "overwintering" | "longerSeason" | "rainShelter" | "teaching";
                /** @enum {string} */
                ventsOpenedBy: "nobody" | "someoneAtNine" | "someoneAllDay";
            };
        };
        /** @description Asks for a new revision of the plan of a build. */
        PlanRequest: {
            /** @description Ages of prices and films are counted from this day; today at the site when left out */
            asOf?: string | null;
            /** Format: uuid */
            buildId: string;
        };
        PlanResult: {
            anchorage: {
                anchorKind: string;
                /** @enum {string} */
                capacityBasis: "pullCheck" | "torque" | "weight" | "published" | "none";
                capacityEachN: number | null;
                factorOfSafety: number | null;
                posts: {
                    capacityN: number | null;
                    demandN: number | null;
                    demandRatio: number | null;
                    postId: string;
                    /** @enum {string} */
                    verdict: "doesNotPass" | "marginal" | "noRedFlag" | "notAssessed";
                }[];
                /** @description false prints the "unrated" banner and blocks a review */
                rated: boolean;
                slidingForceN: number | null;
                /** @enum {string} */
                verdict: "doesNotPass" | "marginal" | "noRedFlag" | "notAssessed";
                worstDemandN: number | null;
                worstPostId: string | null;
                wouldHold: {
                    count: number | null;
                    /** @enum {string} */
                    kind: "augerTorque" | "concretePier" | "ballast" | "drivenPipe";
                    massKg: number | null;
                    torqueNm: number | null;
                }[];
            };
            budget: {
                capMinor: number | null;
                /** Format: int64 */
                cashHighMinor: number;
                /** Format: int64 */
                cashLowMinor: number;
                /** Format: int64 */
                cashMinor: number;
                consumablesFrac: number;
                contingencyFrac: number;
                currency: string;
                /** Format: int64 */
                inKindMinor: number;
                lines: {
                    /** Format: int64 */
                    cashMinor: number;
                    /** @enum {string} */
                    group: "frame" | "film" | "timber" | "openings" | "anchors" | "fixings" | "ground" | "water" | "sundries" | "consumables" | "contingency" | "inKind";
                    /** Format: int64 */
                    inKindMinor: number;
                    /** Format: int64 */
                    reclaimedMinor: number;
                }[];
                oldestPriceOn: string | null;
                otherCurrencies: {
                    currency: string;
                    /** Format: int64 */
                    minor: number;
                }[];
                /** Format: int64 */
                overCapMinor: number;
                /** Format: int64 */
                reclaimedMinor: number;
                /** Format: int64 */
                unpricedCount: number;
                /** @enum {string} */
                verdict: "withinCap" | "overCap" | "noCap" | "notAssessed";
            };
            climate: {
                /** Format: int32 */
                chartStartMonth: number;
                clearDay: {
                    airC: number[];
                    beamNormalWPerM2: number[];
                    /** Format: int32 */
                    dayOfYear: number;
                    dewPointC: number;
                    diffuseWPerM2: number[];
                    globalWPerM2: number[];
                    /** Format: int32 */
                    month: number;
                } | null;
                clearDays: {
                    airC: number[];
                    beamNormalWPerM2: number[];
                    /** Format: int32 */
                    dayOfYear: number;
                    dewPointC: number;
                    diffuseWPerM2: number[];
                    globalWPerM2: number[];
                    /** Format: int32 */
                    month: number;
                }[];
                coldestMonth: number | null;
                coldNights: {
                    airC: number[];
                    beamNormalWPerM2: number[];
                    /** Format: int32 */
                    dayOfYear: number;
                    dewPointC: number;
                    diffuseWPerM2: number[];
                    globalWPerM2: number[];
                    /** Format: int32 */
                    month: number;
                }[];
                degreeDays?: {
                    growingBaseC: number;
                    growingKD: number | null;
                    heatingBaseC: number;
                    heatingKD: number | null;
                };
                designNight: {
                    /** @enum {string} */
                    basis: "annualExtremeMinimum" | "hourlyPercentile" | "monthlyAbsoluteMinimum" | "monthlyMeanLessSpread";
                    day: {
                        airC: number[];
                        beamNormalWPerM2: number[];
                        /** Format: int32 */
                        dayOfYear: number;
                        dewPointC: number;
                        diffuseWPerM2: number[];
                        globalWPerM2: number[];
                        /** Format: int32 */
                        month: number;
                    };
                    doubtK: number;
                    lowC: number;
                } | null;
                frost?: {
                    /** @enum {string} */
                    basis: "published" | "monthlyDistribution";
                    doubtD: number;
                    firstDayD: {
                        p10: number | null;
                        p50: number | null;
                        p90: number | null;
                    };
                    freeD: {
                        p10: number | null;
                        p50: number | null;
                        p90: number | null;
                    };
                    lastDayD: {
                        p10: number | null;
                        p50: number | null;
                        p90: number | null;
                    };
                    /** @enum {string} */
                    pattern: "everyYear" | "someYears" | "never" | "allYear";
                    thresholdC: number;
                    yearsWithFrostFrac: number;
                } | null;
                hardiness?: {
                    classMaxC: number;
                    classMinC: number;
                    coldestClass: string;
                    hardinessClass: string;
                    mildestClass: string;
                } | null;
                heightCorrectionK: number;
                heightDifferenceM: number;
                /** @enum {string} */
                hemisphere: "north" | "south" | "equatorial";
                hottestMonth: number | null;
                months: {
                    clearSkyMJPerM2: number;
                    /** @enum {string} */
                    coldNightBasis: "recorded" | "estimated" | "none";
                    coldNightC: number | null;
                    daylightH: number;
                    /** @enum {string} */
                    dewPointBasis?: "vapourPressure" | "relativeHumidity" | "nightRule" | "none";
                    dewPointC: number | null;
                    dewPointDoubtK?: number | null;
                    hasRecord: boolean;
                    /** Format: int32 */
                    month: number;
                    /** @enum {string} */
                    sunBasis: "radiation" | "sunshineHours" | "temperatureRange" | "none";
                    sunDoubtFrac?: number | null;
                    sunMJPerM2: number | null;
                    sunnyDayMaxC: number | null;
                    tMaxC: number | null;
                    tMinC: number | null;
                }[];
                /** Format: int32 */
                monthsWithRecordCount: number;
                overheating?: {
                    /** Format: int32 */
                    month: number;
                    nightsShut: boolean;
                } | null;
                stationDistanceM: number;
                stationDoubtK?: number;
                /** @enum {string} */
                stationFit: "near" | "far" | "tooFar";
                sunHours?: {
                    brightH: number | null;
                    clearedH: number;
                    lostFrac: number;
                    /** Format: int32 */
                    month: number;
                    openH: number;
                }[];
                /** @enum {string} */
                sunHoursBasis?: "obstacles" | "freeHorizon";
            };
            cutting: {
                boards: {
                    boardId: string;
                    cuts: {
                        lengthMm: number;
                        letter: string;
                    }[];
                    kerfMm: number;
                    /** @description usable length */
                    lengthMm: number;
                    /** @enum {string} */
                    material: "frame.tubeSet" | "film.greenhouse" | "film.utility" | "film.innerCover" | "batten.19x38" | "board.38x89" | "board.38x140" | "sill.89x140" | "screw.batten" | "screw.tube" | "screw.framing" | "strap.tube" | "anchor.auger" | "anchor.pipe" | "anchor.concreteBag" | "anchor.sandbag" | "brace.cable" | "tape.contact" | "paint.white" | "door" | "door.hardware" | "window" | "window.hardware" | "vent.panel" | "seal.strip" | "mesh.rodent" | "gravel" | "fabric.ground" | "barrel.water" | "rope" | "thermometer.minMax" | "shade.cloth" | "consumables" | "contingency";
                    offcutMm: number;
                    stockTag: string | null;
                }[];
                /** Format: int64 */
                boughtBoards: number;
                /**
                 * Format: int64
                 * @description no plan can use fewer bought boards than this
                 */
                lowerBoundBoards: number;
                /** @constant */
                method: "firstFitDecreasing";
                parts: {
                    /** Format: int64 */
                    count: number;
                    forOpening: string | null;
                    lengthMm: number;
                    letter: string;
                    /** @enum {string} */
                    material: "frame.tubeSet" | "film.greenhouse" | "film.utility" | "film.innerCover" | "batten.19x38" | "board.38x89" | "board.38x140" | "sill.89x140" | "screw.batten" | "screw.tube" | "screw.framing" | "strap.tube" | "anchor.auger" | "anchor.pipe" | "anchor.concreteBag" | "anchor.sandbag" | "brace.cable" | "tape.contact" | "paint.white" | "door" | "door.hardware" | "window" | "window.hardware" | "vent.panel" | "seal.strip" | "mesh.rodent" | "gravel" | "fabric.ground" | "barrel.water" | "rope" | "thermometer.minMax" | "shade.cloth" | "consumables" | "contingency";
                    partId: string;
                    /** @enum {string} */
                    use: "header" | "jamb" | "stud" | "openingSill" | "sill" | "nailer" | "baseboard" | "batten";
                }[];
                unplaced: {
                    /** Format: int64 */
                    count: number;
                    forOpening: string | null;
                    lengthMm: number;
                    letter: string;
                    /** @enum {string} */
                    material: "frame.tubeSet" | "film.greenhouse" | "film.utility" | "film.innerCover" | "batten.19x38" | "board.38x89" | "board.38x140" | "sill.89x140" | "screw.batten" | "screw.tube" | "screw.framing" | "strap.tube" | "anchor.auger" | "anchor.pipe" | "anchor.concreteBag" | "anchor.sandbag" | "brace.cable" | "tape.contact" | "paint.white" | "door" | "door.hardware" | "window" | "window.hardware" | "vent.panel" | "seal.strip" | "mesh.rodent" | "gravel" | "fabric.ground" | "barrel.water" | "rope" | "thermometer.minMax" | "shade.cloth" | "consumables" | "contingency";
                    partId: string;
                    /** @enum {string} */
                    use: "header" | "jamb" | "stud" | "openingSill" | "sill" | "nailer" | "baseboard" | "batten";
                }[];
                wasteFrac: number;
            };
            engineVersion: string;
            fastening: {
                battenM: number;
                screw: {
                    diameterMm: number;
                    gauge: string;
                    lengthMm: number;
                    threadInWoodMm: number;
                };
                /** Format: int64 */
                screwsCount: number;
                /** Format: int64 */
                tubeScrewsCount: number;
                /** @enum {string} */
                verdict: "doesNotPass" | "marginal" | "noRedFlag" | "notAssessed";
                /** @description specific gravity assumed for the wood that holds */
                woodGravityRatio: number;
                zones: {
                    /** @enum {string} */
                    cappedBy: "strength" | "practice";
                    lineLoadNPerM: number | null;
                    /** @description length of batten in this zone */
                    runM: number;
                    screwCapacityN: number;
                    /** Format: int64 */
                    screws: number;
                    spacingMm: number;
                    suctionPa: number | null;
                    /** @enum {string} */
                    zone: "field" | "edge" | "corner";
                }[];
            };
            geometry: {
                battenRuns: {
                    /** @enum {string} */
                    along: "base" | "eave" | "endProfile" | "opening" | "endSill" | "ridge";
                    lengthM: number;
                    runId: string;
                    /** @enum {string} */
                    zone: "field" | "edge" | "corner";
                }[];
                bowProfile: {
                    xM: number;
                    yM: number;
                    zM: number;
                }[];
                bowSpacingMaxM: number;
                /** @description by how much the measured rafters fail to meet; 0 when not measured */
                closureResidualM: number;
                /** @description all film-covered surface, openings not taken off */
                coverM2: number;
                eaveM: number;
                faces: {
                    azimuthDeg: number;
                    corners: {
                        xM: number;
                        yM: number;
                        zM: number;
                    }[];
                    /** @enum {string} */
                    faceId: "front" | "back" | "left" | "right" | "roofLeft" | "roofRight" | "arch";
                    grossM2: number;
                    netM2: number;
                    openingsM2: number;
                    /** @enum {string} */
                    role: "roof" | "wall";
                    tiltDeg: number;
                }[];
                filmSheets: {
                    /** @enum {string} */
                    covers: "overTheTop" | "roof" | "leftWall" | "rightWall" | "front" | "back";
                    cutAreaM2: number;
                    lengthM: number;
                    seamLapM: number;
                    /** Format: int64 */
                    seams: number;
                    sheetId: string;
                    /** Format: int64 */
                    strips: number;
                    widthM: number;
                }[];
                footprintM2: number;
                girthM: number;
                groundDiagonalM: number;
                meanRoofHeightM: number;
                members: {
                    from: {
                        xM: number;
                        yM: number;
                        zM: number;
                    };
                    lengthM: number;
                    memberId: string;
                    /** @enum {string} */
                    role: "leg" | "rafter" | "bow" | "ridge" | "eave" | "knee" | "brace" | "sill" | "stud" | "header" | "jamb" | "openingSill" | "nailer";
                    to: {
                        xM: number;
                        yM: number;
                        zM: number;
                    };
                }[];
                openings: {
                    areaM2: number;
                    /** @description lower edge above the ground line */
                    bottomM: number;
                    corners: {
                        xM: number;
                        yM: number;
                        zM: number;
                    }[];
                    fits: boolean;
                    freeAreaM2: number;
                    freeOpenFrac: number;
                    /** @enum {string} */
                    glazing: "none" | "tempered" | "laminated" | "annealed" | "wired" | "plastic" | "unknown";
                    headroomM: number;
                    heightM: number;
                    /** @enum {string} */
                    hinge: "left" | "right" | "top" | "none";
                    /** @enum {string} */
                    kind: "door" | "window" | "vent";
                    largestPaneM2: number | "unknown";
                    offsetM: number;
                    openingId: string;
                    stockTag: string | null;
                    /** @enum {string} */
                    wall: "front" | "back" | "left" | "right";
                    widthM: number;
                }[];
                perimeterM: number;
                posts: {
                    at: {
                        xM: number;
                        yM: number;
                        zM: number;
                    };
                    /** Format: int64 */
                    number: number;
                    postId: string;
                    /** @enum {string} */
                    row: "A" | "B";
                    tributaryM: number;
                }[];
                ridgeM: number;
                /** @description mean slope eave to ridge */
                roofSlopeDeg: number;
                volumeM3: number;
            };
            notes: {
                beforeTask?: string;
                code: string;
                params: {
                    [key: string]: number | string | boolean | string[];
                };
                /** @enum {string} */
                room: "geometry" | "climate" | "thermal" | "wind" | "snow" | "anchorage" | "fastening" | "cutting" | "takeoff" | "budget" | "schedule" | "safety";
                /** @enum {string} */
                severity: "stop" | "care" | "ask" | "note";
                subject?: string;
            }[];
            /** Format: uuid */
            planId: string;
            reviewBlocked: boolean;
            /** Format: int64 */
            revision: number;
            risks: {
                code: string;
                /** @enum {string} */
                room: "geometry" | "climate" | "thermal" | "wind" | "snow" | "anchorage" | "fastening" | "cutting" | "takeoff" | "budget" | "schedule" | "safety";
            }[];
            schedule: {
                /** Format: int64 */
                crewBest: number;
                /** Format: int64 */
                crewMin: number;
                criticalPath: ("permission" | "intake" | "haulFrame" | "cleanFrame" | "denail" | "stakeOut" | "drainage" | "sill" | "anchors" | "erect" | "brace" | "nailers" | "endFrames" | "doors" | "windows" | "smooth" | "coverEnds" | "mainCover" | "battens" | "seal" | "water" | "floor" | "finish" | "hosting")[];
                stages: {
                    /** @enum {string} */
                    day: "paper" | "prep" | "ground" | "frame" | "cover" | "finish";
                    parts: {
                        lineId: string;
                        mark: string | null;
                    }[];
                    stageId: string;
                    /** Format: int64 */
                    stageNumber: number;
                    tasks: ("permission" | "intake" | "haulFrame" | "cleanFrame" | "denail" | "stakeOut" | "drainage" | "sill" | "anchors" | "erect" | "brace" | "nailers" | "endFrames" | "doors" | "windows" | "smooth" | "coverEnds" | "mainCover" | "battens" | "seal" | "water" | "floor" | "finish" | "hosting")[];
                }[];
                tasks: {
                    after: ("permission" | "intake" | "haulFrame" | "cleanFrame" | "denail" | "stakeOut" | "drainage" | "sill" | "anchors" | "erect" | "brace" | "nailers" | "endFrames" | "doors" | "windows" | "smooth" | "coverEnds" | "mainCover" | "battens" | "seal" | "water" | "floor" | "finish" | "hosting")[];
                    clockH: number;
                    /** Format: int64 */
                    crewBest: number;
                    /** Format: int64 */
                    crewMin: number;
                    critical: boolean;
                    /** @enum {string} */
                    day: "paper" | "prep" | "ground" | "frame" | "cover" | "finish";
                    /** @description working hours after the start, with the crew at hand */
                    earliestStartH: number;
                    gate: {
                        airMaxC: number | null;
                        airMinC: number | null;
                        dry: boolean;
                        groundNot: ("frozen" | "saturated")[];
                        needs: ("locateTicket" | "writtenPermission" | "helpersOnSite" | "sunnyHour")[];
                        windMaxMPerS: number | null;
                    };
                    /** Format: int64 */
                    number: number;
                    personHours: {
                        highH: number;
                        likelyH: number;
                        lowH: number;
                    };
                    /** @enum {string} */
                    taskId: "permission" | "intake" | "haulFrame" | "cleanFrame" | "denail" | "stakeOut" | "drainage" | "sill" | "anchors" | "erect" | "brace" | "nailers" | "endFrames" | "doors" | "windows" | "smooth" | "coverEnds" | "mainCover" | "battens" | "seal" | "water" | "floor" | "finish" | "hosting";
                    tools: string[];
                }[];
                totalHours: {
                    highH: number;
                    likelyH: number;
                    lowH: number;
                };
                workDays: {
                    /** Format: int64 */
                    high: number;
                    /** Format: int64 */
                    likely: number;
                    /** Format: int64 */
                    low: number;
                };
            };
            /** @constant */
            schemaVersion: 1;
            snow: {
                bowCapacityNm: number | null;
                bowMomentNm: number | null;
                clearAt: {
                    lightM: number;
                    wetM: number;
                } | null;
                driftFlag: boolean;
                factors: {
                    exposure: number;
                    importance: number;
                    slope: number;
                    thermal: number;
                };
                flatRoofPa: number | null;
                groundPa: number | null;
                slopedPa: number | null;
                /** @enum {string} */
                standard: "ASCE 7-16" | "EN 1991-1-3" | "none";
                unbalancedPa: number | null;
                /** @enum {string} */
                verdict: "doesNotPass" | "marginal" | "noRedFlag" | "notAssessed";
            };
            sources: {
                publisher: string;
                /** @enum {string} */
                quality: "published" | "measured" | "practice" | "judgement" | "memory";
                sourceId: string;
                supersededBy?: string;
                title: string;
                year: number | null;
            }[];
            takeOff: {
                lines: {
                    /** @description packs times pack, in `unit` */
                    boughtAmount: number;
                    cash: {
                        currency: string;
                        /** Format: int64 */
                        minor: number;
                    } | null;
                    /** @enum {string} */
                    group: "frame" | "film" | "timber" | "openings" | "anchors" | "fixings" | "ground" | "water" | "sundries";
                    lineId: string;
                    mark: string | null;
                    /** @enum {string} */
                    material: "frame.tubeSet" | "film.greenhouse" | "film.utility" | "film.innerCover" | "batten.19x38" | "board.38x89" | "board.38x140" | "sill.89x140" | "screw.batten" | "screw.tube" | "screw.framing" | "strap.tube" | "anchor.auger" | "anchor.pipe" | "anchor.concreteBag" | "anchor.sandbag" | "brace.cable" | "tape.contact" | "paint.white" | "door" | "door.hardware" | "window" | "window.hardware" | "vent.panel" | "seal.strip" | "mesh.rodent" | "gravel" | "fabric.ground" | "barrel.water" | "rope" | "thermometer.minMax" | "shade.cloth" | "consumables" | "contingency";
                    /** @description net amount, in `unit` */
                    need: number;
                    packAmount: number | null;
                    /** Format: int64 */
                    packs: number;
                    priceId: string | null;
                    priceReadOn: string | null;
                    priceStale: boolean;
                    reclaimed: {
                        amount: number;
                        tag: string;
                        worth: {
                            currency: string;
                            /** Format: int64 */
                            minor: number;
                        } | null;
                    }[];
                    supplier: string | null;
                    toBuy: number;
                    /** @enum {string} */
                    unit: "each" | "m" | "m2" | "m3" | "L" | "kg" | "set" | "lump";
                    /** @description need with waste, in `unit` */
                    wanted: number;
                    wasteFrac: number;
                    /** @enum {string} */
                    wasteReason: "none" | "cuttingEnds" | "reclaimedDefects" | "wrapAndLap" | "spares" | "compaction" | "breakage";
                }[];
                /** Format: int64 */
                unpricedCount: number;
            };
            thermal: {
                clearDays: {
                    curve: {
                        outsideC: number[];
                        p10C: number[];
                        p50C: number[];
                        p90C: number[];
                    };
                    insideHighC: {
                        p10: number;
                        p50: number;
                        p90: number;
                    };
                    outsideHighC: number;
                    riseK: {
                        p10: number;
                        p50: number;
                        p90: number;
                    };
                    /** @enum {string} */
                    variant: "closed" | "opened";
                }[];
                crops: {
                    belowFrac: number | null;
                    /** @enum {string} */
                    crop: "lettuce" | "spinach" | "kale" | "pea" | "radish" | "carrot" | "onion" | "broccoli" | "potato" | "tomato" | "pepper" | "cucumber" | "bean" | "basil";
                    /** @enum {string} */
                    kind: "damageBegins" | "usuallyKilled" | "heatHurts";
                    limitC: number;
                }[];
                designNights: {
                    curve: {
                        outsideC: number[];
                        p10C: number[];
                        p50C: number[];
                        p90C: number[];
                    };
                    insideLowC: {
                        p10: number;
                        p50: number;
                        p90: number;
                    };
                    leafLowC: {
                        p10: number;
                        p50: number;
                        p90: number;
                    };
                    liftK: {
                        p10: number;
                        p50: number;
                        p90: number;
                    };
                    outsideLowC: number;
                    /** @enum {string} */
                    variant: "bare" | "asPlanned" | "innerCover";
                }[];
                /** Format: int64 */
                draws: number;
                drivers: {
                    /** @enum {string} */
                    input: "airLeaks" | "wind" | "sky" | "filmState" | "soilConductivity" | "deepSoil" | "solarCapture" | "massCoupling";
                    rankRatio: number;
                }[];
                largestResidualW: number;
                leakageAirChangesPerH: number;
                lossWPerK: number;
                months: {
                    closedHighC: {
                        p10: number;
                        p50: number;
                        p90: number;
                    } | null;
                    innerCoverLowC: {
                        p10: number;
                        p50: number;
                        p90: number;
                    } | null;
                    insideLowC: {
                        p10: number;
                        p50: number;
                        p90: number;
                    } | null;
                    /** Format: int32 */
                    month: number;
                    openedHighC: {
                        p10: number;
                        p50: number;
                        p90: number;
                    } | null;
                    outsideHighC: number | null;
                    outsideLowC: number | null;
                }[];
                /** Format: int64 */
                nodes: number;
                /** Format: int64 */
                seed: number;
                stepMin: number;
                vents: {
                    /** @description free opening over floor area */
                    floorFrac: number;
                    freeM2: number;
                    lowM2: number;
                    topM2: number;
                    wantedFrac: number;
                };
                /** @enum {string} */
                verdict: "doesNotPass" | "marginal" | "noRedFlag" | "notAssessed";
            };
            wind: {
                cases: {
                    caseId: string;
                    /** @enum {string} */
                    direction: "normalFromLeft" | "normalFromRight" | "parallel";
                    /** @enum {string} */
                    enclosure: "enclosed" | "partiallyEnclosed";
                    overturningNm: number;
                    shearN: number;
                    surfaces: {
                        /** @description external pressure coefficient, dimensionless */
                        cp: number;
                        netPa: number;
                        surface: string;
                    }[];
                    upliftN: number;
                }[];
                conversion: string;
                deadLoadN: number | null;
                gustMPerS: number | null;
                liftsUnanchoredAtMPerS: number | null;
                meanRoofHeightM: number;
                posts: {
                    governedBy: string;
                    horizontalN: number;
                    postId: string;
                    upliftN: number;
                }[];
                /** @enum {string} */
                standard: "ASCE 7-16" | "EN 1991-1-4" | "none";
                totalUpliftN: number | null;
                velocityPressurePa: number | null;
                /** @enum {string} */
                verdict: "doesNotPass" | "marginal" | "noRedFlag" | "notAssessed";
                zones: {
                    suctionPa: number;
                    /** @enum {string} */
                    surface: "wall" | "roof";
                    /** @enum {string} */
                    zone: "field" | "edge" | "corner";
                }[];
            };
        };
        Price: {
            archivedAt: string | null;
            /** @description Texts as they were typed where a number is kept, by JSON Pointer */
            asTyped: {
                [key: string]: string;
            };
            /** Format: date-time */
            createdAt: string;
            /** Format: uuid */
            id: string;
            /** @enum {string} */
            material: "frame.tubeSet" | "film.greenhouse" | "film.utility" | "film.innerCover" | "batten.19x38" | "board.38x89" | "board.38x140" | "sill.89x140" | "screw.batten" | "screw.tube" | "screw.framing" | "strap.tube" | "anchor.auger" | "anchor.pipe" | "anchor.concreteBag" | "anchor.sandbag" | "brace.cable" | "tape.contact" | "paint.white" | "door" | "door.hardware" | "window" | "window.hardware" | "vent.panel" | "seal.strip" | "mesh.rodent" | "gravel" | "fabric.ground" | "barrel.water" | "rope" | "thermometer.minMax" | "shade.cloth" | "consumables" | "contingency";
            packAmount: number;
            packPrice: {
                currency: string;
                /** Format: int64 */
                minor: number;
            };
            pieceLengthM: number | null;
            pieceWidthM: number | null;
            readOn: string | null;
            supplier: string;
            /** @enum {string} */
            unit: "each" | "m" | "m2" | "m3" | "L" | "kg" | "set" | "lump";
            /** Format: date-time */
            updatedAt: string;
            /** Format: int32 */
            version: number;
        };
        /** @description Merge patch (RFC 7396): only the fields to change; the result is checked as a whole. */
        PricePatch: {
            /** @enum {string} */
            material?: "frame.tubeSet" | "film.greenhouse" | "film.utility" | "film.innerCover" | "batten.19x38" | "board.38x89" | "board.38x140" | "sill.89x140" | "screw.batten" | "screw.tube" | "screw.framing" | "strap.tube" | "anchor.auger" | "anchor.pipe" | "anchor.concreteBag" | "anchor.sandbag" | "brace.cable" | "tape.contact" | "paint.white" | "door" | "door.hardware" | "window" | "window.hardware" | "vent.panel" | "seal.strip" | "mesh.rodent" | "gravel" | "fabric.ground" | "barrel.water" | "rope" | "thermometer.minMax" | "shade.cloth" | "consumables" | "contingency";
            /** @description How much one pack holds, in `unit` */
            packAmount?: number;
            packPrice?: components["schemas"]["MoneyPatch"];
            pieceLengthM?: number | string | null;
            pieceWidthM?: number | string | null;
            readOn?: string | null;
            supplier?: string;
            /** @enum {string} */
            unit?: "each" | "m" | "m2" | "m3" | "L" | "kg" | "set" | "lump";
        };
        /** @description One price somebody read somewhere on a day. Without a day it is taken, and flagged. */
        PriceRequest: {
            /** @enum {string} */
            material: "frame.tubeSet" | "film.greenhouse" | "film.utility" | "film.innerCover" | "batten.19x38" | "board.38x89" | "board.38x140" | "sill.89x140" | "screw.batten" | "screw.tube" | "screw.framing" | "strap.tube" | "anchor.auger" | "anchor.pipe" | "anchor.concreteBag" | "anchor.sandbag" | "brace.cable" | "tape.contact" | "paint.white" | "door" | "door.hardware" | "window" | "window.hardware" | "vent.panel" | "seal.strip" | "mesh.rodent" | "gravel" | "fabric.ground" | "barrel.water" | "rope" | "thermometer.minMax" | "shade.cloth" | "consumables" | "contingency";
            /** @description How much one pack holds, in `unit` */
            packAmount: number;
            packPrice: components["schemas"]["MoneyRequest"];
            pieceLengthM: number | string | null;
            pieceWidthM: number | string | null;
            readOn: string | null;
            supplier: string;
            /** @enum {string} */
            unit: "each" | "m" | "m2" | "m3" | "L" | "kg" | "set" | "lump";
        };
        PrivateDetails: {
            address: string | null;
            healthNotes: string | null;
            needNotes: string | null;
            phone: string | null;
            photoWish: ("noPhotos" | "askFirst" | "fine") | null;
            /**
             * Format: int32
             * @description 0: nothing was written down yet
             */
            version: number;
        };
        /** @description Merge patch (RFC 7396): only the fields to change. */
        PrivateDetailsPatch: {
            /** @description Seen by nobody else */
            address?: string | null;
            /** @description Health or access notes; the safety lead reads them with the consent healthToLeader, and nobody else ever */
            healthNotes?: string | null;
            /** @description Income or need, for yourself; seen by nobody else */
            needNotes?: string | null;
            /** @description Seen by the garden only with the consent contactSharing */
            phone?: string | null;
            /** @description Shown to the garden, so that it can be kept */
            photoWish?: ("noPhotos" | "askFirst" | "fine") | null;
        };
        /** @description A refusal by RFC 9457. Its type leads to what can be done about it. */
        Problem: {
            detail: string;
            errors?: components["schemas"]["FieldFault"][];
            remedy: string;
            requestId?: string;
            /** Format: int32 */
            status: number;
            title: string;
            /** @enum {string} */
            type: "/v1/problems/malformed-json" | "/v1/problems/malformed-request" | "/v1/problems/validation-failed" | "/v1/problems/malformed-id" | "/v1/problems/cursor-invalid" | "/v1/problems/idempotency-key-invalid" | "/v1/problems/unauthenticated" | "/v1/problems/scope-missing" | "/v1/problems/not-yours" | "/v1/problems/garden-required" | "/v1/problems/cross-site" | "/v1/problems/not-a-member" | "/v1/problems/role-missing" | "/v1/problems/person-only" | "/v1/problems/garden-only" | "/v1/problems/scope-beyond-own" | "/v1/problems/email-unconfirmed" | "/v1/problems/too-many-gardens" | "/v1/problems/sign-in-failed" | "/v1/problems/code-required" | "/v1/problems/slowed-down" | "/v1/problems/quota-used-up" | "/v1/problems/sign-up-invited-only" | "/v1/problems/code-of-mail-invalid" | "/v1/problems/password-wrong" | "/v1/problems/last-coordinator" | "/v1/problems/last-member" | "/v1/problems/other-address" | "/v1/problems/operator-only" | "/v1/problems/route-unknown" | "/v1/problems/not-found" | "/v1/problems/method-not-allowed" | "/v1/problems/not-acceptable" | "/v1/problems/body-too-large" | "/v1/problems/headers-too-large" | "/v1/problems/request-too-slow" | "/v1/problems/media-type-unsupported" | "/v1/problems/too-many-requests" | "/v1/problems/rate-limited" | "/v1/problems/jobs-full" | "/v1/problems/if-match-required" | "/v1/problems/version-stale" | "/v1/problems/idempotency-conflict" | "/v1/problems/idempotency-running" | "/v1/problems/conflict" | "/v1/problems/name-taken" | "/v1/problems/archived" | "/v1/problems/in-use" | "/v1/problems/inputs-contradict" | "/v1/problems/stock-claimed" | "/v1/problems/stock-short" | "/v1/problems/station-far" | "/v1/problems/plan-not-ready" | "/v1/problems/document-not-ready" | "/v1/problems/own-request" | "/v1/problems/over-limit" | "/v1/problems/already-decided" | "/v1/problems/plan-failed" | "/v1/problems/own-review" | "/v1/problems/review-blocked" | "/v1/problems/quota-exceeded" | "/v1/problems/job-cancelled" | "/v1/problems/not-your-job" | "/v1/problems/url-refused" | "/v1/problems/too-many-webhooks" | "/v1/problems/webhook-disabled" | "/v1/problems/picture-kind-refused" | "/v1/problems/picture-unusable" | "/v1/problems/archive-refused" | "/v1/problems/archive-too-large" | "/v1/problems/import-refused" | "/v1/problems/export-too-large" | "/v1/problems/document-refused" | "/v1/problems/report-refused" | "/v1/problems/report-unavailable" | "/v1/problems/timed-out" | "/v1/problems/read-only" | "/v1/problems/storage-full" | "/v1/problems/unavailable" | "/v1/problems/internal";
        };
        RecoveryCodes: {
            /** @description To be written down: each opens the account once in place of a code. Shown this once. */
            recoveryCodes: string[];
        };
        Review: {
            comment: string | null;
            /** Format: date-time */
            createdAt: string;
            /** @enum {string} */
            decision: "reviewed" | "changesWanted";
            /** Format: uuid */
            id: string;
            reviewer: string;
        };
        ReviewRequest: {
            comment?: string | null;
            /** @enum {string} */
            decision: "reviewed" | "changesWanted";
            /** @description Who looked at the plan, as it is to be printed */
            reviewer: string;
        };
        SecondFactor: {
            /** Format: int32 */
            recoveryCodesLeftCount: number;
            /**
             * @description begun: waits for the first code
             * @enum {string}
             */
            state: "none" | "begun" | "set";
        };
        SecondFactorConfirmation: {
            /**
             * @description The code that the authenticator shows now
             * @example 492039
             */
            code: string;
        };
        SecondFactorProof: {
            /** @description Six digits of the second factor, or a recovery code */
            code: string;
            /** @description The present password */
            password: string;
        };
        SecondFactorRequest: {
            /** @description The present password */
            password: string;
        };
        Session: {
            /** Format: date-time */
            createdAt: string;
            current: boolean;
            /** Format: date-time */
            expiresAt: string;
            /** Format: uuid */
            id: string;
            /** @description What the browser or program called itself */
            label: string;
            /** Format: date-time */
            lastSeenAt: string;
        };
        SetSecondFactor: {
            /** Format: date-time */
            createdAt: string;
            /** Format: date-time */
            expiresAt: string;
            /** Format: uuid */
            id: string;
            label: string;
            /** Format: date-time */
            lastSeenAt: string;
            /** @description To be written down: each opens the account once in place of a code. Shown this once. */
            recoveryCodes: string[];
            /** @description Token of the new session, if the former was held as one; else null and a new cookie */
            token: string | null;
        };
        SharedDetails: {
            /** @description For the safety lead, with consent; null: none, or not shared */
            healthNotes: string | null;
            /** Format: uuid */
            memberId: string;
            /** @description null: none, or not shared */
            phone: string | null;
            /** @description Whether photos that show the member may be seen in the garden */
            photoRelease: boolean;
            photoWish: ("noPhotos" | "askFirst" | "fine") | null;
        };
        SignInRequest: {
            /** @description cookie: for a browser, out of reach of scripts. token: in the answer, for a program that sends it as Bearer. Left out: cookie */
            as?: ("cookie" | "token") | null;
            /** @description Six digits of the second factor, or a recovery code */
            code?: string | null;
            /**
             * @description Mail address, without a name
             * @example sorrel@example.org
             */
            email: string;
            /** @description The password, exactly as it was set */
            password: string;
        };
        SignUpRequest: {
            /**
             * @description Mail address, without a name
             * @example sorrel@example.org
             */
            email: string;
            /** @description Code of an invitation; needed where accounts are made by invitation only */
            invitation?: string | null;
            /** @description Language of mail and pages; left out: en */
            locale?: string | null;
            /** @description What others call you */
            name: string;
            /** @description 8 to 256 characters, 15 or more advised; taken exactly as it is sent. Common passwords and your own name are refused. */
            password: string;
        };
        Site: {
            archivedAt: string | null;
            /** @description Texts as they were typed where a number is kept, by JSON Pointer */
            asTyped: {
                [key: string]: string;
            };
            /** @description false: rounded to 0.01 degrees and without the outline, because you may not see the exact place */
            coordinatesExact: boolean;
            /** Format: date-time */
            createdAt: string;
            elevationM: number;
            /** @enum {string} */
            exposure: "B" | "C" | "D";
            fallAcrossM: number | "unknown";
            fallAlongM: number | "unknown";
            frostDepthM: number | "unknown";
            /** @enum {string} */
            glassRule: "allowed" | "forbidden" | "unknown";
            /** Format: uuid */
            id: string;
            latitudeDeg: number;
            longitudeDeg: number;
            name: string;
            /** @enum {string} */
            nearHilltop: "no" | "yes" | "unknown";
            obstacles?: {
                /** @description from the plot to its middle, clockwise from north */
                bearingDeg: number;
                distanceM: number;
                /** @description above the ground of the plot */
                heightM: number;
                widthM: number;
            }[];
            outline: {
                coordinates: number[][][];
                /** @enum {string} */
                type: "Polygon";
            } | null;
            ownerMemberId: string | null;
            /** @enum {string} */
            permanentAnchors: "allowed" | "forbidden" | "unknown";
            /** @description share of direct sun lost to neighbours and trees over the year */
            shadedFrac: number;
            shared: boolean;
            snow: {
                codeEdition: string;
                /** @enum {string} */
                level: "ultimate" | "service";
                loadPa: number;
                /** Format: date */
                readOn: string;
                source: string;
                /** @enum {string} */
                surface: "ground" | "roof";
            } | "unknown";
            soilClass: ("1" | "2" | "3" | "4A" | "4B" | "5") | "unknown";
            stationId: string | null;
            stormWindFromDeg: number | "unknown";
            timeZone: string;
            /** Format: date-time */
            updatedAt: string;
            /** Format: int32 */
            version: number;
            wind: {
                /** @enum {string} */
                averaging: "gust3s" | "mean10min" | "fastestMile";
                codeEdition: string;
                /** @enum {string} */
                level: "ultimate" | "service";
                /** Format: date */
                readOn: string;
                /** @enum {string} */
                riskCategory: "I" | "II" | "III" | "IV" | "none";
                source: string;
                speedMPerS: number;
            } | "unknown";
        };
        SiteClimate: {
            climate: {
                /** Format: int32 */
                chartStartMonth: number;
                clearDay: {
                    airC: number[];
                    beamNormalWPerM2: number[];
                    /** Format: int32 */
                    dayOfYear: number;
                    dewPointC: number;
                    diffuseWPerM2: number[];
                    globalWPerM2: number[];
                    /** Format: int32 */
                    month: number;
                } | null;
                clearDays: {
                    airC: number[];
                    beamNormalWPerM2: number[];
                    /** Format: int32 */
                    dayOfYear: number;
                    dewPointC: number;
                    diffuseWPerM2: number[];
                    globalWPerM2: number[];
                    /** Format: int32 */
                    month: number;
                }[];
                coldestMonth: number | null;
                coldNights: {
                    airC: number[];
                    beamNormalWPerM2: number[];
                    /** Format: int32 */
                    dayOfYear: number;
                    dewPointC: number;
                    diffuseWPerM2: number[];
                    globalWPerM2: number[];
                    /** Format: int32 */
                    month: number;
                }[];
                degreeDays?: {
                    growingBaseC: number;
                    growingKD: number | null;
                    heatingBaseC: number;
                    heatingKD: number | null;
                };
                designNight: {
                    /** @enum {string} */
                    basis: "annualExtremeMinimum" | "hourlyPercentile" | "monthlyAbsoluteMinimum" | "monthlyMeanLessSpread";
                    day: {
                        airC: number[];
                        beamNormalWPerM2: number[];
                        /** Format: int32 */
                        dayOfYear: number;
                        dewPointC: number;
                        diffuseWPerM2: number[];
                        globalWPerM2: number[];
                        /** Format: int32 */
                        month: number;
                    };
                    doubtK: number;
                    lowC: number;
                } | null;
                frost?: {
                    /** @enum {string} */
                    basis: "published" | "monthlyDistribution";
                    doubtD: number;
                    firstDayD: {
                        p10: number | null;
                        p50: number | null;
                        p90: number | null;
                    };
                    freeD: {
                        p10: number | null;
                        p50: number | null;
                        p90: number | null;
                    };
                    lastDayD: {
                        p10: number | null;
                        p50: number | null;
                        p90: number | null;
                    };
                    /** @enum {string} */
                    pattern: "everyYear" | "someYears" | "never" | "allYear";
                    thresholdC: number;
                    yearsWithFrostFrac: number;
                } | null;
                hardiness?: {
                    classMaxC: number;
                    classMinC: number;
                    coldestClass: string;
                    hardinessClass: string;
                    mildestClass: string;
                } | null;
                heightCorrectionK: number;
                heightDifferenceM: number;
                /** @enum {string} */
                hemisphere: "north" | "south" | "equatorial";
                hottestMonth: number | null;
                months: {
                    clearSkyMJPerM2: number;
                    /** @enum {string} */
                    coldNightBasis: "recorded" | "estimated" | "none";
                    coldNightC: number | null;
                    daylightH: number;
                    /** @enum {string} */
                    dewPointBasis?: "vapourPressure" | "relativeHumidity" | "nightRule" | "none";
                    dewPointC: number | null;
                    dewPointDoubtK?: number | null;
                    hasRecord: boolean;
                    /** Format: int32 */
                    month: number;
                    /** @enum {string} */
                    sunBasis: "radiation" | "sunshineHours" | "temperatureRange" | "none";
                    sunDoubtFrac?: number | null;
                    sunMJPerM2: number | null;
                    sunnyDayMaxC: number | null;
                    tMaxC: number | null;
                    tMinC: number | null;
                }[];
                /** Format: int32 */
                monthsWithRecordCount: number;
                overheating?: {
                    /** Format: int32 */
                    month: number;
                    nightsShut: boolean;
                } | null;
                stationDistanceM: number;
                stationDoubtK?: number;
                /** @enum {string} */
                stationFit: "near" | "far" | "tooFar";
                sunHours?: {
                    brightH: number | null;
                    clearedH: number;
                    lostFrac: number;
                    /** Format: int32 */
                    month: number;
                    openH: number;
                }[];
                /** @enum {string} */
                sunHoursBasis?: "obstacles" | "freeHorizon";
            };
            notes: {
                beforeTask?: string;
                code: string;
                params: {
                    [key: string]: number | string | boolean | string[];
                };
                /** @enum {string} */
                room: "geometry" | "climate" | "thermal" | "wind" | "snow" | "anchorage" | "fastening" | "cutting" | "takeoff" | "budget" | "schedule" | "safety";
                /** @enum {string} */
                severity: "stop" | "care" | "ask" | "note";
                subject?: string;
            }[];
            /** Format: uuid */
            siteId: string;
            sources: {
                publisher: string;
                /** @enum {string} */
                quality: "published" | "measured" | "practice" | "judgement" | "memory";
                sourceId: string;
                supersededBy?: string;
                title: string;
                year: number | null;
            }[];
            station: {
                country: string;
                credit: string;
                distanceM: number;
                /** @enum {string} */
                kind: "means" | "normals";
                period: string;
                stationId: string;
                stationName: string;
            };
        };
        /** @description Merge patch (RFC 7396): only the fields to change; the result is checked as a whole. */
        SitePatch: {
            /** @description Confirms a place farther than 300 km from every climate station */
            confirmFar?: boolean | null;
            /** @description Height above the sea; below it is valid */
            elevationM?: number | string;
            /** @enum {string} */
            exposure?: "B" | "C" | "D";
            /** @description Fall across the ridge, signed */
            fallAcrossM?: number | string | "unknown";
            /** @description Fall along the ridge, signed */
            fallAlongM?: number | string | "unknown";
            frostDepthM?: number | string | "unknown";
            /** @enum {string} */
            glassRule?: "allowed" | "forbidden" | "unknown";
            latitudeDeg?: number | string;
            longitudeDeg?: number | string;
            /** @description A label for the place, not a home address */
            name?: string;
            /** @enum {string} */
            nearHilltop?: "no" | "yes" | "unknown";
            /** @description What shades the plot; left out: not measured; an empty list: a free horizon */
            obstacles?: components["schemas"]["ObstacleRequest"][] | null;
            /** @description Where the plot lies; at most 5 km from its point. Plans never see it */
            outline?: {
                coordinates: number[][][];
                /** @enum {string} */
                type: "Polygon";
            } | null;
            /** @enum {string} */
            permanentAnchors?: "allowed" | "forbidden" | "unknown";
            /** @description Share of direct sun lost to neighbours and trees over the year */
            shadedFrac?: number | string;
            /** @description Whether the other members see it and a coordinator may change it; left out: no */
            shared?: boolean | null;
            snow?: components["schemas"]["SnowBasisPatch"] | "unknown";
            soilClass?: ("1" | "2" | "3" | "4A" | "4B" | "5") | "unknown";
            /** @description Climate station to use in place of the nearest */
            stationId?: string | null;
            stormWindFromDeg?: number | string | "unknown";
            /** @description IANA zone; found from the coordinates when left out */
            timeZone?: string | null;
            wind?: components["schemas"]["WindBasisPatch"] | "unknown";
        };
        /** @description A place. Exact coordinates stay in this record; plans see them rounded to 0.01 degrees. */
        SiteRequest: {
            /** @description Confirms a place farther than 300 km from every climate station */
            confirmFar?: boolean | null;
            /** @description Height above the sea; below it is valid */
            elevationM: number | string;
            /** @enum {string} */
            exposure: "B" | "C" | "D";
            /** @description Fall across the ridge, signed */
            fallAcrossM: number | string | "unknown";
            /** @description Fall along the ridge, signed */
            fallAlongM: number | string | "unknown";
            frostDepthM: number | string | "unknown";
            /** @enum {string} */
            glassRule: "allowed" | "forbidden" | "unknown";
            latitudeDeg: number | string;
            longitudeDeg: number | string;
            /** @description A label for the place, not a home address */
            name: string;
            /** @enum {string} */
            nearHilltop: "no" | "yes" | "unknown";
            /** @description What shades the plot; left out: not measured; an empty list: a free horizon */
            obstacles?: components["schemas"]["ObstacleRequest"][] | null;
            /** @description Where the plot lies; at most 5 km from its point. Plans never see it */
            outline?: {
                coordinates: number[][][];
                /** @enum {string} */
                type: "Polygon";
            } | null;
            /** @enum {string} */
            permanentAnchors: "allowed" | "forbidden" | "unknown";
            /** @description Share of direct sun lost to neighbours and trees over the year */
            shadedFrac: number | string;
            /** @description Whether the other members see it and a coordinator may change it; left out: no */
            shared?: boolean | null;
            snow: components["schemas"]["SnowBasisRequest"] | "unknown";
            soilClass: ("1" | "2" | "3" | "4A" | "4B" | "5") | "unknown";
            /** @description Climate station to use in place of the nearest */
            stationId?: string | null;
            stormWindFromDeg: number | string | "unknown";
            /** @description IANA zone; found from the coordinates when left out */
            timeZone?: string | null;
            wind: components["schemas"]["WindBasisRequest"] | "unknown";
        };
        SnowBasisPatch: {
            codeEdition?: string;
            /** @enum {string} */
            level?: "ultimate" | "service";
            loadPa?: number | string;
            /** Format: date */
            readOn?: string;
            source?: string;
            /** @enum {string} */
            surface?: "ground" | "roof";
        };
        SnowBasisRequest: {
            codeEdition: string;
            /** @enum {string} */
            level: "ultimate" | "service";
            loadPa: number | string;
            /** Format: date */
            readOn: string;
            source: string;
            /** @enum {string} */
            surface: "ground" | "roof";
        };
        SpendDecisionRequest: {
            /** @enum {string} */
            decision: "approved" | "refused";
            /** @description Why, for whoever asked */
            remark?: string | null;
        };
        SpendRequest: {
            amount: {
                currency: string;
                /** Format: int64 */
                minor: number;
            };
            buildId: string | null;
            /** Format: date-time */
            createdAt: string;
            decidedAt: string | null;
            decidedById: string | null;
            /** Format: uuid */
            id: string;
            planId: string | null;
            purpose: string;
            remark: string | null;
            /** Format: uuid */
            requestedById: string;
            /** @enum {string} */
            state: "submitted" | "approved" | "refused" | "withdrawn";
            /** Format: int32 */
            version: number;
        };
        /** @description Asks to spend money. Somebody else decides. */
        SpendRequestRequest: {
            amount: components["schemas"]["MoneyRequest"];
            /** @description The build that it is for; left out: the garden as a whole */
            buildId?: string | null;
            /** @description The plan whose prices the amount comes from */
            planId?: string | null;
            /** @description What is to be bought, and why */
            purpose: string;
        };
        Station: {
            annualExtremeMinC: number | null;
            annualExtremeMinYearsCount: number | null;
            country: string;
            credit: string;
            frostDates?: {
                firstDayD: {
                    p10: number | null;
                    p50: number | null;
                    p90: number | null;
                };
                lastDayD: {
                    p10: number | null;
                    p50: number | null;
                    p90: number | null;
                };
                publisher: string;
                thresholdC: number;
            } | null;
            hourlyLow?: {
                coldShareFrac: number;
                /** Format: int32 */
                hoursCount: number;
                lowC: number;
                /** @enum {string} */
                years: "typical" | "real";
            } | null;
            /** @enum {string} */
            kind: "means" | "normals";
            /** @description January to December */
            months: {
                absoluteMinMeanC: number | null;
                nightDeviationK?: number | null;
                precipitationMm: number | null;
                radiationMJPerM2?: number | null;
                relativeHumidityFrac?: number | null;
                sunshineH: number | null;
                tMaxC: number | null;
                tMinC: number | null;
                vapourPressurePa: number | null;
            }[];
            period: string;
            stationElevationM: number;
            stationId: string;
            stationLatitudeDeg: number;
            stationLongitudeDeg: number;
            stationName: string;
        };
        StockIntake: {
            items: components["schemas"]["StockItem"][];
        };
        /** @description Up to 200 things taken in together: all of them, or none. */
        StockIntakeRequest: {
            items: components["schemas"]["StockItemRequest"][];
        };
        StockItem: {
            ageY: (number | "unknown") | null;
            archivedAt: string | null;
            /** @description Texts as they were typed where a number is kept, by JSON Pointer */
            asTyped: {
                [key: string]: string;
            };
            /** Format: int32 */
            count: number;
            /** Format: date-time */
            createdAt: string;
            /** @description null: nobody is noted, or it is not for you to see */
            donor: {
                name: string;
                value: {
                    currency: string;
                    /** Format: int64 */
                    minor: number;
                } | null;
                wishesToBeNamed: boolean;
            } | null;
            /** Format: int32 */
            freeCount: number;
            /** @enum {string} */
            grade: "A" | "B" | "C" | "X";
            hazards: ("leadPaintAssumed" | "leadPaintFound" | "treatedWoodOld" | "treatedWoodCopper" | "creosote" | "glassUnknown" | "glassAnnealed" | "barrelContentsUnknown" | "mould" | "asbestosPuttyPossible" | "nails" | "pvcContact")[];
            heightMm: number | null;
            /** Format: uuid */
            id: string;
            /** @enum {string} */
            kind: "door" | "window" | "barrel" | "frame" | "tube" | "board" | "batten" | "sheet" | "film" | "anchor" | "hardware" | "other";
            lengthMm: number | null;
            /** @enum {string} */
            material: "frame.tubeSet" | "film.greenhouse" | "film.utility" | "film.innerCover" | "batten.19x38" | "board.38x89" | "board.38x140" | "sill.89x140" | "screw.batten" | "screw.tube" | "screw.framing" | "strap.tube" | "anchor.auger" | "anchor.pipe" | "anchor.concreteBag" | "anchor.sandbag" | "brace.cable" | "tape.contact" | "paint.white" | "door" | "door.hardware" | "window" | "window.hardware" | "vent.panel" | "seal.strip" | "mesh.rodent" | "gravel" | "fabric.ground" | "barrel.water" | "rope" | "thermometer.minMax" | "shade.cloth" | "consumables" | "contingency";
            replacement: {
                currency: string;
                /** Format: int64 */
                minor: number;
            } | null;
            tag: string;
            thicknessMm: number | null;
            /** Format: date-time */
            updatedAt: string;
            usableLengthMm: number | null;
            /** Format: int32 */
            version: number;
            volumeL: number | null;
            widthMm: number | null;
        };
        /** @description Merge patch (RFC 7396): only the fields to change; the result is checked as a whole. */
        StockItemPatch: {
            ageY?: number | string | "unknown" | null;
            /** Format: int32 */
            count?: number;
            /** @description Who gave it; left out: nobody is noted */
            donor?: components["schemas"]["DonorPatch"] | null;
            /** @enum {string} */
            grade?: "A" | "B" | "C" | "X";
            hazards?: ("leadPaintAssumed" | "leadPaintFound" | "treatedWoodOld" | "treatedWoodCopper" | "creosote" | "glassUnknown" | "glassAnnealed" | "barrelContentsUnknown" | "mould" | "asbestosPuttyPossible" | "nails" | "pvcContact")[];
            heightMm?: number | string | null;
            /** @enum {string} */
            kind?: "door" | "window" | "barrel" | "frame" | "tube" | "board" | "batten" | "sheet" | "film" | "anchor" | "hardware" | "other";
            lengthMm?: number | string | null;
            /** @enum {string} */
            material?: "frame.tubeSet" | "film.greenhouse" | "film.utility" | "film.innerCover" | "batten.19x38" | "board.38x89" | "board.38x140" | "sill.89x140" | "screw.batten" | "screw.tube" | "screw.framing" | "strap.tube" | "anchor.auger" | "anchor.pipe" | "anchor.concreteBag" | "anchor.sandbag" | "brace.cable" | "tape.contact" | "paint.white" | "door" | "door.hardware" | "window" | "window.hardware" | "vent.panel" | "seal.strip" | "mesh.rodent" | "gravel" | "fabric.ground" | "barrel.water" | "rope" | "thermometer.minMax" | "shade.cloth" | "consumables" | "contingency";
            replacement?: components["schemas"]["MoneyPatch"] | null;
            /** @description The code written on the thing */
            tag?: string;
            thicknessMm?: number | string | null;
            /** @description Length left when splits, rot and nail holes at the ends are off */
            usableLengthMm?: number | string | null;
            volumeL?: number | string | null;
            widthMm?: number | string | null;
        };
        /** @description One thing, or one lot of alike things, from the pile; sizes as measured. */
        StockItemRequest: {
            ageY: number | string | "unknown" | null;
            /** Format: int32 */
            count: number;
            /** @description Who gave it; left out: nobody is noted */
            donor?: components["schemas"]["DonorRequest"] | null;
            /** @enum {string} */
            grade: "A" | "B" | "C" | "X";
            hazards: ("leadPaintAssumed" | "leadPaintFound" | "treatedWoodOld" | "treatedWoodCopper" | "creosote" | "glassUnknown" | "glassAnnealed" | "barrelContentsUnknown" | "mould" | "asbestosPuttyPossible" | "nails" | "pvcContact")[];
            heightMm: number | string | null;
            /** @enum {string} */
            kind: "door" | "window" | "barrel" | "frame" | "tube" | "board" | "batten" | "sheet" | "film" | "anchor" | "hardware" | "other";
            lengthMm: number | string | null;
            /** @enum {string} */
            material: "frame.tubeSet" | "film.greenhouse" | "film.utility" | "film.innerCover" | "batten.19x38" | "board.38x89" | "board.38x140" | "sill.89x140" | "screw.batten" | "screw.tube" | "screw.framing" | "strap.tube" | "anchor.auger" | "anchor.pipe" | "anchor.concreteBag" | "anchor.sandbag" | "brace.cable" | "tape.contact" | "paint.white" | "door" | "door.hardware" | "window" | "window.hardware" | "vent.panel" | "seal.strip" | "mesh.rodent" | "gravel" | "fabric.ground" | "barrel.water" | "rope" | "thermometer.minMax" | "shade.cloth" | "consumables" | "contingency";
            replacement: components["schemas"]["MoneyRequest"] | null;
            /** @description The code written on the thing */
            tag: string;
            thicknessMm: number | string | null;
            /** @description Length left when splits, rot and nail holes at the ends are off */
            usableLengthMm: number | string | null;
            volumeL: number | string | null;
            widthMm: number | string | null;
        };
        Structure: {
            /** @enum {string} */
            airLeaks: "sealed" | "ordinary" | "gappy";
            anchor: {
                ballastIsWater: boolean;
                ballastKg: number | "unknown";
                depthM: number | "unknown";
                diameterM: number | "unknown";
                installTorqueNm: number | "unknown";
                /** @enum {string} */
                kind: "none" | "drivenPipe" | "auger" | "concretePier" | "ballast" | "groundPost";
                /** Format: int32 */
                perPostCount: number;
                pulledToN: number | "unknown";
            };
            archivedAt: string | null;
            /** @description Texts as they were typed where a number is kept, by JSON Pointer */
            asTyped: {
                [key: string]: string;
            };
            bedsM2: number;
            bowsAtM: number[];
            /** @enum {string} */
            braced: "none" | "endBays" | "everyBay" | "unknown";
            cover: {
                ageY: number | "unknown";
                /** @enum {string} */
                film: "polyethylene" | "polyethyleneInfrared" | "utility" | "found";
                /** @description a row cover over the crop on cold nights */
                innerCover: boolean;
                rollWidthM: number;
                secondFilm: boolean;
                shadeFrac: number;
                thicknessMm: number;
                /** @description extra film at each edge to roll round a batten */
                wrapM: number;
            };
            /** Format: date-time */
            createdAt: string;
            eaveM: number;
            /** @enum {string} */
            floor: "soil" | "mulch" | "gravel" | "brick" | "decking";
            floorMoist: boolean;
            frameMassKg: number | "unknown";
            frameStockTag: string | null;
            frontFacesDeg: number;
            hostWall: {
                heightM: number;
                /** @enum {string} */
                material: "masonry" | "timber" | "unknown";
                /** @enum {string} */
                roofShedsOntoIt: "yes" | "no" | "unknown";
            } | null;
            /** Format: uuid */
            id: string;
            /** @enum {string} */
            kind: "gableCanopy" | "roundArch" | "leanTo";
            lengthM: number;
            measuredRaftersM: {
                leftM: number;
                rightM: number;
            } | null;
            name: string;
            openings: {
                /** @description lower edge above the ground line */
                bottomM: number;
                freeOpenFrac: number;
                /** @enum {string} */
                glazing: "none" | "tempered" | "laminated" | "annealed" | "wired" | "plastic" | "unknown";
                heightM: number;
                /** @enum {string} */
                hinge: "left" | "right" | "top" | "none";
                /** @enum {string} */
                kind: "door" | "window" | "vent";
                largestPaneM2: number | "unknown";
                offsetM: number;
                openingId: string;
                stockTag: string | null;
                /** @enum {string} */
                wall: "front" | "back" | "left" | "right";
                widthM: number;
            }[];
            ownerMemberId: string | null;
            ridgeM: number;
            shared: boolean;
            tube: {
                outsideMm: number | "unknown";
                /** @enum {string} */
                rust: "none" | "surface" | "pitted" | "unknown";
                /** @enum {string} */
                shape: "round" | "square";
                wallMm: number | "unknown";
            };
            /** Format: date-time */
            updatedAt: string;
            /** Format: int32 */
            version: number;
            waterStores: {
                /** @enum {string} */
                colour: "dark" | "mid" | "light";
                /** Format: int32 */
                count: number;
                stockTag: string | null;
                volumeL: number;
            }[];
            widthM: number;
        };
        /** @description Merge patch (RFC 7396): only the fields to change; the result is checked as a whole. */
        StructurePatch: {
            /** @enum {string} */
            airLeaks?: "sealed" | "ordinary" | "gappy";
            anchor?: components["schemas"]["AnchorPatch"];
            bedsM2?: number | string;
            /** @description Stations of the bows or posts along the length */
            bowsAtM?: (number | string)[];
            /** @enum {string} */
            braced?: "none" | "endBays" | "everyBay" | "unknown";
            cover?: components["schemas"]["CoverPatch"];
            eaveM?: number | string;
            /** @enum {string} */
            floor?: "soil" | "mulch" | "gravel" | "brick" | "decking";
            floorMoist?: boolean;
            frameMassKg?: number | string | "unknown";
            frameStockTag?: string | null;
            /** @description True bearing that the front end wall faces, clockwise from north */
            frontFacesDeg?: number | string;
            hostWall?: components["schemas"]["HostWallPatch"] | null;
            /** @enum {string} */
            kind?: "gableCanopy" | "roundArch" | "leanTo";
            lengthM?: number | string;
            measuredRaftersM?: components["schemas"]["MeasuredRaftersPatch"] | null;
            /** @description What people call it; a label is made when it is left out */
            name?: string | null;
            openings?: components["schemas"]["OpeningRequest"][];
            ridgeM?: number | string;
            /** @description Whether the other members see it and a coordinator may change it; left out: no */
            shared?: boolean | null;
            tube?: components["schemas"]["TubePatch"];
            waterStores?: components["schemas"]["WaterStoreRequest"][];
            widthM?: number | string;
        };
        /** @description A shelter: its frame, openings, cover, anchors. Lengths are metres, or typed with their own unit ("10 ft"). */
        StructureRequest: {
            /** @enum {string} */
            airLeaks: "sealed" | "ordinary" | "gappy";
            anchor: components["schemas"]["AnchorRequest"];
            bedsM2: number | string;
            /** @description Stations of the bows or posts along the length */
            bowsAtM: (number | string)[];
            /** @enum {string} */
            braced: "none" | "endBays" | "everyBay" | "unknown";
            cover: components["schemas"]["CoverRequest"];
            eaveM: number | string;
            /** @enum {string} */
            floor: "soil" | "mulch" | "gravel" | "brick" | "decking";
            floorMoist: boolean;
            frameMassKg: number | string | "unknown";
            frameStockTag: string | null;
            /** @description True bearing that the front end wall faces, clockwise from north */
            frontFacesDeg: number | string;
            hostWall: components["schemas"]["HostWallRequest"] | null;
            /** @enum {string} */
            kind: "gableCanopy" | "roundArch" | "leanTo";
            lengthM: number | string;
            measuredRaftersM: components["schemas"]["MeasuredRaftersRequest"] | null;
            /** @description What people call it; a label is made when it is left out */
            name?: string | null;
            openings: components["schemas"]["OpeningRequest"][];
            ridgeM: number | string;
            /** @description Whether the other members see it and a coordinator may change it; left out: no */
            shared?: boolean | null;
            tube: components["schemas"]["TubeRequest"];
            waterStores: components["schemas"]["WaterStoreRequest"][];
            widthM: number | string;
        };
        TubePatch: {
            outsideMm?: number | string | "unknown";
            /** @enum {string} */
            rust?: "none" | "surface" | "pitted" | "unknown";
            /** @enum {string} */
            shape?: "round" | "square";
            wallMm?: number | string | "unknown";
        };
        TubeRequest: {
            outsideMm: number | string | "unknown";
            /** @enum {string} */
            rust: "none" | "surface" | "pitted" | "unknown";
            /** @enum {string} */
            shape: "round" | "square";
            wallMm: number | string | "unknown";
        };
        WaterStoreRequest: {
            /** @enum {string} */
            colour: "dark" | "mid" | "light";
            /** Format: int32 */
            count: number;
            stockTag: string | null;
            volumeL: number | string;
        };
        Webhook: {
            /** Format: date-time */
            createdAt: string;
            description: string | null;
            eventTypes: string[];
            failingSince: string | null;
            formerSecretUntil: string | null;
            /** Format: uuid */
            id: string;
            /** @enum {string} */
            state: "active" | "disabled";
            /** Format: date-time */
            updatedAt: string;
            url: string;
            /** Format: int32 */
            version: number;
        };
        WebhookDelivery: {
            attempts: {
                /** Format: date-time */
                at: string;
                /** @enum {string} */
                outcome: "delivered" | "refused" | "redirected" | "gone" | "addressRefused" | "unresolved" | "unreachable" | "insecure" | "timedOut";
                status: number | null;
                tookS: number;
            }[];
            /** Format: date-time */
            createdAt: string;
            /** Format: uuid */
            eventId: string;
            finishedAt: string | null;
            /** Format: uuid */
            id: string;
            nextAttemptAt: string | null;
            object: {
                /** Format: uuid */
                id: string;
                type: string;
                /** Format: int32 */
                version: number;
            };
            /** @enum {string} */
            state: "waiting" | "delivered" | "failed" | "cancelled";
            type: string;
            /** Format: uuid */
            webhookId: string;
        };
        /** @description Merge patch (RFC 7396): only the fields to change; the result is checked as a whole. */
        WebhookPatch: {
            /** @description What the address is for */
            description?: string | null;
            /** @description Which events are sent; at least one */
            eventTypes?: ("plan.ready" | "plan.failed" | "plan.stale" | "document.ready" | "document.failed" | "build.updated" | "stock.claimed" | "stock.released" | "member.joined")[];
            /** @description Active when left out */
            state?: ("active" | "disabled") | null;
            /** @description An https address with a public name */
            url?: string;
        };
        /** @description An address that is told of events by a signed POST. */
        WebhookRequest: {
            /** @description What the address is for */
            description?: string | null;
            /** @description Which events are sent; at least one */
            eventTypes: ("plan.ready" | "plan.failed" | "plan.stale" | "document.ready" | "document.failed" | "build.updated" | "stock.claimed" | "stock.released" | "member.joined")[];
            /** @description Active when left out */
            state?: ("active" | "disabled") | null;
            /** @description An https address with a public name */
            url: string;
        };
        /** @description A wind speed means nothing without its basis. */
        WindBasisPatch: {
            /** @enum {string} */
            averaging?: "gust3s" | "mean10min" | "fastestMile";
            codeEdition?: string;
            /** @enum {string} */
            level?: "ultimate" | "service";
            /** Format: date */
            readOn?: string;
            /** @enum {string} */
            riskCategory?: "I" | "II" | "III" | "IV" | "none";
            source?: string;
            /** @description Above 300 km/h is refused: look for a slip of the unit */
            speedMPerS?: number | string;
        };
        /** @description A wind speed means nothing without its basis. */
        WindBasisRequest: {
            /** @enum {string} */
            averaging: "gust3s" | "mean10min" | "fastestMile";
            codeEdition: string;
            /** @enum {string} */
            level: "ultimate" | "service";
            /** Format: date */
            readOn: string;
            /** @enum {string} */
            riskCategory: "I" | "II" | "III" | "IV" | "none";
            source: string;
            /** @description Above 300 km/h is refused: look for a slip of the unit */
            speedMPerS: number | string;
        };
        WishesPatch: {
            crops?: ("lettuce" | "spinach" | "kale" | "pea" | "radish" | "carrot" | "onion" | "broccoli" | "potato" | "tomato" | "pepper" | "cucumber" | "bean" | "basil")[];
            nightTargetC?: number | string | null;
            /** @enum {string} */
            purpose?: "seedStarting" | "overwintering" | "longerSeason" | "rainShelter" | "teaching";
            /**
             * @description Who opens the vents on a sunny day; nobody is an honest answer
             * @enum {string}
             */
            ventsOpenedBy?: "nobody" | "someoneAtNine" | "someoneAllDay";
        };
        WishesRequest: {
            crops: ("lettuce" | "spinach" | "kale" | "pea" | "radish" | "carrot" | "onion" | "broccoli" | "potato" | "tomato" | "pepper" | "cucumber" | "bean" | "basil")[];
            nightTargetC: number | string | null;
            /** @enum {string} */
            purpose: "seedStarting" | "overwintering" | "longerSeason" | "rainShelter" | "teaching";
            /**
             * @description Who opens the vents on a sunny day; nobody is an honest answer
             * @enum {string}
             */
            ventsOpenedBy: "nobody" | "someoneAtNine" | "someoneAllDay";
        };
    };
    responses: {
        /** @description In the way of something else */
        ClaimProblem409: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["ClaimProblem"];
            };
        };
        /** @description Something in the request is not valid */
        Problem400: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description No valid key or session */
        Problem401: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                "WWW-Authenticate": components["headers"]["WWWAuthenticate"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Not for this key, or not for the roles of this person */
        Problem403: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Not found in this garden */
        Problem404: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description No such form */
        Problem406: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description In the way of something else */
        Problem409: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Changed meanwhile */
        Problem412: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Too large */
        Problem413: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Media type not taken */
        Problem415: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Understood, and not possible */
        Problem422: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description If-Match is required */
        Problem428: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Too many at once */
        Problem429: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                "Retry-After": components["headers"]["RetryAfter"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Something broke here */
        Problem500: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Not available now */
        Problem503: {
            headers: {
                "Retry-After": components["headers"]["RetryAfter"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Something in the request is not valid */
        Problem4002: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description No such form */
        Problem4062: {
            headers: {
                RateLimit: components["headers"]["RateLimit"];
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
    };
    parameters: {
        /** @description Show archived ones too */
        archivedQuery: boolean;
        buildIdPath: string;
        /** @description Only plans of this build */
        buildIdQuery: string;
        /** @description Only requests for this build */
        buildIdQuery2: string;
        /** @description What the photo shows */
        captionQuery: string;
        /** @description from "next" of an earlier page */
        cursorQuery: string;
        /**
         * @description Height of the place, to tell how much higher or lower each station lies
         * @example 1640
         */
        elevationMQuery: number;
        /** @description Days from one work day to the next: 1 is day after day, 7 is once a week */
        everyDQuery: number;
        /** @description Show former members too */
        formerQuery: boolean;
        /** @description Only things of which some are free (true) or none is (false) */
        freeQuery: boolean;
        /**
         * @description The earlier revision of the plan
         * @example 1
         */
        fromRevisionQuery: number;
        /** @description Only things of this grade */
        gradeQuery: "A" | "B" | "C" | "X";
        /**
         * @description Repeat with the same key and body to get the same answer, for 24 hours
         * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
         */
        IdempotencyKey: string;
        idPath: string;
        /**
         * @description ETag of the version that is changed
         * @example "1"
         */
        IfMatch: string;
        keyPath: "malformed-json" | "malformed-request" | "validation-failed" | "malformed-id" | "cursor-invalid" | "idempotency-key-invalid" | "unauthenticated" | "scope-missing" | "not-yours" | "garden-required" | "cross-site" | "not-a-member" | "role-missing" | "person-only" | "garden-only" | "scope-beyond-own" | "email-unconfirmed" | "too-many-gardens" | "sign-in-failed" | "code-required" | "slowed-down" | "quota-used-up" | "sign-up-invited-only" | "code-of-mail-invalid" | "password-wrong" | "last-coordinator" | "last-member" | "other-address" | "operator-only" | "route-unknown" | "not-found" | "method-not-allowed" | "not-acceptable" | "body-too-large" | "headers-too-large" | "request-too-slow" | "media-type-unsupported" | "too-many-requests" | "rate-limited" | "jobs-full" | "if-match-required" | "version-stale" | "idempotency-conflict" | "idempotency-running" | "conflict" | "name-taken" | "archived" | "in-use" | "inputs-contradict" | "stock-claimed" | "stock-short" | "station-far" | "plan-not-ready" | "document-not-ready" | "own-request" | "over-limit" | "already-decided" | "plan-failed" | "own-review" | "review-blocked" | "quota-exceeded" | "job-cancelled" | "not-your-job" | "url-refused" | "too-many-webhooks" | "webhook-disabled" | "picture-kind-refused" | "picture-unusable" | "archive-refused" | "archive-too-large" | "import-refused" | "export-too-large" | "document-refused" | "report-refused" | "report-unavailable" | "timed-out" | "read-only" | "storage-full" | "unavailable" | "internal";
        /** @description Only things of this kind */
        kindQuery: "door" | "window" | "barrel" | "frame" | "tube" | "board" | "batten" | "sheet" | "film" | "anchor" | "hardware" | "other";
        /** @description Id of the last event seen; what follows it is told */
        LastEventID: string;
        /** @example 20 */
        limitQuery: number;
        /** @example 20 */
        limitQuery2: number;
        /** @description Only prices of this material */
        materialQuery: "frame.tubeSet" | "film.greenhouse" | "film.utility" | "film.innerCover" | "batten.19x38" | "board.38x89" | "board.38x140" | "sill.89x140" | "screw.batten" | "screw.tube" | "screw.framing" | "strap.tube" | "anchor.auger" | "anchor.pipe" | "anchor.concreteBag" | "anchor.sandbag" | "brace.cable" | "tape.contact" | "paint.white" | "door" | "door.hardware" | "window" | "window.hardware" | "vent.panel" | "seal.strip" | "mesh.rodent" | "gravel" | "fabric.ground" | "barrel.water" | "rope" | "thermometer.minMax" | "shade.cloth" | "consumables" | "contingency";
        /**
         * @description Latitude and longitude in degrees, north and east positive
         * @example 39.93,-104.58
         */
        nearQuery: string;
        /** @description Only what happened to this thing */
        objectIdQuery: string;
        /** @description Only what happened to things of this kind */
        objectTypeQuery: "garden" | "key" | "member" | "invitation" | "site" | "structure" | "stockItem" | "claim" | "price" | "exchangeRate" | "build" | "plan" | "document";
        photoIdPath: string;
        /** @description Only documents of this plan */
        planIdQuery: string;
        /**
         * @description wait=10 holds the answer back until the job is done, at most so many seconds
         * @example wait=10
         */
        Prefer: string;
        /** @description Whether everybody shown has agreed to it being seen in the garden, and that is kept on file */
        releaseOnFileQuery: boolean;
        /**
         * @description Whether people can be made out on it
         * @example false
         */
        showsPeopleQuery: boolean;
        /** @description Only builds at this site */
        siteIdQuery: string;
        /** @description First work day; left out: the day on which the crew of the build begins */
        startsOnQuery: string;
        /** @description Only jobs in this state */
        stateQuery: "queued" | "running" | "succeeded" | "failed" | "cancelled";
        /** @description Only deliveries in this state */
        stateQuery2: "waiting" | "delivered" | "failed" | "cancelled";
        /** @description Only requests in this state */
        stateQuery3: "submitted" | "approved" | "refused" | "withdrawn";
        /**
         * @description The later revision
         * @example 1
         */
        toRevisionQuery: number;
        /** @description Only variants of this build */
        variantOfQuery: string;
        webhookIdPath: string;
    };
    requestBodies: never;
    headers: {
        /** @description Strong tag of this version */
        ETag: string;
        /** @description true when this is an earlier answer */
        IdempotencyReplayed: string;
        /** @description Links to the first and next page (RFC 8288) */
        Link: string;
        /** @description The job that can be watched (relation "monitor") */
        Link2: string;
        /** @description Address of what was made */
        Location: string;
        /** @description The wait that was honoured */
        PreferenceApplied: string;
        /**
         * @description What is left of each limit now
         * @example "garden";r=598;t=30
         */
        RateLimit: string;
        /**
         * @description The limits that count for this request
         * @example "garden";q=600;w=60
         */
        RateLimitPolicy: string;
        /**
         * @description Seconds to wait before the next try
         * @example 30
         */
        RetryAfter: number;
        /** @description Seconds after which to ask again, while it is not done */
        RetryAfter2: string;
        /**
         * @description How to say who is asking
         * @example Bearer realm="lathwork"
         */
        WWWAuthenticate: string;
    };
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    livez: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "process": "ok"
                     *     }
                     */
                    "application/json": {
                        /** @enum {string} */
                        process: "ok" | "fail";
                    };
                };
            };
            400: components["responses"]["Problem400"];
            406: components["responses"]["Problem406"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    readyz: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "database": "ok",
                     *       "disk": "ok",
                     *       "migrations": "ok",
                     *       "queue": "ok",
                     *       "queueAge": "ok",
                     *       "report": "ok",
                     *       "serving": "ok"
                     *     }
                     */
                    "application/json": {
                        /** @enum {string} */
                        database: "ok" | "fail";
                        /** @enum {string} */
                        disk: "ok" | "fail";
                        /** @enum {string} */
                        migrations: "ok" | "fail";
                        /** @enum {string} */
                        queue: "ok" | "fail";
                        /** @enum {string} */
                        queueAge: "ok" | "fail";
                        /** @enum {string} */
                        report: "ok" | "fail";
                        /** @enum {string} */
                        serving: "ok" | "fail";
                    };
                };
            };
            400: components["responses"]["Problem400"];
            406: components["responses"]["Problem406"];
            500: components["responses"]["Problem500"];
            /** @description Not ready; names what fails */
            503: {
                headers: {
                    "Retry-After": components["headers"]["RetryAfter"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @enum {string} */
                        database: "ok" | "fail";
                        /** @enum {string} */
                        disk: "ok" | "fail";
                        /** @enum {string} */
                        migrations: "ok" | "fail";
                        /** @enum {string} */
                        queue: "ok" | "fail";
                        /** @enum {string} */
                        queueAge: "ok" | "fail";
                        /** @enum {string} */
                        report: "ok" | "fail";
                        /** @enum {string} */
                        serving: "ok" | "fail";
                    };
                };
            };
        };
    };
    getAccount: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show your account */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "email": "sorrel@example.org",
                     *       "emailConfirmed": true,
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "locale": "en",
                     *       "name": "Sorrel Hedgerow",
                     *       "secondFactor": false,
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 2
                     *     }
                     */
                    "application/json": components["schemas"]["Account"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    updateAccount: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "name": "Sorrel from the east field"
                 *     }
                 */
                "application/merge-patch+json": components["schemas"]["AccountPatch"];
            };
        };
        responses: {
            /** @description Change your name or language */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "email": "sorrel@example.org",
                     *       "emailConfirmed": true,
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "locale": "en",
                     *       "name": "Sorrel from the east field",
                     *       "secondFactor": false,
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 3
                     *     }
                     */
                    "application/json": components["schemas"]["Account"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    eraseAccount: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "password": "five barrows under a bridge"
                 *     }
                 */
                "application/json": components["schemas"]["ErasureRequest"];
            };
        };
        responses: {
            /** @description Done */
            204: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listAccountEvents: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What happened to your account, newest first */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "action": "account.update",
                     *           "at": "2026-03-15T09:00:00.000Z",
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "requestId": "019a1c3e-0000-7000-8000-000000000101"
                     *         },
                     *         {
                     *           "action": "session.create",
                     *           "at": "2026-03-15T09:00:00.000Z",
                     *           "id": "019a1c3e-0000-7000-8000-000000000102",
                     *           "requestId": "019a1c3e-0000-7000-8000-000000000103"
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["AccountEvent"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    exportAccount: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Everything that is kept of you, as one archive: JSON, tables and files */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/zip": Blob;
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getFactor: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Whether a second factor is set */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "recoveryCodesLeftCount": 0,
                     *       "state": "none"
                     *     }
                     */
                    "application/json": components["schemas"]["SecondFactor"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    beginFactor: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "password": "five barrows under a bridge"
                 *     }
                 */
                "application/json": components["schemas"]["SecondFactorRequest"];
            };
        };
        responses: {
            /** @description Begin to set a second factor */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "secret": "GEZDGNBVGY3TQOJQGEZDGNBVGY3TQOJQ",
                     *       "uri": "otpauth://totp/Lathwork:sorrel%40example.org?secret=GEZDGNBVGY3TQOJQGEZDGNBVGY3TQOJQ&issuer=Lathwork"
                     *     }
                     */
                    "application/json": components["schemas"]["BegunSecondFactor"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    confirmFactor: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "code": "492039"
                 *     }
                 */
                "application/json": components["schemas"]["SecondFactorConfirmation"];
            };
        };
        responses: {
            /** @description Set the second factor with its first code; the session is replaced */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "expiresAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "label": "unnamed",
                     *       "lastSeenAt": "2026-03-15T09:00:00.000Z",
                     *       "recoveryCodes": [
                     *         "abcd-efgh-jkmn-pqrs",
                     *         "tuvw-xyz2-3456-789a"
                     *       ],
                     *       "token": "lws_shown-once-and-kept-by-you"
                     *     }
                     */
                    "application/json": components["schemas"]["SetSecondFactor"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    renewRecoveryCodes: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "code": "abcd-efgh-jkmn-pqrs",
                 *       "password": "five barrows under a bridge"
                 *     }
                 */
                "application/json": components["schemas"]["SecondFactorProof"];
            };
        };
        responses: {
            /** @description Get new recovery codes; the old ones open nothing any more */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "recoveryCodes": [
                     *         "abcd-efgh-jkmn-pqrs",
                     *         "tuvw-xyz2-3456-789a"
                     *       ]
                     *     }
                     */
                    "application/json": components["schemas"]["RecoveryCodes"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    removeFactor: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "code": "492039",
                 *       "password": "five barrows under a bridge"
                 *     }
                 */
                "application/json": components["schemas"]["SecondFactorProof"];
            };
        };
        responses: {
            /** @description Remove the second factor; the session is replaced */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "expiresAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "label": "unnamed",
                     *       "lastSeenAt": "2026-03-15T09:00:00.000Z",
                     *       "token": "lws_shown-once-and-kept-by-you"
                     *     }
                     */
                    "application/json": components["schemas"]["NewSession"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listAccountGardens: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The gardens you are a member of */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "archived": false,
                     *           "gardenId": "019a1c3e-0000-7000-8000-000000000001",
                     *           "gardenName": "Rabbitbrush Bend Community Garden",
                     *           "joinedAt": "2026-03-15T09:00:00.000Z",
                     *           "memberId": "019a1c3e-0000-7000-8000-000000000100",
                     *           "roles": [
                     *             "member",
                     *             "storekeeper"
                     *           ]
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["AccountGarden"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    changePassword: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "newPassword": "nine thirsty cabbages in May",
                 *       "password": "five barrows under a bridge"
                 *     }
                 */
                "application/json": components["schemas"]["PasswordChangeRequest"];
            };
        };
        responses: {
            /** @description Change your password; all other sessions end and yours is replaced */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "expiresAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "label": "unnamed",
                     *       "lastSeenAt": "2026-03-15T09:00:00.000Z",
                     *       "token": "lws_shown-once-and-kept-by-you"
                     *     }
                     */
                    "application/json": components["schemas"]["NewSession"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createAccount: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "email": "sorrel@example.org",
                 *       "locale": "en",
                 *       "name": "Sorrel Hedgerow",
                 *       "password": "five barrows under a bridge"
                 *     }
                 */
                "application/json": components["schemas"]["SignUpRequest"];
            };
        };
        responses: {
            /** @description Done */
            202: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    confirmAccount: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "code": "q3Xb0nYl1o7V5c2Jm8Rk4sTf6uWzA9eDgHiKpLxNvBw",
                 *       "password": "five barrows under a bridge"
                 *     }
                 */
                "application/json": components["schemas"]["ConfirmRequest"];
            };
        };
        responses: {
            /** @description Done */
            204: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listBuilds: {
        parameters: {
            query?: {
                /** @description Show archived ones too */
                archived?: components["parameters"]["archivedQuery"];
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
                /** @description Only builds at this site */
                siteId?: components["parameters"]["siteIdQuery"];
                /** @description Only variants of this build */
                variantOf?: components["parameters"]["variantOfQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List the builds of the garden */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "archivedAt": null,
                     *           "asTyped": {},
                     *           "budget": {
                     *             "capMinor": 150000,
                     *             "consumablesFrac": null,
                     *             "consumablesReason": null,
                     *             "contingencyFrac": null,
                     *             "contingencyReason": null,
                     *             "currency": "USD",
                     *             "exchangeRates": [],
                     *             "inKind": [
                     *               {
                     *                 "label": "Two loaned step ladders and a drill",
                     *                 "value": {
                     *                   "currency": "USD",
                     *                   "minor": 6000
                     *                 }
                     *               }
                     *             ]
                     *           },
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "crew": {
                     *             "experience": "mixed",
                     *             "people": 5,
                     *             "startOn": "2026-04-18"
                     *           },
                     *           "id": "019a1c3e-0000-7000-8000-000000000004",
                     *           "name": "Chicory plot: gable canopy",
                     *           "ownerMemberId": null,
                     *           "shared": false,
                     *           "siteId": "019a1c3e-0000-7000-8000-000000000002",
                     *           "structureId": "019a1c3e-0000-7000-8000-000000000003",
                     *           "updatedAt": "2026-03-15T09:00:00.000Z",
                     *           "variantLabel": null,
                     *           "variantOf": null,
                     *           "version": 4,
                     *           "wishes": {
                     *             "crops": [
                     *               "spinach",
                     *               "kale",
                     *               "lettuce",
                     *               "tomato"
                     *             ],
                     *             "nightTargetC": 2,
                     *             "purpose": "longerSeason",
                     *             "ventsOpenedBy": "someoneAtNine"
                     *           }
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["Build"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createBuild: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "budget": {
                 *         "capMinor": 130000,
                 *         "consumablesFrac": null,
                 *         "consumablesReason": null,
                 *         "contingencyFrac": null,
                 *         "contingencyReason": null,
                 *         "currency": "USD",
                 *         "exchangeRates": [],
                 *         "inKind": [
                 *           {
                 *             "label": "Two loaned step ladders and a drill",
                 *             "value": {
                 *               "currency": "USD",
                 *               "minor": 6000
                 *             }
                 *           }
                 *         ]
                 *       },
                 *       "crew": {
                 *         "experience": "mixed",
                 *         "people": 5,
                 *         "startOn": "2026-04-18"
                 *       },
                 *       "name": "Chicory plot: gable canopy",
                 *       "siteId": "019a1c3e-0000-7000-8000-000000000002",
                 *       "structureId": "019a1c3e-0000-7000-8000-000000000003",
                 *       "wishes": {
                 *         "crops": [
                 *           "spinach",
                 *           "kale",
                 *           "lettuce",
                 *           "tomato"
                 *         ],
                 *         "nightTargetC": "32 degF",
                 *         "purpose": "longerSeason",
                 *         "ventsOpenedBy": "someoneAtNine"
                 *       }
                 *     }
                 */
                "application/json": components["schemas"]["BuildRequest"];
            };
        };
        responses: {
            /** @description Make a build */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "archivedAt": null,
                     *       "asTyped": {
                     *         "/wishes/nightTargetC": "32 degF"
                     *       },
                     *       "budget": {
                     *         "capMinor": 130000,
                     *         "consumablesFrac": null,
                     *         "consumablesReason": null,
                     *         "contingencyFrac": null,
                     *         "contingencyReason": null,
                     *         "currency": "USD",
                     *         "exchangeRates": [],
                     *         "inKind": [
                     *           {
                     *             "label": "Two loaned step ladders and a drill",
                     *             "value": {
                     *               "currency": "USD",
                     *               "minor": 6000
                     *             }
                     *           }
                     *         ]
                     *       },
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "crew": {
                     *         "experience": "mixed",
                     *         "people": 5,
                     *         "startOn": "2026-04-18"
                     *       },
                     *       "id": "019a1c3e-0000-7000-8000-000000000004",
                     *       "name": "Chicory plot: gable canopy",
                     *       "ownerMemberId": null,
                     *       "shared": false,
                     *       "siteId": "019a1c3e-0000-7000-8000-000000000002",
                     *       "structureId": "019a1c3e-0000-7000-8000-000000000003",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "variantLabel": null,
                     *       "variantOf": null,
                     *       "version": 1,
                     *       "wishes": {
                     *         "crops": [
                     *           "spinach",
                     *           "kale",
                     *           "lettuce",
                     *           "tomato"
                     *         ],
                     *         "nightTargetC": 0,
                     *         "purpose": "longerSeason",
                     *         "ventsOpenedBy": "someoneAtNine"
                     *       }
                     *     }
                     */
                    "application/json": components["schemas"]["Build"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listClaims: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path: {
                buildId: components["parameters"]["buildIdPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List what is held for a build */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "buildId": "019a1c3e-0000-7000-8000-000000000004",
                     *           "count": 1,
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "stockId": "019a1c3e-0000-7000-8000-000000000101",
                     *           "tag": "RB-003"
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["Claim"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createClaim: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path: {
                buildId: components["parameters"]["buildIdPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "tag": "RB-003"
                 *     }
                 */
                "application/json": components["schemas"]["ClaimRequest"];
            };
        };
        responses: {
            /** @description Hold a thing of the pile for a build */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "buildId": "019a1c3e-0000-7000-8000-000000000004",
                     *       "count": 1,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "stockId": "019a1c3e-0000-7000-8000-000000000101",
                     *       "tag": "RB-003"
                     *     }
                     */
                    "application/json": components["schemas"]["Claim"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["ClaimProblem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getClaim: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                buildId: components["parameters"]["buildIdPath"];
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show one claim that is not released */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "buildId": "019a1c3e-0000-7000-8000-000000000004",
                     *       "count": 1,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "stockId": "019a1c3e-0000-7000-8000-000000000101",
                     *       "tag": "RB-003"
                     *     }
                     */
                    "application/json": components["schemas"]["Claim"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    releaseClaim: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                buildId: components["parameters"]["buildIdPath"];
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done */
            204: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getBuild: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show one build */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "archivedAt": null,
                     *       "asTyped": {},
                     *       "budget": {
                     *         "capMinor": 150000,
                     *         "consumablesFrac": null,
                     *         "consumablesReason": null,
                     *         "contingencyFrac": null,
                     *         "contingencyReason": null,
                     *         "currency": "USD",
                     *         "exchangeRates": [],
                     *         "inKind": [
                     *           {
                     *             "label": "Two loaned step ladders and a drill",
                     *             "value": {
                     *               "currency": "USD",
                     *               "minor": 6000
                     *             }
                     *           }
                     *         ]
                     *       },
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "crew": {
                     *         "experience": "mixed",
                     *         "people": 5,
                     *         "startOn": "2026-04-18"
                     *       },
                     *       "id": "019a1c3e-0000-7000-8000-000000000004",
                     *       "name": "Chicory plot: gable canopy",
                     *       "ownerMemberId": null,
                     *       "shared": false,
                     *       "siteId": "019a1c3e-0000-7000-8000-000000000002",
                     *       "structureId": "019a1c3e-0000-7000-8000-000000000003",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "variantLabel": null,
                     *       "variantOf": null,
                     *       "version": 4,
                     *       "wishes": {
                     *         "crops": [
                     *           "spinach",
                     *           "kale",
                     *           "lettuce",
                     *           "tomato"
                     *         ],
                     *         "nightTargetC": 2,
                     *         "purpose": "longerSeason",
                     *         "ventsOpenedBy": "someoneAtNine"
                     *       }
                     *     }
                     */
                    "application/json": components["schemas"]["Build"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    updateBuild: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "budget": {
                 *         "capMinor": 150000
                 *       },
                 *       "wishes": {
                 *         "nightTargetC": 2
                 *       }
                 *     }
                 */
                "application/merge-patch+json": components["schemas"]["BuildPatch"];
            };
        };
        responses: {
            /** @description Change a build */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "archivedAt": null,
                     *       "asTyped": {},
                     *       "budget": {
                     *         "capMinor": 150000,
                     *         "consumablesFrac": null,
                     *         "consumablesReason": null,
                     *         "contingencyFrac": null,
                     *         "contingencyReason": null,
                     *         "currency": "USD",
                     *         "exchangeRates": [],
                     *         "inKind": [
                     *           {
                     *             "label": "Two loaned step ladders and a drill",
                     *             "value": {
                     *               "currency": "USD",
                     *               "minor": 6000
                     *             }
                     *           }
                     *         ]
                     *       },
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "crew": {
                     *         "experience": "mixed",
                     *         "people": 5,
                     *         "startOn": "2026-04-18"
                     *       },
                     *       "id": "019a1c3e-0000-7000-8000-000000000004",
                     *       "name": "Chicory plot: gable canopy",
                     *       "ownerMemberId": null,
                     *       "shared": false,
                     *       "siteId": "019a1c3e-0000-7000-8000-000000000002",
                     *       "structureId": "019a1c3e-0000-7000-8000-000000000003",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "variantLabel": null,
                     *       "variantOf": null,
                     *       "version": 2,
                     *       "wishes": {
                     *         "crops": [
                     *           "spinach",
                     *           "kale",
                     *           "lettuce",
                     *           "tomato"
                     *         ],
                     *         "nightTargetC": 2,
                     *         "purpose": "longerSeason",
                     *         "ventsOpenedBy": "someoneAtNine"
                     *       }
                     *     }
                     */
                    "application/json": components["schemas"]["Build"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    archiveBuild: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Put a build away without losing it */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "archivedAt": "2026-03-15T09:00:00.000Z",
                     *       "asTyped": {},
                     *       "budget": {
                     *         "capMinor": 150000,
                     *         "consumablesFrac": null,
                     *         "consumablesReason": null,
                     *         "contingencyFrac": null,
                     *         "contingencyReason": null,
                     *         "currency": "USD",
                     *         "exchangeRates": [],
                     *         "inKind": [
                     *           {
                     *             "label": "Two loaned step ladders and a drill",
                     *             "value": {
                     *               "currency": "USD",
                     *               "minor": 6000
                     *             }
                     *           }
                     *         ]
                     *       },
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "crew": {
                     *         "experience": "mixed",
                     *         "people": 5,
                     *         "startOn": "2026-04-18"
                     *       },
                     *       "id": "019a1c3e-0000-7000-8000-000000000004",
                     *       "name": "Chicory plot: gable canopy",
                     *       "ownerMemberId": null,
                     *       "shared": false,
                     *       "siteId": "019a1c3e-0000-7000-8000-000000000002",
                     *       "structureId": "019a1c3e-0000-7000-8000-000000000003",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "variantLabel": null,
                     *       "variantOf": null,
                     *       "version": 3,
                     *       "wishes": {
                     *         "crops": [
                     *           "spinach",
                     *           "kale",
                     *           "lettuce",
                     *           "tomato"
                     *         ],
                     *         "nightTargetC": 2,
                     *         "purpose": "longerSeason",
                     *         "ventsOpenedBy": "someoneAtNine"
                     *       }
                     *     }
                     */
                    "application/json": components["schemas"]["Build"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getBuildHazards: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show the warnings of the newest plan of a build */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BuildHazards"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getBuildHistory: {
        parameters: {
            query: {
                /**
                 * @description The earlier revision of the plan
                 * @example 1
                 */
                fromRevision: components["parameters"]["fromRevisionQuery"];
                /**
                 * @description The later revision
                 * @example 1
                 */
                toRevision: components["parameters"]["toRevisionQuery"];
            };
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show who changed what between two revisions of the plan of a build */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "changes": [],
                     *       "entries": [],
                     *       "from": {
                     *         "by": "coordinator",
                     *         "createdAt": "2026-03-15T09:00:00.000Z",
                     *         "planId": "019a1c3e-0000-7000-8000-000000000005",
                     *         "revision": 1
                     *       },
                     *       "more": false,
                     *       "to": {
                     *         "by": "coordinator",
                     *         "createdAt": "2026-03-15T09:00:00.000Z",
                     *         "planId": "019a1c3e-0000-7000-8000-000000000005",
                     *         "revision": 1
                     *       }
                     *     }
                     */
                    "application/json": components["schemas"]["BuildHistory"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getBuildNeeds: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show what a build needs, without what it costs */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "buildId": "019a1c3e-0000-7000-8000-000000000004",
                     *       "needs": [
                     *         {
                     *           "group": "frame",
                     *           "lineId": "frame",
                     *           "mark": null,
                     *           "material": "frame.tubeSet",
                     *           "need": 1,
                     *           "tags": [],
                     *           "toBuy": 1,
                     *           "unit": "each",
                     *           "wanted": 1
                     *         },
                     *         {
                     *           "group": "film",
                     *           "lineId": "film-main",
                     *           "mark": "F1",
                     *           "material": "film.greenhouse",
                     *           "need": 44.9285416756382,
                     *           "tags": [],
                     *           "toBuy": 59.826144000000006,
                     *           "unit": "m2",
                     *           "wanted": 59.826144000000006
                     *         },
                     *         {
                     *           "group": "film",
                     *           "lineId": "film-ends",
                     *           "mark": "F2",
                     *           "material": "film.greenhouse",
                     *           "need": 14.3999712,
                     *           "tags": [],
                     *           "toBuy": 31.212007680000006,
                     *           "unit": "m2",
                     *           "wanted": 31.212007680000006
                     *         },
                     *         {
                     *           "group": "film",
                     *           "lineId": "film-inner",
                     *           "mark": null,
                     *           "material": "film.innerCover",
                     *           "need": 9,
                     *           "tags": [],
                     *           "toBuy": 9.9,
                     *           "unit": "m2",
                     *           "wanted": 9.9
                     *         },
                     *         {
                     *           "group": "timber",
                     *           "lineId": "timber-sill",
                     *           "mark": "P1",
                     *           "material": "sill.89x140",
                     *           "need": 17.423000000000002,
                     *           "tags": [],
                     *           "toBuy": 17.423000000000002,
                     *           "unit": "m",
                     *           "wanted": 17.423000000000002
                     *         },
                     *         {
                     *           "group": "timber",
                     *           "lineId": "timber-board",
                     *           "mark": "L1",
                     *           "material": "board.38x89",
                     *           "need": 37.087,
                     *           "tags": [],
                     *           "toBuy": 37.087,
                     *           "unit": "m",
                     *           "wanted": 37.087
                     *         },
                     *         {
                     *           "group": "timber",
                     *           "lineId": "timber-batten",
                     *           "mark": "C1",
                     *           "material": "batten.19x38",
                     *           "need": 49.38,
                     *           "tags": [],
                     *           "toBuy": 56.787,
                     *           "unit": "m",
                     *           "wanted": 56.787
                     *         },
                     *         {
                     *           "group": "openings",
                     *           "lineId": "opening-D1",
                     *           "mark": "D1",
                     *           "material": "door",
                     *           "need": 1,
                     *           "tags": [
                     *             "RB-003"
                     *           ],
                     *           "toBuy": 0,
                     *           "unit": "each",
                     *           "wanted": 1
                     *         },
                     *         {
                     *           "group": "openings",
                     *           "lineId": "door-hardware",
                     *           "mark": null,
                     *           "material": "door.hardware",
                     *           "need": 1,
                     *           "tags": [],
                     *           "toBuy": 1,
                     *           "unit": "set",
                     *           "wanted": 1
                     *         },
                     *         {
                     *           "group": "openings",
                     *           "lineId": "door-seal",
                     *           "mark": null,
                     *           "material": "seal.strip",
                     *           "need": 5.890000000000001,
                     *           "tags": [],
                     *           "toBuy": 6.184500000000001,
                     *           "unit": "m",
                     *           "wanted": 6.184500000000001
                     *         },
                     *         {
                     *           "group": "water",
                     *           "lineId": "barrels",
                     *           "mark": null,
                     *           "material": "barrel.water",
                     *           "need": 3,
                     *           "tags": [],
                     *           "toBuy": 3,
                     *           "unit": "each",
                     *           "wanted": 3
                     *         },
                     *         {
                     *           "group": "anchors",
                     *           "lineId": "anchors",
                     *           "mark": "G1",
                     *           "material": "anchor.auger",
                     *           "need": 16,
                     *           "tags": [],
                     *           "toBuy": 17,
                     *           "unit": "each",
                     *           "wanted": 17
                     *         },
                     *         {
                     *           "group": "fixings",
                     *           "lineId": "screw-batten",
                     *           "mark": null,
                     *           "material": "screw.batten",
                     *           "need": 315,
                     *           "tags": [],
                     *           "toBuy": 363,
                     *           "unit": "each",
                     *           "wanted": 363
                     *         },
                     *         {
                     *           "group": "fixings",
                     *           "lineId": "screw-tube",
                     *           "mark": null,
                     *           "material": "screw.tube",
                     *           "need": 100,
                     *           "tags": [],
                     *           "toBuy": 115,
                     *           "unit": "each",
                     *           "wanted": 115
                     *         },
                     *         {
                     *           "group": "fixings",
                     *           "lineId": "screw-framing",
                     *           "mark": null,
                     *           "material": "screw.framing",
                     *           "need": 120,
                     *           "tags": [],
                     *           "toBuy": 132,
                     *           "unit": "each",
                     *           "wanted": 132
                     *         },
                     *         {
                     *           "group": "fixings",
                     *           "lineId": "straps",
                     *           "mark": null,
                     *           "material": "strap.tube",
                     *           "need": 16,
                     *           "tags": [],
                     *           "toBuy": 18,
                     *           "unit": "each",
                     *           "wanted": 18
                     *         },
                     *         {
                     *           "group": "fixings",
                     *           "lineId": "brace-cable",
                     *           "mark": null,
                     *           "material": "brace.cable",
                     *           "need": 11.351953093631069,
                     *           "tags": [],
                     *           "toBuy": 12.487148402994176,
                     *           "unit": "m",
                     *           "wanted": 12.487148402994176
                     *         },
                     *         {
                     *           "group": "fixings",
                     *           "lineId": "contact-tape",
                     *           "mark": null,
                     *           "material": "tape.contact",
                     *           "need": 0.986353519541936,
                     *           "tags": [],
                     *           "toBuy": 1,
                     *           "unit": "each",
                     *           "wanted": 1
                     *         },
                     *         {
                     *           "group": "fixings",
                     *           "lineId": "paint",
                     *           "mark": null,
                     *           "material": "paint.white",
                     *           "need": 0.3420406569818259,
                     *           "tags": [],
                     *           "toBuy": 0.3420406569818259,
                     *           "unit": "L",
                     *           "wanted": 0.3420406569818259
                     *         },
                     *         {
                     *           "group": "ground",
                     *           "lineId": "mesh",
                     *           "mark": null,
                     *           "material": "mesh.rodent",
                     *           "need": 18.288,
                     *           "tags": [],
                     *           "toBuy": 19.2024,
                     *           "unit": "m",
                     *           "wanted": 19.2024
                     *         },
                     *         {
                     *           "group": "sundries",
                     *           "lineId": "ropes",
                     *           "mark": null,
                     *           "material": "rope",
                     *           "need": 2,
                     *           "tags": [],
                     *           "toBuy": 2,
                     *           "unit": "each",
                     *           "wanted": 2
                     *         },
                     *         {
                     *           "group": "sundries",
                     *           "lineId": "thermometer",
                     *           "mark": null,
                     *           "material": "thermometer.minMax",
                     *           "need": 1,
                     *           "tags": [],
                     *           "toBuy": 1,
                     *           "unit": "each",
                     *           "wanted": 1
                     *         }
                     *       ],
                     *       "planId": "019a1c3e-0000-7000-8000-000000000005",
                     *       "revision": 1
                     *     }
                     */
                    "application/json": components["schemas"]["BuildNeeds"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listBuildPhotos: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List the photos of a build */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "byteCount": 48000,
                     *           "caption": null,
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "heightPixelCount": 48,
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "links": {
                     *             "file": "/v1/builds/019a1c3e-0000-7000-8000-000000000004/photos/019a1c3e-0000-7000-8000-000000000100/file",
                     *             "self": "/v1/builds/019a1c3e-0000-7000-8000-000000000004/photos/019a1c3e-0000-7000-8000-000000000100"
                     *           },
                     *           "mediaType": "image/jpeg",
                     *           "releaseOnFile": false,
                     *           "showsPeople": false,
                     *           "widthPixelCount": 64
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["Photo"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createBuildPhoto: {
        parameters: {
            query: {
                /** @description What the photo shows */
                caption?: components["parameters"]["captionQuery"];
                /** @description Whether everybody shown has agreed to it being seen in the garden, and that is kept on file */
                releaseOnFile?: components["parameters"]["releaseOnFileQuery"];
                /**
                 * @description Whether people can be made out on it
                 * @example false
                 */
                showsPeople: components["parameters"]["showsPeopleQuery"];
            };
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "image/jpeg": Blob;
                "image/png": Blob;
                "image/webp": Blob;
            };
        };
        responses: {
            /** @description Add a photo of a build: the picture itself is the body */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Photo"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getBuildPhoto: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
                photoId: components["parameters"]["photoIdPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show what is known of one photo */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "byteCount": 48000,
                     *       "caption": null,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "heightPixelCount": 48,
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "links": {
                     *         "file": "/v1/builds/019a1c3e-0000-7000-8000-000000000004/photos/019a1c3e-0000-7000-8000-000000000100/file",
                     *         "self": "/v1/builds/019a1c3e-0000-7000-8000-000000000004/photos/019a1c3e-0000-7000-8000-000000000100"
                     *       },
                     *       "mediaType": "image/jpeg",
                     *       "releaseOnFile": false,
                     *       "showsPeople": false,
                     *       "widthPixelCount": 64
                     *     }
                     */
                    "application/json": components["schemas"]["Photo"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    removeBuildPhoto: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
                photoId: components["parameters"]["photoIdPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done */
            204: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getBuildPhotoFile: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
                photoId: components["parameters"]["photoIdPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Fetch the picture */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "image/jpeg": Blob;
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    restoreBuild: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Bring an archived build back */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "archivedAt": null,
                     *       "asTyped": {},
                     *       "budget": {
                     *         "capMinor": 150000,
                     *         "consumablesFrac": null,
                     *         "consumablesReason": null,
                     *         "contingencyFrac": null,
                     *         "contingencyReason": null,
                     *         "currency": "USD",
                     *         "exchangeRates": [],
                     *         "inKind": [
                     *           {
                     *             "label": "Two loaned step ladders and a drill",
                     *             "value": {
                     *               "currency": "USD",
                     *               "minor": 6000
                     *             }
                     *           }
                     *         ]
                     *       },
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "crew": {
                     *         "experience": "mixed",
                     *         "people": 5,
                     *         "startOn": "2026-04-18"
                     *       },
                     *       "id": "019a1c3e-0000-7000-8000-000000000004",
                     *       "name": "Chicory plot: gable canopy",
                     *       "ownerMemberId": null,
                     *       "shared": false,
                     *       "siteId": "019a1c3e-0000-7000-8000-000000000002",
                     *       "structureId": "019a1c3e-0000-7000-8000-000000000003",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "variantLabel": null,
                     *       "variantOf": null,
                     *       "version": 4,
                     *       "wishes": {
                     *         "crops": [
                     *           "spinach",
                     *           "kale",
                     *           "lettuce",
                     *           "tomato"
                     *         ],
                     *         "nightTargetC": 2,
                     *         "purpose": "longerSeason",
                     *         "ventsOpenedBy": "someoneAtNine"
                     *       }
                     *     }
                     */
                    "application/json": components["schemas"]["Build"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getBuildTotals: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show what a build costs, without what it is */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "buildId": "019a1c3e-0000-7000-8000-000000000004",
                     *       "capMinor": 130000,
                     *       "cashMinor": 124630,
                     *       "currency": "USD",
                     *       "inKindMinor": 6000,
                     *       "overCapMinor": 0,
                     *       "planId": "019a1c3e-0000-7000-8000-000000000005",
                     *       "reclaimedMinor": 9000,
                     *       "revision": 1,
                     *       "unpricedCount": 19
                     *     }
                     */
                    "application/json": components["schemas"]["BuildTotals"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listClimateStations: {
        parameters: {
            query: {
                /**
                 * @description Height of the place, to tell how much higher or lower each station lies
                 * @example 1640
                 */
                elevationM?: components["parameters"]["elevationMQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery2"];
                /**
                 * @description Latitude and longitude in degrees, north and east positive
                 * @example 39.93,-104.58
                 */
                near: components["parameters"]["nearQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Find the stations nearest to a place */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "country": "United States of America",
                     *           "distanceM": 10179,
                     *           "elevationM": 1656,
                     *           "heightDifferenceM": null,
                     *           "latitudeDeg": 39.87,
                     *           "longitudeDeg": -104.67,
                     *           "period": "2003-2021 means",
                     *           "stationId": "72565",
                     *           "stationName": "Denver Airp./CO"
                     *         },
                     *         {
                     *           "country": "United States of America",
                     *           "distanceM": 136869,
                     *           "elevationM": 1872,
                     *           "heightDifferenceM": null,
                     *           "latitudeDeg": 41.15,
                     *           "longitudeDeg": -104.81,
                     *           "period": "2003-2021 means",
                     *           "stationId": "72564",
                     *           "stationName": "Cheyenne/WY"
                     *         }
                     *       ]
                     *     }
                     */
                    "application/json": components["schemas"]["NearStations"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getClimateStation: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show one station's climate */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "annualExtremeMinC": -24.7,
                     *       "annualExtremeMinYearsCount": 16,
                     *       "country": "United States of America",
                     *       "credit": "Datenbasis: Deutscher Wetterdienst, Einzelwerte gemittelt",
                     *       "kind": "means",
                     *       "months": [
                     *         {
                     *           "absoluteMinMeanC": -20.4,
                     *           "precipitationMm": 10,
                     *           "sunshineH": null,
                     *           "tMaxC": 7.2,
                     *           "tMinC": -7.2,
                     *           "vapourPressurePa": 320
                     *         },
                     *         {
                     *           "absoluteMinMeanC": -20.4,
                     *           "precipitationMm": 12,
                     *           "sunshineH": null,
                     *           "tMaxC": 7,
                     *           "tMinC": -7.5,
                     *           "vapourPressurePa": 320
                     *         },
                     *         {
                     *           "absoluteMinMeanC": -12,
                     *           "precipitationMm": 23,
                     *           "sunshineH": null,
                     *           "tMaxC": 13.4,
                     *           "tMinC": -2.1,
                     *           "vapourPressurePa": 380
                     *         },
                     *         {
                     *           "absoluteMinMeanC": -6.8,
                     *           "precipitationMm": 42,
                     *           "sunshineH": null,
                     *           "tMaxC": 16.5,
                     *           "tMinC": 1,
                     *           "vapourPressurePa": 480
                     *         },
                     *         {
                     *           "absoluteMinMeanC": -1.2,
                     *           "precipitationMm": 56,
                     *           "sunshineH": null,
                     *           "tMaxC": 21.4,
                     *           "tMinC": 6.3,
                     *           "vapourPressurePa": 740
                     *         },
                     *         {
                     *           "absoluteMinMeanC": 5.8,
                     *           "precipitationMm": 41,
                     *           "sunshineH": null,
                     *           "tMaxC": 29.2,
                     *           "tMinC": 12.1,
                     *           "vapourPressurePa": 920
                     *         },
                     *         {
                     *           "absoluteMinMeanC": 11.2,
                     *           "precipitationMm": 41,
                     *           "sunshineH": null,
                     *           "tMaxC": 32.4,
                     *           "tMinC": 15.8,
                     *           "vapourPressurePa": 1090
                     *         },
                     *         {
                     *           "absoluteMinMeanC": 9,
                     *           "precipitationMm": 38,
                     *           "sunshineH": null,
                     *           "tMaxC": 31,
                     *           "tMinC": 14.6,
                     *           "vapourPressurePa": 1000
                     *         },
                     *         {
                     *           "absoluteMinMeanC": 3.5,
                     *           "precipitationMm": 30,
                     *           "sunshineH": null,
                     *           "tMaxC": 26.8,
                     *           "tMinC": 10.2,
                     *           "vapourPressurePa": 760
                     *         },
                     *         {
                     *           "absoluteMinMeanC": -6.3,
                     *           "precipitationMm": 28,
                     *           "sunshineH": null,
                     *           "tMaxC": 18.6,
                     *           "tMinC": 2.9,
                     *           "vapourPressurePa": 540
                     *         },
                     *         {
                     *           "absoluteMinMeanC": -14.3,
                     *           "precipitationMm": 13,
                     *           "sunshineH": null,
                     *           "tMaxC": 12.5,
                     *           "tMinC": -3,
                     *           "vapourPressurePa": 380
                     *         },
                     *         {
                     *           "absoluteMinMeanC": -20.6,
                     *           "precipitationMm": 11,
                     *           "sunshineH": null,
                     *           "tMaxC": 6.4,
                     *           "tMinC": -8,
                     *           "vapourPressurePa": 310
                     *         }
                     *       ],
                     *       "period": "2003-2021 means",
                     *       "stationElevationM": 1656,
                     *       "stationId": "72565",
                     *       "stationLatitudeDeg": 39.87,
                     *       "stationLongitudeDeg": -104.67,
                     *       "stationName": "Denver Airp./CO"
                     *     }
                     */
                    "application/json": components["schemas"]["Station"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listDocuments: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
                /** @description Only documents of this plan */
                planId?: components["parameters"]["planIdQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List documents, oldest first */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "engineVersion": "fake-1",
                     *           "finishedAt": "2026-03-15T09:00:00.000Z",
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "kind": "planBook",
                     *           "language": "en",
                     *           "links": {
                     *             "file": "/v1/documents/019a1c3e-0000-7000-8000-000000000100/file",
                     *             "plan": "/v1/plans/019a1c3e-0000-7000-8000-000000000005",
                     *             "self": "/v1/documents/019a1c3e-0000-7000-8000-000000000100"
                     *           },
                     *           "pages": 3,
                     *           "paper": "letter",
                     *           "planId": "019a1c3e-0000-7000-8000-000000000005",
                     *           "problem": null,
                     *           "sha256": "c0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ff",
                     *           "startedAt": "2026-03-15T09:00:00.000Z",
                     *           "state": "ready",
                     *           "units": "us"
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["PlanDocument"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createDocument: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /**
                 * @description wait=10 holds the answer back until the job is done, at most so many seconds
                 * @example wait=10
                 */
                Prefer?: components["parameters"]["Prefer"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "kind": "planBook",
                 *       "language": "en",
                 *       "paper": "letter",
                 *       "planId": "019a1c3e-0000-7000-8000-000000000005",
                 *       "units": "us"
                 *     }
                 */
                "application/json": components["schemas"]["PlanDocumentRequest"];
            };
        };
        responses: {
            /** @description Have a finished plan set for printing */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Link: components["headers"]["Link2"];
                    Location: components["headers"]["Location"];
                    "Preference-Applied": components["headers"]["PreferenceApplied"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    "Retry-After": components["headers"]["RetryAfter2"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "engineVersion": "fake-1",
                     *       "finishedAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "kind": "planBook",
                     *       "language": "en",
                     *       "links": {
                     *         "file": "/v1/documents/019a1c3e-0000-7000-8000-000000000100/file",
                     *         "plan": "/v1/plans/019a1c3e-0000-7000-8000-000000000005",
                     *         "self": "/v1/documents/019a1c3e-0000-7000-8000-000000000100"
                     *       },
                     *       "pages": 3,
                     *       "paper": "letter",
                     *       "planId": "019a1c3e-0000-7000-8000-000000000005",
                     *       "problem": null,
                     *       "sha256": "c0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ff",
                     *       "startedAt": "2026-03-15T09:00:00.000Z",
                     *       "state": "ready",
                     *       "units": "us"
                     *     }
                     */
                    "application/json": components["schemas"]["PlanDocument"];
                };
            };
            /** @description Have a finished plan set for printing */
            202: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Link: components["headers"]["Link2"];
                    Location: components["headers"]["Location"];
                    "Preference-Applied": components["headers"]["PreferenceApplied"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    "Retry-After": components["headers"]["RetryAfter2"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanDocument"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getDocument: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show the state of one document */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "engineVersion": "fake-1",
                     *       "finishedAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "kind": "planBook",
                     *       "language": "en",
                     *       "links": {
                     *         "file": "/v1/documents/019a1c3e-0000-7000-8000-000000000100/file",
                     *         "plan": "/v1/plans/019a1c3e-0000-7000-8000-000000000005",
                     *         "self": "/v1/documents/019a1c3e-0000-7000-8000-000000000100"
                     *       },
                     *       "pages": 3,
                     *       "paper": "letter",
                     *       "planId": "019a1c3e-0000-7000-8000-000000000005",
                     *       "problem": null,
                     *       "sha256": "c0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ff",
                     *       "startedAt": "2026-03-15T09:00:00.000Z",
                     *       "state": "ready",
                     *       "units": "us"
                     *     }
                     */
                    "application/json": components["schemas"]["PlanDocument"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getDocumentFile: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Fetch the PDF */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": Blob;
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listExchangeRates: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List the rates of the garden */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "from": "EUR",
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "rate": 1.09,
                     *           "readOn": "2026-03-02",
                     *           "to": "USD"
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["ExchangeRate"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createExchangeRate: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "from": "EUR",
                 *       "rate": 1.09,
                 *       "readOn": "2026-03-02",
                 *       "to": "USD"
                 *     }
                 */
                "application/json": components["schemas"]["ExchangeRateRequest"];
            };
        };
        responses: {
            /** @description Note a rate between two currencies */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "from": "EUR",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "rate": 1.09,
                     *       "readOn": "2026-03-02",
                     *       "to": "USD"
                     *     }
                     */
                    "application/json": components["schemas"]["ExchangeRate"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getExchangeRate: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show one rate */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "from": "EUR",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "rate": 1.09,
                     *       "readOn": "2026-03-02",
                     *       "to": "USD"
                     *     }
                     */
                    "application/json": components["schemas"]["ExchangeRate"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listGardenExports: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List exports, oldest first */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "byteCount": 48000,
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "expiresAt": "2026-03-15T09:00:00.000Z",
                     *           "finishedAt": "2026-03-15T09:00:00.000Z",
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "links": {
                     *             "file": "/v1/exports/019a1c3e-0000-7000-8000-000000000100/file",
                     *             "self": "/v1/exports/019a1c3e-0000-7000-8000-000000000100"
                     *           },
                     *           "problem": null,
                     *           "sha256": "c0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ff",
                     *           "startedAt": "2026-03-15T09:00:00.000Z",
                     *           "state": "ready",
                     *           "withFiles": false
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["GardenExport"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    exportGarden: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "withFiles": false
                 *     }
                 */
                "application/json": components["schemas"]["GardenExportRequest"];
            };
        };
        responses: {
            /** @description Have the whole garden packed for taking elsewhere */
            202: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "byteCount": null,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "expiresAt": null,
                     *       "finishedAt": null,
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "links": {
                     *         "file": null,
                     *         "self": "/v1/exports/019a1c3e-0000-7000-8000-000000000100"
                     *       },
                     *       "problem": null,
                     *       "sha256": null,
                     *       "startedAt": null,
                     *       "state": "queued",
                     *       "withFiles": false
                     *     }
                     */
                    "application/json": components["schemas"]["GardenExport"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getGardenExport: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show the state of one export */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "byteCount": 48000,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "expiresAt": "2026-03-15T09:00:00.000Z",
                     *       "finishedAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "links": {
                     *         "file": "/v1/exports/019a1c3e-0000-7000-8000-000000000100/file",
                     *         "self": "/v1/exports/019a1c3e-0000-7000-8000-000000000100"
                     *       },
                     *       "problem": null,
                     *       "sha256": "c0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ffeec0ff",
                     *       "startedAt": "2026-03-15T09:00:00.000Z",
                     *       "state": "ready",
                     *       "withFiles": false
                     *     }
                     */
                    "application/json": components["schemas"]["GardenExport"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getGardenExportFile: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Fetch the archive, within a day of its making */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/zip": Blob;
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createGarden: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "currency": "USD",
                 *       "invented": true,
                 *       "keyName": "coordinator",
                 *       "locale": "en-US",
                 *       "name": "Rabbitbrush Bend Community Garden",
                 *       "unitSystem": "us"
                 *     }
                 */
                "application/json": components["schemas"]["GardenRequest"];
            };
        };
        responses: {
            /** @description Make a garden: the operator with a first key, which is shown this once; a signed-in person as its coordinator */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "garden": {
                     *         "archivedAt": null,
                     *         "coordinatorLimitMinor": null,
                     *         "createdAt": "2026-03-15T09:00:00.000Z",
                     *         "currency": "USD",
                     *         "id": "019a1c3e-0000-7000-8000-000000000001",
                     *         "invented": true,
                     *         "locale": "en-US",
                     *         "name": "Rabbitbrush Bend Community Garden",
                     *         "treasurerLimitMinor": null,
                     *         "unitSystem": "us",
                     *         "updatedAt": "2026-03-15T09:00:00.000Z",
                     *         "version": 1
                     *       },
                     *       "key": {
                     *         "createdAt": "2026-03-15T09:00:00.000Z",
                     *         "expiresAt": null,
                     *         "id": "019a1c3e-0000-7000-8000-000000000100",
                     *         "key": "lw_shown-once-and-kept-by-you",
                     *         "lastUsedAt": null,
                     *         "name": "coordinator",
                     *         "prefix": "lw_example1",
                     *         "revokedAt": null,
                     *         "scopes": [
                     *           "garden:read",
                     *           "garden:admin",
                     *           "members:read",
                     *           "members:write",
                     *           "sites:read",
                     *           "sites:write",
                     *           "sites:exact",
                     *           "structures:read",
                     *           "structures:write",
                     *           "stock:read",
                     *           "stock:write",
                     *           "prices:read",
                     *           "prices:write",
                     *           "builds:read",
                     *           "builds:write",
                     *           "plans:read",
                     *           "plans:write",
                     *           "plans:review",
                     *           "spending:read",
                     *           "spending:write",
                     *           "documents:read",
                     *           "documents:write",
                     *           "webhooks:read",
                     *           "webhooks:write",
                     *           "exports:write",
                     *           "imports:write"
                     *         ]
                     *       }
                     *     }
                     */
                    "application/json": components["schemas"]["NewGarden"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getGarden: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show the garden of this key */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "archivedAt": null,
                     *       "coordinatorLimitMinor": null,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "currency": "USD",
                     *       "id": "019a1c3e-0000-7000-8000-000000000001",
                     *       "invented": true,
                     *       "locale": "en-US",
                     *       "name": "Rabbitbrush Bend Garden",
                     *       "treasurerLimitMinor": null,
                     *       "unitSystem": "metric",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 2
                     *     }
                     */
                    "application/json": components["schemas"]["Garden"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    updateGarden: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "name": "Rabbitbrush Bend Garden",
                 *       "unitSystem": "metric"
                 *     }
                 */
                "application/merge-patch+json": components["schemas"]["GardenPatch"];
            };
        };
        responses: {
            /** @description Change the garden of this key */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "archivedAt": null,
                     *       "coordinatorLimitMinor": null,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "currency": "USD",
                     *       "id": "019a1c3e-0000-7000-8000-000000000001",
                     *       "invented": true,
                     *       "locale": "en-US",
                     *       "name": "Rabbitbrush Bend Garden",
                     *       "treasurerLimitMinor": null,
                     *       "unitSystem": "metric",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 2
                     *     }
                     */
                    "application/json": components["schemas"]["Garden"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listHistory: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
                /** @description Only what happened to this thing */
                objectId?: components["parameters"]["objectIdQuery"];
                /** @description Only what happened to things of this kind */
                objectType?: components["parameters"]["objectTypeQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List who changed what in the garden, oldest first */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "action": "garden.create",
                     *           "at": "2026-03-15T09:00:00.000Z",
                     *           "by": null,
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "keyId": null,
                     *           "memberId": null,
                     *           "objectId": "019a1c3e-0000-7000-8000-000000000001",
                     *           "objectType": "garden"
                     *         },
                     *         {
                     *           "action": "site.create",
                     *           "at": "2026-03-15T09:00:00.000Z",
                     *           "by": "coordinator",
                     *           "id": "019a1c3e-0000-7000-8000-000000000101",
                     *           "keyId": "019a1c3e-0000-7000-8000-000000000102",
                     *           "memberId": null,
                     *           "objectId": "019a1c3e-0000-7000-8000-000000000002",
                     *           "objectType": "site"
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["HistoryEntry"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    importGarden: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/zip": Blob;
            };
        };
        responses: {
            /** @description Take a packed garden into this one: the archive itself is the body */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ImportReport"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listInvitations: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List the invitations of the garden */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "acceptedMemberId": "019a1c3e-0000-7000-8000-000000000102",
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "email": null,
                     *           "expiresAt": "2026-03-15T09:00:00.000Z",
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "invitedById": "019a1c3e-0000-7000-8000-000000000101",
                     *           "roles": [
                     *             "member",
                     *             "storekeeper"
                     *           ],
                     *           "state": "accepted"
                     *         },
                     *         {
                     *           "acceptedMemberId": null,
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "email": "sorrel@example.org",
                     *           "expiresAt": "2026-03-15T09:00:00.000Z",
                     *           "id": "019a1c3e-0000-7000-8000-000000000103",
                     *           "invitedById": "019a1c3e-0000-7000-8000-000000000101",
                     *           "roles": [
                     *             "member",
                     *             "storekeeper"
                     *           ],
                     *           "state": "open"
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["Invitation"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createInvitation: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "email": "sorrel@example.org",
                 *       "roles": [
                 *         "member",
                 *         "storekeeper"
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["InvitationRequest"];
            };
        };
        responses: {
            /** @description Invite somebody by mail; open for seven days */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "acceptedMemberId": null,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "email": "sorrel@example.org",
                     *       "expiresAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "invitedById": "019a1c3e-0000-7000-8000-000000000101",
                     *       "roles": [
                     *         "member",
                     *         "storekeeper"
                     *       ],
                     *       "state": "open"
                     *     }
                     */
                    "application/json": components["schemas"]["Invitation"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getInvitation: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show one invitation */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "acceptedMemberId": null,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "email": "sorrel@example.org",
                     *       "expiresAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "invitedById": "019a1c3e-0000-7000-8000-000000000101",
                     *       "roles": [
                     *         "member",
                     *         "storekeeper"
                     *       ],
                     *       "state": "open"
                     *     }
                     */
                    "application/json": components["schemas"]["Invitation"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    revokeInvitation: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done */
            204: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    redeemInvitation: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "code": "q3Xb0nYl1o7V5c2Jm8Rk4sTf6uWzA9eDgHiKpLxNvBw"
                 *     }
                 */
                "application/json": components["schemas"]["InvitationRedemption"];
            };
        };
        responses: {
            /** @description Join the garden that you were invited to */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "gardenId": "019a1c3e-0000-7000-8000-000000000001",
                     *       "memberId": "019a1c3e-0000-7000-8000-000000000100",
                     *       "roles": [
                     *         "member",
                     *         "storekeeper"
                     *       ]
                     *     }
                     */
                    "application/json": components["schemas"]["JoinedGarden"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listJobs: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
                /** @description Only jobs in this state */
                state?: components["parameters"]["stateQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List jobs, oldest first */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "attemptCount": 1,
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "finishedAt": "2026-03-15T09:00:00.000Z",
                     *           "id": "019a1c3e-0000-7000-8000-000000000005",
                     *           "kind": "compute-plan",
                     *           "links": {
                     *             "events": "/v1/jobs/019a1c3e-0000-7000-8000-000000000005/events",
                     *             "result": "/v1/plans/019a1c3e-0000-7000-8000-000000000005/result",
                     *             "self": "/v1/jobs/019a1c3e-0000-7000-8000-000000000005",
                     *             "subject": "/v1/plans/019a1c3e-0000-7000-8000-000000000005"
                     *           },
                     *           "problem": null,
                     *           "progress": 100,
                     *           "stage": "done",
                     *           "startedAt": "2026-03-15T09:00:00.000Z",
                     *           "state": "succeeded",
                     *           "subject": {
                     *             "id": "019a1c3e-0000-7000-8000-000000000005",
                     *             "type": "plan"
                     *           }
                     *         },
                     *         {
                     *           "attemptCount": 1,
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "finishedAt": "2026-03-15T09:00:00.000Z",
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "kind": "render-document",
                     *           "links": {
                     *             "events": "/v1/jobs/019a1c3e-0000-7000-8000-000000000100/events",
                     *             "result": "/v1/documents/019a1c3e-0000-7000-8000-000000000100/file",
                     *             "self": "/v1/jobs/019a1c3e-0000-7000-8000-000000000100",
                     *             "subject": "/v1/documents/019a1c3e-0000-7000-8000-000000000100"
                     *           },
                     *           "problem": null,
                     *           "progress": 100,
                     *           "stage": "done",
                     *           "startedAt": "2026-03-15T09:00:00.000Z",
                     *           "state": "succeeded",
                     *           "subject": {
                     *             "id": "019a1c3e-0000-7000-8000-000000000100",
                     *             "type": "document"
                     *           }
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["Job"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getJob: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show how far a job is */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "attemptCount": 1,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "finishedAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000005",
                     *       "kind": "compute-plan",
                     *       "links": {
                     *         "events": "/v1/jobs/019a1c3e-0000-7000-8000-000000000005/events",
                     *         "result": "/v1/plans/019a1c3e-0000-7000-8000-000000000005/result",
                     *         "self": "/v1/jobs/019a1c3e-0000-7000-8000-000000000005",
                     *         "subject": "/v1/plans/019a1c3e-0000-7000-8000-000000000005"
                     *       },
                     *       "problem": null,
                     *       "progress": 100,
                     *       "stage": "done",
                     *       "startedAt": "2026-03-15T09:00:00.000Z",
                     *       "state": "succeeded",
                     *       "subject": {
                     *         "id": "019a1c3e-0000-7000-8000-000000000005",
                     *         "type": "plan"
                     *       }
                     *     }
                     */
                    "application/json": components["schemas"]["Job"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    cancelJob: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Call a job off; once it has ended this changes nothing */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "attemptCount": 1,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "finishedAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000005",
                     *       "kind": "compute-plan",
                     *       "links": {
                     *         "events": "/v1/jobs/019a1c3e-0000-7000-8000-000000000005/events",
                     *         "result": "/v1/plans/019a1c3e-0000-7000-8000-000000000005/result",
                     *         "self": "/v1/jobs/019a1c3e-0000-7000-8000-000000000005",
                     *         "subject": "/v1/plans/019a1c3e-0000-7000-8000-000000000005"
                     *       },
                     *       "problem": null,
                     *       "progress": 100,
                     *       "stage": "done",
                     *       "startedAt": "2026-03-15T09:00:00.000Z",
                     *       "state": "succeeded",
                     *       "subject": {
                     *         "id": "019a1c3e-0000-7000-8000-000000000005",
                     *         "type": "plan"
                     *       }
                     *     }
                     */
                    "application/json": components["schemas"]["Job"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    streamJobEvents: {
        parameters: {
            query?: never;
            header?: {
                /** @description Id of the last event seen; what follows it is told */
                "Last-Event-ID"?: components["parameters"]["LastEventID"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Follow a job by server-sent events: "progress" at each change, "end" at last */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "text/event-stream": string;
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listKeys: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List the keys of the garden, without the keys themselves */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "expiresAt": null,
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "lastUsedAt": "2026-03-15T09:00:00.000Z",
                     *           "name": "coordinator",
                     *           "prefix": "lw_example1",
                     *           "revokedAt": null,
                     *           "scopes": [
                     *             "garden:read",
                     *             "garden:admin",
                     *             "members:read",
                     *             "members:write",
                     *             "sites:read",
                     *             "sites:write",
                     *             "sites:exact",
                     *             "structures:read",
                     *             "structures:write",
                     *             "stock:read",
                     *             "stock:write",
                     *             "prices:read",
                     *             "prices:write",
                     *             "builds:read",
                     *             "builds:write",
                     *             "plans:read",
                     *             "plans:write",
                     *             "plans:review",
                     *             "spending:read",
                     *             "spending:write",
                     *             "documents:read",
                     *             "documents:write",
                     *             "webhooks:read",
                     *             "webhooks:write",
                     *             "exports:write",
                     *             "imports:write"
                     *           ]
                     *         },
                     *         {
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "expiresAt": null,
                     *           "id": "019a1c3e-0000-7000-8000-000000000101",
                     *           "lastUsedAt": "2026-03-15T09:00:00.000Z",
                     *           "name": "another",
                     *           "prefix": "lw_example1",
                     *           "revokedAt": null,
                     *           "scopes": [
                     *             "garden:read",
                     *             "garden:admin",
                     *             "members:read",
                     *             "members:write",
                     *             "sites:read",
                     *             "sites:write",
                     *             "sites:exact",
                     *             "structures:read",
                     *             "structures:write",
                     *             "stock:read",
                     *             "stock:write",
                     *             "prices:read",
                     *             "prices:write",
                     *             "builds:read",
                     *             "builds:write",
                     *             "plans:read",
                     *             "plans:write",
                     *             "plans:review",
                     *             "spending:read",
                     *             "spending:write",
                     *             "documents:read",
                     *             "documents:write",
                     *             "webhooks:read",
                     *             "webhooks:write",
                     *             "exports:write",
                     *             "imports:write"
                     *           ]
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["Key"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createKey: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "expiresOn": null,
                 *       "name": "tool shed tablet",
                 *       "scopes": [
                 *         "stock:read",
                 *         "stock:write"
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["KeyRequest"];
            };
        };
        responses: {
            /** @description Make a key, which is shown this once */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "expiresAt": null,
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "key": "lw_shown-once-and-kept-by-you",
                     *       "lastUsedAt": null,
                     *       "name": "tool shed tablet",
                     *       "prefix": "lw_example1",
                     *       "revokedAt": null,
                     *       "scopes": [
                     *         "stock:read",
                     *         "stock:write"
                     *       ]
                     *     }
                     */
                    "application/json": components["schemas"]["NewKey"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getKey: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show one key, without the key itself */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "expiresAt": null,
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "lastUsedAt": null,
                     *       "name": "tool shed tablet",
                     *       "prefix": "lw_example1",
                     *       "revokedAt": null,
                     *       "scopes": [
                     *         "stock:read",
                     *         "stock:write"
                     *       ]
                     *     }
                     */
                    "application/json": components["schemas"]["Key"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    revokeKey: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done */
            204: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listMembers: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @description Show former members too */
                former?: components["parameters"]["formerQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List the members of the garden */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "leftAt": null,
                     *           "name": "Sorrel",
                     *           "roles": [
                     *             "member"
                     *           ],
                     *           "updatedAt": "2026-03-15T09:00:00.000Z",
                     *           "version": 2
                     *         },
                     *         {
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "id": "019a1c3e-0000-7000-8000-000000000101",
                     *           "leftAt": null,
                     *           "name": "Yarrow Fieldgate",
                     *           "roles": [
                     *             "treasurer"
                     *           ],
                     *           "updatedAt": "2026-03-15T09:00:00.000Z",
                     *           "version": 1
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["Member"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getMember: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show one member */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "leftAt": null,
                     *       "name": "Sorrel",
                     *       "roles": [
                     *         "member"
                     *       ],
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 2
                     *     }
                     */
                    "application/json": components["schemas"]["Member"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    removeMember: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done */
            204: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    updateMember: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "name": "Sorrel",
                 *       "roles": [
                 *         "member"
                 *       ]
                 *     }
                 */
                "application/merge-patch+json": components["schemas"]["MemberPatch"];
            };
        };
        responses: {
            /** @description Change what a member is called and is */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "leftAt": null,
                     *       "name": "Sorrel",
                     *       "roles": [
                     *         "member"
                     *       ],
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 2
                     *     }
                     */
                    "application/json": components["schemas"]["Member"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getSharedDetails: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What a member has agreed to share with you */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SharedDetails"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listConsents: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What you have agreed to in this garden, and in which words */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Consents"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    giveConsent: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "purpose": "contactSharing",
                 *       "wordingVersion": 1
                 *     }
                 */
                "application/json": components["schemas"]["ConsentRequest"];
            };
        };
        responses: {
            /** @description Agree to one purpose */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "agreedWording": {
                     *         "text": "The members of this garden may see the phone number that I have given.",
                     *         "version": 1
                     *       },
                     *       "given": true,
                     *       "purpose": "contactSharing",
                     *       "since": "2026-03-15T09:00:00.000Z",
                     *       "wording": {
                     *         "text": "The members of this garden may see the phone number that I have given.",
                     *         "version": 1
                     *       }
                     *     }
                     */
                    "application/json": components["schemas"]["Consent"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listConsentHistory: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Everything you agreed to and took back, oldest first */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["ConsentEntry"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    withdrawConsent: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "purpose": "contactSharing"
                 *     }
                 */
                "application/json": components["schemas"]["ConsentWithdrawal"];
            };
        };
        responses: {
            /** @description Take back what you agreed to */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "agreedWording": null,
                     *       "given": false,
                     *       "purpose": "contactSharing",
                     *       "since": "2026-03-15T09:00:00.000Z",
                     *       "wording": {
                     *         "text": "The members of this garden may see the phone number that I have given.",
                     *         "version": 1
                     *       }
                     *     }
                     */
                    "application/json": components["schemas"]["Consent"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getPrivateDetails: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show your private details in this garden */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PrivateDetails"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    removePrivateDetails: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done */
            204: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    updatePrivateDetails: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "phone": "+1 555 0100",
                 *       "photoWish": "askFirst"
                 *     }
                 */
                "application/merge-patch+json": components["schemas"]["PrivateDetailsPatch"];
            };
        };
        responses: {
            /** @description Change your private details; kept sealed, seen by you alone unless you agree to more */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "address": null,
                     *       "healthNotes": null,
                     *       "needNotes": null,
                     *       "phone": "+1 555 0100",
                     *       "photoWish": "askFirst",
                     *       "version": 1
                     *     }
                     */
                    "application/json": components["schemas"]["PrivateDetails"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getOpenApi: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": Record<string, unknown>;
                };
            };
            400: components["responses"]["Problem4002"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listBuildSummaries: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List every build of the garden in a few words: name, kind, state */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "id": "019a1c3e-0000-7000-8000-000000000004",
                     *           "kind": "gableCanopy",
                     *           "name": "Chicory plot: gable canopy",
                     *           "ownerMemberId": null,
                     *           "revision": 1,
                     *           "shared": false,
                     *           "stale": true,
                     *           "state": "planned"
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["BuildSummary"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getGardenTotals: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show sums over the garden that name nobody */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "builds": {
                     *         "computingCount": 0,
                     *         "failedCount": 0,
                     *         "plannedCount": 1,
                     *         "reviewedCount": 0,
                     *         "unplannedCount": 0
                     *       },
                     *       "hours": {
                     *         "highH": 172.00244770721204,
                     *         "likelyH": 90.50127293864372,
                     *         "lowH": 43.75059229278795
                     *       },
                     *       "money": [
                     *         {
                     *           "buildCount": 1,
                     *           "cashMinor": 124630,
                     *           "currency": "USD",
                     *           "inKindMinor": 6000,
                     *           "reclaimedMinor": 9000
                     *         }
                     *       ]
                     *     }
                     */
                    "application/json": components["schemas"]["GardenTotals"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createPasswordReset: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "email": "sorrel@example.org"
                 *     }
                 */
                "application/json": components["schemas"]["PasswordResetRequest"];
            };
        };
        responses: {
            /** @description Done */
            202: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    redeemPasswordReset: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "code": "q3Xb0nYl1o7V5c2Jm8Rk4sTf6uWzA9eDgHiKpLxNvBw",
                 *       "password": "five barrows under a bridge"
                 *     }
                 */
                "application/json": components["schemas"]["PasswordResetRedemption"];
            };
        };
        responses: {
            /** @description Done */
            204: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listPlans: {
        parameters: {
            query?: {
                /** @description Only plans of this build */
                buildId?: components["parameters"]["buildIdQuery"];
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List revisions, oldest first */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "asBuiltCount": 1,
                     *           "asOf": "2026-03-15",
                     *           "buildId": "019a1c3e-0000-7000-8000-000000000004",
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "finishedAt": "2026-03-15T09:00:00.000Z",
                     *           "id": "019a1c3e-0000-7000-8000-000000000005",
                     *           "links": {
                     *             "build": "/v1/builds/019a1c3e-0000-7000-8000-000000000004",
                     *             "result": "/v1/plans/019a1c3e-0000-7000-8000-000000000005/result",
                     *             "self": "/v1/plans/019a1c3e-0000-7000-8000-000000000005"
                     *           },
                     *           "problem": null,
                     *           "reviewBlocked": null,
                     *           "reviews": [
                     *             {
                     *               "comment": "Tempered glass only above the beds.",
                     *               "createdAt": "2026-03-15T09:00:00.000Z",
                     *               "decision": "changesWanted",
                     *               "id": "019a1c3e-0000-7000-8000-000000000100",
                     *               "reviewer": "Sage, safety lead"
                     *             }
                     *           ],
                     *           "revision": 1,
                     *           "stale": [
                     *             {
                     *               "reason": "buildChanged",
                     *               "since": "2026-03-15T09:00:00.000Z",
                     *               "subject": null
                     *             },
                     *             {
                     *               "reason": "priceChanged",
                     *               "since": "2026-03-15T09:00:00.000Z",
                     *               "subject": "film.greenhouse"
                     *             },
                     *             {
                     *               "reason": "siteChanged",
                     *               "since": "2026-03-15T09:00:00.000Z",
                     *               "subject": null
                     *             },
                     *             {
                     *               "reason": "structureChanged",
                     *               "since": "2026-03-15T09:00:00.000Z",
                     *               "subject": null
                     *             }
                     *           ],
                     *           "startedAt": "2026-03-15T09:00:00.000Z",
                     *           "state": "ready"
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["Plan"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createPlan: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /**
                 * @description wait=10 holds the answer back until the job is done, at most so many seconds
                 * @example wait=10
                 */
                Prefer?: components["parameters"]["Prefer"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "asOf": "2026-03-15",
                 *       "buildId": "019a1c3e-0000-7000-8000-000000000004"
                 *     }
                 */
                "application/json": components["schemas"]["PlanRequest"];
            };
        };
        responses: {
            /** @description Ask for a new revision of the plan of a build */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Link: components["headers"]["Link2"];
                    Location: components["headers"]["Location"];
                    "Preference-Applied": components["headers"]["PreferenceApplied"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    "Retry-After": components["headers"]["RetryAfter2"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "asBuiltCount": 0,
                     *       "asOf": "2026-03-15",
                     *       "buildId": "019a1c3e-0000-7000-8000-000000000004",
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "finishedAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000005",
                     *       "links": {
                     *         "build": "/v1/builds/019a1c3e-0000-7000-8000-000000000004",
                     *         "result": "/v1/plans/019a1c3e-0000-7000-8000-000000000005/result",
                     *         "self": "/v1/plans/019a1c3e-0000-7000-8000-000000000005"
                     *       },
                     *       "problem": null,
                     *       "reviewBlocked": true,
                     *       "reviews": [],
                     *       "revision": 1,
                     *       "stale": [],
                     *       "startedAt": "2026-03-15T09:00:00.000Z",
                     *       "state": "ready"
                     *     }
                     */
                    "application/json": components["schemas"]["Plan"];
                };
            };
            /** @description Ask for a new revision of the plan of a build */
            202: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Link: components["headers"]["Link2"];
                    Location: components["headers"]["Location"];
                    "Preference-Applied": components["headers"]["PreferenceApplied"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    "Retry-After": components["headers"]["RetryAfter2"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Plan"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getPlan: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show one revision: its state, and what has gathered beside it */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "asBuiltCount": 1,
                     *       "asOf": "2026-03-15",
                     *       "buildId": "019a1c3e-0000-7000-8000-000000000004",
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "finishedAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000005",
                     *       "links": {
                     *         "build": "/v1/builds/019a1c3e-0000-7000-8000-000000000004",
                     *         "result": "/v1/plans/019a1c3e-0000-7000-8000-000000000005/result",
                     *         "self": "/v1/plans/019a1c3e-0000-7000-8000-000000000005"
                     *       },
                     *       "problem": null,
                     *       "reviewBlocked": true,
                     *       "reviews": [
                     *         {
                     *           "comment": "Tempered glass only above the beds.",
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "decision": "changesWanted",
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "reviewer": "Sage, safety lead"
                     *         }
                     *       ],
                     *       "revision": 1,
                     *       "stale": [
                     *         {
                     *           "reason": "buildChanged",
                     *           "since": "2026-03-15T09:00:00.000Z",
                     *           "subject": null
                     *         },
                     *         {
                     *           "reason": "priceChanged",
                     *           "since": "2026-03-15T09:00:00.000Z",
                     *           "subject": "film.greenhouse"
                     *         },
                     *         {
                     *           "reason": "siteChanged",
                     *           "since": "2026-03-15T09:00:00.000Z",
                     *           "subject": null
                     *         },
                     *         {
                     *           "reason": "structureChanged",
                     *           "since": "2026-03-15T09:00:00.000Z",
                     *           "subject": null
                     *         }
                     *       ],
                     *       "startedAt": "2026-03-15T09:00:00.000Z",
                     *       "state": "ready"
                     *     }
                     */
                    "application/json": components["schemas"]["Plan"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listAsBuilt: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List what was really built */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "asTyped": {
                     *             "/measures/0/lengthM": "34 in"
                     *           },
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "measures": [
                     *             {
                     *               "lengthM": 0.8635999999999999,
                     *               "pulledToN": null,
                     *               "remark": null,
                     *               "subject": "D1 opening width"
                     *             },
                     *             {
                     *               "lengthM": null,
                     *               "pulledToN": 5600,
                     *               "remark": "held for one minute",
                     *               "subject": "anchor at post A1"
                     *             }
                     *           ],
                     *           "observedOn": "2026-05-02",
                     *           "remark": "Built by five people on one weekend."
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["AsBuilt"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createAsBuilt: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "measures": [
                 *         {
                 *           "lengthM": "34 in",
                 *           "pulledToN": null,
                 *           "remark": null,
                 *           "subject": "D1 opening width"
                 *         },
                 *         {
                 *           "lengthM": null,
                 *           "pulledToN": 5600,
                 *           "remark": "held for one minute",
                 *           "subject": "anchor at post A1"
                 *         }
                 *       ],
                 *       "observedOn": "2026-05-02",
                 *       "remark": "Built by five people on one weekend."
                 *     }
                 */
                "application/json": components["schemas"]["AsBuiltRequest"];
            };
        };
        responses: {
            /** @description Note what was really built */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "asTyped": {
                     *         "/measures/0/lengthM": "34 in"
                     *       },
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "measures": [
                     *         {
                     *           "lengthM": 0.8635999999999999,
                     *           "pulledToN": null,
                     *           "remark": null,
                     *           "subject": "D1 opening width"
                     *         },
                     *         {
                     *           "lengthM": null,
                     *           "pulledToN": 5600,
                     *           "remark": "held for one minute",
                     *           "subject": "anchor at post A1"
                     *         }
                     *       ],
                     *       "observedOn": "2026-05-02",
                     *       "remark": "Built by five people on one weekend."
                     *     }
                     */
                    "application/json": components["schemas"]["AsBuilt"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    exportCalendar: {
        parameters: {
            query?: {
                /** @description Days from one work day to the next: 1 is day after day, 7 is once a week */
                everyD?: components["parameters"]["everyDQuery"];
                /** @description First work day; left out: the day on which the crew of the build begins */
                startsOn?: components["parameters"]["startsOnQuery"];
            };
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The work days of a plan as a calendar */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "text/calendar": string;
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getPlanInputs: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show what a revision was computed from */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanInputs"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    exportMaterials: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What a plan needs, takes from the pile and buys, as CSV */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getPlanResult: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show the finished plan */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanResult"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createReview: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "comment": "Tempered glass only above the beds.",
                 *       "decision": "changesWanted",
                 *       "reviewer": "Sage, safety lead"
                 *     }
                 */
                "application/json": components["schemas"]["ReviewRequest"];
            };
        };
        responses: {
            /** @description Say that a plan was looked at */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "comment": "Tempered glass only above the beds.",
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "decision": "changesWanted",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "reviewer": "Sage, safety lead"
                     *     }
                     */
                    "application/json": components["schemas"]["Review"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listPrices: {
        parameters: {
            query?: {
                /** @description Show archived ones too */
                archived?: components["parameters"]["archivedQuery"];
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
                /** @description Only prices of this material */
                material?: components["parameters"]["materialQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List the prices of the garden */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "archivedAt": null,
                     *           "asTyped": {
                     *             "/pieceLengthM": "100 ft",
                     *             "/pieceWidthM": "28 ft"
                     *           },
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "material": "film.greenhouse",
                     *           "packAmount": 260.1,
                     *           "packPrice": {
                     *             "currency": "USD",
                     *             "minor": 49900
                     *           },
                     *           "pieceLengthM": 30.48,
                     *           "pieceWidthM": 8.5344,
                     *           "readOn": "2026-03-20",
                     *           "supplier": "growing supplies",
                     *           "unit": "m2",
                     *           "updatedAt": "2026-03-15T09:00:00.000Z",
                     *           "version": 4
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["Price"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createPrice: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "material": "film.greenhouse",
                 *       "packAmount": 260.1,
                 *       "packPrice": {
                 *         "currency": "USD",
                 *         "minor": 51500
                 *       },
                 *       "pieceLengthM": "100 ft",
                 *       "pieceWidthM": "28 ft",
                 *       "readOn": "2026-03-02",
                 *       "supplier": "growing supplies",
                 *       "unit": "m2"
                 *     }
                 */
                "application/json": components["schemas"]["PriceRequest"];
            };
        };
        responses: {
            /** @description Make a price */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "archivedAt": null,
                     *       "asTyped": {
                     *         "/pieceLengthM": "100 ft",
                     *         "/pieceWidthM": "28 ft"
                     *       },
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "material": "film.greenhouse",
                     *       "packAmount": 260.1,
                     *       "packPrice": {
                     *         "currency": "USD",
                     *         "minor": 51500
                     *       },
                     *       "pieceLengthM": 30.48,
                     *       "pieceWidthM": 8.5344,
                     *       "readOn": "2026-03-02",
                     *       "supplier": "growing supplies",
                     *       "unit": "m2",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 1
                     *     }
                     */
                    "application/json": components["schemas"]["Price"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    exportPrices: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description All prices as CSV */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getPrice: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show one price */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "archivedAt": null,
                     *       "asTyped": {
                     *         "/pieceLengthM": "100 ft",
                     *         "/pieceWidthM": "28 ft"
                     *       },
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "material": "film.greenhouse",
                     *       "packAmount": 260.1,
                     *       "packPrice": {
                     *         "currency": "USD",
                     *         "minor": 49900
                     *       },
                     *       "pieceLengthM": 30.48,
                     *       "pieceWidthM": 8.5344,
                     *       "readOn": "2026-03-20",
                     *       "supplier": "growing supplies",
                     *       "unit": "m2",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 4
                     *     }
                     */
                    "application/json": components["schemas"]["Price"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    updatePrice: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "packPrice": {
                 *         "currency": "USD",
                 *         "minor": 49900
                 *       },
                 *       "readOn": "2026-03-20"
                 *     }
                 */
                "application/merge-patch+json": components["schemas"]["PricePatch"];
            };
        };
        responses: {
            /** @description Change a price */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "archivedAt": null,
                     *       "asTyped": {
                     *         "/pieceLengthM": "100 ft",
                     *         "/pieceWidthM": "28 ft"
                     *       },
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "material": "film.greenhouse",
                     *       "packAmount": 260.1,
                     *       "packPrice": {
                     *         "currency": "USD",
                     *         "minor": 49900
                     *       },
                     *       "pieceLengthM": 30.48,
                     *       "pieceWidthM": 8.5344,
                     *       "readOn": "2026-03-20",
                     *       "supplier": "growing supplies",
                     *       "unit": "m2",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 2
                     *     }
                     */
                    "application/json": components["schemas"]["Price"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    archivePrice: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Put a price away without losing it */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "archivedAt": "2026-03-15T09:00:00.000Z",
                     *       "asTyped": {
                     *         "/pieceLengthM": "100 ft",
                     *         "/pieceWidthM": "28 ft"
                     *       },
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "material": "film.greenhouse",
                     *       "packAmount": 260.1,
                     *       "packPrice": {
                     *         "currency": "USD",
                     *         "minor": 49900
                     *       },
                     *       "pieceLengthM": 30.48,
                     *       "pieceWidthM": 8.5344,
                     *       "readOn": "2026-03-20",
                     *       "supplier": "growing supplies",
                     *       "unit": "m2",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 3
                     *     }
                     */
                    "application/json": components["schemas"]["Price"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    restorePrice: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Bring an archived price back */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "archivedAt": null,
                     *       "asTyped": {
                     *         "/pieceLengthM": "100 ft",
                     *         "/pieceWidthM": "28 ft"
                     *       },
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "material": "film.greenhouse",
                     *       "packAmount": 260.1,
                     *       "packPrice": {
                     *         "currency": "USD",
                     *         "minor": 49900
                     *       },
                     *       "pieceLengthM": 30.48,
                     *       "pieceWidthM": 8.5344,
                     *       "readOn": "2026-03-20",
                     *       "supplier": "growing supplies",
                     *       "unit": "m2",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 4
                     *     }
                     */
                    "application/json": components["schemas"]["Price"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listProblems: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "detail": "The body is not JSON as this API takes it: {reason}.",
                     *           "remedy": "Correct the body; send plain JSON with each key once.",
                     *           "status": 400,
                     *           "title": "The body cannot be read",
                     *           "type": "/v1/problems/malformed-json"
                     *         },
                     *         {
                     *           "detail": "The address or the headers of the request are broken.",
                     *           "remedy": "Correct the request; percent signs in an address must be followed by two hexadecimal digits.",
                     *           "status": 400,
                     *           "title": "The request cannot be read",
                     *           "type": "/v1/problems/malformed-request"
                     *         }
                     *       ]
                     *     }
                     */
                    "application/json": {
                        items: {
                            detail: string;
                            remedy: string;
                            /** Format: int32 */
                            status: number;
                            title: string;
                            type: string;
                        }[];
                    };
                    "text/html": string;
                };
            };
            400: components["responses"]["Problem4002"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getProblem: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                key: components["parameters"]["keyPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "detail": "There is no {what} with this id in this garden.",
                     *       "remedy": "Check the id, and that the key belongs to the right garden.",
                     *       "status": 404,
                     *       "title": "Not found",
                     *       "type": "/v1/problems/not-found"
                     *     }
                     */
                    "application/json": {
                        detail: string;
                        remedy: string;
                        /** Format: int32 */
                        status: number;
                        title: string;
                        type: string;
                    };
                    "text/html": string;
                };
            };
            400: components["responses"]["Problem4002"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listSessions: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List your open sessions */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "current": true,
                     *           "expiresAt": "2026-03-15T09:00:00.000Z",
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "label": "unnamed",
                     *           "lastSeenAt": "2026-03-15T09:00:00.000Z"
                     *         },
                     *         {
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "current": false,
                     *           "expiresAt": "2026-03-15T09:00:00.000Z",
                     *           "id": "019a1c3e-0000-7000-8000-000000000101",
                     *           "label": "unnamed",
                     *           "lastSeenAt": "2026-03-15T09:00:00.000Z"
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["Session"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createSession: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "as": "token",
                 *       "email": "sorrel@example.org",
                 *       "password": "five barrows under a bridge"
                 *     }
                 */
                "application/json": components["schemas"]["SignInRequest"];
            };
        };
        responses: {
            /** @description Sign in */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "expiresAt": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "label": "unnamed",
                     *       "lastSeenAt": "2026-03-15T09:00:00.000Z",
                     *       "token": "lws_shown-once-and-kept-by-you"
                     *     }
                     */
                    "application/json": components["schemas"]["NewSession"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    endOtherSessions: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done */
            204: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    endSession: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done */
            204: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    endCurrentSession: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done */
            204: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listSites: {
        parameters: {
            query?: {
                /** @description Show archived ones too */
                archived?: components["parameters"]["archivedQuery"];
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List the sites of the garden */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "archivedAt": null,
                     *           "asTyped": {
                     *             "/elevationM": "5380 ft",
                     *             "/frostDepthM": "40 in",
                     *             "/shadedFrac": "10 %",
                     *             "/snow/loadPa": "30 psf",
                     *             "/wind/speedMPerS": "105 mph"
                     *           },
                     *           "coordinatesExact": true,
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "elevationM": 1639.824,
                     *           "exposure": "C",
                     *           "fallAcrossM": 0.08,
                     *           "fallAlongM": -0.12,
                     *           "frostDepthM": 1.016,
                     *           "glassRule": "allowed",
                     *           "id": "019a1c3e-0000-7000-8000-000000000002",
                     *           "latitudeDeg": 39.93,
                     *           "longitudeDeg": -104.58,
                     *           "name": "East field at the bend",
                     *           "nearHilltop": "no",
                     *           "outline": null,
                     *           "ownerMemberId": null,
                     *           "permanentAnchors": "allowed",
                     *           "shadedFrac": 0.1,
                     *           "shared": false,
                     *           "snow": {
                     *             "codeEdition": "ASCE 7-16",
                     *             "level": "service",
                     *             "loadPa": 1436.4077694100752,
                     *             "readOn": "2026-02-12",
                     *             "source": "county snow table reading, invented for this example",
                     *             "surface": "ground"
                     *           },
                     *           "soilClass": "4A",
                     *           "stationId": null,
                     *           "stormWindFromDeg": 315,
                     *           "timeZone": "America/Denver",
                     *           "updatedAt": "2026-03-15T09:00:00.000Z",
                     *           "version": 4,
                     *           "wind": {
                     *             "averaging": "gust3s",
                     *             "codeEdition": "ASCE 7-16",
                     *             "level": "ultimate",
                     *             "readOn": "2026-02-12",
                     *             "riskCategory": "I",
                     *             "source": "hazard map reading, invented for this example",
                     *             "speedMPerS": 46.9392
                     *           }
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["Site"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createSite: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "elevationM": "5380 ft",
                 *       "exposure": "C",
                 *       "fallAcrossM": 0.08,
                 *       "fallAlongM": -0.12,
                 *       "frostDepthM": "36 in",
                 *       "glassRule": "allowed",
                 *       "latitudeDeg": 39.93,
                 *       "longitudeDeg": -104.58,
                 *       "name": "East field at the bend",
                 *       "nearHilltop": "no",
                 *       "permanentAnchors": "allowed",
                 *       "shadedFrac": 0.05,
                 *       "snow": {
                 *         "codeEdition": "ASCE 7-16",
                 *         "level": "service",
                 *         "loadPa": "30 psf",
                 *         "readOn": "2026-02-12",
                 *         "source": "county snow table reading, invented for this example",
                 *         "surface": "ground"
                 *       },
                 *       "soilClass": "4A",
                 *       "stormWindFromDeg": 315,
                 *       "timeZone": "America/Denver",
                 *       "wind": {
                 *         "averaging": "gust3s",
                 *         "codeEdition": "ASCE 7-16",
                 *         "level": "ultimate",
                 *         "readOn": "2026-02-12",
                 *         "riskCategory": "I",
                 *         "source": "hazard map reading, invented for this example",
                 *         "speedMPerS": "105 mph"
                 *       }
                 *     }
                 */
                "application/json": components["schemas"]["SiteRequest"];
            };
        };
        responses: {
            /** @description Make a site */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "archivedAt": null,
                     *       "asTyped": {
                     *         "/elevationM": "5380 ft",
                     *         "/frostDepthM": "36 in",
                     *         "/snow/loadPa": "30 psf",
                     *         "/wind/speedMPerS": "105 mph"
                     *       },
                     *       "coordinatesExact": true,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "elevationM": 1639.824,
                     *       "exposure": "C",
                     *       "fallAcrossM": 0.08,
                     *       "fallAlongM": -0.12,
                     *       "frostDepthM": 0.9144,
                     *       "glassRule": "allowed",
                     *       "id": "019a1c3e-0000-7000-8000-000000000002",
                     *       "latitudeDeg": 39.93,
                     *       "longitudeDeg": -104.58,
                     *       "name": "East field at the bend",
                     *       "nearHilltop": "no",
                     *       "outline": null,
                     *       "ownerMemberId": null,
                     *       "permanentAnchors": "allowed",
                     *       "shadedFrac": 0.05,
                     *       "shared": false,
                     *       "snow": {
                     *         "codeEdition": "ASCE 7-16",
                     *         "level": "service",
                     *         "loadPa": 1436.4077694100752,
                     *         "readOn": "2026-02-12",
                     *         "source": "county snow table reading, invented for this example",
                     *         "surface": "ground"
                     *       },
                     *       "soilClass": "4A",
                     *       "stationId": null,
                     *       "stormWindFromDeg": 315,
                     *       "timeZone": "America/Denver",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 1,
                     *       "wind": {
                     *         "averaging": "gust3s",
                     *         "codeEdition": "ASCE 7-16",
                     *         "level": "ultimate",
                     *         "readOn": "2026-02-12",
                     *         "riskCategory": "I",
                     *         "source": "hazard map reading, invented for this example",
                     *         "speedMPerS": 46.9392
                     *       }
                     *     }
                     */
                    "application/json": components["schemas"]["Site"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    exportSites: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The sites as GeoJSON */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/geo+json": string;
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getSite: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show one site */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "archivedAt": null,
                     *       "asTyped": {
                     *         "/elevationM": "5380 ft",
                     *         "/frostDepthM": "40 in",
                     *         "/shadedFrac": "10 %",
                     *         "/snow/loadPa": "30 psf",
                     *         "/wind/speedMPerS": "105 mph"
                     *       },
                     *       "coordinatesExact": true,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "elevationM": 1639.824,
                     *       "exposure": "C",
                     *       "fallAcrossM": 0.08,
                     *       "fallAlongM": -0.12,
                     *       "frostDepthM": 1.016,
                     *       "glassRule": "allowed",
                     *       "id": "019a1c3e-0000-7000-8000-000000000002",
                     *       "latitudeDeg": 39.93,
                     *       "longitudeDeg": -104.58,
                     *       "name": "East field at the bend",
                     *       "nearHilltop": "no",
                     *       "outline": null,
                     *       "ownerMemberId": null,
                     *       "permanentAnchors": "allowed",
                     *       "shadedFrac": 0.1,
                     *       "shared": false,
                     *       "snow": {
                     *         "codeEdition": "ASCE 7-16",
                     *         "level": "service",
                     *         "loadPa": 1436.4077694100752,
                     *         "readOn": "2026-02-12",
                     *         "source": "county snow table reading, invented for this example",
                     *         "surface": "ground"
                     *       },
                     *       "soilClass": "4A",
                     *       "stationId": null,
                     *       "stormWindFromDeg": 315,
                     *       "timeZone": "America/Denver",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 4,
                     *       "wind": {
                     *         "averaging": "gust3s",
                     *         "codeEdition": "ASCE 7-16",
                     *         "level": "ultimate",
                     *         "readOn": "2026-02-12",
                     *         "riskCategory": "I",
                     *         "source": "hazard map reading, invented for this example",
                     *         "speedMPerS": 46.9392
                     *       }
                     *     }
                     */
                    "application/json": components["schemas"]["Site"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    updateSite: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "frostDepthM": "40 in",
                 *       "shadedFrac": "10 %"
                 *     }
                 */
                "application/merge-patch+json": components["schemas"]["SitePatch"];
            };
        };
        responses: {
            /** @description Change a site */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "archivedAt": null,
                     *       "asTyped": {
                     *         "/elevationM": "5380 ft",
                     *         "/frostDepthM": "40 in",
                     *         "/shadedFrac": "10 %",
                     *         "/snow/loadPa": "30 psf",
                     *         "/wind/speedMPerS": "105 mph"
                     *       },
                     *       "coordinatesExact": true,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "elevationM": 1639.824,
                     *       "exposure": "C",
                     *       "fallAcrossM": 0.08,
                     *       "fallAlongM": -0.12,
                     *       "frostDepthM": 1.016,
                     *       "glassRule": "allowed",
                     *       "id": "019a1c3e-0000-7000-8000-000000000002",
                     *       "latitudeDeg": 39.93,
                     *       "longitudeDeg": -104.58,
                     *       "name": "East field at the bend",
                     *       "nearHilltop": "no",
                     *       "outline": null,
                     *       "ownerMemberId": null,
                     *       "permanentAnchors": "allowed",
                     *       "shadedFrac": 0.1,
                     *       "shared": false,
                     *       "snow": {
                     *         "codeEdition": "ASCE 7-16",
                     *         "level": "service",
                     *         "loadPa": 1436.4077694100752,
                     *         "readOn": "2026-02-12",
                     *         "source": "county snow table reading, invented for this example",
                     *         "surface": "ground"
                     *       },
                     *       "soilClass": "4A",
                     *       "stationId": null,
                     *       "stormWindFromDeg": 315,
                     *       "timeZone": "America/Denver",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 2,
                     *       "wind": {
                     *         "averaging": "gust3s",
                     *         "codeEdition": "ASCE 7-16",
                     *         "level": "ultimate",
                     *         "readOn": "2026-02-12",
                     *         "riskCategory": "I",
                     *         "source": "hazard map reading, invented for this example",
                     *         "speedMPerS": 46.9392
                     *       }
                     *     }
                     */
                    "application/json": components["schemas"]["Site"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    archiveSite: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Put a site away without losing it */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "archivedAt": "2026-03-15T09:00:00.000Z",
                     *       "asTyped": {
                     *         "/elevationM": "5380 ft",
                     *         "/frostDepthM": "40 in",
                     *         "/shadedFrac": "10 %",
                     *         "/snow/loadPa": "30 psf",
                     *         "/wind/speedMPerS": "105 mph"
                     *       },
                     *       "coordinatesExact": true,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "elevationM": 1639.824,
                     *       "exposure": "C",
                     *       "fallAcrossM": 0.08,
                     *       "fallAlongM": -0.12,
                     *       "frostDepthM": 1.016,
                     *       "glassRule": "allowed",
                     *       "id": "019a1c3e-0000-7000-8000-000000000002",
                     *       "latitudeDeg": 39.93,
                     *       "longitudeDeg": -104.58,
                     *       "name": "East field at the bend",
                     *       "nearHilltop": "no",
                     *       "outline": null,
                     *       "ownerMemberId": null,
                     *       "permanentAnchors": "allowed",
                     *       "shadedFrac": 0.1,
                     *       "shared": false,
                     *       "snow": {
                     *         "codeEdition": "ASCE 7-16",
                     *         "level": "service",
                     *         "loadPa": 1436.4077694100752,
                     *         "readOn": "2026-02-12",
                     *         "source": "county snow table reading, invented for this example",
                     *         "surface": "ground"
                     *       },
                     *       "soilClass": "4A",
                     *       "stationId": null,
                     *       "stormWindFromDeg": 315,
                     *       "timeZone": "America/Denver",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 3,
                     *       "wind": {
                     *         "averaging": "gust3s",
                     *         "codeEdition": "ASCE 7-16",
                     *         "level": "ultimate",
                     *         "readOn": "2026-02-12",
                     *         "riskCategory": "I",
                     *         "source": "hazard map reading, invented for this example",
                     *         "speedMPerS": 46.9392
                     *       }
                     *     }
                     */
                    "application/json": components["schemas"]["Site"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getSiteClimate: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show the climate at a site: months, design night, frost dates, sun, each with its basis, doubt and sources */
            200: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SiteClimate"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    restoreSite: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Bring an archived site back */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "archivedAt": null,
                     *       "asTyped": {
                     *         "/elevationM": "5380 ft",
                     *         "/frostDepthM": "40 in",
                     *         "/shadedFrac": "10 %",
                     *         "/snow/loadPa": "30 psf",
                     *         "/wind/speedMPerS": "105 mph"
                     *       },
                     *       "coordinatesExact": true,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "elevationM": 1639.824,
                     *       "exposure": "C",
                     *       "fallAcrossM": 0.08,
                     *       "fallAlongM": -0.12,
                     *       "frostDepthM": 1.016,
                     *       "glassRule": "allowed",
                     *       "id": "019a1c3e-0000-7000-8000-000000000002",
                     *       "latitudeDeg": 39.93,
                     *       "longitudeDeg": -104.58,
                     *       "name": "East field at the bend",
                     *       "nearHilltop": "no",
                     *       "outline": null,
                     *       "ownerMemberId": null,
                     *       "permanentAnchors": "allowed",
                     *       "shadedFrac": 0.1,
                     *       "shared": false,
                     *       "snow": {
                     *         "codeEdition": "ASCE 7-16",
                     *         "level": "service",
                     *         "loadPa": 1436.4077694100752,
                     *         "readOn": "2026-02-12",
                     *         "source": "county snow table reading, invented for this example",
                     *         "surface": "ground"
                     *       },
                     *       "soilClass": "4A",
                     *       "stationId": null,
                     *       "stormWindFromDeg": 315,
                     *       "timeZone": "America/Denver",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 4,
                     *       "wind": {
                     *         "averaging": "gust3s",
                     *         "codeEdition": "ASCE 7-16",
                     *         "level": "ultimate",
                     *         "readOn": "2026-02-12",
                     *         "riskCategory": "I",
                     *         "source": "hazard map reading, invented for this example",
                     *         "speedMPerS": 46.9392
                     *       }
                     *     }
                     */
                    "application/json": components["schemas"]["Site"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listSpendRequests: {
        parameters: {
            query?: {
                /** @description Only requests for this build */
                buildId?: components["parameters"]["buildIdQuery2"];
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
                /** @description Only requests in this state */
                state?: components["parameters"]["stateQuery3"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List what was asked for, and what was decided */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "amount": {
                     *             "currency": "USD",
                     *             "minor": 4250
                     *           },
                     *           "buildId": "019a1c3e-0000-7000-8000-000000000004",
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "decidedAt": "2026-03-15T09:00:00.000Z",
                     *           "decidedById": "019a1c3e-0000-7000-8000-000000000102",
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "planId": null,
                     *           "purpose": "Two rolls of batten tape and a box of screws",
                     *           "remark": "Keep the receipt for the grant.",
                     *           "requestedById": "019a1c3e-0000-7000-8000-000000000101",
                     *           "state": "approved",
                     *           "version": 2
                     *         },
                     *         {
                     *           "amount": {
                     *             "currency": "USD",
                     *             "minor": 4250
                     *           },
                     *           "buildId": "019a1c3e-0000-7000-8000-000000000004",
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "decidedAt": null,
                     *           "decidedById": null,
                     *           "id": "019a1c3e-0000-7000-8000-000000000103",
                     *           "planId": null,
                     *           "purpose": "Two rolls of batten tape and a box of screws",
                     *           "remark": null,
                     *           "requestedById": "019a1c3e-0000-7000-8000-000000000101",
                     *           "state": "withdrawn",
                     *           "version": 2
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["SpendRequest"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createSpendRequest: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "amount": {
                 *         "currency": "USD",
                 *         "minor": 4250
                 *       },
                 *       "buildId": "019a1c3e-0000-7000-8000-000000000004",
                 *       "purpose": "Two rolls of batten tape and a box of screws"
                 *     }
                 */
                "application/json": components["schemas"]["SpendRequestRequest"];
            };
        };
        responses: {
            /** @description Ask to spend money */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "amount": {
                     *         "currency": "USD",
                     *         "minor": 4250
                     *       },
                     *       "buildId": "019a1c3e-0000-7000-8000-000000000004",
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "decidedAt": null,
                     *       "decidedById": null,
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "planId": null,
                     *       "purpose": "Two rolls of batten tape and a box of screws",
                     *       "remark": null,
                     *       "requestedById": "019a1c3e-0000-7000-8000-000000000101",
                     *       "state": "submitted",
                     *       "version": 1
                     *     }
                     */
                    "application/json": components["schemas"]["SpendRequest"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getSpendRequest: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show one request */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "amount": {
                     *         "currency": "USD",
                     *         "minor": 4250
                     *       },
                     *       "buildId": "019a1c3e-0000-7000-8000-000000000004",
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "decidedAt": null,
                     *       "decidedById": null,
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "planId": null,
                     *       "purpose": "Two rolls of batten tape and a box of screws",
                     *       "remark": null,
                     *       "requestedById": "019a1c3e-0000-7000-8000-000000000101",
                     *       "state": "withdrawn",
                     *       "version": 2
                     *     }
                     */
                    "application/json": components["schemas"]["SpendRequest"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    decideSpendRequest: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "decision": "approved",
                 *       "remark": "Keep the receipt for the grant."
                 *     }
                 */
                "application/json": components["schemas"]["SpendDecisionRequest"];
            };
        };
        responses: {
            /** @description Approve or refuse what somebody else asked for, up to the limit of one’s role */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "amount": {
                     *         "currency": "USD",
                     *         "minor": 4250
                     *       },
                     *       "buildId": "019a1c3e-0000-7000-8000-000000000004",
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "decidedAt": "2026-03-15T09:00:00.000Z",
                     *       "decidedById": "019a1c3e-0000-7000-8000-000000000102",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "planId": null,
                     *       "purpose": "Two rolls of batten tape and a box of screws",
                     *       "remark": "Keep the receipt for the grant.",
                     *       "requestedById": "019a1c3e-0000-7000-8000-000000000101",
                     *       "state": "approved",
                     *       "version": 2
                     *     }
                     */
                    "application/json": components["schemas"]["SpendRequest"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    withdrawSpendRequest: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Take back what one asked for */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "amount": {
                     *         "currency": "USD",
                     *         "minor": 4250
                     *       },
                     *       "buildId": "019a1c3e-0000-7000-8000-000000000004",
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "decidedAt": null,
                     *       "decidedById": null,
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "planId": null,
                     *       "purpose": "Two rolls of batten tape and a box of screws",
                     *       "remark": null,
                     *       "requestedById": "019a1c3e-0000-7000-8000-000000000101",
                     *       "state": "withdrawn",
                     *       "version": 2
                     *     }
                     */
                    "application/json": components["schemas"]["SpendRequest"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listStock: {
        parameters: {
            query?: {
                /** @description Show archived ones too */
                archived?: components["parameters"]["archivedQuery"];
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @description Only things of which some are free (true) or none is (false) */
                free?: components["parameters"]["freeQuery"];
                /** @description Only things of this grade */
                grade?: components["parameters"]["gradeQuery"];
                /** @description Only things of this kind */
                kind?: components["parameters"]["kindQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List what lies on the pile */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "ageY": null,
                     *           "archivedAt": null,
                     *           "asTyped": {
                     *             "/heightMm": "80 in",
                     *             "/widthMm": "32 in"
                     *           },
                     *           "count": 1,
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "donor": null,
                     *           "freeCount": 0,
                     *           "grade": "B",
                     *           "hazards": [
                     *             "leadPaintAssumed"
                     *           ],
                     *           "heightMm": 2032,
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "kind": "door",
                     *           "lengthMm": null,
                     *           "material": "door",
                     *           "replacement": {
                     *             "currency": "USD",
                     *             "minor": 9000
                     *           },
                     *           "tag": "RB-003",
                     *           "thicknessMm": 44,
                     *           "updatedAt": "2026-03-15T09:00:00.000Z",
                     *           "usableLengthMm": null,
                     *           "version": 1,
                     *           "volumeL": null,
                     *           "widthMm": 812.8
                     *         },
                     *         {
                     *           "ageY": null,
                     *           "archivedAt": null,
                     *           "asTyped": {
                     *             "/volumeL": "55 gal"
                     *           },
                     *           "count": 3,
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "donor": null,
                     *           "freeCount": 3,
                     *           "grade": "A",
                     *           "hazards": [],
                     *           "heightMm": null,
                     *           "id": "019a1c3e-0000-7000-8000-000000000101",
                     *           "kind": "barrel",
                     *           "lengthMm": null,
                     *           "material": "barrel.water",
                     *           "replacement": null,
                     *           "tag": "RB-011",
                     *           "thicknessMm": null,
                     *           "updatedAt": "2026-03-15T09:00:00.000Z",
                     *           "usableLengthMm": null,
                     *           "version": 1,
                     *           "volumeL": 208.19764812,
                     *           "widthMm": null
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["StockItem"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createStockItem: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "ageY": null,
                 *       "count": 1,
                 *       "grade": "B",
                 *       "hazards": [
                 *         "leadPaintAssumed"
                 *       ],
                 *       "heightMm": "80 in",
                 *       "kind": "door",
                 *       "lengthMm": null,
                 *       "material": "door",
                 *       "replacement": {
                 *         "currency": "USD",
                 *         "minor": 9000
                 *       },
                 *       "tag": "RB-101",
                 *       "thicknessMm": 44,
                 *       "usableLengthMm": null,
                 *       "volumeL": null,
                 *       "widthMm": "32 in"
                 *     }
                 */
                "application/json": components["schemas"]["StockItemRequest"];
            };
        };
        responses: {
            /** @description Take one thing into the pile */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "ageY": null,
                     *       "archivedAt": null,
                     *       "asTyped": {
                     *         "/heightMm": "80 in",
                     *         "/widthMm": "32 in"
                     *       },
                     *       "count": 1,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "donor": null,
                     *       "freeCount": 1,
                     *       "grade": "B",
                     *       "hazards": [
                     *         "leadPaintAssumed"
                     *       ],
                     *       "heightMm": 2032,
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "kind": "door",
                     *       "lengthMm": null,
                     *       "material": "door",
                     *       "replacement": {
                     *         "currency": "USD",
                     *         "minor": 9000
                     *       },
                     *       "tag": "RB-101",
                     *       "thicknessMm": 44,
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "usableLengthMm": null,
                     *       "version": 1,
                     *       "volumeL": null,
                     *       "widthMm": 812.8
                     *     }
                     */
                    "application/json": components["schemas"]["StockItem"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    exportStock: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The whole pile as CSV */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getStockItem: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show one thing */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "ageY": null,
                     *       "archivedAt": null,
                     *       "asTyped": {
                     *         "/heightMm": "80 in",
                     *         "/widthMm": "32 in"
                     *       },
                     *       "count": 1,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "donor": null,
                     *       "freeCount": 1,
                     *       "grade": "C",
                     *       "hazards": [
                     *         "leadPaintFound"
                     *       ],
                     *       "heightMm": 2032,
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "kind": "door",
                     *       "lengthMm": null,
                     *       "material": "door",
                     *       "replacement": {
                     *         "currency": "USD",
                     *         "minor": 9000
                     *       },
                     *       "tag": "RB-101",
                     *       "thicknessMm": 44,
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "usableLengthMm": null,
                     *       "version": 4,
                     *       "volumeL": null,
                     *       "widthMm": 812.8
                     *     }
                     */
                    "application/json": components["schemas"]["StockItem"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    updateStockItem: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "grade": "C",
                 *       "hazards": [
                 *         "leadPaintFound"
                 *       ]
                 *     }
                 */
                "application/merge-patch+json": components["schemas"]["StockItemPatch"];
            };
        };
        responses: {
            /** @description Change a thing */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "ageY": null,
                     *       "archivedAt": null,
                     *       "asTyped": {
                     *         "/heightMm": "80 in",
                     *         "/widthMm": "32 in"
                     *       },
                     *       "count": 1,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "donor": null,
                     *       "freeCount": 1,
                     *       "grade": "C",
                     *       "hazards": [
                     *         "leadPaintFound"
                     *       ],
                     *       "heightMm": 2032,
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "kind": "door",
                     *       "lengthMm": null,
                     *       "material": "door",
                     *       "replacement": {
                     *         "currency": "USD",
                     *         "minor": 9000
                     *       },
                     *       "tag": "RB-101",
                     *       "thicknessMm": 44,
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "usableLengthMm": null,
                     *       "version": 2,
                     *       "volumeL": null,
                     *       "widthMm": 812.8
                     *     }
                     */
                    "application/json": components["schemas"]["StockItem"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    archiveStockItem: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Put a thing away without losing it */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "ageY": null,
                     *       "archivedAt": "2026-03-15T09:00:00.000Z",
                     *       "asTyped": {
                     *         "/heightMm": "80 in",
                     *         "/widthMm": "32 in"
                     *       },
                     *       "count": 1,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "donor": null,
                     *       "freeCount": 1,
                     *       "grade": "C",
                     *       "hazards": [
                     *         "leadPaintFound"
                     *       ],
                     *       "heightMm": 2032,
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "kind": "door",
                     *       "lengthMm": null,
                     *       "material": "door",
                     *       "replacement": {
                     *         "currency": "USD",
                     *         "minor": 9000
                     *       },
                     *       "tag": "RB-101",
                     *       "thicknessMm": 44,
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "usableLengthMm": null,
                     *       "version": 3,
                     *       "volumeL": null,
                     *       "widthMm": 812.8
                     *     }
                     */
                    "application/json": components["schemas"]["StockItem"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listStockPhotos: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List the photos of a thing on the pile */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "byteCount": 48000,
                     *           "caption": null,
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "heightPixelCount": 48,
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "links": {
                     *             "file": "/v1/stock/019a1c3e-0000-7000-8000-000000000101/photos/019a1c3e-0000-7000-8000-000000000100/file",
                     *             "self": "/v1/stock/019a1c3e-0000-7000-8000-000000000101/photos/019a1c3e-0000-7000-8000-000000000100"
                     *           },
                     *           "mediaType": "image/jpeg",
                     *           "releaseOnFile": false,
                     *           "showsPeople": false,
                     *           "widthPixelCount": 64
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["Photo"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createStockPhoto: {
        parameters: {
            query: {
                /** @description What the photo shows */
                caption?: components["parameters"]["captionQuery"];
                /** @description Whether everybody shown has agreed to it being seen in the garden, and that is kept on file */
                releaseOnFile?: components["parameters"]["releaseOnFileQuery"];
                /**
                 * @description Whether people can be made out on it
                 * @example false
                 */
                showsPeople: components["parameters"]["showsPeopleQuery"];
            };
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "image/jpeg": Blob;
                "image/png": Blob;
                "image/webp": Blob;
            };
        };
        responses: {
            /** @description Add a photo of a thing on the pile: the picture itself is the body */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Photo"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getStockPhoto: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
                photoId: components["parameters"]["photoIdPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show what is known of one photo */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "byteCount": 48000,
                     *       "caption": null,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "heightPixelCount": 48,
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "links": {
                     *         "file": "/v1/stock/019a1c3e-0000-7000-8000-000000000101/photos/019a1c3e-0000-7000-8000-000000000100/file",
                     *         "self": "/v1/stock/019a1c3e-0000-7000-8000-000000000101/photos/019a1c3e-0000-7000-8000-000000000100"
                     *       },
                     *       "mediaType": "image/jpeg",
                     *       "releaseOnFile": false,
                     *       "showsPeople": false,
                     *       "widthPixelCount": 64
                     *     }
                     */
                    "application/json": components["schemas"]["Photo"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    removeStockPhoto: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
                photoId: components["parameters"]["photoIdPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done */
            204: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getStockPhotoFile: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
                photoId: components["parameters"]["photoIdPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Fetch the picture */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "image/jpeg": Blob;
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    restoreStockItem: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Bring an archived thing back */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "ageY": null,
                     *       "archivedAt": null,
                     *       "asTyped": {
                     *         "/heightMm": "80 in",
                     *         "/widthMm": "32 in"
                     *       },
                     *       "count": 1,
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "donor": null,
                     *       "freeCount": 1,
                     *       "grade": "C",
                     *       "hazards": [
                     *         "leadPaintFound"
                     *       ],
                     *       "heightMm": 2032,
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "kind": "door",
                     *       "lengthMm": null,
                     *       "material": "door",
                     *       "replacement": {
                     *         "currency": "USD",
                     *         "minor": 9000
                     *       },
                     *       "tag": "RB-101",
                     *       "thicknessMm": 44,
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "usableLengthMm": null,
                     *       "version": 4,
                     *       "volumeL": null,
                     *       "widthMm": 812.8
                     *     }
                     */
                    "application/json": components["schemas"]["StockItem"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createStockIntake: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "items": [
                 *         {
                 *           "ageY": null,
                 *           "count": 1,
                 *           "grade": "B",
                 *           "hazards": [
                 *             "leadPaintAssumed"
                 *           ],
                 *           "heightMm": "80 in",
                 *           "kind": "door",
                 *           "lengthMm": null,
                 *           "material": "door",
                 *           "replacement": {
                 *             "currency": "USD",
                 *             "minor": 9000
                 *           },
                 *           "tag": "RB-003",
                 *           "thicknessMm": 44,
                 *           "usableLengthMm": null,
                 *           "volumeL": null,
                 *           "widthMm": "32 in"
                 *         },
                 *         {
                 *           "ageY": null,
                 *           "count": 3,
                 *           "grade": "A",
                 *           "hazards": [],
                 *           "heightMm": null,
                 *           "kind": "barrel",
                 *           "lengthMm": null,
                 *           "material": "barrel.water",
                 *           "replacement": null,
                 *           "tag": "RB-011",
                 *           "thicknessMm": null,
                 *           "usableLengthMm": null,
                 *           "volumeL": "55 gal",
                 *           "widthMm": null
                 *         }
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["StockIntakeRequest"];
            };
        };
        responses: {
            /** @description Take up to 200 things into the pile together */
            201: {
                headers: {
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "ageY": null,
                     *           "archivedAt": null,
                     *           "asTyped": {
                     *             "/heightMm": "80 in",
                     *             "/widthMm": "32 in"
                     *           },
                     *           "count": 1,
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "donor": null,
                     *           "freeCount": 1,
                     *           "grade": "B",
                     *           "hazards": [
                     *             "leadPaintAssumed"
                     *           ],
                     *           "heightMm": 2032,
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "kind": "door",
                     *           "lengthMm": null,
                     *           "material": "door",
                     *           "replacement": {
                     *             "currency": "USD",
                     *             "minor": 9000
                     *           },
                     *           "tag": "RB-003",
                     *           "thicknessMm": 44,
                     *           "updatedAt": "2026-03-15T09:00:00.000Z",
                     *           "usableLengthMm": null,
                     *           "version": 1,
                     *           "volumeL": null,
                     *           "widthMm": 812.8
                     *         },
                     *         {
                     *           "ageY": null,
                     *           "archivedAt": null,
                     *           "asTyped": {
                     *             "/volumeL": "55 gal"
                     *           },
                     *           "count": 3,
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "donor": null,
                     *           "freeCount": 3,
                     *           "grade": "A",
                     *           "hazards": [],
                     *           "heightMm": null,
                     *           "id": "019a1c3e-0000-7000-8000-000000000101",
                     *           "kind": "barrel",
                     *           "lengthMm": null,
                     *           "material": "barrel.water",
                     *           "replacement": null,
                     *           "tag": "RB-011",
                     *           "thicknessMm": null,
                     *           "updatedAt": "2026-03-15T09:00:00.000Z",
                     *           "usableLengthMm": null,
                     *           "version": 1,
                     *           "volumeL": 208.19764812,
                     *           "widthMm": null
                     *         }
                     *       ]
                     *     }
                     */
                    "application/json": components["schemas"]["StockIntake"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listStructures: {
        parameters: {
            query?: {
                /** @description Show archived ones too */
                archived?: components["parameters"]["archivedQuery"];
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List the structures of the garden */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "airLeaks": "ordinary",
                     *           "anchor": {
                     *             "ballastIsWater": false,
                     *             "ballastKg": "unknown",
                     *             "depthM": 0.762,
                     *             "diameterM": 0.15,
                     *             "installTorqueNm": "unknown",
                     *             "kind": "auger",
                     *             "perPostCount": 2,
                     *             "pulledToN": 5600
                     *           },
                     *           "archivedAt": null,
                     *           "asTyped": {
                     *             "/anchor/depthM": "30 in",
                     *             "/cover/rollWidthM": "28 ft",
                     *             "/cover/thicknessMm": "6 mil",
                     *             "/eaveM": "6' 6\"",
                     *             "/lengthM": "20 ft",
                     *             "/ridgeM": "9 ft",
                     *             "/waterStores/0/volumeL": "55 gal",
                     *             "/widthM": "10 ft"
                     *           },
                     *           "bedsM2": 9,
                     *           "bowsAtM": [
                     *             0,
                     *             2.032,
                     *             4.064,
                     *             6.096
                     *           ],
                     *           "braced": "endBays",
                     *           "cover": {
                     *             "ageY": 1,
                     *             "film": "polyethylene",
                     *             "innerCover": true,
                     *             "rollWidthM": 8.5344,
                     *             "secondFilm": false,
                     *             "shadeFrac": 0,
                     *             "thicknessMm": 0.1524,
                     *             "wrapM": 0.457
                     *           },
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "eaveM": 1.9812,
                     *           "floor": "mulch",
                     *           "floorMoist": true,
                     *           "frameMassKg": 95,
                     *           "frameStockTag": "RB-001",
                     *           "frontFacesDeg": 90,
                     *           "hostWall": null,
                     *           "id": "019a1c3e-0000-7000-8000-000000000003",
                     *           "kind": "gableCanopy",
                     *           "lengthM": 6.096,
                     *           "measuredRaftersM": {
                     *             "leftM": 1.704,
                     *             "rightM": 1.702
                     *           },
                     *           "name": "Chicory plot: gable canopy",
                     *           "openings": [
                     *             {
                     *               "bottomM": 0,
                     *               "freeOpenFrac": 1,
                     *               "glazing": "none",
                     *               "heightM": 2.08,
                     *               "hinge": "right",
                     *               "kind": "door",
                     *               "largestPaneM2": 0,
                     *               "offsetM": 1.09,
                     *               "openingId": "D1",
                     *               "stockTag": "RB-003",
                     *               "wall": "front",
                     *               "widthM": 0.865
                     *             }
                     *           ],
                     *           "ownerMemberId": null,
                     *           "ridgeM": 2.7432000000000003,
                     *           "shared": false,
                     *           "tube": {
                     *             "outsideMm": 34.9,
                     *             "rust": "surface",
                     *             "shape": "round",
                     *             "wallMm": 1.5
                     *           },
                     *           "updatedAt": "2026-03-15T09:00:00.000Z",
                     *           "version": 4,
                     *           "waterStores": [
                     *             {
                     *               "colour": "dark",
                     *               "count": 3,
                     *               "stockTag": "RB-011",
                     *               "volumeL": 208.19764812
                     *             }
                     *           ],
                     *           "widthM": 3.048
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["Structure"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createStructure: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "airLeaks": "ordinary",
                 *       "anchor": {
                 *         "ballastIsWater": false,
                 *         "ballastKg": "unknown",
                 *         "depthM": "30 in",
                 *         "diameterM": 0.15,
                 *         "installTorqueNm": "unknown",
                 *         "kind": "auger",
                 *         "perPostCount": 2,
                 *         "pulledToN": 5600
                 *       },
                 *       "bedsM2": 9,
                 *       "bowsAtM": [
                 *         0,
                 *         2.032,
                 *         4.064,
                 *         6.096
                 *       ],
                 *       "braced": "endBays",
                 *       "cover": {
                 *         "ageY": 0,
                 *         "film": "polyethylene",
                 *         "innerCover": true,
                 *         "rollWidthM": "28 ft",
                 *         "secondFilm": false,
                 *         "shadeFrac": 0,
                 *         "thicknessMm": "6 mil",
                 *         "wrapM": 0.457
                 *       },
                 *       "eaveM": "6' 6\"",
                 *       "floor": "mulch",
                 *       "floorMoist": true,
                 *       "frameMassKg": 95,
                 *       "frameStockTag": "RB-001",
                 *       "frontFacesDeg": 90,
                 *       "hostWall": null,
                 *       "kind": "gableCanopy",
                 *       "lengthM": "20 ft",
                 *       "measuredRaftersM": {
                 *         "leftM": 1.704,
                 *         "rightM": 1.702
                 *       },
                 *       "name": "Chicory plot: gable canopy",
                 *       "openings": [
                 *         {
                 *           "bottomM": 0,
                 *           "freeOpenFrac": 1,
                 *           "glazing": "none",
                 *           "heightM": 2.08,
                 *           "hinge": "right",
                 *           "kind": "door",
                 *           "largestPaneM2": 0,
                 *           "offsetM": 1.09,
                 *           "openingId": "D1",
                 *           "stockTag": "RB-003",
                 *           "wall": "front",
                 *           "widthM": 0.865
                 *         }
                 *       ],
                 *       "ridgeM": "9 ft",
                 *       "tube": {
                 *         "outsideMm": 34.9,
                 *         "rust": "surface",
                 *         "shape": "round",
                 *         "wallMm": 1.5
                 *       },
                 *       "waterStores": [
                 *         {
                 *           "colour": "dark",
                 *           "count": 3,
                 *           "stockTag": "RB-011",
                 *           "volumeL": "55 gal"
                 *         }
                 *       ],
                 *       "widthM": "10 ft"
                 *     }
                 */
                "application/json": components["schemas"]["StructureRequest"];
            };
        };
        responses: {
            /** @description Make a structure */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "airLeaks": "ordinary",
                     *       "anchor": {
                     *         "ballastIsWater": false,
                     *         "ballastKg": "unknown",
                     *         "depthM": 0.762,
                     *         "diameterM": 0.15,
                     *         "installTorqueNm": "unknown",
                     *         "kind": "auger",
                     *         "perPostCount": 2,
                     *         "pulledToN": 5600
                     *       },
                     *       "archivedAt": null,
                     *       "asTyped": {
                     *         "/anchor/depthM": "30 in",
                     *         "/cover/rollWidthM": "28 ft",
                     *         "/cover/thicknessMm": "6 mil",
                     *         "/eaveM": "6' 6\"",
                     *         "/lengthM": "20 ft",
                     *         "/ridgeM": "9 ft",
                     *         "/waterStores/0/volumeL": "55 gal",
                     *         "/widthM": "10 ft"
                     *       },
                     *       "bedsM2": 9,
                     *       "bowsAtM": [
                     *         0,
                     *         2.032,
                     *         4.064,
                     *         6.096
                     *       ],
                     *       "braced": "endBays",
                     *       "cover": {
                     *         "ageY": 0,
                     *         "film": "polyethylene",
                     *         "innerCover": true,
                     *         "rollWidthM": 8.5344,
                     *         "secondFilm": false,
                     *         "shadeFrac": 0,
                     *         "thicknessMm": 0.1524,
                     *         "wrapM": 0.457
                     *       },
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "eaveM": 1.9812,
                     *       "floor": "mulch",
                     *       "floorMoist": true,
                     *       "frameMassKg": 95,
                     *       "frameStockTag": "RB-001",
                     *       "frontFacesDeg": 90,
                     *       "hostWall": null,
                     *       "id": "019a1c3e-0000-7000-8000-000000000003",
                     *       "kind": "gableCanopy",
                     *       "lengthM": 6.096,
                     *       "measuredRaftersM": {
                     *         "leftM": 1.704,
                     *         "rightM": 1.702
                     *       },
                     *       "name": "Chicory plot: gable canopy",
                     *       "openings": [
                     *         {
                     *           "bottomM": 0,
                     *           "freeOpenFrac": 1,
                     *           "glazing": "none",
                     *           "heightM": 2.08,
                     *           "hinge": "right",
                     *           "kind": "door",
                     *           "largestPaneM2": 0,
                     *           "offsetM": 1.09,
                     *           "openingId": "D1",
                     *           "stockTag": "RB-003",
                     *           "wall": "front",
                     *           "widthM": 0.865
                     *         }
                     *       ],
                     *       "ownerMemberId": null,
                     *       "ridgeM": 2.7432000000000003,
                     *       "shared": false,
                     *       "tube": {
                     *         "outsideMm": 34.9,
                     *         "rust": "surface",
                     *         "shape": "round",
                     *         "wallMm": 1.5
                     *       },
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 1,
                     *       "waterStores": [
                     *         {
                     *           "colour": "dark",
                     *           "count": 3,
                     *           "stockTag": "RB-011",
                     *           "volumeL": 208.19764812
                     *         }
                     *       ],
                     *       "widthM": 3.048
                     *     }
                     */
                    "application/json": components["schemas"]["Structure"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getStructure: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show one structure */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "airLeaks": "ordinary",
                     *       "anchor": {
                     *         "ballastIsWater": false,
                     *         "ballastKg": "unknown",
                     *         "depthM": 0.762,
                     *         "diameterM": 0.15,
                     *         "installTorqueNm": "unknown",
                     *         "kind": "auger",
                     *         "perPostCount": 2,
                     *         "pulledToN": 5600
                     *       },
                     *       "archivedAt": null,
                     *       "asTyped": {
                     *         "/anchor/depthM": "30 in",
                     *         "/cover/rollWidthM": "28 ft",
                     *         "/cover/thicknessMm": "6 mil",
                     *         "/eaveM": "6' 6\"",
                     *         "/lengthM": "20 ft",
                     *         "/ridgeM": "9 ft",
                     *         "/waterStores/0/volumeL": "55 gal",
                     *         "/widthM": "10 ft"
                     *       },
                     *       "bedsM2": 9,
                     *       "bowsAtM": [
                     *         0,
                     *         2.032,
                     *         4.064,
                     *         6.096
                     *       ],
                     *       "braced": "endBays",
                     *       "cover": {
                     *         "ageY": 1,
                     *         "film": "polyethylene",
                     *         "innerCover": true,
                     *         "rollWidthM": 8.5344,
                     *         "secondFilm": false,
                     *         "shadeFrac": 0,
                     *         "thicknessMm": 0.1524,
                     *         "wrapM": 0.457
                     *       },
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "eaveM": 1.9812,
                     *       "floor": "mulch",
                     *       "floorMoist": true,
                     *       "frameMassKg": 95,
                     *       "frameStockTag": "RB-001",
                     *       "frontFacesDeg": 90,
                     *       "hostWall": null,
                     *       "id": "019a1c3e-0000-7000-8000-000000000003",
                     *       "kind": "gableCanopy",
                     *       "lengthM": 6.096,
                     *       "measuredRaftersM": {
                     *         "leftM": 1.704,
                     *         "rightM": 1.702
                     *       },
                     *       "name": "Chicory plot: gable canopy",
                     *       "openings": [
                     *         {
                     *           "bottomM": 0,
                     *           "freeOpenFrac": 1,
                     *           "glazing": "none",
                     *           "heightM": 2.08,
                     *           "hinge": "right",
                     *           "kind": "door",
                     *           "largestPaneM2": 0,
                     *           "offsetM": 1.09,
                     *           "openingId": "D1",
                     *           "stockTag": "RB-003",
                     *           "wall": "front",
                     *           "widthM": 0.865
                     *         }
                     *       ],
                     *       "ownerMemberId": null,
                     *       "ridgeM": 2.7432000000000003,
                     *       "shared": false,
                     *       "tube": {
                     *         "outsideMm": 34.9,
                     *         "rust": "surface",
                     *         "shape": "round",
                     *         "wallMm": 1.5
                     *       },
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 4,
                     *       "waterStores": [
                     *         {
                     *           "colour": "dark",
                     *           "count": 3,
                     *           "stockTag": "RB-011",
                     *           "volumeL": 208.19764812
                     *         }
                     *       ],
                     *       "widthM": 3.048
                     *     }
                     */
                    "application/json": components["schemas"]["Structure"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    updateStructure: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "cover": {
                 *         "ageY": 1
                 *       },
                 *       "lengthM": "20 ft"
                 *     }
                 */
                "application/merge-patch+json": components["schemas"]["StructurePatch"];
            };
        };
        responses: {
            /** @description Change a structure */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "airLeaks": "ordinary",
                     *       "anchor": {
                     *         "ballastIsWater": false,
                     *         "ballastKg": "unknown",
                     *         "depthM": 0.762,
                     *         "diameterM": 0.15,
                     *         "installTorqueNm": "unknown",
                     *         "kind": "auger",
                     *         "perPostCount": 2,
                     *         "pulledToN": 5600
                     *       },
                     *       "archivedAt": null,
                     *       "asTyped": {
                     *         "/anchor/depthM": "30 in",
                     *         "/cover/rollWidthM": "28 ft",
                     *         "/cover/thicknessMm": "6 mil",
                     *         "/eaveM": "6' 6\"",
                     *         "/lengthM": "20 ft",
                     *         "/ridgeM": "9 ft",
                     *         "/waterStores/0/volumeL": "55 gal",
                     *         "/widthM": "10 ft"
                     *       },
                     *       "bedsM2": 9,
                     *       "bowsAtM": [
                     *         0,
                     *         2.032,
                     *         4.064,
                     *         6.096
                     *       ],
                     *       "braced": "endBays",
                     *       "cover": {
                     *         "ageY": 1,
                     *         "film": "polyethylene",
                     *         "innerCover": true,
                     *         "rollWidthM": 8.5344,
                     *         "secondFilm": false,
                     *         "shadeFrac": 0,
                     *         "thicknessMm": 0.1524,
                     *         "wrapM": 0.457
                     *       },
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "eaveM": 1.9812,
                     *       "floor": "mulch",
                     *       "floorMoist": true,
                     *       "frameMassKg": 95,
                     *       "frameStockTag": "RB-001",
                     *       "frontFacesDeg": 90,
                     *       "hostWall": null,
                     *       "id": "019a1c3e-0000-7000-8000-000000000003",
                     *       "kind": "gableCanopy",
                     *       "lengthM": 6.096,
                     *       "measuredRaftersM": {
                     *         "leftM": 1.704,
                     *         "rightM": 1.702
                     *       },
                     *       "name": "Chicory plot: gable canopy",
                     *       "openings": [
                     *         {
                     *           "bottomM": 0,
                     *           "freeOpenFrac": 1,
                     *           "glazing": "none",
                     *           "heightM": 2.08,
                     *           "hinge": "right",
                     *           "kind": "door",
                     *           "largestPaneM2": 0,
                     *           "offsetM": 1.09,
                     *           "openingId": "D1",
                     *           "stockTag": "RB-003",
                     *           "wall": "front",
                     *           "widthM": 0.865
                     *         }
                     *       ],
                     *       "ownerMemberId": null,
                     *       "ridgeM": 2.7432000000000003,
                     *       "shared": false,
                     *       "tube": {
                     *         "outsideMm": 34.9,
                     *         "rust": "surface",
                     *         "shape": "round",
                     *         "wallMm": 1.5
                     *       },
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 2,
                     *       "waterStores": [
                     *         {
                     *           "colour": "dark",
                     *           "count": 3,
                     *           "stockTag": "RB-011",
                     *           "volumeL": 208.19764812
                     *         }
                     *       ],
                     *       "widthM": 3.048
                     *     }
                     */
                    "application/json": components["schemas"]["Structure"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    archiveStructure: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Put a structure away without losing it */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "airLeaks": "ordinary",
                     *       "anchor": {
                     *         "ballastIsWater": false,
                     *         "ballastKg": "unknown",
                     *         "depthM": 0.762,
                     *         "diameterM": 0.15,
                     *         "installTorqueNm": "unknown",
                     *         "kind": "auger",
                     *         "perPostCount": 2,
                     *         "pulledToN": 5600
                     *       },
                     *       "archivedAt": "2026-03-15T09:00:00.000Z",
                     *       "asTyped": {
                     *         "/anchor/depthM": "30 in",
                     *         "/cover/rollWidthM": "28 ft",
                     *         "/cover/thicknessMm": "6 mil",
                     *         "/eaveM": "6' 6\"",
                     *         "/lengthM": "20 ft",
                     *         "/ridgeM": "9 ft",
                     *         "/waterStores/0/volumeL": "55 gal",
                     *         "/widthM": "10 ft"
                     *       },
                     *       "bedsM2": 9,
                     *       "bowsAtM": [
                     *         0,
                     *         2.032,
                     *         4.064,
                     *         6.096
                     *       ],
                     *       "braced": "endBays",
                     *       "cover": {
                     *         "ageY": 1,
                     *         "film": "polyethylene",
                     *         "innerCover": true,
                     *         "rollWidthM": 8.5344,
                     *         "secondFilm": false,
                     *         "shadeFrac": 0,
                     *         "thicknessMm": 0.1524,
                     *         "wrapM": 0.457
                     *       },
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "eaveM": 1.9812,
                     *       "floor": "mulch",
                     *       "floorMoist": true,
                     *       "frameMassKg": 95,
                     *       "frameStockTag": "RB-001",
                     *       "frontFacesDeg": 90,
                     *       "hostWall": null,
                     *       "id": "019a1c3e-0000-7000-8000-000000000003",
                     *       "kind": "gableCanopy",
                     *       "lengthM": 6.096,
                     *       "measuredRaftersM": {
                     *         "leftM": 1.704,
                     *         "rightM": 1.702
                     *       },
                     *       "name": "Chicory plot: gable canopy",
                     *       "openings": [
                     *         {
                     *           "bottomM": 0,
                     *           "freeOpenFrac": 1,
                     *           "glazing": "none",
                     *           "heightM": 2.08,
                     *           "hinge": "right",
                     *           "kind": "door",
                     *           "largestPaneM2": 0,
                     *           "offsetM": 1.09,
                     *           "openingId": "D1",
                     *           "stockTag": "RB-003",
                     *           "wall": "front",
                     *           "widthM": 0.865
                     *         }
                     *       ],
                     *       "ownerMemberId": null,
                     *       "ridgeM": 2.7432000000000003,
                     *       "shared": false,
                     *       "tube": {
                     *         "outsideMm": 34.9,
                     *         "rust": "surface",
                     *         "shape": "round",
                     *         "wallMm": 1.5
                     *       },
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 3,
                     *       "waterStores": [
                     *         {
                     *           "colour": "dark",
                     *           "count": 3,
                     *           "stockTag": "RB-011",
                     *           "volumeL": 208.19764812
                     *         }
                     *       ],
                     *       "widthM": 3.048
                     *     }
                     */
                    "application/json": components["schemas"]["Structure"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    restoreStructure: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Bring an archived structure back */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "airLeaks": "ordinary",
                     *       "anchor": {
                     *         "ballastIsWater": false,
                     *         "ballastKg": "unknown",
                     *         "depthM": 0.762,
                     *         "diameterM": 0.15,
                     *         "installTorqueNm": "unknown",
                     *         "kind": "auger",
                     *         "perPostCount": 2,
                     *         "pulledToN": 5600
                     *       },
                     *       "archivedAt": null,
                     *       "asTyped": {
                     *         "/anchor/depthM": "30 in",
                     *         "/cover/rollWidthM": "28 ft",
                     *         "/cover/thicknessMm": "6 mil",
                     *         "/eaveM": "6' 6\"",
                     *         "/lengthM": "20 ft",
                     *         "/ridgeM": "9 ft",
                     *         "/waterStores/0/volumeL": "55 gal",
                     *         "/widthM": "10 ft"
                     *       },
                     *       "bedsM2": 9,
                     *       "bowsAtM": [
                     *         0,
                     *         2.032,
                     *         4.064,
                     *         6.096
                     *       ],
                     *       "braced": "endBays",
                     *       "cover": {
                     *         "ageY": 1,
                     *         "film": "polyethylene",
                     *         "innerCover": true,
                     *         "rollWidthM": 8.5344,
                     *         "secondFilm": false,
                     *         "shadeFrac": 0,
                     *         "thicknessMm": 0.1524,
                     *         "wrapM": 0.457
                     *       },
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "eaveM": 1.9812,
                     *       "floor": "mulch",
                     *       "floorMoist": true,
                     *       "frameMassKg": 95,
                     *       "frameStockTag": "RB-001",
                     *       "frontFacesDeg": 90,
                     *       "hostWall": null,
                     *       "id": "019a1c3e-0000-7000-8000-000000000003",
                     *       "kind": "gableCanopy",
                     *       "lengthM": 6.096,
                     *       "measuredRaftersM": {
                     *         "leftM": 1.704,
                     *         "rightM": 1.702
                     *       },
                     *       "name": "Chicory plot: gable canopy",
                     *       "openings": [
                     *         {
                     *           "bottomM": 0,
                     *           "freeOpenFrac": 1,
                     *           "glazing": "none",
                     *           "heightM": 2.08,
                     *           "hinge": "right",
                     *           "kind": "door",
                     *           "largestPaneM2": 0,
                     *           "offsetM": 1.09,
                     *           "openingId": "D1",
                     *           "stockTag": "RB-003",
                     *           "wall": "front",
                     *           "widthM": 0.865
                     *         }
                     *       ],
                     *       "ownerMemberId": null,
                     *       "ridgeM": 2.7432000000000003,
                     *       "shared": false,
                     *       "tube": {
                     *         "outsideMm": 34.9,
                     *         "rust": "surface",
                     *         "shape": "round",
                     *         "wallMm": 1.5
                     *       },
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "version": 4,
                     *       "waterStores": [
                     *         {
                     *           "colour": "dark",
                     *           "count": 3,
                     *           "stockTag": "RB-011",
                     *           "volumeL": 208.19764812
                     *         }
                     *       ],
                     *       "widthM": 3.048
                     *     }
                     */
                    "application/json": components["schemas"]["Structure"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listWebhooks: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List webhooks, oldest first */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "items": [
                     *         {
                     *           "createdAt": "2026-03-15T09:00:00.000Z",
                     *           "description": "board at the gate",
                     *           "eventTypes": [
                     *             "plan.ready",
                     *             "plan.failed"
                     *           ],
                     *           "failingSince": null,
                     *           "formerSecretUntil": "2026-03-15T09:00:00.000Z",
                     *           "id": "019a1c3e-0000-7000-8000-000000000100",
                     *           "state": "active",
                     *           "updatedAt": "2026-03-15T09:00:00.000Z",
                     *           "url": "https://notices.example/garden",
                     *           "version": 3
                     *         }
                     *       ],
                     *       "next": null
                     *     }
                     */
                    "application/json": {
                        items: components["schemas"]["Webhook"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createWebhook: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "description": "board at the gate",
                 *       "eventTypes": [
                 *         "plan.ready",
                 *         "plan.stale",
                 *         "document.ready"
                 *       ],
                 *       "url": "https://notices.example/garden"
                 *     }
                 */
                "application/json": components["schemas"]["WebhookRequest"];
            };
        };
        responses: {
            /** @description Have events sent to an address; shows its secret once */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "description": "board at the gate",
                     *       "eventTypes": [
                     *         "plan.ready",
                     *         "plan.stale",
                     *         "document.ready"
                     *       ],
                     *       "failingSince": null,
                     *       "formerSecretUntil": null,
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "secret": "whsec_shown-once-and-kept-by-you",
                     *       "state": "active",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "url": "https://notices.example/garden",
                     *       "version": 1
                     *     }
                     */
                    "application/json": components["schemas"]["NewWebhook"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getWebhook: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show one webhook */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "description": "board at the gate",
                     *       "eventTypes": [
                     *         "plan.ready",
                     *         "plan.failed"
                     *       ],
                     *       "failingSince": null,
                     *       "formerSecretUntil": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "state": "active",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "url": "https://notices.example/garden",
                     *       "version": 3
                     *     }
                     */
                    "application/json": components["schemas"]["Webhook"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    removeWebhook: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done */
            204: {
                headers: {
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    updateWebhook: {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description ETag of the version that is changed
                 * @example "1"
                 */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "eventTypes": [
                 *         "plan.ready",
                 *         "plan.failed"
                 *       ]
                 *     }
                 */
                "application/merge-patch+json": components["schemas"]["WebhookPatch"];
            };
        };
        responses: {
            /** @description Change a webhook, switch it off or on */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "description": "board at the gate",
                     *       "eventTypes": [
                     *         "plan.ready",
                     *         "plan.failed"
                     *       ],
                     *       "failingSince": null,
                     *       "formerSecretUntil": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "state": "active",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "url": "https://notices.example/garden",
                     *       "version": 3
                     *     }
                     */
                    "application/json": components["schemas"]["Webhook"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    rotateWebhookSecret: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Give a webhook a new secret; for 24 hours the former one signs too */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "description": "board at the gate",
                     *       "eventTypes": [
                     *         "plan.ready",
                     *         "plan.stale",
                     *         "document.ready"
                     *       ],
                     *       "failingSince": null,
                     *       "formerSecretUntil": "2026-03-15T09:00:00.000Z",
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "secret": "whsec_shown-once-and-kept-by-you",
                     *       "state": "active",
                     *       "updatedAt": "2026-03-15T09:00:00.000Z",
                     *       "url": "https://notices.example/garden",
                     *       "version": 2
                     *     }
                     */
                    "application/json": components["schemas"]["NewWebhook"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listDeliveries: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
                /** @example 20 */
                limit?: components["parameters"]["limitQuery"];
                /** @description Only deliveries in this state */
                state?: components["parameters"]["stateQuery2"];
            };
            header?: never;
            path: {
                webhookId: components["parameters"]["webhookIdPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description List what was sent and what came of it, newest first */
            200: {
                headers: {
                    Link: components["headers"]["Link"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["WebhookDelivery"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getDelivery: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: components["parameters"]["idPath"];
                webhookId: components["parameters"]["webhookIdPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Show one delivery and its tries */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookDelivery"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    redeliver: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path: {
                id: components["parameters"]["idPath"];
                webhookId: components["parameters"]["webhookIdPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Send an event once more, under the same id */
            202: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookDelivery"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    testWebhook: {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Repeat with the same key and body to get the same answer, for 24 hours
                 * @example 7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11
                 */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path: {
                webhookId: components["parameters"]["webhookIdPath"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Send the event webhook.test to this address alone */
            202: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    RateLimit: components["headers"]["RateLimit"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    [name: string]: unknown;
                };
                content: {
                    /**
                     * @example {
                     *       "attempts": [],
                     *       "createdAt": "2026-03-15T09:00:00.000Z",
                     *       "eventId": "019a1c3e-0000-7000-8000-000000000102",
                     *       "finishedAt": null,
                     *       "id": "019a1c3e-0000-7000-8000-000000000100",
                     *       "nextAttemptAt": "2026-03-15T09:00:00.000Z",
                     *       "object": {
                     *         "id": "019a1c3e-0000-7000-8000-000000000101",
                     *         "type": "webhook",
                     *         "version": 1
                     *       },
                     *       "state": "waiting",
                     *       "type": "webhook.test",
                     *       "webhookId": "019a1c3e-0000-7000-8000-000000000101"
                     *     }
                     */
                    "application/json": components["schemas"]["WebhookDelivery"];
                };
            };
            400: components["responses"]["Problem4002"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem4062"];
            409: components["responses"]["Problem409"];
            422: components["responses"]["Problem422"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
}
