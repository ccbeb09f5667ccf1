// Importing this module registers <leadwort-question> and the session that it stands in.
import '../session/define.ts';
import { define } from '../shared/define.ts';
import { LeadwortQuestion } from './question.ts';

define('leadwort-question', LeadwortQuestion);
