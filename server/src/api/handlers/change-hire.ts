import type { AppContext } from "../../context.ts";
import {
  type PartDocuments,
  type PartName,
  toJson,
  type VersionedEntry,
  versionOfEntry,
} from "../../desk/documents.ts";
import { type HireData, readHireData } from "../../desk/hire-data.ts";
import { localOf } from "../../desk/local-time.ts";
import { accountNames } from "../../desk/names.ts";
import { type HirePage, pageAfterChange } from "../../desk/page.ts";
import { requireStage } from "../../desk/require-stage.ts";
import type { HireChange, HireStage, JsonObject, Store } from "../../store/types.ts";
import { refuseOtherBase } from "../based-on.ts";
import type { Signed } from "../call.ts";
import { Refusal } from "../refusal.ts";

/** A hire open for one change, all of it in one transaction. */
export interface OpenHire {
  readonly store: Store;
  readonly data: HireData;
  readonly by: string;
  /** Refuses where another was kept of a part since the sender read it. */
  refuseOtherBase(
    name: PartName,
    basedOn: string | undefined,
    sent: unknown,
    /** what of the part is sent; all of it where left out */
    sentOf?: (part: JsonObject) => unknown,
  ): Promise<void>;
  /** Refuses where another was kept of one of many in a part since the sender read it. */
  refuseOtherEntry(
    /** as in the body, with what is compared of it */
    kept: { readonly path: string; readonly value: unknown; readonly sent: unknown },
    basedOn: string | undefined,
    entry: VersionedEntry | undefined,
    by?: { readonly by: string; readonly at: string },
  ): Promise<void>;
  /** Version of an entry that is kept now in this part. */
  nextVersion(name: PartName): number;
  putPart<Name extends PartName>(name: Name, document: PartDocuments[Name]): Promise<void>;
  update(change: HireChange): Promise<void>;
  audit(act: string, document?: JsonObject): Promise<void>;
}

interface HireCall {
  readonly context: AppContext;
  readonly signed: Signed;
  readonly params: { readonly id: string };
}

/** Opens a hire that was read inside a transaction. */
export function openHire(store: Store, data: HireData, by: string): OpenHire {
  let version = data.row.version;
  const must = (answer: { readonly ok: boolean }) => {
    if (!answer.ok) throw new Refusal("stale");
  };
  return {
    store,
    data,
    by,
    async refuseOtherBase(name, basedOn, sent, sentOf = (part) => part) {
      const part = data.parts[name];
      refuseOtherBase(
        basedOn,
        {
          path: name,
          version: part?.version ?? 0,
          value: part === undefined ? {} : sentOf(part.document),
          ...(part === undefined || basedOn === undefined
            ? {}
            : {
                by: (await accountNames(store))(part.updatedBy),
                at: localOf(part.updatedAt, data.depot.timeZone),
              }),
        },
        sent,
      );
    },
    async refuseOtherEntry({ path, value, sent }, basedOn, entry, kept) {
      if (basedOn === undefined) return;
      const said =
        kept === undefined
          ? {}
          : { by: (await accountNames(store))(kept.by), at: localOf(kept.at, data.depot.timeZone) };
      refuseOtherBase(basedOn, { path, version: versionOfEntry(entry), value, ...said }, sent);
    },
    nextVersion: (name) => (data.parts[name]?.version ?? 0) + 1,
    async putPart(name, document) {
      must(
        await store.hires.putPart(data.row.id, name, toJson(document), data.parts[name]?.version ?? 0, by),
      );
    },
    async update(change) {
      const answer = await store.hires.update(data.row.id, change, version);
      must(answer);
      if (answer.ok) version = answer.version;
    },
    audit: (act, document) =>
      store.audit.add({ by, act, about: data.row.id, ...(document === undefined ? {} : { document }) }),
  };
}

/** Reads the hire, changes it in one transaction, and answers with the page as it is then. */
export async function changeHire(
  { context, signed, params }: HireCall,
  stages: readonly HireStage[],
  work: (hire: OpenHire) => Promise<void>,
): Promise<HirePage> {
  await signed.store.within(async (store) => {
    const data = await readHireData(store, params.id, context.now());
    if (stages.length > 0) requireStage(data, ...stages);
    await work(openHire(store, data, signed.account.id));
  });
  return pageAfterChange(signed.store, params.id, context.now(), signed.account.id);
}
