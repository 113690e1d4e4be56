import type { InputProblem, IsoInstant } from "@setfair/engine";
import { createWords, MESSAGE_DRAFTS, type Words } from "@setfair/words";
import { Refusal } from "../api/refusal.ts";
import { routeOf } from "../desk/abroad.ts";
import { asDocument, type DepotDocument } from "../desk/documents.ts";
import type { HireData } from "../desk/hire-data.ts";
import { dateOf, localOf } from "../desk/local-time.ts";
import { moneyOfHire } from "../desk/money-of-hire.ts";
import { distancesOf, wordsFor } from "../papers/paper-call.ts";
import { COMPOSE, type PaperName } from "../papers/papers.ts";
import type { MessageKind, MessageLanguage } from "../store/message-types.ts";
import type { HireStage, Store } from "../store/types.ts";
import { isMailAddress } from "./addresses.ts";

/** Stands for the hirer's own link until the message is sent: the link is made then, and kept nowhere. */
export const GUIDE_MARK = "⟦guide⟧";

/** Stages at which a message makes sense. */
export const MESSAGE_STAGES: Readonly<Record<MessageKind, readonly HireStage[]>> = {
  booking: ["booked", "handedOver", "onHire"],
  preHire: ["booked"],
  dayBefore: ["booked"],
  returnReminder: ["handedOver", "onHire"],
  statement: ["settled", "closed"],
};

export interface ComposedMessage {
  readonly to: string;
  readonly subject: string;
  readonly body: string;
  /** papers that can be made now */
  readonly attachments: readonly PaperName[];
  /** papers that belong to it, and what they lack */
  readonly lacking: readonly { readonly paper: PaperName; readonly problems: readonly InputProblem[] }[];
  /** why it cannot be sent; nothing where it can */
  readonly problems: readonly InputProblem[];
}

function wordsIn(language: MessageLanguage, data: HireData): Words {
  if (language === "en") return wordsFor(data);
  const { locale, catalogue } = MESSAGE_DRAFTS[language];
  return createWords(locale, catalogue, () => data.depot.timeZone, distancesOf(data.depot));
}

function papersOf(kind: MessageKind, data: HireData): readonly PaperName[] {
  if (kind === "booking") return ["quote"];
  if (kind === "statement") return ["statement", "condition", "receipt"];
  if (kind !== "preHire") return [];
  const home = data.depotDocument.country;
  const isAbroad = routeOf(data)?.some(({ country }) => country !== home) === true;
  return isAbroad ? ["agreement", "countries"] : ["agreement"];
}

/** Which papers of the message can be made now: each is asked, so that none is promised that cannot be. */
async function tryPapers(store: Store, data: HireData, kind: MessageKind, firm: string) {
  const attachments: PaperName[] = [];
  const lacking: { paper: PaperName; problems: readonly InputProblem[] }[] = [];
  for (const paper of papersOf(kind, data)) {
    try {
      await COMPOSE[paper]({ data, store, words: wordsFor(data), firm });
      attachments.push(paper);
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      lacking.push({ paper, problems: error.problems });
    }
  }
  return { attachments, lacking };
}

function factsOf(data: HireData, words: Words, firm: string, isAttached: boolean) {
  const money = moneyOfHire(data);
  const vehicle = data.vehicle?.document.description;
  const { telephone } = asDocument<DepotDocument>(data.depot.document);
  return {
    name: data.row.customerName,
    number: data.row.number,
    firm,
    telephone: telephone ?? "",
    depot: data.depot.name,
    vehicle: vehicle === undefined ? "–" : `${vehicle.name}, ${vehicle.registration}`,
    from: words.dateText(data.from, "fullTime"),
    to: words.dateText(data.to, "fullTime"),
    price: words.moneyText(money.price),
    paid: words.moneyText(money.paid),
    owed: words.moneyText(money.owed),
    owing: money.owed.pence > 0 ? "yes" : "no",
    deposit: words.moneyText(money.depositDue),
    attached: isAttached ? "yes" : "no",
    guided: vehicle === undefined ? "no" : "yes",
    guide: GUIDE_MARK,
  };
}

/** An empty choice leaves gaps: one blank line between paragraphs, none inside a list. */
const tidy = (text: string): string =>
  text
    .replaceAll(/[ \t]+\n/g, "\n")
    .replaceAll(/\n{3,}/g, "\n\n")
    .trim();

interface Asked {
  readonly kind: MessageKind;
  readonly language: MessageLanguage;
  /** when it is to go out: what it says of the days until then holds on that day */
  readonly goesAt: IsoInstant;
}

/** Civil days from the moment at which it goes to the keys, or to the return. */
function daysUntil(data: HireData, kind: MessageKind, goesAt: IsoInstant): number {
  const end = (kind === "returnReminder" ? data.to : data.from).slice(0, 10);
  const day = dateOf(localOf(goesAt, data.depot.timeZone));
  return Math.max(0, Math.round((Date.parse(end) - Date.parse(day)) / 86_400_000));
}

/** A message with the facts of the hire as it stands, and what stops it from being sent. */
export async function composeMessage(
  store: Store,
  data: HireData,
  { kind, language, goesAt }: Asked,
): Promise<ComposedMessage> {
  const { name: firm } = await store.firm.get();
  const { attachments, lacking } = await tryPapers(store, data, kind, firm);
  const words = wordsIn(language, data);
  const facts = {
    ...factsOf(data, words, firm, attachments.length > 0),
    days: daysUntil(data, kind, goesAt),
  };
  const customer = asDocument<{ email?: string }>(data.customer?.document ?? {});
  const to = customer.email?.trim() ?? "";
  const stages = MESSAGE_STAGES[kind];
  const problems: InputProblem[] = [
    ...(isMailAddress(to) ? [] : [{ path: "customer.email", expected: "an e-mail address of the hirer" }]),
    ...(stages.includes(data.row.stage)
      ? []
      : [{ path: "stage", expected: `${stages.join(" or ")}, but it is ${data.row.stage}` }]),
  ];
  return {
    to,
    subject: words.t(`message.${kind}.subject`, facts).replaceAll(/\s+/g, " "),
    body: tidy(words.t(`message.${kind}.body`, facts)),
    attachments,
    lacking,
    problems,
  };
}
