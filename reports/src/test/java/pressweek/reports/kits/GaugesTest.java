package pressweek.reports.kits;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pressweek.reports.sample.SampleWeek;

class GaugesTest {
  @ParameterizedTest
  @CsvSource({
    "stud, M8x1, go/no-go ring gauge M8x1",
    "arm, 5/16-18, go/no-go ring gauge 5/16-18",
    "blind, M8x1.25, go/no-go plug gauge M8x1.25",
    "through, 5/16-18 UNC, go/no-go plug gauge 5/16-18 UNC",
    "shaft, '', ''"
  })
  void outerThreadsTakeARingInnerOnesAPlug(String kind, String thread, String gauge) {
    assertThat(Gauges.of(SampleWeek.insert("I", kind, thread, 0, "steel", "", "none")).orElse(""))
        .isEqualTo(gauge);
  }
}
