// Registers <leadwort-names>.
import { define } from '../shared/define.ts';
import { LeadwortNames } from './names.ts';

define('leadwort-names', LeadwortNames);
