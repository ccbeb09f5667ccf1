// Registers <leadwort-crew>.
import { define } from '../shared/define.ts';
import { LeadwortCrew } from './crew.ts';

define('leadwort-crew', LeadwortCrew);
