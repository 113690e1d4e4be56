import { createWords } from "@setfair/words";
import { type ErasureHold, erasureHolds } from "../../desk/erasure-holds.ts";
import { erasureState, hirerOfHire } from "../../desk/erasure-state.ts";
import { holdText } from "../../desk/hold-text.ts";
import { erasurePaper } from "../../papers/erasure-paper.ts";
import { wordsFor } from "../../papers/paper-call.ts";
import { renderPdf } from "../../papers/render-pdf.ts";
import type { Store } from "../../store/types.ts";
import type { Handlers } from "../call.ts";
import { Refusal } from "../refusal.ts";

const words = createWords();

/** Each thing that holds it, in words, with the hire and the day. */
const held = (holds: readonly ErasureHold[]): Refusal =>
  new Refusal(holds.some(({ code }) => code === "open") ? "wrongStage" : "refused", {
    problems: holds.map((hold) => ({
      path: hold.code === "open" ? "stage" : hold.code,
      expected: holdText(hold, words),
    })),
  });

const stateNow = async (store: Store, hireId: string, now: Date) =>
  erasureState(store, (await hirerOfHire(store, hireId)).customer, now);

export const erasureHandlers = {
  readErasure: ({ context, signed, params }) => stateNow(signed.store, params.id, context.now()),

  /** At once where nothing holds it; else refused with what does, or set to go by itself. */
  async eraseCustomer({ context, signed, params, query }) {
    const { store, account } = signed;
    await store.within(async (inner) => {
      const { customer } = await hirerOfHire(inner, params.id);
      if (customer.erasedAt !== null) throw new Refusal("notFound");
      const holds = await erasureHolds(inner, customer, context.now());
      if (holds.length === 0) {
        await inner.customers.erase(customer.id, account.id);
        return;
      }
      if (query.when === "now") throw held(holds);
      await inner.erasureWishes.add(customer.id, account.id);
      await inner.audit.add({ by: account.id, act: "customer.erasureWaits", about: params.id });
    });
    return stateNow(store, params.id, context.now());
  },

  async withdrawErasure({ context, signed, params }) {
    const { store, account } = signed;
    await store.within(async (inner) => {
      const { customer } = await hirerOfHire(inner, params.id);
      if ((await inner.erasureWishes.ofCustomer(customer.id)) === null) throw new Refusal("notFound");
      await inner.erasureWishes.end(customer.id, "withdrawn");
      await inner.audit.add({ by: account.id, act: "customer.erasureWithdrawn", about: params.id });
    });
    return stateNow(store, params.id, context.now());
  },

  async readErasurePaper({ context, signed, params, reply }) {
    const { store } = signed;
    const { customer } = await hirerOfHire(store, params.id);
    const depot = await store.depot.get();
    const hires = await store.hires.all({ customerId: customer.id });
    const state = await erasureState(store, customer, context.now());
    const now = context.now().toISOString();
    const text = wordsFor({ depot });
    const content = erasurePaper({ state, hires: hires.map(({ number }) => number), now }, text);
    const { name } = await store.firm.get();
    const on = text.dateText(now, "full", depot.timeZone);
    const pdf = await renderPdf(
      { title: text.t("erasure.paper.title"), from: name, reference: on, content },
      text,
    );
    reply
      .header("cache-control", "private, no-store")
      .header("content-disposition", `inline; filename="erasure-${now.slice(0, 10)}.pdf"`);
    await reply.type("application/pdf").send(pdf);
    return undefined;
  },

  /** What it is to forget may also lie in the browser's own cache of answers: that goes with it. */
  async tabletKeeps({ signed, body, reply }) {
    const { store, account } = signed;
    const forget = await store.tablets.keeps({ id: body.tabletId, by: account.id, hireIds: body.hires });
    if (forget.length > 0) reply.header("clear-site-data", '"cache"');
    return { forget: [...forget] };
  },
} satisfies Partial<Handlers>;
