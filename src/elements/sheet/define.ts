// Registers <leadwort-sheet>.
import { define } from '../shared/define.ts';
import { LeadwortSheet } from './sheet.ts';

define('leadwort-sheet', LeadwortSheet);
