package pressweek.reports.schedule;

import java.util.List;
import java.util.Locale;
import pressweek.data.plan.Change;
import pressweek.data.plan.ChangeKind;
import pressweek.data.problem.Press;

/** Closed choices in words: the constant in small letters. */
public final class Kinds {
  private Kinds() {}

  /** What a change exchanges: {@code food clearance}. */
  public static String words(ChangeKind kind) {
    return lower(kind);
  }

  /** True when a change exchanges something; a food clearance alone does not. */
  public static boolean exchanges(Change change) {
    return change.kinds().stream().anyMatch(k -> k != ChangeKind.FOOD_CLEARANCE);
  }

  /** What a press is: {@code vertical, rotary}; a fixed table goes without saying. */
  public static List<String> words(Press press) {
    String orientation = lower(press.build().orientation());
    return switch (press.build().table()) {
      case FIXED -> List.of(orientation);
      case SHUTTLE, ROTARY -> List.of(orientation, lower(press.build().table()));
    };
  }

  /** What a press may do for food-grade work; empty for a press that may never. */
  public static String food(Press press) {
    return switch (press.food()) {
      case ONLY -> "food only";
      case KEPT -> "kept for food";
      case OPEN -> "open to food";
      case NEVER -> "";
    };
  }

  private static String lower(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
