import { VERSION } from '../version.ts';

const usage = `leadwort ${VERSION}

  leadwort --version   the version alone
  leadwort --help      this text
`;

const [word = '--help'] = process.argv.slice(2);
if (word === '--version') console.log(VERSION);
else if (word === '--help') process.stdout.write(usage);
else {
  console.error(`leadwort: "${word}" is not a command. These are:\n\n${usage}`);
  process.exitCode = 2;
}
