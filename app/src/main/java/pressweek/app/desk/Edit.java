package pressweek.app.desk;

/** What a scheduler does with a line of the week. */
public sealed interface Edit {
  /** The line, {@code order/line}. */
  String line();

  /** The line goes to another place: on a press, after what is fixed there and so many others. */
  record Move(String line, String press, int place) implements Edit {}

  /** The line and all before it on its press are promised to the floor. */
  record Promise(String line) implements Edit {}

  /** The line and all after it on its press are promised no longer. */
  record LetGo(String line) implements Edit {}

  /** The line and all before it on its press stay there when the week is solved. */
  record Hold(String line) implements Edit {}

  /** The line and all after it on its press may move again. */
  record Release(String line) implements Edit {}

  /** The line is not planned. */
  record LeaveOut(String line, String reason) implements Edit {}

  /** A line is made in two parts, the first of so many pieces, which may run at the same time. */
  record Split(String line, int pieces) implements Edit {}

  /** The parts of a line that was split by hand are one again. */
  record Join(String line) implements Edit {}

  /** A line that is unplaced gets the place where it costs least. */
  record TakeIn(String line) implements Edit {}
}
