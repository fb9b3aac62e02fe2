package pressweek.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.app.store.StoreTrouble;
import pressweek.data.plan.Run;

class SplittingTest extends OnDesk {
  /**
   * Two parts need start-up inserts twice, so that not every line has enough for it; and finished
   * stock may be enough for one of them.
   */
  @Test
  void aLineIsSplitAndJoinedAgain() throws StoreTrouble, IOException {
    int both = 0;
    for (Run run : free()) {
      String line = run.job();
      int pieces = pieces(line);
      Standing split = done(desk.edit(standing().version(), new Edit.Split(line, pieces / 3), BEA));
      assertThat(split.findings()).isEmpty();
      List<String> jobs = split.week().plan().problem().jobs().stream().map(j -> j.id()).toList();
      assertThat(jobs).doesNotContain(line).anyMatch(j -> j.startsWith(line + "/"));
      if (jobs.contains(line + "/1") && jobs.contains(line + "/2")) {
        assertThat(pieces(line + "/1") + pieces(line + "/2")).isEqualTo(pieces);
      }
      List<String> runs = split.week().plan().runs().stream().map(Run::job).toList();
      assertThat(runs).doesNotContain(line);
      both += runs.contains(line + "/1") && runs.contains(line + "/2") ? 1 : 0;
      assertThat(desk.edit(split.version(), new Edit.Split(line, 1), BEA))
          .isInstanceOf(Taken.Refused.class);
      Standing kept = done(desk.takeFiles(split.version(), BEA));
      assertThat(kept.week().plan().problem().jobs()).hasSize(jobs.size());
      Standing joined = done(desk.edit(kept.version(), new Edit.Join(line), BEA));
      assertThat(joined.findings()).isEmpty();
      assertThat(pieces(line)).isEqualTo(pieces);
      assertThat(desk.edit(joined.version(), new Edit.Split(line, pieces), BEA))
          .isInstanceOf(Taken.Refused.class);
    }
    assertThat(both).isGreaterThan(1);
  }

  private int pieces(String line) throws StoreTrouble, IOException {
    return plan().problem().jobs().stream()
        .filter(j -> j.id().equals(line))
        .findFirst()
        .orElseThrow()
        .line()
        .quantity();
  }
}
