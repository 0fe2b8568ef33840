export { allSources, sourcesOf, type SourceId } from './sources/bibliography.js';
export { cited } from './sources/cite.js';
export { outsideValidity, type RoomModel, type RoomOutput } from './rooms/room.js';
export { computeThermal, THERMAL_MODEL, type ThermalInput } from './rooms/thermal.js';
export { computeGeometry, GEOMETRY_MODEL } from './rooms/geometry.js';
export { CLIMATE_MODEL, computeClimate, STATION_FIT } from './rooms/climate.js';
export { computeCutting, CUTTING_MODEL } from './rooms/cutting.js';
export { packFirstFit, type Packing, type Piece, type Stick } from './rooms/cutting-pack.js';
