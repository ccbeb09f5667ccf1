// Registers <leadwort-verdict>.
import { define } from '../shared/define.ts';
import { LeadwortVerdict } from './verdict.ts';

define('leadwort-verdict', LeadwortVerdict);
