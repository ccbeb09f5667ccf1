// Last line of a run: `node tally.mjs report.json status` prints "N passed, N failed" and ends with the right status.
import { readFileSync } from 'node:fs';

const [, , file = '', given = '1'] = process.argv;
const status = Number(given);
let passed = 0;
let failed = 0;
try {
  const report = JSON.parse(readFileSync(file, 'utf8'));
  passed = report.numPassedTests;
  failed = report.numFailedTests;
  // A file that could not be loaded has no tests to count, yet it failed.
  failed += report.testResults.filter(
    (one) => one.status === 'failed' && !one.assertionResults.some((test) => test.status === 'failed'),
  ).length;
} catch (error) {
  console.error(`no report of the run: ${error.message}`);
}
// The run itself fails when it ended badly or tested nothing: that counts as one failure, so that the line is never a false comfort.
if (failed === 0 && (status !== 0 || passed === 0)) failed = 1;
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = status !== 0 ? status : failed > 0 ? 1 : 0;
