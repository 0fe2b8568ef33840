export * from './quantity.js';
export { unitOfName } from './suffixes.js';
export { ucumOfSuffix, ucumOfUnit } from './ucum.js';
export * from './factors.js';
export {
  exampleOf,
  parseFilmThickness,
  parseLength,
  parseQuantity,
  parseTemperature,
  parseTemperatureDifference,
  type ParsedQuantity,
  type ParseFaultCode,
  type ParseWarning,
} from './parse.js';
export {
  ENGLISH,
  formatEighths,
  formatFeetInches,
  formatLength,
  formatMillimetres,
  formatMoney,
  formatNumber,
  formatForce,
  formatQuantity,
  formatRange,
  formatTemperature,
  formatTemperatureRange,
  type QuantityKind,
  type Separators,
  type UnitSystem,
} from './format.js';
export { currencyDigits } from './currency.js';
export { roundChain, type ChainStep, type RoundedChain } from './round-chain.js';
