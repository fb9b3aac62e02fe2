package pressweek.app.web;

import java.util.Locale;
import pressweek.data.plan.Rule;

/** Names of rules as a person reads them. */
final class RuleWords {
  private RuleWords() {}

  /** {@code short campaign} for {@link Rule#SHORT_CAMPAIGN}. */
  static String of(Rule rule) {
    return switch (rule) {
      case LATE -> "lateness";
      case PURGE -> "purged resin";
      case START_UP -> "start-up shots";
      case KEPT_PRESS -> "work on a kept press";
      default -> rule.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    };
  }
}
