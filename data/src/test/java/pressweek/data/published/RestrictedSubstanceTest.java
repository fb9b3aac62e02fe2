package pressweek.data.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Directive 2011/65/EU, Annex II, as amended by Delegated Directive (EU) 2015/863. */
class RestrictedSubstanceTest {
  @ParameterizedTest
  @CsvSource({
    "Pb, 0.1",
    "Hg, 0.1",
    "Cd, 0.01",
    "Cr(VI), 0.1",
    "PBB, 0.1",
    "PBDE, 0.1",
    "DEHP, 0.1",
    "BBP, 0.1",
    "DBP, 0.1",
    "DIBP, 0.1"
  })
  void limitIsThatOfTheAnnex(String symbol, double percent) {
    RestrictedSubstance substance = RestrictedSubstance.find(symbol).orElseThrow();
    assertThat(substance.maxPercent()).isEqualTo(percent);
    assertThat(substance.isExceededBy(percent)).isFalse();
    assertThat(substance.isExceededBy(percent + 0.001)).isTrue();
  }

  @Test
  void annexHasTenSubstances() {
    assertThat(RestrictedSubstance.all()).hasSize(10);
    assertThat(RestrictedSubstance.find("cr(vi)"))
        .map(RestrictedSubstance::name)
        .hasValue("hexavalent chromium");
    assertThat(RestrictedSubstance.find("Ni")).isEmpty();
  }

  @Test
  void shareMustBeAPercentage() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RestrictedSubstance("Pb", "lead", 0))
        .withMessageContaining("Pb");
  }
}
