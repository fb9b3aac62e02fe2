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

/** The pulls of one component, drawn from its lots and receipts one after the other. */
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

  private record Drawn(Stay stay, Source source, long pieces) {}

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
                "leaves %d of %s in lots reserved for it"
                    .formatted(left, thing(Objects.requireNonNull(stays.get(run)))));
          }
        });
    long needMin = together.get(0).needByMin();
    drawn.forEach(each -> order(each, needMin, least(each, drawn)));
    drawn.stream()
        .filter(each -> each.stay().job().traced())
        .map(Drawn::stay)
        .distinct()
        .forEach(
            stay -> mixed(drawn.stream().filter(d -> d.stay().equals(stay)).toList(), needMin));
  }

  /**
   * What must be left in a source for a run to have had to take it before the one that it took: a
   * traced run that takes all from one source may leave what does not suffice.
   */
  private static long least(Drawn one, List<Drawn> all) {
    List<Drawn> own = alike(one, all);
    boolean single = own.stream().map(Drawn::source).distinct().count() == 1;
    return one.stay().job().traced() && single ? own.stream().mapToLong(Drawn::pieces).sum() : 1;
  }

  /** All that the same run draws, reserved or free as the one. */
  private static List<Drawn> alike(Drawn one, List<Drawn> all) {
    return all.stream()
        .filter(each -> each.stay().equals(one.stay()))
        .filter(each -> each.source().reservedFor().equals(one.source().reservedFor()))
        .toList();
  }

  /** A traced run takes its free stock from one source where one suffices. */
  private void mixed(List<Drawn> ofRun, long needMin) {
    List<Drawn> own = ofRun.stream().filter(each -> each.source().isFree()).toList();
    if (own.stream().map(Drawn::source).distinct().count() < 2) {
      return;
    }
    Stay stay = own.get(0).stay();
    long need = own.stream().mapToLong(Drawn::pieces).sum();
    for (Source source : sources) {
      long had = own.stream().filter(d -> d.source() == source).mapToLong(Drawn::pieces).sum();
      boolean serves = source.isFree() && source.serves(needMin, stay.run().startMin());
      if (serves && source.left() + had >= need) {
        findings.add(
            Rule.LOTS,
            stay.run(),
            "mixes lots of %s, though %s suffices for all %d"
                .formatted(thing(stay), source.words(clock), need));
        return;
      }
    }
  }

  private long reserved(Stay stay) {
    return stay.option().making().takes().stream()
        .filter(take -> take.insert().equals(insert))
        .mapToLong(stay::reservedPieces)
        .sum();
  }

  private List<Drawn> draw(Pull pull, Stay stay, Map<String, Long> reservedLeft) {
    List<Source> named = named(pull, stay);
    long pieces = pull.pieces();
    List<Drawn> drawn = new ArrayList<>();
    for (Source source : named) {
      boolean mine = isFor(source, stay);
      boolean good = source.barred().isEmpty() && !source.hasExpired(stay.run().startMin());
      if (good && (source.isFree() || mine)) {
        long atMost = mine ? Math.min(pieces, reservedLeft.getOrDefault(pull.run(), 0L)) : pieces;
        long taken = source.take(atMost);
        pieces -= taken;
        if (mine) {
          reservedLeft.merge(pull.run(), -taken, Long::sum);
        }
        if (taken > 0) {
          drawn.add(new Drawn(stay, source, taken));
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
          "pulls %s from lot \"%s\", bin \"%s\", receipt \"%s\", which does not exist"
              .formatted(
                  thing(stay),
                  pull.lot(),
                  pull.bin(),
                  pull.receiptMin() == 0 ? "" : clock.text(pull.receiptMin())));
    } else if (named.get(0).usableMin() > pull.needByMin()) {
      findings.add(
          Rule.LOTS,
          stay.run(),
          "pulls %s by %s from %s, which may be used only then"
              .formatted(thing(stay), clock.text(pull.needByMin()), named.get(0).words(clock)));
    }
    return named;
  }

  private void tooMuch(Pull pull, Stay stay, Source source, long pieces) {
    String why = "which has %d less".formatted(pieces);
    if (!source.barred().isEmpty()) {
      why = "which " + source.barred();
    } else if (source.hasExpired(stay.run().startMin())) {
      why = "which has expired by then";
    } else if (!source.isFree()) {
      why =
          isFor(source, stay)
              ? "%d more than are reserved for it there".formatted(pieces)
              : "which is reserved for " + source.reservedFor();
    }
    findings.add(
        Rule.LOTS,
        stay.run(),
        "pulls %d of %s from %s, %s"
            .formatted(pull.pieces(), thing(stay), source.words(clock), why));
  }

  /** A source that the pull should have emptied before it went on to the one that it used. */
  private void order(Drawn drawn, long needMin, long least) {
    boolean free = drawn.source().isFree();
    Comparator<Source> order =
        free
            ? Source.FIRST_TO_USE
            : Comparator.comparing((Source source) -> !isLine(source, drawn.stay()))
                .thenComparing(Source.FIRST_TO_USE);
    sources.stream()
        .filter(source -> free ? source.isFree() : isFor(source, drawn.stay()))
        .filter(source -> source.serves(needMin, drawn.stay().run().startMin()))
        .filter(source -> source.left() >= least && order.compare(source, drawn.source()) < 0)
        .filter(passedOver::add)
        .findFirst()
        .ifPresent(
            first ->
                findings.add(
                    Rule.LOTS,
                    drawn.stay().run(),
                    "pulls %s from %s, but %s comes first and has %d left"
                        .formatted(
                            thing(drawn.stay()),
                            drawn.source().words(clock),
                            first.words(clock),
                            first.left())));
  }

  private static boolean isFor(Source source, Stay stay) {
    return isLine(source, stay) || source.reservedFor().equals(stay.job().line().order());
  }

  private String thing(Stay stay) {
    return stay.component(insert).word() + " " + insert;
  }

  private static boolean isLine(Source source, Stay stay) {
    return source.reservedFor().equals(stay.job().id());
  }
}
