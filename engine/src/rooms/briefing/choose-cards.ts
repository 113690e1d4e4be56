import { applies, type BriefingCard, type BriefingSituation } from "../../systems/contract.ts";
import { parseSpec, systemModule } from "../../systems/registry.ts";
import type { VehicleDescription } from "../../vehicle/description.ts";

export interface ChosenCard {
  readonly card: BriefingCard;
  readonly systemId: string;
  readonly systemKind: string;
}

/**
 * The cards of this vehicle for this trip, season, country and hirer, in the order of the fitted systems.
 * A card that mentions a thing which is not fitted is left out; one that two systems of a kind ask for stands once.
 * @throws BadInput where a fitted system is not valid
 */
export function chooseCards(
  vehicle: Pick<VehicleDescription, "systems" | "dimensions">,
  situation: BriefingSituation,
): readonly ChosenCard[] {
  const fitted = new Set(vehicle.systems.map(({ kind }) => kind));
  const facts = vehicleFacts(vehicle.dimensions);
  const chosen = new Map<string, ChosenCard>();
  vehicle.systems.forEach(({ id, kind, spec }, index) => {
    const parsed = parseSpec(kind, spec, `systems.${index}`);
    const { briefing } = systemModule(kind);
    if (!applies(briefing)) return;
    for (const card of briefing.cards(parsed, situation)) {
      if (chosen.has(card.id) || !card.mentions.every((mention) => fitted.has(mention))) continue;
      chosen.set(card.id, {
        card: { ...card, facts: { ...facts, ...card.facts } },
        systemId: id,
        systemKind: kind,
      });
    }
  });
  return [...chosen.values()];
}

/**
 * What every card may say of the whole vehicle. Height, length and width (without mirrors) are rounded up, to the centimetre and to the
 * inch (25.4 mm by definition), since the next bridge does not round down.
 */
export function vehicleFacts({ heightM, lengthM, widthM }: VehicleDescription["dimensions"]) {
  const inches = Math.ceil(roundedTo9(heightM / 0.0254));
  return {
    vehicleHeightM: Math.ceil(roundedTo9(heightM * 100)) / 100,
    vehicleHeightFeet: Math.floor(inches / 12),
    vehicleHeightInches: inches % 12,
    vehicleLengthM: Math.ceil(roundedTo9(lengthM * 10)) / 10,
    vehicleWidthM: Math.ceil(roundedTo9(widthM * 100)) / 100,
  };
}

/** Takes off what binary fractions add, so that 2.89 m stays 2.89 m. */
function roundedTo9(value: number): number {
  return Math.round(value * 1e9) / 1e9;
}
