// Registers <leadwort-portrait>.
import { define } from '../shared/define.ts';
import { LeadwortPortrait } from './portrait.ts';

define('leadwort-portrait', LeadwortPortrait);
