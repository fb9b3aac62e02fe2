package pressweek.data.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pressweek.data.thread.Thread;
import pressweek.data.thread.Threads;

class GradesTest {
  private static Grade grade(String standard, String name, double diameterMm) {
    return Grades.find(standard, name, diameterMm).orElseThrow();
  }

  /** SAE J429 as Shigley, Mechanical Engineering Design, prints it; ksi. */
  @ParameterizedTest
  @CsvSource({
    "2, 0.25, 55, 57, 74",
    "2, 0.75, 55, 57, 74",
    "2, 0.875, 33, 36, 60",
    "5, 0.25, 85, 92, 120",
    "5, 1, 85, 92, 120",
    "5, 1.125, 74, 81, 105",
    "8, 0.25, 120, 130, 150",
    "8, 1.5, 120, 130, 150"
  })
  void gradesOfJ429ArePrintedInKsi(
      String name, double inch, double proof, double yield, double tensile) {
    Grade grade = grade("SAE J429", name, inch * 25.4);
    assertThat(grade.proofMpa().orElseThrow() / Grade.KSI_MPA).isCloseTo(proof, within(1e-9));
    assertThat(grade.yieldMpa() / Grade.KSI_MPA).isCloseTo(yield, within(1e-9));
    assertThat(grade.tensileMpa() / Grade.KSI_MPA).isCloseTo(tensile, within(1e-9));
  }

  /** 1 ksi is 6.894757 MPa (NIST SP 811, appendix B). */
  @Test
  void ksiInMpaIsThatOfNist() {
    assertThat(Grade.KSI_MPA).isCloseTo(6.894757, within(5e-7));
    assertThat(grade("SAE J429", "5", 8).tensileMpa()).isCloseTo(827, within(0.5));
  }

  @Test
  void gradeOutsideItsSizesIsNotGiven() {
    assertThat(Grades.find("SAE J429", "5", 4.826)).isEmpty();
    assertThat(Grades.find("SAE J429", "8", 1.51 * 25.4)).isEmpty();
    assertThat(Grades.find("SAE J429", "8.8", 8)).isEmpty();
    assertThat(Grades.find("ISO 898-1", "9", 8)).isEmpty();
  }

  /** Where one row ends, the next begins above that size. */
  @Test
  void limitBelongsToTheSmallerSizes() {
    assertThat(grade("SAE J429", "2", 19.05).tensileMpa()).isCloseTo(510.2, within(0.1));
    assertThat(grade("ISO 898-1", "8.8", 16).tensileMpa()).isEqualTo(800);
    assertThat(grade("ISO 898-1", "8.8", 16.1).tensileMpa()).isEqualTo(830);
  }

  /**
   * ISO 898-1: class a.b has a nominal tensile strength of 100a MPa and a nominal yield strength of
   * 10ab MPa. The minimum values of the table are those or slightly more.
   */
  @ParameterizedTest
  @ValueSource(strings = {"4.8", "5.8", "8.8", "10.9"})
  void propertyClassSaysItsStrength(String name) {
    int a = Integer.parseInt(name.substring(0, name.indexOf('.')));
    int b = Integer.parseInt(name.substring(name.indexOf('.') + 1));
    assertThat(Grades.all().stream().filter(g -> g.name().equals(name)))
        .isNotEmpty()
        .allSatisfy(
            grade -> {
              assertThat(grade.tensileMpa()).isBetween(100.0 * a, 105.0 * a);
              assertThat(grade.yieldMpa()).isBetween(10.0 * a * b, 10.7 * a * b);
            });
  }

  /** ISO 898-1, ratio of proof strength to lower yield strength; from memory. */
  @ParameterizedTest
  @CsvSource({"4.8, 0.91", "5.8, 0.90", "8.8, 0.91", "10.9, 0.88"})
  void proofStrengthHasThePrintedRatio(String name, double ratio) {
    Grade grade = grade("ISO 898-1", name, 8);
    assertThat(grade.proofMpa().orElseThrow() / grade.yieldMpa()).isCloseTo(ratio, within(0.006));
  }

  /** ISO 898-1:2013, minimum values, MPa. */
  @ParameterizedTest
  @CsvSource({
    "4.8, 310, 340, 420",
    "5.8, 380, 420, 520",
    "8.8, 580, 640, 800",
    "10.9, 830, 940, 1040"
  })
  void classesOfIso898AreThoseOfTheTable(String name, double proof, double yield, double tensile) {
    Grade grade = grade("ISO 898-1", name, 8);
    assertThat(grade.proofMpa()).hasValue(proof);
    assertThat(grade.yieldMpa()).isEqualTo(yield);
    assertThat(grade.tensileMpa()).isEqualTo(tensile);
  }

  /**
   * ISO 3506-1: the number of the class is a tenth of the tensile strength; 0.2 % proof strengths
   * from memory.
   */
  @ParameterizedTest
  @CsvSource({"50, 210", "70, 450", "80, 600"})
  void stainlessClassSaysItsTensileStrength(int number, double yield) {
    for (String group : new String[] {"A1", "A2", "A4"}) {
      Grade grade = grade("ISO 3506-1", group + "-" + number, 8);
      assertThat(grade.tensileMpa()).isEqualTo(10.0 * number);
      assertThat(grade.yieldMpa()).isEqualTo(yield);
      assertThat(grade.proofMpa()).isEmpty();
    }
  }

  /**
   * 5/16-18 UNC: stress area 0.0524 in2 (ASME B1.1), so 2.88 kip in grade 2, 4.45 kip in grade 5.
   */
  @ParameterizedTest
  @CsvSource({"2, 2.88", "5, 4.45", "8, 6.29"})
  void proofLoadOfAFiveSixteenthsStud(String name, double kip) {
    Thread thread = Threads.find("5/16-18").orElseThrow();
    double d = thread.majorInch() - 0.9743 / 18;
    double ksi = grade("SAE J429", name, thread.majorMm()).proofMpa().orElseThrow() / Grade.KSI_MPA;
    assertThat(0.7854 * d * d * ksi).isCloseTo(kip, within(0.01));
  }

  /** Fastener makers' guides: A2 is 304 or 18-8, A1 the machinable 303, A4 316. */
  @ParameterizedTest
  @CsvSource({
    "18-8, A2",
    "304, A2",
    "303, A1",
    "316, A4",
    "SS 316, A4",
    "303 stainless, A1",
    "a2, A2",
    "A4-70, A4",
    "'A2, 304', A2"
  })
  void everydayNameLeadsToItsSteelGroup(String material, String group) {
    assertThat(Grades.stainlessGroup(material)).hasValue(group);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "steel", "8.8", "brass", "303 or 316", "A2/A4", "3160", "A20", "A-4"})
  void otherMaterialHasNoSteelGroup(String material) {
    assertThat(Grades.stainlessGroup(material)).isEmpty();
  }

  @Test
  void everydayNamesSayWhatTheyLeaveOpen() {
    assertThat(Grades.everydayNames())
        .hasSize(4)
        .allSatisfy(n -> assertThat(n.note()).isNotBlank());
    assertThat(Grades.stainlessGroup("304 ".repeat(100_000))).isEmpty();
  }

  @Test
  void strengthsMustRiseFromProofToTensile() {
    OptionalDouble none = OptionalDouble.empty();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Grade("X", "1", none, none, OptionalDouble.of(300), 200, 400))
        .withMessageContaining("X 1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Grade("X", "1", none, none, none, 400, 400));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Grade("X", "", none, none, none, 200, 400));
  }
}
