import { ringOf, rounded } from '../../platform/http/outline-field.js';
import type { SiteOnMap } from '../sites/sites.read.js';

export const GEOJSON_TYPE = 'application/geo+json';

/** The outline where somebody has drawn one, else the point that plans are made for. Longitude first, no "crs" (RFC 7946). */
const geometryOf = ({ longitudeDeg, latitudeDeg, outline }: SiteOnMap) =>
  outline ? { type: 'Polygon', coordinates: [ringOf(outline)] } : { type: 'Point', coordinates: [rounded(longitudeDeg), rounded(latitudeDeg)] };

export const featuresOf = (sites: readonly SiteOnMap[]) => ({
  type: 'FeatureCollection',
  features: sites.map((site) => ({
    type: 'Feature',
    id: site.id,
    geometry: geometryOf(site),
    properties: {
      name: site.name,
      latitudeDeg: rounded(site.latitudeDeg),
      longitudeDeg: rounded(site.longitudeDeg),
      elevationM: site.elevationM,
      coordinatesExact: site.coordinatesExact,
    },
  })),
});
