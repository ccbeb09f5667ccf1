// Registers <leadwort-practice> and the parts of the key that it puts to use.
import '../couplet/define.ts';
import '../question/define.ts';
import '../standing/define.ts';
import '../trail/define.ts';
import { define } from '../shared/define.ts';
import { LeadwortPractice } from './practice.ts';
import { LeadwortPracticeRun } from './run.ts';

define('leadwort-practice-run', LeadwortPracticeRun);
define('leadwort-practice', LeadwortPractice);

// For the key's settings, in the file of the room: whoever practised on a device has it there.
export { ownOf } from './own.ts';
