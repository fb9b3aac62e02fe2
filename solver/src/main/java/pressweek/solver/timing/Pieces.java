package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pressweek.solver.timing.ShiftTimes.Piece;

/** Unions and differences of pieces of time. */
final class Pieces {
  private Pieces() {}

  /** The pieces joined where they touch or overlap, in time order. */
  static List<Piece> union(List<Piece> pieces) {
    List<Piece> sorted = new ArrayList<>(pieces);
    sorted.sort(Comparator.comparingInt(Piece::from).thenComparingInt(Piece::to));
    List<Piece> out = new ArrayList<>();
    for (Piece piece : sorted) {
      int last = out.size() - 1;
      if (piece.to() <= piece.from()) {
        continue;
      }
      if (last >= 0 && piece.from() <= out.get(last).to()) {
        Piece joined = new Piece(out.get(last).from(), Math.max(out.get(last).to(), piece.to()));
        out.set(last, joined);
      } else {
        out.add(piece);
      }
    }
    return out;
  }

  /** What is left of the pieces when the others are taken out, in time order. */
  static List<Piece> without(List<Piece> pieces, List<Piece> others) {
    List<Piece> left = union(pieces);
    for (Piece cut : union(others)) {
      List<Piece> next = new ArrayList<>();
      for (Piece piece : left) {
        if (cut.to() <= piece.from() || piece.to() <= cut.from()) {
          next.add(piece);
          continue;
        }
        if (piece.from() < cut.from()) {
          next.add(new Piece(piece.from(), cut.from()));
        }
        if (cut.to() < piece.to()) {
          next.add(new Piece(cut.to(), piece.to()));
        }
      }
      left = next;
    }
    return left;
  }
}
