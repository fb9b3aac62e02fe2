package pressweek.app.offer;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Hours;
import pressweek.data.problem.NotChecked;
import pressweek.data.problem.Unplaced;
import pressweek.reports.hours.Minutes;
import pressweek.reports.schedule.TextLines;
import pressweek.solver.offer.Later;
import pressweek.solver.offer.Offer;
import pressweek.solver.offer.Offers;
import pressweek.solver.offer.Price;

/** The answer to an inquiry as text of at most 80 columns. */
public final class OfferText {
  private static final int WIDTH = 80;
  private static final int SHOWN = 12;

  /** Columns of the table's second column at least. */
  private static final int LEAST = 32;

  private static final String NOT_TRIED = "not tried";
  private static final String STEP = "  ";
  private static final String DEEPER = "    ";

  private final Answered answered;
  private final OfferWords words;
  private final TextLines out = new TextLines(WIDTH);

  private OfferText(Answered answered) {
    this.answered = answered;
    words = new OfferWords(answered.standing());
  }

  /** The answer. */
  public static String of(Answered answered) {
    return new OfferText(answered).write();
  }

  private String write() {
    out.line(
        "",
        "%s by plan %s, seen from %s"
            .formatted(
                answered.inquiry().item(),
                answered.standing().head().number(),
                words.moment(hours().startMin())));
    table();
    answered.rows().forEach(this::details);
    drifted();
    saved();
    notChecked();
    stopped();
    foundHow();
    return out.toString();
  }

  private void table() {
    out.heading("");
    int wide =
        answered.rows().stream().mapToInt(row -> unharmed(row).length()).reduce(LEAST, Math::max);
    String form = "%8s  %-" + wide + "s  ";
    row(form, "pieces", "nobody made late", "needed by " + words.moment(answered.needMin()));
    for (Answered.Row row : answered.rows()) {
      row(form, Integer.toString(row.quantity()), unharmed(row), byNeed(row));
    }
  }

  private void row(String form, String pieces, String unharmed, String byNeed) {
    out.line(String.format(Locale.ROOT, form, pieces, unharmed), byNeed);
  }

  private String unharmed(Answered.Row row) {
    if (row.untried()) {
      return NOT_TRIED;
    }
    if (row.cannot().isPresent()) {
      return "cannot be made";
    }
    return row.offers()
        .map(
            offers ->
                offers
                    .unharmed()
                    .map(o -> words.moment(o.promisedMin()) + words.price(o.price()))
                    .orElse(row.cutShort() ? "not found so far" : "not within this plan"))
        .orElse("at once, from stock");
  }

  private String byNeed(Answered.Row row) {
    if (row.untried()) {
      return NOT_TRIED;
    }
    if (row.cannot().isPresent()) {
      return "cannot be made";
    }
    if (row.offers().isEmpty()) {
      return "yes, from stock";
    }
    Offers offers = row.offers().get();
    if (offers.byNeed().isPresent()) {
      Offer offer = offers.byNeed().get();
      return "yes, " + OfferWords.payers(offer.price()) + words.price(offer.price());
    }
    return offers
        .soonest()
        .map(
            o ->
                no(row)
                    + "; "
                    + words.moment(o.promisedMin())
                    + ", "
                    + OfferWords.payers(o.price())
                    + words.price(o.price()))
        .orElse(no(row));
  }

  private static String no(Answered.Row row) {
    return row.cutShort() ? "not so far" : "no";
  }

  private static String pieces(Answered.Row row) {
    return row.quantity() + (row.quantity() == 1 ? " piece" : " pieces");
  }

  private void details(Answered.Row row) {
    if (row.untried()) {
      return;
    }
    String pieces = pieces(row);
    if (row.allFromStock()) {
      out.heading(pieces + ": in finished stock; nothing to make");
      return;
    }
    if (row.cannot().isPresent()) {
      cannot(pieces, row.cannot().get());
    } else {
      offers(pieces, row);
    }
    row.cures().ifPresent(cures -> CureText.write(row, words, out));
  }

  private void cannot(String pieces, Unplaced line) {
    out.heading(pieces + ": cannot be made within this plan");
    out.line(STEP, line.reason());
    out.line(STEP + "cure: ", line.cure());
  }

  private void offers(String pieces, Answered.Row row) {
    Offers offers = row.offers().orElseThrow();
    String stock = row.fromStock() == 0 ? "" : ", " + row.fromStock() + " of them from stock";
    offers
        .unharmed()
        .ifPresent(o -> offer(pieces + stock + ", nobody made late: " + words.date(o), o));
    if (offers.unharmed().isEmpty()) {
      String found =
          row.cutShort() ? "no way was found so far" : "no way was found within this plan";
      out.heading(pieces + stock + ", nobody made late: " + found);
    }
    Optional<Offer> other = offers.byNeed().or(offers::soonest);
    boolean inTime = offers.byNeed().isPresent();
    String need = words.moment(answered.needMin());
    if (!isSame(offers.unharmed(), other)) {
      String by =
          inTime
              ? ", needed by " + need + ": "
              : ", not ready by " + need + "; the soonest found: ";
      other.ifPresent(o -> offer(pieces + stock + by + words.date(o), o));
    } else if (!inTime) {
      out.line(STEP, "not ready by " + need + "; nothing sooner was found, whoever pays");
    }
  }

