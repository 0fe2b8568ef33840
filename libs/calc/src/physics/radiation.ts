import { cited } from '../sources/cite.js';

/** Stefan-Boltzmann constant, W/(m2 K4). */
export const SIGMA = 5.6704e-8;
export const KELVIN = 273.15;

/** Clear-sky emissivity from the dew point (CLARK-ALLEN-1978): 0.787 + 0.764 ln(T_dp/273.15). Tdp 16.7 C: 0.832. */
export const clarkAllenEmissivity = (dewPointC: number): number => 0.787 + 0.764 * Math.log((dewPointC + KELVIN) / KELVIN);

/** The same in its original monthly form (BERDAHL-MARTIN-1984): 0.711 + 0.56 x + 0.73 x^2, x = Tdp/100. */
export const berdahlMartinEmissivity = (dewPointC: number): number => 0.711 + 0.56 * (dewPointC / 100) + 0.73 * (dewPointC / 100) ** 2;

/** The coefficients EnergyPlus prints under the same names: 0.758 + 0.521 x + 0.625 x^2. */
export const berdahlMartinEnergyPlusEmissivity = (dewPointC: number): number => 0.758 + 0.521 * (dewPointC / 100) + 0.625 * (dewPointC / 100) ** 2;

/** Brunt with EnergyPlus coefficients: 0.618 + 0.056 sqrt(p_w), p_w in hPa. */
export const bruntEmissivity = (vapourPressurePa: number): number => 0.618 + 0.056 * Math.sqrt(vapourPressurePa / 100);

/** Idso: 0.685 + 3.2e-5 p_w exp(1699/T), p_w in hPa. */
export const idsoEmissivity = (vapourPressurePa: number, airC: number): number => 0.685 + 3.2e-5 * (vapourPressurePa / 100) * Math.exp(1699 / (airC + KELVIN));

/** Swinbank 1963 (from memory): the sky's temperature from the air's alone, 0.0552 T^1.5, K. */
export const swinbankSkyK = (airK: number): number => 0.0552 * Math.pow(airK, 1.5);

/** Factor on clear-sky emissivity for N tenths of opaque cloud (WALTON-1983): 1 + 0.0224 N - 0.0035 N^2 + 0.00028 N^3. */
export const cloudFactor = (tenths: number): number => 1 + 0.0224 * tenths - 0.0035 * tenths ** 2 + 0.00028 * tenths ** 3;

/** Temperature of a black sky that sends the same heat: eps^0.25 T_air, degC. */
export const skyTemperatureC = (emissivity: number, airC: number): number => Math.pow(emissivity, 0.25) * (airC + KELVIN) - KELVIN;

/** Downward long-wave of the sky, W/m2. */
export const skyLongWaveWPerM2 = (emissivity: number, airC: number): number => emissivity * SIGMA * (airC + KELVIN) ** 4;

/**
 * Gives: the sky temperature between two clear-sky models and beyond them.
 * Model: the mean of CLARK-ALLEN-1978 and BERDAHL-MARTIN-1984, moved by `position` (-1 colder, +1 warmer) times half
 * their difference and 3 K. Assumptions: clear; dew point not above the air. Validity: dew point -40 to 30 C.
 */
export const clearSkyC = (airC: number, dewPointC: number, position: number): number => {
  const dew = Math.min(dewPointC, airC);
  const a = skyTemperatureC(clarkAllenEmissivity(dew), airC);
  const b = skyTemperatureC(berdahlMartinEmissivity(dew), airC);
  return Math.min(airC, (a + b) / 2 + position * (Math.abs(a - b) / 2 + SKY_DOUBT_K));
};
const SKY_DOUBT_K = cited(3, 'K', 'EP-ENG-REF', 'spread of annual mean sky temperature between programs of Standard 140 is 4 K', { min: 2, max: 5 });

/**
 * Gives: sky temperature under N tenths of opaque cloud, degC, between and beyond the two clear-sky models.
 * Model: the emissivity that clearSkyC stands for, times cloudFactor (WALTON-1983), never over 1. `position` -1 to 1 runs
 *   through the spread. Assumptions: low cloud about as warm as the air. Validity: dew point -40 to 30 C.
 * Worked line: 0 C, dew point -5 C, clear: -21.7 to -15.3 C, middle -18.7 C; overcast -8.3 C in the middle.
 */
export const skyC = (x: { airC: number; dewPointC: number; cloudTenths: number; position: number }): number => {
  const clear = (clearSkyC(x.airC, x.dewPointC, x.position) + KELVIN) / (x.airC + KELVIN);
  return skyTemperatureC(Math.min(1, clear ** 4 * cloudFactor(Math.min(10, Math.max(0, x.cloudTenths)))), x.airC);
};

/** Share of a tilted face's long-wave that goes to the cold sky: F^1.5, F = (1+cos tilt)/2 (WALTON-1983). 30 deg: 0.901. */
export const skyShare = (tiltDeg: number): number => Math.pow((1 + Math.cos((tiltDeg * Math.PI) / 180)) / 2, 1.5);

/** sigma (Ta^4 - Tb^4) = this times (Ta - Tb): exact at the temperatures given, degC in. */
export const longWaveSlope = (aC: number, bC: number): number => {
  const a = aC + KELVIN;
  const b = bC + KELVIN;
  return SIGMA * (a * a + b * b) * (a + b);
};

/**
 * Gives: share of what leaves one flat rectangle that reaches an equal one facing it.
 * Model: aligned parallel rectangles X = a/c, Y = b/c (Incropera, table 13.2). Validity: c > 0. Cube: 0.1998.
 */
export const facingRectanglesFrac = (a: number, b: number, c: number): number => {
  const x = a / c;
  const y = b / c;
  const x2 = 1 + x * x;
  const y2 = 1 + y * y;
  const logPart = 0.5 * Math.log((x2 * y2) / (1 + x * x + y * y));
  const atanPart = x * Math.sqrt(y2) * Math.atan(x / Math.sqrt(y2)) + y * Math.sqrt(x2) * Math.atan(y / Math.sqrt(x2)) - x * Math.atan(x) - y * Math.atan(y);
  return (2 / (Math.PI * x * y)) * (logPart + atanPart);
};

/**
 * Gives: what a clear sheet lets through at a slant, as a share of what it lets through straight on.
 * Model: Fresnel reflection at both faces with the bounces between them, (1-r)/(1+r), mean of the two polarisations
 * (DUFFIE-BECKMAN-5 eq. 5.1.1 to 5.2.4). Assumptions: one smooth sheet, refractive index 1.5, uptake not counted.
 * Validity: any angle; 0 when the sun is behind. Worked line: 60 degrees gives 0.92.
 */
export const slantTransmissionFrac = (cosIncidence: number): number => (cosIncidence <= 0 ? 0 : sheetFrac(Math.min(1, cosIncidence)) / sheetFrac(1));

const REFRACTIVE = cited(1.5, '1', 'DUFFIE-BECKMAN-5', 'table 5.1.1, polyethylene and glass 1.5 to 1.53', { min: 1.45, max: 1.6 });

const sheetFrac = (cos: number): number => {
  const cosIn = Math.sqrt(1 - (1 - cos * cos) / REFRACTIVE ** 2);
  const across = ((cos - REFRACTIVE * cosIn) / (cos + REFRACTIVE * cosIn)) ** 2;
  const along = ((REFRACTIVE * cos - cosIn) / (REFRACTIVE * cos + cosIn)) ** 2;
  return ((1 - across) / (1 + across) + (1 - along) / (1 + along)) / 2;
};
