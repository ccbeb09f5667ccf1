// Importing this module registers <leadwort-trail> and the session that it stands in.
import '../session/define.ts';
import { define } from '../shared/define.ts';
import { LeadwortTrail } from './trail.ts';

define('leadwort-trail', LeadwortTrail);
