import geographiclib from 'geographiclib-geodesic';

/** Shortest way over the WGS84 ellipsoid, in metres. */
export const geodesicM = (fromLatitudeDeg: number, fromLongitudeDeg: number, toLatitudeDeg: number, toLongitudeDeg: number): number =>
  geographiclib.Geodesic.WGS84.Inverse(fromLatitudeDeg, fromLongitudeDeg, toLatitudeDeg, toLongitudeDeg).s12 ?? Number.NaN;
