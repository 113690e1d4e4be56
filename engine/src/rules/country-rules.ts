import at from "./data/countries/at.json" with { type: "json" };
import be from "./data/countries/be.json" with { type: "json" };
import ch from "./data/countries/ch.json" with { type: "json" };
import de from "./data/countries/de.json" with { type: "json" };
import dk from "./data/countries/dk.json" with { type: "json" };
import es from "./data/countries/es.json" with { type: "json" };
import fr from "./data/countries/fr.json" with { type: "json" };
import gb from "./data/countries/gb.json" with { type: "json" };
import ie from "./data/countries/ie.json" with { type: "json" };
import it from "./data/countries/it.json" with { type: "json" };
import lu from "./data/countries/lu.json" with { type: "json" };
import nl from "./data/countries/nl.json" with { type: "json" };
import no from "./data/countries/no.json" with { type: "json" };
import pt from "./data/countries/pt.json" with { type: "json" };
import se from "./data/countries/se.json" with { type: "json" };
import crossing from "./data/crossing.json" with { type: "json" };
import type { Rule } from "./rule.ts";

const BY_COUNTRY = { at, be, ch, de, dk, es, fr, gb, ie, it, lu, nl, no, pt, se };

/** Countries whose rules of the road are in the data, ISO 3166-1. */
export const COUNTRIES_KNOWN: readonly string[] = Object.keys(BY_COUNTRY).map((code) => code.toUpperCase());

/** Kit, limits, zones, tolls, nights outside sites, LPG fillers and alcohol by country; crossings and papers. */
export const COUNTRY_RULES = [...Object.values(BY_COUNTRY).flat(), ...crossing] as readonly Rule[];
