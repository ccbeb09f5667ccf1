// Registers <leadwort-term>, and <leadwort-terms>, which finds terms in a sentence.
import { define } from '../shared/define.ts';
import { LeadwortTerm } from './term.ts';
import { LeadwortTerms } from './terms.ts';

define('leadwort-term', LeadwortTerm);
define('leadwort-terms', LeadwortTerms);
