import type { Schemas } from "../../../api/client.ts";
import type { HirePageData } from "../use-hire.ts";

export type HireChange = Schemas["HireChange"];
export type ChangeKind = HireChange["kind"];
type ChangeOf<Kind extends ChangeKind> = Extract<HireChange, { readonly kind: Kind }>;
type Incident = ChangeOf<"accident">;

/** All that the sheet may ask, whatever changed. */
export interface ChangeDraft {
  readonly vehicleId: string | null;
  readonly reason: string;
  readonly offTheRoad: boolean;
  readonly offTheRoadTo: string;
  /** new return, or the time at which they are expected */
  readonly to: string;
  readonly backPounds: number | null;
  readonly adults: number | null;
  readonly children: number | null;
  readonly dogs: number | null;
  readonly driverId: string | null;
  readonly skill: ChangeOf<"teamIll">["skill"] | null;
  readonly what: string;
  readonly where: string;
  readonly at: string;
  readonly drivable: boolean;
  readonly cause: Incident["cause"];
  readonly nightsLost: number | null;
  readonly insurerTold: boolean;
  readonly insurerToldAt: string;
  readonly notice: ChangeOf<"notice">["notice"] | null;
  readonly reference: string;
  readonly registration: string;
  readonly givenOn: string;
  readonly moves: ChangeOf<"extension">["moves"];
}

const count = (page: HirePageData, kind: "adult" | "child"): number =>
  page.party.travellers.filter((traveller) => traveller.kind === kind).length;

/** What the sheet begins with. `now` is the civil time in the depot's zone. */
export function newDraft(page: HirePageData, now: string): ChangeDraft {
  const { hire } = page;
  return {
    vehicleId: null,
    reason: "",
    offTheRoad: false,
    offTheRoadTo: hire.to,
    to: hire.to,
    backPounds: null,
    adults: count(page, "adult"),
    children: count(page, "child"),
    dogs: page.party.dogs,
    driverId: null,
    skill: null,
    what: "",
    where: "",
    at: now,
    drivable: true,
    cause: "unknown",
    nightsLost: null,
    insurerTold: false,
    insurerToldAt: now,
    notice: null,
    reference: "",
    registration: hire.vehicle?.registration ?? "",
    givenOn: now.slice(0, 10),
    moves: [],
  };
}

/** The party with so many people: those who were there stay, the last of a kind go first. */
function partyOf(page: HirePageData, draft: ChangeDraft): ChangeOf<"party">["party"] {
  const { party } = page;
  const wanted = { adult: draft.adults ?? 0, child: draft.children ?? 0 };
  const ids = new Set(party.travellers.map(({ id }) => id));
  const travellers = (["adult", "child"] as const).flatMap((kind) => {
    const there = party.travellers.filter((traveller) => traveller.kind === kind).slice(0, wanted[kind]);
    const more = Array.from({ length: Math.max(0, wanted[kind] - there.length) }, () => {
      let k = ids.size + 1;
      while (ids.has(`t${k}`)) k++;
      ids.add(`t${k}`);
      return { id: `t${k}`, kind };
    });
    return [...there, ...more];
  });
  return { ...party, travellers, dogs: draft.dogs ?? 0 };
}

const incidentOf = (draft: ChangeDraft): Omit<Incident, "kind"> => ({
  what: draft.what.trim(),
  where: draft.where.trim(),
  at: draft.at,
  drivable: draft.drivable,
  cause: draft.cause,
  nightsLost: draft.nightsLost ?? 0,
  insurerToldAt: draft.insurerTold ? draft.insurerToldAt : null,
});

/** The change as the server takes it; null while something is missing. */
export function changeOf(kind: ChangeKind, draft: ChangeDraft, page: HirePageData): HireChange | null {
  const { moves, reason, to } = draft;
  switch (kind) {
    case "vehicle":
      return draft.vehicleId === null || reason.trim() === ""
        ? null
        : {
            kind,
            vehicleId: draft.vehicleId,
            reason: reason.trim(),
            offTheRoadTo: draft.offTheRoad && draft.offTheRoadTo !== "" ? draft.offTheRoadTo : null,
          };
    case "extension":
      return to === "" ? null : { kind, to, moves };
    case "late":
      return to === "" ? null : { kind, eta: to, moves };
    case "early":
      return to === "" ? null : { kind, to, backPence: Math.round((draft.backPounds ?? 0) * 100) };
    case "party":
      return (draft.adults ?? 0) + (draft.children ?? 0) < 1 ? null : { kind, party: partyOf(page, draft) };
    case "driverAbsent":
      return draft.driverId === null ? null : { kind, driverId: draft.driverId };
    case "teamIll":
      return draft.skill === null ? null : { kind, skill: draft.skill };
    case "noShow":
      return reason.trim() === "" ? null : { kind, reason: reason.trim() };
    case "breakdown":
    case "accident":
      return draft.what.trim() === "" || draft.where.trim() === "" || draft.at === ""
        ? null
        : { kind, ...incidentOf(draft) };
    case "notice":
      return noticeOf(draft);
  }
}

function noticeOf({ notice, reference, registration, at, givenOn }: ChangeDraft): HireChange | null {
  if (notice === null || reference.trim() === "" || registration.trim() === "") return null;
  if (at === "" || givenOn === "") return null;
  return {
    kind: "notice",
    notice,
    reference: reference.trim(),
    registration: registration.trim(),
    at,
    givenOn,
    note: "",
  };
}

/** Civil time now in a zone, `YYYY-MM-DDTHH:MM`. */
export const civilNow = (timeZone: string): string =>
  new Date().toLocaleString("sv-SE", { timeZone }).slice(0, 16).replace(" ", "T");
