// Importing this module registers <leadwort-comparison>.
import { define } from '../shared/define.ts';
import { LeadwortComparison } from './comparison.ts';

define('leadwort-comparison', LeadwortComparison);
