// Importing this module registers <leadwort-session>.
import { define } from '../shared/define.ts';
import { LeadwortSession } from './session.ts';

define('leadwort-session', LeadwortSession);
