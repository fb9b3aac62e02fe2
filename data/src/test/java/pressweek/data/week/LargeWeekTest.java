package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.files.Folder;
import pressweek.data.problem.Job;

class LargeWeekTest {
  @TempDir private Path temp;

  /**
   * 5,000 order lines, 100 presses and 1,000 molds, of which every line has 8 on 25 presses each.
   */
  @Test
  void largeWeekTakesSecondsOfProcessorTime() {
    PlantFolder plant = new PlantFolder(temp);
    List<String> orders = new ArrayList<>(List.of("order,item,quantity,due,resin,colour"));
    for (int i = 0; i < 5_000; i++) {
      orders.add(i + ",H" + i % 125 + "," + (100 + i) + ",2026-12-02,R" + i % 6 + ",C" + i % 14);
    }
    List<String> molds =
        new ArrayList<>(List.of("mold,makes,live_cavities,cycle_s,runs_on,part_area_cm2"));
    for (int i = 0; i < 1_000; i++) {
      molds.add("M" + i + ",H" + i % 125 + ",4,30,,20");
    }
    List<String> presses = new ArrayList<>(List.of("press,orientation,clamp_kn"));
    for (int i = 0; i < 100; i++) {
      presses.add("P" + i + ",horizontal," + (i % 4 == 0 ? 600 : 300));
    }
    plant.file("orders.csv", orders.toArray(String[]::new));
    plant.file("molds.csv", molds.toArray(String[]::new));
    plant.file("presses.csv", presses.toArray(String[]::new));
    Folder folder = plant.read();
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    long begin = threads.getCurrentThreadCpuTime();
    WeekResult week = Week.build(folder, PlantFolder.NOW);
    Duration took = Duration.ofNanos(threads.getCurrentThreadCpuTime() - begin);
    List<Job> jobs = week.problem().orElseThrow().jobs();
    assertThat(jobs).hasSize(5_000);
    assertThat(jobs.stream().filter(job -> job.options().size() == 8 * 25)).hasSize(5_000);
    assertThat(took).isLessThan(Duration.ofSeconds(15));
  }
}
