// Importing this module registers <leadwort-key> and the parts of its first screen; the rest comes when it is needed.
import { define } from '../shared/define.ts';
import '../question/define.ts';
import '../standing/define.ts';
import '../trail/define.ts';
import { LeadwortKey } from './key.ts';

define('leadwort-key', LeadwortKey);
