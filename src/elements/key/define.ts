// Importing this module registers <leadwort-key> and the parts of its first screen; the rest comes when it is needed.
import { define } from '../shared/define.ts';
import '../couplet/define.ts';
import { LeadwortKey } from './key.ts';

define('leadwort-key', LeadwortKey);
