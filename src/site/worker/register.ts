/// <reference types="vite/client" />
// Only a built demonstration has a worker. Where a browser has none, or may keep nothing, the page works as ever.
const here = import.meta.url;
if (import.meta.env.PROD && 'serviceWorker' in navigator)
  addEventListener('load', () => {
    navigator.serviceWorker.register(new URL('../worker.js', here)).catch(() => undefined);
  });
