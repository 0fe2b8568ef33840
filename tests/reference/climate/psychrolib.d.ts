/** The few functions of the library that the cross-checks call. It has one global unit switch. */
declare module 'psychrolib' {
  interface Psychrolib {
    SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(dryC: number): number;
    GetTDewPointFromVapPres(dryC: number, vapourPa: number): number;
    GetTWetBulbFromHumRatio(dryC: number, ratio: number, pressurePa: number): number;
    GetHumRatioFromTWetBulb(dryC: number, wetC: number, pressurePa: number): number;
    GetMoistAirEnthalpy(dryC: number, ratio: number): number;
    GetMoistAirDensity(dryC: number, ratio: number, pressurePa: number): number;
    GetStandardAtmPressure(elevationM: number): number;
  }
  const psychrolib: Psychrolib;
  export = psychrolib;
}
