import { STOCK_KINDS } from "@setfair/engine";
import { useMutation, useQuery } from "@tanstack/react-query";
import type { FormEvent } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { problemAt, take } from "../../api/failure.ts";
import { Button, DateField, NumberField, SelectField, TextField, TickField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { DropDraft } from "../keep-row.tsx";
import { KeptMeanwhile } from "../meanwhile/kept-meanwhile.tsx";
import { sendOrRead, useGuardedDraft } from "../meanwhile/use-guarded-draft.ts";
import { queries } from "../query-client.ts";
import { stockKindText } from "./stock-words.ts";

type Item = Schemas["StockItem"];

/** What a kit can put aboard, by the names of the country kit. */
const PUTS = [
  "vest",
  "triangle",
  "twoTriangles",
  "firstAid",
  "extinguisher",
  "spareBulbs",
  "overhangBoard",
  "blindSpotStickers",
  "speedDiscs",
  "ukSticker",
  "beamDeflectors",
] as const;
const ADAPTORS = ["bayonet", "dish", "acme", "euronozzle"] as const;
/** Kinds that are told apart by a size, with what the size is. */
const SIZED: readonly string[] = ["childRestraint", "snowChains", "gasAdaptor", "bedding", "cot"];

interface Draft {
  readonly kind: string;
  readonly name: string;
  readonly size: string;
  readonly count: number;
  readonly validFrom: string;
  readonly expiresOn: string;
  readonly retiredOn: string;
  readonly puts: readonly string[];
  readonly vehicleId: string;
  readonly note: string;
  readonly reason: string;
}
const draftOf = (item: Item | null): Draft => ({
  kind: item?.kind ?? "childRestraint",
  name: item?.name ?? "",
  size: item?.size ?? "",
  count: item?.count ?? 1,
  validFrom: item?.validFrom ?? "",
  expiresOn: item?.expiresOn ?? "",
  retiredOn: item?.retiredOn ?? "",
  puts: item?.puts ?? [],
  vehicleId: item?.vehicleId ?? "",
  note: item?.note ?? "",
  reason: "",
});
const given = <Name extends string>(name: Name, value: string) =>
  (value.trim() === "" ? {} : { [name]: value.trim() }) as { [key in Name]?: string };

const bodyOf = (draft: Draft) => ({
  kind: draft.kind,
  name: draft.name.trim(),
  count: draft.count,
  puts: [...draft.puts],
  ...given("size", draft.size),
  ...given("validFrom", draft.validFrom),
  ...given("expiresOn", draft.expiresOn),
  ...given("retiredOn", draft.retiredOn),
  ...given("vehicleId", draft.vehicleId),
  ...given("note", draft.note),
});

export interface ItemFormProps {
  /** null: a new one */
  readonly item: Item | null;
  readonly onDone: () => void;
}

/** A numbered thing or a lot of like things, put on the shelf or changed. */
export function ItemForm({ item, onDone }: ItemFormProps) {
  const guarded = useGuardedDraft<Draft>(`stock.${item?.id ?? "new"}`, {
    value: draftOf(item),
    version: item?.version ?? "",
  });
  const { value: draft, basedOn } = guarded;
  const change = (part: Partial<Draft>) => guarded.set({ ...draft, ...part });
  const save = useMutation({
    mutationFn: () =>
      item === null
        ? take(client.POST("/api/stock", { body: bodyOf(draft) }))
        : sendOrRead(
            () =>
              take(
                client.PUT("/api/stock/{id}", {
                  params: { path: { id: item.id } },
                  body: { ...bodyOf(draft), version: Number(basedOn), reason: draft.reason },
                }),
              ),
            () => queries.invalidateQueries({ queryKey: ["stock", item.id] }),
          ),
    onSuccess: () => {
      guarded.done();
      void queries.invalidateQueries({ queryKey: ["stock"] });
      onDone();
    },
  });
  const send = (event: FormEvent) => {
    event.preventDefault();
    save.mutate();
  };
  const fields = { draft, change, failure: save.error };
  const isReady = draft.name.trim() !== "" && (item === null || draft.reason.trim() !== "");
  return (
    <form className="stack" onSubmit={send} noValidate>
      <Kind {...fields} isNew={item === null} />
      <Dates {...fields} isNew={item === null} />
      <Puts {...fields} />
      <TextField
        label={t("stock.note")}
        value={draft.note}
        onChange={(note) => change({ note })}
        error={problemAt(save.error, "note")}
      />
      {item !== null && (
        <TextField
          label={t("stock.reason")}
          value={draft.reason}
          onChange={(reason) => change({ reason })}
          error={problemAt(save.error, "reason")}
        />
      )}
      <KeptMeanwhile
        draft={guarded}
        failure={save.error}
        onSettled={save.reset}
        shown={["name", "size", "expiresOn", "validFrom", "reason", "note"]}
      />
      <div className="row">
        <Button type="submit" look="main" isPending={save.isPending} isDisabled={!isReady}>
          {t(item === null ? "stock.put" : "stock.keep")}
        </Button>
        <DropDraft draft={guarded} />
      </div>
    </form>
  );
}

interface PieceProps {
  readonly draft: Draft;
  readonly change: (part: Partial<Draft>) => void;
  readonly failure: unknown;
}

function Kind({ draft, change, failure, isNew }: PieceProps & { readonly isNew: boolean }) {
  const terms = useQuery({
    queryKey: ["terms"],
    queryFn: () => take(client.GET("/api/terms")),
    staleTime: 300_000,
  });
  const extras = terms.data?.hire?.terms.extras.map(({ id }) => id) ?? [];
  const kinds = [...new Set<string>([...STOCK_KINDS, ...extras, draft.kind])];
  return (
    <div className="sheet-fields">
      {isNew ? (
        <SelectField
          label={t("stock.kind")}
          value={draft.kind}
          options={kinds.map((kind) => ({ value: kind, label: stockKindText(kind) }))}
          onChange={(kind) => change({ kind, puts: [] })}
        />
      ) : (
        <p>{stockKindText(draft.kind)}</p>
      )}
      <TextField
        label={t("stock.name")}
        note={t("stock.nameNote")}
        value={draft.name}
        onChange={(name) => change({ name })}
        error={problemAt(failure, "name")}
      />
      {(SIZED.includes(draft.kind) || draft.size !== "") && (
        <TextField
          label={t("stock.size")}
          note={t("stock.sizeNote")}
          value={draft.size}
          onChange={(size) => change({ size })}
          error={problemAt(failure, "size")}
        />
      )}
      <NumberField
        label={t("stock.count")}
        note={t("stock.countNote")}
        value={draft.count}
        min={1}
        max={1000}
        stepper
        onChange={(count) => change({ count: count ?? 1 })}
      />
    </div>
  );
}

function Dates({ draft, change, failure, isNew }: PieceProps & { readonly isNew: boolean }) {
  const isPaper = draft.kind === "onHireCertificate";
  const vehicles = useQuery({
    queryKey: ["vehicles"],
    queryFn: () => take(client.GET("/api/vehicles")),
    enabled: isPaper,
  });
  return (
    <div className="sheet-fields">
      {isPaper && (
        <>
          <SelectField
            label={t("stock.madeOutFor")}
            value={draft.vehicleId}
            options={(vehicles.data?.vehicles ?? []).map(({ id, name, registration }) => ({
              value: id,
              label: `${name} ${registration}`,
            }))}
            onChange={(vehicleId) => change({ vehicleId })}
          />
          <DateField
            label={t("stock.validFrom")}
            value={draft.validFrom}
            onChange={(validFrom) => change({ validFrom })}
            error={problemAt(failure, "validFrom")}
          />
        </>
      )}
      <DateField
        label={t("stock.expiresOn")}
        value={draft.expiresOn}
        onChange={(expiresOn) => change({ expiresOn })}
        error={problemAt(failure, "expiresOn")}
      />
      {!isNew && (
        <DateField
          label={t("stock.retiredOn")}
          value={draft.retiredOn}
          onChange={(retiredOn) => change({ retiredOn })}
        />
      )}
    </div>
  );
}

function Puts({ draft, change }: PieceProps) {
  const choices =
    draft.kind === "europeKit"
      ? [...PUTS]
      : draft.kind === "firstAidKit"
        ? ["firstAid"]
        : draft.kind === "gasAdaptor"
          ? ADAPTORS.map((each) => `adaptor.${each}`)
          : [];
  if (choices.length === 0) return null;
  return (
    <fieldset className="fields">
      <legend>{t("stock.puts")}</legend>
      <div className="ticks">
        {choices.map((thing) => (
          <TickField
            key={thing}
            value={draft.puts.includes(thing)}
            onChange={(isIn) =>
              change({ puts: isIn ? [...draft.puts, thing] : draft.puts.filter((each) => each !== thing) })
            }
          >
            {thing.startsWith("adaptor.")
              ? t("country.adaptor", { adaptor: thing.slice("adaptor.".length) })
              : t("country.thing", { thing })}
          </TickField>
        ))}
      </div>
    </fieldset>
  );
}
