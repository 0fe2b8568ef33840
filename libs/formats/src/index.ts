export {
  climateInputsOf,
  parseStations,
  STATION_CREDIT,
  STATION_KIND,
  STATION_PERIOD,
  type LineFault,
  type StationRecord,
  type StationTable,
} from './stations.js';
