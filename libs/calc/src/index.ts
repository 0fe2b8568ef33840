export { sourcesOf, type SourceId } from './sources/bibliography.js';
export { cited } from './sources/cite.js';
export { outsideValidity, type RoomModel, type RoomOutput } from './rooms/room.js';
