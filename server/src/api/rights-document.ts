import type * as z from "zod";
import { globalRegistry } from "zod";
import { type Act, may, ROLES, type Role } from "../auth/roles.ts";
import {
  FIELD_RIGHTS,
  type FieldRight,
  GATE_RIGHTS,
  GIVEN_BESIDE,
  PAPER_RIGHTS,
} from "../auth/who-sees-what.ts";
import type { Operation } from "./operation.ts";
import { type OperationId, operations } from "./operations.ts";

const STAFF = ROLES.filter((role) => role !== "hirer");
const rolesOf = (act: Act): readonly Role[] => STAFF.filter((role) => may(role, act));
const more = (act: Act, onTheDay: Act): string =>
  rolesOf(onTheDay)
    .filter((role) => !may(role, act))
    .join(", ");
const inWords = ({ may: act, onTheDay }: FieldRight): string =>
  `given only to: ${rolesOf(act).join(", ")}${
    onTheDay === undefined ? "" : `; on the day of the hire also to: ${more(act, onTheDay)}`
  }`;

interface Component {
  readonly properties?: Record<string, Record<string, unknown>>;
}
interface Document {
  readonly components?: { readonly schemas?: Record<string, Component> };
}

/** Says at each field of the API document that a right opens it, and to whom. */
export function withRights<T extends object>(document: T): T {
  for (const [name, component] of Object.entries((document as Document).components?.schemas ?? {})) {
    const rights = FIELD_RIGHTS[name.replace(/Input$/, "")];
    for (const [field, right] of Object.entries(rights ?? {})) {
      const property = component.properties?.[field];
      if (property === undefined) continue;
      component.properties![field] = { ...property, description: inWords(right), "x-right": right.may };
    }
  }
  return document;
}

/** What a field tells of a person or of money, by its name. */
const KINDS: readonly (readonly [RegExp, string])[] = [
  [/^(customer|driverNames|who|signer|conductor)$/, "names"],
  [/^telephone$/, "telephone"],
  [/^(email|replyTo)$/, "mail"],
  [/^address$/, "postal address"],
  [/^(born|licence|licenceNumber|checks)$/, "licence and birthday"],
  [/[pP]ence$/, "sums"],
  [/^payer$/, "who pays"],
];

export interface Given {
  readonly kind: string;
  /** null: whoever may call the operation */
  readonly right: FieldRight | null;
}

/** What an answer gives of persons and sums, by the names of its fields, each with the right that opens it. */
export function givenBy(schema: z.core.$ZodType, right: FieldRight | null = null): readonly Given[] {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  switch (def.type) {
    case "object": {
      const name = globalRegistry.get(schema)?.id ?? "";
      if (name === "Money") return [{ kind: "sums", right }];
      return Object.entries(def.shape).flatMap(([field, inner]) => {
        const own = FIELD_RIGHTS[name]?.[field] ?? right;
        const kind = KINDS.find(([pattern]) => pattern.test(field))?.[1];
        // the depot's own telephone and the firm's own address are nobody's
        if (field === "depot" || field === "firm" || name === "DepotSettings") return [];
        return [...(kind === undefined ? [] : [{ kind, right: own }]), ...givenBy(inner, own)];
      });
    }
    case "array":
      return givenBy(def.element, right);
    case "record":
      return givenBy(def.valueType, right);
    case "union":
      return def.options.flatMap((option) => givenBy(option, right));
    case "optional":
    case "nullable":
    case "default":
    case "readonly":
      return givenBy(def.innerType, right);
    default:
      return [];
  }
}

const READS: readonly string[] = ["GET", "HEAD"];
/** Writes nothing though it is asked by POST. */
const ASKED_BY_POST: readonly OperationId[] = [
  "availability",
  "lookAtChange",
  "previewInsurance",
  "readCheckCode",
  "readLicenceNumber",
  "checkTerms",
];

function whoMayCall({ access }: Operation): string {
  if (access === "open") return "anybody";
  if (access === "link") return "holder of the link";
  if (access === "setup") return "holder of the set-up link";
  return rolesOf(access.act).join(", ");
}

/** Each kind once, with whom it goes to where a right of its own opens it. */
function givenInWords(id: OperationId, { answer }: Operation): string {
  const beside: string | undefined = GIVEN_BESIDE[id as keyof typeof GIVEN_BESIDE];
  if (answer === undefined) return beside ?? "not said";
  const lines = new Map<string, string>();
  for (const { kind, right } of givenBy(answer)) {
    // what everybody is given who may call says it all
    if (right === null) lines.set(kind, kind);
    else if (!lines.has(kind)) lines.set(kind, `${kind} (${inWords(right)})`);
  }
  const all = [...lines.values(), ...(beside === undefined ? [] : [beside])];
  return all.length === 0 ? "–" : all.join(", ");
}

const cell = (text: string): string => text.replaceAll("|", "\\|");
const row = (...cells: readonly string[]): string => `| ${cells.map(cell).join(" | ")} |`;

/** `docs/who-sees-what.md`: every operation that reads, and what it gives of persons and sums to whom. */
export function whoSeesWhat(): string {
  const reads = (Object.keys(operations) as OperationId[]).filter(
    (id) => READS.includes(operations[id].method) || ASKED_BY_POST.includes(id),
  );
  return [
    "# Who sees what",
    "",
    "Made by `npm run api` from the operations and from `server/src/auth/who-sees-what.ts`; do not edit. A field that a right does not open is left out of the answer: nothing stands in its place.",
    "",
    "The yard is given names, the vehicle, the party, what travels with it, what is open at each gate, and the telephone of a hirer whose keys go or went. It is not given postal or mail addresses, birthdays, licences, sums, or who pays.",
    "",
    `Findings of the gates ${Object.keys(GATE_RIGHTS).join(", ")} are given to the desk; whoever lacks the right is told that something is open there.`,
    "",
    "## Operations that read",
    "",
    row("operation", "address", "who", "of persons and sums"),
    row("---", "---", "---", "---"),
    ...reads.map((id) =>
      row(
        `\`${id}\``,
        `\`${operations[id].method} /api${operations[id].url}\``,
        whoMayCall(operations[id]),
        givenInWords(id, operations[id]),
      ),
    ),
    "",
    "## Papers of a hire",
    "",
    row("paper", "who"),
    row("---", "---"),
    ...Object.entries(PAPER_RIGHTS).map(([paper, act]) => row(`\`${paper}\``, rolesOf(act).join(", "))),
    "",
    "## What tablets and telephones keep",
    "",
    "- **Tablet of the yard** (`GET /yard/jobs`, `/yard/turnarounds`, small photographs): names, hire numbers, the vehicle, marks and readings of the walk-round out. What the hirer signed or said is not among it; what the tablet itself recorded is, until its person is erased.",
    "- **Telephone of the hirer** (`GET /guide/:token`): the hire of the link alone.",
    "- **Mail** goes to the hirer and to nobody else; the outbox is shown to the desk.",
    "- **Calendar feeds** carry names only where whoever made the link asked for them.",
    "- **The audit** is shown as the history of a hire, to the desk; it names fields that were changed, never what stood in them.",
    "",
  ].join("\n");
}
