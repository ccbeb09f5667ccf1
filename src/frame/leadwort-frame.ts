// The ready page for an iframe: a key whose options are those of the page's own address, such as
// `leadwort-frame.html?src=../keys/creek.json&lang=es&title=...`. It tells the page around it how high it is, when that one asks.
import '../define.ts';
import { contactLinks } from './contact.ts';
import { readMessage, writeMessage } from './message.ts';

const key = document.querySelector('leadwort-key') as HTMLElement;
const { observedAttributes } = customElements.get('leadwort-key') as unknown as { observedAttributes: string[] };
const asked = new URLSearchParams(location.search);

// The colour scheme of the page around cannot be seen from here: without a word, the device's holds.
for (const [name, attribute] of [
  ['lang', 'lang'],
  ['dir', 'dir'],
  ['scheme', 'data-scheme'],
] as const) {
  const value = asked.get(name);
  if (value !== null) document.documentElement.setAttribute(attribute, value);
}
document.title = asked.get('title') ?? document.title;
// What the owner wrote into the page holds against its address, which anybody can write.
for (const name of observedAttributes) {
  const value = asked.get(name);
  if (value !== null && !key.hasAttribute(name)) key.setAttribute(name, value);
}
key.append(...contactLinks(key));
if (!key.getAttribute('src'))
  key.append('This page shows a plant identification key. Its address must say where that lies: ?src=...');

/** Who asked for the height: the page around this one, and where it lies. */
let around: string | undefined;

const tell = () => {
  const height = Math.ceil(document.body.getBoundingClientRect().height);
  if (around !== undefined && height > 0) parent.postMessage(writeMessage({ say: 'height', height }), around);
};

if (parent !== window) {
  addEventListener('message', ({ source, origin, data }) => {
    if (source !== parent || readMessage(data)?.say !== 'measure') return;
    // A page without an origin of its own, such as a file, is called "null", and can only be reached by any name.
    around = origin === 'null' ? '*' : origin;
    tell();
  });
  new ResizeObserver(tell).observe(document.body);
  // To anybody: it says nothing of the person, and who is around is not known yet.
  parent.postMessage(writeMessage({ say: 'here' }), '*');
}
