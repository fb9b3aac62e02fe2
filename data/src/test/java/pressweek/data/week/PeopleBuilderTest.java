package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.problem.Person;
import pressweek.data.problem.Person.Role;

/** The shifts are early and late, P1 and P2 stand in cell A, P3 in cell B. */
class PeopleBuilderTest {
  private static final List<String> BOTH = List.of("early", "late");

  @TempDir private Path temp;
  private PlantFolder plant;

  @BeforeEach
  void makeFolder() {
    plant = new PlantFolder(temp);
    cells("A", "A", "B");
  }

  private void cells(String p1, String p2, String p3) {
    plant.file(
        "presses.csv",
        "press,cell,orientation,clamp_kn",
        "P1," + p1 + ",horizontal,900",
        "P2," + p2 + ",vertical,600",
        "P3," + p3 + ",vertical,600");
  }

  private Optional<List<Person>> people() {
    return plant.problem().plant().crew().people();
  }

  @Test
  void withoutTheFileNobodyIsKnown() {
    assertThat(people()).isEmpty();
  }

  @Test
  void whoSaysNothingIsAnOperatorInAllShiftsForAllPresses() {
    plant.file("people.csv", "person", "E-07 Ada");
    assertThat(people().orElseThrow())
        .containsExactly(new Person("E-07 Ada", Role.OPERATOR, BOTH, List.of("P1", "P2", "P3")));
  }

  @Test
  void shiftsAndPressesArePlantOrderAndCellsAreTheirPresses() {
    plant.file(
        "people.csv",
        "person,role,shifts,may_run",
        "Ada,operator,late,P3|P1",
        "Ben,Setter,late|early,A",
        "Cem,,,A|P3|P1");
    assertThat(people().orElseThrow())
        .containsExactly(
            new Person("Ada", Role.OPERATOR, List.of("late"), List.of("P1", "P3")),
            new Person("Ben", Role.SETTER, BOTH, List.of("P1", "P2")),
            new Person("Cem", Role.OPERATOR, BOTH, List.of("P1", "P2", "P3")));
  }

  @Test
  void aPressWithoutACellIsInNone() {
    cells("A", "", "");
    plant.file("people.csv", "person,may_run", "Ada,A");
    assertThat(people().orElseThrow().get(0).presses()).containsExactly("P1");
  }

  @Test
  void theNameOfAPressAndOfACellOfOthersIsAskedBack() {
    cells("A", "P1", "P3");
    plant.file("people.csv", "person,may_run", "Ada,P3", "Ben,P1");
    assertThat(plant.findings())
        .filteredOn(f -> f.startsWith("people.csv"))
        .containsExactly(
            "people.csv:3: may_run \"P1\" is a press and a cell of others; expected ids that"
                + " differ");
  }

  @Test
  void peopleAreNotPlanned() {
    plant.file("people.csv", "person,shifts,may_run", "Ada,late,P3");
    assertThat(plant.presses()).containsExactly("P1", "P2", "P3");
    assertThat(plant.problem().plant().crew().operatorsChecked()).isFalse();
  }
}
