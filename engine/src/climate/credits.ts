/** Lines for NOTICE: whose values the climate normals are. */
export const CLIMATE_CREDITS: readonly string[] = [
  "Contains public sector information licensed under the Open Government Licence v3.0: Met Office historic station data 1991-2020.",
  "Contains Met Éireann monthly data 1991-2020, CC BY 4.0; changed: averaged.",
  "Contains Deutscher Wetterdienst (Climate Data Center) monthly means 1991-2020, CC BY 4.0; changed: averaged.",
  "Contains EUMETSAT CM SAF surface radiation 1991-2020, CC BY 4.0; changed: averaged, divided by extraterrestrial irradiation.",
  "Contains information of AEMET, daily data 1991-2020; changed: averaged.",
  "Rows marked from memory are unchecked facts without a source.",
];
