package pressweek.data.learning;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import pressweek.data.files.ActualRow;
import pressweek.data.learning.Proposal.Figure;
import pressweek.data.learning.Proposal.Verdict;

/**
 * Proposes a figure where there are enough runs and it lies outside the interval that they give.
 *
 * @param least how many runs are enough
 */
record Proposing(int least) {
  static double[] values(List<ActualRow> rows, Function<ActualRow, OptionalDouble> value) {
    return rows.stream()
        .map(value)
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .toArray();
  }

  Optional<Proposal> propose(
      Figure figure, String what, String where, OptionalDouble old, double[] values) {
    if (values.length == 0) {
      return Optional.empty();
    }
    Robust found = Robust.of(values);
    Optional<Double> now = old.isPresent() ? Optional.of(old.getAsDouble()) : Optional.empty();
    Proposal proposal =
        new Proposal(figure, what, where, now, found, verdict(found, now, values.length));
    boolean same = now.isPresent() && now.get() == proposal.proposed();
    return Optional.of(
        same && proposal.changes()
            ? new Proposal(figure, what, where, now, found, Verdict.STAYS)
            : proposal);
  }

  private Verdict verdict(Robust found, Optional<Double> old, int runs) {
    if (runs < least) {
      return Verdict.TOO_FEW;
    }
    if (old.isEmpty()) {
      return Verdict.NEW;
    }
    boolean within = found.low() <= old.get() && old.get() <= found.high();
    return within ? Verdict.STAYS : Verdict.REVISED;
  }
}
