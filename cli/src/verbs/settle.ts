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

const named = (prefix: string, id: string) =>
  WORDS.has(`${prefix}.${id}`) ? WORDS.say(`${prefix}.${id}`) : id;

function linesTable({ lines }: Settlement): string {
  return writeTable(
    (["line", "about", "quantity", "amount", "why", "evidence"] as const).map((name) =>
      WORDS.t(`cli.settle.${name}`),
    ),
    lines.map((line) => [
      named("cli.settle.code", line.code),
      line.about,
      line.quantity === null ? WORDS.t("cli.dash") : WORDS.figureText(line.quantity),
      WORDS.moneyText(line.amount),
      line.because === null ? "" : named("cli.settle.because", line.because),
      WORDS.t("cli.settle.evidenceCount", {
        records: line.evidence.records.length,
        photographs: line.evidence.photographs.length,
      }),
    ]),
    [2, 3],
  );
}

function sumsTable(settlement: Settlement): string {
  const names = [
    "overExcess",
    "total",
    "disputed",
    "depositHeld",
    "depositKept",
    "depositWithheld",
    "depositReturned",
    "stillOwed",
  ] as const;
  return writeTable(
    [WORDS.t("cli.settle.line"), WORDS.t("cli.settle.amount")],
    [
      ...names.map((name) => [WORDS.t(`cli.settle.${name}`), WORDS.moneyText(settlement[name])]),
      [WORDS.t("cli.settle.releaseBy"), WORDS.dateText(settlement.releaseBy, "full")],
    ],
    [1],
  );
}
