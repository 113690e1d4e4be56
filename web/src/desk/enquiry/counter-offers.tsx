import type { Figure } from "@setfair/engine";
import { Link } from "wouter";
import type { Schemas } from "../../api/client.ts";
import { Button, FigureTap } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { placeOfHire } from "../where.ts";

type Offer = NonNullable<Schemas["Availability"]["offers"]>[number];
type Step = Offer["steps"][number];

function stepText(step: Step): string {
  switch (step.kind) {
    case "shift":
      return t("depot.offer.shift", {
        hours: Math.abs(step.hours),
        when: step.hours < 0 ? "earlier" : "later",
        from: dateText(step.from, "dayTime"),
        to: dateText(step.to, "dayTime"),
      });
    case "otherCrossing":
      return t("depot.offer.otherCrossing");
    case "moveHire":
      return t("depot.offer.moveHire", step);
    case "decideOnDogs":
      return t("depot.offer.decideOnDogs", { dogs: step.dogs });
    case "secondVehicle":
      return t("depot.offer.secondVehicle", { people: step.people, vehicleName: step.vehicleName });
  }
}

export interface CounterOffersProps {
  readonly offers: readonly Offer[];
  readonly onShift: (from: string, to: string, vehicleId: string) => void;
}

/** No vehicle can take it as asked: what could be done all the same, the least trouble first. */
export function CounterOffers({ offers, onShift }: CounterOffersProps) {
  if (offers.length === 0) return null;
  return (
    <section aria-labelledby="offers-title" className="stack-tight">
      <h3 id="offers-title">{t("depot.offers")}</h3>
      <ol>
        {offers.map((offer) => (
          <OfferLine key={JSON.stringify(offer.steps)} offer={offer} onShift={onShift} />
        ))}
      </ol>
    </section>
  );
}

function OfferLine({ offer, onShift }: { readonly offer: Offer } & Pick<CounterOffersProps, "onShift">) {
  const { vehicleId, vehicleName, steps, trouble } = offer;
  const shift = steps.find((step) => step.kind === "shift");
  const move = steps.find((step) => step.kind === "moveHire");
  return (
    <li className="answer stack-tight">
      <div className="row spread">
        <strong>{vehicleName}</strong>
        <span className="quiet">
          {t("depot.offer.trouble")} <FigureTap figure={trouble as Figure} label={t("depot.offer.trouble")} />
        </span>
      </div>
      <ul>
        {steps.map((step) => (
          <li key={step.kind}>{stepText(step)}</li>
        ))}
      </ul>
      <div className="row">
        {shift !== undefined && (
          <Button onPress={() => onShift(shift.from, shift.to, vehicleId)}>
            {t("desk.change.take", { day: dateText(shift.from, "day") })}
          </Button>
        )}
        {move !== undefined && (
          <Link href={`${placeOfHire(move.hireId)}/change`} className="link-row">
            {t("depot.offer.openHire", { reference: move.reference })}
          </Link>
        )}
      </div>
    </li>
  );
}