  private static boolean isSame(Optional<Offer> one, Optional<Offer> other) {
    return one.isPresent()
        && other.isPresent()
        && one.get().readyMin() == other.get().readyMin()
        && one.get().price().equals(other.get().price());
  }

  private void offer(String heading, Offer offer) {
    out.heading("");
    out.line("", heading);
    offer.findings().forEach(f -> out.line(STEP, "THIS BREAKS A HARD RULE: " + f.message()));
    offer.runs().forEach(run -> out.line(STEP, of(run)));
    Price price = offer.price();
    int moved = price.moved();
    out.line(
        STEP,
        moved == 0
            ? "no other run moves"
            : moved + (moved == 1 ? " other run moves" : " other runs move"));
    List<Later> later = price.later();
    out.line(STEP, later.isEmpty() ? "no line becomes late or later" : "who pays:");
    later.stream().limit(SHOWN).forEach(line -> out.line(DEEPER, of(line)));
    if (later.size() > SHOWN) {
      out.line(DEEPER, "and " + (later.size() - SHOWN) + " more");
    }
    if (!price.placed().isEmpty()) {
      out.line(
          STEP,
          "finds a place, which the plan has none for, late or not: "
              + String.join(", ", price.placed()));
    }
    charges(price);
  }

  private String of(Run run) {
    return "on %s with mold %s from %s to %s"
        .formatted(
            run.press(), run.mold(), words.moment(run.startMin()), words.moment(run.endMin()));
  }

  private String of(Later line) {
    if (line.readyMin().isEmpty()) {
      return line.line()
          + ", due "
          + words.moment(line.dueMin())
          + ": loses its place in this plan";
    }
    return "%s, due %s: ready %s instead of %s, %s%s"
        .formatted(
            line.line(),
            words.moment(line.dueMin()),
            words.moment(line.readyMin().getAsInt()),
            words.moment(line.wasMin()),
            Minutes.words(line.laterMin().orElse(0)),
            line.wasOnTime() ? " late" : " later than it is late now");
  }

  private void charges(Price price) {
    if (!words.hasMoney()) {
      return;
    }
    if (price.byRule().isEmpty()) {
      out.line(STEP, "it costs nothing that a plan could avoid");
      return;
    }
    boolean others = price.moved() > 0 || !price.placed().isEmpty();
    String since = price.costsMore() < 0 && others ? ", since other runs move too" : "";
    out.line(STEP, "avoidable cost " + words.stated(price.costsMore()) + since + ", by rule:");
    for (Map.Entry<Rule, Long> charge : price.byRule().entrySet()) {
      String amount = String.format(Locale.ROOT, "%14s  ", words.signed(charge.getValue()));
      out.line(DEEPER + amount, charge.getKey().sentence());
    }
  }

  /** What becomes of the plan as it stands is no doing of the new line. */
  private void drifted() {
    List<Later> drifted = answered.basis().drifted();
    if (drifted.isEmpty()) {
      return;
    }
    out.heading("Later than the plan says, without the new line as well");
    drifted.stream().limit(SHOWN).forEach(line -> out.line(STEP, of(line)));
    if (drifted.size() > SHOWN) {
      out.line(STEP, "and " + (drifted.size() - SHOWN) + " more");
    }
  }

  /** What could be saved anyway is no merit of the new line. */
  private void saved() {
    long saves = answered.basis().saves();
    if (words.hasMoney() && saves > 0) {
      out.heading("");
      out.line(
          "",
          "Costs are against the plan as it stands. A search found it %s cheaper without the new line."
              .formatted(words.money(saves)));
    }
  }

  private void notChecked() {
    out.heading("Not checked");
    for (NotChecked one : answered.standing().problem().notChecked()) {
      out.line("  - ", one.what() + " (add " + one.add() + ")");
    }
    out.line("  - ", "whether what came of the plan before this time is on the floor as planned");
    out.line(
        "  - ", "what is ordered after the end of this plan, " + words.moment(hours().endMin()));
  }

  private Hours hours() {
    return answered.standing().problem().plant().hours();
  }

  /** What is missing where it was stopped before its end. */
  private void stopped() {
    if (!answered.cutShort()) {
      return;
    }
    out.heading("");
    out.line("", "Stopped after %d s: %s.".formatted(answered.seconds(), missing()));
    which("cut short: ", Answered.Row::cutShort);
    which("not tried: ", Answered.Row::untried);
  }

  private String missing() {
    if (answered.rows().stream().allMatch(Answered.Row::untried)) {
      return "nothing was tried yet";
    }
    return answered.answersCutShort()
        ? "answers may be later or dearer than need be"
        : "not all that might help was tried";
  }

  private void which(String heading, Predicate<Answered.Row> of) {
    List<String> which = answered.rows().stream().filter(of).map(OfferText::pieces).toList();
    if (!which.isEmpty()) {
      out.line(STEP + heading, String.join(", ", which));
    }
  }

  private void foundHow() {
    int tried =
        answered.rows().stream().flatMap(r -> r.offers().stream()).mapToInt(Offers::tried).sum();
    int searches =
        answered.rows().stream().flatMap(r -> r.offers().stream()).mapToInt(Offers::searches).sum();
    if (tried > 0) {
      out.heading("");
      out.line(
          "",
          "Found by %d places tried and %s; an earlier or cheaper answer is not excluded. Nothing was ordered, and no plan was changed."
              .formatted(tried, searches + (searches == 1 ? " search" : " searches")));
    }
  }
}
