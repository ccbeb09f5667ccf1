// Sizes in words, for elements: how they are made, the printed key shares.
export * from '../../key/sizes.ts';
