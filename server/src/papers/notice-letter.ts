import type { Content } from "pdfmake/interfaces";
import type { ChangeOf } from "../desk/changes/types.ts";
import { asDocument, type CustomerDocument } from "../desk/documents.ts";
import { driversOf, partOf } from "../desk/hire-data.ts";
import { signaturesOf } from "../desk/record-facts.ts";
import { hireFacts, type PaperCall } from "./paper-call.ts";
import { facts, heading, paragraphs, quiet, signLines, table } from "./pieces.ts";

/**
 * The letter that passes a notice on: the vehicle was on hire at that minute, to whom, and under which signed
 * statement of liability. The copy of the agreement goes with it.
 */
export function noticeLetter(call: PaperCall, notice: ChangeOf<"notice">): Content[] {
  const { data, words } = call;
  const { address } = asDocument<Partial<CustomerDocument>>(data.customer?.document ?? {});
  const readiness = partOf(data, "readiness");
  const at = words.dateText(notice.at, "fullTime");
  return [
    facts([
      [words.t("changes.paper.reference"), notice.reference],
      [words.t("changes.paper.kind"), words.t("changes.paper.notice", { kind: notice.notice })],
      [words.t("changes.paper.plate"), notice.registration],
      [words.t("changes.paper.at"), at],
      [words.t("changes.paper.givenOn"), words.dateText(notice.givenOn, "full")],
    ]),
    ...paragraphs(
      words.t("changes.paper.text", {
        plate: notice.registration,
        when: at,
        hirer: data.row.customerName,
        address: address ?? words.t("changes.paper.noAddress"),
        hire: data.row.number,
        keysOut: words.dateText(readiness?.keysOutAt ?? data.from, "fullTime"),
      }),
    ),
    heading(words.t("changes.paper.hire")),
    facts(hireFacts(call)),
    heading(words.t("papers.drivers")),
    drivers(call),
    heading(words.t("changes.paper.enclosed")),
    { ul: [words.t("changes.paper.copy"), words.t("changes.paper.statement")] },
    ...signed(call),
    signLines([words.t("papers.signFirm")]),
  ];
}

function drivers({ data, words }: PaperCall): Content {
  const rows = driversOf(data).map(({ name, born }) => [name, words.dateText(born, "short")]);
  return rows.length === 0
    ? { text: words.t("papers.noDriver") }
    : table([words.t("papers.name"), words.t("papers.born")], rows);
}

/** By whom and when the statement was signed; said plainly where no signature is kept. */
function signed({ data, words }: PaperCall): Content[] {
  const found = signaturesOf(data.records).filter(
    ({ purpose, direction }) => purpose === "agreement" && direction !== "back",
  );
  if (found.length === 0) return paragraphs(words.t("changes.paper.notSigned"));
  return found.map(({ by, at, recordId }) =>
    quiet(words.t("papers.signedOnScreen", { by, at: words.dateText(at, "fullTime"), record: recordId })),
  );
}
