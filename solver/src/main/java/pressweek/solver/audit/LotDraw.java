package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Take;

/** The pulls of one insert part, drawn from its lots and receipts one after the other. */
final class LotDraw {
  private final String insert;
  private final List<Source> sources;
  private final Clock clock;
  private final Findings findings;

  /** Sources that were passed over and have been told of: once is enough. */
  private final Set<Source> passedOver = new HashSet<>();

  LotDraw(String insert, List<Source> sources, Clock clock, Findings findings) {
    this.insert = insert;
    this.sources = sources.stream().sorted(Source.FIRST_TO_USE).toList();
    this.clock = clock;
    this.findings = findings;
  }

  private record Drawn(Stay stay, Source source) {}

  /**
   * Draws pulls that are needed at the same time, and sees that together they used what comes
   * first.
   */
  void draw(List<Pull> together, Map<String, Stay> stays) {
    Map<String, Long> reservedLeft = new LinkedHashMap<>();
    List<Drawn> drawn = new ArrayList<>();
    for (Pull pull : together) {
      Stay stay = Objects.requireNonNull(stays.get(pull.run()));
      reservedLeft.computeIfAbsent(pull.run(), run -> reserved(stay));
      drawn.addAll(draw(pull, stay, reservedLeft));
    }
    reservedLeft.forEach(
        (run, left) -> {
          if (left > 0) {
            findings.add(
                Rule.LOTS,
                Objects.requireNonNull(stays.get(run)).run(),
                "leaves %d of insert %s in lots reserved for it".formatted(left, insert));
          }
        });
    long needMin = together.get(0).needByMin();
    drawn.forEach(each -> order(each, needMin));
  }

  private long reserved(Stay stay) {
    return stay.option().making().takes().stream()
        .filter(take -> take.insert().equals(insert))
        .mapToLong(Take::reservedPieces)
        .sum();
  }

  private List<Drawn> draw(Pull pull, Stay stay, Map<String, Long> reservedLeft) {
    List<Source> named = named(pull, stay);
    long pieces = pull.pieces();
    List<Drawn> drawn = new ArrayList<>();
    for (Source source : named) {
      boolean mine = isFor(source, stay);
      if (source.barred().isEmpty() && (source.isFree() || mine)) {
        long atMost = mine ? Math.min(pieces, reservedLeft.getOrDefault(pull.run(), 0L)) : pieces;
        long taken = source.take(atMost);
        pieces -= taken;
        if (mine) {
          reservedLeft.merge(pull.run(), -taken, Long::sum);
        }
        if (taken > 0) {
          drawn.add(new Drawn(stay, source));
        }
      }
    }
    if (pieces > 0 && !named.isEmpty()) {
      tooMuch(pull, stay, named.get(0), pieces);
    }
    return drawn;
  }

  /** The lot or the receipts that a pull names, reserved ones first. */
  private List<Source> named(Pull pull, Stay stay) {
    List<Source> named =
        sources.stream()
            .filter(source -> source.isNamedBy(pull))
            .sorted(Comparator.comparing(Source::isFree))
            .toList();
    if (named.isEmpty()) {
      findings.add(
          Rule.LOTS,
          stay.run(),
          "pulls insert %s from lot \"%s\", bin \"%s\", receipt \"%s\", which does not exist"
              .formatted(
                  insert,
                  pull.lot(),
                  pull.bin(),
                  pull.receiptMin() == 0 ? "" : clock.text(pull.receiptMin())));
    } else if (named.get(0).usableMin() > pull.needByMin()) {
      findings.add(
          Rule.LOTS,
          stay.run(),
          "pulls insert %s by %s from %s, which may be used only then"
              .formatted(insert, clock.text(pull.needByMin()), named.get(0).words(clock)));
    }
    return named;
  }

  private void tooMuch(Pull pull, Stay stay, Source source, long pieces) {
    String why = "which has %d less".formatted(pieces);
    if (!source.barred().isEmpty()) {
      why = "which " + source.barred();
    } else if (!source.isFree()) {
      why =
          isFor(source, stay)
              ? "%d more than are reserved for it there".formatted(pieces)
              : "which is reserved for " + source.reservedFor();
    }
    findings.add(
        Rule.LOTS,
        stay.run(),
        "pulls %d of insert %s from %s, %s"
            .formatted(pull.pieces(), insert, source.words(clock), why));
  }

  /** A source that the pull should have emptied before it went on to the one that it used. */
  private void order(Drawn drawn, long needMin) {
    boolean free = drawn.source().isFree();
    Comparator<Source> order =
        free
            ? Source.FIRST_TO_USE
            : Comparator.comparing((Source source) -> !isLine(source, drawn.stay()))
                .thenComparing(Source.FIRST_TO_USE);
    sources.stream()
        .filter(source -> free ? source.isFree() : isFor(source, drawn.stay()))
        .filter(source -> source.barred().isEmpty() && source.usableMin() <= needMin)
        .filter(source -> source.left() > 0 && order.compare(source, drawn.source()) < 0)
        .filter(passedOver::add)
        .findFirst()
        .ifPresent(
            first ->
                findings.add(
                    Rule.LOTS,
                    drawn.stay().run(),
                    "pulls insert %s from %s, but %s comes first and has %d left"
                        .formatted(
                            insert,
                            drawn.source().words(clock),
                            first.words(clock),
                            first.left())));
  }

  private static boolean isFor(Source source, Stay stay) {
    return isLine(source, stay) || source.reservedFor().equals(stay.job().line().order());
  }

  private static boolean isLine(Source source, Stay stay) {
    return source.reservedFor().equals(stay.job().id());
  }
}
