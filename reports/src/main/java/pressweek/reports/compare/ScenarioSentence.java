package pressweek.reports.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.problem.OrderLine;
import pressweek.data.problem.Rates;
import pressweek.reports.compare.PlanFigures.Delivery;
import pressweek.reports.hours.Minutes;
import pressweek.reports.schedule.Headline;
import pressweek.reports.schedule.Money;

/** Each scenario in one sentence: what it would bring, and how sure that is. */
public final class ScenarioSentence {
  private static final long CENT = 1_000;
  private static final long UNIT = 100 * CENT;

  private final SideBySide all;
  private final Tried tried;
  private final Set<String> both;

  private ScenarioSentence(SideBySide all, Tried tried) {
    this.all = all;
    this.tried = tried;
    both = all.base().lines();
    both.retainAll(tried.lines());
  }

  /** The folder as it stands first, then a sentence a scenario. */
  public static List<String> all(SideBySide all) {
    List<String> sentences = new ArrayList<>();
    sentences.add(base(all));
    all.scenarios().forEach(t -> sentences.add(of(all, t)));
    return List.copyOf(sentences);
  }

  /** What the folder as it stands comes to. */
  public static String base(SideBySide all) {
    Tried base = all.base();
    if (base.best().isEmpty()) {
      return base.name() + ": " + nothing(base);
    }
    Delivery delivery = base.best().get().figures().delivery();
    String lines =
        String.format(
            Locale.ROOT,
            "%s: %,d of %s on time",
            base.name(),
            delivery.onTime(),
            Headline.counted(delivery.lines(), "order line"));
    return lines
        + all.money()
            .map(r -> ", avoidable cost " + amount(r, base.best().get().figures().avoidableCost()))
            .orElse(", " + late(delivery.lateMin()))
        + ".";
  }

  private static String late(long minutes) {
    return minutes == 0 ? "none late" : Minutes.words(minutes) + " late in all";
  }

  /** What a scenario would bring. */
  public static String of(SideBySide all, Tried tried) {
    return new ScenarioSentence(all, tried).sentence();
  }

  private static String nothing(Tried tried) {
    return tried.plans().stream()
        .flatMap(p -> p.findings().stream())
        .findFirst()
        .map(f -> "no plan that keeps every hard rule was found: " + f + "." + cure(tried))
        .orElse("not planned.");
  }

  /** What to add to a scenario that the floor's promises stand against. */
  private static String cure(Tried tried) {
    List<OrderLine> lines = tried.promisesAgainst();
    if (lines.isEmpty()) {
      return "";
    }
    String drops =
        lines.stream()
            .map(
                l ->
                    "{\"file\": \"promised.csv\", \"where\": {\"order\": \"%s\", \"line\": \"%s\"}}"
                        .formatted(quoted(l.order()), quoted(l.line())))
            .collect(Collectors.joining(", "));
    return (lines.size() == 1 ? " Its promise" : " Their promises")
        + " in promised.csv cannot be kept; to plan without, add to the scenario: \"drop\": ["
        + drops
        + "]";
  }

  private static String quoted(String text) {
    return text.replace("\\", "\\\\").replace("\"", "\\\"");
  }

  private record Claim(String words, Certainty certainty) {}

  private String sentence() {
    if (tried.best().isEmpty()) {
      return tried.name() + ": " + nothing(tried);
    }
    if (all.base().best().isEmpty()) {
      return tried.name() + ": planned, but there is nothing to compare it with.";
    }
    List<Claim> claims = new ArrayList<>();
    claims.add(
        new Claim(
            lines(), Certainty.of(all.base().onTime(both, tried), tried.onTime(both, all.base()))));
    claims.add(
        all.money()
            .map(r -> new Claim(money(r), tried.certainty(Figure.COST, all.base())))
            .orElseGet(() -> new Claim(days(), tried.certainty(Figure.LATE_DAYS, all.base()))));
    return tried.name() + ": " + others() + told(claims) + ".";
  }

  private String told(List<Claim> claims) {
    int pairs = tried.pairs(all.base());
    if (claims.stream().anyMatch(c -> c.certainty() == Certainty.UNTOLD)) {
      return joined(claims, Certainty.UNTOLD)
          + "; with "
          + Headline.counted(pairs, "seed")
          + " nobody can say whether that is chance";
    }
    if (claims.stream().allMatch(c -> c.certainty() == Certainty.SAME)) {
      return "no difference over all " + pairs + " seeds";
    }
    String sure = joined(claims, Certainty.SURE);
    String within = joined(claims, Certainty.WITHIN);
    String same = joined(claims, Certainty.SAME);
    if (sure.isEmpty()) {
      String all = same.isEmpty() ? within : within + ", " + same;
      return "no difference beyond what the search itself varies (" + all + ")";
    }
    List<String> parts = new ArrayList<>(List.of(sure + ", sure over all " + pairs + " seeds"));
    if (!within.isEmpty()) {
      parts.add(within + ", which is within what the search itself varies");
    }
    if (!same.isEmpty()) {
      parts.add(same + " with every seed");
    }
    return String.join("; ", parts);
  }

  private static String joined(List<Claim> claims, Certainty certainty) {
    return String.join(
        ", ", claims.stream().filter(c -> c.certainty() == certainty).map(Claim::words).toList());
  }

  private long difference(Figure figure) {
    double own = tried.best().map(p -> figure.of(p.figures())).orElse(0.0);
    double base = all.base().best().map(p -> figure.of(p.figures())).orElse(0.0);
    return Math.round(own - base);
  }

  /** Lines of one side alone; what is said of lines is said of those that both have. */
  private String others() {
    int more = tried.lines().size() - both.size();
    int fewer = all.base().lines().size() - both.size();
    List<String> parts = new ArrayList<>();
    if (more > 0) {
      parts.add(Headline.counted(more, "line") + " more");
    }
    if (fewer > 0) {
      parts.add(Headline.counted(fewer, "line") + " fewer");
    }
    return parts.isEmpty() ? "" : String.join(" and ", parts) + " to make; ";
  }

  private String lines() {
    String of = others().isEmpty() ? "" : "of the lines that both have ";
    int own = tried.best().map(p -> p.onTime(both)).orElse(0);
    int base = all.base().best().map(p -> p.onTime(both)).orElse(0);
    if (own == base) {
      return of + "as many" + (of.isEmpty() ? " lines" : "") + " on time";
    }
    int count = Math.abs(own - base);
    String side = own > base ? " more" : " fewer";
    String noun = of.isEmpty() ? count == 1 ? " line" : " lines" : "";
    return of + String.format(Locale.ROOT, "%,d", count) + side + noun + " on time";
  }

  private String money(Rates rates) {
    long more = difference(Figure.COST);
    return more == 0
        ? "as dear"
        : amount(rates, Math.abs(more)) + (more < 0 ? " cheaper" : " dearer");
  }

  private String days() {
    long more = difference(Figure.LATE_DAYS);
    return more == 0
        ? "as late in all"
        : Minutes.words(Math.abs(more)) + (more < 0 ? " less late in all" : " later in all");
  }

  /** Whole units of the currency; less than ten of them with cents. */
  static String amount(Rates rates, long amount) {
    return amount < 10 * UNIT
        ? Money.words(rates, amount)
        : rates.currency()
            + " "
            + String.format(Locale.ROOT, "%,d", Math.floorDiv(amount + UNIT / 2, UNIT));
  }
}
