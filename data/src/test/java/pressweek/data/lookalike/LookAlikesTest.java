package pressweek.data.lookalike;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pressweek.data.problem.NamedPair;

class LookAlikesTest {
  private static final String CERTIFICATE = "the lot's certificate, looks prove nothing";

  private static InsertLook nut(String id, String kind, String thread, String... made) {
    return new InsertLook(id, kind, thread, OptionalDouble.empty(), made[0], made[1], made[2]);
  }

  private static InsertLook zinc(String id, String kind, String thread) {
    return nut(id, kind, thread, "steel", "zinc", "trivalent");
  }

  private static InsertLook stud(String id, String thread, double mm, String material) {
    return new InsertLook(id, "stud", thread, OptionalDouble.of(mm), material, "", "none");
  }

  private static LookAlikes of(InsertLook... looks) {
    return LookAlikes.of(List.of(looks), Set.of());
  }

  private static List<LookAlike> between(InsertLook a, InsertLook b) {
    return of(a, b).between(a.id(), b.id());
  }

  /** Shares from the basic diameters of ASME B1.1 and ISO 261, of the larger one. */
  @ParameterizedTest
  @CsvSource({
    "M5x0.8, #10-32 UNF, 3.5",
    "M6x1, 1/4-20 UNC, 5.5",
    "M8x1.25, 5/16-18 UNC, 0.8",
    "M10x1.5, 3/8-16 UNC, 4.8",
    "M12x1.75, 1/2-13 UNC, 5.5"
  })
  void nearlyEqualThreadsLookAlike(String one, String other, String percent) {
    InsertLook a = zinc("A", "blind", one);
    InsertLook b = zinc("B", "blind", other);
    assertThat(between(a, b))
        .containsExactly(
            new LookAlike(
                "A",
                "B",
                other + " instead of " + one + ", diameters " + percent + " % apart",
                "go/no-go thread gauge " + one + " passes one, not the other"));
    assertThat(between(b, a))
        .containsExactly(
            new LookAlike(
                "B",
                "A",
                one + " instead of " + other + ", diameters " + percent + " % apart",
                "go/no-go thread gauge " + other + " passes one, not the other"));
  }

  @Test
  void threadsJustWithinSixPercentLookAlikeAndOthersDoNot() {
    assertThat(between(zinc("A", "blind", "M94x1"), zinc("B", "blind", "M100x1"))).hasSize(1);
    assertThat(between(zinc("A", "blind", "M93.9x1"), zinc("B", "blind", "M100x1"))).isEmpty();
    assertThat(between(zinc("A", "blind", "M8"), zinc("B", "blind", "M10"))).isEmpty();
  }

  @Test
  void nearlyEqualThreadsOfDifferentKindsAreToldToo() {
    assertThat(between(stud("A", "M8", 30, "A2"), zinc("B", "blind", "5/16-18 UNC"))).hasSize(1);
  }

  @Test
  void sameDiameterWithOtherPitchLooksAlike() {
    assertThat(between(zinc("A", "blind", "1/4-20 UNC"), zinc("B", "blind", "1/4-28 UNF")))
        .extracting(LookAlike::difference)
        .containsExactly("1/4-28 UNF instead of 1/4-20 UNC, same diameter");
    assertThat(between(zinc("A", "blind", "M9"), zinc("B", "blind", "M9x1")))
        .extracting(LookAlike::difference)
        .containsExactly("M9x1 instead of M9, same diameter, one pitch not said");
    assertThat(between(zinc("A", "blind", "M8"), zinc("B", "blind", "M8-LH")))
        .extracting(LookAlike::difference)
        .containsExactly("M8-LH instead of M8, same but for the hand");
    assertThat(between(zinc("A", "blind", "1/4-20"), zinc("B", "blind", "1/4-20 BSW")))
        .extracting(LookAlike::difference)
        .containsExactly("1/4-20 BSW instead of 1/4-20, same but for the flanks");
  }

  @Test
  void partsThatAreTheSameThroughoutAreNoLookAlikes() {
    assertThat(between(zinc("A", "blind", "M8"), zinc("B", "blind", "M8x1.25"))).isEmpty();
    assertThat(between(zinc("A", "blind", "M8"), zinc("A", "blind", "M8"))).isEmpty();
    assertThat(of(zinc("A", "blind", "M8")).between("A", "unknown")).isEmpty();
    assertThat(of(zinc("A", "blind", "M8")).of("unknown")).isEmpty();
  }

  @Test
  void blindIsTakenForThroughOfTheSameThread() {
    InsertLook blind = zinc("A", "blind", "M8x1.25");
    InsertLook through = nut("B", "Through nut", "M8", "A2", "", "none");
    assertThat(between(blind, through))
        .containsExactly(
            new LookAlike(
                "A",
                "B",
                "through instead of blind, same thread",
                "a pin passes the through nut, not the blind one"));
    assertThat(between(through, blind))
        .extracting(LookAlike::difference)
        .containsExactly("blind instead of through, same thread");
    assertThat(between(blind, zinc("B", "lock", "M8x1.25"))).isEmpty();
    assertThat(between(blind, zinc("B", "through", "M12"))).isEmpty();
    assertThat(between(nut("A", "blind", "", "A2", "", ""), nut("B", "through", "", "A2", "", "")))
        .isEmpty();
  }

