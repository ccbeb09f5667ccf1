// For the page around: keeps every iframe with leadwort-frame.html as high as what it shows. Without this script the
// height that the page gave stays, and the frame scrolls.
import { readMessage, writeMessage } from './message.ts';

const NAME = /\/leadwort-frame(\.html)?$/;

/** The frames of the page that show a key, with the origin they are shown from. */
const frames = () =>
  [...document.querySelectorAll('iframe')].flatMap((frame) => {
    if (!URL.canParse(frame.src)) return [];
    const { pathname, origin } = new URL(frame.src);
    return NAME.test(pathname) ? [{ frame, origin }] : [];
  });

/** The height that the page gave: what is below the frame never rises above it. */
const given = new WeakMap<HTMLIFrameElement, number>();

addEventListener('message', ({ source, origin, data }) => {
  const from = frames().find((one) => one.frame.contentWindow === source && one.origin === origin)?.frame;
  const message = from && readMessage(data);
  if (!message) return;
  if (message.say === 'here') from.contentWindow?.postMessage(writeMessage({ say: 'measure' }), origin);
  if (message.say !== 'height') return;
  const least = given.get(from) ?? from.clientHeight;
  given.set(from, least);
  // By the object model: a policy against inline styles has nothing to say about it.
  from.style.height = `${Math.max(least, message.height)}px`;
});

// Frames that were ready first. To anybody: a frame may be on its way to its page, and a wish for a height is no secret.
for (const { frame } of frames()) frame.contentWindow?.postMessage(writeMessage({ say: 'measure' }), '*');
