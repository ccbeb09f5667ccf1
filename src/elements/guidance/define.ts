// Registers <leadwort-guidance>.
import { define } from '../shared/define.ts';
import { LeadwortGuidance } from './guidance.ts';

define('leadwort-guidance', LeadwortGuidance);
