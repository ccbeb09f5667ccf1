// Registers <leadwort-review>.
import { define } from '../shared/define.ts';
import { LeadwortReview } from './review.ts';

define('leadwort-review', LeadwortReview);
