import { toJson } from "../../desk/documents.ts";
import { partOf } from "../../desk/hire-data.ts";
import { moneyOfHire } from "../../desk/money-of-hire.ts";
import type { HireStage } from "../../store/types.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import { changeHire } from "./change-hire.ts";

const PAYING: readonly HireStage[] = [
  "quote",
  "booked",
  "handedOver",
  "onHire",
  "returned",
  "settled",
  "cancelled",
  "noShow",
];

export const moneyHandlers = {
  /** Recorded by hand; the same id again records nothing twice. */
  pay: (call) =>
    changeHire(call, PAYING, async (hire) => {
      const { id, kind, pence, on, method, note } = call.body;
      const before = hire.data.payments.find((payment) => payment.id === id);
      if (before !== undefined) {
        if (before.kind !== kind || before.pence !== pence)
          throw badField("id", "expected a new id: this one is another payment");
        return;
      }
      const money = moneyOfHire(hire.data);
      if (kind === "refund" && pence > money.paid.pence)
        throw badField("pence", `expected at most what was paid, ${money.paid.pence}`);
      if ((kind === "depositReleased" || kind === "depositCharged") && pence > money.depositHeld.pence) {
        throw badField("pence", `expected at most what is held, ${money.depositHeld.pence}`);
      }
      const added = await hire.store.payments.add({
        id,
        hireId: hire.data.row.id,
        kind,
        currency: "GBP",
        pence,
        document: toJson({ on, method, ...(note === undefined ? {} : { note }) }),
        by: hire.by,
      });
      if (added.hireId !== hire.data.row.id)
        throw badField("id", "expected a new id: this one is another payment");
      await hire.audit("hire.paid", { kind, pence });
    }),

  releaseDeposit: (call) =>
    changeHire(call, ["settled"], async (hire) => {
      const settlement = partOf(hire.data, "settlement");
      if (settlement === null || settlement.answer === null) {
        throw new Refusal("missing", { problems: [{ path: "settlement", expected: "a settlement" }] });
      }
      if (settlement.releasedAt !== null) throw new Refusal("frozen");
      const { depositKept, depositReturned } = settlement.answer.result;
      const add = async (kind: "depositCharged" | "depositReleased", pence: number) => {
        if (pence <= 0) return;
        const document = toJson({ on: hire.data.today, method: "asHeld" });
        await hire.store.payments.add({
          hireId: hire.data.row.id,
          kind,
          currency: "GBP",
          pence,
          document,
          by: hire.by,
        });
      };
      await add("depositCharged", depositKept.pence);
      await add("depositReleased", depositReturned.pence);
      await hire.putPart("settlement", { ...settlement, releasedAt: hire.data.now });
      await hire.audit("hire.depositReleased", { kept: depositKept.pence, returned: depositReturned.pence });
    }),
} satisfies Partial<Handlers>;
