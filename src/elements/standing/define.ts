// Registers <leadwort-standing>.
import { define } from '../shared/define.ts';
import { LeadwortStanding } from './standing.ts';

define('leadwort-standing', LeadwortStanding);
