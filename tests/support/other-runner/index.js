// @open-wc/testing asks another test runner for stored snapshots. Under Vitest there is none: use toMatchSnapshot.
const absent = async () => {
  throw new Error('stored snapshots of the other runner do not exist here: use toMatchSnapshot()');
};

export { absent as getSnapshot, absent as getSnapshotConfig, absent as saveSnapshot };
