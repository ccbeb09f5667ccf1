/// <reference types="vite/client" />
// The desk: reports are opened here, or named by a link to this page: `?find=example`, or an address on its own host.
import '../../elements/session/define.ts';
import '../../elements/review/define.ts';
import example from './example-find.json?url';

const named = new URLSearchParams(location.search).get('find');
const at = named && new URL(named === 'example' ? example : named, location.href);
if (at && at.origin === location.origin) document.querySelector('leadwort-review')?.setAttribute('find', at.href);
