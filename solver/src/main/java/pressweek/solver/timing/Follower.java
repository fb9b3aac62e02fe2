package pressweek.solver.timing;

/** Is told how a pass goes on. */
interface Follower {
  /** Does not look. */
  Follower NONE =
      new Follower() {
        @Override
        public void opened() {
          // nothing to do
        }

        @Override
        public void spent(int job, long amount) {
          // nothing to do
        }

        @Override
        public boolean settled(int press, int job, boolean running) {
          return true;
        }
      };

  /** All that runs at the start goes on; the others begin. */
  void opened();

  /** A step towards a job has cost so much. */
  void spent(int job, long amount);

  /** A job has begun or been left out; answers whether it is worth going on. */
  boolean settled(int press, int job, boolean running);
}
