package pressweek.app.desk;

import java.util.List;
import java.util.Optional;
import pressweek.app.store.row.Change;
import pressweek.data.files.InputError;
import pressweek.data.files.Scenario;

/**
 * A scenario that can be compared.
 *
 * @param id where it is: the folder's file, or kept by its name
 * @param text its text
 * @param scenario what was read of it
 * @param findings what is wrong with it on top of the folder, or was assumed
 * @param kept its version and who made that; empty for a file of the folder
 */
public record Shelved(
    String id, String text, Scenario scenario, List<InputError> findings, Optional<Kept> kept) {
  static final String FILE = "file:";
  static final String KEPT = "kept:";

  /**
   * How it is kept.
   *
   * @param version counts its changes from 1
   * @param made who made this version, when and why
   */
  public record Kept(long version, Change made) {}

  public Shelved {
    findings = List.copyOf(findings);
  }

  /** How tables call it: by its name, or its file where it says none. */
  public String name() {
    return scenario.name().isEmpty() ? scenario.file() : scenario.name();
  }

  /** Whether it can be planned. */
  public boolean sound() {
    return findings.stream().allMatch(f -> f.severity() == InputError.Severity.WARNING);
  }
}
