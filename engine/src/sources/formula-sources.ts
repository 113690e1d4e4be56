import type { Source } from "./source.ts";

/** Sources of the formula book. */
export const FORMULA_SOURCES = {
  "fao-56": {
    title: "Crop evapotranspiration (Allen, Pereira, Raes, Smith)",
    number: "FAO Irrigation and Drainage Paper 56",
    year: 1998,
    address: "https://www.fao.org/4/x0490e/x0490e00.htm",
    how: "read",
  },
  "meeus-1998": {
    title: "Astronomical Algorithms (J. Meeus), chapters 22, 25, 28",
    edition: "2nd",
    year: 1998,
    how: "from memory",
  },
  "duffie-beckman": {
    title: "Solar Engineering of Thermal Processes (Duffie, Beckman), equation of Cooper",
    edition: "4th",
    year: 2013,
    how: "from memory",
  },
  kalogirou: {
    title: "Solar Energy Engineering (S. A. Kalogirou), chapter 2",
    address: "https://www.briangwilliams.us/solar-energy/example-aiw.html",
    how: "read",
  },
  "kasten-czeplak-1980": {
    title:
      "Solar and terrestrial radiation dependent on the amount and type of cloud (F. Kasten, G. Czeplak)",
    number: "Solar Energy 24:177",
    year: 1980,
    how: "from memory",
  },
  "haurwitz-1945": {
    title:
      "Insolation in relation to cloudiness and cloud density (B. Haurwitz), as coded in the tests of pvlib",
    number: "J. Meteorology 2:154",
    year: 1945,
    how: "read",
  },
  "collares-pereira-rabl-1979": {
    title: "The average distribution of solar radiation (Collares-Pereira, Rabl)",
    number: "Solar Energy 22:155",
    year: 1979,
    how: "read",
  },
  "liu-jordan-1960": {
    title:
      "The interrelationship and characteristic distribution of direct, diffuse and total solar radiation (Liu, Jordan)",
    number: "Solar Energy 4:1",
    year: 1960,
    how: "read",
  },
  "ross-1976": {
    title: "Ross cell temperature model from NOCT, as in the tests of pvlib",
    year: 1976,
    how: "read",
  },
  "pvwatts-5": {
    title: "PVWatts Version 5 Manual (A. Dobos)",
    number: "NREL/TP-6A20-62641",
    year: 2014,
    address: "https://www.nrel.gov/docs/fy14osti/62641.pdf",
    how: "read",
  },
  "wmo-8": {
    title: "Guide to Instruments and Methods of Observation, Magnus form over water",
    number: "WMO-No. 8, annex 4.B",
    how: "from memory",
  },
  "campbell-norman-1998": {
    title: "An Introduction to Environmental Biophysics (Campbell, Norman), eq. 2.2 and 2.3",
    edition: "2nd",
    year: 1998,
    how: "read",
  },
  "who-air-2000": { title: "Air Quality Guidelines for Europe", edition: "2nd", year: 2000, how: "read" },
  "en-50291": {
    title:
      "Electrical apparatus for the detection of carbon monoxide in domestic premises: alarm times, as told by two public pages",
    number: "EN 50291",
    how: "read",
  },
  "molar-volume": { title: "Molar volume of a gas at 25 °C and 1 atm, 24.45 L/mol", how: "read" },
  "iso-6946": {
    title: "Building components: thermal resistance and thermal transmittance",
    number: "ISO 6946",
    year: 2017,
    how: "read",
  },
  "ventilation-heat": {
    title:
      "Sustainable Energy – without the hot air (D. MacKay), appendix E: heat capacity of air 1.2 kJ/m³K",
    year: 2009,
    address: "https://www.withouthotair.com/cE/page_289.shtml",
    how: "read",
  },
  "heat-capacity-water": { title: "Specific heat capacity of water, 4.186 kJ/kgK", how: "from memory" },
  "tanaka-2001": {
    title: "Recommended table for the density of water (Tanaka and others)",
    number: "Metrologia 38:301",
    year: 2001,
    how: "from memory",
  },
  hydrostatics: { title: "Hydrostatic pressure, density × g × head, g = 9.81 m/s²", how: "read" },
  peukert: {
    title: "Peukert's law in the form for a capacity given at an hour rate",
    number: "after Peukert, Elektrotechnische Zeitschrift 20",
    year: 1897,
    address: "http://www.smartgauge.co.uk/peukert_depth.html",
    how: "read",
  },
  "road-sign-manual": {
    title: "Road sign operating manual V3.0, p. 42: rest voltage of a flooded battery at 25 °C",
    year: 2018,
    how: "read",
  },
  "lead-acid-cold": {
    title: "Battery questions and answers: lead-acid capacity against temperature (discharge over 60 min)",
    how: "read",
  },
  "iec-60228": {
    title:
      "Conductors of insulated cables, class 5 maximum resistance at 20 °C (two copies; 10 mm² and over from memory)",
    number: "IEC 60228",
    how: "read",
  },
  "iec-60228-temperature": {
    title: "Temperature of copper conductors, (234.5 + t)/254.5",
    number: "IEC 60228 annex",
    address: "https://www.cabledatasheet.com",
    how: "read",
  },
  "bs-7671-4f3": {
    title:
      "Requirements for electrical installations, tables 4F3A and 4F3B, 60 °C flexible cords (two copies)",
    number: "BS 7671",
    how: "read",
  },
  "bs-7671-721": {
    title: "Requirements for electrical installations, table 721: leads of caravans, as copied",
    number: "BS 7671",
    how: "read",
  },
  "bs-7671-4ab": {
    title: "Requirements for electrical installations, appendix 4 table 4Ab: voltage drop",
    number: "BS 7671",
    how: "read",
  },
  "en-60898": {
    title:
      "Circuit-breakers for household installations: 1.13 and 1.45 times for an hour, 2.55 times for a minute",
    number: "EN 60898-1",
    how: "from memory",
  },
  "astm-b258": {
    title: "Standard nominal diameters of solid round wires (AWG)",
    number: "ASTM B258",
    how: "read",
  },
  "electric-power": { title: "Power is volts times amperes at unit power factor", how: "from memory" },
  "lpg-equations": {
    title:
      "Propane: Lemmon, McLinden, Wagner, J. Chem. Eng. Data 54:3141 (2009); n-butane: Bücker, Wagner, J. Phys. Chem. Ref. Data 35:929 (2006); phase equilibrium solved and fitted here from −50 to 65 °C",
    how: "read",
  },
  "nist-antoine": {
    title: "Antoine parameters in the form of the NIST Chemistry WebBook, read in two public code files",
    how: "read",
  },
  "moran-shapiro": {
    title: "Fundamentals of Engineering Thermodynamics (Moran, Shapiro), table A-25",
    how: "read",
  },
  "gas-limits": {
    title: "Flammable limits of propane and butane in air, several suppliers' tables",
    how: "read",
  },
  "un-p200": { title: "UN Model Regulations, packing instruction P200 (3)(c): filling ratio", how: "read" },
  "cfr-1910-110": {
    title: "Storage and handling of liquefied petroleum gases, worked filling example",
    number: "29 CFR 1910.110(b)(19)",
    how: "read",
  },
  "heat-balance": {
    title: "Steady heat balance of a boiling liquid: heat through the wetted wall over latent heat",
    how: "from memory",
  },
  "eu-1230-2012": {
    title:
      "Commission Regulation on masses and dimensions, annex I part A 2.6.4.1.2 (pay-mass of motor caravans)",
    number: "(EU) No 1230/2012",
    year: 2012,
    how: "read",
  },
  moments: { title: "Moments about the front axle", how: "read" },
  "seat-mass-75": {
    title: "Conventional load of 75 kg per seat other than the driver's, a maker's handbook p. 32",
    year: 2015,
    how: "read",
  },
  "iso-4000-1": {
    title:
      "Passenger car tyres and rims: load index (list; two public copies checked at six indices, the rest from memory) and speed symbol",
    number: "ISO 4000-1",
    how: "read",
  },
  etrto: {
    title: "Inflation pressure for a load, exponent 1.25 on load, as quoted by an owners' club",
    how: "read",
  },
  "volume-length": {
    title: "Exact definitions: imperial gallon 4.54609 L, US gallon 3.785411784 L, mile 1.609344 km",
    how: "read",
  },
  "iso-22241": {
    title: "NOx reduction agent AUS 32 (DEF): quality requirements, as copied",
    number: "ISO 22241-1",
    year: 2019,
    how: "read",
  },
  "fuel-data-sheet": { title: "The Energy and Fuel Data Sheet (I. Staffell)", year: 2011, how: "read" },
  dukes: {
    title: "Digest of United Kingdom Energy Statistics, table A.1 (year not shown on the copy)",
    how: "read",
  },
  trigonometry: { title: "Trigonometry", how: "from memory" },
  "vin-check": {
    title: "Vehicle identification number: check digit",
    number: "49 CFR 565.15; ISO 3779 characters",
    how: "read",
  },
  "iso-8601": {
    title: "Data elements and interchange formats: representation of dates and times, as copied",
    number: "ISO 8601",
    how: "read",
  },
  "clock-changes": {
    title: "Directive on summer-time arrangements (from memory); days as public notices print them",
    number: "2000/84/EC",
    year: 2000,
    how: "from memory",
  },
  "bayes-rules": {
    title: "Bayes Rules! (Johnson, Ott, Dogucu), chapter 5: normal-normal model",
    year: 2022,
    address: "https://r4ds.github.io/bookclub-bayes_rules/normal-model.html",
    how: "read",
  },
  "hyndman-fan-1996": {
    title: "Sample quantiles in statistical packages (Hyndman, Fan), type 7",
    number: "American Statistician 50:361",
    year: 1996,
    how: "read",
  },
  "bayes-theorem": { title: "Bayes' theorem over causes that exclude one another", how: "read" },
  "decision-troubleshooting": {
    title: "Decision-theoretic troubleshooting (Heckerman, Breese, Rommelse); order by probability over cost",
    number: "CACM 38(3):49",
    year: 1995,
    how: "read",
  },
} as const satisfies Record<string, Source>;
