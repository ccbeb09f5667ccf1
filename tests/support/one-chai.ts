import { chai } from 'vitest';
export const { expect, should, assert } = chai;
export default chai;
