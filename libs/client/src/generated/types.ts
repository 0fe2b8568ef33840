// Written from docs/api/openapi.json by tools/client-types/generate.mjs. Do not edit: change the API and write it again.

export interface paths {
    "/livez": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Whether the process runs */
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
        /** Whether requests can be answered: database, migrations, queue */
        get: operations["readyz"];
        put?: never;
        post?: never;
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
        /** List the builds of the garden */
        get: operations["listBuilds"];
        put?: never;
        /** Make a build */
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
        /** List what is held for a build */
        get: operations["listClaims"];
        put?: never;
        /** Hold a thing of the pile for a build */
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
        /** Show one claim that is not released */
        get: operations["getClaim"];
        put?: never;
        post?: never;
        /** Give a held thing back to the pile */
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
        /** Show one build */
        get: operations["getBuild"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Change a build */
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
        /** Put a build away without losing it */
        post: operations["archiveBuild"];
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
        /** Bring an archived build back */
        post: operations["restoreBuild"];
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
        /** Find the stations nearest to a place */
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
        /** Show one station's climate */
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
        /** List documents, oldest first */
        get: operations["listDocuments"];
        put?: never;
        /** Have a finished plan set for printing */
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
        /** Show the state of one document */
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
        /** Fetch the PDF */
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
        /** List the rates of the garden */
        get: operations["listExchangeRates"];
        put?: never;
        /** Note a rate between two currencies */
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
        /** Show one rate */
        get: operations["getExchangeRate"];
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
        /** Make a garden with its first key, which is shown this once */
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
        /** Show the garden of this key */
        get: operations["getGarden"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Change the garden of this key */
        patch: operations["updateGarden"];
        trace?: never;
    };
    "/v1/keys": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** List the keys of the garden, without the keys themselves */
        get: operations["listKeys"];
        put?: never;
        /** Make a key, which is shown this once */
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
        /** Show one key, without the key itself */
        get: operations["getKey"];
        put?: never;
        post?: never;
        /** Take a key back at once */
        delete: operations["revokeKey"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/openapi.json": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** This description, as OpenAPI 3.1 */
        get: operations["getOpenApi"];
        put?: never;
        post?: never;
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
        /** List revisions, oldest first */
        get: operations["listPlans"];
        put?: never;
        /** Ask for a new revision of the plan of a build */
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
        /** Show one revision: its state, and what has gathered beside it */
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
        /** List what was really built */
        get: operations["listAsBuilt"];
        put?: never;
        /** Note what was really built */
        post: operations["createAsBuilt"];
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
        /** Show what a revision was computed from */
        get: operations["getPlanInputs"];
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
        /** Show the finished plan */
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
        /** Say that a plan was looked at */
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
        /** List the prices of the garden */
        get: operations["listPrices"];
        put?: never;
        /** Make a price */
        post: operations["createPrice"];
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
        /** Show one price */
        get: operations["getPrice"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Change a price */
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
        /** Put a price away without losing it */
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
        /** Bring an archived price back */
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
        /** Every problem this API can answer with */
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
        /** What one problem means and what can be done about it */
        get: operations["getProblem"];
        put?: never;
        post?: never;
        delete?: never;
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
        /** List the sites of the garden */
        get: operations["listSites"];
        put?: never;
        /** Make a site */
        post: operations["createSite"];
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
        /** Show one site */
        get: operations["getSite"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Change a site */
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
        /** Put a site away without losing it */
        post: operations["archiveSite"];
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
        /** Bring an archived site back */
        post: operations["restoreSite"];
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
        /** List what lies on the pile */
        get: operations["listStock"];
        put?: never;
        /** Take one thing into the pile */
        post: operations["createStockItem"];
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
        /** Show one thing */
        get: operations["getStockItem"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Change a thing */
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
        /** Put a thing away without losing it */
        post: operations["archiveStockItem"];
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
        /** Bring an archived thing back */
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
        /** Take up to 200 things into the pile together */
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
        /** List the structures of the garden */
        get: operations["listStructures"];
        put?: never;
        /** Make a structure */
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
        /** Show one structure */
        get: operations["getStructure"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Change a structure */
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
        /** Put a structure away without losing it */
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
        /** Bring an archived structure back */
        post: operations["restoreStructure"];
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
        AnchorRequest: {
            ballastIsWater: boolean;
            ballastKg: number | string | "unknown";
            depthM: number | string | "unknown";
            diameterM: number | string | "unknown";
            installTorqueNm: number | string | "unknown";
            /** @enum {string} */
            kind: "none" | "drivenPipe" | "auger" | "concretePier" | "ballast" | "groundPost";
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
                        minor: number;
                    };
                }[];
            };
            /** Format: date-time */
            createdAt: string;
            crew: {
                /** @enum {string} */
                experience: "novice" | "mixed" | "skilled";
                people: number;
                startOn: string | null;
            };
            /** Format: uuid */
            id: string;
            name: string;
            /** Format: uuid */
            siteId: string;
            /** Format: uuid */
            structureId: string;
            /** Format: date-time */
            updatedAt: string;
            variantLabel: string | null;
            variantOf: string | null;
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
        /** @description Merge patch (RFC 7396): only the fields to change; the result is checked as a whole. */
        BuildPatch: {
            budget?: components["schemas"]["BudgetRequest"];
            crew?: components["schemas"]["CrewRequest"];
            name?: string;
            /** Format: uuid */
            siteId?: string;
            /** Format: uuid */
            structureId?: string;
            /** @description How this variant differs, in a few words */
            variantLabel?: string | null;
            /** @description The build that this one is a variant of */
            variantOf?: string | null;
            wishes?: components["schemas"]["WishesRequest"];
        };
        /** @description A member’s build: a site, a structure, wishes, a crew and a budget. Variants of a build stand side by side. */
        BuildRequest: {
            budget: components["schemas"]["BudgetRequest"];
            crew: components["schemas"]["CrewRequest"];
            name: string;
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
        Claim: {
            /** Format: uuid */
            buildId: string;
            count: number;
            /** Format: date-time */
            createdAt: string;
            /** Format: uuid */
            id: string;
            /** Format: uuid */
            stockId: string;
            tag: string;
        };
        /** @description A refusal that also tells who holds the thing and what could be taken instead. Other conflicts have none of these members. */
        ClaimProblem: {
            /** @description Free things of the same kind, nearest in size first */
            alternatives?: {
                freeCount: number;
                /** @enum {string} */
                grade: "A" | "B" | "C" | "X";
                heightMm: number | null;
                lengthMm: number | null;
                tag: string;
                widthMm: number | null;
            }[];
            /** @description How many pieces of it nobody holds */
            freeCount?: number;
            /** @description The builds that hold it, oldest claim first */
            holders?: {
                /** Format: uuid */
                buildId: string;
                count: number;
                /** Format: date-time */
                since: string;
            }[];
        } & components["schemas"]["Problem"];
        /** @description Holds a thing from the pile for a build. */
        ClaimRequest: {
            /** @description How many pieces of a lot; all that are free when left out */
            count?: number | null;
            tag: string;
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
        CrewRequest: {
            /** @enum {string} */
            experience: "novice" | "mixed" | "skilled";
            people: number;
            startOn: string | null;
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
            /** Format: date-time */
            createdAt: string;
            currency: string;
            /** Format: uuid */
            id: string;
            invented: boolean;
            locale: string;
            name: string;
            /** @enum {string} */
            unitSystem: "metric" | "us";
            /** Format: date-time */
            updatedAt: string;
            version: number;
        };
        /** @description Merge patch (RFC 7396): only the fields to change; the result is checked as a whole. */
        GardenPatch: {
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
            /** @enum {string} */
            unitSystem?: "metric" | "us";
        };
        GardenRequest: {
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
            /** @enum {string} */
            unitSystem: "metric" | "us";
        };
        HostWallRequest: {
            heightM: number | string;
            /** @enum {string} */
            material: "masonry" | "timber" | "unknown";
            /** @enum {string} */
            roofShedsOntoIt: "yes" | "no" | "unknown";
        };
        InKindRequest: {
            label: string;
            value: components["schemas"]["MoneyRequest"];
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
            scopes: ("garden:read" | "garden:admin" | "sites:read" | "sites:write" | "structures:read" | "structures:write" | "stock:read" | "stock:write" | "prices:read" | "prices:write" | "builds:read" | "builds:write" | "plans:read" | "plans:write" | "plans:review" | "documents:read" | "documents:write")[];
        };
        KeyRequest: {
            /** @description The key ends with the beginning of this day (UTC) */
            expiresOn?: string | null;
            /** @description Who or what uses the key; it is printed on plans made with it */
            name: string;
            scopes: ("garden:read" | "garden:admin" | "sites:read" | "sites:write" | "structures:read" | "structures:write" | "stock:read" | "stock:write" | "prices:read" | "prices:write" | "builds:read" | "builds:write" | "plans:read" | "plans:write" | "plans:review" | "documents:read" | "documents:write")[];
        };
        MeasuredRaftersRequest: {
            leftM: number | string;
            rightM: number | string;
        };
        /** @description Whole minor units (cents, pence) of one ISO 4217 currency. */
        MoneyRequest: {
            /**
             * @description ISO 4217 code
             * @example EUR
             */
            currency: string;
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
            key: components["schemas"]["NewKey"];
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
            scopes: ("garden:read" | "garden:admin" | "sites:read" | "sites:write" | "structures:read" | "structures:write" | "stock:read" | "stock:write" | "prices:read" | "prices:write" | "builds:read" | "builds:write" | "plans:read" | "plans:write" | "plans:review" | "documents:read" | "documents:write")[];
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
        Plan: {
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
                /** @enum {string} */
                kind: "means" | "normals";
                /** @description January to December */
                months: {
                    absoluteMinMeanC: number | null;
                    precipitationMm: number | null;
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
            revision: number;
            /** @constant */
            schemaVersion: 1;
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
                cashHighMinor: number;
                cashLowMinor: number;
                cashMinor: number;
                consumablesFrac: number;
                contingencyFrac: number;
                currency: string;
                inKindMinor: number;
                lines: {
                    cashMinor: number;
                    /** @enum {string} */
                    group: "frame" | "film" | "timber" | "openings" | "anchors" | "fixings" | "ground" | "water" | "sundries" | "consumables" | "contingency" | "inKind";
                    inKindMinor: number;
                    reclaimedMinor: number;
                }[];
                oldestPriceOn: string | null;
                otherCurrencies: {
                    currency: string;
                    minor: number;
                }[];
                overCapMinor: number;
                reclaimedMinor: number;
                unpricedCount: number;
                /** @enum {string} */
                verdict: "withinCap" | "overCap" | "noCap" | "notAssessed";
            };
            climate: {
                chartStartMonth: number;
                clearDay: {
                    airC: number[];
                    beamNormalWPerM2: number[];
                    dayOfYear: number;
                    dewPointC: number;
                    diffuseWPerM2: number[];
                    globalWPerM2: number[];
                    month: number;
                } | null;
                clearDays: {
                    airC: number[];
                    beamNormalWPerM2: number[];
                    dayOfYear: number;
                    dewPointC: number;
                    diffuseWPerM2: number[];
                    globalWPerM2: number[];
                    month: number;
                }[];
                coldestMonth: number | null;
                coldNights: {
                    airC: number[];
                    beamNormalWPerM2: number[];
                    dayOfYear: number;
                    dewPointC: number;
                    diffuseWPerM2: number[];
                    globalWPerM2: number[];
                    month: number;
                }[];
                designNight: {
                    /** @enum {string} */
                    basis: "annualExtremeMinimum" | "monthlyAbsoluteMinimum" | "monthlyMeanLessSpread";
                    day: {
                        airC: number[];
                        beamNormalWPerM2: number[];
                        dayOfYear: number;
                        dewPointC: number;
                        diffuseWPerM2: number[];
                        globalWPerM2: number[];
                        month: number;
                    };
                    doubtK: number;
                    lowC: number;
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
                    dewPointC: number | null;
                    hasRecord: boolean;
                    month: number;
                    /** @enum {string} */
                    sunBasis: "sunshineHours" | "temperatureRange" | "none";
                    sunMJPerM2: number | null;
                    sunnyDayMaxC: number | null;
                    tMaxC: number | null;
                    tMinC: number | null;
                }[];
                monthsWithRecordCount: number;
                stationDistanceM: number;
                /** @enum {string} */
                stationFit: "near" | "far" | "tooFar";
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
                boughtBoards: number;
                /** @description no plan can use fewer bought boards than this */
                lowerBoundBoards: number;
                /** @constant */
                method: "firstFitDecreasing";
                parts: {
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
                screwsCount: number;
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
                    seams: number;
                    sheetId: string;
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
            revision: number;
            risks: {
                code: string;
                /** @enum {string} */
                room: "geometry" | "climate" | "thermal" | "wind" | "snow" | "anchorage" | "fastening" | "cutting" | "takeoff" | "budget" | "schedule" | "safety";
            }[];
            schedule: {
                crewBest: number;
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
                    stageNumber: number;
                    tasks: ("permission" | "intake" | "haulFrame" | "cleanFrame" | "denail" | "stakeOut" | "drainage" | "sill" | "anchors" | "erect" | "brace" | "nailers" | "endFrames" | "doors" | "windows" | "smooth" | "coverEnds" | "mainCover" | "battens" | "seal" | "water" | "floor" | "finish" | "hosting")[];
                }[];
                tasks: {
                    after: ("permission" | "intake" | "haulFrame" | "cleanFrame" | "denail" | "stakeOut" | "drainage" | "sill" | "anchors" | "erect" | "brace" | "nailers" | "endFrames" | "doors" | "windows" | "smooth" | "coverEnds" | "mainCover" | "battens" | "seal" | "water" | "floor" | "finish" | "hosting")[];
                    clockH: number;
                    crewBest: number;
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
                    high: number;
                    likely: number;
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
                    packs: number;
                    priceId: string | null;
                    priceReadOn: string | null;
                    priceStale: boolean;
                    reclaimed: {
                        amount: number;
                        tag: string;
                        worth: {
                            currency: string;
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
                    month: number;
                    openedHighC: {
                        p10: number;
                        p50: number;
                        p90: number;
                    } | null;
                    outsideHighC: number | null;
                    outsideLowC: number | null;
                }[];
                nodes: number;
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
            version: number;
        };
        /** @description Merge patch (RFC 7396): only the fields to change; the result is checked as a whole. */
        PricePatch: {
            /** @enum {string} */
            material?: "frame.tubeSet" | "film.greenhouse" | "film.utility" | "film.innerCover" | "batten.19x38" | "board.38x89" | "board.38x140" | "sill.89x140" | "screw.batten" | "screw.tube" | "screw.framing" | "strap.tube" | "anchor.auger" | "anchor.pipe" | "anchor.concreteBag" | "anchor.sandbag" | "brace.cable" | "tape.contact" | "paint.white" | "door" | "door.hardware" | "window" | "window.hardware" | "vent.panel" | "seal.strip" | "mesh.rodent" | "gravel" | "fabric.ground" | "barrel.water" | "rope" | "thermometer.minMax" | "shade.cloth" | "consumables" | "contingency";
            /** @description How much one pack holds, in `unit` */
            packAmount?: number;
            packPrice?: components["schemas"]["MoneyRequest"];
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
        /** @description A refusal by RFC 9457. Its type leads to what can be done about it. */
        Problem: {
            detail: string;
            errors?: components["schemas"]["FieldFault"][];
            remedy: string;
            requestId?: string;
            status: number;
            title: string;
            /** @enum {string} */
            type: "/v1/problems/malformed-json" | "/v1/problems/malformed-request" | "/v1/problems/validation-failed" | "/v1/problems/malformed-id" | "/v1/problems/cursor-invalid" | "/v1/problems/idempotency-key-invalid" | "/v1/problems/unauthenticated" | "/v1/problems/scope-missing" | "/v1/problems/operator-only" | "/v1/problems/route-unknown" | "/v1/problems/not-found" | "/v1/problems/method-not-allowed" | "/v1/problems/not-acceptable" | "/v1/problems/body-too-large" | "/v1/problems/media-type-unsupported" | "/v1/problems/too-many-requests" | "/v1/problems/if-match-required" | "/v1/problems/version-stale" | "/v1/problems/idempotency-conflict" | "/v1/problems/idempotency-running" | "/v1/problems/conflict" | "/v1/problems/name-taken" | "/v1/problems/archived" | "/v1/problems/in-use" | "/v1/problems/inputs-contradict" | "/v1/problems/stock-claimed" | "/v1/problems/stock-short" | "/v1/problems/station-far" | "/v1/problems/plan-not-ready" | "/v1/problems/document-not-ready" | "/v1/problems/plan-failed" | "/v1/problems/own-review" | "/v1/problems/review-blocked" | "/v1/problems/quota-exceeded" | "/v1/problems/document-refused" | "/v1/problems/report-refused" | "/v1/problems/report-unavailable" | "/v1/problems/timed-out" | "/v1/problems/unavailable" | "/v1/problems/internal";
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
        Site: {
            archivedAt: string | null;
            /** @description Texts as they were typed where a number is kept, by JSON Pointer */
            asTyped: {
                [key: string]: string;
            };
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
            /** @enum {string} */
            permanentAnchors: "allowed" | "forbidden" | "unknown";
            /** @description share of direct sun lost to neighbours and trees over the year */
            shadedFrac: number;
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
            /** @enum {string} */
            permanentAnchors?: "allowed" | "forbidden" | "unknown";
            /** @description Share of direct sun lost to neighbours and trees over the year */
            shadedFrac?: number | string;
            snow?: components["schemas"]["SnowBasisRequest"] | "unknown";
            soilClass?: ("1" | "2" | "3" | "4A" | "4B" | "5") | "unknown";
            /** @description Climate station to use in place of the nearest */
            stationId?: string | null;
            stormWindFromDeg?: number | string | "unknown";
            /** @description IANA zone; found from the coordinates when left out */
            timeZone?: string | null;
            wind?: components["schemas"]["WindBasisRequest"] | "unknown";
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
            /** @enum {string} */
            permanentAnchors: "allowed" | "forbidden" | "unknown";
            /** @description Share of direct sun lost to neighbours and trees over the year */
            shadedFrac: number | string;
            snow: components["schemas"]["SnowBasisRequest"] | "unknown";
            soilClass: ("1" | "2" | "3" | "4A" | "4B" | "5") | "unknown";
            /** @description Climate station to use in place of the nearest */
            stationId?: string | null;
            stormWindFromDeg: number | string | "unknown";
            /** @description IANA zone; found from the coordinates when left out */
            timeZone?: string | null;
            wind: components["schemas"]["WindBasisRequest"] | "unknown";
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
        Station: {
            annualExtremeMinC: number | null;
            annualExtremeMinYearsCount: number | null;
            country: string;
            credit: string;
            /** @enum {string} */
            kind: "means" | "normals";
            /** @description January to December */
            months: {
                absoluteMinMeanC: number | null;
                precipitationMm: number | null;
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
            count: number;
            /** Format: date-time */
            createdAt: string;
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
                minor: number;
            } | null;
            tag: string;
            thicknessMm: number | null;
            /** Format: date-time */
            updatedAt: string;
            usableLengthMm: number | null;
            version: number;
            volumeL: number | null;
            widthMm: number | null;
        };
        /** @description Merge patch (RFC 7396): only the fields to change; the result is checked as a whole. */
        StockItemPatch: {
            ageY?: number | string | "unknown" | null;
            count?: number;
            /** @enum {string} */
            grade?: "A" | "B" | "C" | "X";
            hazards?: ("leadPaintAssumed" | "leadPaintFound" | "treatedWoodOld" | "treatedWoodCopper" | "creosote" | "glassUnknown" | "glassAnnealed" | "barrelContentsUnknown" | "mould" | "asbestosPuttyPossible" | "nails" | "pvcContact")[];
            heightMm?: number | string | null;
            /** @enum {string} */
            kind?: "door" | "window" | "barrel" | "frame" | "tube" | "board" | "batten" | "sheet" | "film" | "anchor" | "hardware" | "other";
            lengthMm?: number | string | null;
            /** @enum {string} */
            material?: "frame.tubeSet" | "film.greenhouse" | "film.utility" | "film.innerCover" | "batten.19x38" | "board.38x89" | "board.38x140" | "sill.89x140" | "screw.batten" | "screw.tube" | "screw.framing" | "strap.tube" | "anchor.auger" | "anchor.pipe" | "anchor.concreteBag" | "anchor.sandbag" | "brace.cable" | "tape.contact" | "paint.white" | "door" | "door.hardware" | "window" | "window.hardware" | "vent.panel" | "seal.strip" | "mesh.rodent" | "gravel" | "fabric.ground" | "barrel.water" | "rope" | "thermometer.minMax" | "shade.cloth" | "consumables" | "contingency";
            replacement?: components["schemas"]["MoneyRequest"] | null;
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
            count: number;
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
            ridgeM: number;
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
            version: number;
            waterStores: {
                /** @enum {string} */
                colour: "dark" | "mid" | "light";
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
            anchor?: components["schemas"]["AnchorRequest"];
            bedsM2?: number | string;
            /** @description Stations of the bows or posts along the length */
            bowsAtM?: (number | string)[];
            /** @enum {string} */
            braced?: "none" | "endBays" | "everyBay" | "unknown";
            cover?: components["schemas"]["CoverRequest"];
            eaveM?: number | string;
            /** @enum {string} */
            floor?: "soil" | "mulch" | "gravel" | "brick" | "decking";
            floorMoist?: boolean;
            frameMassKg?: number | string | "unknown";
            frameStockTag?: string | null;
            /** @description True bearing that the front end wall faces, clockwise from north */
            frontFacesDeg?: number | string;
            hostWall?: components["schemas"]["HostWallRequest"] | null;
            /** @enum {string} */
            kind?: "gableCanopy" | "roundArch" | "leanTo";
            lengthM?: number | string;
            measuredRaftersM?: components["schemas"]["MeasuredRaftersRequest"] | null;
            /** @description What people call it; a label is made when it is left out */
            name?: string | null;
            openings?: components["schemas"]["OpeningRequest"][];
            ridgeM?: number | string;
            tube?: components["schemas"]["TubeRequest"];
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
            tube: components["schemas"]["TubeRequest"];
            waterStores: components["schemas"]["WaterStoreRequest"][];
            widthM: number | string;
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
            count: number;
            stockTag: string | null;
            volumeL: number | string;
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
        /** @description No valid key */
        Problem401: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description The key may not do that */
        Problem403: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Not found in this garden */
        Problem404: {
            headers: {
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
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Changed meanwhile */
        Problem412: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Too large */
        Problem413: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Media type not taken */
        Problem415: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Understood, and not possible */
        Problem422: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description If-Match is required */
        Problem428: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Too many at once */
        Problem429: {
            headers: {
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
        /** @description from "next" of an earlier page */
        cursorQuery: string;
        /** @description Height of the place, to tell how much higher or lower each station lies */
        elevationMQuery: number;
        /** @description Only things of which some are free (true) or none is (false) */
        freeQuery: boolean;
        /** @description Only things of this grade */
        gradeQuery: "A" | "B" | "C" | "X";
        /** @description Repeat with the same key and body to get the same answer, for 24 hours */
        IdempotencyKey: string;
        idPath: string;
        /** @description ETag of the version that is changed */
        IfMatch: string;
        keyPath: "malformed-json" | "malformed-request" | "validation-failed" | "malformed-id" | "cursor-invalid" | "idempotency-key-invalid" | "unauthenticated" | "scope-missing" | "operator-only" | "route-unknown" | "not-found" | "method-not-allowed" | "not-acceptable" | "body-too-large" | "media-type-unsupported" | "too-many-requests" | "if-match-required" | "version-stale" | "idempotency-conflict" | "idempotency-running" | "conflict" | "name-taken" | "archived" | "in-use" | "inputs-contradict" | "stock-claimed" | "stock-short" | "station-far" | "plan-not-ready" | "document-not-ready" | "plan-failed" | "own-review" | "review-blocked" | "quota-exceeded" | "document-refused" | "report-refused" | "report-unavailable" | "timed-out" | "unavailable" | "internal";
        /** @description Only things of this kind */
        kindQuery: "door" | "window" | "barrel" | "frame" | "tube" | "board" | "batten" | "sheet" | "film" | "anchor" | "hardware" | "other";
        limitQuery: number;
        limitQuery2: number;
        /** @description Only prices of this material */
        materialQuery: "frame.tubeSet" | "film.greenhouse" | "film.utility" | "film.innerCover" | "batten.19x38" | "board.38x89" | "board.38x140" | "sill.89x140" | "screw.batten" | "screw.tube" | "screw.framing" | "strap.tube" | "anchor.auger" | "anchor.pipe" | "anchor.concreteBag" | "anchor.sandbag" | "brace.cable" | "tape.contact" | "paint.white" | "door" | "door.hardware" | "window" | "window.hardware" | "vent.panel" | "seal.strip" | "mesh.rodent" | "gravel" | "fabric.ground" | "barrel.water" | "rope" | "thermometer.minMax" | "shade.cloth" | "consumables" | "contingency";
        /** @description Latitude and longitude in degrees, north and east positive */
        nearQuery: string;
        /** @description Only documents of this plan */
        planIdQuery: string;
        /** @description wait=10 holds the answer back until the job is done, at most so many seconds */
        Prefer: string;
        /** @description Only builds at this site */
        siteIdQuery: string;
        /** @description Only variants of this build */
        variantOfQuery: string;
    };
    requestBodies: never;
    headers: {
        /** @description Strong tag of this version */
        ETag: string;
        /** @description true when this is an earlier answer */
        IdempotencyReplayed: string;
        /** @description Links to the first and next page (RFC 8288) */
        Link: string;
        /** @description Address of what was made */
        Location: string;
        /** @description The wait that was honoured */
        PreferenceApplied: string;
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
                    "application/json": {
                        /** @enum {string} */
                        process: "ok" | "fail";
                    };
                };
            };
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
                    "application/json": {
                        /** @enum {string} */
                        database: "ok" | "fail";
                        /** @enum {string} */
                        migrations: "ok" | "fail";
                        /** @enum {string} */
                        queue: "ok" | "fail";
                        /** @enum {string} */
                        serving: "ok" | "fail";
                    };
                };
            };
            406: components["responses"]["Problem406"];
            500: components["responses"]["Problem500"];
            /** @description Not ready; names what fails */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @enum {string} */
                        database: "ok" | "fail";
                        /** @enum {string} */
                        migrations: "ok" | "fail";
                        /** @enum {string} */
                        queue: "ok" | "fail";
                        /** @enum {string} */
                        serving: "ok" | "fail";
                    };
                };
            };
        };
    };
    listBuilds: {
        parameters: {
            query?: {
                /** @description Show archived ones too */
                archived?: components["parameters"]["archivedQuery"];
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["Build"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createBuild: {
        parameters: {
            query?: never;
            header?: {
                /** @description Repeat with the same key and body to get the same answer, for 24 hours */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Build"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["Claim"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createClaim: {
        parameters: {
            query?: never;
            header?: {
                /** @description Repeat with the same key and body to get the same answer, for 24 hours */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path: {
                buildId: components["parameters"]["buildIdPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Claim"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Claim"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Build"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    updateBuild: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that is changed */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/merge-patch+json": components["schemas"]["BuildPatch"];
            };
        };
        responses: {
            /** @description Change a build */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Build"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                /** @description ETag of the version that is changed */
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Build"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    restoreBuild: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that is changed */
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Build"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listClimateStations: {
        parameters: {
            query: {
                /** @description Height of the place, to tell how much higher or lower each station lies */
                elevationM?: components["parameters"]["elevationMQuery"];
                limit?: components["parameters"]["limitQuery2"];
                /** @description Latitude and longitude in degrees, north and east positive */
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
                    ETag: components["headers"]["ETag"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NearStations"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Station"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["PlanDocument"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createDocument: {
        parameters: {
            query?: never;
            header?: {
                /** @description Repeat with the same key and body to get the same answer, for 24 hours */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description wait=10 holds the answer back until the job is done, at most so many seconds */
                Prefer?: components["parameters"]["Prefer"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PlanDocumentRequest"];
            };
        };
        responses: {
            /** @description Have a finished plan set for printing */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    "Preference-Applied": components["headers"]["PreferenceApplied"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanDocument"];
                };
            };
            /** @description Have a finished plan set for printing */
            202: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    "Preference-Applied": components["headers"]["PreferenceApplied"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanDocument"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanDocument"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": Blob;
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["ExchangeRate"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createExchangeRate: {
        parameters: {
            query?: never;
            header?: {
                /** @description Repeat with the same key and body to get the same answer, for 24 hours */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ExchangeRate"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ExchangeRate"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createGarden: {
        parameters: {
            query?: never;
            header?: {
                /** @description Repeat with the same key and body to get the same answer, for 24 hours */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["GardenRequest"];
            };
        };
        responses: {
            /** @description Make a garden with its first key, which is shown this once */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NewGarden"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Garden"];
                };
            };
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    updateGarden: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that is changed */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/merge-patch+json": components["schemas"]["GardenPatch"];
            };
        };
        responses: {
            /** @description Change the garden of this key */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Garden"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
    listKeys: {
        parameters: {
            query?: {
                /** @description from "next" of an earlier page */
                cursor?: components["parameters"]["cursorQuery"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["Key"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createKey: {
        parameters: {
            query?: never;
            header?: {
                /** @description Repeat with the same key and body to get the same answer, for 24 hours */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NewKey"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Key"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            409: components["responses"]["Problem409"];
            422: components["responses"]["Problem422"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": Record<string, unknown>;
                };
            };
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["Plan"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createPlan: {
        parameters: {
            query?: never;
            header?: {
                /** @description Repeat with the same key and body to get the same answer, for 24 hours */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
                /** @description wait=10 holds the answer back until the job is done, at most so many seconds */
                Prefer?: components["parameters"]["Prefer"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PlanRequest"];
            };
        };
        responses: {
            /** @description Ask for a new revision of the plan of a build */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    "Preference-Applied": components["headers"]["PreferenceApplied"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Plan"];
                };
            };
            /** @description Ask for a new revision of the plan of a build */
            202: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    "Preference-Applied": components["headers"]["PreferenceApplied"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Plan"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Plan"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["AsBuilt"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createAsBuilt: {
        parameters: {
            query?: never;
            header?: {
                /** @description Repeat with the same key and body to get the same answer, for 24 hours */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AsBuilt"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanInputs"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanResult"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                /** @description Repeat with the same key and body to get the same answer, for 24 hours */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Review"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["Price"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createPrice: {
        parameters: {
            query?: never;
            header?: {
                /** @description Repeat with the same key and body to get the same answer, for 24 hours */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Price"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Price"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    updatePrice: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that is changed */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/merge-patch+json": components["schemas"]["PricePatch"];
            };
        };
        responses: {
            /** @description Change a price */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Price"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                /** @description ETag of the version that is changed */
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Price"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                /** @description ETag of the version that is changed */
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Price"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: {
                            detail: string;
                            remedy: string;
                            status: number;
                            title: string;
                            type: string;
                        }[];
                    };
                };
            };
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        detail: string;
                        remedy: string;
                        status: number;
                        title: string;
                        type: string;
                    };
                };
            };
            400: components["responses"]["Problem400"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["Site"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createSite: {
        parameters: {
            query?: never;
            header?: {
                /** @description Repeat with the same key and body to get the same answer, for 24 hours */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Site"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Site"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    updateSite: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that is changed */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/merge-patch+json": components["schemas"]["SitePatch"];
            };
        };
        responses: {
            /** @description Change a site */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Site"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                /** @description ETag of the version that is changed */
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Site"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    restoreSite: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that is changed */
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Site"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["StockItem"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createStockItem: {
        parameters: {
            query?: never;
            header?: {
                /** @description Repeat with the same key and body to get the same answer, for 24 hours */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StockItem"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            415: components["responses"]["Problem415"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StockItem"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    updateStockItem: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that is changed */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/merge-patch+json": components["schemas"]["StockItemPatch"];
            };
        };
        responses: {
            /** @description Change a thing */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StockItem"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                /** @description ETag of the version that is changed */
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StockItem"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    restoreStockItem: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that is changed */
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StockItem"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                /** @description Repeat with the same key and body to get the same answer, for 24 hours */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["StockIntakeRequest"];
            };
        };
        responses: {
            /** @description Take up to 200 things into the pile together */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Idempotency-Replayed": components["headers"]["IdempotencyReplayed"];
                    Location: components["headers"]["Location"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StockIntake"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["Structure"][];
                        next: string | null;
                    };
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createStructure: {
        parameters: {
            query?: never;
            header?: {
                /** @description Repeat with the same key and body to get the same answer, for 24 hours */
                "Idempotency-Key"?: components["parameters"]["IdempotencyKey"];
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Structure"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Structure"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    updateStructure: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that is changed */
                "If-Match": components["parameters"]["IfMatch"];
            };
            path: {
                id: components["parameters"]["idPath"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/merge-patch+json": components["schemas"]["StructurePatch"];
            };
        };
        responses: {
            /** @description Change a structure */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Structure"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                /** @description ETag of the version that is changed */
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Structure"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
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
                /** @description ETag of the version that is changed */
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
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Structure"];
                };
            };
            400: components["responses"]["Problem400"];
            401: components["responses"]["Problem401"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            429: components["responses"]["Problem429"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
}
