package pressweek.solver.audit;

/**
 * A mold on a press.
 *
 * @param mold mold
 * @param press press
 * @param fromMin start of the change that mounts it (or of the run), {@link Long#MIN_VALUE} when it
 *     was there when the plan started
 * @param toMin when it has been taken off, {@link Long#MAX_VALUE} when nothing takes it off
 * @param run the run that it was mounted for; empty when it was there when the plan started
 * @param words that run in words
 */
record Hold(String mold, String press, long fromMin, long toMin, String run, String words) {
  Hold until(long min) {
    return new Hold(mold, press, fromMin, min, run, words);
  }
}
