package pressweek.reports.crew;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.problem.Person;
import pressweek.data.problem.Person.Role;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.hours.Span;

/** The early shift from minute 0 to 480 at the presses V1, V2 and V3. */
class SkillsTest {
  private static final List<String> PRESSES = List.of("V1", "V2", "V3");
  private static final ShiftSpan EARLY =
      new ShiftSpan("early", LocalDate.of(2026, 11, 30), new Span(0, 480));

  private final List<Person> people = new ArrayList<>();
  private final List<Claim> runs = new ArrayList<>();
  private final List<Claim> changes = new ArrayList<>();

  private void person(String name, Role role, String... presses) {
    people.add(new Person(name, role, List.of("early"), List.of(presses)));
  }

  private void operator(String name, String... presses) {
    person(name, Role.OPERATOR, presses);
  }

  private void run(String press, int from, int to, int thousandths) {
    runs.add(new Claim(new Span(from, to), thousandths, press, "R" + runs.size()));
  }

  private void change(String press, String what) {
    changes.add(new Claim(new Span(60, 120), 1000, press, what));
  }

  private Skills.Asked asked() {
    return new Skills.Asked(EARLY, runs, changes);
  }

  private CrewRow.Qualified qualified() {
    return new Skills(people, PRESSES).qualified(asked());
  }

  private List<String> shortages() {
    return new Skills(people, PRESSES).shortages(asked());
  }

  @Test
  void operatorsStandWithThePressesWhoseRunsNeedThem() {
    run("V2", 0, 100, 250);
    run("V1", 50, 200, 250);
    operator("Ada", "V1", "V2", "V3");
    operator("Ben", "V2", "V3");
    operator("Cem", "V3");
    assertThat(qualified().mayRun()).containsExactly("Ada: all", "Ben: V2");
    assertThat(qualified().nobodyFor()).isEmpty();
    assertThat(shortages()).isEmpty();
  }

  @Test
  void severalPressesAreInThePlantsOrder() {
    run("V3", 0, 100, 250);
    run("V2", 0, 100, 250);
    run("V1", 50, 200, 250);
    operator("Ada", "V3", "V1");
    assertThat(qualified().mayRun()).containsExactly("Ada: V1, V3");
    assertThat(qualified().nobodyFor()).containsExactly("V2");
  }

  @Test
  void nobodyIsAtAPressWithoutAnOperatorWhoMayRunIt() {
    run("V1", 0, 100, 250);
    run("V2", 300, 400, 250);
    operator("Ada", "V1");
    person("Ben", Role.SETTER, "V1", "V2");
    assertThat(qualified().nobodyFor()).containsExactly("V2");
    assertThat(qualified().mayRun()).containsExactly("Ada: V1");
  }

  @Test
  void runsThatNeedNobodyOrAreInAnotherShiftAskNobody() {
    run("V1", 0, 480, 0);
    run("V2", 480, 600, 1000);
    operator("Ada", "V1", "V2");
    assertThat(qualified().nobodyFor()).isEmpty();
    assertThat(qualified().mayRun()).isEmpty();
    assertThat(shortages()).isEmpty();
    people.clear();
    assertThat(qualified().nobodyFor()).isEmpty();
    assertThat(shortages()).isEmpty();
  }

  @Test
  void peopleOfOtherShiftsAreNotThere() {
    run("V1", 0, 100, 250);
    people.add(new Person("Ada", Role.OPERATOR, List.of("late"), List.of("V1")));
    assertThat(qualified().mayRun()).isEmpty();
    assertThat(qualified().nobodyFor()).containsExactly("V1");
    assertThat(shortages())
        .containsExactly("operators who may run the presses: 1 needed at once, none there");
  }

  @Test
  void onePersonServesPressesUpToAWholeOne() {
    run("V1", 0, 100, 500);
    run("V2", 0, 100, 500);
    operator("Ada", "V1", "V2");
    assertThat(shortages()).isEmpty();
    run("V3", 99, 100, 1);
    operator("Cem", "V1");
    assertThat(shortages()).isEmpty();
    people.remove(1);
    assertThat(shortages())
        .containsExactly("operators who may run the presses: 2 needed at once, 1 there");
  }

  @Test
  void whoMayRunOnlyAnUnrelatedPressIsNotCounted() {
    run("V1", 0, 100, 1000);
    run("V2", 0, 100, 1000);
    run("V3", 200, 300, 1000);
    operator("Ada", "V1", "V2");
    operator("Ben", "V3");
    assertThat(qualified().nobodyFor()).isEmpty();
    assertThat(shortages())
        .containsExactly("operators who may run the presses: 2 needed at once, 1 there");
    operator("Cem", "V2");
    assertThat(shortages()).isEmpty();
  }

  @Test
  void settersStandWithThePressesThatAreChanged() {
    change("V2", "R2");
    change("V1", "R1");
    person("Ben", Role.SETTER, "V1", "V2", "V3");
    person("Cem", Role.SETTER, "V2");
    person("Dora", Role.SETTER, "V3");
    operator("Ada", "V1", "V2");
    assertThat(qualified().mayRun()).containsExactly("Ben (setter): all", "Cem (setter): V2");
    assertThat(qualified().nobodyFor()).isEmpty();
    assertThat(shortages()).isEmpty();
  }

  @Test
  void changesWithoutASetterWhoMayMakeThemAreTold() {
    change("V1", "R1");
    change("V2", "R2");
    change("V3", "M3 off");
    person("Ben", Role.SETTER, "V2");
    operator("Ada", "V1", "V2", "V3");
    assertThat(shortages())
        .containsExactly("setters who may make the change: none there: R1 on V1, M3 off on V3");
  }
}
