import { useMutation } from "@tanstack/react-query";
import { client } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, LinkButton, PlainPill } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { placeOfHire } from "../where.ts";
import { type Bar, canMove, type DiaryBlock, type DiaryHire, type DiaryRow } from "./diary-model.ts";
import { diaryChanged } from "./use-diary.ts";

export interface AtCursorProps {
  readonly row: DiaryRow;
  readonly bars: readonly Bar[];
  /** first and last selected day */
  readonly days: readonly [string, string];
  readonly isFree: boolean;
  readonly onEnquire: () => void;
  readonly onBlock: () => void;
  readonly onMove: (hire: DiaryHire) => void;
  readonly onTidy: () => void;
}

/** What is at the cursor, in words, and what can be done with it. */
export function AtCursor(props: AtCursorProps) {
  const { row, bars, days, isFree } = props;
  const span =
    days[0] === days[1] ? dateText(days[0], "full") : t("diary.span", { from: days[0], to: days[1] });
  return (
    <section className="card diary-at" aria-label={t("diary.atCursor")}>
      <p className="diary-at-head">
        <strong>{row.vehicle.name}</strong> <span className="quiet nowrap">{row.vehicle.registration}</span>{" "}
        <span className="num">{span}</span>
      </p>
      {bars.map(({ key, hire, block }) =>
        hire !== null ? (
          <HireLine key={key} hire={hire} onMove={() => props.onMove(hire)} />
        ) : block !== null ? (
          <BlockLine key={key} block={block} />
        ) : null,
      )}
      {!isFree && bars.some(({ hire }) => hire !== null && canMove(hire)) && (
        <p className="quiet">{t("diary.blockTaken", { name: row.vehicle.name })}</p>
      )}
      <div className="row diary-at-acts">
        {isFree && (
          <>
            <Button look="main" onPress={props.onEnquire}>
              {t("diary.enquire")}
            </Button>
            <Button onPress={props.onBlock}>{t("diary.block")}</Button>
          </>
        )}
        <Button look="quiet" onPress={props.onTidy}>
          {t("diary.tidy")}
        </Button>
      </div>
      <p className="quiet diary-keys">{t("diary.keys")}</p>
    </section>
  );
}

function HireLine({ hire, onMove }: { readonly hire: DiaryHire; readonly onMove: () => void }) {
  const pin = useMutation({
    mutationFn: (pinned: boolean) =>
      take(client.PUT("/api/hires/{id}/pin", { params: { path: { id: hire.id } }, body: { pinned } })),
    onSuccess: diaryChanged,
  });
  return (
    <div className="row diary-at-line">
      <LinkButton href={placeOfHire(hire.id)} small>
        {t("diary.openHire", { customer: hire.customer, reference: hire.reference })}
      </LinkButton>
      <PlainPill>{t(`stage.${hire.stage}`)}</PlainPill>
      <span className="num">
        {t("diary.fromTo", { from: dateText(hire.from, "dayTime"), to: dateText(hire.to, "dayTime") })}
      </span>
      {canMove(hire) && <Button onPress={onMove}>{t("diary.move")}</Button>}
      {hire.stage === "booked" && (
        <Button look="quiet" isPending={pin.isPending} onPress={() => pin.mutate(!hire.pinned)}>
          {t(hire.pinned ? "diary.unpin" : "diary.pin")}
        </Button>
      )}
      <FailureNote failure={pin.error} />
    </div>
  );
}

function BlockLine({ block }: { readonly block: DiaryBlock }) {
  const remove = useMutation({
    mutationFn: () => take(client.DELETE("/api/blocks/{id}", { params: { path: { id: block.id } } })),
    onSettled: diaryChanged,
  });
  return (
    <div className="row diary-at-line">
      <strong>{t("diary.blockKind", { kind: block.kind })}</strong>
      {block.note !== "" && <span>{block.note}</span>}
      <span className="num">
        {t("diary.fromTo", { from: dateText(block.from, "dayTime"), to: dateText(block.to, "dayTime") })}
      </span>
      <Button isPending={remove.isPending} onPress={() => remove.mutate()}>
        {t("diary.unblock")}
      </Button>
      <FailureNote failure={remove.error} />
    </div>
  );
}
