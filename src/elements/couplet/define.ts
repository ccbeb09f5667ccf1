// Importing this module registers <leadwort-couplet> and the session that it stands in.
import '../session/define.ts';
import { define } from '../shared/define.ts';
import { LeadwortCouplet } from './couplet.ts';

define('leadwort-couplet', LeadwortCouplet);
