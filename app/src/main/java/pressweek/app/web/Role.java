package pressweek.app.web;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What somebody does in the plant, and what the pages let him do. */
public enum Role {
  /** Reads codes and orders. */
  ORDER_DESK(
      "order desk", EnumSet.of(Right.WEEK, Right.CODES, Right.LISTS, Right.FILES, Right.SCENARIOS)),
  /** Plans the week; looks after everything. */
  SCHEDULER("scheduler", EnumSet.allOf(Right.class)),
  /** Brings what presses need. */
  HANDLER("handler", EnumSet.of(Right.PULLS, Right.TICK, Right.LISTS, Right.SCENARIOS)),
  /** Changes molds. */
  SETTER("setter", EnumSet.of(Right.WEEK, Right.PULLS, Right.LISTS, Right.SCENARIOS)),
  /** Only looks. */
  VIEWER(
      "viewer", EnumSet.of(Right.WEEK, Right.PULLS, Right.LISTS, Right.FIGURES, Right.SCENARIOS)),
  /** Whoever sits at the machine that the pages run on, where nobody logs in. */
  LOCAL("this machine", EnumSet.allOf(Right.class));

  private final String words;
  private final Set<Right> rights;

  Role(String words, Set<Right> rights) {
    this.words = words;
    this.rights = Set.copyOf(rights);
  }

  /** The role as a person reads it. */
  public String words() {
    return words;
  }

  /** Whether somebody with the role may do what asks for a right. */
  public boolean may(Right right) {
    return right == Right.OPEN || right == Right.KNOWN || rights.contains(right);
  }

  /** Names of the roles that people are given. */
  static String names() {
    return Arrays.stream(values())
        .filter(r -> r != LOCAL)
        .map(r -> r.name().toLowerCase(Locale.ROOT))
        .collect(java.util.stream.Collectors.joining(", "));
  }

  /** The role of that name; none for {@link #LOCAL}, which nobody is given. */
  public static Optional<Role> of(String name) {
    return Arrays.stream(values())
        .filter(r -> r != LOCAL && r.name().equals(name.toUpperCase(Locale.ROOT)))
        .findFirst();
  }
}
