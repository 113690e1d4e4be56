import {
  parseWith,
  type Settlement,
  type SettlementInput,
  settleHire,
  settlementInputSchema,
} from "@setfair/engine";
import { type Room, roomVerb } from "../room-verb.ts";
import { settleOutputSchema } from "../schemas/settle.ts";
import { writeTable } from "../table.ts";
import { WORDS } from "../words.ts";

export const settleRoom: Room<Settlement> = {
  input: settlementInputSchema,
  output: settleOutputSchema,
  answer: (input) => settleHire(parseWith<SettlementInput>(settlementInputSchema, input)),
  table: settleTable,
};
export const settleVerb = roomVerb(settleRoom);

function settleTable(settlement: Settlement): string {
  return [linesTable(settlement), "", sumsTable(settlement)].join("\n");
}

/** The name of the part or of the check that a line is about; its id where it has none. */
function aboutText(about: string): string {
  const id = [`part.${about}`, `check.${about}`].find((each) => WORDS.has(each));
  return id === undefined ? about : WORDS.say(id);
}

function linesTable({ lines }: Settlement): string {
  return writeTable(
    (["line", "quantity", "amount", "why", "evidence"] as const).map((name) => WORDS.t(`cli.settle.${name}`)),
    lines.map((line) => [
      WORDS.say(`settlement.${line.code}`, { about: aboutText(line.about) }),
      line.quantity === null ? WORDS.t("cli.dash") : WORDS.figureText(line.quantity),
      WORDS.moneyText(line.amount),
      [
        line.because === null ? "" : WORDS.say(`settlement.because.${line.because}`),
        line.disputed ? WORDS.t("settlement.disputed") : "",
      ]
        .filter((text) => text !== "")
        .join(", "),
      WORDS.t("settlement.evidence", {
        records: line.evidence.records.length,
        photographs: line.evidence.photographs.length,
      }),
    ]),
    { right: [1, 2] },
  );
}

function sumsTable(settlement: Settlement): string {
  const names = [
    "overExcess",
    "total",
    "disputed",
    "awaiting",
    "depositHeld",
    "depositKept",
    "depositWithheld",
    "depositReturned",
    "stillOwed",
  ] as const;
  return writeTable(
    [WORDS.t("cli.settle.sum"), WORDS.t("cli.settle.amount")],
    [
      ...names.map((name) => [
        WORDS.t(name === "disputed" ? "cli.settle.disputed" : `settlement.${name}`),
        WORDS.moneyText(settlement[name]),
      ]),
      [WORDS.t("cli.settle.releaseBy"), WORDS.dateText(settlement.releaseBy, "full")],
    ],
    { right: [1] },
  );
}
