import type { Schemas } from "../../api/client.ts";

export interface EnquiryDraft {
  readonly adults: number;
  /** age of each child in years */
  readonly childAges: readonly number[];
  readonly dogs: number;
  readonly experience: Schemas["Party"]["experience"];
  readonly from: string;
  readonly to: string;
  readonly vehicleId: string | null;
  readonly name: string;
  readonly telephone: string;
  readonly email: string;
  /** known from an earlier hire */
  readonly address: string;
  readonly wishes: string;
  /** where to, beside the depot's own country */
  readonly countries: readonly string[];
  readonly drivers: number;
  /** number wanted of each extra, by its id in the terms */
  readonly extras: Readonly<Record<string, number>>;
}

export const EMPTY_ENQUIRY: EnquiryDraft = {
  adults: 2,
  childAges: [],
  dogs: 0,
  experience: "first",
  from: "",
  to: "",
  vehicleId: null,
  name: "",
  telephone: "",
  email: "",
  address: "",
  wishes: "",
  countries: [],
  drivers: 1,
  extras: {},
};

/** The party as the rooms take it; travellers are told apart by place, not by name, until names are known. */
export function partyOf(draft: EnquiryDraft): Schemas["Party"] {
  const adults = Array.from({ length: draft.adults }, (_, k) => ({
    id: `adult${k + 1}`,
    kind: "adult" as const,
  }));
  const children = draft.childAges.map((ageYears, k) => ({
    id: `child${k + 1}`,
    kind: "child" as const,
    ageYears,
  }));
  return { travellers: [...adults, ...children], dogs: draft.dogs, experience: draft.experience };
}

export function askedOf(draft: EnquiryDraft): Schemas["Asked"] {
  const extras = Object.entries(draft.extras).flatMap(([id, count]) => (count > 0 ? [{ id, count }] : []));
  return { countries: [...draft.countries], drivers: draft.drivers, extras };
}

export function newHireOf(draft: EnquiryDraft): Schemas["NewHire"] {
  return {
    customer: {
      name: draft.name.trim(),
      telephone: draft.telephone.trim(),
      email: draft.email.trim(),
      ...(draft.address === "" ? {} : { address: draft.address }),
    },
    party: partyOf(draft),
    from: draft.from,
    to: draft.to,
    asked: askedOf(draft),
    ...(draft.wishes.trim() === "" ? {} : { wishes: draft.wishes.trim() }),
    ...(draft.vehicleId === null ? {} : { vehicleId: draft.vehicleId }),
  };
}

/** True when there is enough to ask which vehicles could do it. */
export const canAsk = (draft: EnquiryDraft): boolean =>
  draft.from !== "" && draft.to !== "" && draft.from < draft.to;
