/// <reference types="vite/client" />
// The crew's page. The three example files are invented people's, who practised until the middle of May.
import '../../elements/session/define.ts';
import '../../elements/crew/define.ts';
import '../worker/register.ts';
import dale from './dale.json?url';
import maribel from './maribel.json?url';
import ruth from './ruth.json?url';

const crew = document.querySelector('leadwort-crew');
const files = [maribel, dale, ruth].map((file) => new URL(file, location.href).href);
crew?.setAttribute('files', files.join(' '));
crew?.setAttribute('day', '2026-05-15');
