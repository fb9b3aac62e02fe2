package pressweek.reports.compare;

import java.util.List;
import java.util.Locale;
import pressweek.reports.schedule.Headline;
import pressweek.reports.schedule.TextLines;

/** A comparison as a manager reads it in the terminal, in lines of at most 80 columns. */
public final class CompareText {
  private static final int WIDTH = 80;
  private static final int WORDS = 30;
  private static final int SIDES = 4;
  private static final List<Figure> SHOWN =
      List.of(
          Figure.ON_TIME,
          Figure.ON_REQUEST,
          Figure.UNPLACED,
          Figure.LATE_DAYS,
          Figure.COST,
          Figure.CHANGES,
          Figure.CHANGE_HOURS,
          Figure.PURGE_KG,
          Figure.OPERATOR_HOURS,
          Figure.OVERTIME_HOURS,
          Figure.ALLOCATION,
          Figure.SETUP_RATIO,
          Figure.MOVED);

  private final SideBySide all;
  private final TextLines out = new TextLines(WIDTH);

  private CompareText(SideBySide all) {
    this.all = all;
  }

  /** The figures that a short table shows. */
  public static List<Figure> shown(SideBySide all) {
    return SHOWN.stream().filter(all.figures()::contains).toList();
  }

  /** Sentences, a table, how it was told, and what was written. */
  public static String of(SideBySide all, List<String> files) {
    return new CompareText(all).write(files);
  }

  private String write(List<String> files) {
    if (all.stopped()) {
      out.line("", "Stopped early; this is what there was by then.");
    }
    ScenarioSentence.all(all).forEach(s -> out.line("", s));
    for (Tried tried : all.all()) {
      tried.notes().forEach(n -> out.line("  ", tried.name() + ": " + n));
      if (tried.broken() > 0) {
        String plans = Headline.counted(tried.broken(), "plan");
        out.line("  ", tried.name() + ": the audit rejected " + plans + ", not shown.");
      }
    }
    List<Tried> shown = all.shown();
    for (int from = 1; from == 1 && !shown.isEmpty() || from < shown.size(); from += SIDES - 1) {
      table(shown.get(0), shown.subList(from, Math.min(shown.size(), from + SIDES - 1)));
    }
    out.heading("");
    out.line("", all.effort());
    out.line("", Certainty.method(all.seeds()));
    if (!files.isEmpty()) {
      out.heading("Written");
      files.forEach(f -> out.line("  ", f));
    }
    return out.toString();
  }

  private void table(Tried first, List<Tried> others) {
    out.heading("");
    StringBuilder head = new StringBuilder(" ".repeat(WORDS)).append(cell(first.name()));
    others.forEach(t -> head.append(cell(t.name())));
    out.verbatim(head.toString().stripTrailing());
    for (Figure figure : shown(all)) {
      StringBuilder row = new StringBuilder();
      String unit =
          figure.unit() == Figure.Unit.MONEY
              ? all.money().map(r -> r.currency()).orElse("")
              : figure.unit().symbol();
      String words = figure.words() + (unit.isEmpty() ? "" : ", " + unit);
      row.append(String.format(Locale.ROOT, "%-" + WORDS + "s", cut(words, WORDS - 1)));
      row.append(cell(value(figure, first)));
      others.forEach(t -> row.append(cell(value(figure, t))));
      out.verbatim(row.toString().stripTrailing());
    }
  }

  private static String value(Figure figure, Tried tried) {
    return tried.best().map(p -> figure.text(figure.of(p.figures()))).orElse("");
  }

  private static String cell(String text) {
    return String.format(Locale.ROOT, "%12s", cut(text, 11));
  }

  private static String cut(String text, int most) {
    return text.length() <= most ? text : text.substring(0, most - 1) + "\u2026";
  }
}
