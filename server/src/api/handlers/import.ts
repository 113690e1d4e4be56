import { asDocument } from "../../desk/documents.ts";
import { runImport } from "../../import/run-import.ts";
import { exportCsv } from "../../import/write-csv.ts";
import type { Handlers } from "../call.ts";
import { Refusal } from "../refusal.ts";

interface DraftDocument {
  readonly name: string;
  readonly bodyStyle: string;
  readonly mamKg?: number;
  readonly firstRegistered?: string;
}

export const importHandlers = {
  async importRows({ context, signed, params, body }) {
    const answer = await runImport(signed.store, {
      kind: params.what,
      file: body.file,
      encoding: body.encoding ?? null,
      dateOrder: body.dateOrder ?? null,
      confirm: body.confirm ?? null,
      by: signed.account.id,
      now: context.now(),
    });
    return {
      ...answer,
      columns: [...answer.columns],
      ignored: [...answer.ignored],
      accepted: [...answer.accepted],
      rejected: [...answer.rejected],
    };
  },

  async exportRows({ signed, params, reply }) {
    const { store, account } = signed;
    const csv = await exportCsv(store, params.what);
    await store.audit.add({ by: account.id, act: "export.made", about: params.what });
    reply
      .header("cache-control", "private, no-store")
      .header("content-disposition", `attachment; filename="${params.what}.csv"`);
    await reply.type("text/csv; charset=utf-8").send(csv);
    return undefined;
  },

  async listVehicleDrafts({ signed }) {
    const drafts = await signed.store.vehicleDrafts.list();
    return {
      drafts: drafts.map(({ id, registration, document, at }) => {
        const { name, bodyStyle, mamKg = null, firstRegistered = null } = asDocument<DraftDocument>(document);
        return { id, registration, name, bodyStyle, mamKg, firstRegistered, at };
      }),
    };
  },

  async removeVehicleDraft({ signed, params }) {
    const { store, account } = signed;
    await store.within(async (inner) => {
      if (!(await inner.vehicleDrafts.remove(params.id))) throw new Refusal("notFound");
      await inner.audit.add({ by: account.id, act: "vehicleDraft.removed", about: params.id });
    });
    return { done: true as const };
  },
} satisfies Partial<Handlers>;
