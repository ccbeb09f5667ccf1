// Everything in one file, for a page that wants one: whatever else fetches late lies in it. Importing it registers every
// element, and does nothing where there is no DOM.
if (typeof customElements !== 'undefined') void import('./define.ts');

export {};
