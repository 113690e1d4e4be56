import type { Briefing, BriefingCard, CardInOrder } from "@setfair/engine";
import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, FigureTap, FindingsList, Loading, TickField } from "../../../parts/index.ts";
import { has, say, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { useDraft } from "../../use-draft.ts";
import { SignDialog } from "../handover/sign-dialog.tsx";
import type { PartProps } from "../use-hire.ts";

type Piece = "title" | "do" | "caution" | "ask" | "answer";

/** A text of a card, with its facts; null where the card has none. */
function cardText(card: BriefingCard, piece: Piece): string | null {
  const id = `card.${card.id}.${piece}`;
  return has(id) ? say(id, card.facts) : null;
}

/** What to show and let do, in order; signed item by item. */
export default function BriefingPart({ page }: PartProps) {
  const { id } = page.hire;
  const briefing = useQuery({
    queryKey: ["briefing", id],
    queryFn: () => take(client.GET("/api/hires/{id}/briefing", { params: { path: { id } } })),
    enabled: page.vehicle !== null,
  });
  if (page.vehicle === null) return <p className="card">{t("briefing.needsVehicle")}</p>;
  if (briefing.isPending) return <Loading />;
  if (briefing.isError)
    return <FailureNote failure={briefing.error} onAgain={() => void briefing.refetch()} />;
  // the server sends the engine's own answer
  const result = briefing.data.result as Briefing;
  return (
    <>
      {briefing.data.findings.length > 0 && (
        <section className="card">
          <FindingsList findings={briefing.data.findings} />
        </section>
      )}
      <Demonstration page={page} briefing={result} signed={briefing.data.signed} />
      <section className="card" aria-labelledby="reading-title">
        <h2 id="reading-title">{t("briefing.reading", { n: result.reading.length })}</h2>
        <ul>
          {result.reading.map(({ card, why, risk }) => (
            <li key={card.id} className="card-step">
              <h3>{cardText(card, "title") ?? card.id}</h3>
              <p>{cardText(card, "do")}</p>
              <p className="quiet">
                {t(`briefing.why.${why}`)} · {t("briefing.risk")}{" "}
                <FigureTap figure={risk} label={t("briefing.risk")} />
              </p>
            </li>
          ))}
        </ul>
      </section>
    </>
  );
}

function Demonstration({
  page,
  briefing,
  signed,
}: PartProps & { readonly briefing: Briefing; readonly signed: readonly string[] }) {
  const { id } = page.hire;
  const draft = useDraft<readonly string[]>(`shown.${id}`, []);
  const [isSigning, setSigning] = useState(false);
  const open = briefing.demonstrate.filter(({ card }) => !signed.includes(card.id));
  const ticked = open.filter(({ card }) => draft.value.includes(card.id));
  const tick = (cardId: string, isOn: boolean) =>
    draft.set(isOn ? [...draft.value, cardId] : draft.value.filter((each) => each !== cardId));
  return (
    <section className="card" aria-labelledby="show-title">
      <div className="row spread">
        <h2 id="show-title">
          {t("briefing.show", { n: briefing.demonstrate.length })}{" "}
          <FigureTap figure={briefing.minutes} label={t("briefing.length")} />
        </h2>
        <span className="quiet">
          {t("briefing.done", { n: signed.length + ticked.length, of: briefing.demonstrate.length })}
        </span>
      </div>
      <ol>
        {briefing.demonstrate.map((entry) => (
          <CardStep
            key={entry.card.id}
            entry={entry}
            isSigned={signed.includes(entry.card.id)}
            isTicked={draft.value.includes(entry.card.id)}
            onTick={(isOn) => tick(entry.card.id, isOn)}
          />
        ))}
      </ol>
      {open.length > 0 && (
        <div className="sheet-foot">
          <Button look="main" onPress={() => setSigning(true)} isDisabled={ticked.length === 0}>
            {t("briefing.sign", { n: ticked.length })}
          </Button>
          <span className="quiet">{t("briefing.signNote")}</span>
        </div>
      )}
      {isSigning && (
        <SignDialog
          title={t("briefing.signTitle")}
          signer={page.customer.name}
          signing={{
            hireId: id,
            vehicleId: page.hire.vehicle?.id ?? null,
            purpose: "briefing",
            shown: [
              t("briefing.statement"),
              ...ticked.map(({ card }) => `✓ ${cardText(card, "title") ?? card.id}`),
            ].join("\n"),
            items: ticked.map(({ card }) => ({
              kind: "briefed",
              content: { about: card.id, understood: true, handsOn: card.handsOn },
            })),
          }}
          onClose={() => setSigning(false)}
        />
      )}
    </section>
  );
}

interface CardStepProps {
  readonly entry: CardInOrder;
  readonly isSigned: boolean;
  readonly isTicked: boolean;
  readonly onTick: (isOn: boolean) => void;
}

function CardStep({ entry, isSigned, isTicked, onTick }: CardStepProps) {
  const { card } = entry;
  const caution = cardText(card, "caution");
  const ask = cardText(card, "ask");
  return (
    <li className="card-step">
      <div className="row spread">
        <h3>
          {cardText(card, "title") ?? card.id}{" "}
          <span className="quiet">
            {t(`moment.${card.moment}`)} · {t(`briefing.why.${entry.why}`)}
            {card.handsOn && ` · ${t("briefing.handsOn")}`}
          </span>
        </h3>
        <span className="quiet nowrap">
          {t("briefing.risk")} <FigureTap figure={entry.risk} label={t("briefing.risk")} />
        </span>
      </div>
      <p>{cardText(card, "do")}</p>
      {caution !== null && <p className="caution">{caution}</p>}
      {ask !== null && (
        <details>
          <summary>{ask}</summary>
          <p>{cardText(card, "answer")}</p>
        </details>
      )}
      {isSigned ? (
        <p className="quiet">{t("briefing.signed")}</p>
      ) : (
        <TickField value={isTicked} onChange={onTick}>
          {t(card.handsOn ? "briefing.didIt" : "briefing.understood")}
        </TickField>
      )}
    </li>
  );
}
