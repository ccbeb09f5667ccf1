// A link to this page may name plants to be set side by side: `?compare=arundo-donax+arundinaria-gigantea`.
const plants = new URLSearchParams(location.search).get('compare');
if (plants) document.querySelector('leadwort-key')?.setAttribute('compare', plants);
