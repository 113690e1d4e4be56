declare module "psychrolib" {
  interface Psychrolib {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetTDewPointFromRelHum(airC: number, humidity: number): number;
  }
  const psychrolib: Psychrolib;
  export default psychrolib;
}
