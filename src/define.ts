// Importing this module registers every element; importing `index.ts` registers none. The session comes first, so that
// parts already on the page find it; parts that few people open are registered once they are needed.
import './elements/session/define.ts';
import './elements/key/define.ts';
import './mount/define.ts';

export { VERSION } from './version.ts';
