package pressweek.reports.labels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.data.problem.Component;
import pressweek.reports.schedule.PlanBook;

/**
 * The labels of a plan in the order in which the inserts are needed, so that a sheet is used up by
 * time. A run that takes more lots than fit on a label has several.
 */
public final class LabelReport {
  /** Pulls that fit on a label. */
  static final int PULLS = 2;

  private LabelReport() {}

  /** The labels, at least one a run. */
  public static List<KitLabel> labels(PlanBook book) {
    Map<String, List<Pull>> pulls =
        book.plan().pulls().stream().collect(Collectors.groupingBy(Pull::run));
    List<KitLabel> labels = new ArrayList<>();
    for (Run run : book.plan().runs()) {
      List<Pull> its = pulls.getOrDefault(run.id(), List.of());
      labels.addAll(of(book, run, its.stream().filter(p -> isInKit(book, run, p)).toList()));
    }
    labels.sort(Comparator.comparingInt(KitLabel::needByMin));
    return List.copyOf(labels);
  }

  /** True for what lies at the press with the label on its box: inserts and tips. */
  private static boolean isInKit(PlanBook book, Run run, Pull pull) {
    Component component = book.component(run, pull.insert());
    return component == Component.INSERT || component == Component.TIP;
  }

  private static List<KitLabel> of(PlanBook book, Run run, List<Pull> pulls) {
    int start = Math.min(run.startMin(), run.change().startMin());
    int needBy = pulls.stream().mapToInt(Pull::needByMin).min().orElse(start);
    int count = Math.max(1, (pulls.size() + PULLS - 1) / PULLS);
    List<KitLabel> labels = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<Pull> its =
          pulls.subList(Math.min(pulls.size(), i * PULLS), Math.min(pulls.size(), (i + 1) * PULLS));
      labels.add(
          new KitLabel(book.plan().head().number(), run, book.job(run), needBy, its, i + 1, count));
    }
    return labels;
  }
}
