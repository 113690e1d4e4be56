// Made from server/openapi.json by server/src/api/write-openapi.ts; do not edit.
export interface paths {
    readonly "/api/health": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Is it up? */
        readonly get: operations["health"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/session": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Who am I? */
        readonly get: operations["readSession"];
        readonly put?: never;
        /** Sign in */
        readonly post: operations["signIn"];
        /** Sign out */
        readonly delete: operations["signOut"];
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/setup/{token}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Is this set-up link still open? */
        readonly get: operations["readSetup"];
        readonly put?: never;
        /** Make the firm, its depot, its terms and the first manager */
        readonly post: operations["setUp"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/today": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The day: out, back, on the road, what holds things up */
        readonly get: operations["today"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/availability": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Which vehicles can take it, and why not */
        readonly post: operations["availability"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/yard/jobs": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Walk-rounds due out and back */
        readonly get: operations["yardJobs"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/diary": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Vehicles and what holds them, day by day */
        readonly get: operations["diary"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/vehicles": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Which vehicles can take this hire, and why not */
        readonly get: operations["hireVehicles"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/move": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Put a hire on another vehicle, unless it is taken or somebody moved it meanwhile */
        readonly post: operations["moveHire"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/pin": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** Keep a hire on its vehicle when the diary is tidied */
        readonly put: operations["pinHire"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/vehicles/{id}/blocks": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Take a vehicle off the road for a while, unless a hire has it then */
        readonly post: operations["addBlock"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/blocks/{id}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        readonly post?: never;
        /** Put it back on the road */
        readonly delete: operations["removeBlock"];
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/diary/tidy": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Which bookings could change vehicles so that more can be sold */
        readonly get: operations["tidyDiary"];
        readonly put?: never;
        /** Make these moves, all of them or none */
        readonly post: operations["applyTidy"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/vehicles": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The fleet */
        readonly get: operations["listVehicles"];
        readonly put?: never;
        /** A new vehicle; its id and its registration number must be free */
        readonly post: operations["createVehicle"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/vehicles/{id}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** One vehicle and what follows from its description */
        readonly get: operations["readVehicle"];
        /** A new dated version of the description */
        readonly put: operations["putVehicle"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/vehicles/{id}/versions": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Every version of a description, newest first, each with what changed */
        readonly get: operations["listVersions"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/vehicles/{id}/versions/{versionId}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** One version of a description as it was written */
        readonly get: operations["readVersion"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/vehicles/{id}/tickets": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** A weighbridge ticket by axle: it replaces the stated masses until a later one */
        readonly post: operations["addTicket"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/vehicles/{id}/tickets/{ticketId}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        readonly post?: never;
        /** Takes a ticket that was typed wrongly out of use; it stays on the list */
        readonly delete: operations["withdrawTicket"];
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/upkeep": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** What falls due on the fleet, nearest first, and open defects */
        readonly get: operations["fleetDue"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/vehicles/{id}/upkeep": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Due-date book, history, damp, water, frost and defects of a vehicle */
        readonly get: operations["readUpkeep"];
        readonly put?: never;
        /** Enter what was done or read, once and for ever; the next due date follows */
        readonly post: operations["addUpkeep"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/vehicles/{id}/defects": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Note a defect: safety stops the vehicle, comfort is told to the hirer */
        readonly post: operations["addDefect"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/defects/{id}/close": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Close a defect: who mended it and how */
        readonly post: operations["closeDefect"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/defects/{id}/told": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** The hirer was told of a defect and signed for it */
        readonly post: operations["tellDefect"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/yard/turnarounds": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Vehicles that came back: what is to be done to each, in which order */
        readonly get: operations["turnarounds"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/terms": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The hire terms and the insurer's criteria that hold today */
        readonly get: operations["readTerms"];
        /** A new version of the hire terms, of the insurer's criteria or of both, from its own day on */
        readonly put: operations["putTerms"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Find hires */
        readonly get: operations["listHires"];
        readonly put?: never;
        /** An enquiry */
        readonly post: operations["newHire"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The whole hire: what stops it and whose move it is */
        readonly get: operations["readHire"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/vehicle": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** Choose the vehicle */
        readonly put: operations["setVehicle"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/party": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** Who travels */
        readonly put: operations["setParty"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/quote": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Price the hire; accepted, it is frozen as shown */
        readonly post: operations["quote"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/book": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Book it, unless the vehicle is taken */
        readonly post: operations["book"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/drivers": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** The named drivers and their licences */
        readonly put: operations["setDrivers"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/overrides": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Override one finding, if its basis allows it */
        readonly post: operations["override"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/gate-checks": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** A named person looked at a gate that no room decides yet */
        readonly post: operations["checkGate"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/keys": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Hand over the keys, if the glass allows */
        readonly post: operations["handOver"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/return": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** The vehicle is back */
        readonly post: operations["takeBack"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/end": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Lost, cancelled or no-show, with the reason */
        readonly post: operations["endHire"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/trip": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** The trip with its stops */
        readonly put: operations["setTrip"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/forecast": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Will it last? Lived 500 times; cached by its input */
        readonly get: operations["readForecast"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/load": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Masses and axles, and the least change that makes it legal */
        readonly get: operations["readLoad"];
        /** What is carried and where */
        readonly put: operations["setLoad"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/briefing": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Cards for this vehicle and trip, in order */
        readonly get: operations["readBriefing"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/abroad": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The countries of the route, what must be got for them and by when, and the crossings */
        readonly get: operations["readAbroad"];
        /** Papers, kit, crossings and what has been got for a journey abroad */
        readonly put: operations["setAbroad"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/payments": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Record a payment by hand */
        readonly post: operations["pay"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/papers/{paper}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** A paper of the hire as a PDF, made from the hire as it stands */
        readonly get: operations["readPaper"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/day-sheet": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The day as a PDF: out, back, on the road, what is still open */
        readonly get: operations["readDaySheet"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/differences": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** What is not as it left */
        readonly get: operations["readDifferences"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/classes": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** Decide at the desk, on evidence, what each mark is */
        readonly put: operations["setClasses"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/settlement": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Lines in whole pence, each with its evidence */
        readonly get: operations["readSettlement"];
        readonly put?: never;
        /** Freeze the settlement as shown */
        readonly post: operations["settle"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/deposit-release": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Give back what is left of the deposit */
        readonly post: operations["releaseDeposit"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/close": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Nothing is left to do */
        readonly post: operations["close"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/hirer-link": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** An unguessable, expiring link for this hire only; the one before stops working */
        readonly post: operations["makeHirerLink"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/guide/{token}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Everything the hirer's phone needs, once */
        readonly get: operations["readGuide"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/guide/{token}/records": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Readings of the panel on this hire, and what was tried when something failed */
        readonly post: operations["addGuideRecords"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/help": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** For a hirer on the telephone: what can fail on this vehicle, what its stores hold, what was tried */
        readonly get: operations["readHelp"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/records": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Append records of what happened at a vehicle; sending twice appends once */
        readonly post: operations["addRecords"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/records": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Records and receipts, as `setfair verify` reads them */
        readonly get: operations["exportRecords"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/photos/{sha256}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** A smaller picture for screens (size: small, large), or the original */
        readonly get: operations["readPhoto"];
        /** The JPEG made on the device, under its hash; body image/jpeg, resumable */
        readonly put: operations["putPhoto"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        readonly MoneyInput: {
            /** @enum {string} */
            readonly currency: "GBP" | "EUR" | "CHF" | "NOK";
            readonly pence: number;
        };
        readonly FigureInput: {
            readonly value: number;
            readonly unit: string;
            readonly formula: string;
            readonly inputs: {
                readonly [key: string]: number | string | boolean | null;
            };
            /** @enum {string} */
            readonly basis: "measured" | "declared" | "default" | "from memory" | "computed";
            readonly source?: string;
        };
        readonly FindingInput: {
            readonly code: string;
            /** @enum {string} */
            readonly gate: "seats" | "licence" | "insurance" | "masses" | "diary" | "dueDates" | "defects" | "countries" | "crossing" | "season" | "resources" | "money" | "signatures";
            /** @enum {string} */
            readonly severity: "refuse" | "refer" | "unchecked" | "condition" | "note";
            /** @enum {string} */
            readonly basis: "law" | "safety" | "cover" | "policy" | "physics";
            readonly facts: {
                readonly [key: string]: components["schemas"]["FigureInput"] | string | number;
            };
            readonly sources: readonly string[];
            readonly mends: readonly {
                readonly code: string;
                readonly facts: {
                    readonly [key: string]: components["schemas"]["FigureInput"] | string | number;
                };
            }[];
            readonly about?: string;
        };
        readonly ErrorInput: {
            readonly error: {
                readonly code: string;
                readonly message: string;
                readonly problems: readonly {
                    readonly path: string;
                    readonly expected: string;
                }[];
                readonly findings?: readonly components["schemas"]["FindingInput"][];
            };
        };
        readonly DoneInput: {
            /** @constant */
            readonly done: true;
        };
        readonly AbroadPapersInput: {
            readonly certificate?: {
                /** Format: date */
                readonly validFrom: string;
                /** Format: date */
                readonly validTo: string;
            };
            readonly originalDocument?: boolean;
        };
        readonly AbroadInput: {
            readonly through: readonly string[];
            readonly crossings: readonly {
                /** @enum {string} */
                readonly kind: "tunnel" | "ferry" | "shortSeaFerry";
                /** Format: date */
                readonly on: string;
            }[];
            readonly noCrossing: boolean;
            readonly papers: components["schemas"]["AbroadPapersInput"];
            readonly kitAboard: readonly string[];
            readonly got: readonly string[];
            readonly overhang: boolean;
            readonly plateShowsUk: boolean;
            readonly gaugeWorks?: boolean;
            readonly fillShare?: number;
        };
        readonly AbroadStateInput: {
            readonly abroad: components["schemas"]["AbroadInput"];
            readonly home: string;
            readonly countries: unknown | null;
            readonly crossing: unknown | null;
            readonly findings: readonly components["schemas"]["FindingInput"][];
        };
        /** @enum {string} */
        readonly MarkClassInput: "existing" | "fairWear" | "ours" | "hirer" | "unknown";
        readonly DifferenceInput: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "mark" | "reading" | "count" | "look";
            readonly difference: unknown;
            readonly class: components["schemas"]["MarkClassInput"] | null;
            readonly classReason: string | null;
            readonly classBy: string | null;
        };
        readonly DifferencesInput: {
            readonly differences: readonly components["schemas"]["DifferenceInput"][];
            readonly result: unknown;
            readonly findings: readonly components["schemas"]["FindingInput"][];
        };
        readonly SetClassesInput: {
            readonly classes: readonly {
                readonly id: string;
                readonly class: components["schemas"]["MarkClassInput"];
                readonly reason: string;
            }[];
        };
        readonly SettlementStateInput: {
            readonly frozenAt: string | null;
            readonly frozenBy: string | null;
            readonly result: unknown;
            readonly findings: readonly components["schemas"]["FindingInput"][];
            readonly total: components["schemas"]["MoneyInput"];
            readonly depositReturned: components["schemas"]["MoneyInput"];
            readonly releaseBy: string;
            readonly releasedAt: string | null;
        };
        readonly ReturnRequestInput: {
            readonly at: string;
        };
        readonly NewPaymentInput: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "payment" | "depositHeld" | "depositReleased" | "depositCharged" | "refund";
            readonly pence: number;
            /** Format: date */
            readonly on: string;
            /** @enum {string} */
            readonly method: "card" | "transfer" | "cash" | "cardHold";
            readonly note?: string;
        };
        readonly PaymentInput: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "payment" | "depositHeld" | "depositReleased" | "depositCharged" | "refund";
            readonly amount: components["schemas"]["MoneyInput"];
            /** Format: date */
            readonly on: string;
            readonly method: string;
            readonly note: string | null;
            readonly by: string;
            readonly at: string;
        };
        readonly PartyInput: {
            readonly travellers: readonly {
                readonly id: string;
                readonly name?: string;
                /** @enum {string} */
                readonly kind: "adult" | "child";
                readonly ageYears?: number;
                readonly heightCm?: number;
                readonly massKg?: number;
            }[];
            readonly sleepers?: number;
            readonly dogs: number;
            /** @enum {string} */
            readonly experience: "first" | "some" | "knowsThisVehicle";
        };
        readonly DriverInput: {
            readonly id: string;
            readonly name: string;
            /** Format: date */
            readonly born: string;
            readonly main: boolean;
            readonly licence: {
                /** @enum {string} */
                readonly issuedBy: "GB" | "NI" | "EEA" | "other";
                /** Format: date */
                readonly firstCarEntitlement: string;
                readonly categories: readonly {
                    /** @enum {string} */
                    readonly category: "B" | "BE" | "C1" | "C1E" | "C";
                    /** Format: date */
                    readonly from: string;
                    /** Format: date */
                    readonly to: string;
                }[];
                /** Format: date */
                readonly photocardTo?: string;
                readonly endorsements: readonly {
                    readonly code: string;
                    /** Format: date */
                    readonly offence: string;
                    readonly points: number;
                }[];
                /** Format: date */
                readonly checkedOn?: string;
            };
            readonly faultIncidents3y: number;
            readonly disqualified3y: boolean;
        };
        readonly TripInput: {
            readonly depot: {
                readonly name: string;
                readonly country: string;
                readonly latitudeDeg: number;
                readonly longitudeDeg: number;
                readonly elevationM?: number;
            };
            readonly depart: string;
            readonly return: string;
            readonly returnDrive: {
                readonly distanceKm: number;
                readonly minutes: number;
            };
            readonly timeZone: string;
            readonly stops: readonly {
                readonly place: {
                    readonly name: string;
                    readonly country: string;
                    readonly latitudeDeg: number;
                    readonly longitudeDeg: number;
                    readonly elevationM?: number;
                };
                readonly arrive: string;
                readonly leave: string;
                readonly drive: {
                    readonly distanceKm: number;
                    readonly minutes: number;
                };
                readonly pitch: {
                    readonly postAmperes: number;
                    readonly freshWater: boolean;
                    readonly wasteDrain: boolean;
                    readonly cassettePoint: boolean;
                    readonly lpgExchange: boolean;
                };
                readonly acts: readonly ("plugIn" | "fillWater" | "emptyWaste" | "emptyCassette" | "exchangeLpg" | "fillFuel" | "fillDef")[];
            }[];
            readonly departWith: {
                readonly [key: string]: number;
            };
            readonly settings: {
                readonly [key: string]: {
                    readonly [key: string]: number | string | boolean;
                };
            };
        };
        readonly LoadPlanInput: {
            readonly seats: readonly {
                readonly travellerId: string;
                readonly behindFrontAxleM: number;
                /** @enum {string} */
                readonly place?: "driver" | "passenger" | "rowTwo" | "rowThree" | "side";
            }[];
            readonly items: readonly {
                readonly id: string;
                readonly name: string;
                readonly massKg: number;
                readonly behindFrontAxleM: number;
                readonly removable: boolean;
                readonly sdKg?: number;
                /** @enum {string} */
                readonly kind?: "luggage" | "food" | "bedding" | "bike" | "bikeRack" | "awning" | "childSeat" | "extra" | "other";
                /** @enum {string} */
                readonly place?: "cab" | "floor" | "lockers" | "underBed" | "overCab" | "garage" | "roof" | "rack" | "wall";
                readonly movable?: boolean;
            }[];
            readonly waterLitres: number;
            readonly fuelShare: number;
            readonly lpgCylinders: number;
            readonly placeLimitsKg?: {
                readonly [key: string]: number;
            };
        };
        /** @enum {string} */
        readonly StageInput: "enquiry" | "quote" | "booked" | "handedOver" | "onHire" | "returned" | "settled" | "closed" | "lost" | "cancelled" | "noShow";
        readonly CustomerInput: {
            readonly name: string;
            readonly telephone: string;
            /** Format: email */
            readonly email: string;
            readonly address?: string;
        };
        readonly NewHireInput: {
            readonly customer: components["schemas"]["CustomerInput"];
            readonly party: components["schemas"]["PartyInput"];
            readonly from: string;
            readonly to: string;
            readonly wishes?: string;
            readonly vehicleId?: string;
        };
        /** @enum {string} */
        readonly GlassStateInput: "cannotGo" | "notYet" | "goesWithConditions" | "readyWithNotes" | "ready";
        readonly GateFindingInput: {
            readonly finding: components["schemas"]["FindingInput"];
            /** @enum {string} */
            readonly overridable: "never" | "insurer" | "person";
            readonly override: {
                readonly by: string;
                readonly role: string;
                readonly at: string;
                readonly reason: string;
            } | null;
        };
        readonly GateOnGlassInput: {
            /** @enum {string} */
            readonly gate: "seats" | "licence" | "insurance" | "masses" | "diary" | "dueDates" | "defects" | "countries" | "crossing" | "season" | "resources" | "money" | "signatures";
            /** @enum {string} */
            readonly state: "refused" | "referred" | "notCheckedYet" | "conditions" | "overridden" | "notes" | "clear" | "later";
            readonly dueAt: string;
            readonly isDue: boolean;
            readonly checkedAt: string | null;
            readonly byHand: boolean;
            readonly checkedByHand: {
                readonly by: string;
                readonly at: string;
                readonly note: string;
            } | null;
            readonly findings: readonly components["schemas"]["GateFindingInput"][];
        };
        readonly GlassInput: {
            readonly state: components["schemas"]["GlassStateInput"];
            readonly before: {
                readonly state: components["schemas"]["GlassStateInput"];
                readonly at: string;
            } | null;
            readonly gates: readonly components["schemas"]["GateOnGlassInput"][];
            readonly because: readonly {
                /** @enum {string} */
                readonly gate: "seats" | "licence" | "insurance" | "masses" | "diary" | "dueDates" | "defects" | "countries" | "crossing" | "season" | "resources" | "money" | "signatures";
                readonly code: string;
                readonly about?: string;
            }[];
        };
        readonly HireSummaryInput: {
            readonly id: string;
            readonly reference: string;
            readonly stage: components["schemas"]["StageInput"];
            readonly customer: string;
            readonly people: number;
            readonly dogs: number;
            readonly from: string;
            readonly to: string;
            readonly vehicle: {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
            } | null;
            readonly glass: components["schemas"]["GlassStateInput"] | null;
            readonly worst: components["schemas"]["FindingInput"] | null;
            readonly late: ("out" | "back") | null;
            readonly toActOn: number;
            readonly owedPence: number;
        };
        readonly HireListInput: {
            readonly hires: readonly components["schemas"]["HireSummaryInput"][];
            readonly next: string | null;
        };
        readonly WaitInput: {
            readonly code: string;
            /** @enum {string} */
            readonly whose: "desk" | "yard" | "hirer" | "manager" | "insurer" | "nobody";
            readonly facts: {
                readonly [key: string]: components["schemas"]["FigureInput"] | string | number;
            };
        };
        readonly QuoteStateInput: {
            readonly at: string;
            readonly acceptedAt: string | null;
            readonly result: unknown;
            readonly findings: readonly components["schemas"]["FindingInput"][];
            readonly total: components["schemas"]["MoneyInput"] | null;
        };
        readonly LoadStateInput: {
            readonly plan: components["schemas"]["LoadPlanInput"] | null;
            readonly result: unknown;
            readonly findings: readonly components["schemas"]["FindingInput"][];
        };
        readonly ForecastStateInput: {
            readonly inputHash: string;
            readonly engineVersion: string;
            readonly seed: number;
            readonly runs: number;
            readonly cached: boolean;
            readonly result: unknown;
            readonly findings: readonly components["schemas"]["FindingInput"][];
        };
        readonly BriefingStateInput: {
            readonly result: unknown;
            readonly findings: readonly components["schemas"]["FindingInput"][];
            readonly signed: readonly string[];
        };
        readonly HirePageInput: {
            readonly hire: components["schemas"]["HireSummaryInput"];
            readonly version: number;
            readonly wishes: string | null;
            readonly customer: {
                readonly name: string;
                readonly telephone: string;
                readonly email: string;
                readonly address?: string;
            };
            readonly party: components["schemas"]["PartyInput"];
            readonly vehicle: {
                readonly id: string;
                readonly versionId: string;
                /** @description engine: VehicleDescription */
                readonly description: unknown;
            } | null;
            readonly drivers: readonly components["schemas"]["DriverInput"][];
            readonly trip: components["schemas"]["TripInput"] | null;
            readonly load: components["schemas"]["LoadStateInput"] | null;
            readonly forecastHash: string | null;
            readonly quote: components["schemas"]["QuoteStateInput"] | null;
            readonly payments: readonly components["schemas"]["PaymentInput"][];
            readonly money: {
                readonly price: components["schemas"]["MoneyInput"];
                readonly paid: components["schemas"]["MoneyInput"];
                readonly owed: components["schemas"]["MoneyInput"];
                readonly depositDue: components["schemas"]["MoneyInput"];
                readonly depositHeld: components["schemas"]["MoneyInput"];
            };
            readonly glass: components["schemas"]["GlassInput"] | null;
            readonly conditions: readonly components["schemas"]["FindingInput"][];
            readonly records: {
                readonly count: number;
                readonly head: string | null;
                readonly out: {
                    readonly started: boolean;
                    readonly marks: number;
                    readonly photos: number;
                    readonly readings: number;
                    readonly signed: boolean;
                };
                readonly back: {
                    readonly started: boolean;
                    readonly marks: number;
                    readonly photos: number;
                    readonly readings: number;
                    readonly signed: boolean;
                };
                readonly panelReadings: number;
            };
            readonly signaturesNeeded: readonly string[];
            readonly signatures: readonly {
                readonly what: string;
                readonly by: string;
                readonly at: string;
                readonly recordId: string;
                readonly covers: number;
            }[];
            readonly waits: readonly components["schemas"]["WaitInput"][];
            readonly settlement: components["schemas"]["SettlementStateInput"] | null;
            readonly differences: readonly components["schemas"]["DifferenceInput"][];
            readonly hirerLink: {
                readonly expires: string;
            } | null;
            readonly history: readonly {
                readonly at: string;
                readonly by: string;
                readonly what: string;
                readonly facts: {
                    readonly [key: string]: unknown;
                };
            }[];
        };
        readonly AvailabilityQueryInput: {
            readonly party: components["schemas"]["PartyInput"];
            readonly from: string;
            readonly to: string;
        };
        readonly AvailabilityInput: {
            readonly vehicles: readonly {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                readonly possible: boolean;
                readonly findings: readonly components["schemas"]["FindingInput"][];
                readonly nearestChanges: readonly {
                    /** @enum {string} */
                    readonly kind: "shift" | "smallerParty" | "renewDue" | "waivePets";
                    readonly from?: string;
                    readonly to?: string;
                    readonly shiftHours?: number;
                    readonly people?: number;
                }[];
                readonly price: components["schemas"]["MoneyInput"] | null;
            }[];
        };
        readonly SetVehicleInput: {
            readonly vehicleId: string;
        };
        readonly SetDriversInput: {
            readonly drivers: readonly components["schemas"]["DriverInput"][];
        };
        readonly QuoteRequestInput: {
            /** @default [] */
            readonly extras: readonly {
                readonly id: string;
                readonly count: number;
            }[];
            /** @default false */
            readonly accept: boolean;
        };
        readonly OverrideRequestInput: {
            /** @enum {string} */
            readonly gate: "seats" | "licence" | "insurance" | "masses" | "diary" | "dueDates" | "defects" | "countries" | "crossing" | "season" | "resources" | "money" | "signatures";
            readonly code: string;
            readonly about?: string;
            readonly reason: string;
            readonly insurer?: {
                readonly reference: string;
                readonly acceptedBy: string;
                /** Format: date */
                readonly on: string;
            };
        };
        readonly GateCheckInput: {
            /** @enum {string} */
            readonly gate: "seats" | "licence" | "insurance" | "masses" | "diary" | "dueDates" | "defects" | "countries" | "crossing" | "season" | "resources" | "money" | "signatures";
            readonly note: string;
        };
        readonly EndHireInput: {
            /** @enum {string} */
            readonly as: "lost" | "cancelled" | "noShow";
            readonly reason: string;
        };
        readonly HirerLinkInput: {
            readonly url: string;
            readonly token: string;
            readonly expires: string;
        };
        readonly VehicleBlockInput: {
            readonly id: string;
            readonly vehicleId: string;
            /** @enum {string} */
            readonly kind: "mot" | "service" | "repair" | "layUp" | "other";
            readonly note: string;
            readonly from: string;
            readonly to: string;
        };
        readonly DiaryInput: {
            /** Format: date */
            readonly from: string;
            /** Format: date */
            readonly to: string;
            readonly now: string;
            readonly opens: string;
            readonly closes: string;
            readonly turnaroundMinutes: number;
            readonly vehicles: readonly {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                readonly vehicleClass: string;
                readonly due: readonly {
                    /** @enum {string} */
                    readonly kind: "mot" | "tax" | "insurance" | "service" | "habitation" | "lpgCheck" | "lpgHose" | "wiring" | "extinguisher" | "smokeAlarm" | "coAlarm" | "tyres" | "wheelTorque" | "regulator" | "appliances" | "gasAlarm" | "batteryTest" | "fixings" | "waterSanitise" | "showerHead" | "firstAid";
                    /** Format: date */
                    readonly dueOn: string;
                }[];
            }[];
            readonly hires: readonly {
                readonly id: string;
                readonly reference: string;
                readonly customer: string;
                readonly stage: components["schemas"]["StageInput"];
                readonly vehicleId: string;
                readonly from: string;
                readonly to: string;
                readonly pinned: boolean;
            }[];
            readonly blocks: readonly components["schemas"]["VehicleBlockInput"][];
            readonly schoolHolidays: readonly {
                /** Format: date */
                readonly from: string;
                /** Format: date */
                readonly to: string;
            }[];
        };
        readonly NewVehicleBlockInput: {
            /** @enum {string} */
            readonly kind: "mot" | "service" | "repair" | "layUp" | "other";
            /** @default  */
            readonly note: string;
            readonly from: string;
            readonly to: string;
        };
        readonly HireVehiclesInput: {
            readonly current: string | null;
            readonly currentClass: string | null;
            readonly quoted: components["schemas"]["MoneyInput"] | null;
            readonly pinned: boolean;
            readonly vehicles: readonly {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                readonly possible: boolean;
                readonly findings: readonly components["schemas"]["FindingInput"][];
                readonly nearestChanges: readonly {
                    /** @enum {string} */
                    readonly kind: "shift" | "smallerParty" | "renewDue" | "waivePets";
                    readonly from?: string;
                    readonly to?: string;
                    readonly shiftHours?: number;
                    readonly people?: number;
                }[];
                readonly price: components["schemas"]["MoneyInput"] | null;
            }[];
            readonly classes: {
                readonly [key: string]: string;
            };
        };
        readonly MoveHireInput: {
            readonly vehicleId: string;
            readonly was: string | null;
        };
        readonly PinHireInput: {
            readonly pinned: boolean;
        };
        readonly DiaryTidyInput: {
            readonly moves: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly at: string;
                readonly from: string;
                readonly to: string;
            }[];
            readonly nights: number;
            readonly before: number;
            readonly after: number;
            readonly bookings: number;
            readonly staying: number;
            readonly findings: readonly components["schemas"]["FindingInput"][];
        };
        readonly ApplyDiaryTidyInput: {
            readonly moves: readonly {
                readonly hireId: string;
                readonly from: string;
                readonly to: string;
            }[];
        };
        readonly FaultsInput: {
            readonly symptoms: readonly unknown[];
            readonly history: readonly {
                readonly symptom: string;
                readonly cause: string;
                readonly count: number;
            }[];
        };
        readonly HelpEntryInput: {
            readonly recordId: string;
            readonly at: string;
            readonly symptom: string;
            /** @enum {string} */
            readonly outcome: "stop" | "fixed" | "found" | "call" | "left";
            readonly answers: readonly {
                readonly check: string;
                readonly answer: string;
            }[];
            readonly causes: readonly string[];
            /** @enum {string} */
            readonly by: "hirer" | "desk";
            readonly note: string | null;
        };
        readonly HelpInput: {
            readonly faults: components["schemas"]["FaultsInput"];
            readonly stores: readonly {
                readonly store: string;
                readonly troubleChance: number;
            }[];
            readonly entries: readonly components["schemas"]["HelpEntryInput"][];
        };
        readonly GuideInput: {
            readonly hireId: string;
            readonly reference: string;
            readonly customer: string;
            readonly stage: components["schemas"]["StageInput"];
            readonly from: string;
            readonly to: string;
            readonly expires: string;
            readonly firm: string;
            readonly depot: {
                readonly name: string;
                readonly telephone: string;
            };
            readonly vehicle: {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                /** @description engine: VehicleDescription */
                readonly description: unknown;
            };
            readonly trip: components["schemas"]["TripInput"] | null;
            readonly forecastInput: unknown;
            readonly forecast: unknown;
            readonly forecastHash: string | null;
            readonly briefing: unknown;
            readonly faults: components["schemas"]["FaultsInput"];
            readonly readings: readonly unknown[];
        };
        readonly RecordInput: {
            readonly id: string;
        } & {
            readonly [key: string]: unknown;
        };
        readonly ReceiptInput: {
            /** Format: uuid */
            readonly recordId: string;
            readonly recordHash: string;
            readonly seq: number;
            readonly prev: string | null;
            /** Format: date-time */
            readonly at: string;
            readonly hash: string;
        };
        readonly RecordBatchInput: {
            readonly records: readonly components["schemas"]["RecordInput"][];
        };
        readonly RecordAnswerInput: {
            readonly receipts: readonly {
                readonly id: string;
                readonly receipt: components["schemas"]["ReceiptInput"];
                readonly again: boolean;
            }[];
            readonly added: number;
            readonly head: string | null;
        };
        readonly RecordExportInput: {
            readonly records: readonly components["schemas"]["RecordInput"][];
            readonly receipts: readonly components["schemas"]["ReceiptInput"][];
        } & {
            readonly [key: string]: unknown;
        };
        readonly PhotoStateInput: {
            /** @enum {string} */
            readonly state: "kept" | "partial";
            readonly received: number;
            readonly again: boolean;
        };
        readonly SignInInput: {
            readonly login: string;
            readonly password: string;
        };
        readonly SessionInput: {
            readonly user: {
                readonly id: string;
                readonly name: string;
                readonly login: string;
                /** @enum {string} */
                readonly role: "manager" | "desk" | "yard" | "hirer";
            };
            readonly firm: {
                readonly id: string;
                readonly name: string;
            };
            readonly depot: {
                readonly id: string;
                readonly name: string;
                readonly telephone: string;
                readonly timeZone: string;
                readonly place: {
                    readonly name: string;
                    readonly country: string;
                    readonly latitudeDeg: number;
                    readonly longitudeDeg: number;
                    readonly elevationM?: number;
                };
            };
            readonly may: readonly string[];
            /** Format: date */
            readonly today: string;
            readonly demo: boolean;
        };
        readonly SetupStateInput: {
            readonly open: boolean;
        };
        readonly SetupInput: {
            readonly firm: {
                readonly name: string;
            };
            readonly depot: {
                readonly name: string;
                readonly telephone: string;
                readonly timeZone: string;
                readonly country: string;
                readonly latitudeDeg: number;
                readonly longitudeDeg: number;
                readonly opens: string;
                readonly closes: string;
            };
            readonly terms?: components["schemas"]["TermsInput"];
            readonly insurance?: components["schemas"]["InsurancePolicyInput"];
            readonly manager: {
                readonly name: string;
                readonly login: string;
                readonly password: string;
            };
        };
        readonly TermsInput: {
            readonly id: string;
            /** Format: date */
            readonly validFrom: string;
            /** @constant */
            readonly currency: "GBP";
            readonly seasons: readonly {
                readonly id: string;
                readonly spans: readonly {
                    readonly from: string;
                    readonly to: string;
                }[];
                readonly nightPence: {
                    readonly [key: string]: number;
                };
                readonly minimumNights: number;
            }[];
            readonly maximumNights: number;
            readonly longHire: readonly {
                readonly fromNights: number;
                readonly reductionPercent: number;
            }[];
            readonly allowance: {
                readonly kmPerNight: number;
                readonly excessPencePerKm: number;
                readonly gracePercent: number;
            };
            readonly drivers: {
                readonly included: number;
                readonly extraPenceEach: number;
            };
            readonly compulsory: readonly {
                readonly id: string;
                readonly pence: number;
                /** @enum {string} */
                readonly vat: "standard" | "exempt" | "outsideScope";
            }[];
            readonly abroad: {
                readonly home: string;
                readonly pence: number;
                /** @enum {string} */
                readonly vat: "standard" | "exempt" | "outsideScope";
            };
            readonly extras: readonly {
                readonly id: string;
                readonly pence: number;
                /** @enum {string} */
                readonly per: "hire" | "night";
                readonly capPence?: number;
                readonly stock: number;
                /** @enum {string} */
                readonly vat: "standard" | "exempt" | "outsideScope";
            }[];
            readonly bookingDepositPercent: number;
            readonly security: {
                readonly homePence: number;
                readonly abroadPence: number;
                readonly excessPence: number;
                readonly authorisationDays: number;
                readonly releaseWorkingDays: number;
            };
            readonly cancellation: readonly {
                readonly atLeastDaysBefore: number;
                readonly keepPercent: number;
            }[];
            readonly quoteDays: number;
            readonly tariff: {
                readonly fuelPencePerLitre: {
                    readonly [key: string]: number;
                };
                readonly fuelServicePence: number;
                readonly defPencePerLitre: number;
                readonly lpgPencePerKg: number;
                readonly cleaningPencePerHour: number;
                readonly wasteNotEmptiedPence: number;
                readonly cassetteNotEmptiedPence: number;
                readonly latePencePerHour: number;
                readonly lateGraceMinutes: number;
                readonly kit: {
                    readonly [key: string]: {
                        readonly newPence: number;
                        readonly lifeYears: number;
                        readonly leastShare: number;
                    };
                };
                readonly damage: readonly {
                    readonly of: string;
                    /** @enum {string} */
                    readonly kind: "scratch" | "dent" | "tear" | "stain" | "crack" | "missing";
                    readonly upToMm?: number;
                    readonly pence: number;
                    /** @enum {string} */
                    readonly part: "repair" | "replace";
                    readonly lifeYears: number;
                    readonly leastShare: number;
                }[];
            };
        };
        readonly InsurancePolicyInput: {
            readonly id: string;
            /** Format: date */
            readonly validFrom: string;
            /** Format: date */
            readonly validTo: string;
            readonly age: {
                readonly min: number;
                readonly max: number;
                /** @enum {string} */
                readonly outcome: "refer" | "refuse";
            };
            readonly yearsHeld: {
                readonly min: number;
                /** @enum {string} */
                readonly outcome: "refer" | "refuse";
            };
            readonly convictions: {
                readonly withinYears: number;
                readonly maxCount: number;
                readonly maxPointsEach: number;
                readonly maxPointsTotal: number;
                /** @enum {string} */
                readonly outcome: "refer" | "refuse";
            };
            readonly codes: readonly {
                readonly prefix: string;
                readonly withinYears: number;
                /** @enum {string} */
                readonly outcome: "refer" | "refuse";
            }[];
            readonly faultIncidents3y: {
                readonly max: number;
                /** @enum {string} */
                readonly outcome: "refer" | "refuse";
            };
            /** @enum {string} */
            readonly disqualified3y: "refer" | "refuse";
            readonly maxMamKg: number;
            readonly countries: readonly string[];
            readonly maxNightsAbroad: number;
        };
        readonly TermsAnswerInput: {
            readonly hire: {
                readonly versionId: string;
                readonly terms: components["schemas"]["TermsInput"];
            } | null;
            readonly insurance: {
                readonly versionId: string;
                readonly policy: components["schemas"]["InsurancePolicyInput"];
            } | null;
        };
        readonly PutTermsInput: {
            readonly hire?: components["schemas"]["TermsInput"];
            readonly insurance?: components["schemas"]["InsurancePolicyInput"];
        };
        readonly TodayInput: {
            /** Format: date */
            readonly date: string;
            readonly now: string;
            readonly out: readonly components["schemas"]["HireSummaryInput"][];
            readonly back: readonly components["schemas"]["HireSummaryInput"][];
            readonly onTheRoad: readonly components["schemas"]["HireSummaryInput"][];
            readonly blockers: readonly {
                readonly hireId: string;
                readonly hire: components["schemas"]["HireSummaryInput"];
                /** @enum {string} */
                readonly why: "glass" | "late";
                readonly lateMinutes: number;
                readonly next: {
                    readonly hireId: string;
                    readonly customer: string;
                    readonly from: string;
                } | null;
                readonly readyAt: string | null;
            }[];
            readonly open: {
                readonly enquiries: number;
                readonly quotes: number;
                readonly toSettle: number;
            };
            readonly enquiries: readonly components["schemas"]["HireSummaryInput"][];
            readonly toSettle: readonly components["schemas"]["HireSummaryInput"][];
        };
        readonly DueLineInput: {
            /** @enum {string} */
            readonly kind: "mot" | "tax" | "insurance" | "service" | "habitation" | "lpgCheck" | "lpgHose" | "wiring" | "extinguisher" | "smokeAlarm" | "coAlarm" | "tyres" | "wheelTorque" | "regulator" | "appliances" | "gasAlarm" | "batteryTest" | "fixings" | "waterSanitise" | "showerHead" | "firstAid";
            /** @enum {string} */
            readonly status: "law" | "policy" | "guidance";
            readonly source: string;
            readonly dueOn: string | null;
            readonly dueKm: number | null;
            readonly days: number | null;
            /** @enum {string} */
            readonly state: "inDate" | "soon" | "over" | "missing";
            readonly last: {
                /** Format: date */
                readonly on: string;
                readonly who: string;
                readonly reference: string | null;
                readonly km: number | null;
            } | null;
        };
        readonly DefectInput: {
            readonly id: string;
            /** @enum {string} */
            readonly class: "safety" | "comfort";
            readonly what: string;
            readonly where: string;
            readonly notedBy: string;
            readonly at: string;
            readonly hireId: string | null;
            readonly photograph: string | null;
            readonly closed: {
                readonly at: string;
                readonly by: string;
                readonly how: string;
            } | null;
        };
        readonly VehicleUpkeepInput: {
            /** Format: date */
            readonly today: string;
            readonly odometer: {
                readonly km: number;
                /** Format: date */
                readonly on: string;
            } | null;
            readonly due: readonly components["schemas"]["DueLineInput"][];
            readonly history: readonly {
                readonly id: string;
                /** @enum {string} */
                readonly duty: "mot" | "tax" | "insurance" | "service" | "habitation" | "lpgCheck" | "lpgHose" | "wiring" | "extinguisher" | "smokeAlarm" | "coAlarm" | "tyres" | "wheelTorque" | "regulator" | "appliances" | "gasAlarm" | "batteryTest" | "fixings" | "waterSanitise" | "showerHead" | "firstAid";
                /** Format: date */
                readonly on: string;
                readonly who: string;
                readonly reference: string | null;
                readonly km: number | null;
                readonly dueOn: string | null;
                readonly dueKm: number | null;
            }[];
            readonly damp: readonly {
                readonly id: string;
                /** Format: date */
                readonly on: string;
                readonly position: string;
                readonly percent: number;
                /** @enum {string} */
                readonly band: "none" | "recheck" | "investigate" | "strip";
                readonly meter: string;
                readonly weather: string;
                readonly who: string;
            }[];
            readonly water: readonly {
                readonly id: string;
                /** Format: date */
                readonly on: string;
                readonly act: string;
                readonly who: string;
            }[];
            readonly frost: {
                /** Format: date */
                readonly on: string;
                readonly state: string;
                readonly who: string;
            } | null;
            readonly defects: readonly components["schemas"]["DefectInput"][];
        };
        readonly FleetDueInput: {
            /** Format: date */
            readonly today: string;
            readonly vehicles: readonly {
                readonly vehicle: {
                    readonly id: string;
                    readonly name: string;
                    readonly registration: string;
                };
                readonly due: readonly components["schemas"]["DueLineInput"][];
                readonly openDefects: {
                    readonly safety: number;
                    readonly comfort: number;
                };
            }[];
        };
        readonly NewUpkeepInput: {
            /** @constant */
            readonly kind: "done";
            /** @enum {string} */
            readonly duty: "mot" | "tax" | "insurance" | "service" | "habitation" | "lpgCheck" | "lpgHose" | "wiring" | "extinguisher" | "smokeAlarm" | "coAlarm" | "tyres" | "wheelTorque" | "regulator" | "appliances" | "gasAlarm" | "batteryTest" | "fixings" | "waterSanitise" | "showerHead" | "firstAid";
            /** Format: date */
            readonly on: string;
            readonly who: string;
            readonly reference?: string | null;
            readonly km?: number | null;
            readonly dueOn?: string | null;
        } | {
            /** @constant */
            readonly kind: "damp";
            /** Format: date */
            readonly on: string;
            readonly who: string;
            readonly position: string;
            readonly percent: number;
            readonly meter: string;
            readonly weather: string;
        } | {
            /** @constant */
            readonly kind: "water";
            /** Format: date */
            readonly on: string;
            readonly who: string;
            /** @enum {string} */
            readonly act: "flushed" | "sanitised";
        } | {
            /** @constant */
            readonly kind: "frost";
            /** Format: date */
            readonly on: string;
            readonly who: string;
            /** @enum {string} */
            readonly state: "inUse" | "drained" | "winterised" | "laidUp";
        };
        readonly NewDefectInput: {
            /** @enum {string} */
            readonly class: "safety" | "comfort";
            readonly what: string;
            readonly where: string;
            readonly hireId?: string | null;
            readonly photograph?: string | null;
        };
        readonly TurnaroundInput: {
            readonly id: string;
            readonly hireId: string;
            readonly reference: string;
            readonly vehicle: {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
            };
            readonly backAt: string;
            readonly nextOut: string | null;
            readonly ready: boolean;
            readonly jobs: readonly {
                readonly id: string;
                readonly code: string;
                readonly minutes: number;
                /** @enum {string} */
                readonly skill: "cleaner" | "yard" | "technician";
                readonly done: boolean;
                readonly start: string | null;
            }[];
        };
        readonly TurnaroundsInput: {
            /** Format: date */
            readonly date: string;
            readonly turnarounds: readonly components["schemas"]["TurnaroundInput"][];
        };
        readonly VehicleDescriptionInput: {
            readonly id: string;
            readonly name: string;
            readonly registration: string;
            /** @enum {string} */
            readonly bodyStyle: "panelVanConversion" | "elevatingRoofCampervan" | "lowProfile" | "overcab" | "aClass" | "campervan";
            readonly validFrom: string;
            readonly firstRegistered: string;
            /** @enum {string} */
            readonly fuel: "diesel" | "petrol" | "electric" | "hydrogen";
            /** @enum {string} */
            readonly category: "M1" | "N1";
            readonly emissionClass: string;
            readonly dimensions: {
                readonly lengthM: number;
                readonly widthM: number;
                readonly heightM: number;
                readonly wheelbaseM: number;
                readonly rearOverhangM: number;
            };
            readonly masses: {
                readonly mamKg: number;
                readonly technicalMaxKg: number;
                readonly miroKg: number;
                readonly miroBasis: {
                    readonly fuelShare: number;
                    readonly driverKg: number;
                    readonly waterShare: number;
                    readonly lpgCylinders: number;
                    readonly weighed: boolean;
                    readonly sdKg?: number;
                    readonly weighedOn?: string;
                };
                readonly miroFrontKg: number;
                readonly unladenKg?: number;
                readonly axleMaxKg: {
                    readonly front: number;
                    readonly rear: number;
                };
                readonly options: readonly {
                    readonly name: string;
                    readonly massKg: number;
                    readonly behindFrontAxleM: number;
                }[];
            };
            readonly body: {
                readonly floorAreaM2: number;
                readonly volumeM3: number;
                readonly lossWK: number;
                readonly capacityWhK: number;
                readonly airChangesPerHour: number;
            };
            readonly consumption: {
                readonly litresPer100Km: number;
            };
            readonly systems: readonly {
                readonly id: string;
                readonly kind: string;
                readonly spec: {
                    readonly [key: string]: unknown;
                };
            }[];
        };
        readonly VehicleSummaryInput: {
            readonly id: string;
            readonly name: string;
            readonly registration: string;
            readonly bodyStyle: string;
            readonly belts: number;
            readonly berths: number;
            readonly mamKg: number;
            readonly payloadKg: number;
            readonly fitted: readonly string[];
            /** @enum {string} */
            readonly now: "atDepot" | "onHire";
            readonly nextOut: {
                readonly hireId: string;
                readonly reference: string;
                readonly from: string;
            } | null;
            readonly due: readonly {
                readonly kind: string;
                /** Format: date */
                readonly dueOn: string;
                readonly days: number;
            }[];
        };
        readonly VehiclePageInput: {
            readonly summary: components["schemas"]["VehicleSummaryInput"];
            readonly description: components["schemas"]["VehicleDescriptionInput"];
            readonly derived: unknown;
            readonly findings: readonly components["schemas"]["FindingInput"][];
            readonly weighed: {
                readonly ticketId: string;
                readonly isOlderThanFitting: boolean;
            } | null;
            readonly tickets: readonly components["schemas"]["KeptTicketInput"][];
            readonly versions: readonly {
                readonly versionId: string;
                /** Format: date */
                readonly validFrom: string;
                readonly at: string;
            }[];
            readonly hires: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly from: string;
                readonly to: string;
                readonly stage: string;
            }[];
            readonly marks: readonly components["schemas"]["KnownMarkInput"][];
            readonly dueDates: readonly {
                /** @enum {string} */
                readonly kind: "mot" | "tax" | "insurance" | "service" | "habitation" | "lpgCheck" | "lpgHose" | "wiring" | "extinguisher" | "smokeAlarm" | "coAlarm" | "tyres" | "wheelTorque" | "regulator" | "appliances" | "gasAlarm" | "batteryTest" | "fixings" | "waterSanitise" | "showerHead" | "firstAid";
                /** Format: date */
                readonly dueOn: string;
            }[];
            readonly vehicleClass: string;
            readonly maxDogs: number;
        };
        readonly KnownMarkInput: {
            readonly recordId: string;
            readonly hireId: string | null;
            readonly since: string;
            readonly part: string;
            readonly view: string;
            readonly xShare: number;
            readonly yShare: number;
            readonly markKind: string;
            readonly sizeMm: number | null;
            readonly note: string | null;
            readonly photographs: readonly string[];
        };
        readonly VehicleTicketInput: {
            readonly reference: string;
            /** Format: date */
            readonly weighedOn: string;
            readonly frontKg: number;
            readonly rearKg: number;
            readonly scaleIntervalKg?: number;
            readonly aboard: {
                readonly fuelShare: number;
                readonly waterLitres: number;
                readonly lpgCylinders: number;
                readonly frontPeopleKg: number;
                readonly rearPeopleKg: number;
            };
        };
        readonly KeptTicketInput: {
            readonly id: string;
            readonly ticket: components["schemas"]["VehicleTicketInput"];
            readonly by: string;
            readonly at: string;
            readonly withdrawnAt: string | null;
        };
        readonly DescriptionChangeInput: {
            /** @enum {string} */
            readonly what: "system" | "field";
            readonly kind: string | null;
            /** @enum {string} */
            readonly change?: "fitted" | "removed";
            readonly field?: string;
            readonly from?: string | number | boolean | null;
            readonly to?: string | number | boolean | null;
        };
        readonly VehicleVersionsInput: {
            readonly id: string;
            readonly name: string;
            readonly versions: readonly {
                readonly versionId: string;
                /** Format: date */
                readonly validFrom: string;
                readonly at: string;
                readonly by: string | null;
                readonly isReplaced: boolean;
                readonly isInForce: boolean;
                readonly changes: readonly components["schemas"]["DescriptionChangeInput"][];
            }[];
        };
        readonly VehicleVersionInput: {
            readonly versionId: string;
            /** Format: date */
            readonly validFrom: string;
            readonly description: components["schemas"]["VehicleDescriptionInput"];
        };
        readonly PutVehicleInput: {
            readonly description: components["schemas"]["VehicleDescriptionInput"];
            readonly dueDates?: readonly {
                /** @enum {string} */
                readonly kind: "mot" | "tax" | "insurance" | "service" | "habitation" | "lpgCheck" | "lpgHose" | "wiring" | "extinguisher" | "smokeAlarm" | "coAlarm" | "tyres" | "wheelTorque" | "regulator" | "appliances" | "gasAlarm" | "batteryTest" | "fixings" | "waterSanitise" | "showerHead" | "firstAid";
                /** Format: date */
                readonly dueOn: string;
            }[];
            readonly vehicleClass?: string;
            readonly maxDogs?: number;
        };
        readonly YardJobInput: {
            readonly id: string;
            /** @enum {string} */
            readonly walk: "out" | "back";
            readonly due: string;
            readonly hireId: string;
            readonly reference: string;
            readonly customer: string;
            readonly stage: components["schemas"]["StageInput"];
            readonly vehicle: {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                readonly versionId: string;
                /** @description engine: VehicleDescription */
                readonly description: unknown;
            };
            readonly walkRound: unknown;
            readonly knownMarks: readonly components["schemas"]["KnownMarkInput"][];
            readonly outRecords: readonly components["schemas"]["RecordInput"][];
            readonly signaturesNeeded: readonly string[];
            readonly briefing: unknown;
            readonly conditions: readonly components["schemas"]["FindingInput"][];
            readonly done: boolean;
        };
        readonly YardJobsInput: {
            /** Format: date */
            readonly date: string;
            readonly jobs: readonly components["schemas"]["YardJobInput"][];
        };
        readonly Money: {
            /** @enum {string} */
            readonly currency: "GBP" | "EUR" | "CHF" | "NOK";
            readonly pence: number;
        };
        readonly Figure: {
            readonly value: number;
            readonly unit: string;
            readonly formula: string;
            readonly inputs: {
                readonly [key: string]: number | string | boolean | null;
            };
            /** @enum {string} */
            readonly basis: "measured" | "declared" | "default" | "from memory" | "computed";
            readonly source?: string;
        };
        readonly Finding: {
            readonly code: string;
            /** @enum {string} */
            readonly gate: "seats" | "licence" | "insurance" | "masses" | "diary" | "dueDates" | "defects" | "countries" | "crossing" | "season" | "resources" | "money" | "signatures";
            /** @enum {string} */
            readonly severity: "refuse" | "refer" | "unchecked" | "condition" | "note";
            /** @enum {string} */
            readonly basis: "law" | "safety" | "cover" | "policy" | "physics";
            readonly facts: {
                readonly [key: string]: components["schemas"]["Figure"] | string | number;
            };
            readonly sources: readonly string[];
            readonly mends: readonly {
                readonly code: string;
                readonly facts: {
                    readonly [key: string]: components["schemas"]["Figure"] | string | number;
                };
            }[];
            readonly about?: string;
        };
        readonly Error: {
            readonly error: {
                readonly code: string;
                readonly message: string;
                readonly problems: readonly {
                    readonly path: string;
                    readonly expected: string;
                }[];
                readonly findings?: readonly components["schemas"]["Finding"][];
            };
        };
        readonly Done: {
            /** @constant */
            readonly done: true;
        };
        readonly AbroadPapers: {
            readonly certificate?: {
                /** Format: date */
                readonly validFrom: string;
                /** Format: date */
                readonly validTo: string;
            };
            readonly originalDocument?: boolean;
        };
        readonly Abroad: {
            readonly through: readonly string[];
            readonly crossings: readonly {
                /** @enum {string} */
                readonly kind: "tunnel" | "ferry" | "shortSeaFerry";
                /** Format: date */
                readonly on: string;
            }[];
            readonly noCrossing: boolean;
            readonly papers: components["schemas"]["AbroadPapers"];
            readonly kitAboard: readonly string[];
            readonly got: readonly string[];
            readonly overhang: boolean;
            readonly plateShowsUk: boolean;
            readonly gaugeWorks?: boolean;
            readonly fillShare?: number;
        };
        readonly AbroadState: {
            readonly abroad: components["schemas"]["Abroad"];
            readonly home: string;
            readonly countries: unknown | null;
            readonly crossing: unknown | null;
            readonly findings: readonly components["schemas"]["Finding"][];
        };
        /** @enum {string} */
        readonly MarkClass: "existing" | "fairWear" | "ours" | "hirer" | "unknown";
        readonly Difference: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "mark" | "reading" | "count" | "look";
            readonly difference: unknown;
            readonly class: components["schemas"]["MarkClass"] | null;
            readonly classReason: string | null;
            readonly classBy: string | null;
        };
        readonly Differences: {
            readonly differences: readonly components["schemas"]["Difference"][];
            readonly result: unknown;
            readonly findings: readonly components["schemas"]["Finding"][];
        };
        readonly SetClasses: {
            readonly classes: readonly {
                readonly id: string;
                readonly class: components["schemas"]["MarkClass"];
                readonly reason: string;
            }[];
        };
        readonly SettlementState: {
            readonly frozenAt: string | null;
            readonly frozenBy: string | null;
            readonly result: unknown;
            readonly findings: readonly components["schemas"]["Finding"][];
            readonly total: components["schemas"]["Money"];
            readonly depositReturned: components["schemas"]["Money"];
            readonly releaseBy: string;
            readonly releasedAt: string | null;
        };
        readonly ReturnRequest: {
            readonly at: string;
        };
        readonly NewPayment: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "payment" | "depositHeld" | "depositReleased" | "depositCharged" | "refund";
            readonly pence: number;
            /** Format: date */
            readonly on: string;
            /** @enum {string} */
            readonly method: "card" | "transfer" | "cash" | "cardHold";
            readonly note?: string;
        };
        readonly Payment: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "payment" | "depositHeld" | "depositReleased" | "depositCharged" | "refund";
            readonly amount: components["schemas"]["Money"];
            /** Format: date */
            readonly on: string;
            readonly method: string;
            readonly note: string | null;
            readonly by: string;
            readonly at: string;
        };
        readonly Party: {
            readonly travellers: readonly {
                readonly id: string;
                readonly name?: string;
                /** @enum {string} */
                readonly kind: "adult" | "child";
                readonly ageYears?: number;
                readonly heightCm?: number;
                readonly massKg?: number;
            }[];
            readonly sleepers?: number;
            readonly dogs: number;
            /** @enum {string} */
            readonly experience: "first" | "some" | "knowsThisVehicle";
        };
        readonly Driver: {
            readonly id: string;
            readonly name: string;
            /** Format: date */
            readonly born: string;
            readonly main: boolean;
            readonly licence: {
                /** @enum {string} */
                readonly issuedBy: "GB" | "NI" | "EEA" | "other";
                /** Format: date */
                readonly firstCarEntitlement: string;
                readonly categories: readonly {
                    /** @enum {string} */
                    readonly category: "B" | "BE" | "C1" | "C1E" | "C";
                    /** Format: date */
                    readonly from: string;
                    /** Format: date */
                    readonly to: string;
                }[];
                /** Format: date */
                readonly photocardTo?: string;
                readonly endorsements: readonly {
                    readonly code: string;
                    /** Format: date */
                    readonly offence: string;
                    readonly points: number;
                }[];
                /** Format: date */
                readonly checkedOn?: string;
            };
            readonly faultIncidents3y: number;
            readonly disqualified3y: boolean;
        };
        readonly Trip: {
            readonly depot: {
                readonly name: string;
                readonly country: string;
                readonly latitudeDeg: number;
                readonly longitudeDeg: number;
                readonly elevationM?: number;
            };
            readonly depart: string;
            readonly return: string;
            readonly returnDrive: {
                readonly distanceKm: number;
                readonly minutes: number;
            };
            readonly timeZone: string;
            readonly stops: readonly {
                readonly place: {
                    readonly name: string;
                    readonly country: string;
                    readonly latitudeDeg: number;
                    readonly longitudeDeg: number;
                    readonly elevationM?: number;
                };
                readonly arrive: string;
                readonly leave: string;
                readonly drive: {
                    readonly distanceKm: number;
                    readonly minutes: number;
                };
                readonly pitch: {
                    readonly postAmperes: number;
                    readonly freshWater: boolean;
                    readonly wasteDrain: boolean;
                    readonly cassettePoint: boolean;
                    readonly lpgExchange: boolean;
                };
                readonly acts: readonly ("plugIn" | "fillWater" | "emptyWaste" | "emptyCassette" | "exchangeLpg" | "fillFuel" | "fillDef")[];
            }[];
            readonly departWith: {
                readonly [key: string]: number;
            };
            readonly settings: {
                readonly [key: string]: {
                    readonly [key: string]: number | string | boolean;
                };
            };
        };
        readonly LoadPlan: {
            readonly seats: readonly {
                readonly travellerId: string;
                readonly behindFrontAxleM: number;
                /** @enum {string} */
                readonly place?: "driver" | "passenger" | "rowTwo" | "rowThree" | "side";
            }[];
            readonly items: readonly {
                readonly id: string;
                readonly name: string;
                readonly massKg: number;
                readonly behindFrontAxleM: number;
                readonly removable: boolean;
                readonly sdKg?: number;
                /** @enum {string} */
                readonly kind?: "luggage" | "food" | "bedding" | "bike" | "bikeRack" | "awning" | "childSeat" | "extra" | "other";
                /** @enum {string} */
                readonly place?: "cab" | "floor" | "lockers" | "underBed" | "overCab" | "garage" | "roof" | "rack" | "wall";
                readonly movable?: boolean;
            }[];
            readonly waterLitres: number;
            readonly fuelShare: number;
            readonly lpgCylinders: number;
            readonly placeLimitsKg?: {
                readonly [key: string]: number;
            };
        };
        /** @enum {string} */
        readonly Stage: "enquiry" | "quote" | "booked" | "handedOver" | "onHire" | "returned" | "settled" | "closed" | "lost" | "cancelled" | "noShow";
        readonly Customer: {
            readonly name: string;
            readonly telephone: string;
            /** Format: email */
            readonly email: string;
            readonly address?: string;
        };
        readonly NewHire: {
            readonly customer: components["schemas"]["Customer"];
            readonly party: components["schemas"]["Party"];
            readonly from: string;
            readonly to: string;
            readonly wishes?: string;
            readonly vehicleId?: string;
        };
        /** @enum {string} */
        readonly GlassState: "cannotGo" | "notYet" | "goesWithConditions" | "readyWithNotes" | "ready";
        readonly GateFinding: {
            readonly finding: components["schemas"]["Finding"];
            /** @enum {string} */
            readonly overridable: "never" | "insurer" | "person";
            readonly override: {
                readonly by: string;
                readonly role: string;
                readonly at: string;
                readonly reason: string;
            } | null;
        };
        readonly GateOnGlass: {
            /** @enum {string} */
            readonly gate: "seats" | "licence" | "insurance" | "masses" | "diary" | "dueDates" | "defects" | "countries" | "crossing" | "season" | "resources" | "money" | "signatures";
            /** @enum {string} */
            readonly state: "refused" | "referred" | "notCheckedYet" | "conditions" | "overridden" | "notes" | "clear" | "later";
            readonly dueAt: string;
            readonly isDue: boolean;
            readonly checkedAt: string | null;
            readonly byHand: boolean;
            readonly checkedByHand: {
                readonly by: string;
                readonly at: string;
                readonly note: string;
            } | null;
            readonly findings: readonly components["schemas"]["GateFinding"][];
        };
        readonly Glass: {
            readonly state: components["schemas"]["GlassState"];
            readonly before: {
                readonly state: components["schemas"]["GlassState"];
                readonly at: string;
            } | null;
            readonly gates: readonly components["schemas"]["GateOnGlass"][];
            readonly because: readonly {
                /** @enum {string} */
                readonly gate: "seats" | "licence" | "insurance" | "masses" | "diary" | "dueDates" | "defects" | "countries" | "crossing" | "season" | "resources" | "money" | "signatures";
                readonly code: string;
                readonly about?: string;
            }[];
        };
        readonly HireSummary: {
            readonly id: string;
            readonly reference: string;
            readonly stage: components["schemas"]["Stage"];
            readonly customer: string;
            readonly people: number;
            readonly dogs: number;
            readonly from: string;
            readonly to: string;
            readonly vehicle: {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
            } | null;
            readonly glass: components["schemas"]["GlassState"] | null;
            readonly worst: components["schemas"]["Finding"] | null;
            readonly late: ("out" | "back") | null;
            readonly toActOn: number;
            readonly owedPence: number;
        };
        readonly HireList: {
            readonly hires: readonly components["schemas"]["HireSummary"][];
            readonly next: string | null;
        };
        readonly Wait: {
            readonly code: string;
            /** @enum {string} */
            readonly whose: "desk" | "yard" | "hirer" | "manager" | "insurer" | "nobody";
            readonly facts: {
                readonly [key: string]: components["schemas"]["Figure"] | string | number;
            };
        };
        readonly QuoteState: {
            readonly at: string;
            readonly acceptedAt: string | null;
            readonly result: unknown;
            readonly findings: readonly components["schemas"]["Finding"][];
            readonly total: components["schemas"]["Money"] | null;
        };
        readonly LoadState: {
            readonly plan: components["schemas"]["LoadPlan"] | null;
            readonly result: unknown;
            readonly findings: readonly components["schemas"]["Finding"][];
        };
        readonly ForecastState: {
            readonly inputHash: string;
            readonly engineVersion: string;
            readonly seed: number;
            readonly runs: number;
            readonly cached: boolean;
            readonly result: unknown;
            readonly findings: readonly components["schemas"]["Finding"][];
        };
        readonly BriefingState: {
            readonly result: unknown;
            readonly findings: readonly components["schemas"]["Finding"][];
            readonly signed: readonly string[];
        };
        readonly HirePage: {
            readonly hire: components["schemas"]["HireSummary"];
            readonly version: number;
            readonly wishes: string | null;
            readonly customer: {
                readonly name: string;
                readonly telephone: string;
                readonly email: string;
                readonly address?: string;
            };
            readonly party: components["schemas"]["Party"];
            readonly vehicle: {
                readonly id: string;
                readonly versionId: string;
                /** @description engine: VehicleDescription */
                readonly description: unknown;
            } | null;
            readonly drivers: readonly components["schemas"]["Driver"][];
            readonly trip: components["schemas"]["Trip"] | null;
            readonly load: components["schemas"]["LoadState"] | null;
            readonly forecastHash: string | null;
            readonly quote: components["schemas"]["QuoteState"] | null;
            readonly payments: readonly components["schemas"]["Payment"][];
            readonly money: {
                readonly price: components["schemas"]["Money"];
                readonly paid: components["schemas"]["Money"];
                readonly owed: components["schemas"]["Money"];
                readonly depositDue: components["schemas"]["Money"];
                readonly depositHeld: components["schemas"]["Money"];
            };
            readonly glass: components["schemas"]["Glass"] | null;
            readonly conditions: readonly components["schemas"]["Finding"][];
            readonly records: {
                readonly count: number;
                readonly head: string | null;
                readonly out: {
                    readonly started: boolean;
                    readonly marks: number;
                    readonly photos: number;
                    readonly readings: number;
                    readonly signed: boolean;
                };
                readonly back: {
                    readonly started: boolean;
                    readonly marks: number;
                    readonly photos: number;
                    readonly readings: number;
                    readonly signed: boolean;
                };
                readonly panelReadings: number;
            };
            readonly signaturesNeeded: readonly string[];
            readonly signatures: readonly {
                readonly what: string;
                readonly by: string;
                readonly at: string;
                readonly recordId: string;
                readonly covers: number;
            }[];
            readonly waits: readonly components["schemas"]["Wait"][];
            readonly settlement: components["schemas"]["SettlementState"] | null;
            readonly differences: readonly components["schemas"]["Difference"][];
            readonly hirerLink: {
                readonly expires: string;
            } | null;
            readonly history: readonly {
                readonly at: string;
                readonly by: string;
                readonly what: string;
                readonly facts: {
                    readonly [key: string]: unknown;
                };
            }[];
        };
        readonly AvailabilityQuery: {
            readonly party: components["schemas"]["Party"];
            readonly from: string;
            readonly to: string;
        };
        readonly Availability: {
            readonly vehicles: readonly {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                readonly possible: boolean;
                readonly findings: readonly components["schemas"]["Finding"][];
                readonly nearestChanges: readonly {
                    /** @enum {string} */
                    readonly kind: "shift" | "smallerParty" | "renewDue" | "waivePets";
                    readonly from?: string;
                    readonly to?: string;
                    readonly shiftHours?: number;
                    readonly people?: number;
                }[];
                readonly price: components["schemas"]["Money"] | null;
            }[];
        };
        readonly SetVehicle: {
            readonly vehicleId: string;
        };
        readonly SetDrivers: {
            readonly drivers: readonly components["schemas"]["Driver"][];
        };
        readonly QuoteRequest: {
            /** @default [] */
            readonly extras: readonly {
                readonly id: string;
                readonly count: number;
            }[];
            /** @default false */
            readonly accept: boolean;
        };
        readonly OverrideRequest: {
            /** @enum {string} */
            readonly gate: "seats" | "licence" | "insurance" | "masses" | "diary" | "dueDates" | "defects" | "countries" | "crossing" | "season" | "resources" | "money" | "signatures";
            readonly code: string;
            readonly about?: string;
            readonly reason: string;
            readonly insurer?: {
                readonly reference: string;
                readonly acceptedBy: string;
                /** Format: date */
                readonly on: string;
            };
        };
        readonly GateCheck: {
            /** @enum {string} */
            readonly gate: "seats" | "licence" | "insurance" | "masses" | "diary" | "dueDates" | "defects" | "countries" | "crossing" | "season" | "resources" | "money" | "signatures";
            readonly note: string;
        };
        readonly EndHire: {
            /** @enum {string} */
            readonly as: "lost" | "cancelled" | "noShow";
            readonly reason: string;
        };
        readonly HirerLink: {
            readonly url: string;
            readonly token: string;
            readonly expires: string;
        };
        readonly VehicleBlock: {
            readonly id: string;
            readonly vehicleId: string;
            /** @enum {string} */
            readonly kind: "mot" | "service" | "repair" | "layUp" | "other";
            readonly note: string;
            readonly from: string;
            readonly to: string;
        };
        readonly Diary: {
            /** Format: date */
            readonly from: string;
            /** Format: date */
            readonly to: string;
            readonly now: string;
            readonly opens: string;
            readonly closes: string;
            readonly turnaroundMinutes: number;
            readonly vehicles: readonly {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                readonly vehicleClass: string;
                readonly due: readonly {
                    /** @enum {string} */
                    readonly kind: "mot" | "tax" | "insurance" | "service" | "habitation" | "lpgCheck" | "lpgHose" | "wiring" | "extinguisher" | "smokeAlarm" | "coAlarm" | "tyres" | "wheelTorque" | "regulator" | "appliances" | "gasAlarm" | "batteryTest" | "fixings" | "waterSanitise" | "showerHead" | "firstAid";
                    /** Format: date */
                    readonly dueOn: string;
                }[];
            }[];
            readonly hires: readonly {
                readonly id: string;
                readonly reference: string;
                readonly customer: string;
                readonly stage: components["schemas"]["Stage"];
                readonly vehicleId: string;
                readonly from: string;
                readonly to: string;
                readonly pinned: boolean;
            }[];
            readonly blocks: readonly components["schemas"]["VehicleBlock"][];
            readonly schoolHolidays: readonly {
                /** Format: date */
                readonly from: string;
                /** Format: date */
                readonly to: string;
            }[];
        };
        readonly NewVehicleBlock: {
            /** @enum {string} */
            readonly kind: "mot" | "service" | "repair" | "layUp" | "other";
            /** @default  */
            readonly note: string;
            readonly from: string;
            readonly to: string;
        };
        readonly HireVehicles: {
            readonly current: string | null;
            readonly currentClass: string | null;
            readonly quoted: components["schemas"]["Money"] | null;
            readonly pinned: boolean;
            readonly vehicles: readonly {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                readonly possible: boolean;
                readonly findings: readonly components["schemas"]["Finding"][];
                readonly nearestChanges: readonly {
                    /** @enum {string} */
                    readonly kind: "shift" | "smallerParty" | "renewDue" | "waivePets";
                    readonly from?: string;
                    readonly to?: string;
                    readonly shiftHours?: number;
                    readonly people?: number;
                }[];
                readonly price: components["schemas"]["Money"] | null;
            }[];
            readonly classes: {
                readonly [key: string]: string;
            };
        };
        readonly MoveHire: {
            readonly vehicleId: string;
            readonly was: string | null;
        };
        readonly PinHire: {
            readonly pinned: boolean;
        };
        readonly DiaryTidy: {
            readonly moves: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly at: string;
                readonly from: string;
                readonly to: string;
            }[];
            readonly nights: number;
            readonly before: number;
            readonly after: number;
            readonly bookings: number;
            readonly staying: number;
            readonly findings: readonly components["schemas"]["Finding"][];
        };
        readonly ApplyDiaryTidy: {
            readonly moves: readonly {
                readonly hireId: string;
                readonly from: string;
                readonly to: string;
            }[];
        };
        readonly Faults: {
            readonly symptoms: readonly unknown[];
            readonly history: readonly {
                readonly symptom: string;
                readonly cause: string;
                readonly count: number;
            }[];
        };
        readonly HelpEntry: {
            readonly recordId: string;
            readonly at: string;
            readonly symptom: string;
            /** @enum {string} */
            readonly outcome: "stop" | "fixed" | "found" | "call" | "left";
            readonly answers: readonly {
                readonly check: string;
                readonly answer: string;
            }[];
            readonly causes: readonly string[];
            /** @enum {string} */
            readonly by: "hirer" | "desk";
            readonly note: string | null;
        };
        readonly Help: {
            readonly faults: components["schemas"]["Faults"];
            readonly stores: readonly {
                readonly store: string;
                readonly troubleChance: number;
            }[];
            readonly entries: readonly components["schemas"]["HelpEntry"][];
        };
        readonly Guide: {
            readonly hireId: string;
            readonly reference: string;
            readonly customer: string;
            readonly stage: components["schemas"]["Stage"];
            readonly from: string;
            readonly to: string;
            readonly expires: string;
            readonly firm: string;
            readonly depot: {
                readonly name: string;
                readonly telephone: string;
            };
            readonly vehicle: {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                /** @description engine: VehicleDescription */
                readonly description: unknown;
            };
            readonly trip: components["schemas"]["Trip"] | null;
            readonly forecastInput: unknown;
            readonly forecast: unknown;
            readonly forecastHash: string | null;
            readonly briefing: unknown;
            readonly faults: components["schemas"]["Faults"];
            readonly readings: readonly unknown[];
        };
        readonly Record: {
            readonly id: string;
        } & {
            readonly [key: string]: unknown;
        };
        readonly Receipt: {
            /** Format: uuid */
            readonly recordId: string;
            readonly recordHash: string;
            readonly seq: number;
            readonly prev: string | null;
            /** Format: date-time */
            readonly at: string;
            readonly hash: string;
        };
        readonly RecordBatch: {
            readonly records: readonly components["schemas"]["Record"][];
        };
        readonly RecordAnswer: {
            readonly receipts: readonly {
                readonly id: string;
                readonly receipt: components["schemas"]["Receipt"];
                readonly again: boolean;
            }[];
            readonly added: number;
            readonly head: string | null;
        };
        readonly RecordExport: {
            readonly records: readonly components["schemas"]["Record"][];
            readonly receipts: readonly components["schemas"]["Receipt"][];
        } & {
            readonly [key: string]: unknown;
        };
        readonly PhotoState: {
            /** @enum {string} */
            readonly state: "kept" | "partial";
            readonly received: number;
            readonly again: boolean;
        };
        readonly SignIn: {
            readonly login: string;
            readonly password: string;
        };
        readonly Session: {
            readonly user: {
                readonly id: string;
                readonly name: string;
                readonly login: string;
                /** @enum {string} */
                readonly role: "manager" | "desk" | "yard" | "hirer";
            };
            readonly firm: {
                readonly id: string;
                readonly name: string;
            };
            readonly depot: {
                readonly id: string;
                readonly name: string;
                readonly telephone: string;
                readonly timeZone: string;
                readonly place: {
                    readonly name: string;
                    readonly country: string;
                    readonly latitudeDeg: number;
                    readonly longitudeDeg: number;
                    readonly elevationM?: number;
                };
            };
            readonly may: readonly string[];
            /** Format: date */
            readonly today: string;
            readonly demo: boolean;
        };
        readonly SetupState: {
            readonly open: boolean;
        };
        readonly Setup: {
            readonly firm: {
                readonly name: string;
            };
            readonly depot: {
                readonly name: string;
                readonly telephone: string;
                readonly timeZone: string;
                readonly country: string;
                readonly latitudeDeg: number;
                readonly longitudeDeg: number;
                readonly opens: string;
                readonly closes: string;
            };
            readonly terms?: components["schemas"]["Terms"];
            readonly insurance?: components["schemas"]["InsurancePolicy"];
            readonly manager: {
                readonly name: string;
                readonly login: string;
                readonly password: string;
            };
        };
        readonly Terms: {
            readonly id: string;
            /** Format: date */
            readonly validFrom: string;
            /** @constant */
            readonly currency: "GBP";
            readonly seasons: readonly {
                readonly id: string;
                readonly spans: readonly {
                    readonly from: string;
                    readonly to: string;
                }[];
                readonly nightPence: {
                    readonly [key: string]: number;
                };
                readonly minimumNights: number;
            }[];
            readonly maximumNights: number;
            readonly longHire: readonly {
                readonly fromNights: number;
                readonly reductionPercent: number;
            }[];
            readonly allowance: {
                readonly kmPerNight: number;
                readonly excessPencePerKm: number;
                readonly gracePercent: number;
            };
            readonly drivers: {
                readonly included: number;
                readonly extraPenceEach: number;
            };
            readonly compulsory: readonly {
                readonly id: string;
                readonly pence: number;
                /** @enum {string} */
                readonly vat: "standard" | "exempt" | "outsideScope";
            }[];
            readonly abroad: {
                readonly home: string;
                readonly pence: number;
                /** @enum {string} */
                readonly vat: "standard" | "exempt" | "outsideScope";
            };
            readonly extras: readonly {
                readonly id: string;
                readonly pence: number;
                /** @enum {string} */
                readonly per: "hire" | "night";
                readonly capPence?: number;
                readonly stock: number;
                /** @enum {string} */
                readonly vat: "standard" | "exempt" | "outsideScope";
            }[];
            readonly bookingDepositPercent: number;
            readonly security: {
                readonly homePence: number;
                readonly abroadPence: number;
                readonly excessPence: number;
                readonly authorisationDays: number;
                readonly releaseWorkingDays: number;
            };
            readonly cancellation: readonly {
                readonly atLeastDaysBefore: number;
                readonly keepPercent: number;
            }[];
            readonly quoteDays: number;
            readonly tariff: {
                readonly fuelPencePerLitre: {
                    readonly [key: string]: number;
                };
                readonly fuelServicePence: number;
                readonly defPencePerLitre: number;
                readonly lpgPencePerKg: number;
                readonly cleaningPencePerHour: number;
                readonly wasteNotEmptiedPence: number;
                readonly cassetteNotEmptiedPence: number;
                readonly latePencePerHour: number;
                readonly lateGraceMinutes: number;
                readonly kit: {
                    readonly [key: string]: {
                        readonly newPence: number;
                        readonly lifeYears: number;
                        readonly leastShare: number;
                    };
                };
                readonly damage: readonly {
                    readonly of: string;
                    /** @enum {string} */
                    readonly kind: "scratch" | "dent" | "tear" | "stain" | "crack" | "missing";
                    readonly upToMm?: number;
                    readonly pence: number;
                    /** @enum {string} */
                    readonly part: "repair" | "replace";
                    readonly lifeYears: number;
                    readonly leastShare: number;
                }[];
            };
        };
        readonly InsurancePolicy: {
            readonly id: string;
            /** Format: date */
            readonly validFrom: string;
            /** Format: date */
            readonly validTo: string;
            readonly age: {
                readonly min: number;
                readonly max: number;
                /** @enum {string} */
                readonly outcome: "refer" | "refuse";
            };
            readonly yearsHeld: {
                readonly min: number;
                /** @enum {string} */
                readonly outcome: "refer" | "refuse";
            };
            readonly convictions: {
                readonly withinYears: number;
                readonly maxCount: number;
                readonly maxPointsEach: number;
                readonly maxPointsTotal: number;
                /** @enum {string} */
                readonly outcome: "refer" | "refuse";
            };
            readonly codes: readonly {
                readonly prefix: string;
                readonly withinYears: number;
                /** @enum {string} */
                readonly outcome: "refer" | "refuse";
            }[];
            readonly faultIncidents3y: {
                readonly max: number;
                /** @enum {string} */
                readonly outcome: "refer" | "refuse";
            };
            /** @enum {string} */
            readonly disqualified3y: "refer" | "refuse";
            readonly maxMamKg: number;
            readonly countries: readonly string[];
            readonly maxNightsAbroad: number;
        };
        readonly TermsAnswer: {
            readonly hire: {
                readonly versionId: string;
                readonly terms: components["schemas"]["Terms"];
            } | null;
            readonly insurance: {
                readonly versionId: string;
                readonly policy: components["schemas"]["InsurancePolicy"];
            } | null;
        };
        readonly PutTerms: {
            readonly hire?: components["schemas"]["Terms"];
            readonly insurance?: components["schemas"]["InsurancePolicy"];
        };
        readonly Today: {
            /** Format: date */
            readonly date: string;
            readonly now: string;
            readonly out: readonly components["schemas"]["HireSummary"][];
            readonly back: readonly components["schemas"]["HireSummary"][];
            readonly onTheRoad: readonly components["schemas"]["HireSummary"][];
            readonly blockers: readonly {
                readonly hireId: string;
                readonly hire: components["schemas"]["HireSummary"];
                /** @enum {string} */
                readonly why: "glass" | "late";
                readonly lateMinutes: number;
                readonly next: {
                    readonly hireId: string;
                    readonly customer: string;
                    readonly from: string;
                } | null;
                readonly readyAt: string | null;
            }[];
            readonly open: {
                readonly enquiries: number;
                readonly quotes: number;
                readonly toSettle: number;
            };
            readonly enquiries: readonly components["schemas"]["HireSummary"][];
            readonly toSettle: readonly components["schemas"]["HireSummary"][];
        };
        readonly DueLine: {
            /** @enum {string} */
            readonly kind: "mot" | "tax" | "insurance" | "service" | "habitation" | "lpgCheck" | "lpgHose" | "wiring" | "extinguisher" | "smokeAlarm" | "coAlarm" | "tyres" | "wheelTorque" | "regulator" | "appliances" | "gasAlarm" | "batteryTest" | "fixings" | "waterSanitise" | "showerHead" | "firstAid";
            /** @enum {string} */
            readonly status: "law" | "policy" | "guidance";
            readonly source: string;
            readonly dueOn: string | null;
            readonly dueKm: number | null;
            readonly days: number | null;
            /** @enum {string} */
            readonly state: "inDate" | "soon" | "over" | "missing";
            readonly last: {
                /** Format: date */
                readonly on: string;
                readonly who: string;
                readonly reference: string | null;
                readonly km: number | null;
            } | null;
        };
        readonly Defect: {
            readonly id: string;
            /** @enum {string} */
            readonly class: "safety" | "comfort";
            readonly what: string;
            readonly where: string;
            readonly notedBy: string;
            readonly at: string;
            readonly hireId: string | null;
            readonly photograph: string | null;
            readonly closed: {
                readonly at: string;
                readonly by: string;
                readonly how: string;
            } | null;
        };
        readonly VehicleUpkeep: {
            /** Format: date */
            readonly today: string;
            readonly odometer: {
                readonly km: number;
                /** Format: date */
                readonly on: string;
            } | null;
            readonly due: readonly components["schemas"]["DueLine"][];
            readonly history: readonly {
                readonly id: string;
                /** @enum {string} */
                readonly duty: "mot" | "tax" | "insurance" | "service" | "habitation" | "lpgCheck" | "lpgHose" | "wiring" | "extinguisher" | "smokeAlarm" | "coAlarm" | "tyres" | "wheelTorque" | "regulator" | "appliances" | "gasAlarm" | "batteryTest" | "fixings" | "waterSanitise" | "showerHead" | "firstAid";
                /** Format: date */
                readonly on: string;
                readonly who: string;
                readonly reference: string | null;
                readonly km: number | null;
                readonly dueOn: string | null;
                readonly dueKm: number | null;
            }[];
            readonly damp: readonly {
                readonly id: string;
                /** Format: date */
                readonly on: string;
                readonly position: string;
                readonly percent: number;
                /** @enum {string} */
                readonly band: "none" | "recheck" | "investigate" | "strip";
                readonly meter: string;
                readonly weather: string;
                readonly who: string;
            }[];
            readonly water: readonly {
                readonly id: string;
                /** Format: date */
                readonly on: string;
                readonly act: string;
                readonly who: string;
            }[];
            readonly frost: {
                /** Format: date */
                readonly on: string;
                readonly state: string;
                readonly who: string;
            } | null;
            readonly defects: readonly components["schemas"]["Defect"][];
        };
        readonly FleetDue: {
            /** Format: date */
            readonly today: string;
            readonly vehicles: readonly {
                readonly vehicle: {
                    readonly id: string;
                    readonly name: string;
                    readonly registration: string;
                };
                readonly due: readonly components["schemas"]["DueLine"][];
                readonly openDefects: {
                    readonly safety: number;
                    readonly comfort: number;
                };
            }[];
        };
        readonly NewUpkeep: {
            /** @constant */
            readonly kind: "done";
            /** @enum {string} */
            readonly duty: "mot" | "tax" | "insurance" | "service" | "habitation" | "lpgCheck" | "lpgHose" | "wiring" | "extinguisher" | "smokeAlarm" | "coAlarm" | "tyres" | "wheelTorque" | "regulator" | "appliances" | "gasAlarm" | "batteryTest" | "fixings" | "waterSanitise" | "showerHead" | "firstAid";
            /** Format: date */
            readonly on: string;
            readonly who: string;
            readonly reference?: string | null;
            readonly km?: number | null;
            readonly dueOn?: string | null;
        } | {
            /** @constant */
            readonly kind: "damp";
            /** Format: date */
            readonly on: string;
            readonly who: string;
            readonly position: string;
            readonly percent: number;
            readonly meter: string;
            readonly weather: string;
        } | {
            /** @constant */
            readonly kind: "water";
            /** Format: date */
            readonly on: string;
            readonly who: string;
            /** @enum {string} */
            readonly act: "flushed" | "sanitised";
        } | {
            /** @constant */
            readonly kind: "frost";
            /** Format: date */
            readonly on: string;
            readonly who: string;
            /** @enum {string} */
            readonly state: "inUse" | "drained" | "winterised" | "laidUp";
        };
        readonly NewDefect: {
            /** @enum {string} */
            readonly class: "safety" | "comfort";
            readonly what: string;
            readonly where: string;
            readonly hireId?: string | null;
            readonly photograph?: string | null;
        };
        readonly Turnaround: {
            readonly id: string;
            readonly hireId: string;
            readonly reference: string;
            readonly vehicle: {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
            };
            readonly backAt: string;
            readonly nextOut: string | null;
            readonly ready: boolean;
            readonly jobs: readonly {
                readonly id: string;
                readonly code: string;
                readonly minutes: number;
                /** @enum {string} */
                readonly skill: "cleaner" | "yard" | "technician";
                readonly done: boolean;
                readonly start: string | null;
            }[];
        };
        readonly Turnarounds: {
            /** Format: date */
            readonly date: string;
            readonly turnarounds: readonly components["schemas"]["Turnaround"][];
        };
        readonly VehicleDescription: {
            readonly id: string;
            readonly name: string;
            readonly registration: string;
            /** @enum {string} */
            readonly bodyStyle: "panelVanConversion" | "elevatingRoofCampervan" | "lowProfile" | "overcab" | "aClass" | "campervan";
            readonly validFrom: string;
            readonly firstRegistered: string;
            /** @enum {string} */
            readonly fuel: "diesel" | "petrol" | "electric" | "hydrogen";
            /** @enum {string} */
            readonly category: "M1" | "N1";
            readonly emissionClass: string;
            readonly dimensions: {
                readonly lengthM: number;
                readonly widthM: number;
                readonly heightM: number;
                readonly wheelbaseM: number;
                readonly rearOverhangM: number;
            };
            readonly masses: {
                readonly mamKg: number;
                readonly technicalMaxKg: number;
                readonly miroKg: number;
                readonly miroBasis: {
                    readonly fuelShare: number;
                    readonly driverKg: number;
                    readonly waterShare: number;
                    readonly lpgCylinders: number;
                    readonly weighed: boolean;
                    readonly sdKg?: number;
                    readonly weighedOn?: string;
                };
                readonly miroFrontKg: number;
                readonly unladenKg?: number;
                readonly axleMaxKg: {
                    readonly front: number;
                    readonly rear: number;
                };
                readonly options: readonly {
                    readonly name: string;
                    readonly massKg: number;
                    readonly behindFrontAxleM: number;
                }[];
            };
            readonly body: {
                readonly floorAreaM2: number;
                readonly volumeM3: number;
                readonly lossWK: number;
                readonly capacityWhK: number;
                readonly airChangesPerHour: number;
            };
            readonly consumption: {
                readonly litresPer100Km: number;
            };
            readonly systems: readonly {
                readonly id: string;
                readonly kind: string;
                readonly spec: {
                    readonly [key: string]: unknown;
                };
            }[];
        };
        readonly VehicleSummary: {
            readonly id: string;
            readonly name: string;
            readonly registration: string;
            readonly bodyStyle: string;
            readonly belts: number;
            readonly berths: number;
            readonly mamKg: number;
            readonly payloadKg: number;
            readonly fitted: readonly string[];
            /** @enum {string} */
            readonly now: "atDepot" | "onHire";
            readonly nextOut: {
                readonly hireId: string;
                readonly reference: string;
                readonly from: string;
            } | null;
            readonly due: readonly {
                readonly kind: string;
                /** Format: date */
                readonly dueOn: string;
                readonly days: number;
            }[];
        };
        readonly VehiclePage: {
            readonly summary: components["schemas"]["VehicleSummary"];
            readonly description: components["schemas"]["VehicleDescription"];
            readonly derived: unknown;
            readonly findings: readonly components["schemas"]["Finding"][];
            readonly weighed: {
                readonly ticketId: string;
                readonly isOlderThanFitting: boolean;
            } | null;
            readonly tickets: readonly components["schemas"]["KeptTicket"][];
            readonly versions: readonly {
                readonly versionId: string;
                /** Format: date */
                readonly validFrom: string;
                readonly at: string;
            }[];
            readonly hires: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly from: string;
                readonly to: string;
                readonly stage: string;
            }[];
            readonly marks: readonly components["schemas"]["KnownMark"][];
            readonly dueDates: readonly {
                /** @enum {string} */
                readonly kind: "mot" | "tax" | "insurance" | "service" | "habitation" | "lpgCheck" | "lpgHose" | "wiring" | "extinguisher" | "smokeAlarm" | "coAlarm" | "tyres" | "wheelTorque" | "regulator" | "appliances" | "gasAlarm" | "batteryTest" | "fixings" | "waterSanitise" | "showerHead" | "firstAid";
                /** Format: date */
                readonly dueOn: string;
            }[];
            readonly vehicleClass: string;
            readonly maxDogs: number;
        };
        readonly KnownMark: {
            readonly recordId: string;
            readonly hireId: string | null;
            readonly since: string;
            readonly part: string;
            readonly view: string;
            readonly xShare: number;
            readonly yShare: number;
            readonly markKind: string;
            readonly sizeMm: number | null;
            readonly note: string | null;
            readonly photographs: readonly string[];
        };
        readonly VehicleTicket: {
            readonly reference: string;
            /** Format: date */
            readonly weighedOn: string;
            readonly frontKg: number;
            readonly rearKg: number;
            readonly scaleIntervalKg?: number;
            readonly aboard: {
                readonly fuelShare: number;
                readonly waterLitres: number;
                readonly lpgCylinders: number;
                readonly frontPeopleKg: number;
                readonly rearPeopleKg: number;
            };
        };
        readonly KeptTicket: {
            readonly id: string;
            readonly ticket: components["schemas"]["VehicleTicket"];
            readonly by: string;
            readonly at: string;
            readonly withdrawnAt: string | null;
        };
        readonly DescriptionChange: {
            /** @enum {string} */
            readonly what: "system" | "field";
            readonly kind: string | null;
            /** @enum {string} */
            readonly change?: "fitted" | "removed";
            readonly field?: string;
            readonly from?: string | number | boolean | null;
            readonly to?: string | number | boolean | null;
        };
        readonly VehicleVersions: {
            readonly id: string;
            readonly name: string;
            readonly versions: readonly {
                readonly versionId: string;
                /** Format: date */
                readonly validFrom: string;
                readonly at: string;
                readonly by: string | null;
                readonly isReplaced: boolean;
                readonly isInForce: boolean;
                readonly changes: readonly components["schemas"]["DescriptionChange"][];
            }[];
        };
        readonly VehicleVersion: {
            readonly versionId: string;
            /** Format: date */
            readonly validFrom: string;
            readonly description: components["schemas"]["VehicleDescription"];
        };
        readonly PutVehicle: {
            readonly description: components["schemas"]["VehicleDescription"];
            readonly dueDates?: readonly {
                /** @enum {string} */
                readonly kind: "mot" | "tax" | "insurance" | "service" | "habitation" | "lpgCheck" | "lpgHose" | "wiring" | "extinguisher" | "smokeAlarm" | "coAlarm" | "tyres" | "wheelTorque" | "regulator" | "appliances" | "gasAlarm" | "batteryTest" | "fixings" | "waterSanitise" | "showerHead" | "firstAid";
                /** Format: date */
                readonly dueOn: string;
            }[];
            readonly vehicleClass?: string;
            readonly maxDogs?: number;
        };
        readonly YardJob: {
            readonly id: string;
            /** @enum {string} */
            readonly walk: "out" | "back";
            readonly due: string;
            readonly hireId: string;
            readonly reference: string;
            readonly customer: string;
            readonly stage: components["schemas"]["Stage"];
            readonly vehicle: {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                readonly versionId: string;
                /** @description engine: VehicleDescription */
                readonly description: unknown;
            };
            readonly walkRound: unknown;
            readonly knownMarks: readonly components["schemas"]["KnownMark"][];
            readonly outRecords: readonly components["schemas"]["Record"][];
            readonly signaturesNeeded: readonly string[];
            readonly briefing: unknown;
            readonly conditions: readonly components["schemas"]["Finding"][];
            readonly done: boolean;
        };
        readonly YardJobs: {
            /** Format: date */
            readonly date: string;
            readonly jobs: readonly components["schemas"]["YardJob"][];
        };
    };
    responses: never;
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    readonly health: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        /** @enum {boolean} */
                        readonly ok: true;
                        readonly version: string;
                    };
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readSession: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Session"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly signIn: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["SignInInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Session"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly signOut: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Done"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readSetup: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly token: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["SetupState"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly setUp: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly token: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["SetupInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Done"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly today: {
        readonly parameters: {
            readonly query?: {
                readonly date?: string;
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Today"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly availability: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["AvailabilityQueryInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Availability"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly yardJobs: {
        readonly parameters: {
            readonly query?: {
                readonly date?: string;
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["YardJobs"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly diary: {
        readonly parameters: {
            readonly query: {
                readonly from: string;
                readonly to: string;
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Diary"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly hireVehicles: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HireVehicles"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly moveHire: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["MoveHireInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly pinHire: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PinHireInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly addBlock: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["NewVehicleBlockInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["VehicleBlock"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly removeBlock: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        /** @enum {boolean} */
                        readonly done: true;
                    };
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly tidyDiary: {
        readonly parameters: {
            readonly query: {
                readonly from: string;
                readonly to: string;
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["DiaryTidy"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly applyTidy: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["ApplyDiaryTidyInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Done"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly listVehicles: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        readonly vehicles: readonly components["schemas"]["VehicleSummary"][];
                    };
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly createVehicle: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PutVehicleInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["VehiclePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readVehicle: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["VehiclePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly putVehicle: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PutVehicleInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["VehiclePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly listVersions: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["VehicleVersions"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readVersion: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
                readonly versionId: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["VehicleVersion"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly addTicket: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["VehicleTicketInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["VehiclePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly withdrawTicket: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
                readonly ticketId: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["VehiclePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly fleetDue: {
        readonly parameters: {
            readonly query?: {
                readonly days?: number;
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["FleetDue"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readUpkeep: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["VehicleUpkeep"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly addUpkeep: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["NewUpkeepInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["VehicleUpkeep"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly addDefect: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["NewDefectInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["VehicleUpkeep"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly closeDefect: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": {
                    readonly how: string;
                };
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["VehicleUpkeep"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly tellDefect: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": {
                    readonly hireId: string;
                    readonly signer: string;
                };
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        readonly told: boolean;
                    };
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly turnarounds: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Turnarounds"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readTerms: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["TermsAnswer"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly putTerms: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PutTermsInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["TermsAnswer"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly listHires: {
        readonly parameters: {
            readonly query?: {
                readonly q?: string;
                readonly stage?: components["schemas"]["StageInput"];
                readonly which?: "inHand" | "over" | "all";
                readonly ended?: "true" | "false";
                readonly from?: string;
                readonly to?: string;
                readonly after?: string;
                readonly limit?: number;
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HireList"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly newHire: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["NewHireInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readHire: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly setVehicle: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["SetVehicleInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly setParty: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PartyInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly quote: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["QuoteRequestInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly book: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly setDrivers: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["SetDriversInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly override: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["OverrideRequestInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly checkGate: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["GateCheckInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly handOver: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly takeBack: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["ReturnRequestInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly endHire: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["EndHireInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly setTrip: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["TripInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readForecast: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["ForecastState"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readLoad: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["LoadState"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly setLoad: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["LoadPlanInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readBriefing: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["BriefingState"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readAbroad: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["AbroadState"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly setAbroad: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["AbroadInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly pay: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["NewPaymentInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readPaper: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
                readonly paper: "quote" | "agreement" | "countries" | "receipt" | "statement" | "walkOut" | "walkBack";
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readDaySheet: {
        readonly parameters: {
            readonly query?: {
                readonly date?: string;
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readDifferences: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Differences"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly setClasses: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["SetClassesInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Differences"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readSettlement: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["SettlementState"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly settle: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly releaseDeposit: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly close: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirePage"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly makeHirerLink: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HirerLink"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readGuide: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly token: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Guide"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly addGuideRecords: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly token: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["RecordBatchInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["RecordAnswer"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readHelp: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Help"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly addRecords: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["RecordBatchInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["RecordAnswer"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly exportRecords: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["RecordExport"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly readPhoto: {
        readonly parameters: {
            readonly query?: {
                readonly size?: "small" | "large" | "original";
            };
            readonly header?: never;
            readonly path: {
                readonly sha256: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
    readonly putPhoto: {
        readonly parameters: {
            readonly query?: {
                readonly hire?: string;
            };
            readonly header?: never;
            readonly path: {
                readonly sha256: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["PhotoState"];
                };
            };
            /** @description Default Response */
            readonly 400: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 401: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 403: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 409: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 413: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
            /** @description Default Response */
            readonly 429: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Error"];
                };
            };
        };
    };
}
