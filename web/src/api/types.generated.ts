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
    readonly "/api/setup/{token}/places": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Places by name while there is no firm yet, so that the depot is found without knowing degrees */
        readonly get: operations["findSetUpPlaces"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/accounts": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Everybody who signs in at this depot, those that are shut too */
        readonly get: operations["listAccounts"];
        readonly put?: never;
        /** One more who signs in, with a first password that they change themselves */
        readonly post: operations["addAccount"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/accounts/{id}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** Name, role, or shut; they are signed out everywhere. One manager always stays */
        readonly put: operations["changeAccount"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/accounts/{id}/password": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** A new password for somebody who forgot theirs; they are signed out everywhere */
        readonly put: operations["setPassword"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/session/password": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** One's own password, by the one that held so far; signed out everywhere but here */
        readonly put: operations["changeOwnPassword"];
        readonly post?: never;
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
    readonly "/api/terms/check": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Gaps and overlaps of a rate card before it is kept, and the prices of a year */
        readonly post: operations["checkTerms"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/terms/versions": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The versions of the hire terms, the newest first */
        readonly get: operations["termsVersions"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/terms/versions/{id}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** One version of the hire terms */
        readonly get: operations["termsVersion"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/depot": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Hours, turnaround, people on a usual day, school holidays */
        readonly get: operations["readDepot"];
        /** Change them; refused where somebody changed them meanwhile */
        readonly put: operations["putDepot"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/first-steps": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** What a new firm has still to enter before its first hire */
        readonly get: operations["firstSteps"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/depot/times": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** How long things take at this depot, and from when each gate counts */
        readonly get: operations["readDepotTimes"];
        /** Other times of the depot; they hold at once */
        readonly put: operations["putDepotTimes"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/depot/figures": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Days of messages to hirers, life of a hirer's link, km a day by which a due distance is foreseen */
        readonly get: operations["readDepotFigures"];
        /** Other figures; they hold at once, for what has not gone out or been made */
        readonly put: operations["putDepotFigures"];
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
    readonly "/api/enquiries": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Who waits for a vehicle and could be served now; what was lost or cancelled, and why */
        readonly get: operations["enquiries"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/waiting": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** Put an enquiry on the waiting list */
        readonly put: operations["putWaiting"];
        readonly post?: never;
        /** Take an enquiry off the waiting list */
        readonly delete: operations["dropWaiting"];
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/take": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Choose the vehicle, quote, accept and book at once, or nothing of it */
        readonly post: operations["takeHire"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/ending": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** What ending the hire today costs, under the scale that it was accepted with */
        readonly get: operations["previewEnding"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/stock": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Things that travel with hires, and who has them */
        readonly get: operations["listStock"];
        readonly put?: never;
        /** A numbered thing, or a lot of like things */
        readonly post: operations["addStockItem"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/stock/{id}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** One thing with its history */
        readonly get: operations["readStockItem"];
        /** Change it or take it out of use, with the reason */
        readonly put: operations["changeStockItem"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/stock": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** What travels with a hire, and what of it is packed */
        readonly get: operations["readHireStock"];
        /** What travels with a hire beside the extras of its quote; held from the booking on */
        readonly put: operations["setHireStock"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/stock/{holdId}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Packed, taken out again, or back on the shelf */
        readonly post: operations["actOnHireStock"];
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
        /** The trip with its stops; refused where another was kept since `basedOn` */
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
    readonly "/api/forecast-outcomes": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** How good forecasts were: measured use beside forecast use, before and after what returns taught */
        readonly get: operations["forecastOutcomes"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/use": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** What a hire that is over used, as far as it was read, beside its forecast */
        readonly get: operations["readUse"];
        /** Litres by the till, gas by weight, levels and kilometres of a hire that is over */
        readonly put: operations["writeUse"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/places": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Places in Europe by name, from a gazetteer that is aboard; with height and time zone */
        readonly get: operations["findPlaces"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/trip-question": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** What the trip room is asked for this hire, for a browser that searches the stop plan itself */
        readonly get: operations["readTripQuestion"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/weather-service": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Whether this server knows an open weather service, and whether this depot uses it */
        readonly get: operations["readWeatherService"];
        /** Let this depot fetch forecasts, or not; off to begin with */
        readonly put: operations["putWeatherService"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/weather": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Fetch the forecast for the days of the trip that it covers; kept with the trip */
        readonly post: operations["fetchWeather"];
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
    readonly "/api/rules": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Every dated rule with its source, what the depot changed, and what falls due for checking */
        readonly get: operations["listRules"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/rules/{ruleId}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** The depot's own version of a rule from its day on; the one that ships stays visible */
        readonly put: operations["correctRule"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/rules/{ruleId}/readings": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** The rule was read again, on this day in this source, and stands */
        readonly post: operations["confirmRule"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/rules/{ruleId}/withdrawals": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Take the depot's own version of a day back; the one below holds again */
        readonly post: operations["withdrawRule"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/missing-rules": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** What was not checked for this hire, or rests on nothing firm */
        readonly get: operations["missingRules"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/insurance/preview": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Which of the booked drivers these criteria would refer or refuse */
        readonly post: operations["previewInsurance"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/notes": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Notes and promises of a hire, and who pays where it is not the hirer */
        readonly get: operations["readNotes"];
        readonly put?: never;
        /** A note or a promise, with the moment at which it must reappear */
        readonly post: operations["addNote"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/notes/{noteId}/done": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** Tick a note, or take the tick back */
        readonly put: operations["tickNote"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/payer": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** Who pays, where it is not the hirer */
        readonly put: operations["setPayer"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/reminders": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** What a day must not forget: notes whose moment has come, and check codes to ask for */
        readonly get: operations["reminders"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/driver-checks": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** For each driver: from when a check code may be asked for, whether one waits, and what was seen */
        readonly get: operations["readDriverChecks"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/drivers/{driverId}/check-code": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** A check code that the driver made; sealed until it is used or dead */
        readonly put: operations["putCheckCode"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/drivers/{driverId}/check-code/reading": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Show the code to whoever looks the licence up; written to the audit */
        readonly post: operations["readCheckCode"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/drivers/{driverId}/checks": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** What was seen of a driver's entitlement; a code is used up by it and erased */
        readonly post: operations["checkDriver"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/customer": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** Name, telephone, mail and postal address of the hirer; what was signed keeps what it named */
        readonly put: operations["setCustomer"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/drivers/{driverId}/particulars": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** Address and licence number of a driver, which a notice of a fine asks for */
        readonly put: operations["setDriverParticulars"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/drivers/{driverId}/licence-number/reading": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Show a driver's licence number; written to the audit */
        readonly post: operations["readLicenceNumber"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/customer/erasure": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** What holds the erasure of the hirer, whether one waits, and which tablets still keep something */
        readonly get: operations["readErasure"];
        readonly put?: never;
        /** Erase the hirer as a person, now or as soon as nothing holds it; money and findings stay, unnamed */
        readonly post: operations["eraseCustomer"];
        /** Take back an erasure that waits */
        readonly delete: operations["withdrawErasure"];
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/customer/erasure/paper": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** What was erased or waits, what stays and why, and the tablets that still keep something, as a PDF */
        readonly get: operations["readErasurePaper"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/yard/kept": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** A tablet says of which hires it keeps something, and is told which of them to forget */
        readonly post: operations["tabletKeeps"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/changes": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** What has changed about a hire, and what may */
        readonly get: operations["readChanges"];
        readonly put?: never;
        /** Make a change as it was seen, all of it or nothing */
        readonly post: operations["confirmChange"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/changes/look": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** What a change would void, ask for and cost; nothing is written */
        readonly post: operations["lookAtChange"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/changes/{change}/papers/{paper}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** A paper that answers a notice, as a PDF */
        readonly get: operations["readChangePaper"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/messages": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** What went to hirers, what waits, what became of it, and what is written by itself next */
        readonly get: operations["listMessages"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/message-settings": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The depot's sender, and what is sent by itself */
        readonly get: operations["readMessageSettings"];
        /** Change them; what is turned on goes for what happens from now on */
        readonly put: operations["putMessageSettings"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/message": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** A message with the facts of this hire, as it would go out now */
        readonly get: operations["previewMessage"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/messages": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Put a message into the outbox, for now or for its moment */
        readonly post: operations["sendMessage"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/messages/{id}/again": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Try one again that was not sent, came back, or may have been sent */
        readonly post: operations["retryMessage"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/messages/{id}/withdraw": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Take one back that waits */
        readonly post: operations["withdrawMessage"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/messages/{id}/bounced": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Note that one came back */
        readonly post: operations["bounceMessage"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/calendar/{token}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The calendar that a secret link opens, as iCalendar */
        readonly get: operations["readCalendar"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/calendar-feeds": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Secret links to calendars, the ended ones too */
        readonly get: operations["listCalendarFeeds"];
        readonly put?: never;
        /** Make a secret link; it is shown once */
        readonly post: operations["makeCalendarFeed"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/calendar-feeds/{id}/end": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** End a link: it opens nothing from now on */
        readonly post: operations["endCalendarFeed"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/vehicles/{id}/calendar": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Take in a calendar file as periods off the road: first a dry run, then all of it at once */
        readonly post: operations["importCalendar"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/import/{what}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Take in customers, vehicles or hires as comma-separated values: first a dry run, then all of it at once */
        readonly post: operations["importRows"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/export/{what}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Customers or hires as comma-separated values */
        readonly get: operations["exportRows"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/vehicle-drafts": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Vehicles that came in as a list and are not described yet */
        readonly get: operations["listVehicleDrafts"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/vehicle-drafts/{id}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        readonly post?: never;
        /** Take one off the list */
        readonly delete: operations["removeVehicleDraft"];
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
    readonly "/api/hires/{id}/money": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Ledger, schedule, holds and invoices of a hire */
        readonly get: operations["readHireMoney"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/money/parts": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** Agree with the hirer when which part of the price is paid */
        readonly put: operations["agreeParts"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/money/charges": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Charge or credit something beyond the price */
        readonly post: operations["addCharge"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/money/refunds": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Pay back a payment by the way it came, never more than came */
        readonly post: operations["refund"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/money/undo": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Undo an entry by a counter-entry: money that did not arrive, or keyed in wrongly */
        readonly post: operations["undoEntry"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/invoices": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Invoice what is not invoiced yet; a credit note where less is charged than was invoiced */
        readonly post: operations["issueInvoice"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/invoices/{invoiceId}/credit": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Take back a whole invoice by a credit note */
        readonly post: operations["creditInvoice"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/invoices/{invoiceId}/paper": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** An invoice or credit note as a PDF, as it was issued */
        readonly get: operations["readInvoice"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/money": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Hirers' money held, what is overdue, holds that run out, transfers that failed */
        readonly get: operations["readMoney"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/money/firm": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        /** Name, address and VAT number of the firm on its invoices, from today */
        readonly put: operations["setFirmOnInvoices"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/money/postings": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Double-entry postings of a span of days as CSV for the accountant, one row each */
        readonly get: operations["exportPostings"];
        readonly put?: never;
        readonly post?: never;
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
    readonly "/api/hires/{id}/dispute-pack": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Everything for a dispute as a ZIP: one PDF, photographs as taken, records, receipts, how to check them */
        readonly get: operations["readDisputePack"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/guide/{token}/papers/{paper}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The hirer's own copy as a PDF, with its hash and the head of the chain */
        readonly get: operations["readOwnPaper"];
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
    readonly "/api/day-pack": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The day sheet and, for each hire of the day, its agreement, countries and blank walk-round, to print the evening before */
        readonly get: operations["readDayPack"];
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
    readonly "/api/hires/{id}/settlement/costs": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** An estimate or an invoice for a mark; what the invoice is lower goes back */
        readonly post: operations["addRepairCost"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/settlement/notes": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Cleaning, what a late return cost, the age of a part, a cost not known yet, a late claim, a file, a fine or toll, a repair */
        readonly post: operations["noteOnSettlement"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/questions": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Entries of one thing that do not agree, for whoever signs */
        readonly get: operations["readQuestions"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/vehicles/{id}/custody": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Who had the keys of a vehicle, from when, and what was recorded meanwhile */
        readonly get: operations["readCustody"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/settlement/second": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** A second person signs for a charge that was decided after the window */
        readonly post: operations["signSecond"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/settlement/replies": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Answer a disputed line, or take its charge back */
        readonly post: operations["replyToLine"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/settlement/hold": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Promise a day by which the hirer has an answer on the disputed part that is held */
        readonly post: operations["holdDeposit"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/lost-property": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Something left behind: what, where, and what became of it */
        readonly post: operations["addLostProperty"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/guide/{token}/statement": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The settlement as the hirer sees it, line by line with its evidence */
        readonly get: operations["readStatement"];
        readonly put?: never;
        /** The hirer accepts or disputes one line */
        readonly post: operations["answerStatement"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/terms/prices": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** What things are worth, what repairs cost, since when, and who changed what */
        readonly get: operations["readFirmPrices"];
        /** Both lists from a day on, as a new version of the hire terms; later versions with the old lists follow */
        readonly put: operations["putFirmPrices"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/terms/prices/lists/{list}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** One list that holds today as comma-separated values */
        readonly get: operations["writePriceList"];
        readonly put?: never;
        /** Reads comma-separated values of one list and keeps nothing: rows that are refused are named */
        readonly post: operations["readPriceList"];
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
        /** Readings of the panel, what was tried when something failed, marks that both missed, answers to the statement */
        readonly post: operations["addGuideRecords"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/guide/{token}/photos/{sha256}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** A photograph of this hire for the hirer's own screen (size: small, large) */
        readonly get: operations["readGuidePhoto"];
        /** A photograph of the hirer's own, under its hash; body image/jpeg, resumable */
        readonly put: operations["putGuidePhoto"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/hires/{id}/additions": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Marks that the hirer added from their own phone after the keys, and until when they may */
        readonly get: operations["readHirerAdditions"];
        readonly put?: never;
        readonly post?: never;
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
    readonly "/api/hires/{id}/corrections": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Put a reading, a count or a mark right, as a new record with who and why; the first stays */
        readonly post: operations["addCorrection"];
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
                readonly at?: string;
                readonly zone?: string;
            }[];
            readonly noCrossing: boolean;
            readonly papers: components["schemas"]["AbroadPapersInput"];
            readonly kitAboard: readonly string[];
            readonly got: readonly string[];
            readonly avoided?: readonly string[];
            readonly overhang: boolean;
            readonly plateShowsUk: boolean;
            readonly gaugeWorks?: boolean;
            readonly fillShare?: number;
        };
        readonly AbroadStateInput: {
            readonly abroad: components["schemas"]["AbroadInput"];
            readonly version: number;
            readonly home: string;
            readonly countries: unknown | null;
            readonly crossing: unknown | null;
            readonly findings: readonly components["schemas"]["FindingInput"][];
        };
        readonly AccountInput: {
            readonly id: string;
            readonly name: string;
            readonly login: string;
            /** @enum {string} */
            readonly role: "manager" | "desk" | "yard";
            readonly shutAt: string | null;
            readonly createdAt: string;
            readonly version: string;
        };
        readonly AccountsInput: {
            readonly accounts: readonly components["schemas"]["AccountInput"][];
        };
        readonly NewAccountInput: {
            readonly name: string;
            readonly login: string;
            /** @enum {string} */
            readonly role: "manager" | "desk" | "yard";
            readonly password: string;
        };
        readonly ChangeAccountInput: {
            readonly name: string;
            /** @enum {string} */
            readonly role: "manager" | "desk" | "yard";
            readonly shut: boolean;
        };
        readonly SetPasswordInput: {
            readonly password: string;
        };
        readonly OwnPasswordInput: {
            readonly current: string;
            readonly password: string;
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
            readonly incident: string | null;
            readonly todo: ("repair" | "orderPart" | "nothing") | null;
            readonly version: number;
            readonly asItLeft: {
                readonly of: ("place" | "side") | null;
                readonly photographs: readonly string[];
            };
        };
        readonly ReadingQuestionInput: {
            readonly checkId: string;
            /** @enum {string} */
            readonly when: "out" | "back";
            readonly entries: readonly {
                readonly id: string;
                readonly hash: string;
                readonly about: string;
                readonly value: number;
                readonly unit: string | null;
                readonly deviceId: string;
                readonly at: string;
                readonly photographs: readonly string[];
            }[];
        };
        readonly ReadingQuestionsInput: {
            readonly questions: readonly components["schemas"]["ReadingQuestionInput"][];
        };
        readonly SecondLookInput: {
            readonly due: readonly string[];
            readonly until: string;
            readonly isOver: boolean;
            readonly holds: boolean;
        };
        readonly CustodyInput: {
            readonly lines: readonly {
                readonly at: string;
                readonly until: string | null;
                /** @enum {string} */
                readonly holder: "hirer" | "depot" | "keySafe" | "workshop" | "driver";
                readonly who: string;
                readonly note: string | null;
                readonly hireId: string | null;
                readonly recordId: string | null;
                readonly marks: number;
                readonly photographs: number;
                readonly readings: number;
            }[];
        };
        readonly DifferencesInput: {
            readonly differences: readonly components["schemas"]["DifferenceInput"][];
            readonly result: unknown;
            readonly questions: readonly components["schemas"]["ReadingQuestionInput"][];
            readonly secondLook: components["schemas"]["SecondLookInput"];
            readonly outPhotographs: readonly {
                readonly sha256: string;
                readonly about: string;
            }[];
            readonly findings: readonly components["schemas"]["FindingInput"][];
        };
        readonly SetClassesInput: {
            readonly classes: readonly {
                readonly id: string;
                readonly class: components["schemas"]["MarkClassInput"];
                readonly reason: string;
                readonly incident?: string | null;
                readonly todo?: ("repair" | "orderPart" | "nothing") | null;
                readonly basedOn?: number;
            }[];
        };
        readonly SettlementEntryInput: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "accept" | "dispute" | "reply" | "withdraw" | "estimate" | "invoice" | "second" | "hold" | "lost" | "cleaning" | "loss" | "age" | "awaiting" | "claim" | "file" | "notice" | "mended";
            readonly about: string;
            readonly document: {
                readonly [key: string]: unknown;
            };
            readonly by: string | null;
            readonly at: string;
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
            readonly promisedOn: string | null;
            readonly lowered: components["schemas"]["MoneyInput"];
            readonly refundDue: components["schemas"]["MoneyInput"];
            readonly toKeep: components["schemas"]["MoneyInput"];
            readonly toGiveBack: components["schemas"]["MoneyInput"];
            readonly entries: readonly components["schemas"]["SettlementEntryInput"][];
        };
        readonly ReturnRequestInput: {
            readonly at: string;
        };
        readonly DiscountInput: {
            readonly kind: string;
            readonly percent?: number;
            readonly pence?: number;
            readonly reason: string;
        };
        readonly WaitingInput: {
            readonly hireId: string;
            readonly reference: string;
            readonly customer: string;
            readonly telephone: string;
            readonly people: number;
            readonly from: string;
            readonly to: string;
            readonly since: string;
            readonly versions: {
                readonly hire: number;
                readonly waiting: number;
            };
            readonly classes: readonly string[];
            readonly flexDays: number;
            readonly could: readonly {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                readonly from: string;
                readonly to: string;
                readonly price: components["schemas"]["MoneyInput"] | null;
            }[];
        };
        readonly EndingInput: {
            readonly hireId: string;
            readonly reference: string;
            readonly customer: string;
            readonly telephone: string;
            readonly people: number;
            readonly from: string;
            readonly to: string;
            /** @enum {string} */
            readonly as: "lost" | "cancelled" | "noShow";
            readonly code: ("price" | "datesTaken" | "tooSmall" | "licence" | "insurance" | "pets" | "elsewhere" | "noAnswer" | "plansChanged" | "illness" | "other") | null;
            readonly reason: string;
            readonly at: string;
            readonly keep: components["schemas"]["MoneyInput"] | null;
            readonly refund: components["schemas"]["MoneyInput"] | null;
        };
        readonly EnquiriesInput: {
            readonly waiting: readonly components["schemas"]["WaitingInput"][];
            readonly classes: readonly string[];
            readonly ended: readonly components["schemas"]["EndingInput"][];
            readonly reasons: readonly {
                readonly as: string;
                readonly code: string;
                readonly count: number;
            }[];
        };
        readonly WaitForInput: {
            readonly classes: readonly string[];
            readonly flexDays: number;
        };
        readonly TakeHireInput: {
            readonly vehicleId: string;
            readonly extras?: readonly {
                readonly id: string;
                readonly count: number;
            }[];
            readonly from?: string;
            readonly to?: string;
        };
        readonly EndingPreviewInput: {
            readonly charge: {
                readonly daysBefore: components["schemas"]["FigureInput"];
                readonly keepPercent: components["schemas"]["FigureInput"];
                readonly step: {
                    readonly atLeastDaysBefore: number;
                    readonly keepPercent: number;
                } | null;
                readonly keep: components["schemas"]["MoneyInput"];
                readonly paid: components["schemas"]["MoneyInput"];
                readonly refund: components["schemas"]["MoneyInput"];
                readonly owed: components["schemas"]["MoneyInput"];
            } | null;
            readonly termsId: string | null;
            readonly nextInLine: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
            }[];
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
                readonly reason?: string;
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
            readonly findings: readonly components["schemas"]["GateFindingInput"][];
        };
        readonly GlassReasonInput: {
            /** @enum {string} */
            readonly gate: "seats" | "licence" | "insurance" | "masses" | "diary" | "dueDates" | "defects" | "countries" | "crossing" | "season" | "resources" | "money" | "signatures";
            readonly code: string;
            readonly about?: string;
        };
        readonly GlassInput: {
            readonly state: components["schemas"]["GlassStateInput"];
            readonly before: {
                readonly state: components["schemas"]["GlassStateInput"];
                readonly at: string;
            } | null;
            readonly gates: readonly components["schemas"]["GateOnGlassInput"][];
            readonly because: readonly components["schemas"]["GlassReasonInput"][];
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
        readonly NewPaymentInput: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "payment" | "depositHeld" | "depositReleased" | "depositCharged" | "refund";
            readonly pence: number;
            /** Format: date */
            readonly on: string;
            /** @enum {string} */
            readonly method: "card" | "transfer" | "cash" | "cardHold";
            readonly of?: string;
            readonly note?: string;
        };
        readonly PaymentInput: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "payment" | "refund" | "depositHeld" | "depositReleased" | "depositCharged" | "charge" | "credit" | "failed" | "correction";
            readonly amount: components["schemas"]["MoneyInput"];
            /** Format: date */
            readonly on: string;
            readonly method: string;
            readonly of: string | null;
            readonly undoneBy: string | null;
            readonly note: string | null;
            readonly by: string;
            readonly at: string;
        };
        readonly PaymentPartsInput: {
            readonly agreed: readonly {
                /** Format: date */
                readonly dueOn: string;
                readonly pence: number;
            }[];
        };
        readonly NewChargeInput: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "charge" | "credit";
            /** @enum {string} */
            readonly line: "hire" | "extra" | "mileage" | "fuel" | "cleaning" | "late" | "damage" | "kit" | "fine" | "toll" | "administration" | "cancellation" | "deposit";
            readonly pence: number;
            /** Format: date */
            readonly on: string;
            readonly note: string;
        };
        readonly NewRefundInput: {
            readonly id: string;
            readonly of: string;
            readonly pence: number;
            /** Format: date */
            readonly on: string;
            readonly reason: string;
        };
        readonly UndoEntryInput: {
            readonly id: string;
            readonly entryId: string;
            /** @enum {string} */
            readonly kind: "failed" | "correction";
            /** Format: date */
            readonly on: string;
            readonly reason: string;
        };
        readonly CreditInvoiceInput: {
            readonly reason: string;
        };
        readonly InvoiceLineInput: {
            readonly key: string;
            /** @enum {string} */
            readonly line: "hire" | "extra" | "mileage" | "fuel" | "cleaning" | "late" | "damage" | "kit" | "fine" | "toll" | "administration" | "cancellation" | "deposit";
            readonly text: string;
            readonly facts: {
                readonly [key: string]: string | number;
            };
            /** @enum {string} */
            readonly vat: "standard" | "exempt" | "outsideScope";
            readonly ratePercent: number;
            readonly netPence: number;
            readonly vatPence: number;
            readonly grossPence: number;
        };
        readonly InvoiceDraftInput: {
            /** @enum {string} */
            readonly kind: "invoice" | "creditNote";
            readonly lines: readonly components["schemas"]["InvoiceLineInput"][];
            readonly net: components["schemas"]["MoneyInput"];
            readonly vat: components["schemas"]["MoneyInput"];
            readonly total: components["schemas"]["MoneyInput"];
        };
        readonly InvoiceInput: {
            readonly id: string;
            readonly number: string;
            /** @enum {string} */
            readonly kind: "invoice" | "creditNote";
            /** Format: date */
            readonly on: string;
            readonly total: components["schemas"]["MoneyInput"];
            readonly vat: components["schemas"]["MoneyInput"];
            readonly of: string | null;
            readonly creditedBy: string | null;
            readonly reason: string | null;
            readonly by: string;
        };
        readonly InstalmentInput: {
            /** @enum {string} */
            readonly what: "bookingDeposit" | "balance" | "part" | "charges";
            /** Format: date */
            readonly dueOn: string;
            readonly amount: components["schemas"]["MoneyInput"];
            readonly open: components["schemas"]["MoneyInput"];
            readonly overdueDays: number;
        };
        readonly CardHoldInput: {
            readonly id: string;
            readonly amount: components["schemas"]["MoneyInput"];
            /** Format: date */
            readonly on: string;
            /** Format: date */
            readonly standsTo: string;
            /** Format: date */
            readonly neededTo: string;
            /** @enum {string} */
            readonly state: "stands" | "lapsesBefore" | "lapsed";
            readonly daysLeft: number;
        };
        readonly HireMoneyInput: {
            readonly price: components["schemas"]["MoneyInput"];
            readonly due: components["schemas"]["MoneyInput"];
            readonly disputed: components["schemas"]["MoneyInput"];
            readonly settled: components["schemas"]["MoneyInput"];
            readonly owed: components["schemas"]["MoneyInput"];
            readonly depositDue: components["schemas"]["MoneyInput"];
            readonly depositHeld: components["schemas"]["MoneyInput"];
            readonly instalments: readonly components["schemas"]["InstalmentInput"][];
            readonly agreed: readonly {
                /** Format: date */
                readonly dueOn: string;
                readonly pence: number;
            }[];
            readonly agreedVersion: number;
            readonly holds: readonly components["schemas"]["CardHoldInput"][];
            readonly refundable: readonly {
                readonly id: string;
                readonly method: string;
                /** Format: date */
                readonly on: string;
                readonly amount: components["schemas"]["MoneyInput"];
                readonly left: components["schemas"]["MoneyInput"];
                readonly fromDeposit: boolean;
            }[];
            readonly entries: readonly components["schemas"]["PaymentInput"][];
            readonly undoable: readonly {
                readonly id: string;
                readonly failed: boolean;
            }[];
            readonly toInvoice: components["schemas"]["InvoiceDraftInput"] | null;
            readonly disputedLines: readonly components["schemas"]["InvoiceLineInput"][];
            readonly invoices: readonly components["schemas"]["InvoiceInput"][];
        };
        readonly FirmOnInvoicesInput: {
            readonly name: string;
            readonly address: string;
            readonly vatNumber: string | null;
        };
        readonly MoneyPageInput: {
            /** Format: date */
            readonly today: string;
            readonly held: {
                readonly deposits: components["schemas"]["MoneyInput"];
                readonly prepaid: components["schemas"]["MoneyInput"];
                readonly total: components["schemas"]["MoneyInput"];
                readonly onCards: components["schemas"]["MoneyInput"];
                readonly hires: readonly {
                    readonly hireId: string;
                    readonly reference: string;
                    readonly customer: string;
                    readonly registration: string;
                    readonly stage: string;
                    readonly deposits: components["schemas"]["MoneyInput"];
                    readonly prepaid: components["schemas"]["MoneyInput"];
                    readonly onCards: components["schemas"]["MoneyInput"];
                }[];
            };
            readonly overdue: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly registration: string;
                readonly stage: string;
                /** @enum {string} */
                readonly what: "bookingDeposit" | "balance" | "part" | "charges";
                /** Format: date */
                readonly dueOn: string;
                readonly open: components["schemas"]["MoneyInput"];
                readonly days: number;
            }[];
            readonly toPayBack: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly registration: string;
                readonly stage: string;
                readonly amount: components["schemas"]["MoneyInput"];
            }[];
            readonly holds: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly registration: string;
                readonly stage: string;
                readonly hold: components["schemas"]["CardHoldInput"];
            }[];
            readonly failed: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly registration: string;
                readonly stage: string;
                readonly amount: components["schemas"]["MoneyInput"];
                /** Format: date */
                readonly on: string;
                readonly note: string | null;
                readonly owed: components["schemas"]["MoneyInput"];
            }[];
            readonly vat: readonly {
                /** @enum {string} */
                readonly line: "hire" | "extra" | "mileage" | "fuel" | "cleaning" | "late" | "damage" | "kit" | "fine" | "toll" | "administration" | "cancellation" | "deposit";
                /** @enum {string} */
                readonly kind: "standard" | "exempt" | "outsideScope";
                readonly ratePercent: number;
                readonly source: string;
                readonly isRead: boolean;
                readonly toConfirm: string | null;
            }[];
            readonly firm: components["schemas"]["FirmOnInvoicesInput"] | null;
            readonly firmVersion: string;
            readonly accounts: readonly ("card" | "bank" | "cash" | "hirers" | "deposits" | "sales.standard" | "sales.exempt" | "sales.outsideScope" | "vat")[];
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
                readonly otherEvidence?: {
                    readonly seen: string;
                    readonly by: string;
                };
                /** Format: date */
                readonly visitingSince?: string;
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
                readonly settings?: {
                    readonly [key: string]: {
                        readonly [key: string]: number | string | boolean;
                    };
                };
                readonly leaveWithWaterL?: number;
            }[];
            readonly departWith: {
                readonly [key: string]: number;
            };
            readonly settings: {
                readonly [key: string]: {
                    readonly [key: string]: number | string | boolean;
                };
            };
            readonly weather?: {
                readonly source: string;
                readonly issued: string;
                readonly days: readonly {
                    /** Format: date */
                    readonly date: string;
                    readonly latitudeDeg: number;
                    readonly longitudeDeg: number;
                    readonly minC: number;
                    readonly maxC: number;
                    readonly sunKwhM2?: number;
                }[];
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
            readonly email: string;
            readonly address?: string;
        };
        readonly AskedInput: {
            readonly countries: readonly string[];
            readonly extras: readonly {
                readonly id: string;
                readonly count: number;
            }[];
            readonly drivers: number;
        };
        readonly NewHireInput: {
            readonly customer: components["schemas"]["CustomerInput"];
            readonly party: components["schemas"]["PartyInput"];
            readonly from: string;
            readonly to: string;
            readonly wishes?: string;
            readonly vehicleId?: string;
            readonly asked?: components["schemas"]["AskedInput"];
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
            readonly gatesLater: number;
            readonly worst: components["schemas"]["FindingInput"] | null;
            readonly late: ("out" | "back") | null;
            readonly toActOn: number;
            /** @description given only to: manager, desk */
            readonly owedPence?: number;
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
            readonly discount?: components["schemas"]["DiscountInput"] | null;
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
        readonly HirerOfHireInput: {
            readonly name: string;
            /** @description given only to: manager, desk; on the day of the hire also to: yard */
            readonly telephone?: string;
            /** @description given only to: manager, desk */
            readonly email?: string;
            /** @description given only to: manager, desk */
            readonly address?: string;
        };
        readonly EndingOfHireInput: {
            readonly as: string;
            readonly code: string | null;
            readonly at: string;
            /** @description given only to: manager, desk */
            readonly charge?: {
                readonly daysBefore: components["schemas"]["FigureInput"];
                readonly keepPercent: components["schemas"]["FigureInput"];
                readonly step: {
                    readonly atLeastDaysBefore: number;
                    readonly keepPercent: number;
                } | null;
                readonly keep: components["schemas"]["MoneyInput"];
                readonly paid: components["schemas"]["MoneyInput"];
                readonly refund: components["schemas"]["MoneyInput"];
                readonly owed: components["schemas"]["MoneyInput"];
            } | null;
            readonly termsId: string | null;
        };
        readonly HirePageInput: {
            readonly hire: components["schemas"]["HireSummaryInput"];
            readonly version: number;
            readonly versions: {
                readonly party: number;
                readonly drivers: number;
                readonly trip: number;
                readonly load: number;
                readonly quote: number;
                readonly customer: number;
                readonly waiting: number;
            };
            readonly wishes: string | null;
            readonly asked: components["schemas"]["AskedInput"] | null;
            readonly waiting: {
                readonly since: string;
                readonly classes: readonly string[];
                readonly flexDays: number;
            } | null;
            readonly ending: components["schemas"]["EndingOfHireInput"] | null;
            readonly ofTheDay: boolean;
            readonly customer: components["schemas"]["HirerOfHireInput"];
            readonly party: components["schemas"]["PartyInput"];
            readonly vehicle: {
                readonly id: string;
                readonly versionId: string;
                /** @description engine: VehicleDescription */
                readonly description: unknown;
            } | null;
            readonly driverNames: readonly {
                readonly id: string;
                readonly name: string;
            }[];
            /** @description given only to: manager, desk */
            readonly drivers?: readonly components["schemas"]["DriverInput"][];
            readonly trip: components["schemas"]["TripInput"] | null;
            readonly load: components["schemas"]["LoadStateInput"] | null;
            readonly forecastHash: string | null;
            /** @description given only to: manager, desk */
            readonly quote?: components["schemas"]["QuoteStateInput"] | null;
            /** @description given only to: manager, desk */
            readonly payments?: readonly components["schemas"]["PaymentInput"][];
            /** @description given only to: manager, desk */
            readonly money?: {
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
            readonly onTheRoad: readonly components["schemas"]["FindingInput"][];
            /** @description given only to: manager, desk */
            readonly settlement?: components["schemas"]["SettlementStateInput"] | null;
            readonly differences: readonly components["schemas"]["DifferenceInput"][];
            readonly hirerLink: {
                readonly expires: string;
            } | null;
            /** @description given only to: manager, desk */
            readonly history?: readonly {
                readonly at: string;
                readonly by: string;
                readonly what: string;
                readonly facts: {
                    readonly [key: string]: unknown;
                };
            }[];
        };
        readonly NewStockItemInput: {
            readonly kind: string;
            readonly name: string;
            readonly size?: string;
            readonly count: number;
            /** Format: date */
            readonly validFrom?: string;
            /** Format: date */
            readonly expiresOn?: string;
            /** Format: date */
            readonly retiredOn?: string;
            /** @default [] */
            readonly puts: readonly string[];
            readonly vehicleId?: string;
            readonly note?: string;
        };
        readonly ChangeStockItemInput: {
            readonly kind: string;
            readonly name: string;
            readonly size?: string;
            readonly count: number;
            /** Format: date */
            readonly validFrom?: string;
            /** Format: date */
            readonly expiresOn?: string;
            /** Format: date */
            readonly retiredOn?: string;
            /** @default [] */
            readonly puts: readonly string[];
            readonly vehicleId?: string;
            readonly note?: string;
            readonly version: number;
            readonly reason: string;
        };
        readonly StockItemInput: {
            readonly id: string;
            readonly kind: string;
            readonly name: string;
            readonly size?: string;
            readonly count: number;
            /** Format: date */
            readonly validFrom?: string;
            /** Format: date */
            readonly expiresOn?: string;
            /** Format: date */
            readonly retiredOn?: string;
            readonly puts: readonly string[];
            readonly vehicleId?: string;
            readonly note?: string;
            readonly version: number;
            readonly byTerms: boolean;
            /** @enum {string} */
            readonly date: "good" | "soon" | "over" | "retired";
            readonly freeNow: number;
            readonly holds: readonly {
                readonly id: string;
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly count: number;
                readonly from: string;
                readonly to: string;
                readonly packedAt: string | null;
            }[];
        };
        readonly StockListInput: {
            /** Format: date */
            readonly today: string;
            readonly items: readonly components["schemas"]["StockItemInput"][];
        };
        readonly StockHistoryInput: {
            readonly item: components["schemas"]["StockItemInput"];
            readonly history: readonly {
                readonly at: string;
                readonly by: string;
                readonly act: string;
                readonly reference: string | null;
                readonly note: string;
            }[];
            readonly past: readonly {
                readonly id: string;
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly count: number;
                readonly from: string;
                readonly to: string;
                readonly packedAt: string | null;
            }[];
        };
        readonly HireStockInput: {
            readonly asks: readonly {
                readonly kind: string;
                readonly size?: string;
                readonly count: number;
            }[];
            readonly version: number;
            readonly holds: readonly {
                readonly id: string;
                readonly itemId: string;
                readonly kind: string;
                readonly name: string;
                readonly size: string | null;
                readonly count: number;
                readonly puts: readonly string[];
                readonly expiresOn: string | null;
                readonly packedAt: string | null;
                readonly isBack: boolean;
            }[];
            readonly kinds: readonly {
                readonly kind: string;
                readonly sizes: readonly string[];
            }[];
            readonly findings: readonly components["schemas"]["FindingInput"][];
            readonly short: readonly {
                readonly kind: string;
                readonly holders: readonly {
                    readonly reference: string;
                    readonly customer: string;
                    readonly count: number;
                    readonly from: string;
                    readonly to: string;
                }[];
                readonly backAt: string | null;
                readonly fitsFrom: string | null;
            }[];
        };
        readonly SetHireStockInput: {
            readonly asks: readonly {
                readonly kind: string;
                readonly size?: string;
                readonly count: number;
            }[];
        };
        readonly StockActInput: {
            /** @enum {string} */
            readonly act: "pack" | "unpack" | "back";
            readonly note?: string;
        };
        readonly AvailabilityQueryInput: {
            readonly party: components["schemas"]["PartyInput"];
            readonly from: string;
            readonly to: string;
            readonly asked?: components["schemas"]["AskedInput"];
        };
        readonly CounterOfferInput: {
            readonly vehicleId: string;
            readonly vehicleName: string;
            readonly steps: readonly ({
                /** @constant */
                readonly kind: "shift";
                readonly from: string;
                readonly to: string;
                readonly hours: number;
            } | {
                /** @constant */
                readonly kind: "otherCrossing";
            } | {
                /** @constant */
                readonly kind: "moveHire";
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly vehicleName: string;
            } | {
                /** @constant */
                readonly kind: "decideOnDogs";
                readonly dogs: number;
            } | {
                /** @constant */
                readonly kind: "secondVehicle";
                readonly people: number;
                readonly vehicleName: string;
            })[];
            readonly trouble: components["schemas"]["FigureInput"];
        };
        readonly AvailabilityInput: {
            readonly offers?: readonly components["schemas"]["CounterOfferInput"][];
            readonly vehicles: readonly {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                readonly possible: boolean;
                readonly findings: readonly components["schemas"]["FindingInput"][];
                readonly nearestChanges: readonly {
                    /** @enum {string} */
                    readonly kind: "shift" | "smallerParty" | "renewDue" | "waivePets" | "otherLength" | "fewerExtras" | "otherVehicle";
                    readonly from?: string;
                    readonly to?: string;
                    readonly shiftHours?: number;
                    readonly people?: number;
                    readonly extra?: string;
                    readonly count?: number;
                    readonly vehicleId?: string;
                    readonly vehicleName?: string;
                }[];
                readonly price: components["schemas"]["MoneyInput"] | null;
            }[];
            readonly short?: readonly {
                readonly kind: string;
                readonly holders: readonly {
                    readonly reference: string;
                    readonly customer: string;
                    readonly count: number;
                    readonly from: string;
                    readonly to: string;
                }[];
                readonly backAt: string | null;
                readonly fitsFrom: string | null;
            }[];
        };
        readonly CalendarFeedInput: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "depot" | "vehicle" | "hire";
            readonly about: string | null;
            readonly withNames: boolean;
            readonly by: string;
            readonly at: string;
            readonly revokedAt: string | null;
        };
        readonly CalendarFeedsInput: {
            readonly feeds: readonly components["schemas"]["CalendarFeedInput"][];
        };
        readonly NewCalendarFeedInput: {
            /** @enum {string} */
            readonly kind: "depot" | "vehicle" | "hire";
            readonly about?: string;
            /** @default false */
            readonly withNames: boolean;
        };
        readonly CalendarFeedMadeInput: {
            readonly feed: components["schemas"]["CalendarFeedInput"];
            readonly url: string;
        };
        readonly CalendarImportInput: {
            readonly text: string;
            /** @enum {string} */
            readonly kind: "mot" | "service" | "repair" | "layUp" | "other";
            readonly confirm?: {
                readonly added: number;
                readonly rejected: number;
            };
        };
        readonly CalendarImportAnswerInput: {
            readonly done: boolean;
            readonly from: string;
            readonly until: string;
            readonly added: readonly {
                readonly title: string;
                readonly from: string;
                readonly to: string;
                readonly allDay: boolean;
            }[];
            readonly skipped: number;
            readonly past: number;
            readonly cancelled: number;
            readonly floating: number;
            readonly endless: readonly string[];
            readonly rejected: readonly {
                readonly title: string;
                /** @enum {string} */
                readonly why: "unknownZone" | "noLength" | "noStart" | "tooMany" | "broken" | "taken";
                readonly zone: string;
                readonly from: string | null;
                readonly to: string | null;
            }[];
        };
        readonly ForecastJudgementInput: {
            readonly count: number;
            readonly coverage: components["schemas"]["FigureInput"];
            readonly bias: components["schemas"]["FigureInput"];
            readonly observed: readonly number[];
        };
        readonly ForecastOutcomesInput: {
            readonly waiting: number;
            readonly returns: number;
            readonly taught: {
                readonly count: number;
                readonly from: string | null;
                readonly to: string | null;
            };
            readonly judged: {
                readonly count: number;
                readonly from: string | null;
                readonly to: string | null;
            };
            readonly shares: readonly number[];
            readonly stores: readonly {
                /** @enum {string} */
                readonly store: "battery12" | "lpg" | "freshWater" | "wasteWater" | "cassette" | "fuel" | "def" | "tractionBattery";
                readonly before: components["schemas"]["ForecastJudgementInput"];
                readonly after: components["schemas"]["ForecastJudgementInput"];
                readonly points: readonly {
                    readonly p10: number;
                    readonly p90: number;
                    readonly used: number;
                }[];
            }[];
            readonly rates: readonly {
                readonly vehicleId: string | null;
                /** @enum {string} */
                readonly store: "battery12" | "lpg" | "freshWater" | "wasteWater" | "cassette" | "fuel" | "def" | "tractionBattery";
                readonly rate: components["schemas"]["FigureInput"];
                readonly warmth?: components["schemas"]["FigureInput"];
                readonly low: components["schemas"]["FigureInput"];
                readonly high: components["schemas"]["FigureInput"];
                readonly spread: components["schemas"]["FigureInput"];
                readonly width: components["schemas"]["FigureInput"];
                readonly count: number;
                readonly wild: number;
            }[];
            readonly leftOut: readonly {
                /** @enum {string} */
                readonly store: "battery12" | "lpg" | "freshWater" | "wasteWater" | "cassette" | "fuel" | "def" | "tractionBattery";
                /** @enum {string} */
                readonly why: "notRead" | "filledUnknown" | "charged" | "ranOut" | "tooLittle";
                readonly count: number;
            }[];
            readonly vehicles: readonly {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
            }[];
        };
        readonly UseSheetInput: {
            readonly added: readonly {
                /** @enum {string} */
                readonly store: "battery12" | "lpg" | "freshWater" | "wasteWater" | "cassette" | "fuel" | "def" | "tractionBattery";
                readonly amount: number;
                readonly at: string;
            }[];
            readonly readings: readonly {
                /** @enum {string} */
                readonly store: "battery12" | "lpg" | "freshWater" | "wasteWater" | "cassette" | "fuel" | "def" | "tractionBattery";
                readonly value: number;
                /** @enum {string} */
                readonly unit: "V" | "%" | "Ah" | "Wh" | "L" | "kg";
                readonly at: string;
                readonly sd?: number;
            }[];
            readonly distanceKm: number | null;
        };
        readonly UseOfHireInput: {
            readonly sheet: components["schemas"]["UseSheetInput"];
            readonly version: string;
            readonly compared: readonly {
                /** @enum {string} */
                readonly store: "battery12" | "lpg" | "freshWater" | "wasteWater" | "cassette" | "fuel" | "def" | "tractionBattery";
                readonly used: components["schemas"]["FigureInput"];
                readonly mean: components["schemas"]["FigureInput"];
                readonly p10: number;
                readonly p90: number;
                readonly windows: number;
                readonly hours: number;
            }[] | null;
            readonly leftOut: readonly {
                /** @enum {string} */
                readonly store: "battery12" | "lpg" | "freshWater" | "wasteWater" | "cassette" | "fuel" | "def" | "tractionBattery";
                /** @enum {string} */
                readonly why: "notRead" | "filledUnknown" | "charged" | "ranOut" | "tooLittle";
            }[];
        };
        readonly HireChangeInput: {
            /** @constant */
            readonly kind: "vehicle";
            readonly vehicleId: string;
            readonly reason: string;
            /** @default null */
            readonly offTheRoadTo: string | null;
        } | {
            /** @constant */
            readonly kind: "extension";
            readonly to: string;
            /** @default [] */
            readonly moves: readonly {
                readonly hireId: string;
                readonly vehicleId: string;
            }[];
        } | {
            /** @constant */
            readonly kind: "late";
            readonly eta: string;
            /** @default [] */
            readonly moves: readonly {
                readonly hireId: string;
                readonly vehicleId: string;
            }[];
        } | {
            /** @constant */
            readonly kind: "early";
            readonly to: string;
            /** @default 0 */
            readonly backPence: number;
        } | {
            /** @constant */
            readonly kind: "party";
            readonly party: components["schemas"]["PartyInput"];
        } | {
            /** @constant */
            readonly kind: "driverAbsent";
            readonly driverId: string;
        } | {
            /** @constant */
            readonly kind: "teamIll";
            /** @enum {string} */
            readonly skill: "desk" | "cleaner" | "yard" | "technician";
        } | {
            /** @constant */
            readonly kind: "noShow";
            readonly reason: string;
        } | {
            /** @constant */
            readonly kind: "breakdown";
            readonly what: string;
            readonly where: string;
            readonly at: string;
            readonly drivable: boolean;
            /** @enum {string} */
            readonly cause: "ours" | "theirs" | "unknown";
            /** @default 0 */
            readonly nightsLost: number;
            /** @default null */
            readonly insurerToldAt: string | null;
        } | {
            /** @constant */
            readonly kind: "accident";
            readonly what: string;
            readonly where: string;
            readonly at: string;
            readonly drivable: boolean;
            /** @enum {string} */
            readonly cause: "ours" | "theirs" | "unknown";
            /** @default 0 */
            readonly nightsLost: number;
            /** @default null */
            readonly insurerToldAt: string | null;
        } | {
            /** @constant */
            readonly kind: "notice";
            /** @enum {string} */
            readonly notice: "privateParking" | "council" | "police" | "toll";
            readonly reference: string;
            readonly registration: string;
            readonly at: string;
            /** Format: date */
            readonly givenOn: string;
            /** @default  */
            readonly note: string;
        };
        readonly ChangeEffectsInput: {
            /** @enum {string} */
            readonly kind: "vehicle" | "extension" | "late" | "early" | "party" | "driverAbsent" | "teamIll" | "noShow" | "breakdown" | "accident" | "notice";
            readonly hash: string;
            readonly canConfirm: boolean;
            readonly stops: readonly {
                readonly code: string;
                readonly facts: {
                    readonly [key: string]: components["schemas"]["FigureInput"] | string | number;
                };
            }[];
            readonly findings: readonly components["schemas"]["FindingInput"][];
            readonly voided: readonly {
                readonly code: string;
                readonly facts: {
                    readonly [key: string]: components["schemas"]["FigureInput"] | string | number;
                };
            }[];
            readonly toDo: readonly {
                readonly code: string;
                readonly facts: {
                    readonly [key: string]: components["schemas"]["FigureInput"] | string | number;
                };
                readonly by: string | null;
                readonly late: boolean;
                readonly misses?: string;
            }[];
            readonly money: {
                readonly before: components["schemas"]["MoneyInput"];
                readonly after: components["schemas"]["MoneyInput"];
                readonly hirer: components["schemas"]["MoneyInput"];
                readonly ours: components["schemas"]["MoneyInput"];
            } | null;
            readonly brief: {
                readonly again: readonly {
                    readonly id: string;
                    /** @enum {string} */
                    readonly why: "new" | "different";
                }[];
                readonly same: number;
                readonly minutes: components["schemas"]["FigureInput"];
            } | null;
            readonly people: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly telephone: string;
                readonly code: string;
                readonly facts: {
                    readonly [key: string]: components["schemas"]["FigureInput"] | string | number;
                };
                readonly offers: readonly {
                    readonly vehicleId: string;
                    readonly name: string;
                    readonly registration: string;
                }[];
            }[];
            readonly says: readonly {
                readonly code: string;
                readonly facts: {
                    readonly [key: string]: components["schemas"]["FigureInput"] | string | number;
                };
            }[];
        };
        readonly ConfirmChangeInput: {
            readonly change: components["schemas"]["HireChangeInput"];
            readonly seen: string;
        };
        readonly ChangeDoneInput: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "vehicle" | "extension" | "late" | "early" | "party" | "driverAbsent" | "teamIll" | "noShow" | "breakdown" | "accident" | "notice";
            readonly at: string;
            readonly by: string;
            /** @description given only to: manager, desk */
            readonly change?: components["schemas"]["HireChangeInput"] | null;
            readonly toDo: readonly {
                readonly code: string;
                readonly facts: {
                    readonly [key: string]: components["schemas"]["FigureInput"] | string | number;
                };
                readonly by: string | null;
            }[];
            readonly papers: readonly ("letter" | "agreement")[];
            readonly continuedBy: {
                readonly hireId: string;
                readonly reference: string;
            } | null;
        };
        readonly HireChangesInput: {
            readonly possible: readonly ("vehicle" | "extension" | "late" | "early" | "party" | "driverAbsent" | "teamIll" | "noShow" | "breakdown" | "accident" | "notice")[];
            readonly vehicles: readonly {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                readonly free: boolean;
                readonly fits: boolean;
            }[];
            readonly done: readonly components["schemas"]["ChangeDoneInput"][];
        };
        readonly PutDriverParticularsInput: {
            readonly address?: string;
            readonly licenceNumber?: string;
        };
        readonly LicenceNumberInput: {
            readonly licenceNumber: string;
        };
        readonly OpeningHoursInput: {
            readonly week: {
                readonly monday: {
                    readonly opens: string;
                    readonly closes: string;
                } | null;
                readonly tuesday: {
                    readonly opens: string;
                    readonly closes: string;
                } | null;
                readonly wednesday: {
                    readonly opens: string;
                    readonly closes: string;
                } | null;
                readonly thursday: {
                    readonly opens: string;
                    readonly closes: string;
                } | null;
                readonly friday: {
                    readonly opens: string;
                    readonly closes: string;
                } | null;
                readonly saturday: {
                    readonly opens: string;
                    readonly closes: string;
                } | null;
                readonly sunday: {
                    readonly opens: string;
                    readonly closes: string;
                } | null;
            };
            readonly closed: readonly {
                /** Format: date */
                readonly from: string;
                /** Format: date */
                readonly to: string;
                readonly name: string;
            }[];
        };
        readonly DepotSettingsInput: {
            readonly name: string;
            readonly telephone: string;
            readonly hours: components["schemas"]["OpeningHoursInput"];
            /** @enum {string} */
            readonly distances: "km" | "mi";
            readonly latitudeDeg: number;
            readonly longitudeDeg: number;
            readonly turnaroundMinutes: number;
            readonly crew: {
                readonly desk: number;
                readonly cleaner: number;
                readonly yard: number;
                readonly technician: number;
            };
            readonly schoolHolidays: readonly {
                /** Format: date */
                readonly from: string;
                /** Format: date */
                readonly to: string;
            }[];
            readonly version: number;
            readonly timeZone: string;
            readonly country: string;
        };
        readonly FirstStepsInput: {
            readonly open: readonly ("vehicle" | "rateCard" | "prices" | "insurer" | "firm" | "people")[];
            readonly of: number;
        };
        readonly PutDepotInput: {
            readonly name: string;
            readonly telephone: string;
            readonly hours: components["schemas"]["OpeningHoursInput"];
            /** @enum {string} */
            readonly distances: "km" | "mi";
            readonly latitudeDeg: number;
            readonly longitudeDeg: number;
            readonly turnaroundMinutes: number;
            readonly crew: {
                readonly desk: number;
                readonly cleaner: number;
                readonly yard: number;
                readonly technician: number;
            };
            readonly schoolHolidays: readonly {
                /** Format: date */
                readonly from: string;
                /** Format: date */
                readonly to: string;
            }[];
            readonly version: number;
        };
        readonly PutDepotFiguresInput: {
            readonly messageDays: {
                readonly preHire: number;
                readonly dayBefore: number;
                readonly returnReminder: number;
                readonly statement: number;
            };
            readonly linkDays: number;
            readonly kmADay: number;
        };
        readonly DepotFiguresInput: {
            readonly figures: components["schemas"]["PutDepotFiguresInput"];
            readonly usual: components["schemas"]["PutDepotFiguresInput"];
            readonly version: string;
            readonly next: {
                readonly reference: string;
                readonly from: string;
                readonly to: string;
            } | null;
            readonly now: string;
            readonly unsent: readonly {
                /** @enum {string} */
                readonly kind: "preHire" | "dayBefore" | "returnReminder";
                readonly since: string;
                readonly days: readonly string[];
            }[];
        };
        readonly PutDepotTimesInput: {
            readonly handOverMinutes: number;
            readonly takeBackMinutes: number;
            readonly demonstrationMinutes: {
                readonly first: number;
                readonly some: number;
                readonly knowsThisVehicle: number;
            };
            readonly jobMinutes: {
                readonly [key: string]: number;
            };
            readonly leadHours: {
                readonly [key: string]: number;
            };
        };
        readonly DepotTimesInput: {
            readonly times: components["schemas"]["PutDepotTimesInput"];
            readonly usual: components["schemas"]["PutDepotTimesInput"];
            readonly version: string;
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
            readonly hours: components["schemas"]["OpeningHoursInput"];
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
                    readonly kind: "shift" | "smallerParty" | "renewDue" | "waivePets" | "otherLength" | "fewerExtras" | "otherVehicle";
                    readonly from?: string;
                    readonly to?: string;
                    readonly shiftHours?: number;
                    readonly people?: number;
                    readonly extra?: string;
                    readonly count?: number;
                    readonly vehicleId?: string;
                    readonly vehicleName?: string;
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
        readonly NewCheckCodeInput: {
            readonly code: string;
            /** Format: date */
            readonly madeOn: string;
        };
        readonly LicenceCheckInput: {
            /** @enum {string} */
            readonly how: "code" | "other";
            readonly consent: boolean;
            readonly seen?: string;
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
                readonly otherEvidence?: {
                    readonly seen: string;
                    readonly by: string;
                };
                /** Format: date */
                readonly visitingSince?: string;
            };
        };
        readonly DriverChecksInput: {
            readonly drivers: readonly {
                readonly driverId: string;
                readonly name: string;
                readonly mayDrive: ("yes" | "no" | "unchecked") | null;
                /** Format: date */
                readonly askFrom: string;
                readonly hasCode: boolean;
                readonly address: string | null;
                readonly numberUntil: string | null;
                readonly numberGiven: {
                    readonly by: string;
                    readonly at: string;
                } | null;
                readonly versions: {
                    readonly particulars: number;
                    readonly code: number;
                };
                readonly code: {
                    /** Format: date */
                    readonly madeOn: string;
                    /** Format: date */
                    readonly lastDay: string;
                    readonly isUsable: boolean;
                } | null;
                readonly checks: readonly {
                    /** @enum {string} */
                    readonly how: "code" | "other";
                    readonly by: string;
                    readonly at: string;
                    /** Format: date */
                    readonly on: string;
                    readonly seen: string | null;
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
                        readonly otherEvidence?: {
                            readonly seen: string;
                            readonly by: string;
                        };
                        /** Format: date */
                        readonly visitingSince?: string;
                    };
                }[];
            }[];
        };
        readonly CheckCodeAnswerInput: {
            readonly code: string;
        };
        readonly ErasureHoldInput: {
            /** @enum {string} */
            readonly code: "open" | "dispute" | "cost" | "file" | "notice" | "owed" | "toPayBack" | "deposit" | "property";
            readonly hireId: string;
            readonly reference: string;
            readonly until: string | null;
            readonly facts: {
                readonly [key: string]: string | number;
            };
        };
        readonly TabletInput: {
            readonly id: string;
            readonly by: string | null;
            readonly seenAt: string;
            readonly unseenDays: number;
            readonly forgottenAt: string | null;
        };
        readonly ErasureInput: {
            /** @enum {string} */
            readonly state: "none" | "waits" | "erased";
            readonly at: string | null;
            readonly by: string | null;
            readonly answerBy: string | null;
            readonly holds: readonly components["schemas"]["ErasureHoldInput"][];
            readonly tablets: readonly components["schemas"]["TabletInput"][];
            readonly unseenAfterDays: number;
        };
        readonly TabletKeepsInput: {
            readonly tabletId: string;
            readonly hires: readonly string[];
        };
        readonly TabletForgetsInput: {
            readonly forget: readonly string[];
        };
        readonly KitValuesInput: {
            readonly [key: string]: {
                readonly newPence: number;
                readonly lifeYears: number;
                readonly leastShare: number;
            };
        };
        readonly RepairPriceInput: {
            readonly of: string;
            /** @enum {string} */
            readonly kind: "scratch" | "dent" | "tear" | "stain" | "crack" | "missing";
            readonly upToMm?: number;
            readonly pence: number;
            /** @enum {string} */
            readonly part: "repair" | "replace";
            readonly lifeYears: number;
            readonly leastShare: number;
        };
        readonly PriceSinceInput: {
            /** Format: date */
            readonly from: string;
            readonly by: string | null;
        };
        readonly FirmPricesInput: {
            readonly newest: string;
            readonly today: {
                readonly versionId: string;
                readonly termsId: string;
                /** Format: date */
                readonly validFrom: string;
            } | null;
            readonly written: {
                /** Format: date */
                readonly validFrom: string;
                readonly kit: components["schemas"]["KitValuesInput"];
                readonly damage: readonly components["schemas"]["RepairPriceInput"][];
            } | null;
            readonly kit: readonly {
                readonly id: string;
                readonly newPence: number;
                readonly lifeYears: number;
                readonly leastShare: number;
                readonly since: components["schemas"]["PriceSinceInput"];
            }[];
            readonly repairs: readonly {
                readonly of: string;
                /** @enum {string} */
                readonly kind: "scratch" | "dent" | "tear" | "stain" | "crack" | "missing";
                readonly upToMm?: number;
                readonly pence: number;
                /** @enum {string} */
                readonly part: "repair" | "replace";
                readonly lifeYears: number;
                readonly leastShare: number;
                readonly since: components["schemas"]["PriceSinceInput"];
            }[];
            readonly later: readonly {
                readonly versionId: string;
                /** Format: date */
                readonly validFrom: string;
                readonly like: number;
            }[];
            readonly counted: readonly {
                readonly checkId: string;
                readonly systemKind: string;
                readonly charge: string | null;
                readonly vehicles: number;
                readonly pricedBy: string | null;
            }[];
            readonly fitted: readonly string[];
            readonly changes: readonly {
                readonly versionId: string;
                /** Format: date */
                readonly validFrom: string;
                readonly writtenAt: string;
                readonly by: string | null;
                readonly lines: readonly {
                    /** @enum {string} */
                    readonly list: "kit" | "repairs";
                    readonly name: string;
                    readonly kind: string | null;
                    readonly upToMm: number | null;
                    readonly wasPence: number | null;
                    readonly isPence: number | null;
                }[];
            }[];
        };
        readonly PutFirmPricesInput: {
            /** Format: date */
            readonly validFrom: string;
            readonly kit: components["schemas"]["KitValuesInput"];
            readonly damage: readonly components["schemas"]["RepairPriceInput"][];
        };
        readonly ReadPriceListInput: {
            readonly file: string;
            /** @enum {string} */
            readonly encoding?: "utf-8" | "windows-1252";
        };
        readonly PriceListAnswerInput: {
            readonly question: string | null;
            readonly ignored: readonly string[];
            readonly kit: components["schemas"]["KitValuesInput"];
            readonly repairs: readonly components["schemas"]["RepairPriceInput"][];
            readonly rejected: readonly {
                readonly line: number;
                readonly column: string;
                readonly value: string;
                readonly expected: string;
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
                /** @enum {string} */
                readonly distances: "km" | "mi";
            };
            readonly vehicle: {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                /** @description engine: VehicleDescription */
                readonly description: unknown;
            };
            readonly trip: components["schemas"]["TripInput"] | null;
            readonly countries: readonly {
                /** @description engine: CountryCard */
                readonly card: unknown;
                readonly sources: readonly string[];
            }[];
            readonly forecastInput: unknown;
            readonly forecast: unknown;
            readonly forecastHash: string | null;
            readonly briefing: unknown;
            readonly faults: components["schemas"]["FaultsInput"];
            readonly readings: readonly unknown[];
            readonly additions: {
                readonly until: string;
                readonly isOver: boolean;
            } | null;
            readonly statementAt: string | null;
        };
        readonly HirerAdditionsInput: {
            readonly until: string | null;
            readonly isOver: boolean;
            readonly additions: readonly {
                readonly recordId: string;
                readonly at: string;
                readonly receivedAt: string;
                readonly isLate: boolean;
                readonly part: string;
                readonly view: string;
                readonly markKind: string;
                readonly note: string;
                readonly photographs: readonly string[];
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
            readonly discount?: components["schemas"]["DiscountInput"];
            /** @default false */
            readonly accept: boolean;
        };
        readonly EndHireInput: {
            /** @enum {string} */
            readonly as: "lost" | "cancelled" | "noShow";
            readonly reason: string;
            /** @enum {string} */
            readonly code?: "price" | "datesTaken" | "tooSmall" | "licence" | "insurance" | "pets" | "elsewhere" | "noAnswer" | "plansChanged" | "illness" | "other";
        };
        readonly HirerLinkInput: {
            readonly url: string;
            readonly token: string;
            readonly expires: string;
        };
        readonly ImportInput: {
            readonly file: string;
            /** @enum {string} */
            readonly encoding?: "utf-8" | "windows-1252";
            /** @enum {string} */
            readonly dateOrder?: "iso" | "dmy" | "mdy";
            readonly confirm?: {
                readonly accepted: number;
                readonly rejected: number;
            };
        };
        readonly ImportAnswerInput: {
            readonly done: boolean;
            readonly question: {
                /** @enum {string} */
                readonly what: "encoding" | "dateOrder";
                readonly sample: string;
            } | null;
            readonly encoding: ("utf-8" | "windows-1252") | null;
            readonly dateOrder: ("iso" | "dmy" | "mdy") | null;
            readonly columns: readonly string[];
            readonly ignored: readonly string[];
            readonly accepted: readonly {
                readonly line: number;
                readonly title: string;
                readonly text: string;
            }[];
            readonly rejected: readonly {
                readonly line: number;
                readonly column: string;
                readonly value: string;
                readonly expected: string;
            }[];
        };
        readonly VehicleDraftsInput: {
            readonly drafts: readonly {
                readonly id: string;
                readonly registration: string;
                readonly name: string;
                readonly bodyStyle: string;
                readonly mamKg: number | null;
                readonly firstRegistered: string | null;
                readonly at: string;
            }[];
        };
        readonly MessageInput: {
            readonly id: string;
            readonly hireId: string;
            readonly reference: string;
            readonly customer: string;
            /** @enum {string} */
            readonly kind: "booking" | "preHire" | "dayBefore" | "returnReminder" | "statement";
            /** @enum {string} */
            readonly language: "en" | "de" | "fr";
            readonly to: string;
            readonly subject: string;
            readonly body: string;
            readonly attachments: readonly ("quote" | "agreement" | "countries" | "receipt" | "statement" | "walkOut" | "walkBack" | "condition" | "dispute" | "lostProperty")[];
            /** @enum {string} */
            readonly state: "waiting" | "sending" | "sent" | "failed" | "bounced" | "unsure" | "withdrawn";
            readonly dueAt: string;
            readonly sentAt: string | null;
            readonly reasonCode: string | null;
            readonly reason: string | null;
            readonly response: string | null;
            readonly attempts: number;
            readonly by: string | null;
        };
        readonly OutboxInput: {
            readonly mailServer: string | null;
            readonly readsBounces: boolean;
            readonly hasFrom: boolean;
            readonly messages: readonly components["schemas"]["MessageInput"][];
            readonly next: string | null;
            readonly planned: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                /** @enum {string} */
                readonly kind: "booking" | "preHire" | "dayBefore" | "returnReminder" | "statement";
                readonly dueAt: string;
            }[];
        };
        readonly MessagePreviewInput: {
            /** @enum {string} */
            readonly kind: "booking" | "preHire" | "dayBefore" | "returnReminder" | "statement";
            /** @enum {string} */
            readonly language: "en" | "de" | "fr";
            readonly isDraft: boolean;
            readonly to: string;
            readonly subject: string;
            readonly body: string;
            readonly attachments: readonly ("quote" | "agreement" | "countries" | "receipt" | "statement" | "walkOut" | "walkBack" | "condition" | "dispute" | "lostProperty")[];
            readonly lacking: readonly {
                /** @enum {string} */
                readonly paper: "quote" | "agreement" | "countries" | "receipt" | "statement" | "walkOut" | "walkBack" | "condition" | "dispute" | "lostProperty";
                readonly problems: readonly {
                    readonly path: string;
                    readonly expected: string;
                }[];
            }[];
            readonly problems: readonly {
                readonly path: string;
                readonly expected: string;
            }[];
            readonly moment: string | null;
        };
        readonly SendMessageInput: {
            /** Format: uuid */
            readonly id: string;
            /** @enum {string} */
            readonly kind: "booking" | "preHire" | "dayBefore" | "returnReminder" | "statement";
            /**
             * @default en
             * @enum {string}
             */
            readonly language: "en" | "de" | "fr";
            /**
             * @default now
             * @enum {string}
             */
            readonly when: "now" | "moment";
            /** @default false */
            readonly draftRead: boolean;
        };
        readonly MessageBouncedInput: {
            readonly why: string;
        };
        readonly MessageSettingsInput: {
            readonly fromName: string;
            readonly fromAddress: string;
            readonly replyTo: string;
            readonly automatic: readonly ("booking" | "preHire" | "dayBefore" | "returnReminder" | "statement")[];
            readonly version: number;
        };
        readonly PutMessageSettingsInput: {
            readonly fromName: string;
            readonly fromAddress: string;
            readonly replyTo: string;
            readonly automatic: readonly ("booking" | "preHire" | "dayBefore" | "returnReminder" | "statement")[];
            readonly version: number;
        };
        readonly NoteInput: {
            readonly id: string;
            readonly hireId: string;
            /** @enum {string} */
            readonly kind: "note" | "promise";
            readonly text: string;
            readonly moment: ("preparing" | "counter" | "return" | "day") | null;
            readonly on: string | null;
            readonly owner: {
                readonly id: string;
                readonly name: string;
            } | null;
            readonly by: string;
            readonly at: string;
            readonly done: {
                readonly by: string;
                readonly at: string;
            } | null;
            readonly isDue: boolean;
        };
        readonly NewNoteInput: {
            /**
             * @default note
             * @enum {string}
             */
            readonly kind: "note" | "promise";
            readonly text: string;
            /** @enum {string} */
            readonly moment?: "preparing" | "counter" | "return" | "day";
            /** Format: date */
            readonly on?: string;
            readonly ownerId?: string;
        };
        readonly TickNoteInput: {
            readonly done: boolean;
        };
        readonly PayerInput: {
            readonly name: string;
            /** Format: email */
            readonly email: string;
            readonly address?: string;
        };
        readonly SetPayerInput: {
            readonly payer: components["schemas"]["PayerInput"] | null;
        };
        readonly HireNotesInput: {
            readonly notes: readonly components["schemas"]["NoteInput"][];
            /** @description given only to: manager, desk */
            readonly payer?: components["schemas"]["PayerInput"] | null;
            readonly payerVersion: number;
            readonly people: readonly {
                readonly id: string;
                readonly name: string;
            }[];
        };
        readonly RemindersInput: {
            readonly notes: readonly {
                readonly note: components["schemas"]["NoteInput"];
                readonly reference: string;
                readonly customer: string;
                readonly registration: string;
            }[];
            readonly askForCode: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly driver: string;
                readonly driverId: string;
                /** Format: date */
                readonly from: string;
                /** Format: date */
                readonly keys: string;
            }[];
            readonly toGet: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly finding: components["schemas"]["FindingInput"];
                /** Format: date */
                readonly doBy: string;
            }[];
        };
        readonly FoundPlaceInput: {
            readonly name: string;
            readonly country: string;
            readonly latitudeDeg: number;
            readonly longitudeDeg: number;
            readonly elevationM: number;
            readonly timeZone: string;
            readonly population: number;
        };
        readonly PlacesInput: {
            readonly places: readonly components["schemas"]["FoundPlaceInput"][];
        };
        readonly TripQuestionInput: {
            readonly inputHash: string;
            readonly input: unknown;
        };
        readonly CheckTermsInput: {
            readonly terms: components["schemas"]["TermsInput"];
            /** Format: date */
            readonly from: string;
        };
        readonly TermsPreviewInput: {
            readonly findings: readonly components["schemas"]["FindingInput"][];
            readonly gaps: readonly {
                readonly from: string;
                readonly to: string;
                readonly days: number;
            }[];
            readonly overlaps: readonly {
                readonly from: string;
                readonly to: string;
                readonly days: number;
                readonly wins: string;
                readonly over: string;
            }[];
            readonly classes: readonly string[];
            readonly days: readonly {
                /** Format: date */
                readonly date: string;
                readonly season: string | null;
                readonly under: readonly string[];
                readonly minimumNights: number;
                readonly nightPence: {
                    readonly [key: string]: number;
                };
                readonly weekPence: {
                    readonly [key: string]: number;
                };
            }[];
        };
        readonly TermsVersionsInput: {
            readonly versions: readonly {
                readonly versionId: string;
                readonly termsId: string;
                /** Format: date */
                readonly validFrom: string;
                readonly writtenAt: string;
                /** @enum {string} */
                readonly when: "before" | "now" | "later";
            }[];
        };
        readonly TermsVersionInput: {
            readonly versionId: string;
            readonly terms: components["schemas"]["TermsInput"];
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
        readonly RecordsLeftOutInput: {
            readonly before: {
                readonly seq: number;
                readonly hash: string;
            } | null;
            readonly links: readonly {
                readonly seq: number;
                /** Format: uuid */
                readonly recordId: string;
                readonly recordHash: string;
                /** Format: date-time */
                readonly at: string;
            }[];
            readonly head: string | null;
        };
        readonly RecordExportInput: {
            readonly records: readonly components["schemas"]["RecordInput"][];
            readonly receipts: readonly components["schemas"]["ReceiptInput"][];
            readonly leftOut: components["schemas"]["RecordsLeftOutInput"];
        } & {
            readonly [key: string]: unknown;
        };
        readonly CorrectionInput: {
            readonly recordId: string;
            readonly instead: {
                readonly value?: number;
                readonly found?: number;
                readonly sizeMm?: number;
                readonly note?: string;
            };
            readonly why: string;
        };
        readonly PhotoStateInput: {
            /** @enum {string} */
            readonly state: "kept" | "partial" | "removed";
            readonly received: number;
            readonly again: boolean;
        };
        readonly RuleInput: {
            readonly id: string;
            readonly value: number | string | boolean;
            readonly unit: string;
            /** Format: date */
            readonly validFrom: string;
            /** Format: date */
            readonly validTo?: string;
            /** Format: date */
            readonly readOn: string;
            readonly source: string;
            /** @enum {string} */
            readonly confidence: "read" | "secondary" | "memory";
            readonly country: string;
            readonly when?: {
                /** @enum {string} */
                readonly mass?: "mam" | "technical" | "unladen";
                readonly aboveKg?: number;
                readonly toKg?: number;
                /** @enum {string} */
                readonly category?: "M1" | "N1";
                readonly heightToM?: number;
                readonly orHeightAboveM?: number;
                readonly overhang?: boolean;
                readonly plateLacksUk?: boolean;
                /** @enum {string} */
                readonly fuel?: "diesel" | "petrol" | "electric" | "hydrogen";
                /** Format: date */
                readonly registeredFrom?: string;
                /** Format: date */
                readonly registeredBefore?: string;
                readonly technicalAboveKg?: number;
            };
            readonly exempt?: {
                /** @enum {string} */
                readonly mass?: "mam" | "technical" | "unladen";
                readonly aboveKg?: number;
                readonly toKg?: number;
                /** @enum {string} */
                readonly category?: "M1" | "N1";
                readonly heightToM?: number;
                readonly orHeightAboveM?: number;
                readonly overhang?: boolean;
                readonly plateLacksUk?: boolean;
                /** @enum {string} */
                readonly fuel?: "diesel" | "petrol" | "electric" | "hydrogen";
                /** Format: date */
                readonly registeredFrom?: string;
                /** Format: date */
                readonly registeredBefore?: string;
                readonly technicalAboveKg?: number;
            };
            readonly binds?: {
                /** @constant */
                readonly weather?: "wintryRoad";
                /** @enum {string} */
                readonly roads?: "signed" | "signedMountains" | "zones" | "motorways";
                readonly usually?: string;
            };
            readonly notChecked?: readonly ("axles" | "platedBefore" | "speedIndex")[];
            readonly leadDays?: number;
            readonly unsettled?: string;
            readonly off?: string;
            readonly note?: string;
        };
        readonly RuleLineInput: {
            readonly id: string;
            readonly country: string;
            readonly topic: string;
            readonly now: components["schemas"]["RuleInput"] | null;
            readonly shipped: readonly components["schemas"]["RuleInput"][];
            readonly own: readonly {
                readonly rule: components["schemas"]["RuleInput"];
                readonly by: string;
                readonly at: string;
            }[];
            readonly readAgain: readonly {
                /** Format: date */
                readonly readOn: string;
                readonly source: string;
                readonly by: string;
                readonly at: string;
            }[];
            readonly values: readonly string[] | null;
            readonly off: string | null;
            readonly due: {
                readonly reasons: readonly ("unsettled" | "memory" | "beforeHires" | "old" | "ends")[];
                /** Format: date */
                readonly dueOn: string;
                readonly firstHire: string | null;
                readonly hires: number;
            } | null;
        };
        readonly RulesAnswerInput: {
            readonly bookId: string;
            readonly rules: readonly components["schemas"]["RuleLineInput"][];
            readonly countries: readonly string[];
            readonly topics: readonly string[];
            readonly counts: {
                readonly all: number;
                readonly due: number;
                readonly overdue: number;
                readonly own: number;
            };
        };
        readonly CorrectRuleInput: {
            readonly value: number | string | boolean;
            /** Format: date */
            readonly validFrom: string;
            /** Format: date */
            readonly validTo?: string;
            /** Format: date */
            readonly readOn: string;
            readonly source: string;
            /** @enum {string} */
            readonly confidence: "read" | "secondary" | "memory";
            readonly unsettled?: string;
            readonly note?: string;
            readonly leadDays?: number;
        };
        readonly ConfirmRuleInput: {
            /** Format: date */
            readonly readOn: string;
            readonly source: string;
        };
        readonly WithdrawRuleInput: {
            /** Format: date */
            readonly validFrom: string;
        };
        readonly MissingRulesInput: {
            readonly bookId: string;
            readonly missing: readonly {
                /** @enum {string} */
                readonly kind: "gateNotChecked" | "findingNotChecked" | "countryNotInData" | "topicNotInData" | "ruleUnsettled" | "ruleFromMemory" | "ruleSwitchedOff";
                /** @enum {string} */
                readonly gate: "seats" | "licence" | "insurance" | "masses" | "diary" | "dueDates" | "defects" | "countries" | "crossing" | "season" | "resources" | "money" | "signatures";
                readonly about: string;
                readonly finding: components["schemas"]["FindingInput"] | null;
                readonly source: string | null;
            }[];
        };
        readonly InsurancePreviewInput: {
            readonly policy: components["schemas"]["InsurancePolicyInput"];
        };
        readonly InsurancePreviewAnswerInput: {
            readonly drivers: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly from: string;
                readonly driver: string;
                readonly today: ("accept" | "refer" | "refuse") | null;
                /** @enum {string} */
                readonly proposed: "accept" | "refer" | "refuse";
                readonly findings: readonly components["schemas"]["FindingInput"][];
            }[];
            readonly asked: number;
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
                /** @enum {string} */
                readonly distances: "km" | "mi";
                readonly place: {
                    readonly name: string;
                    readonly country: string;
                    readonly latitudeDeg: number;
                    readonly longitudeDeg: number;
                    readonly elevationM?: number;
                };
            };
            readonly may: readonly string[];
            readonly papers: readonly string[];
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
                readonly hours: components["schemas"]["OpeningHoursInput"];
                /** @enum {string} */
                readonly distances?: "km" | "mi";
            };
            readonly terms?: components["schemas"]["TermsInput"];
            readonly insurance?: components["schemas"]["InsurancePolicyInput"];
            readonly manager: {
                readonly name: string;
                readonly login: string;
                readonly password: string;
            };
        };
        readonly RepairCostInput: {
            readonly differenceId: string;
            /** @enum {string} */
            readonly kind: "estimate" | "invoice";
            readonly partsPence: number;
            readonly labourPence: number;
            readonly reference: string;
            readonly photographs?: readonly string[];
        };
        readonly SettlementNoteInput: {
            /** @constant */
            readonly kind: "cleaning";
            readonly hours: number;
            readonly reason: string;
            readonly photographs: readonly string[];
        } | {
            /** @constant */
            readonly kind: "loss";
            /** @enum {string} */
            readonly what: "nextHirer" | "overtime" | "lostDay";
            readonly pence: number;
            readonly reason: string;
            readonly photographs: readonly string[];
        } | {
            /** @constant */
            readonly kind: "age";
            readonly differenceId: string;
            readonly ageYears: number;
            readonly reason: string;
        } | {
            /** @constant */
            readonly kind: "awaiting";
            readonly differenceId: string;
            readonly mostPence: number;
            readonly reason: string;
        } | {
            /** @constant */
            readonly kind: "claim";
            readonly about: string;
            readonly partsPence: number;
            readonly labourPence: number;
            readonly ageYears: number;
            readonly lifeYears: number;
            readonly incident: string | null;
            readonly reason: string;
            readonly photographs: readonly string[];
            readonly departure: readonly string[];
        } | {
            /** @constant */
            readonly kind: "file";
            /** @enum {string} */
            readonly with: "insurer" | "thirdParty";
            readonly name: string;
            readonly reference: string;
            /** Format: date */
            readonly on: string;
            /** @enum {string} */
            readonly state: "opened" | "sent" | "answered" | "paid" | "closed";
            readonly paidPence: number;
            readonly note: string;
        } | {
            /** @constant */
            readonly kind: "notice";
            readonly id: string;
            /** @enum {string} */
            readonly what: "fine" | "toll";
            readonly issuer: string;
            readonly reference: string;
            readonly at: string;
            readonly where: string;
            readonly pence: number;
            readonly feePence: number;
            readonly photographs: readonly string[];
        } | {
            /** @constant */
            readonly kind: "mended";
            readonly differenceId: string;
            /** Format: date */
            readonly on: string;
            readonly who: string;
        };
        readonly SecondSignatureInput: {
            readonly differenceId: string;
            readonly reason: string;
        };
        readonly LineReplyInput: {
            readonly lineId: string;
            /** @enum {string} */
            readonly answer: "reply" | "withdraw";
            readonly text: string;
        };
        readonly DepositHoldInput: {
            /** Format: date */
            readonly promisedOn: string;
            readonly reason: string;
        };
        readonly LostPropertyInput: {
            readonly what: string;
            readonly where: string;
            /** @enum {string} */
            readonly now: "kept" | "posted" | "collected" | "givenAway";
            readonly costPence: number;
            readonly note: string;
        };
        readonly StatementInput: {
            readonly reference: string;
            readonly customer: string;
            readonly firm: string;
            readonly depot: {
                readonly name: string;
                readonly telephone: string;
            };
            readonly vehicle: string;
            readonly frozenAt: string;
            readonly result: unknown;
            readonly releaseBy: string;
            readonly promisedOn: string | null;
            readonly total: components["schemas"]["MoneyInput"];
            readonly evidence: readonly {
                readonly lineId: string;
                readonly out: readonly string[];
                readonly back: readonly string[];
            }[];
            readonly entries: readonly components["schemas"]["SettlementEntryInput"][];
        };
        readonly StatementReplyInput: {
            readonly lineId: string;
            /** @enum {string} */
            readonly answer: "accept" | "dispute";
            readonly text: string;
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
            readonly balanceDaysBefore?: number;
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
            readonly discounts?: readonly {
                readonly id: string;
                readonly mostPercent: {
                    readonly [key: string]: number;
                };
            }[];
            readonly windows?: {
                readonly additionsHours: number;
                readonly secondLookHours: number;
            };
            readonly secondSignatureAfterDays?: number;
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
                readonly noticeFeePence?: number;
                /** @enum {string} */
                readonly labour?: "inFull" | "asParts";
                readonly kit: {
                    readonly [key: string]: {
                        readonly newPence: number;
                        readonly lifeYears: number;
                        readonly leastShare: number;
                    };
                };
                readonly damage: readonly components["schemas"]["RepairPriceInput"][];
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
            readonly newest: {
                readonly hire: {
                    readonly versionId: string;
                    readonly terms: components["schemas"]["TermsInput"];
                } | null;
                readonly insurance: {
                    readonly versionId: string;
                    readonly policy: components["schemas"]["InsurancePolicyInput"];
                } | null;
            };
        };
        readonly PutTermsInput: {
            readonly hire?: components["schemas"]["TermsInput"];
            readonly insurance?: components["schemas"]["InsurancePolicyInput"];
            readonly pricesStay?: boolean;
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
            readonly told: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly signer: string;
                readonly at: string;
            }[];
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
            readonly newest: {
                readonly versionId: string;
                readonly description: components["schemas"]["VehicleDescriptionInput"];
                readonly vehicleClass: string;
                readonly maxDogs: number;
            };
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
        readonly WeatherServiceInput: {
            readonly credit: string | null;
            readonly isOn: boolean;
        };
        readonly PutWeatherServiceInput: {
            readonly isOn: boolean;
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
            readonly defects: readonly {
                readonly id: string;
                readonly what: string;
                readonly where: string;
                readonly told: boolean;
            }[];
            readonly windows: {
                readonly additionsHours: number;
                readonly secondLookHours: number;
            };
            readonly secondLook: {
                readonly until: string;
            } | null;
            readonly done: boolean;
        };
        readonly YardJobsInput: {
            /** Format: date */
            readonly date: string;
            /** @enum {string} */
            readonly distances: "km" | "mi";
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
                readonly at?: string;
                readonly zone?: string;
            }[];
            readonly noCrossing: boolean;
            readonly papers: components["schemas"]["AbroadPapers"];
            readonly kitAboard: readonly string[];
            readonly got: readonly string[];
            readonly avoided?: readonly string[];
            readonly overhang: boolean;
            readonly plateShowsUk: boolean;
            readonly gaugeWorks?: boolean;
            readonly fillShare?: number;
        };
        readonly AbroadState: {
            readonly abroad: components["schemas"]["Abroad"];
            readonly version: number;
            readonly home: string;
            readonly countries: unknown | null;
            readonly crossing: unknown | null;
            readonly findings: readonly components["schemas"]["Finding"][];
        };
        readonly Account: {
            readonly id: string;
            readonly name: string;
            readonly login: string;
            /** @enum {string} */
            readonly role: "manager" | "desk" | "yard";
            readonly shutAt: string | null;
            readonly createdAt: string;
            readonly version: string;
        };
        readonly Accounts: {
            readonly accounts: readonly components["schemas"]["Account"][];
        };
        readonly NewAccount: {
            readonly name: string;
            readonly login: string;
            /** @enum {string} */
            readonly role: "manager" | "desk" | "yard";
            readonly password: string;
        };
        readonly ChangeAccount: {
            readonly name: string;
            /** @enum {string} */
            readonly role: "manager" | "desk" | "yard";
            readonly shut: boolean;
        };
        readonly SetPassword: {
            readonly password: string;
        };
        readonly OwnPassword: {
            readonly current: string;
            readonly password: string;
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
            readonly incident: string | null;
            readonly todo: ("repair" | "orderPart" | "nothing") | null;
            readonly version: number;
            readonly asItLeft: {
                readonly of: ("place" | "side") | null;
                readonly photographs: readonly string[];
            };
        };
        readonly ReadingQuestion: {
            readonly checkId: string;
            /** @enum {string} */
            readonly when: "out" | "back";
            readonly entries: readonly {
                readonly id: string;
                readonly hash: string;
                readonly about: string;
                readonly value: number;
                readonly unit: string | null;
                readonly deviceId: string;
                readonly at: string;
                readonly photographs: readonly string[];
            }[];
        };
        readonly ReadingQuestions: {
            readonly questions: readonly components["schemas"]["ReadingQuestion"][];
        };
        readonly SecondLook: {
            readonly due: readonly string[];
            readonly until: string;
            readonly isOver: boolean;
            readonly holds: boolean;
        };
        readonly Custody: {
            readonly lines: readonly {
                readonly at: string;
                readonly until: string | null;
                /** @enum {string} */
                readonly holder: "hirer" | "depot" | "keySafe" | "workshop" | "driver";
                readonly who: string;
                readonly note: string | null;
                readonly hireId: string | null;
                readonly recordId: string | null;
                readonly marks: number;
                readonly photographs: number;
                readonly readings: number;
            }[];
        };
        readonly Differences: {
            readonly differences: readonly components["schemas"]["Difference"][];
            readonly result: unknown;
            readonly questions: readonly components["schemas"]["ReadingQuestion"][];
            readonly secondLook: components["schemas"]["SecondLook"];
            readonly outPhotographs: readonly {
                readonly sha256: string;
                readonly about: string;
            }[];
            readonly findings: readonly components["schemas"]["Finding"][];
        };
        readonly SetClasses: {
            readonly classes: readonly {
                readonly id: string;
                readonly class: components["schemas"]["MarkClass"];
                readonly reason: string;
                readonly incident?: string | null;
                readonly todo?: ("repair" | "orderPart" | "nothing") | null;
                readonly basedOn?: number;
            }[];
        };
        readonly SettlementEntry: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "accept" | "dispute" | "reply" | "withdraw" | "estimate" | "invoice" | "second" | "hold" | "lost" | "cleaning" | "loss" | "age" | "awaiting" | "claim" | "file" | "notice" | "mended";
            readonly about: string;
            readonly document: {
                readonly [key: string]: unknown;
            };
            readonly by: string | null;
            readonly at: string;
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
            readonly promisedOn: string | null;
            readonly lowered: components["schemas"]["Money"];
            readonly refundDue: components["schemas"]["Money"];
            readonly toKeep: components["schemas"]["Money"];
            readonly toGiveBack: components["schemas"]["Money"];
            readonly entries: readonly components["schemas"]["SettlementEntry"][];
        };
        readonly ReturnRequest: {
            readonly at: string;
        };
        readonly Discount: {
            readonly kind: string;
            readonly percent?: number;
            readonly pence?: number;
            readonly reason: string;
        };
        readonly Waiting: {
            readonly hireId: string;
            readonly reference: string;
            readonly customer: string;
            readonly telephone: string;
            readonly people: number;
            readonly from: string;
            readonly to: string;
            readonly since: string;
            readonly versions: {
                readonly hire: number;
                readonly waiting: number;
            };
            readonly classes: readonly string[];
            readonly flexDays: number;
            readonly could: readonly {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                readonly from: string;
                readonly to: string;
                readonly price: components["schemas"]["Money"] | null;
            }[];
        };
        readonly Ending: {
            readonly hireId: string;
            readonly reference: string;
            readonly customer: string;
            readonly telephone: string;
            readonly people: number;
            readonly from: string;
            readonly to: string;
            /** @enum {string} */
            readonly as: "lost" | "cancelled" | "noShow";
            readonly code: ("price" | "datesTaken" | "tooSmall" | "licence" | "insurance" | "pets" | "elsewhere" | "noAnswer" | "plansChanged" | "illness" | "other") | null;
            readonly reason: string;
            readonly at: string;
            readonly keep: components["schemas"]["Money"] | null;
            readonly refund: components["schemas"]["Money"] | null;
        };
        readonly Enquiries: {
            readonly waiting: readonly components["schemas"]["Waiting"][];
            readonly classes: readonly string[];
            readonly ended: readonly components["schemas"]["Ending"][];
            readonly reasons: readonly {
                readonly as: string;
                readonly code: string;
                readonly count: number;
            }[];
        };
        readonly WaitFor: {
            readonly classes: readonly string[];
            readonly flexDays: number;
        };
        readonly TakeHire: {
            readonly vehicleId: string;
            readonly extras?: readonly {
                readonly id: string;
                readonly count: number;
            }[];
            readonly from?: string;
            readonly to?: string;
        };
        readonly EndingPreview: {
            readonly charge: {
                readonly daysBefore: components["schemas"]["Figure"];
                readonly keepPercent: components["schemas"]["Figure"];
                readonly step: {
                    readonly atLeastDaysBefore: number;
                    readonly keepPercent: number;
                } | null;
                readonly keep: components["schemas"]["Money"];
                readonly paid: components["schemas"]["Money"];
                readonly refund: components["schemas"]["Money"];
                readonly owed: components["schemas"]["Money"];
            } | null;
            readonly termsId: string | null;
            readonly nextInLine: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
            }[];
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
                readonly reason?: string;
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
            readonly findings: readonly components["schemas"]["GateFinding"][];
        };
        readonly GlassReason: {
            /** @enum {string} */
            readonly gate: "seats" | "licence" | "insurance" | "masses" | "diary" | "dueDates" | "defects" | "countries" | "crossing" | "season" | "resources" | "money" | "signatures";
            readonly code: string;
            readonly about?: string;
        };
        readonly Glass: {
            readonly state: components["schemas"]["GlassState"];
            readonly before: {
                readonly state: components["schemas"]["GlassState"];
                readonly at: string;
            } | null;
            readonly gates: readonly components["schemas"]["GateOnGlass"][];
            readonly because: readonly components["schemas"]["GlassReason"][];
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
        readonly NewPayment: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "payment" | "depositHeld" | "depositReleased" | "depositCharged" | "refund";
            readonly pence: number;
            /** Format: date */
            readonly on: string;
            /** @enum {string} */
            readonly method: "card" | "transfer" | "cash" | "cardHold";
            readonly of?: string;
            readonly note?: string;
        };
        readonly Payment: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "payment" | "refund" | "depositHeld" | "depositReleased" | "depositCharged" | "charge" | "credit" | "failed" | "correction";
            readonly amount: components["schemas"]["Money"];
            /** Format: date */
            readonly on: string;
            readonly method: string;
            readonly of: string | null;
            readonly undoneBy: string | null;
            readonly note: string | null;
            readonly by: string;
            readonly at: string;
        };
        readonly PaymentParts: {
            readonly agreed: readonly {
                /** Format: date */
                readonly dueOn: string;
                readonly pence: number;
            }[];
        };
        readonly NewCharge: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "charge" | "credit";
            /** @enum {string} */
            readonly line: "hire" | "extra" | "mileage" | "fuel" | "cleaning" | "late" | "damage" | "kit" | "fine" | "toll" | "administration" | "cancellation" | "deposit";
            readonly pence: number;
            /** Format: date */
            readonly on: string;
            readonly note: string;
        };
        readonly NewRefund: {
            readonly id: string;
            readonly of: string;
            readonly pence: number;
            /** Format: date */
            readonly on: string;
            readonly reason: string;
        };
        readonly UndoEntry: {
            readonly id: string;
            readonly entryId: string;
            /** @enum {string} */
            readonly kind: "failed" | "correction";
            /** Format: date */
            readonly on: string;
            readonly reason: string;
        };
        readonly CreditInvoice: {
            readonly reason: string;
        };
        readonly InvoiceLine: {
            readonly key: string;
            /** @enum {string} */
            readonly line: "hire" | "extra" | "mileage" | "fuel" | "cleaning" | "late" | "damage" | "kit" | "fine" | "toll" | "administration" | "cancellation" | "deposit";
            readonly text: string;
            readonly facts: {
                readonly [key: string]: string | number;
            };
            /** @enum {string} */
            readonly vat: "standard" | "exempt" | "outsideScope";
            readonly ratePercent: number;
            readonly netPence: number;
            readonly vatPence: number;
            readonly grossPence: number;
        };
        readonly InvoiceDraft: {
            /** @enum {string} */
            readonly kind: "invoice" | "creditNote";
            readonly lines: readonly components["schemas"]["InvoiceLine"][];
            readonly net: components["schemas"]["Money"];
            readonly vat: components["schemas"]["Money"];
            readonly total: components["schemas"]["Money"];
        };
        readonly Invoice: {
            readonly id: string;
            readonly number: string;
            /** @enum {string} */
            readonly kind: "invoice" | "creditNote";
            /** Format: date */
            readonly on: string;
            readonly total: components["schemas"]["Money"];
            readonly vat: components["schemas"]["Money"];
            readonly of: string | null;
            readonly creditedBy: string | null;
            readonly reason: string | null;
            readonly by: string;
        };
        readonly Instalment: {
            /** @enum {string} */
            readonly what: "bookingDeposit" | "balance" | "part" | "charges";
            /** Format: date */
            readonly dueOn: string;
            readonly amount: components["schemas"]["Money"];
            readonly open: components["schemas"]["Money"];
            readonly overdueDays: number;
        };
        readonly CardHold: {
            readonly id: string;
            readonly amount: components["schemas"]["Money"];
            /** Format: date */
            readonly on: string;
            /** Format: date */
            readonly standsTo: string;
            /** Format: date */
            readonly neededTo: string;
            /** @enum {string} */
            readonly state: "stands" | "lapsesBefore" | "lapsed";
            readonly daysLeft: number;
        };
        readonly HireMoney: {
            readonly price: components["schemas"]["Money"];
            readonly due: components["schemas"]["Money"];
            readonly disputed: components["schemas"]["Money"];
            readonly settled: components["schemas"]["Money"];
            readonly owed: components["schemas"]["Money"];
            readonly depositDue: components["schemas"]["Money"];
            readonly depositHeld: components["schemas"]["Money"];
            readonly instalments: readonly components["schemas"]["Instalment"][];
            readonly agreed: readonly {
                /** Format: date */
                readonly dueOn: string;
                readonly pence: number;
            }[];
            readonly agreedVersion: number;
            readonly holds: readonly components["schemas"]["CardHold"][];
            readonly refundable: readonly {
                readonly id: string;
                readonly method: string;
                /** Format: date */
                readonly on: string;
                readonly amount: components["schemas"]["Money"];
                readonly left: components["schemas"]["Money"];
                readonly fromDeposit: boolean;
            }[];
            readonly entries: readonly components["schemas"]["Payment"][];
            readonly undoable: readonly {
                readonly id: string;
                readonly failed: boolean;
            }[];
            readonly toInvoice: components["schemas"]["InvoiceDraft"] | null;
            readonly disputedLines: readonly components["schemas"]["InvoiceLine"][];
            readonly invoices: readonly components["schemas"]["Invoice"][];
        };
        readonly FirmOnInvoices: {
            readonly name: string;
            readonly address: string;
            readonly vatNumber: string | null;
        };
        readonly MoneyPage: {
            /** Format: date */
            readonly today: string;
            readonly held: {
                readonly deposits: components["schemas"]["Money"];
                readonly prepaid: components["schemas"]["Money"];
                readonly total: components["schemas"]["Money"];
                readonly onCards: components["schemas"]["Money"];
                readonly hires: readonly {
                    readonly hireId: string;
                    readonly reference: string;
                    readonly customer: string;
                    readonly registration: string;
                    readonly stage: string;
                    readonly deposits: components["schemas"]["Money"];
                    readonly prepaid: components["schemas"]["Money"];
                    readonly onCards: components["schemas"]["Money"];
                }[];
            };
            readonly overdue: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly registration: string;
                readonly stage: string;
                /** @enum {string} */
                readonly what: "bookingDeposit" | "balance" | "part" | "charges";
                /** Format: date */
                readonly dueOn: string;
                readonly open: components["schemas"]["Money"];
                readonly days: number;
            }[];
            readonly toPayBack: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly registration: string;
                readonly stage: string;
                readonly amount: components["schemas"]["Money"];
            }[];
            readonly holds: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly registration: string;
                readonly stage: string;
                readonly hold: components["schemas"]["CardHold"];
            }[];
            readonly failed: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly registration: string;
                readonly stage: string;
                readonly amount: components["schemas"]["Money"];
                /** Format: date */
                readonly on: string;
                readonly note: string | null;
                readonly owed: components["schemas"]["Money"];
            }[];
            readonly vat: readonly {
                /** @enum {string} */
                readonly line: "hire" | "extra" | "mileage" | "fuel" | "cleaning" | "late" | "damage" | "kit" | "fine" | "toll" | "administration" | "cancellation" | "deposit";
                /** @enum {string} */
                readonly kind: "standard" | "exempt" | "outsideScope";
                readonly ratePercent: number;
                readonly source: string;
                readonly isRead: boolean;
                readonly toConfirm: string | null;
            }[];
            readonly firm: components["schemas"]["FirmOnInvoices"] | null;
            readonly firmVersion: string;
            readonly accounts: readonly ("card" | "bank" | "cash" | "hirers" | "deposits" | "sales.standard" | "sales.exempt" | "sales.outsideScope" | "vat")[];
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
                readonly otherEvidence?: {
                    readonly seen: string;
                    readonly by: string;
                };
                /** Format: date */
                readonly visitingSince?: string;
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
                readonly settings?: {
                    readonly [key: string]: {
                        readonly [key: string]: number | string | boolean;
                    };
                };
                readonly leaveWithWaterL?: number;
            }[];
            readonly departWith: {
                readonly [key: string]: number;
            };
            readonly settings: {
                readonly [key: string]: {
                    readonly [key: string]: number | string | boolean;
                };
            };
            readonly weather?: {
                readonly source: string;
                readonly issued: string;
                readonly days: readonly {
                    /** Format: date */
                    readonly date: string;
                    readonly latitudeDeg: number;
                    readonly longitudeDeg: number;
                    readonly minC: number;
                    readonly maxC: number;
                    readonly sunKwhM2?: number;
                }[];
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
            readonly email: string;
            readonly address?: string;
        };
        readonly Asked: {
            readonly countries: readonly string[];
            readonly extras: readonly {
                readonly id: string;
                readonly count: number;
            }[];
            readonly drivers: number;
        };
        readonly NewHire: {
            readonly customer: components["schemas"]["Customer"];
            readonly party: components["schemas"]["Party"];
            readonly from: string;
            readonly to: string;
            readonly wishes?: string;
            readonly vehicleId?: string;
            readonly asked?: components["schemas"]["Asked"];
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
            readonly gatesLater: number;
            readonly worst: components["schemas"]["Finding"] | null;
            readonly late: ("out" | "back") | null;
            readonly toActOn: number;
            /** @description given only to: manager, desk */
            readonly owedPence?: number;
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
            readonly discount?: components["schemas"]["Discount"] | null;
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
        readonly HirerOfHire: {
            readonly name: string;
            /** @description given only to: manager, desk; on the day of the hire also to: yard */
            readonly telephone?: string;
            /** @description given only to: manager, desk */
            readonly email?: string;
            /** @description given only to: manager, desk */
            readonly address?: string;
        };
        readonly EndingOfHire: {
            readonly as: string;
            readonly code: string | null;
            readonly at: string;
            /** @description given only to: manager, desk */
            readonly charge?: {
                readonly daysBefore: components["schemas"]["Figure"];
                readonly keepPercent: components["schemas"]["Figure"];
                readonly step: {
                    readonly atLeastDaysBefore: number;
                    readonly keepPercent: number;
                } | null;
                readonly keep: components["schemas"]["Money"];
                readonly paid: components["schemas"]["Money"];
                readonly refund: components["schemas"]["Money"];
                readonly owed: components["schemas"]["Money"];
            } | null;
            readonly termsId: string | null;
        };
        readonly HirePage: {
            readonly hire: components["schemas"]["HireSummary"];
            readonly version: number;
            readonly versions: {
                readonly party: number;
                readonly drivers: number;
                readonly trip: number;
                readonly load: number;
                readonly quote: number;
                readonly customer: number;
                readonly waiting: number;
            };
            readonly wishes: string | null;
            readonly asked: components["schemas"]["Asked"] | null;
            readonly waiting: {
                readonly since: string;
                readonly classes: readonly string[];
                readonly flexDays: number;
            } | null;
            readonly ending: components["schemas"]["EndingOfHire"] | null;
            readonly ofTheDay: boolean;
            readonly customer: components["schemas"]["HirerOfHire"];
            readonly party: components["schemas"]["Party"];
            readonly vehicle: {
                readonly id: string;
                readonly versionId: string;
                /** @description engine: VehicleDescription */
                readonly description: unknown;
            } | null;
            readonly driverNames: readonly {
                readonly id: string;
                readonly name: string;
            }[];
            /** @description given only to: manager, desk */
            readonly drivers?: readonly components["schemas"]["Driver"][];
            readonly trip: components["schemas"]["Trip"] | null;
            readonly load: components["schemas"]["LoadState"] | null;
            readonly forecastHash: string | null;
            /** @description given only to: manager, desk */
            readonly quote?: components["schemas"]["QuoteState"] | null;
            /** @description given only to: manager, desk */
            readonly payments?: readonly components["schemas"]["Payment"][];
            /** @description given only to: manager, desk */
            readonly money?: {
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
            readonly onTheRoad: readonly components["schemas"]["Finding"][];
            /** @description given only to: manager, desk */
            readonly settlement?: components["schemas"]["SettlementState"] | null;
            readonly differences: readonly components["schemas"]["Difference"][];
            readonly hirerLink: {
                readonly expires: string;
            } | null;
            /** @description given only to: manager, desk */
            readonly history?: readonly {
                readonly at: string;
                readonly by: string;
                readonly what: string;
                readonly facts: {
                    readonly [key: string]: unknown;
                };
            }[];
        };
        readonly NewStockItem: {
            readonly kind: string;
            readonly name: string;
            readonly size?: string;
            readonly count: number;
            /** Format: date */
            readonly validFrom?: string;
            /** Format: date */
            readonly expiresOn?: string;
            /** Format: date */
            readonly retiredOn?: string;
            /** @default [] */
            readonly puts: readonly string[];
            readonly vehicleId?: string;
            readonly note?: string;
        };
        readonly ChangeStockItem: {
            readonly kind: string;
            readonly name: string;
            readonly size?: string;
            readonly count: number;
            /** Format: date */
            readonly validFrom?: string;
            /** Format: date */
            readonly expiresOn?: string;
            /** Format: date */
            readonly retiredOn?: string;
            /** @default [] */
            readonly puts: readonly string[];
            readonly vehicleId?: string;
            readonly note?: string;
            readonly version: number;
            readonly reason: string;
        };
        readonly StockItem: {
            readonly id: string;
            readonly kind: string;
            readonly name: string;
            readonly size?: string;
            readonly count: number;
            /** Format: date */
            readonly validFrom?: string;
            /** Format: date */
            readonly expiresOn?: string;
            /** Format: date */
            readonly retiredOn?: string;
            readonly puts: readonly string[];
            readonly vehicleId?: string;
            readonly note?: string;
            readonly version: number;
            readonly byTerms: boolean;
            /** @enum {string} */
            readonly date: "good" | "soon" | "over" | "retired";
            readonly freeNow: number;
            readonly holds: readonly {
                readonly id: string;
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly count: number;
                readonly from: string;
                readonly to: string;
                readonly packedAt: string | null;
            }[];
        };
        readonly StockList: {
            /** Format: date */
            readonly today: string;
            readonly items: readonly components["schemas"]["StockItem"][];
        };
        readonly StockHistory: {
            readonly item: components["schemas"]["StockItem"];
            readonly history: readonly {
                readonly at: string;
                readonly by: string;
                readonly act: string;
                readonly reference: string | null;
                readonly note: string;
            }[];
            readonly past: readonly {
                readonly id: string;
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly count: number;
                readonly from: string;
                readonly to: string;
                readonly packedAt: string | null;
            }[];
        };
        readonly HireStock: {
            readonly asks: readonly {
                readonly kind: string;
                readonly size?: string;
                readonly count: number;
            }[];
            readonly version: number;
            readonly holds: readonly {
                readonly id: string;
                readonly itemId: string;
                readonly kind: string;
                readonly name: string;
                readonly size: string | null;
                readonly count: number;
                readonly puts: readonly string[];
                readonly expiresOn: string | null;
                readonly packedAt: string | null;
                readonly isBack: boolean;
            }[];
            readonly kinds: readonly {
                readonly kind: string;
                readonly sizes: readonly string[];
            }[];
            readonly findings: readonly components["schemas"]["Finding"][];
            readonly short: readonly {
                readonly kind: string;
                readonly holders: readonly {
                    readonly reference: string;
                    readonly customer: string;
                    readonly count: number;
                    readonly from: string;
                    readonly to: string;
                }[];
                readonly backAt: string | null;
                readonly fitsFrom: string | null;
            }[];
        };
        readonly SetHireStock: {
            readonly asks: readonly {
                readonly kind: string;
                readonly size?: string;
                readonly count: number;
            }[];
        };
        readonly StockAct: {
            /** @enum {string} */
            readonly act: "pack" | "unpack" | "back";
            readonly note?: string;
        };
        readonly AvailabilityQuery: {
            readonly party: components["schemas"]["Party"];
            readonly from: string;
            readonly to: string;
            readonly asked?: components["schemas"]["Asked"];
        };
        readonly CounterOffer: {
            readonly vehicleId: string;
            readonly vehicleName: string;
            readonly steps: readonly ({
                /** @constant */
                readonly kind: "shift";
                readonly from: string;
                readonly to: string;
                readonly hours: number;
            } | {
                /** @constant */
                readonly kind: "otherCrossing";
            } | {
                /** @constant */
                readonly kind: "moveHire";
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly vehicleName: string;
            } | {
                /** @constant */
                readonly kind: "decideOnDogs";
                readonly dogs: number;
            } | {
                /** @constant */
                readonly kind: "secondVehicle";
                readonly people: number;
                readonly vehicleName: string;
            })[];
            readonly trouble: components["schemas"]["Figure"];
        };
        readonly Availability: {
            readonly offers?: readonly components["schemas"]["CounterOffer"][];
            readonly vehicles: readonly {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                readonly possible: boolean;
                readonly findings: readonly components["schemas"]["Finding"][];
                readonly nearestChanges: readonly {
                    /** @enum {string} */
                    readonly kind: "shift" | "smallerParty" | "renewDue" | "waivePets" | "otherLength" | "fewerExtras" | "otherVehicle";
                    readonly from?: string;
                    readonly to?: string;
                    readonly shiftHours?: number;
                    readonly people?: number;
                    readonly extra?: string;
                    readonly count?: number;
                    readonly vehicleId?: string;
                    readonly vehicleName?: string;
                }[];
                readonly price: components["schemas"]["Money"] | null;
            }[];
            readonly short?: readonly {
                readonly kind: string;
                readonly holders: readonly {
                    readonly reference: string;
                    readonly customer: string;
                    readonly count: number;
                    readonly from: string;
                    readonly to: string;
                }[];
                readonly backAt: string | null;
                readonly fitsFrom: string | null;
            }[];
        };
        readonly CalendarFeed: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "depot" | "vehicle" | "hire";
            readonly about: string | null;
            readonly withNames: boolean;
            readonly by: string;
            readonly at: string;
            readonly revokedAt: string | null;
        };
        readonly CalendarFeeds: {
            readonly feeds: readonly components["schemas"]["CalendarFeed"][];
        };
        readonly NewCalendarFeed: {
            /** @enum {string} */
            readonly kind: "depot" | "vehicle" | "hire";
            readonly about?: string;
            /** @default false */
            readonly withNames: boolean;
        };
        readonly CalendarFeedMade: {
            readonly feed: components["schemas"]["CalendarFeed"];
            readonly url: string;
        };
        readonly CalendarImport: {
            readonly text: string;
            /** @enum {string} */
            readonly kind: "mot" | "service" | "repair" | "layUp" | "other";
            readonly confirm?: {
                readonly added: number;
                readonly rejected: number;
            };
        };
        readonly CalendarImportAnswer: {
            readonly done: boolean;
            readonly from: string;
            readonly until: string;
            readonly added: readonly {
                readonly title: string;
                readonly from: string;
                readonly to: string;
                readonly allDay: boolean;
            }[];
            readonly skipped: number;
            readonly past: number;
            readonly cancelled: number;
            readonly floating: number;
            readonly endless: readonly string[];
            readonly rejected: readonly {
                readonly title: string;
                /** @enum {string} */
                readonly why: "unknownZone" | "noLength" | "noStart" | "tooMany" | "broken" | "taken";
                readonly zone: string;
                readonly from: string | null;
                readonly to: string | null;
            }[];
        };
        readonly ForecastJudgement: {
            readonly count: number;
            readonly coverage: components["schemas"]["Figure"];
            readonly bias: components["schemas"]["Figure"];
            readonly observed: readonly number[];
        };
        readonly ForecastOutcomes: {
            readonly waiting: number;
            readonly returns: number;
            readonly taught: {
                readonly count: number;
                readonly from: string | null;
                readonly to: string | null;
            };
            readonly judged: {
                readonly count: number;
                readonly from: string | null;
                readonly to: string | null;
            };
            readonly shares: readonly number[];
            readonly stores: readonly {
                /** @enum {string} */
                readonly store: "battery12" | "lpg" | "freshWater" | "wasteWater" | "cassette" | "fuel" | "def" | "tractionBattery";
                readonly before: components["schemas"]["ForecastJudgement"];
                readonly after: components["schemas"]["ForecastJudgement"];
                readonly points: readonly {
                    readonly p10: number;
                    readonly p90: number;
                    readonly used: number;
                }[];
            }[];
            readonly rates: readonly {
                readonly vehicleId: string | null;
                /** @enum {string} */
                readonly store: "battery12" | "lpg" | "freshWater" | "wasteWater" | "cassette" | "fuel" | "def" | "tractionBattery";
                readonly rate: components["schemas"]["Figure"];
                readonly warmth?: components["schemas"]["Figure"];
                readonly low: components["schemas"]["Figure"];
                readonly high: components["schemas"]["Figure"];
                readonly spread: components["schemas"]["Figure"];
                readonly width: components["schemas"]["Figure"];
                readonly count: number;
                readonly wild: number;
            }[];
            readonly leftOut: readonly {
                /** @enum {string} */
                readonly store: "battery12" | "lpg" | "freshWater" | "wasteWater" | "cassette" | "fuel" | "def" | "tractionBattery";
                /** @enum {string} */
                readonly why: "notRead" | "filledUnknown" | "charged" | "ranOut" | "tooLittle";
                readonly count: number;
            }[];
            readonly vehicles: readonly {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
            }[];
        };
        readonly UseSheet: {
            readonly added: readonly {
                /** @enum {string} */
                readonly store: "battery12" | "lpg" | "freshWater" | "wasteWater" | "cassette" | "fuel" | "def" | "tractionBattery";
                readonly amount: number;
                readonly at: string;
            }[];
            readonly readings: readonly {
                /** @enum {string} */
                readonly store: "battery12" | "lpg" | "freshWater" | "wasteWater" | "cassette" | "fuel" | "def" | "tractionBattery";
                readonly value: number;
                /** @enum {string} */
                readonly unit: "V" | "%" | "Ah" | "Wh" | "L" | "kg";
                readonly at: string;
                readonly sd?: number;
            }[];
            readonly distanceKm: number | null;
        };
        readonly UseOfHire: {
            readonly sheet: components["schemas"]["UseSheet"];
            readonly version: string;
            readonly compared: readonly {
                /** @enum {string} */
                readonly store: "battery12" | "lpg" | "freshWater" | "wasteWater" | "cassette" | "fuel" | "def" | "tractionBattery";
                readonly used: components["schemas"]["Figure"];
                readonly mean: components["schemas"]["Figure"];
                readonly p10: number;
                readonly p90: number;
                readonly windows: number;
                readonly hours: number;
            }[] | null;
            readonly leftOut: readonly {
                /** @enum {string} */
                readonly store: "battery12" | "lpg" | "freshWater" | "wasteWater" | "cassette" | "fuel" | "def" | "tractionBattery";
                /** @enum {string} */
                readonly why: "notRead" | "filledUnknown" | "charged" | "ranOut" | "tooLittle";
            }[];
        };
        readonly HireChange: {
            /** @constant */
            readonly kind: "vehicle";
            readonly vehicleId: string;
            readonly reason: string;
            /** @default null */
            readonly offTheRoadTo: string | null;
        } | {
            /** @constant */
            readonly kind: "extension";
            readonly to: string;
            /** @default [] */
            readonly moves: readonly {
                readonly hireId: string;
                readonly vehicleId: string;
            }[];
        } | {
            /** @constant */
            readonly kind: "late";
            readonly eta: string;
            /** @default [] */
            readonly moves: readonly {
                readonly hireId: string;
                readonly vehicleId: string;
            }[];
        } | {
            /** @constant */
            readonly kind: "early";
            readonly to: string;
            /** @default 0 */
            readonly backPence: number;
        } | {
            /** @constant */
            readonly kind: "party";
            readonly party: components["schemas"]["Party"];
        } | {
            /** @constant */
            readonly kind: "driverAbsent";
            readonly driverId: string;
        } | {
            /** @constant */
            readonly kind: "teamIll";
            /** @enum {string} */
            readonly skill: "desk" | "cleaner" | "yard" | "technician";
        } | {
            /** @constant */
            readonly kind: "noShow";
            readonly reason: string;
        } | {
            /** @constant */
            readonly kind: "breakdown";
            readonly what: string;
            readonly where: string;
            readonly at: string;
            readonly drivable: boolean;
            /** @enum {string} */
            readonly cause: "ours" | "theirs" | "unknown";
            /** @default 0 */
            readonly nightsLost: number;
            /** @default null */
            readonly insurerToldAt: string | null;
        } | {
            /** @constant */
            readonly kind: "accident";
            readonly what: string;
            readonly where: string;
            readonly at: string;
            readonly drivable: boolean;
            /** @enum {string} */
            readonly cause: "ours" | "theirs" | "unknown";
            /** @default 0 */
            readonly nightsLost: number;
            /** @default null */
            readonly insurerToldAt: string | null;
        } | {
            /** @constant */
            readonly kind: "notice";
            /** @enum {string} */
            readonly notice: "privateParking" | "council" | "police" | "toll";
            readonly reference: string;
            readonly registration: string;
            readonly at: string;
            /** Format: date */
            readonly givenOn: string;
            /** @default  */
            readonly note: string;
        };
        readonly ChangeEffects: {
            /** @enum {string} */
            readonly kind: "vehicle" | "extension" | "late" | "early" | "party" | "driverAbsent" | "teamIll" | "noShow" | "breakdown" | "accident" | "notice";
            readonly hash: string;
            readonly canConfirm: boolean;
            readonly stops: readonly {
                readonly code: string;
                readonly facts: {
                    readonly [key: string]: components["schemas"]["Figure"] | string | number;
                };
            }[];
            readonly findings: readonly components["schemas"]["Finding"][];
            readonly voided: readonly {
                readonly code: string;
                readonly facts: {
                    readonly [key: string]: components["schemas"]["Figure"] | string | number;
                };
            }[];
            readonly toDo: readonly {
                readonly code: string;
                readonly facts: {
                    readonly [key: string]: components["schemas"]["Figure"] | string | number;
                };
                readonly by: string | null;
                readonly late: boolean;
                readonly misses?: string;
            }[];
            readonly money: {
                readonly before: components["schemas"]["Money"];
                readonly after: components["schemas"]["Money"];
                readonly hirer: components["schemas"]["Money"];
                readonly ours: components["schemas"]["Money"];
            } | null;
            readonly brief: {
                readonly again: readonly {
                    readonly id: string;
                    /** @enum {string} */
                    readonly why: "new" | "different";
                }[];
                readonly same: number;
                readonly minutes: components["schemas"]["Figure"];
            } | null;
            readonly people: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly telephone: string;
                readonly code: string;
                readonly facts: {
                    readonly [key: string]: components["schemas"]["Figure"] | string | number;
                };
                readonly offers: readonly {
                    readonly vehicleId: string;
                    readonly name: string;
                    readonly registration: string;
                }[];
            }[];
            readonly says: readonly {
                readonly code: string;
                readonly facts: {
                    readonly [key: string]: components["schemas"]["Figure"] | string | number;
                };
            }[];
        };
        readonly ConfirmChange: {
            readonly change: components["schemas"]["HireChange"];
            readonly seen: string;
        };
        readonly ChangeDone: {
            readonly id: string;
            /** @enum {string} */
            readonly kind: "vehicle" | "extension" | "late" | "early" | "party" | "driverAbsent" | "teamIll" | "noShow" | "breakdown" | "accident" | "notice";
            readonly at: string;
            readonly by: string;
            /** @description given only to: manager, desk */
            readonly change?: components["schemas"]["HireChange"] | null;
            readonly toDo: readonly {
                readonly code: string;
                readonly facts: {
                    readonly [key: string]: components["schemas"]["Figure"] | string | number;
                };
                readonly by: string | null;
            }[];
            readonly papers: readonly ("letter" | "agreement")[];
            readonly continuedBy: {
                readonly hireId: string;
                readonly reference: string;
            } | null;
        };
        readonly HireChanges: {
            readonly possible: readonly ("vehicle" | "extension" | "late" | "early" | "party" | "driverAbsent" | "teamIll" | "noShow" | "breakdown" | "accident" | "notice")[];
            readonly vehicles: readonly {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                readonly free: boolean;
                readonly fits: boolean;
            }[];
            readonly done: readonly components["schemas"]["ChangeDone"][];
        };
        readonly PutDriverParticulars: {
            readonly address?: string;
            readonly licenceNumber?: string;
        };
        readonly LicenceNumber: {
            readonly licenceNumber: string;
        };
        readonly OpeningHours: {
            readonly week: {
                readonly monday: {
                    readonly opens: string;
                    readonly closes: string;
                } | null;
                readonly tuesday: {
                    readonly opens: string;
                    readonly closes: string;
                } | null;
                readonly wednesday: {
                    readonly opens: string;
                    readonly closes: string;
                } | null;
                readonly thursday: {
                    readonly opens: string;
                    readonly closes: string;
                } | null;
                readonly friday: {
                    readonly opens: string;
                    readonly closes: string;
                } | null;
                readonly saturday: {
                    readonly opens: string;
                    readonly closes: string;
                } | null;
                readonly sunday: {
                    readonly opens: string;
                    readonly closes: string;
                } | null;
            };
            readonly closed: readonly {
                /** Format: date */
                readonly from: string;
                /** Format: date */
                readonly to: string;
                readonly name: string;
            }[];
        };
        readonly DepotSettings: {
            readonly name: string;
            readonly telephone: string;
            readonly hours: components["schemas"]["OpeningHours"];
            /** @enum {string} */
            readonly distances: "km" | "mi";
            readonly latitudeDeg: number;
            readonly longitudeDeg: number;
            readonly turnaroundMinutes: number;
            readonly crew: {
                readonly desk: number;
                readonly cleaner: number;
                readonly yard: number;
                readonly technician: number;
            };
            readonly schoolHolidays: readonly {
                /** Format: date */
                readonly from: string;
                /** Format: date */
                readonly to: string;
            }[];
            readonly version: number;
            readonly timeZone: string;
            readonly country: string;
        };
        readonly FirstSteps: {
            readonly open: readonly ("vehicle" | "rateCard" | "prices" | "insurer" | "firm" | "people")[];
            readonly of: number;
        };
        readonly PutDepot: {
            readonly name: string;
            readonly telephone: string;
            readonly hours: components["schemas"]["OpeningHours"];
            /** @enum {string} */
            readonly distances: "km" | "mi";
            readonly latitudeDeg: number;
            readonly longitudeDeg: number;
            readonly turnaroundMinutes: number;
            readonly crew: {
                readonly desk: number;
                readonly cleaner: number;
                readonly yard: number;
                readonly technician: number;
            };
            readonly schoolHolidays: readonly {
                /** Format: date */
                readonly from: string;
                /** Format: date */
                readonly to: string;
            }[];
            readonly version: number;
        };
        readonly PutDepotFigures: {
            readonly messageDays: {
                readonly preHire: number;
                readonly dayBefore: number;
                readonly returnReminder: number;
                readonly statement: number;
            };
            readonly linkDays: number;
            readonly kmADay: number;
        };
        readonly DepotFigures: {
            readonly figures: components["schemas"]["PutDepotFigures"];
            readonly usual: components["schemas"]["PutDepotFigures"];
            readonly version: string;
            readonly next: {
                readonly reference: string;
                readonly from: string;
                readonly to: string;
            } | null;
            readonly now: string;
            readonly unsent: readonly {
                /** @enum {string} */
                readonly kind: "preHire" | "dayBefore" | "returnReminder";
                readonly since: string;
                readonly days: readonly string[];
            }[];
        };
        readonly PutDepotTimes: {
            readonly handOverMinutes: number;
            readonly takeBackMinutes: number;
            readonly demonstrationMinutes: {
                readonly first: number;
                readonly some: number;
                readonly knowsThisVehicle: number;
            };
            readonly jobMinutes: {
                readonly [key: string]: number;
            };
            readonly leadHours: {
                readonly [key: string]: number;
            };
        };
        readonly DepotTimes: {
            readonly times: components["schemas"]["PutDepotTimes"];
            readonly usual: components["schemas"]["PutDepotTimes"];
            readonly version: string;
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
            readonly hours: components["schemas"]["OpeningHours"];
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
                    readonly kind: "shift" | "smallerParty" | "renewDue" | "waivePets" | "otherLength" | "fewerExtras" | "otherVehicle";
                    readonly from?: string;
                    readonly to?: string;
                    readonly shiftHours?: number;
                    readonly people?: number;
                    readonly extra?: string;
                    readonly count?: number;
                    readonly vehicleId?: string;
                    readonly vehicleName?: string;
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
        readonly NewCheckCode: {
            readonly code: string;
            /** Format: date */
            readonly madeOn: string;
        };
        readonly LicenceCheck: {
            /** @enum {string} */
            readonly how: "code" | "other";
            readonly consent: boolean;
            readonly seen?: string;
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
                readonly otherEvidence?: {
                    readonly seen: string;
                    readonly by: string;
                };
                /** Format: date */
                readonly visitingSince?: string;
            };
        };
        readonly DriverChecks: {
            readonly drivers: readonly {
                readonly driverId: string;
                readonly name: string;
                readonly mayDrive: ("yes" | "no" | "unchecked") | null;
                /** Format: date */
                readonly askFrom: string;
                readonly hasCode: boolean;
                readonly address: string | null;
                readonly numberUntil: string | null;
                readonly numberGiven: {
                    readonly by: string;
                    readonly at: string;
                } | null;
                readonly versions: {
                    readonly particulars: number;
                    readonly code: number;
                };
                readonly code: {
                    /** Format: date */
                    readonly madeOn: string;
                    /** Format: date */
                    readonly lastDay: string;
                    readonly isUsable: boolean;
                } | null;
                readonly checks: readonly {
                    /** @enum {string} */
                    readonly how: "code" | "other";
                    readonly by: string;
                    readonly at: string;
                    /** Format: date */
                    readonly on: string;
                    readonly seen: string | null;
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
                        readonly otherEvidence?: {
                            readonly seen: string;
                            readonly by: string;
                        };
                        /** Format: date */
                        readonly visitingSince?: string;
                    };
                }[];
            }[];
        };
        readonly CheckCodeAnswer: {
            readonly code: string;
        };
        readonly ErasureHold: {
            /** @enum {string} */
            readonly code: "open" | "dispute" | "cost" | "file" | "notice" | "owed" | "toPayBack" | "deposit" | "property";
            readonly hireId: string;
            readonly reference: string;
            readonly until: string | null;
            readonly facts: {
                readonly [key: string]: string | number;
            };
        };
        readonly Tablet: {
            readonly id: string;
            readonly by: string | null;
            readonly seenAt: string;
            readonly unseenDays: number;
            readonly forgottenAt: string | null;
        };
        readonly Erasure: {
            /** @enum {string} */
            readonly state: "none" | "waits" | "erased";
            readonly at: string | null;
            readonly by: string | null;
            readonly answerBy: string | null;
            readonly holds: readonly components["schemas"]["ErasureHold"][];
            readonly tablets: readonly components["schemas"]["Tablet"][];
            readonly unseenAfterDays: number;
        };
        readonly TabletKeeps: {
            readonly tabletId: string;
            readonly hires: readonly string[];
        };
        readonly TabletForgets: {
            readonly forget: readonly string[];
        };
        readonly KitValues: {
            readonly [key: string]: {
                readonly newPence: number;
                readonly lifeYears: number;
                readonly leastShare: number;
            };
        };
        readonly RepairPrice: {
            readonly of: string;
            /** @enum {string} */
            readonly kind: "scratch" | "dent" | "tear" | "stain" | "crack" | "missing";
            readonly upToMm?: number;
            readonly pence: number;
            /** @enum {string} */
            readonly part: "repair" | "replace";
            readonly lifeYears: number;
            readonly leastShare: number;
        };
        readonly PriceSince: {
            /** Format: date */
            readonly from: string;
            readonly by: string | null;
        };
        readonly FirmPrices: {
            readonly newest: string;
            readonly today: {
                readonly versionId: string;
                readonly termsId: string;
                /** Format: date */
                readonly validFrom: string;
            } | null;
            readonly written: {
                /** Format: date */
                readonly validFrom: string;
                readonly kit: components["schemas"]["KitValues"];
                readonly damage: readonly components["schemas"]["RepairPrice"][];
            } | null;
            readonly kit: readonly {
                readonly id: string;
                readonly newPence: number;
                readonly lifeYears: number;
                readonly leastShare: number;
                readonly since: components["schemas"]["PriceSince"];
            }[];
            readonly repairs: readonly {
                readonly of: string;
                /** @enum {string} */
                readonly kind: "scratch" | "dent" | "tear" | "stain" | "crack" | "missing";
                readonly upToMm?: number;
                readonly pence: number;
                /** @enum {string} */
                readonly part: "repair" | "replace";
                readonly lifeYears: number;
                readonly leastShare: number;
                readonly since: components["schemas"]["PriceSince"];
            }[];
            readonly later: readonly {
                readonly versionId: string;
                /** Format: date */
                readonly validFrom: string;
                readonly like: number;
            }[];
            readonly counted: readonly {
                readonly checkId: string;
                readonly systemKind: string;
                readonly charge: string | null;
                readonly vehicles: number;
                readonly pricedBy: string | null;
            }[];
            readonly fitted: readonly string[];
            readonly changes: readonly {
                readonly versionId: string;
                /** Format: date */
                readonly validFrom: string;
                readonly writtenAt: string;
                readonly by: string | null;
                readonly lines: readonly {
                    /** @enum {string} */
                    readonly list: "kit" | "repairs";
                    readonly name: string;
                    readonly kind: string | null;
                    readonly upToMm: number | null;
                    readonly wasPence: number | null;
                    readonly isPence: number | null;
                }[];
            }[];
        };
        readonly PutFirmPrices: {
            /** Format: date */
            readonly validFrom: string;
            readonly kit: components["schemas"]["KitValues"];
            readonly damage: readonly components["schemas"]["RepairPrice"][];
        };
        readonly ReadPriceList: {
            readonly file: string;
            /** @enum {string} */
            readonly encoding?: "utf-8" | "windows-1252";
        };
        readonly PriceListAnswer: {
            readonly question: string | null;
            readonly ignored: readonly string[];
            readonly kit: components["schemas"]["KitValues"];
            readonly repairs: readonly components["schemas"]["RepairPrice"][];
            readonly rejected: readonly {
                readonly line: number;
                readonly column: string;
                readonly value: string;
                readonly expected: string;
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
                /** @enum {string} */
                readonly distances: "km" | "mi";
            };
            readonly vehicle: {
                readonly id: string;
                readonly name: string;
                readonly registration: string;
                /** @description engine: VehicleDescription */
                readonly description: unknown;
            };
            readonly trip: components["schemas"]["Trip"] | null;
            readonly countries: readonly {
                /** @description engine: CountryCard */
                readonly card: unknown;
                readonly sources: readonly string[];
            }[];
            readonly forecastInput: unknown;
            readonly forecast: unknown;
            readonly forecastHash: string | null;
            readonly briefing: unknown;
            readonly faults: components["schemas"]["Faults"];
            readonly readings: readonly unknown[];
            readonly additions: {
                readonly until: string;
                readonly isOver: boolean;
            } | null;
            readonly statementAt: string | null;
        };
        readonly HirerAdditions: {
            readonly until: string | null;
            readonly isOver: boolean;
            readonly additions: readonly {
                readonly recordId: string;
                readonly at: string;
                readonly receivedAt: string;
                readonly isLate: boolean;
                readonly part: string;
                readonly view: string;
                readonly markKind: string;
                readonly note: string;
                readonly photographs: readonly string[];
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
            readonly discount?: components["schemas"]["Discount"];
            /** @default false */
            readonly accept: boolean;
        };
        readonly EndHire: {
            /** @enum {string} */
            readonly as: "lost" | "cancelled" | "noShow";
            readonly reason: string;
            /** @enum {string} */
            readonly code?: "price" | "datesTaken" | "tooSmall" | "licence" | "insurance" | "pets" | "elsewhere" | "noAnswer" | "plansChanged" | "illness" | "other";
        };
        readonly HirerLink: {
            readonly url: string;
            readonly token: string;
            readonly expires: string;
        };
        readonly Import: {
            readonly file: string;
            /** @enum {string} */
            readonly encoding?: "utf-8" | "windows-1252";
            /** @enum {string} */
            readonly dateOrder?: "iso" | "dmy" | "mdy";
            readonly confirm?: {
                readonly accepted: number;
                readonly rejected: number;
            };
        };
        readonly ImportAnswer: {
            readonly done: boolean;
            readonly question: {
                /** @enum {string} */
                readonly what: "encoding" | "dateOrder";
                readonly sample: string;
            } | null;
            readonly encoding: ("utf-8" | "windows-1252") | null;
            readonly dateOrder: ("iso" | "dmy" | "mdy") | null;
            readonly columns: readonly string[];
            readonly ignored: readonly string[];
            readonly accepted: readonly {
                readonly line: number;
                readonly title: string;
                readonly text: string;
            }[];
            readonly rejected: readonly {
                readonly line: number;
                readonly column: string;
                readonly value: string;
                readonly expected: string;
            }[];
        };
        readonly VehicleDrafts: {
            readonly drafts: readonly {
                readonly id: string;
                readonly registration: string;
                readonly name: string;
                readonly bodyStyle: string;
                readonly mamKg: number | null;
                readonly firstRegistered: string | null;
                readonly at: string;
            }[];
        };
        readonly Message: {
            readonly id: string;
            readonly hireId: string;
            readonly reference: string;
            readonly customer: string;
            /** @enum {string} */
            readonly kind: "booking" | "preHire" | "dayBefore" | "returnReminder" | "statement";
            /** @enum {string} */
            readonly language: "en" | "de" | "fr";
            readonly to: string;
            readonly subject: string;
            readonly body: string;
            readonly attachments: readonly ("quote" | "agreement" | "countries" | "receipt" | "statement" | "walkOut" | "walkBack" | "condition" | "dispute" | "lostProperty")[];
            /** @enum {string} */
            readonly state: "waiting" | "sending" | "sent" | "failed" | "bounced" | "unsure" | "withdrawn";
            readonly dueAt: string;
            readonly sentAt: string | null;
            readonly reasonCode: string | null;
            readonly reason: string | null;
            readonly response: string | null;
            readonly attempts: number;
            readonly by: string | null;
        };
        readonly Outbox: {
            readonly mailServer: string | null;
            readonly readsBounces: boolean;
            readonly hasFrom: boolean;
            readonly messages: readonly components["schemas"]["Message"][];
            readonly next: string | null;
            readonly planned: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                /** @enum {string} */
                readonly kind: "booking" | "preHire" | "dayBefore" | "returnReminder" | "statement";
                readonly dueAt: string;
            }[];
        };
        readonly MessagePreview: {
            /** @enum {string} */
            readonly kind: "booking" | "preHire" | "dayBefore" | "returnReminder" | "statement";
            /** @enum {string} */
            readonly language: "en" | "de" | "fr";
            readonly isDraft: boolean;
            readonly to: string;
            readonly subject: string;
            readonly body: string;
            readonly attachments: readonly ("quote" | "agreement" | "countries" | "receipt" | "statement" | "walkOut" | "walkBack" | "condition" | "dispute" | "lostProperty")[];
            readonly lacking: readonly {
                /** @enum {string} */
                readonly paper: "quote" | "agreement" | "countries" | "receipt" | "statement" | "walkOut" | "walkBack" | "condition" | "dispute" | "lostProperty";
                readonly problems: readonly {
                    readonly path: string;
                    readonly expected: string;
                }[];
            }[];
            readonly problems: readonly {
                readonly path: string;
                readonly expected: string;
            }[];
            readonly moment: string | null;
        };
        readonly SendMessage: {
            /** Format: uuid */
            readonly id: string;
            /** @enum {string} */
            readonly kind: "booking" | "preHire" | "dayBefore" | "returnReminder" | "statement";
            /**
             * @default en
             * @enum {string}
             */
            readonly language: "en" | "de" | "fr";
            /**
             * @default now
             * @enum {string}
             */
            readonly when: "now" | "moment";
            /** @default false */
            readonly draftRead: boolean;
        };
        readonly MessageBounced: {
            readonly why: string;
        };
        readonly MessageSettings: {
            readonly fromName: string;
            readonly fromAddress: string;
            readonly replyTo: string;
            readonly automatic: readonly ("booking" | "preHire" | "dayBefore" | "returnReminder" | "statement")[];
            readonly version: number;
        };
        readonly PutMessageSettings: {
            readonly fromName: string;
            readonly fromAddress: string;
            readonly replyTo: string;
            readonly automatic: readonly ("booking" | "preHire" | "dayBefore" | "returnReminder" | "statement")[];
            readonly version: number;
        };
        readonly Note: {
            readonly id: string;
            readonly hireId: string;
            /** @enum {string} */
            readonly kind: "note" | "promise";
            readonly text: string;
            readonly moment: ("preparing" | "counter" | "return" | "day") | null;
            readonly on: string | null;
            readonly owner: {
                readonly id: string;
                readonly name: string;
            } | null;
            readonly by: string;
            readonly at: string;
            readonly done: {
                readonly by: string;
                readonly at: string;
            } | null;
            readonly isDue: boolean;
        };
        readonly NewNote: {
            /**
             * @default note
             * @enum {string}
             */
            readonly kind: "note" | "promise";
            readonly text: string;
            /** @enum {string} */
            readonly moment?: "preparing" | "counter" | "return" | "day";
            /** Format: date */
            readonly on?: string;
            readonly ownerId?: string;
        };
        readonly TickNote: {
            readonly done: boolean;
        };
        readonly Payer: {
            readonly name: string;
            /** Format: email */
            readonly email: string;
            readonly address?: string;
        };
        readonly SetPayer: {
            readonly payer: components["schemas"]["Payer"] | null;
        };
        readonly HireNotes: {
            readonly notes: readonly components["schemas"]["Note"][];
            /** @description given only to: manager, desk */
            readonly payer?: components["schemas"]["Payer"] | null;
            readonly payerVersion: number;
            readonly people: readonly {
                readonly id: string;
                readonly name: string;
            }[];
        };
        readonly Reminders: {
            readonly notes: readonly {
                readonly note: components["schemas"]["Note"];
                readonly reference: string;
                readonly customer: string;
                readonly registration: string;
            }[];
            readonly askForCode: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly driver: string;
                readonly driverId: string;
                /** Format: date */
                readonly from: string;
                /** Format: date */
                readonly keys: string;
            }[];
            readonly toGet: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly finding: components["schemas"]["Finding"];
                /** Format: date */
                readonly doBy: string;
            }[];
        };
        readonly FoundPlace: {
            readonly name: string;
            readonly country: string;
            readonly latitudeDeg: number;
            readonly longitudeDeg: number;
            readonly elevationM: number;
            readonly timeZone: string;
            readonly population: number;
        };
        readonly Places: {
            readonly places: readonly components["schemas"]["FoundPlace"][];
        };
        readonly TripQuestion: {
            readonly inputHash: string;
            readonly input: unknown;
        };
        readonly CheckTerms: {
            readonly terms: components["schemas"]["Terms"];
            /** Format: date */
            readonly from: string;
        };
        readonly TermsPreview: {
            readonly findings: readonly components["schemas"]["Finding"][];
            readonly gaps: readonly {
                readonly from: string;
                readonly to: string;
                readonly days: number;
            }[];
            readonly overlaps: readonly {
                readonly from: string;
                readonly to: string;
                readonly days: number;
                readonly wins: string;
                readonly over: string;
            }[];
            readonly classes: readonly string[];
            readonly days: readonly {
                /** Format: date */
                readonly date: string;
                readonly season: string | null;
                readonly under: readonly string[];
                readonly minimumNights: number;
                readonly nightPence: {
                    readonly [key: string]: number;
                };
                readonly weekPence: {
                    readonly [key: string]: number;
                };
            }[];
        };
        readonly TermsVersions: {
            readonly versions: readonly {
                readonly versionId: string;
                readonly termsId: string;
                /** Format: date */
                readonly validFrom: string;
                readonly writtenAt: string;
                /** @enum {string} */
                readonly when: "before" | "now" | "later";
            }[];
        };
        readonly TermsVersion: {
            readonly versionId: string;
            readonly terms: components["schemas"]["Terms"];
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
        readonly RecordsLeftOut: {
            readonly before: {
                readonly seq: number;
                readonly hash: string;
            } | null;
            readonly links: readonly {
                readonly seq: number;
                /** Format: uuid */
                readonly recordId: string;
                readonly recordHash: string;
                /** Format: date-time */
                readonly at: string;
            }[];
            readonly head: string | null;
        };
        readonly RecordExport: {
            readonly records: readonly components["schemas"]["Record"][];
            readonly receipts: readonly components["schemas"]["Receipt"][];
            readonly leftOut: components["schemas"]["RecordsLeftOut"];
        } & {
            readonly [key: string]: unknown;
        };
        readonly Correction: {
            readonly recordId: string;
            readonly instead: {
                readonly value?: number;
                readonly found?: number;
                readonly sizeMm?: number;
                readonly note?: string;
            };
            readonly why: string;
        };
        readonly PhotoState: {
            /** @enum {string} */
            readonly state: "kept" | "partial" | "removed";
            readonly received: number;
            readonly again: boolean;
        };
        readonly Rule: {
            readonly id: string;
            readonly value: number | string | boolean;
            readonly unit: string;
            /** Format: date */
            readonly validFrom: string;
            /** Format: date */
            readonly validTo?: string;
            /** Format: date */
            readonly readOn: string;
            readonly source: string;
            /** @enum {string} */
            readonly confidence: "read" | "secondary" | "memory";
            readonly country: string;
            readonly when?: {
                /** @enum {string} */
                readonly mass?: "mam" | "technical" | "unladen";
                readonly aboveKg?: number;
                readonly toKg?: number;
                /** @enum {string} */
                readonly category?: "M1" | "N1";
                readonly heightToM?: number;
                readonly orHeightAboveM?: number;
                readonly overhang?: boolean;
                readonly plateLacksUk?: boolean;
                /** @enum {string} */
                readonly fuel?: "diesel" | "petrol" | "electric" | "hydrogen";
                /** Format: date */
                readonly registeredFrom?: string;
                /** Format: date */
                readonly registeredBefore?: string;
                readonly technicalAboveKg?: number;
            };
            readonly exempt?: {
                /** @enum {string} */
                readonly mass?: "mam" | "technical" | "unladen";
                readonly aboveKg?: number;
                readonly toKg?: number;
                /** @enum {string} */
                readonly category?: "M1" | "N1";
                readonly heightToM?: number;
                readonly orHeightAboveM?: number;
                readonly overhang?: boolean;
                readonly plateLacksUk?: boolean;
                /** @enum {string} */
                readonly fuel?: "diesel" | "petrol" | "electric" | "hydrogen";
                /** Format: date */
                readonly registeredFrom?: string;
                /** Format: date */
                readonly registeredBefore?: string;
                readonly technicalAboveKg?: number;
            };
            readonly binds?: {
                /** @constant */
                readonly weather?: "wintryRoad";
                /** @enum {string} */
                readonly roads?: "signed" | "signedMountains" | "zones" | "motorways";
                readonly usually?: string;
            };
            readonly notChecked?: readonly ("axles" | "platedBefore" | "speedIndex")[];
            readonly leadDays?: number;
            readonly unsettled?: string;
            readonly off?: string;
            readonly note?: string;
        };
        readonly RuleLine: {
            readonly id: string;
            readonly country: string;
            readonly topic: string;
            readonly now: components["schemas"]["Rule"] | null;
            readonly shipped: readonly components["schemas"]["Rule"][];
            readonly own: readonly {
                readonly rule: components["schemas"]["Rule"];
                readonly by: string;
                readonly at: string;
            }[];
            readonly readAgain: readonly {
                /** Format: date */
                readonly readOn: string;
                readonly source: string;
                readonly by: string;
                readonly at: string;
            }[];
            readonly values: readonly string[] | null;
            readonly off: string | null;
            readonly due: {
                readonly reasons: readonly ("unsettled" | "memory" | "beforeHires" | "old" | "ends")[];
                /** Format: date */
                readonly dueOn: string;
                readonly firstHire: string | null;
                readonly hires: number;
            } | null;
        };
        readonly RulesAnswer: {
            readonly bookId: string;
            readonly rules: readonly components["schemas"]["RuleLine"][];
            readonly countries: readonly string[];
            readonly topics: readonly string[];
            readonly counts: {
                readonly all: number;
                readonly due: number;
                readonly overdue: number;
                readonly own: number;
            };
        };
        readonly CorrectRule: {
            readonly value: number | string | boolean;
            /** Format: date */
            readonly validFrom: string;
            /** Format: date */
            readonly validTo?: string;
            /** Format: date */
            readonly readOn: string;
            readonly source: string;
            /** @enum {string} */
            readonly confidence: "read" | "secondary" | "memory";
            readonly unsettled?: string;
            readonly note?: string;
            readonly leadDays?: number;
        };
        readonly ConfirmRule: {
            /** Format: date */
            readonly readOn: string;
            readonly source: string;
        };
        readonly WithdrawRule: {
            /** Format: date */
            readonly validFrom: string;
        };
        readonly MissingRules: {
            readonly bookId: string;
            readonly missing: readonly {
                /** @enum {string} */
                readonly kind: "gateNotChecked" | "findingNotChecked" | "countryNotInData" | "topicNotInData" | "ruleUnsettled" | "ruleFromMemory" | "ruleSwitchedOff";
                /** @enum {string} */
                readonly gate: "seats" | "licence" | "insurance" | "masses" | "diary" | "dueDates" | "defects" | "countries" | "crossing" | "season" | "resources" | "money" | "signatures";
                readonly about: string;
                readonly finding: components["schemas"]["Finding"] | null;
                readonly source: string | null;
            }[];
        };
        readonly InsurancePreview: {
            readonly policy: components["schemas"]["InsurancePolicy"];
        };
        readonly InsurancePreviewAnswer: {
            readonly drivers: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly customer: string;
                readonly from: string;
                readonly driver: string;
                readonly today: ("accept" | "refer" | "refuse") | null;
                /** @enum {string} */
                readonly proposed: "accept" | "refer" | "refuse";
                readonly findings: readonly components["schemas"]["Finding"][];
            }[];
            readonly asked: number;
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
                /** @enum {string} */
                readonly distances: "km" | "mi";
                readonly place: {
                    readonly name: string;
                    readonly country: string;
                    readonly latitudeDeg: number;
                    readonly longitudeDeg: number;
                    readonly elevationM?: number;
                };
            };
            readonly may: readonly string[];
            readonly papers: readonly string[];
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
                readonly hours: components["schemas"]["OpeningHours"];
                /** @enum {string} */
                readonly distances?: "km" | "mi";
            };
            readonly terms?: components["schemas"]["Terms"];
            readonly insurance?: components["schemas"]["InsurancePolicy"];
            readonly manager: {
                readonly name: string;
                readonly login: string;
                readonly password: string;
            };
        };
        readonly RepairCost: {
            readonly differenceId: string;
            /** @enum {string} */
            readonly kind: "estimate" | "invoice";
            readonly partsPence: number;
            readonly labourPence: number;
            readonly reference: string;
            readonly photographs?: readonly string[];
        };
        readonly SettlementNote: {
            /** @constant */
            readonly kind: "cleaning";
            readonly hours: number;
            readonly reason: string;
            readonly photographs: readonly string[];
        } | {
            /** @constant */
            readonly kind: "loss";
            /** @enum {string} */
            readonly what: "nextHirer" | "overtime" | "lostDay";
            readonly pence: number;
            readonly reason: string;
            readonly photographs: readonly string[];
        } | {
            /** @constant */
            readonly kind: "age";
            readonly differenceId: string;
            readonly ageYears: number;
            readonly reason: string;
        } | {
            /** @constant */
            readonly kind: "awaiting";
            readonly differenceId: string;
            readonly mostPence: number;
            readonly reason: string;
        } | {
            /** @constant */
            readonly kind: "claim";
            readonly about: string;
            readonly partsPence: number;
            readonly labourPence: number;
            readonly ageYears: number;
            readonly lifeYears: number;
            readonly incident: string | null;
            readonly reason: string;
            readonly photographs: readonly string[];
            readonly departure: readonly string[];
        } | {
            /** @constant */
            readonly kind: "file";
            /** @enum {string} */
            readonly with: "insurer" | "thirdParty";
            readonly name: string;
            readonly reference: string;
            /** Format: date */
            readonly on: string;
            /** @enum {string} */
            readonly state: "opened" | "sent" | "answered" | "paid" | "closed";
            readonly paidPence: number;
            readonly note: string;
        } | {
            /** @constant */
            readonly kind: "notice";
            readonly id: string;
            /** @enum {string} */
            readonly what: "fine" | "toll";
            readonly issuer: string;
            readonly reference: string;
            readonly at: string;
            readonly where: string;
            readonly pence: number;
            readonly feePence: number;
            readonly photographs: readonly string[];
        } | {
            /** @constant */
            readonly kind: "mended";
            readonly differenceId: string;
            /** Format: date */
            readonly on: string;
            readonly who: string;
        };
        readonly SecondSignature: {
            readonly differenceId: string;
            readonly reason: string;
        };
        readonly LineReply: {
            readonly lineId: string;
            /** @enum {string} */
            readonly answer: "reply" | "withdraw";
            readonly text: string;
        };
        readonly DepositHold: {
            /** Format: date */
            readonly promisedOn: string;
            readonly reason: string;
        };
        readonly LostProperty: {
            readonly what: string;
            readonly where: string;
            /** @enum {string} */
            readonly now: "kept" | "posted" | "collected" | "givenAway";
            readonly costPence: number;
            readonly note: string;
        };
        readonly Statement: {
            readonly reference: string;
            readonly customer: string;
            readonly firm: string;
            readonly depot: {
                readonly name: string;
                readonly telephone: string;
            };
            readonly vehicle: string;
            readonly frozenAt: string;
            readonly result: unknown;
            readonly releaseBy: string;
            readonly promisedOn: string | null;
            readonly total: components["schemas"]["Money"];
            readonly evidence: readonly {
                readonly lineId: string;
                readonly out: readonly string[];
                readonly back: readonly string[];
            }[];
            readonly entries: readonly components["schemas"]["SettlementEntry"][];
        };
        readonly StatementReply: {
            readonly lineId: string;
            /** @enum {string} */
            readonly answer: "accept" | "dispute";
            readonly text: string;
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
            readonly balanceDaysBefore?: number;
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
            readonly discounts?: readonly {
                readonly id: string;
                readonly mostPercent: {
                    readonly [key: string]: number;
                };
            }[];
            readonly windows?: {
                readonly additionsHours: number;
                readonly secondLookHours: number;
            };
            readonly secondSignatureAfterDays?: number;
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
                readonly noticeFeePence?: number;
                /** @enum {string} */
                readonly labour?: "inFull" | "asParts";
                readonly kit: {
                    readonly [key: string]: {
                        readonly newPence: number;
                        readonly lifeYears: number;
                        readonly leastShare: number;
                    };
                };
                readonly damage: readonly components["schemas"]["RepairPrice"][];
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
            readonly newest: {
                readonly hire: {
                    readonly versionId: string;
                    readonly terms: components["schemas"]["Terms"];
                } | null;
                readonly insurance: {
                    readonly versionId: string;
                    readonly policy: components["schemas"]["InsurancePolicy"];
                } | null;
            };
        };
        readonly PutTerms: {
            readonly hire?: components["schemas"]["Terms"];
            readonly insurance?: components["schemas"]["InsurancePolicy"];
            readonly pricesStay?: boolean;
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
            readonly told: readonly {
                readonly hireId: string;
                readonly reference: string;
                readonly signer: string;
                readonly at: string;
            }[];
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
            readonly newest: {
                readonly versionId: string;
                readonly description: components["schemas"]["VehicleDescription"];
                readonly vehicleClass: string;
                readonly maxDogs: number;
            };
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
        readonly WeatherService: {
            readonly credit: string | null;
            readonly isOn: boolean;
        };
        readonly PutWeatherService: {
            readonly isOn: boolean;
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
            readonly defects: readonly {
                readonly id: string;
                readonly what: string;
                readonly where: string;
                readonly told: boolean;
            }[];
            readonly windows: {
                readonly additionsHours: number;
                readonly secondLookHours: number;
            };
            readonly secondLook: {
                readonly until: string;
            } | null;
            readonly done: boolean;
        };
        readonly YardJobs: {
            /** Format: date */
            readonly date: string;
            /** @enum {string} */
            readonly distances: "km" | "mi";
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
    readonly findSetUpPlaces: {
        readonly parameters: {
            readonly query: {
                readonly q: string;
            };
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
                    readonly "application/json": components["schemas"]["Places"];
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
    readonly listAccounts: {
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
                    readonly "application/json": components["schemas"]["Accounts"];
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
    readonly addAccount: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["NewAccountInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Account"];
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
    readonly changeAccount: {
        readonly parameters: {
            readonly query?: {
                readonly basedOn?: string;
            };
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["ChangeAccountInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Account"];
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
    readonly setPassword: {
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
                readonly "application/json": components["schemas"]["SetPasswordInput"];
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
    readonly changeOwnPassword: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["OwnPasswordInput"];
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
            readonly query?: {
                readonly basedOn?: string;
            };
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
            readonly query?: {
                readonly basedOn?: string;
            };
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
    readonly checkTerms: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["CheckTermsInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["TermsPreview"];
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
    readonly termsVersions: {
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
                    readonly "application/json": components["schemas"]["TermsVersions"];
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
    readonly termsVersion: {
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
                    readonly "application/json": components["schemas"]["TermsVersion"];
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
    readonly readDepot: {
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
                    readonly "application/json": components["schemas"]["DepotSettings"];
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
    readonly putDepot: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PutDepotInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["DepotSettings"];
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
    readonly firstSteps: {
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
                    readonly "application/json": components["schemas"]["FirstSteps"];
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
    readonly readDepotTimes: {
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
                    readonly "application/json": components["schemas"]["DepotTimes"];
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
    readonly putDepotTimes: {
        readonly parameters: {
            readonly query?: {
                readonly basedOn?: string;
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PutDepotTimesInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["DepotTimes"];
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
    readonly readDepotFigures: {
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
                    readonly "application/json": components["schemas"]["DepotFigures"];
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
    readonly putDepotFigures: {
        readonly parameters: {
            readonly query?: {
                readonly basedOn?: string;
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PutDepotFiguresInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["DepotFigures"];
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
            readonly query?: {
                readonly basedOn?: string;
            };
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
            readonly query?: {
                readonly basedOn?: string;
            };
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
            readonly query?: {
                readonly basedOn?: string;
            };
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
            readonly query?: {
                readonly basedOn?: string;
            };
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
    readonly enquiries: {
        readonly parameters: {
            readonly query?: {
                readonly part?: "waiting" | "all";
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
                    readonly "application/json": components["schemas"]["Enquiries"];
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
    readonly putWaiting: {
        readonly parameters: {
            readonly query?: {
                readonly basedOn?: string;
            };
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["WaitForInput"];
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
    readonly dropWaiting: {
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
    readonly takeHire: {
        readonly parameters: {
            readonly query?: {
                readonly basedOn?: string;
            };
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["TakeHireInput"];
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
    readonly previewEnding: {
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
                    readonly "application/json": components["schemas"]["EndingPreview"];
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
    readonly listStock: {
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
                    readonly "application/json": components["schemas"]["StockList"];
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
    readonly addStockItem: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["NewStockItemInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["StockHistory"];
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
    readonly readStockItem: {
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
                    readonly "application/json": components["schemas"]["StockHistory"];
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
    readonly changeStockItem: {
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
                readonly "application/json": components["schemas"]["ChangeStockItemInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["StockHistory"];
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
    readonly readHireStock: {
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
                    readonly "application/json": components["schemas"]["HireStock"];
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
    readonly setHireStock: {
        readonly parameters: {
            readonly query?: {
                readonly basedOn?: string;
            };
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["SetHireStockInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HireStock"];
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
    readonly actOnHireStock: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
                readonly holdId: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["StockActInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HireStock"];
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
            readonly query?: {
                readonly basedOn?: string;
            };
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
            readonly query?: {
                readonly basedOn?: string;
            };
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
    readonly forecastOutcomes: {
        readonly parameters: {
            readonly query?: {
                readonly vehicleId?: string;
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
                    readonly "application/json": components["schemas"]["ForecastOutcomes"];
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
    readonly readUse: {
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
                    readonly "application/json": components["schemas"]["UseOfHire"];
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
    readonly writeUse: {
        readonly parameters: {
            readonly query?: {
                readonly basedOn?: string;
            };
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["UseSheetInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["UseOfHire"];
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
    readonly findPlaces: {
        readonly parameters: {
            readonly query: {
                readonly q: string;
                readonly country?: string;
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
                    readonly "application/json": components["schemas"]["Places"];
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
    readonly readTripQuestion: {
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
                    readonly "application/json": components["schemas"]["TripQuestion"];
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
    readonly readWeatherService: {
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
                    readonly "application/json": components["schemas"]["WeatherService"];
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
    readonly putWeatherService: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PutWeatherServiceInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["WeatherService"];
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
    readonly fetchWeather: {
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
            readonly query?: {
                readonly basedOn?: string;
            };
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
    readonly listRules: {
        readonly parameters: {
            readonly query?: {
                readonly q?: string;
                readonly country?: string;
                readonly topic?: string;
                readonly due?: "true" | "false";
                readonly months?: number;
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
                    readonly "application/json": components["schemas"]["RulesAnswer"];
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
    readonly correctRule: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly ruleId: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["CorrectRuleInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["RuleLine"];
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
    readonly confirmRule: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly ruleId: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["ConfirmRuleInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["RuleLine"];
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
    readonly withdrawRule: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly ruleId: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["WithdrawRuleInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["RuleLine"];
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
    readonly missingRules: {
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
                    readonly "application/json": components["schemas"]["MissingRules"];
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
    readonly previewInsurance: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["InsurancePreviewInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["InsurancePreviewAnswer"];
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
    readonly readNotes: {
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
                    readonly "application/json": components["schemas"]["HireNotes"];
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
    readonly addNote: {
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
                readonly "application/json": components["schemas"]["NewNoteInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HireNotes"];
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
    readonly tickNote: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly noteId: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["TickNoteInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HireNotes"];
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
    readonly setPayer: {
        readonly parameters: {
            readonly query?: {
                readonly basedOn?: string;
            };
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["SetPayerInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HireNotes"];
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
    readonly reminders: {
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
                    readonly "application/json": components["schemas"]["Reminders"];
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
    readonly readDriverChecks: {
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
                    readonly "application/json": components["schemas"]["DriverChecks"];
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
    readonly putCheckCode: {
        readonly parameters: {
            readonly query?: {
                readonly basedOn?: string;
            };
            readonly header?: never;
            readonly path: {
                readonly id: string;
                readonly driverId: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["NewCheckCodeInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["DriverChecks"];
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
    readonly readCheckCode: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
                readonly driverId: string;
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
                    readonly "application/json": components["schemas"]["CheckCodeAnswer"];
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
    readonly checkDriver: {
        readonly parameters: {
            readonly query?: {
                readonly basedOn?: string;
            };
            readonly header?: never;
            readonly path: {
                readonly id: string;
                readonly driverId: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["LicenceCheckInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["DriverChecks"];
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
    readonly setCustomer: {
        readonly parameters: {
            readonly query?: {
                readonly basedOn?: string;
            };
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["CustomerInput"];
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
    readonly setDriverParticulars: {
        readonly parameters: {
            readonly query?: {
                readonly basedOn?: string;
            };
            readonly header?: never;
            readonly path: {
                readonly id: string;
                readonly driverId: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PutDriverParticularsInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["DriverChecks"];
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
    readonly readLicenceNumber: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
                readonly driverId: string;
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
                    readonly "application/json": components["schemas"]["LicenceNumber"];
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
    readonly readErasure: {
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
                    readonly "application/json": components["schemas"]["Erasure"];
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
    readonly eraseCustomer: {
        readonly parameters: {
            readonly query?: {
                readonly when?: "now" | "whenClear";
            };
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
                    readonly "application/json": components["schemas"]["Erasure"];
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
    readonly withdrawErasure: {
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
                    readonly "application/json": components["schemas"]["Erasure"];
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
    readonly readErasurePaper: {
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
    readonly tabletKeeps: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["TabletKeepsInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["TabletForgets"];
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
    readonly readChanges: {
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
                    readonly "application/json": components["schemas"]["HireChanges"];
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
    readonly confirmChange: {
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
                readonly "application/json": components["schemas"]["ConfirmChangeInput"];
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
    readonly lookAtChange: {
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
                readonly "application/json": components["schemas"]["HireChangeInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["ChangeEffects"];
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
    readonly readChangePaper: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
                readonly change: string;
                readonly paper: "letter" | "agreement";
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
    readonly listMessages: {
        readonly parameters: {
            readonly query?: {
                readonly show?: "all" | "open" | "sent";
                readonly hireId?: string;
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
                    readonly "application/json": components["schemas"]["Outbox"];
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
    readonly readMessageSettings: {
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
                    readonly "application/json": components["schemas"]["MessageSettings"];
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
    readonly putMessageSettings: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PutMessageSettingsInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["MessageSettings"];
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
    readonly previewMessage: {
        readonly parameters: {
            readonly query: {
                readonly kind: "booking" | "preHire" | "dayBefore" | "returnReminder" | "statement";
                readonly language?: "en" | "de" | "fr";
            };
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
                    readonly "application/json": components["schemas"]["MessagePreview"];
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
    readonly sendMessage: {
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
                readonly "application/json": components["schemas"]["SendMessageInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Message"];
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
    readonly retryMessage: {
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
                    readonly "application/json": components["schemas"]["Message"];
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
    readonly withdrawMessage: {
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
                    readonly "application/json": components["schemas"]["Message"];
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
    readonly bounceMessage: {
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
                readonly "application/json": components["schemas"]["MessageBouncedInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Message"];
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
    readonly readCalendar: {
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
    readonly listCalendarFeeds: {
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
                    readonly "application/json": components["schemas"]["CalendarFeeds"];
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
    readonly makeCalendarFeed: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["NewCalendarFeedInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["CalendarFeedMade"];
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
    readonly endCalendarFeed: {
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
    readonly importCalendar: {
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
                readonly "application/json": components["schemas"]["CalendarImportInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["CalendarImportAnswer"];
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
    readonly importRows: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly what: "customers" | "vehicles" | "hires";
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["ImportInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["ImportAnswer"];
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
    readonly exportRows: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly what: "customers" | "hires";
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
    readonly listVehicleDrafts: {
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
                    readonly "application/json": components["schemas"]["VehicleDrafts"];
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
    readonly removeVehicleDraft: {
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
    readonly readHireMoney: {
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
                    readonly "application/json": components["schemas"]["HireMoney"];
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
    readonly agreeParts: {
        readonly parameters: {
            readonly query?: {
                readonly basedOn?: string;
            };
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PaymentPartsInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HireMoney"];
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
    readonly addCharge: {
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
                readonly "application/json": components["schemas"]["NewChargeInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HireMoney"];
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
    readonly refund: {
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
                readonly "application/json": components["schemas"]["NewRefundInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HireMoney"];
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
    readonly undoEntry: {
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
                readonly "application/json": components["schemas"]["UndoEntryInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HireMoney"];
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
    readonly issueInvoice: {
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
                    readonly "application/json": components["schemas"]["HireMoney"];
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
    readonly creditInvoice: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
                readonly invoiceId: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["CreditInvoiceInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["HireMoney"];
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
    readonly readInvoice: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
                readonly invoiceId: string;
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
    readonly readMoney: {
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
                    readonly "application/json": components["schemas"]["MoneyPage"];
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
    readonly setFirmOnInvoices: {
        readonly parameters: {
            readonly query?: {
                readonly basedOn?: string;
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["FirmOnInvoicesInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["MoneyPage"];
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
    readonly exportPostings: {
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
                readonly paper: "quote" | "agreement" | "countries" | "receipt" | "statement" | "walkOut" | "walkBack" | "condition" | "dispute" | "lostProperty";
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
    readonly readDisputePack: {
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
    readonly readOwnPaper: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly token: string;
                readonly paper: "condition" | "statement" | "agreement" | "receipt";
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
    readonly readDayPack: {
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
    readonly addRepairCost: {
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
                readonly "application/json": components["schemas"]["RepairCostInput"];
            };
        };
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
    readonly noteOnSettlement: {
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
                readonly "application/json": components["schemas"]["SettlementNoteInput"];
            };
        };
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
    readonly readQuestions: {
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
                    readonly "application/json": components["schemas"]["ReadingQuestions"];
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
    readonly readCustody: {
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
                    readonly "application/json": components["schemas"]["Custody"];
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
    readonly signSecond: {
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
                readonly "application/json": components["schemas"]["SecondSignatureInput"];
            };
        };
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
    readonly replyToLine: {
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
                readonly "application/json": components["schemas"]["LineReplyInput"];
            };
        };
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
    readonly holdDeposit: {
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
                readonly "application/json": components["schemas"]["DepositHoldInput"];
            };
        };
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
    readonly addLostProperty: {
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
                readonly "application/json": components["schemas"]["LostPropertyInput"];
            };
        };
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
    readonly readStatement: {
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
                    readonly "application/json": components["schemas"]["Statement"];
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
    readonly answerStatement: {
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
                readonly "application/json": components["schemas"]["StatementReplyInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Statement"];
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
    readonly readFirmPrices: {
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
                    readonly "application/json": components["schemas"]["FirmPrices"];
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
    readonly putFirmPrices: {
        readonly parameters: {
            readonly query?: {
                readonly basedOn?: string;
            };
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["PutFirmPricesInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["FirmPrices"];
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
    readonly writePriceList: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly list: "kit" | "repairs";
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
    readonly readPriceList: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly list: "kit" | "repairs";
            };
            readonly cookie?: never;
        };
        readonly requestBody: {
            readonly content: {
                readonly "application/json": components["schemas"]["ReadPriceListInput"];
            };
        };
        readonly responses: {
            /** @description Default Response */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["PriceListAnswer"];
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
    readonly readGuidePhoto: {
        readonly parameters: {
            readonly query?: {
                readonly size?: "small" | "large";
            };
            readonly header?: never;
            readonly path: {
                readonly token: string;
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
    readonly putGuidePhoto: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly token: string;
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
    readonly readHirerAdditions: {
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
                    readonly "application/json": components["schemas"]["HirerAdditions"];
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
    readonly addCorrection: {
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
                readonly "application/json": components["schemas"]["CorrectionInput"];
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
