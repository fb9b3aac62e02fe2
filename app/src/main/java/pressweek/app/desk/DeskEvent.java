package pressweek.app.desk;

import java.util.List;
import pressweek.solver.Progress;

/** Something that everybody who looks at the week is told. */
public sealed interface DeskEvent {
  /** The week on the desk is another. */
  record Changed(long version, String by, String what) implements DeskEvent {}

  /** A search goes on. */
  record Searched(Progress progress) implements DeskEvent {}

  /** A search has ended; there is something to take or to leave, or words why there is not. */
  record Proposed(String words) implements DeskEvent {}

  /** Files of the folder are not as they were when the week was made, in words; none: they are. */
  record FilesChanged(List<String> words) implements DeskEvent {
    public FilesChanged {
      words = List.copyOf(words);
    }
  }

  /** A comparison of scenarios goes on, or has ended; the plan that was made last, in a line. */
  record Compared(int done, int of, String line) implements DeskEvent {}

  /** A pull was ticked. */
  record Ticked(String by) implements DeskEvent {}
}
