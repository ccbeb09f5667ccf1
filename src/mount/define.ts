// Importing this module looks out for plain elements marked `data-leadwort`, for page editors that strip unknown tags.
// What fills them is fetched when there is one.
if (typeof document !== 'undefined') {
  const look = () => {
    if (!document.querySelector('[data-leadwort]')) return;
    // Without a connection it is tried again when the page next changes.
    import('./mount.ts').then(({ mount }) => {
      watch.disconnect();
      mount();
    }, String);
  };
  const watch = new MutationObserver(look);
  watch.observe(document, { childList: true, subtree: true });
  look();
}

export {};
