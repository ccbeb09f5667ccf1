/** The package's version; a test holds it to package.json. Two copies of the elements on one page compare it. */
export const VERSION = '0.1.0';
