// Importing this module registers <leadwort-nearby>.
import { define } from '../shared/define.ts';
import { LeadwortNearby } from './nearby.ts';

define('leadwort-nearby', LeadwortNearby);
