// Importing this module registers <leadwort-stream> and the session that it stands in.
import { define } from '../shared/define.ts';
import { LeadwortStream } from './stream.ts';

define('leadwort-stream', LeadwortStream);
