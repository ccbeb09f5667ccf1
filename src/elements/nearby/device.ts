// Where the device is, asked once and only when a person asked for it.
import type { Spot } from '../../guidance/nearby/index.ts';
import type { DeviceFault } from '../../words/nearby/index.ts';

/** Longer than a cold start of a receiver under the sky usually takes (ours). */
const PATIENCE = 20_000;
/** A place found in the last minute is still where the person stands. */
const FRESH = 60_000;
const FAULTS: ReadonlyMap<number, DeviceFault> = new Map([
  [1, 'denied'],
  [2, 'unavailable'],
  [3, 'timeout'],
]);

/** The device's place, or why there is none. The browser asks for leave by itself. */
export function deviceSpot(): Promise<Spot | DeviceFault> {
  if (!isSecureContext) return Promise.resolve('insecure');
  const { geolocation } = navigator;
  if (!geolocation) return Promise.resolve('absent');
  return new Promise((done) => {
    geolocation.getCurrentPosition(
      ({ coords }) => {
        const { latitude: lat, longitude: lon, accuracy } = coords;
        const known = Number.isFinite(lat) && Number.isFinite(lon);
        done(known ? { lat, lon, uncertainty: accuracy > 0 ? accuracy : 1 } : 'unavailable');
      },
      ({ code }) => done(FAULTS.get(code) ?? 'unavailable'),
      { enableHighAccuracy: true, timeout: PATIENCE, maximumAge: FRESH },
    );
  });
}
