// The practice room: technicians learn the plants here before they go out.
import '../../elements/session/define.ts';
import '../../elements/practice/define.ts';
import '../worker/register.ts';
