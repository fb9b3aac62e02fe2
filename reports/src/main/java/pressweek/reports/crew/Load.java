package pressweek.reports.crew;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import pressweek.reports.hours.Span;

/** What is needed of a crew over time. */
final class Load {
  private static final int PERSON = 1000;

  private final List<Claim> claims;

  Load(List<Claim> claims) {
    this.claims = claims;
  }

  /** What is needed at a minute. */
  List<Claim> at(int minute) {
    return claims.stream().filter(c -> c.span().contains(minute)).toList();
  }

  /**
   * The first minute at which most is needed; empty when nothing is.
   *
   * @param within where to look
   */
  Optional<Integer> peak(Span within) {
    return claims.stream()
        .map(c -> c.span().within(within))
        .filter(s -> s.minutes() > 0)
        .map(Span::fromMin)
        .distinct()
        .max(
            Comparator.comparingInt((Integer m) -> sum(at(m)))
                .thenComparing(Comparator.reverseOrder()));
  }

  /** Whole people for these thousandths. */
  static int people(int thousandths) {
    return (thousandths + PERSON - 1) / PERSON;
  }

  /** Thousandths of a person of all of them. */
  static int sum(List<Claim> claims) {
    return claims.stream().mapToInt(Claim::thousandths).sum();
  }

  /**
   * More than is there.
   *
   * @param minutes minutes in which that is so
   * @param needed most that is needed in one of them, thousandths of a person
   * @param there what is there then
   * @param claims what needs it in any of them
   */
  record Over(int minutes, int needed, int there, List<Claim> claims) {
    Over {
      claims = List.copyOf(claims);
    }

    private Over and(Over other) {
      Over worse = other.needed > needed ? other : this;
      List<Claim> all = Stream.concat(claims.stream(), other.claims.stream()).distinct().toList();
      return new Over(minutes + other.minutes, worse.needed, worse.there, all);
    }
  }

  /**
   * Where more is needed than is there; empty when it is enough all the time.
   *
   * @param within where to look
   * @param there what is there
   */
  Optional<Over> over(List<Span> within, List<Claim> there) {
    Load supply = new Load(there);
    return pieces(within, there).stream().flatMap(s -> over(s, supply).stream()).reduce(Over::and);
  }

  private Optional<Over> over(Span piece, Load supply) {
    List<Claim> wanted = at(piece.fromMin());
    int has = sum(supply.at(piece.fromMin()));
    return sum(wanted) > has
        ? Optional.of(new Over(piece.minutes(), sum(wanted), has, wanted))
        : Optional.empty();
  }

  /** Spans in which neither need nor supply changes. */
  private List<Span> pieces(List<Span> within, List<Claim> there) {
    List<Span> pieces = new ArrayList<>();
    for (Span whole : within) {
      TreeSet<Integer> cuts = new TreeSet<>(List.of(whole.fromMin()));
      Stream.concat(claims.stream(), there.stream())
          .flatMap(c -> Stream.of(c.span().fromMin(), c.span().toMin()))
          .filter(whole::contains)
          .forEach(cuts::add);
      for (int cut : cuts) {
        Integer next = cuts.higher(cut);
        pieces.add(new Span(cut, next == null ? whole.toMin() : next));
      }
    }
    return pieces;
  }
}
