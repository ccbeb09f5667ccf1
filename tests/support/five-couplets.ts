// An invented key of a few couplets over the demonstration's characters; what is told of it here follows from how a
// branching key is read (common practice, no source).
export const NARROW = ['linear', 'strap'];
export const WIDE = ['lance', 'oval', 'heart', 'arrowhead', 'round', 'shield', 'wedge', 'divided'];
export const fiveCouplets = [
  {
    number: 1,
    leads: [
      { character: 'leaf-shape', states: NARROW, to: 2 },
      { character: 'leaf-shape', states: WIDE, to: 4 },
    ],
  },
  {
    number: 2,
    leads: [
      { character: 'growth-form', states: ['tall-cane'], to: 3 },
      { character: 'growth-form', states: ['grass', 'rush-like'], to: 'typha-latifolia' },
    ],
  },
  {
    number: 3,
    leads: [
      { text: 'It would cut your hand.', to: 'arundo-donax' },
      { text: 'It would not.', to: ['phragmites-australis-subsp-australis', 'phragmites-australis-subsp-americanus'] },
    ],
  },
  {
    number: 4,
    leads: [
      { character: 'leaf-shape', states: ['heart', 'round', 'shield'], to: 'colocasia-esculenta' },
      { character: 'leaf-shape', states: ['lance', 'oval', 'arrowhead'], to: 5 },
    ],
  },
  {
    number: 5,
    leads: [
      { character: 'leaf-veins', states: ['feather'], to: 'peltandra-virginica' },
      {
        character: 'leaf-veins',
        states: ['from-base', 'from-centre'],
        to: ['sagittaria-latifolia', 'colocasia-esculenta'],
      },
    ],
  },
];

/** A key in which both leads of the first couplet lead to the second. */
export const joinedCouplets = [
  {
    number: 1,
    leads: [
      { text: 'a', to: 2 },
      { text: 'b', to: 2 },
    ],
  },
  {
    number: 2,
    leads: [
      { text: 'c', to: 'typha-latifolia' },
      { text: 'd', to: 'arundo-donax' },
    ],
  },
];
