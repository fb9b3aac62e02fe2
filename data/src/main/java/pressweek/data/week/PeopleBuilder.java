package pressweek.data.week;

import java.util.List;
import java.util.Optional;
import pressweek.data.files.Folder;
import pressweek.data.files.InputFile;
import pressweek.data.files.PersonRow;
import pressweek.data.files.PressRow;
import pressweek.data.problem.Person;
import pressweek.data.problem.Shift;

/** Who may run what, with cells and "all" spelled out as presses and shifts. */
final class PeopleBuilder {
  private PeopleBuilder() {}

  /** Those of {@code people.csv}, in its order; empty without the file. */
  static Optional<List<Person>> build(Folder folder) {
    return folder.has(InputFile.PEOPLE)
        ? Optional.of(folder.people().stream().map(row -> person(folder, row)).toList())
        : Optional.empty();
  }

  private static Person person(Folder folder, PersonRow row) {
    return new Person(
        row.person(),
        row.role(),
        folder.plant().hours().shifts().stream()
            .map(Shift::name)
            .filter(shift -> !folder.plant().hours().opening().unattended().contains(shift))
            .filter(shift -> row.shifts().isEmpty() || row.shifts().contains(shift))
            .toList(),
        folder.floor().presses().stream()
            .filter(press -> may(row, press))
            .map(PressRow::press)
            .toList());
  }

  private static boolean may(PersonRow row, PressRow press) {
    List<String> named = row.mayRun();
    return named.isEmpty() || named.contains(press.press()) || named.contains(press.cell());
  }
}