  @Test
  void partsOfAnotherColourAreNotTakenForEachOther() {
    InsertLook brass = nut("A", "blind", "M8", "brass", "", "none");
    assertThat(between(brass, zinc("B", "through", "M8"))).isEmpty();
    assertThat(between(brass, nut("B", "through", "M8", "steel", "zinc yellow", "trivalent")))
        .hasSize(1);
    assertThat(between(nut("A", "blind", "M8", "brass", "nickel", ""), zinc("B", "through", "M8")))
        .hasSize(1);
    assertThat(
            between(
                nut("A", "blind", "M8", "steel", "black oxide", ""), zinc("B", "through", "M8")))
        .isEmpty();
  }

  @Test
  void onlyTheNextLengthIsTakenForAStud() {
    LookAlikes studs =
        of(
            stud("S20", "M8", 20, "A2"),
            stud("S30", "M8x1.25", 30, "A2"),
            stud("S40", "M8", 40.0, "A4"),
            stud("S40.04", "M8", 40.04, "A2"),
            stud("T25", "M10", 25, "A2"));
    assertThat(studs.of("S20"))
        .containsExactly(
            new LookAlike("S20", "S30", "30 mm instead of 20 mm, the next length", "a steel rule"));
    assertThat(studs.of("S30")).extracting(LookAlike::b).containsExactly("S20", "S40", "S40.04");
    assertThat(studs.of("T25")).isEmpty();
  }

  @Test
  void lengthThatIsNotKnownIsNotCompared() {
    InsertLook open = nut("A", "stud", "M8", "A2", "", "none");
    assertThat(between(open, stud("B", "M8", 20, "A2"))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"303, 316", "A1, A4", "A2, A4-70", "18-8, 316 stainless"})
  void stainlessSteelsOfDifferentGroupsLookAlike(String one, String other) {
    assertThat(between(stud("A", "M8", 30, one), stud("B", "M8", 30, other)))
        .containsExactly(
            new LookAlike(
                "A", "B", other + " instead of " + one + ", alike to the eye", CERTIFICATE));
  }

  @Test
  void namesOfOneSteelGroupAndOtherSteelsAreNotToldApart() {
    assertThat(between(stud("A", "M8", 30, "304"), stud("B", "M8", 30, "A2"))).isEmpty();
    assertThat(between(stud("A", "M8", 30, "steel"), stud("B", "M8", 30, "A2"))).isEmpty();
    assertThat(between(stud("A", "M8", 30, "A2"), nut("B", "tall", "M8", "A4", "", ""))).isEmpty();
  }

  @Test
  void colourDoesNotShowThePassivation() {
    InsertLook tri = nut("A", "blind", "M8", "steel", "zinc yellow", "trivalent");
    InsertLook hex = nut("B", "blind", "M8", "Steel", "zinc, yellow hexavalent", "");
    assertThat(between(tri, hex))
        .containsExactly(
            new LookAlike(
                "A", "B", "hexavalent instead of trivalent, alike to the eye", CERTIFICATE));
    assertThat(between(hex, nut("C", "blind", "M8", "steel", "zinc yellow", "none")))
        .extracting(LookAlike::difference)
        .containsExactly("no passivation instead of hexavalent, alike to the eye");
  }

  @Test
  void otherFinishOrUnknownPassivationIsNoLookAlike() {
    InsertLook hex = nut("A", "blind", "M8", "steel", "zinc yellow", "hexavalent");
    assertThat(between(hex, zinc("B", "blind", "M8"))).isEmpty();
    assertThat(between(hex, nut("B", "blind", "M8", "steel", "zinc yellow", ""))).isEmpty();
    assertThat(between(hex, nut("B", "blind", "M8", "brass", "zinc yellow", "trivalent")))
        .isEmpty();
  }

  @Test
  void pairsOfThePlantAreToldInEitherOrderAndBeforeOthers() {
    List<InsertLook> looks =
        List.of(
            nut("A", "bushing", "", "brass", "", ""),
            nut("B", "arm", "", "steel", "", ""),
            stud("C", "M8", 30, "A2"),
            stud("D", "M8", 30, "A4"));
    Set<NamedPair> named =
        Set.of(
            new NamedPair("A", "B", "the arm has a flat"),
            new NamedPair("D", "C", " "),
            new NamedPair("A", "gone", ""));
    LookAlikes all = LookAlikes.of(looks, named);
    assertThat(all.between("B", "A"))
        .containsExactly(
            new LookAlike("B", "A", "taken for each other in this plant", "the arm has a flat"));
    assertThat(all.between("C", "D"))
        .extracting(LookAlike::toldBy)
        .containsExactly("the part number on the bin", CERTIFICATE);
    assertThat(all.of("A")).hasSize(1);
    assertThat(all.all()).extracting(p -> p.a() + p.b()).containsExactly("AB", "CD", "CD");
  }

  @Test
  void pairOfOnePartIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new NamedPair("A", "A", ""))
        .withMessageContaining("A twice");
  }

  @Test
  void aThousandPartsAreComparedInSeconds() {
    String[] threads = {"M8", "5/16-18 UNC", "M10", "3/8-16 UNC", "M6", "1/4-20", "G1/4", ""};
    String[] kinds = {"blind", "through", "stud", "lock", "tall"};
    List<InsertLook> looks = new ArrayList<>();
    for (int i = 0; i < 1_000; i++) {
      String kind = kinds[i % 5];
      OptionalDouble mm =
          kind.equals("stud") ? OptionalDouble.of(10 + i % 7 * 5) : OptionalDouble.empty();
      looks.add(new InsertLook("P" + i, kind, threads[i % 8], mm, "A" + i % 5, "", "none"));
    }
    List<LookAlike> all =
        Assertions.assertTimeout(
            Duration.ofSeconds(20), () -> LookAlikes.of(looks, Set.of()).all());
    assertThat(all).hasSizeGreaterThan(1_000);
  }
}
