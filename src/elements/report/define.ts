// Registers <leadwort-report>.
import { define } from '../shared/define.ts';
import { LeadwortReport } from './report.ts';

define('leadwort-report', LeadwortReport);
