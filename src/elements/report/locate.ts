// Where the device says it is; asked only when a person taps.
import type { PlaceTrouble } from '../../words/report/index.ts';

export type Located =
  | { readonly lat: number; readonly lon: number; readonly uncertainty: number }
  | { readonly trouble: PlaceTrouble };

export function locate(): Promise<Located> {
  const places = window.isSecureContext ? navigator.geolocation : undefined;
  if (!places) return Promise.resolve({ trouble: 'insecure' });
  return new Promise((done) =>
    places.getCurrentPosition(
      ({ coords: { latitude, longitude, accuracy } }) => done({ lat: latitude, lon: longitude, uncertainty: accuracy }),
      ({ code }) => done({ trouble: code === 1 ? 'denied' : code === 3 ? 'timeout' : 'unavailable' }),
      { enableHighAccuracy: true, timeout: 30_000, maximumAge: 0 },
    ),
  );
}
