package pressweek.reports.sample;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import pressweek.data.plan.Plan;
import pressweek.reports.schedule.Summary;
import pressweek.reports.write.PlanCsv;
import pressweek.reports.write.PlanPage;

/** Writes pages of generated weeks into a folder, for who wants to look at them. */
final class SamplePages {
  private SamplePages() {}

  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    page(folder, "week", SamplePlan.of(14, 150), List.of());
    page(folder, "sixty", SamplePlan.of(14, 60), List.of());
    page(folder, "large", SamplePlan.of(60, 1_500), List.of());
    page(folder, "tiny", SamplePlan.of(2, 3), List.of());
    page(folder, "empty", SamplePlan.empty(), List.of());
    page(
        folder,
        "broken",
        SamplePlan.of(14, 60),
        List.of("PRESS_ONCE: V3 runs R003 and R017 at once on Tue 1 Dec 07:10"));
    for (Map.Entry<String, String> file : PlanCsv.files(SamplePlan.of(14, 150)).entrySet()) {
      Files.writeString(folder.resolve(file.getKey()), file.getValue());
    }
    Files.writeString(folder.resolve("summary.txt"), Summary.text(SamplePlan.of(14, 150)));
  }

  private static void page(Path folder, String name, Plan plan, List<String> findings)
      throws IOException {
    Files.writeString(folder.resolve(name + ".html"), PlanPage.html(plan, findings));
  }
}
